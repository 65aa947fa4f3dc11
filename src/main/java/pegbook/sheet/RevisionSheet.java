package pegbook.sheet;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import pegbook.job.Heading;
import pegbook.packet.Packet;

/**
 * The record of revisions, to be carried on by hand.
 *
 * @param title heading
 * @param revision of this packet
 * @param issued its date
 * @param origin which job file it was made from, in a sentence that the hash ends
 * @param hash of the job file, whole
 * @param blanks one for each empty row
 */
public record RevisionSheet(
    String title, String revision, String issued, String origin, String hash, List<String> blanks)
    implements Sheet {
  private static final int BLANK_ROWS = 6;

  /** Takes the packet's heading. */
  public static RevisionSheet of(Packet packet, Writing writing) {
    Heading heading = packet.job().heading();
    return new RevisionSheet(
        writing.texts().say("revision.title"),
        heading.revision(),
        issued(heading, writing),
        writing.texts().say("revision.file", Map.of("file", packet.job().name() + ".json")),
        packet.jobHash(),
        Collections.nCopies(BLANK_ROWS, ""));
  }

  private static String issued(Heading heading, Writing writing) {
    return heading
        .issued()
        .map((LocalDate day) -> writing.formats().date(day))
        .orElseGet(() -> writing.texts().say("strip.notIssued"));
  }
}
