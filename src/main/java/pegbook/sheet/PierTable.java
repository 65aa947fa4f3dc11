package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import pegbook.calc.pierstiffness.PierStiffness.AlikePiers;
import pegbook.calc.pierstiffness.PierStiffness.Case;
import pegbook.calc.pierstiffness.PierStiffness.Hold;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.NumberNotation;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;

/** Sway, tilt and frequency of a pier, case by case. */
final class PierTable {
  private final Packet packet;
  private final Writing writing;
  private final AlikePiers piers;

  /**
   * A case as a column.
   *
   * @param letter as the workings name it
   * @param ground soft or stiff
   * @param hold what holds the pier; stands over its two columns
   */
  public record Column(String letter, String ground, String hold, boolean opens) {}

  /**
   * A row.
   *
   * @param label what
   * @param working number of the working behind it; empty: none
   * @param values one for each column
   * @param strong true for what matters most
   */
  public record Row(String label, String working, List<String> values, boolean strong) {}

  PierTable(Packet packet, Writing writing, AlikePiers piers) {
    this.packet = packet;
    this.writing = writing;
    this.piers = piers;
  }

  private String say(String key) {
    return writing.texts().say("pier.table." + key);
  }

  List<Column> columns() {
    List<Column> columns = new ArrayList<>();
    for (Case each : piers.cases()) {
      String hold =
          switch (each.hold()) {
            case BASE_ALONE -> "base-alone";
            case ONE_RADIUS -> "one-radius";
            case ALL_DEPTH -> "all-depth";
          };
      columns.add(
          new Column(
              each.letter(), say(each.stiff() ? "stiff" : "soft"), say(hold), !each.stiff()));
    }
    return List.copyOf(columns);
  }

  List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    rows.add(row("sway", "sway", each -> sway(each.sway()), true));
    rows.add(row("bending", "bending-sway", each -> share(each.bending(), each), false));
    rows.add(row("sliding", "sliding-sway", each -> share(each.sliding(), each), false));
    rows.add(row("rocking", "rocking-sway", each -> share(each.rocking(), each), false));
    rows.add(row("tilt", "tilt", each -> tilt(each.tilt()), true));
    if (piers.pier().wind().isPresent()) {
      rows.add(
          row("wind-sway", "wind-sway", each -> sway(each.wind().orElseThrow().sway()), false));
      rows.add(
          row("wind-tilt", "wind-tilt", each -> tilt(each.wind().orElseThrow().tilt()), false));
    }
    rows.add(row("frequency", "frequency", each -> SmallNumbers.threeFigures(each.hertz()), true));
    return List.copyOf(rows);
  }

  private Row row(String key, String formula, Function<Case, String> value, boolean strong) {
    Formats formats = writing.formats();
    Map<String, String> values =
        Map.of(
            "push", formats.in(piers.pier().push(), force(), decimals(piers.pier().push().si())),
            "wind", piers.pier().wind().map(this::wind).orElse(""),
            "unit", small().symbol());
    return new Row(
        writing.texts().say("pier.table." + key, values),
        packet.workings().numberOf("pier-stiffness." + formula).orElse(""),
        piers.cases().stream().map(value).toList(),
        strong);
  }

  private String wind(pegbook.measure.Force force) {
    return writing.formats().in(force, force(), decimals(force.si()));
  }

  /** Forces are named in the small unit, to the tenth where they are small. */
  private int decimals(double newtons) {
    return newtons < 20 ? 1 : 0;
  }

  private Unit force() {
    return imperial() ? Unit.POUND_FORCE : Unit.NEWTON;
  }

  private boolean imperial() {
    return writing.formats().units() == UnitSystem.IMPERIAL;
  }

  private Unit small() {
    return imperial() ? Unit.INCH : Unit.MILLIMETRE;
  }

  private String sway(Length sway) {
    Unit unit = small();
    return SmallNumbers.threeFigures(unit.in(sway));
  }

  private static String tilt(Angle tilt) {
    return SmallNumbers.threeFigures(Unit.ARC_SECOND.in(tilt));
  }

  private static String share(Length part, Case each) {
    return NumberNotation.write(100 * part.dividedBy(each.sway()), 0) + "%";
  }

  /** The range in a sentence. */
  String lead() {
    return writing
        .texts()
        .say(
            "pier.lead",
            Map.of(
                "push", wind(piers.pier().push()),
                "most", tilt(piers.softest().tilt()),
                "least", tilt(piers.stiffest().tilt()),
                "slow", SmallNumbers.threeFigures(piers.softest().hertz()),
                "fast", SmallNumbers.threeFigures(piers.stiffest().hertz())));
  }

  /** Why a column is missing. */
  String note() {
    return piers.stiffest().hold() == Hold.ALL_DEPTH ? "" : say("no-shaft");
  }
}
