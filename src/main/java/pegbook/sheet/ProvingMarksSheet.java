package pegbook.sheet;

import java.util.List;
import pegbook.calc.provingmarks.ProvingMarks;
import pegbook.packet.Packet;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.plan.ProvingPicture;

/**
 * The distances that prove the marks, with room to write what the tape reads.
 *
 * @param title the sheet's title
 * @param lead what the distances show
 * @param smallest how small the set is
 * @param rows distances between marks
 * @param alarms how often good marks fail
 * @param ties distances from fixed things; often none
 * @param tiesWhy what they are for, or why there are none
 * @param picture the marks and the distances
 * @param beside whether it stands beside what to do with a reading outside its limits
 * @param shown what was tried, line by line
 * @param basis what the limits rest on
 */
public record ProvingMarksSheet(
    String title,
    String lead,
    String smallest,
    List<CheckRow> rows,
    List<String> alarms,
    List<TieRow> ties,
    String tiesWhy,
    Drawing picture,
    boolean beside,
    List<String> shown,
    String basis)
    implements Sheet {
  /** One distance between marks. */
  public record CheckRow(String pair, String expected, String limit, String least, String most) {}

  /** One distance from a fixed thing. */
  public record TieRow(String from, String mark, String least, String most, String mirrored) {}

  public ProvingMarksSheet {
    rows = List.copyOf(rows);
    alarms = List.copyOf(alarms);
    ties = List.copyOf(ties);
    shown = List.copyOf(shown);
  }

  @Override
  public List<Drawing> drawings() {
    return List.of(picture);
  }

  /** Makes the sheet. */
  public static ProvingMarksSheet of(Packet packet, Writing writing) {
    ProvingMarks proving = packet.provingMarks();
    PictureRoom room = PictureRoom.of(packet, writing);
    ProvingMarksWords words = new ProvingMarksWords(packet, proving, writing);
    return new ProvingMarksSheet(
        writing.texts().say("proving-marks.title"),
        words.lead(),
        words.smallest(),
        proving.checks().stream().map(words::row).toList(),
        words.alarms(),
        proving.ties().stream().map(words::tie).toList(),
        words.tiesWhy(),
        ProvingPicture.draw(
            packet.placement(),
            proving,
            writing.texts().say("site-plan.north"),
            writing.lettering(),
            room.widthMm(),
            writing.texts().say("proving-marks.picture")),
        room.beside(),
        words.shown(),
        words.basis());
  }
}
