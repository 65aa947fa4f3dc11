package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.calc.concreteplan.ConcretePlan;
import pegbook.calc.concreteplan.ConcretePlan.Fill;
import pegbook.calc.concreteplan.ConcretePlan.Totals;
import pegbook.job.Concrete.Mixing;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.packet.Packet;

/**
 * Concrete and gravel, hole by hole and in all.
 *
 * @param title the sheet's title
 * @param lead what is bought, in a sentence
 * @param totals sums over the holes
 * @param holes one row for each hole, or for all holes that have the same figures
 * @param sum the last row
 * @param working the numbers of the workings behind the columns
 * @param parts concrete part by part, where there are bells, pads or caps
 * @param backfill what goes round tubes from the bottom; empty when there are none
 * @param sideGravel gravel to fill in round tubes; empty where there is none
 * @param lifts of holes that are poured in two, what goes into each
 * @param order marks in the order of the pours
 * @param loads what trucks bring on which day; empty where the crew mixes
 * @param rules what to mind before, during and after
 * @param basis what the numbers rest on
 * @param purchases what to buy
 * @param mix what goes into a mix of cement, sand and stone; empty where none is asked
 * @param exposure what the mix must stand
 * @param elements what each footing counts as, where no sheet of steel says so
 */
public record ConcretePlanSheet(
    String title,
    String lead,
    List<Total> totals,
    List<HoleRow> holes,
    HoleRow sum,
    HoleRow working,
    Optional<Parts> parts,
    Optional<String> backfill,
    Optional<String> sideGravel,
    List<String> lifts,
    String order,
    List<String> loads,
    List<String> rules,
    List<String> basis,
    List<Purchase> purchases,
    Optional<OwnMixPart> mix,
    ConcreteExposurePart exposure,
    Optional<SteelElementsPart> elements)
    implements Sheet {

  /**
   * Concrete part by part, as drawn.
   *
   * @param heads names of the parts that there are
   * @param rows alike footings in one row, the sum of its parts last
   * @param workings numbers of the workings behind the columns
   */
  public record Parts(List<String> heads, List<PartRow> rows, PartRow workings) {
    public Parts {
      heads = List.copyOf(heads);
      rows = List.copyOf(rows);
    }
  }

  /** A row of that table. */
  public record PartRow(String mark, List<String> cells) {
    public PartRow {
      cells = List.copyOf(cells);
    }
  }

  /** A sum with its label. */
  public record Total(String label, String value) {}

  /** A row of the table, cells in the order of its columns. */
  public record HoleRow(
      String mark,
      String gravel,
      String standing,
      String area,
      String below,
      String above,
      String poured,
      String bags,
      String batches,
      String minutes) {
    /** The same figures for some marks. */
    private HoleRow of(List<String> marks, Writing writing) {
      String names = writing.formats().names(marks);
      String each = writing.texts().say("concrete-plan.each", Map.of("holes", names));
      return new HoleRow(
          marks.size() == 1 ? names : each,
          gravel,
          standing,
          area,
          below,
          above,
          poured,
          bags,
          batches,
          minutes);
    }
  }

  /** Makes the sheet. */
  public static ConcretePlanSheet of(Packet packet, Writing writing) {
    ConcretePlan plan = packet.concretePlan();
    ConcreteWords words = new ConcreteWords(packet, writing);
    return new ConcretePlanSheet(
        writing.texts().say("concrete-plan.title"),
        words.lead(),
        totals(packet, writing),
        rows(plan.fills(), writing),
        sum(plan.totals(), writing),
        working(packet, writing),
        PartsTable.of(packet, writing),
        words.backfill(),
        words.sideGravel(),
        words.lifts(),
        writing.formats().names(plan.pourOrder()),
        words.loads(),
        words.rules(),
        words.basis(),
        Purchase.of(
            Stream.of(packet.ownMix().needs(), plan.needs(), packet.truckLoads().needs())
                .flatMap(List::stream)
                .toList(),
            writing),
        OwnMixPart.of(packet, writing),
        ConcreteExposurePart.of(packet, writing),
        SteelPlanSheet.isWanted(packet)
            ? Optional.empty()
            : Optional.of(SteelElementsPart.of(packet, writing)));
  }

  private static List<Total> totals(Packet packet, Writing writing) {
    ConcretePlan plan = packet.concretePlan();
    Formats formats = writing.formats();
    Totals totals = plan.totals();
    List<Total> lines = new ArrayList<>();
    lines.add(total(writing, "drawn", formats.volume(totals.drawn())));
    lines.add(total(writing, "poured", formats.volume(totals.poured())));
    Map<String, String> bags = new LinkedHashMap<>();
    bags.put("bags", formats.count(totals.bags()));
    bags.put("bag", formats.mass(plan.mix().bag()));
    bags.put("mass", formats.mass(totals.bagsMass()));
    boolean instead = isByVolume(packet);
    lines.add(
        total(
            writing,
            instead ? "bags-instead" : "bags",
            writing
                .texts()
                .say("concrete-plan.total." + (instead ? "bags-no" : "bags-value"), bags)));
    lines.add(total(writing, "truck", formats.truckVolume(totals.readyMix())));
    packet
        .job()
        .concrete()
        .truckMinimum()
        .ifPresent(least -> lines.add(total(writing, "truck-least", formats.truckVolume(least))));
    if (totals.gravelLoose().isMoreThan(Volume.ZERO)) {
      lines.add(total(writing, "gravel", formats.volume(totals.gravelLoose())));
    }
    if (totals.backfill().isMoreThan(Volume.ZERO)) {
      lines.add(total(writing, "backfill", formats.volume(totals.backfill())));
    }
    if (totals.sideGravel().isMoreThan(Volume.ZERO)) {
      lines.add(total(writing, "side-gravel", formats.volume(totals.sideGravel())));
    }
    lines.add(total(writing, "mass", formats.mass(totals.mass())));
    return lines;
  }

  private static Total total(Writing writing, String key, String value) {
    return new Total(writing.texts().say("concrete-plan.total." + key), value);
  }

  /** Fifty holes alike would be fifty rows to compare; they are one. */
  private static List<HoleRow> rows(List<Fill> fills, Writing writing) {
    Map<HoleRow, List<String>> alike = new LinkedHashMap<>();
    for (Fill fill : fills) {
      alike.computeIfAbsent(row("", fill, writing), any -> new ArrayList<>()).add(fill.mark());
    }
    return alike.entrySet().stream()
        .map(same -> same.getKey().of(same.getValue(), writing))
        .toList();
  }

  private static HoleRow row(String mark, Fill fill, Writing writing) {
    Formats formats = writing.formats();
    return new HoleRow(
        mark,
        some(fill.gravelLoose(), writing),
        formats.size(fill.standing()),
        area(fill, formats),
        formats.volume(fill.below()),
        some(fill.above(), writing),
        formats.volume(fill.poured()),
        formats.count(fill.bags()),
        fill.batches() > 0
            ? formats.count(fill.batches())
            : writing.texts().say("concrete-plan.none"),
        minutes(fill, writing));
  }

  /** A volume, or the word for none. */
  private static String some(Volume volume, Writing writing) {
    return volume.isMoreThan(Volume.ZERO)
        ? writing.formats().volume(volume)
        : writing.texts().say("concrete-plan.none");
  }

  private static String area(Fill fill, Formats formats) {
    return formats.units() == UnitSystem.IMPERIAL
        ? formats.in(fill.bearing(), Unit.SQUARE_FOOT, 2)
        : formats.in(fill.bearing(), Unit.SQUARE_METRE, 3);
  }

  private static String minutes(Fill fill, Writing writing) {
    Formats formats = writing.formats();
    if (fill.lifts().size() > 1) {
      return writing.texts().say("concrete-plan.by-lift");
    }
    ConcretePlan.Span pour = fill.lifts().get(0).pour();
    return writing
        .texts()
        .say(
            "concrete-plan.minutes",
            Map.of(
                "least", formats.number(pour.least().minutes(), 0),
                "most", formats.number(pour.most().minutes(), 0)));
  }

  private static HoleRow sum(Totals totals, Writing writing) {
    Formats formats = writing.formats();
    return new HoleRow(
        writing.texts().say("concrete-plan.sum"),
        some(totals.gravelLoose(), writing),
        "",
        "",
        "",
        "",
        formats.volume(totals.poured()),
        formats.count(totals.bags()),
        "",
        "");
  }

  private static HoleRow working(Packet packet, Writing writing) {
    return new HoleRow(
        writing.texts().say("concrete-plan.column.working"),
        number(packet, "gravel"),
        "",
        number(packet, "bearing"),
        number(packet, "below"),
        number(packet, "above"),
        number(packet, "poured"),
        number(packet, "bags"),
        number(packet, isOwnMix(packet) ? "loads" : "batches"),
        number(packet, "pour-least"));
  }

  private static String number(Packet packet, String formula) {
    return packet.workings().numberOf("concrete-plan." + formula).orElse("");
  }

  /** True where concrete is told by volume: from a truck, or mixed from sand and stone. */
  static boolean isByVolume(Packet packet) {
    return isReadyMix(packet) || isOwnMix(packet);
  }

  /** True where it is mixed from cement, sand and stone. */
  static boolean isOwnMix(Packet packet) {
    return packet.job().concrete().ownMix().isPresent();
  }

  /** True where the concrete comes ready mixed. */
  static boolean isReadyMix(Packet packet) {
    return packet.job().concrete().mixing() == Mixing.READY_MIX;
  }
}
