package pegbook.sheet;

import java.util.List;
import pegbook.packet.Packet;
import pegbook.sheet.drawing.Drawing;

/**
 * Footings and frost: what each support carries, what it presses on the ground, how deep frost
 * goes, and what the figures rest on.
 *
 * @param title the sheet's title
 * @param lead how the footings stand, in a sentence
 * @param loads shares of the floor and loads
 * @param bearing the footings against the ground
 * @param frost how deep frost goes
 * @param grip what lifts them, and what holds them
 * @param basis what the design rests on
 */
public record FootingsSheet(
    String title,
    String lead,
    FootingLoadsPart loads,
    BearingPart bearing,
    FrostDepthPart frost,
    FrostGripPart grip,
    BasisPart basis)
    implements Sheet {

  @Override
  public List<Drawing> drawings() {
    return List.of(loads.plan());
  }

  /** Makes the sheet. */
  public static FootingsSheet of(Packet packet, Writing writing) {
    BearingPart bearing = BearingPart.of(packet, writing);
    return new FootingsSheet(
        writing.texts().say("footings.title"),
        bearing.lead(),
        FootingLoadsPart.of(packet, writing),
        bearing,
        FrostDepthPart.of(packet, writing),
        FrostGripPart.of(packet, writing),
        BasisPart.of(packet, writing));
  }
}
