package pegbook.packet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import pegbook.calc.asdug.AsDug;
import pegbook.calc.asdug.AsDugCalculator;
import pegbook.calc.asdug.DugChecks;
import pegbook.calc.asdug.DugChecksCalculator;
import pegbook.calc.asmarked.AsMarked;
import pegbook.calc.asmarked.AsMarkedCalculator;
import pegbook.calc.bearing.Bearing;
import pegbook.calc.bearing.BearingCalculator;
import pegbook.calc.buyinglist.BuyingList;
import pegbook.calc.buyinglist.BuyingListCalculator;
import pegbook.calc.concreteexposure.ConcreteExposure;
import pegbook.calc.concreteexposure.ConcreteExposureCalculator;
import pegbook.calc.concreteplan.ConcretePlan;
import pegbook.calc.concreteplan.ConcretePlanCalculator;
import pegbook.calc.cutplan.CutPlan;
import pegbook.calc.cutplan.CutPlanCalculator;
import pegbook.calc.dayplan.DayPlan;
import pegbook.calc.dayplan.DayPlanCalculator;
import pegbook.calc.depthtargets.DepthTargets;
import pegbook.calc.depthtargets.DepthTargetsCalculator;
import pegbook.calc.digschedule.DigSchedule;
import pegbook.calc.digschedule.DigScheduleCalculator;
import pegbook.calc.floorframe.FloorFrame;
import pegbook.calc.floorframe.FloorFrameCalculator;
import pegbook.calc.footingloads.FootingLoads;
import pegbook.calc.footingloads.FootingLoadsCalculator;
import pegbook.calc.frostdepth.FrostDepth;
import pegbook.calc.frostdepth.FrostDepthCalculator;
import pegbook.calc.frostgrip.FrostGrip;
import pegbook.calc.frostgrip.FrostGripCalculator;
import pegbook.calc.levels.Levels;
import pegbook.calc.levels.LevelsCalculator;
import pegbook.calc.markaccuracy.MarkAccuracy;
import pegbook.calc.markaccuracy.MarkAccuracyCalculator;
import pegbook.calc.ownmix.OwnMixCalculator;
import pegbook.calc.ownmix.OwnMixPlan;
import pegbook.calc.pierstiffness.PierStiffness;
import pegbook.calc.pierstiffness.PierStiffnessCalculator;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.calc.pourday.PourDay;
import pegbook.calc.pourday.PourDayCalculator;
import pegbook.calc.powerline.PowerLine;
import pegbook.calc.powerline.PowerLineCalculator;
import pegbook.calc.provingmarks.ProvingMarks;
import pegbook.calc.provingmarks.ProvingMarksCalculator;
import pegbook.calc.safepegs.SafePegs;
import pegbook.calc.safepegs.SafePegsCalculator;
import pegbook.calc.safetynotes.SafetyNotes;
import pegbook.calc.safetynotes.SafetyNotesCalculator;
import pegbook.calc.siteplan.SitePlan;
import pegbook.calc.siteplan.SitePlanCalculator;
import pegbook.calc.startconditions.StartConditions;
import pegbook.calc.startconditions.StartConditionsCalculator;
import pegbook.calc.steelplan.SteelPlan;
import pegbook.calc.steelplan.SteelPlanCalculator;
import pegbook.calc.supplies.Supplies;
import pegbook.calc.supplies.SuppliesCalculator;
import pegbook.calc.tapecorrections.TapeCorrections;
import pegbook.calc.tapecorrections.TapeCorrectionsCalculator;
import pegbook.calc.tapetable.TapeTable;
import pegbook.calc.tapetable.TapeTableCalculator;
import pegbook.calc.truckloads.TruckLoads;
import pegbook.calc.truckloads.TruckLoadsCalculator;
import pegbook.calc.truenorth.TrueNorth;
import pegbook.calc.truenorth.TrueNorthCalculator;
import pegbook.calc.workestimate.LeftToDig;
import pegbook.calc.workestimate.WorkEstimate;
import pegbook.calc.workestimate.WorkEstimateCalculator;
import pegbook.figures.CutPiece;
import pegbook.figures.Diggings;
import pegbook.figures.Hole;
import pegbook.figures.Need;
import pegbook.figures.Placement;
import pegbook.figures.Pour;
import pegbook.figures.Result;
import pegbook.figures.Task;
import pegbook.figures.TaskDay;
import pegbook.job.Job;

/** Computes a packet: one calculator a line, in order. */
public final class Packets {
  private Packets() {}

  /**
   * Computes all figures of a job.
   *
   * @param job the checked job
   * @param jobHash SHA-256 of the job file, hexadecimal
   */
  public static Packet calculate(Job job, String jobHash) {
    Placement placement = PlacementCalculator.calculate(job);
    TapeTable tapeTable = TapeTableCalculator.calculate(job, placement);
    TapeCorrections tapeCorrections =
        TapeCorrectionsCalculator.calculate(job, placement, tapeTable.pairs());
    AsMarked asMarked =
        AsMarkedCalculator.calculate(
            job, placement, tapeTable.baseline().first(), tapeTable.baseline().second());
    TrueNorth trueNorth = TrueNorthCalculator.calculate(job, placement);
    DepthTargets depthTargets = DepthTargetsCalculator.calculate(job, placement);
    List<Hole> holes = depthTargets.holes();
    FloorFrame floorFrame = FloorFrameCalculator.calculate(job, placement, holes);
    Levels levels =
        LevelsCalculator.calculate(
            job.withBuildUp(floorFrame.buildUp()), placement, holes, depthTargets.datum());
    DigSchedule digSchedule = DigScheduleCalculator.calculate(job, placement, holes);
    SafePegs safePegs = SafePegsCalculator.calculate(job, placement, holes, digSchedule.heaps());
    AsDug asDug = AsDugCalculator.calculate(job, holes);
    List<Hole> dug = asDug.holes();
    SitePlan sitePlan = SitePlanCalculator.calculate(job, placement, dug, digSchedule.heaps());
    ProvingMarks provingMarks =
        ProvingMarksCalculator.calculate(job, placement, tapeTable.swings(), sitePlan.tiedFrom());
    FootingLoads footingLoads =
        FootingLoadsCalculator.calculate(job, placement, holes, floorFrame.carried());
    Bearing bearing = BearingCalculator.calculate(job, dug, footingLoads.loads());
    DugChecks dugChecks =
        DugChecksCalculator.calculate(job, asDug, tapeTable.swings(), bearing.bottoms());
    FrostDepth frostDepth = FrostDepthCalculator.calculate(job, holes);
    FrostGrip frostGrip =
        FrostGripCalculator.calculate(
            job,
            dug,
            footingLoads.loads(),
            frostDepth.estimate().map(FrostDepth.Estimate::decided));
    MarkAccuracy markAccuracy =
        MarkAccuracyCalculator.calculate(
            job, placement, tapeTable.swings(), new Diggings(holes, digSchedule.heaps()));
    PierStiffness pierStiffness =
        PierStiffnessCalculator.calculate(job, placement, asDug.onMarks());
    ConcretePlan concretePlan = ConcretePlanCalculator.calculate(job, dug);
    ConcreteExposure concreteExposure = ConcreteExposureCalculator.calculate(job, holes);
    OwnMixPlan ownMix =
        OwnMixCalculator.calculate(
            job,
            concretePlan.totals().poured(),
            concretePlan.mix().batch(),
            concreteExposure.needed().waterCement());
    SteelPlan steelPlan = SteelPlanCalculator.calculate(job, holes, asDug.forSteel());
    PowerLine powerLine =
        PowerLineCalculator.calculate(
            job,
            placement,
            new Diggings(dug, digSchedule.heaps()),
            safePegs.pegs().stream().map(SafePegs.Peg::peg).toList());
    CutPlan cutPlan =
        CutPlanCalculator.calculate(job, pieces(steelPlan, floorFrame, levels, powerLine));
    SafetyNotes safetyNotes = SafetyNotesCalculator.calculate(job, dug);
    StartConditions startConditions = StartConditionsCalculator.calculate(job, holes);
    WorkEstimate workEstimate =
        WorkEstimateCalculator.calculate(
            job,
            new LeftToDig(digSchedule.digging(), asDug.soFar()),
            frostGrip.sleeves(),
            tasks(tapeTable, safePegs, concretePlan, steelPlan, floorFrame, powerLine));
    DayPlan dayPlan = DayPlanCalculator.calculate(job, dug, workEstimate.tasks(), asDug.dug());
    TruckLoads truckLoads =
        TruckLoadsCalculator.calculate(job, pourDays(dayPlan, concretePlan.pours()));
    Supplies supplies = SuppliesCalculator.calculate(job, holes, openHoles(dayPlan));
    PourDay pourDay = PourDayCalculator.calculate(job, concretePlan.pours(), taskDays(dayPlan));
    BuyingList buyingList =
        BuyingListCalculator.calculate(
            job,
            needs(
                safePegs,
                levels,
                concretePlan,
                ownMix,
                frostGrip,
                steelPlan,
                cutPlan,
                floorFrame,
                powerLine,
                truckLoads,
                supplies),
            taskDays(dayPlan));
    return new Packet(
        job,
        jobHash,
        placement,
        sitePlan,
        tapeTable,
        tapeCorrections,
        markAccuracy,
        safePegs,
        provingMarks,
        asMarked,
        trueNorth,
        depthTargets,
        levels,
        digSchedule,
        asDug,
        dugChecks,
        footingLoads,
        bearing,
        frostDepth,
        frostGrip,
        pierStiffness,
        concretePlan,
        concreteExposure,
        ownMix,
        steelPlan,
        cutPlan,
        floorFrame,
        powerLine,
        safetyNotes,
        startConditions,
        workEstimate,
        dayPlan,
        truckLoads,
        supplies,
        pourDay,
        buyingList);
  }

  /** Bars, then the frame's timber and boards, then its posts, then pipe. */
  private static List<CutPiece> pieces(
      SteelPlan steel, FloorFrame frame, Levels levels, PowerLine line) {
    return Stream.of(
            steel.pieces(), frame.pieces(), levels.postPieces(frame.postSize()), line.pieces())
        .flatMap(List::stream)
        .toList();
  }

  private static List<Need> needs(Result... results) {
    return Stream.of(results).flatMap(result -> result.needs().stream()).toList();
  }

  /** Holes that stand open before the first day, and for each day those at some time of it. */
  private static List<List<String>> openHoles(DayPlan plan) {
    Stream<List<String>> days =
        plan.days().stream()
            .map(
                day ->
                    Stream.of(
                            day.openOvernight(),
                            day.holes(Task.Kind.BORE),
                            day.holes(Task.Kind.DIG))
                        .flatMap(List::stream)
                        .distinct()
                        .toList());
    return Stream.concat(Stream.of(plan.dug()), days).toList();
  }

  /** The day of each pour; the first where a pour goes on on the next. */
  private static Map<Pour, TaskDay> pourDays(DayPlan plan, List<Pour> pours) {
    Map<Pour, TaskDay> days = new LinkedHashMap<>();
    plan.days()
        .forEach(
            day ->
                pours.stream()
                    .filter(pour -> day.holes(pour.kind()).contains(pour.mark()))
                    .forEach(
                        pour ->
                            days.putIfAbsent(
                                pour, new TaskDay(pour.kind(), day.number(), day.date()))));
    return days;
  }

  private static List<TaskDay> taskDays(DayPlan plan) {
    return plan.days().stream()
        .flatMap(
            day ->
                day.portions().stream()
                    .map(portion -> new TaskDay(portion.kind(), day.number(), day.date())))
        .toList();
  }

  private static List<Task> tasks(Result... results) {
    return Stream.of(results).flatMap(result -> result.tasks().stream()).toList();
  }
}
