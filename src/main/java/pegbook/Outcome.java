package pegbook;

import java.util.List;
import java.util.Map;
import pegbook.jobfile.Problem;
import pegbook.packet.Packet;

/** What became of one job. */
sealed interface Outcome {
  /**
   * It was computed, and rendered where that was asked.
   *
   * @param packet its figures
   * @param files the packet's files by name; empty when it was only checked
   * @param pages of all its documents
   */
  record Done(Packet packet, Map<String, byte[]> files, int pages) implements Outcome {}

  /** Its file was refused. */
  record Refused(List<Problem> problems) implements Outcome {}

  /** Its file or folder cannot be used, or the templates cannot print it. */
  record Unusable(String reason) implements Outcome {}
}
