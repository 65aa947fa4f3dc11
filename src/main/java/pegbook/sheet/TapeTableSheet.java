package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.tapetable.TapeTable;
import pegbook.calc.tapetable.TapeTable.BetterPair;
import pegbook.calc.tapetable.TapeTable.Check;
import pegbook.calc.tapetable.TapeTable.Row;
import pegbook.calc.tapetable.TapeTable.Stand;
import pegbook.geometry.Compass;
import pegbook.measure.Angle;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.plan.SwingPicture;

/**
 * The tape table: the baseline, the swings, two tapes and a check for every mark.
 *
 * @param title the sheet's title
 * @param baseline where the baseline lies, how long it is, which way it points
 * @param swings how the tapes swing
 * @param beside whether the picture stands beside the steps
 * @param first the baseline's first mark, over its column
 * @param second the baseline's second mark
 * @param rows the marks in the order of work
 * @param pairs better pairs for marks that cross weakly; often none
 * @param weak true when there are such pairs
 * @param accuracy how far the readings alone put a mark off
 * @param corrections what slope and heat do to the tapes
 * @param steps how to go about it, in order
 */
public record TapeTableSheet(
    String title,
    String baseline,
    Drawing swings,
    boolean beside,
    String first,
    String second,
    List<MarkRow> rows,
    boolean weak,
    List<PairRow> pairs,
    String accuracy,
    List<String> corrections,
    List<String> steps)
    implements Sheet {
  /** Heights tried for the picture; then all that the page has under the heading. */
  private static final List<Double> HEIGHTS_MM = List.of(96.0, 150.0);

  private static final double HEADING_MM = 50;

  /** One mark. */
  public record MarkRow(
      String order,
      String mark,
      String side,
      String fromFirst,
      String fromSecond,
      String crossing,
      String checkTo,
      String check) {}

  /** A better pair for one mark. */
  public record PairRow(
      String mark,
      String first,
      String fromFirst,
      String second,
      String fromSecond,
      String side,
      String crossing) {}

  public TapeTableSheet {
    rows = List.copyOf(rows);
    pairs = List.copyOf(pairs);
    corrections = List.copyOf(corrections);
    steps = List.copyOf(steps);
  }

  @Override
  public List<Drawing> drawings() {
    return List.of(swings);
  }

  /** Makes the sheet. */
  public static TapeTableSheet of(Packet packet, Writing writing) {
    return new Maker(packet, packet.tapeTable(), writing).sheet();
  }

  private record Maker(Packet packet, TapeTable table, Writing writing) {
    TapeTableSheet sheet() {
      TapeTable.Baseline line = table.baseline();
      PictureRoom room = PictureRoom.of(packet, writing);
      return new TapeTableSheet(
          say("tape-table.title"),
          baseline(),
          swings(room),
          room.beside(),
          writing.texts().say("tape-table.column.tape", Map.of("mark", line.first())),
          writing.texts().say("tape-table.column.tape", Map.of("mark", line.second())),
          table.rows().stream().map(this::row).toList(),
          !table.betterPairs().isEmpty(),
          table.betterPairs().stream().map(this::pair).toList(),
          accuracy(),
          new SlopeWords(packet, packet.tapeCorrections(), writing).forTheTapeTable(),
          steps());
    }

    private String say(String key) {
      return writing.texts().say(key);
    }

    private String wind(Compass wind) {
      return say("compass." + wind.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    private Map<String, String> ends() {
      return Map.of("first", table.baseline().first(), "second", table.baseline().second());
    }

    private String baseline() {
      TapeTable.Baseline line = table.baseline();
      return writing
          .texts()
          .say(
              "tape-table.baseline",
              Map.of(
                  "first", line.first(),
                  "second", line.second(),
                  "tape", writing.formats().tape(line.tape()),
                  "azimuth", writing.formats().angle(line.azimuth())));
    }

    private Drawing swings(PictureRoom room) {
      TapeTable.Baseline line = table.baseline();
      SwingPicture.Words words =
          new SwingPicture.Words(
              say("site-plan.north"),
              writing.texts().say("tape-table.side.left", Map.of("wind", wind(line.left()))),
              writing.texts().say("tape-table.side.right", Map.of("wind", wind(line.right()))));
      return SwingPicture.draw(
          packet.placement(),
          table,
          words,
          writing.lettering(),
          room.widthMm(),
          heights(),
          "tape-table-swings",
          writing.texts().say("tape-table.picture", ends()));
    }

    private List<Double> heights() {
      List<Double> heights = new ArrayList<>(HEIGHTS_MM);
      heights.add(writing.page().heightMm() - HEADING_MM);
      return heights;
    }

    private MarkRow row(Row row) {
      Optional<Check> check = row.check();
      return new MarkRow(
          Integer.toString(row.order()),
          row.mark(),
          side(row.stand()),
          writing.formats().tape(row.fromFirst()),
          writing.formats().tape(row.fromSecond()),
          row.crossing().map(angle -> crossing(angle, row.weak())).orElse(say("tape-table.string")),
          check.map(Check::to).orElse(say("tape-table.none")),
          check.map(some -> writing.formats().tape(some.tape())).orElse(""));
    }

    private String crossing(Angle angle, boolean weak) {
      String degrees = writing.formats().roundAngle(angle);
      return weak ? writing.texts().say("tape-table.weak", Map.of("angle", degrees)) : degrees;
    }

    private String side(Stand stand) {
      TapeTable.Baseline line = table.baseline();
      return switch (stand) {
        case LEFT -> writing.texts().say("tape-table.side.left", Map.of("wind", wind(line.left())));
        case RIGHT ->
            writing.texts().say("tape-table.side.right", Map.of("wind", wind(line.right())));
        case BETWEEN -> say("tape-table.side.between");
        case BEYOND_FIRST ->
            writing.texts().say("tape-table.side.beyond", Map.of("mark", line.first()));
        case BEYOND_SECOND ->
            writing.texts().say("tape-table.side.beyond", Map.of("mark", line.second()));
      };
    }

    private PairRow pair(BetterPair pair) {
      return new PairRow(
          pair.mark(),
          pair.first(),
          writing.formats().tape(pair.fromFirst()),
          pair.second(),
          writing.formats().tape(pair.fromSecond()),
          say(pair.left() ? "tape-table.pair.left" : "tape-table.pair.right"),
          writing.formats().roundAngle(pair.crossing()));
    }

    private String accuracy() {
      return table
          .largestShift()
          .map(
              shift ->
                  writing
                      .texts()
                      .say(
                          "tape-table.accuracy",
                          Map.of(
                              "mark", shift.mark(),
                              "shift", shift(shift),
                              "tolerance", writing.formats().length(table.tolerance()))))
          .orElse("");
    }

    private String shift(TapeTable.Shift shift) {
      boolean imperial = writing.formats().units() == UnitSystem.IMPERIAL;
      return writing
          .formats()
          .in(shift.distance(), imperial ? Unit.INCH : Unit.MILLIMETRE, imperial ? 3 : 1);
    }

    private List<String> steps() {
      List<String> steps = new ArrayList<>(List.of("paint", "level"));
      steps.add(packet.sitePlan().ties().isEmpty() ? "free" : "tied");
      if (table.rows().stream().anyMatch(row -> row.stand().isOnLine())) {
        steps.add("string");
      }
      steps.addAll(List.of("swing", "check", "off", "mirror"));
      if (!packet.sitePlan().ties().isEmpty()) {
        steps.add("again");
      }
      Map<String, String> values = values();
      return steps.stream()
          .map(step -> writing.texts().say("tape-table.step." + step, values))
          .toList();
    }

    private Map<String, String> values() {
      return Map.of(
          "first", table.baseline().first(),
          "second", table.baseline().second(),
          "tape", writing.formats().tape(table.baseline().tape()),
          "azimuth", writing.formats().angle(table.baseline().azimuth()),
          "tolerance", writing.formats().length(table.tolerance()));
    }
  }
}
