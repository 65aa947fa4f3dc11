package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.truenorth.TrueNorth;
import pegbook.packet.Packet;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.plan.NorthPicture;

/**
 * True north by a shadow, and the turn from it to the first mark.
 *
 * @param title the sheet's title
 * @param lead when the sun stands highest, and what its shadow does
 * @param hasSun true where place, clock and date are known
 * @param picture how it goes, seen from above
 * @param noon steps with the shadow at noon; empty where it does not serve
 * @param equal steps with two equal shadows; empty where they do not serve
 * @param errors how well each gives north
 * @param days the next work days
 * @param dayNotes what the table needs said
 * @param turnTitle its heading
 * @param turn from the north line to the first mark
 * @param compass what a compass shows; empty without a declination
 * @param basis what the numbers rest on
 */
public record TrueNorthSheet(
    String title,
    String lead,
    boolean hasSun,
    List<Drawing> picture,
    List<String> noon,
    List<String> equal,
    List<ErrorRow> errors,
    List<DayRow> days,
    String dayNotes,
    String turnTitle,
    List<String> turn,
    List<String> compass,
    String basis)
    implements Sheet {

  /** How well a way gives north. */
  public record ErrorRow(String way, String error, String off, String working) {}

  /** A work day; cells in the order of the columns. */
  public record DayRow(
      String date, String noon, String shadow, String turn, String rise, String set) {}

  public TrueNorthSheet {
    picture = List.copyOf(picture);
    noon = List.copyOf(noon);
    equal = List.copyOf(equal);
    errors = List.copyOf(errors);
    days = List.copyOf(days);
    turn = List.copyOf(turn);
    compass = List.copyOf(compass);
  }

  @Override
  public List<Drawing> drawings() {
    return picture;
  }

  /** True where place, clock and date are known, or a declination is given. */
  public static boolean isWanted(Packet packet) {
    return !packet.trueNorth().days().isEmpty() || packet.trueNorth().compass().isPresent();
  }

  /** Makes the sheet. */
  public static TrueNorthSheet of(Packet packet, Writing writing) {
    TrueNorth north = packet.trueNorth();
    TrueNorthWords words = new TrueNorthWords(packet, north, writing);
    return new TrueNorthSheet(
        writing.texts().say("true-north.title"),
        words.lead(),
        !north.days().isEmpty(),
        List.of(
            NorthPicture.draw(
                north,
                words.picture(),
                writing.lettering(),
                writing.page().widthMm() - 1,
                writing.texts().say("true-north.picture"))),
        north.noon().map(words::noon).orElse(List.of()),
        north.equal().map(words::equal).orElse(List.of()),
        errors(north, words),
        north.days().stream().map(words::day).toList(),
        words.dayNotes(),
        words.turnTitle(),
        words.turn(),
        north.compass().map(words::compass).orElse(List.of()),
        words.basis());
  }

  private static List<ErrorRow> errors(TrueNorth north, TrueNorthWords words) {
    List<ErrorRow> rows = new ArrayList<>();
    north.noon().map(words::noonError).ifPresent(rows::add);
    north.equal().map(words::equalError).ifPresent(rows::add);
    north.compass().map(words::compassError).ifPresent(rows::add);
    return rows;
  }
}
