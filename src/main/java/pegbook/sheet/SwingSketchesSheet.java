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
import pegbook.geometry.Compass;
import pegbook.packet.Packet;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.plan.SwingSketch;
import pegbook.sheet.plan.SwingSketch.Content;
import pegbook.sheet.plan.SwingSketch.Place;

/**
 * A small drawing for each mark, in the order of work: the baseline first, then every swing.
 *
 * @param title the sheet's title
 * @param pairs the sketches, two side by side
 */
public record SwingSketchesSheet(String title, List<Pair> pairs) implements Sheet {
  private static final double GAP_MM = 3.2;
  private static final double MOST_HEIGHT_MM = 58;
  private static final double BETWEEN_MM = 3.6;

  /** What the sheet's heading takes, and the rows below it when they are more than three. */
  private static final double HEADING_MM = 42;

  private static final int FEW_ROWS = 3;
  private static final int MANY_ROWS = 4;

  /** Two sketches side by side; the second may be missing. */
  public record Pair(List<Drawing> sketches) {
    public Pair {
      sketches = List.copyOf(sketches);
    }
  }

  public SwingSketchesSheet {
    pairs = List.copyOf(pairs);
  }

  @Override
  public List<Drawing> drawings() {
    return pairs.stream().flatMap(pair -> pair.sketches().stream()).toList();
  }

  /** Makes the sheet. */
  public static SwingSketchesSheet of(Packet packet, Writing writing) {
    return new Maker(packet, packet.tapeTable(), writing).sheet();
  }

  private record Maker(Packet packet, TapeTable table, Writing writing) {
    SwingSketchesSheet sheet() {
      List<Drawing> sketches = new ArrayList<>();
      sketches.add(draw(baseline(), 1));
      table.rows().forEach(row -> sketches.add(draw(content(row), row.order())));
      List<Pair> pairs = new ArrayList<>();
      for (int i = 0; i < sketches.size(); i += 2) {
        pairs.add(new Pair(sketches.subList(i, Math.min(i + 2, sketches.size()))));
      }
      return new SwingSketchesSheet(say("swing-sketches.title"), pairs);
    }

    private Drawing draw(Content content, int order) {
      PageArea page = writing.page();
      return SwingSketch.draw(
          content,
          writing.lettering(),
          page.widthMm() / 2 - GAP_MM,
          Math.min(MOST_HEIGHT_MM, (page.heightMm() - HEADING_MM) / rows() - BETWEEN_MM),
          "swing-sketch-" + order,
          describe(content));
    }

    /** As many sketches as fill the first page: two in a row, the baseline's counted. */
    private int rows() {
      return table.rows().size() + 1 <= 2 * FEW_ROWS ? FEW_ROWS : MANY_ROWS;
    }

    private String say(String key) {
      return writing.texts().say(key);
    }

    private String say(String key, Map<String, String> values) {
      return writing.texts().say(key, values);
    }

    private String describe(Content content) {
      Map<String, String> ends =
          Map.of(
              "mark", content.mark().map(Place::name).orElse(content.second().name()),
              "first", content.first().name(),
              "second", content.second().name(),
              "readings", String.join(", ", content.readings()));
      return say(
          content.mark().isPresent() ? "swing-sketches.picture" : "swing-sketches.baseline.picture",
          ends);
    }

    private Place place(String mark) {
      return new Place(mark, packet.placement().mark(mark).at());
    }

    private String wind(Compass wind) {
      return say("compass." + wind.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    private Content baseline() {
      TapeTable.Baseline line = table.baseline();
      return new Content(
          place(line.first()),
          place(line.second()),
          Optional.empty(),
          say("swing-sketches.baseline"),
          List.of(
              say("swing-sketches.baseline.order"),
              say(
                  "swing-sketches.baseline.azimuth",
                  Map.of("azimuth", writing.formats().angle(line.azimuth())))),
          List.of(writing.formats().tape(line.tape())),
          "",
          Optional.empty(),
          "",
          say("site-plan.north"));
    }

    private Content content(Row row) {
      Optional<BetterPair> pair =
          table.betterPairs().stream().filter(each -> each.mark().equals(row.mark())).findFirst();
      return pair.map(better -> own(row, better)).orElseGet(() -> swing(row));
    }

    private Content swing(Row row) {
      TapeTable.Baseline line = table.baseline();
      boolean onLine = row.stand().isOnLine();
      List<String> readings = new ArrayList<>(List.of(writing.formats().tape(row.fromFirst())));
      if (!onLine) {
        readings.add(writing.formats().tape(row.fromSecond()));
      }
      return new Content(
          place(line.first()),
          place(line.second()),
          Optional.of(place(row.mark())),
          row.mark(),
          notes(row, side(row)),
          readings,
          row.crossing().map(writing.formats()::roundAngle).orElse(""),
          onLine ? Optional.empty() : row.check().map(check -> place(check.to())),
          row.check().map(check -> writing.formats().tape(check.tape())).orElse(""),
          say("site-plan.north"));
    }

    /** A mark with a pair of its own; the check of its table row still holds. */
    private Content own(Row row, BetterPair pair) {
      String side = say(pair.left() ? "swing-sketches.left" : "swing-sketches.right");
      Optional<Check> check =
          row.check().filter(to -> !to.to().equals(pair.first()) && !to.to().equals(pair.second()));
      return new Content(
          place(pair.first()),
          place(pair.second()),
          Optional.of(place(row.mark())),
          row.mark(),
          notes(row, side),
          List.of(
              writing.formats().tape(pair.fromFirst()), writing.formats().tape(pair.fromSecond())),
          writing.formats().roundAngle(pair.crossing()),
          check.map(to -> place(to.to())),
          check.map(to -> writing.formats().tape(to.tape())).orElse(""),
          say("site-plan.north"));
    }

    private List<String> notes(Row row, String side) {
      List<String> notes = new ArrayList<>();
      notes.add(say("swing-sketches.order", Map.of("order", writing.formats().count(row.order()))));
      notes.add(side);
      row.check()
          .ifPresent(
              check ->
                  notes.add(
                      say(
                          "swing-sketches.check",
                          Map.of(
                              "mark", check.to(),
                              "tape", writing.formats().tape(check.tape())))));
      return notes;
    }

    private String side(Row row) {
      TapeTable.Baseline line = table.baseline();
      return switch (row.stand()) {
        case LEFT -> say("tape-table.side.left", Map.of("wind", wind(line.left())));
        case RIGHT -> say("tape-table.side.right", Map.of("wind", wind(line.right())));
        case BETWEEN -> say("tape-table.side.between");
        case BEYOND_FIRST -> say("tape-table.side.beyond", Map.of("mark", line.first()));
        case BEYOND_SECOND -> say("tape-table.side.beyond", Map.of("mark", line.second()));
      };
    }
  }
}
