package pegbook.export;

import pegbook.calc.concreteplan.ConcretePlan;
import pegbook.calc.dayplan.DayPlan;
import pegbook.calc.digschedule.DigSchedule;
import pegbook.calc.ownmix.OwnMixPlan;
import pegbook.calc.pourday.PourDay;
import pegbook.calc.siteplan.SitePlan;
import pegbook.calc.steelplan.Element;
import pegbook.calc.steelplan.SteelPlan;
import pegbook.calc.tapetable.TapeTable;
import pegbook.calc.truckloads.TruckLoads;
import pegbook.calc.workestimate.WorkEstimate;
import pegbook.figures.DatumLine;
import pegbook.figures.Result;
import pegbook.packet.Packet;

/** The figures of each subject, in the order of the sheets. */
final class SubjectResults {
  private SubjectResults() {}

  static void write(JsonFigures json, Packet packet) {
    json.object("tapes", content -> tapes(content, packet.tapeTable()));
    json.object("markAccuracy", content -> MarkAccuracyResults.write(content, packet));
    json.object("safePegs", content -> PegResults.write(content, packet.safePegs()));
    json.object(
        "provingMarks", content -> ProvingMarksResults.write(content, packet.provingMarks()));
    json.object("asMarked", content -> AsMarkedResults.write(content, packet.asMarked()));
    json.object("site", content -> site(content, packet.sitePlan()));
    json.quantity(
        "datumLineAboveBenchmarkMetres", packet.depthTargets().datum().map(DatumLine::height));
    json.list("holes", packet.depthTargets().holes(), ResultsJson::hole);
    json.object("trueNorth", content -> NorthResults.write(content, packet.trueNorth()));
    json.object("levels", content -> LevelResults.levels(content, packet.levels()));
    json.object(
        "tapeCorrections", content -> LevelResults.corrections(content, packet.tapeCorrections()));
    json.object("digging", content -> digging(content, packet));
    json.object("footingLoads", content -> FootingResults.loads(content, packet.footingLoads()));
    json.object("bearing", content -> FootingResults.bearing(content, packet.bearing()));
    if (!packet.asDug().rows().isEmpty()) {
      json.object("asDug", content -> AsDugResults.write(content, packet));
    }
    json.object("frostDepth", content -> FrostResults.depth(content, packet.frostDepth()));
    json.object("frostGrip", content -> FrostResults.grip(content, packet.frostGrip()));
    if (!packet.pierStiffness().piers().isEmpty()) {
      json.object("piers", content -> PierResults.write(content, packet.pierStiffness()));
    }
    json.object("concrete", content -> concrete(content, packet.concretePlan()));
    json.object(
        "concreteExposure", content -> ExposureResults.write(content, packet.concreteExposure()));
    json.object("steel", content -> steel(content, packet.steelPlan()));
    json.object("cutPlan", content -> CutPlanResults.write(content, packet.cutPlan()));
    packet
        .floorFrame()
        .built()
        .ifPresent(
            built -> json.object("floorFrame", content -> FrameResults.write(content, built)));
    packet
        .powerLine()
        .line()
        .ifPresent(line -> json.object("power", content -> PowerResults.write(content, line)));
    packet.ownMix().mix().ifPresent(mix -> json.object("ownMix", content -> ownMix(content, mix)));
    json.list("truckLoads", packet.truckLoads().loads(), SubjectResults::load);
    json.object("buying", content -> BuyingResults.write(content, packet.buyingList()));
    json.list("days", packet.dayPlan().days(), SubjectResults::day);
    json.object("plan", content -> plan(content, packet.dayPlan()));
    json.list("batchings", packet.pourDay().batchings(), SubjectResults::batching);
    json.list(
        "needs",
        packet.results().stream().map(Result::needs).flatMap(java.util.List::stream).toList(),
        ResultsJson::need);
    json.list("tasks", packet.workEstimate().tasks(), ResultsJson::task);
  }

  private static void site(JsonFigures json, SitePlan plan) {
    json.list("clearances", plan.clearances(), SubjectResults::clearance)
        .list("ties", plan.ties(), SubjectResults::tie);
  }

  private static void batching(JsonFigures json, PourDay.Batching batching) {
    json.texts("marks", batching.marks())
        .text("kind", batching.kind().name())
        .whole("bagsOfBatch", batching.bagsOfBatch())
        .whole("batches", batching.batches())
        .quantity("longestBatchSeconds", batching.each())
        .whole("batchesAtHalfTime", batching.half());
  }

  private static void clearance(JsonFigures json, SitePlan.Clearance clearance) {
    json.text("keeper", clearance.keeper().name())
        .text("mark", clearance.mark())
        .text("feature", clearance.feature())
        .quantity("distanceMetres", clearance.distance())
        .quantity("requiredMetres", clearance.required())
        .flag("breach", clearance.breach());
  }

  private static void tie(JsonFigures json, SitePlan.Tie tie) {
    json.whole("number", tie.number()).text("mark", tie.mark());
    ResultsJson.point(json, tie.from());
    json.quantity("tapeMetres", tie.tape());
  }

  private static void tapes(JsonFigures json, TapeTable table) {
    json.text("first", table.baseline().first())
        .text("second", table.baseline().second())
        .quantity("baselineMetres", table.baseline().tape())
        .quantity("azimuthRadians", table.baseline().azimuth())
        .list("marks", table.rows(), SubjectResults::tape);
  }

  private static void tape(JsonFigures json, TapeTable.Row row) {
    json.whole("order", row.order())
        .text("mark", row.mark())
        .text("stand", row.stand().name())
        .quantity("fromFirstMetres", row.fromFirst())
        .quantity("fromSecondMetres", row.fromSecond())
        .quantity("crossingRadians", row.crossing())
        .flag("weak", row.weak())
        .text("checkTo", row.check().map(TapeTable.Check::to))
        .quantity("checkMetres", row.check().map(TapeTable.Check::tape))
        .quantity("shiftMetres", row.shift());
  }

  private static void digging(JsonFigures json, Packet packet) {
    DigSchedule schedule = packet.digSchedule();
    WorkEstimate estimate = packet.workEstimate();
    json.list("rows", schedule.rows(), (row, dug) -> dug(row, dug, estimate))
        .list("heaps", schedule.heaps(), ResultsJson::heap)
        .quantity("bankCubicMetres", schedule.totals().bank())
        .quantity("looseCubicMetres", schedule.totals().loose())
        .quantity("keptCubicMetres", schedule.totals().kept())
        .whole("cartLoads", schedule.totals().cartLoads())
        .number("leastPersonHours", estimate.digLeast().hours())
        .number("mostPersonHours", estimate.digMost().hours());
    estimate.real().ifPresent(real -> json.number("realFactor", real.factor()));
  }

  private static void dug(JsonFigures json, DigSchedule.Row row, WorkEstimate estimate) {
    WorkEstimate.HoleWork work = estimate.dig(row.hole().mark());
    json.whole("order", row.order())
        .text("mark", row.hole().mark())
        .quantity("bankCubicMetres", row.bank())
        .quantity("looseCubicMetres", row.loose())
        .whole("cartLoads", row.cartLoads())
        .quantity("kilograms", row.mass())
        .quantity("keptCubicMetres", row.kept())
        .number("leastPersonHours", work.least().hours())
        .number("mostPersonHours", work.most().hours())
        .text("hoursBasis", work.basis().name());
  }

  private static void concrete(JsonFigures json, ConcretePlan plan) {
    json.list("fills", plan.fills(), SubjectResults::fill)
        .quantity("drawnCubicMetres", plan.totals().drawn())
        .quantity("pouredCubicMetres", plan.totals().poured())
        .quantity("readyMixCubicMetres", plan.totals().readyMix())
        .whole("bags", plan.totals().bags())
        .quantity("bagsKilograms", plan.totals().bagsMass())
        .quantity("gravelLooseCubicMetres", plan.totals().gravelLoose())
        .quantity("gravelOrderCubicMetres", plan.totals().gravelOrder())
        .quantity("sideGravelLooseCubicMetres", plan.totals().sideGravel())
        .texts("pourOrder", plan.pourOrder());
  }

  private static void fill(JsonFigures json, ConcretePlan.Fill fill) {
    json.text("mark", fill.mark())
        .quantity("standingDiameterMetres", fill.standing())
        .list("parts", fill.parts(), SubjectResults::part)
        .quantity("bearingSquareMetres", fill.bearing())
        .quantity("belowGroundCubicMetres", fill.below())
        .quantity("aboveGroundCubicMetres", fill.above())
        .quantity("pouredCubicMetres", fill.poured())
        .quantity("gravelLooseCubicMetres", fill.gravelLoose())
        .quantity("backfillCubicMetres", fill.backfill())
        .quantity("sideGravelLooseCubicMetres", fill.sideGravel())
        .whole("bags", fill.bags())
        .whole("batches", fill.batches())
        .quantity("kilograms", fill.mass())
        .list("lifts", fill.lifts(), SubjectResults::lift);
  }

  private static void part(JsonFigures json, ConcretePlan.Part part) {
    json.text("kind", part.kind().name()).quantity("cubicMetres", part.volume());
  }

  private static void lift(JsonFigures json, ConcretePlan.Lift lift) {
    json.text("kind", lift.kind().name())
        .quantity("topOverUndersideMetres", lift.to())
        .quantity("pouredCubicMetres", lift.poured())
        .whole("bags", lift.bags())
        .whole("batches", lift.batches());
  }

  private static void ownMix(JsonFigures json, OwnMixPlan.Mix mix) {
    json.quantity("aimPascals", mix.aim())
        .number("waterCement", mix.waterCement())
        .whole("cementBags", mix.cementBags())
        .quantity("cementKilograms", mix.all().cement())
        .quantity("sandKilograms", mix.all().sand())
        .quantity("stoneKilograms", mix.all().stone())
        .quantity("waterKilograms", mix.all().water());
  }

  private static void load(JsonFigures json, TruckLoads.Load load) {
    json.whole("day", load.day())
        .texts("marks", load.marks())
        .quantity("pouredCubicMetres", load.poured())
        .quantity("orderCubicMetres", load.order());
  }

  private static void steel(JsonFigures json, SteelPlan plan) {
    json.list("elements", plan.elements(), SubjectResults::element)
        .list("uprights", plan.cages(), SubjectResults::uprights)
        .list("barList", plan.barList(), SubjectResults::barLine)
        .list("sizes", plan.sizes(), SubjectResults::size);
  }

  private static void element(JsonFigures json, Element element) {
    json.texts("marks", element.marks())
        .text("kind", element.kind().name())
        .quantity("widthMetres", element.width())
        .number("heightToWidth", element.slenderness())
        .number("freeHeightToWidth", element.freeSlenderness())
        .quantity("steelGiven", element.given())
        .quantity("steelAsked", element.asked())
        .text("verdict", element.verdict().name());
  }

  private static void uprights(JsonFigures json, SteelPlan.Cage cage) {
    SteelPlan.Uprights uprights = cage.uprights();
    json.texts("marks", cage.marks())
        .quantity("footMetres", uprights.foot())
        .quantity("riseMetres", uprights.rise())
        .quantity("hookLegMetres", uprights.lowestHook().map(SteelPlan.Hook::leg))
        .quantity("lapMetres", uprights.starters().map(SteelPlan.Starters::lap))
        .quantity("starterMetres", uprights.starters().map(SteelPlan.Starters::rise))
        .quantity("reachMetres", uprights.embedment().map(SteelPlan.Embedment::reach))
        .quantity("reachNeededMetres", uprights.embedment().map(SteelPlan.Embedment::needed));
  }

  private static void barLine(JsonFigures json, SteelPlan.BarLine line) {
    json.text("barMark", line.barMark())
        .text("size", line.size())
        .text("shape", line.shape().name())
        .whole("count", line.count())
        .quantity("cutMetres", line.cut())
        .quantity("eachKilograms", line.each())
        .texts("marks", line.marks());
  }

  private static void size(JsonFigures json, SteelPlan.SizeTotal size) {
    json.text("size", size.size())
        .quantity("lengthMetres", size.length())
        .quantity("kilograms", size.mass());
  }

  private static void plan(JsonFigures json, DayPlan plan) {
    json.list("holds", plan.holds(), SubjectResults::hold)
        .list("orders", plan.orders(), SubjectResults::order)
        .list(
            "chain",
            plan.chain(),
            (item, link) ->
                item.text("wait", link.kind().map(Enum::name))
                    .whole("fromDay", link.fromDay())
                    .whole("toDay", link.toDay()));
    plan.finish()
        .ifPresent(
            finish ->
                json.text("loadableEarliest", finish.earliest().toString())
                    .text("loadablePlanned", finish.planned().toString())
                    .text("loadableLatest", finish.latest().toString()));
  }

  private static void hold(JsonFigures json, DayPlan.Hold hold) {
    json.text("wait", hold.kind().name())
        .texts("holes", hold.marks())
        .text("call", hold.call().map(Object::toString))
        .text("date", hold.date().map(Object::toString))
        .whole("afterDay", hold.afterDay());
  }

  private static void order(JsonFigures json, DayPlan.Order order) {
    json.whole("lots", order.lots())
        .whole("days", order.days())
        .text("lastPour", order.lastPour().map(Object::toString))
        .whole("holeNights", order.holeNights())
        .whole("mostOpen", order.mostOpen())
        .flag("chosen", order.chosen());
  }

  private static void day(JsonFigures json, DayPlan.WorkDay day) {
    json.whole("number", day.number())
        .text("date", day.date().map(Object::toString))
        .texts("holes", day.holes())
        .number("leastPersonHours", day.least().hours())
        .number("mostPersonHours", day.most().hours())
        .texts("openOvernight", day.openOvernight());
  }
}
