package pegbook.sheet;

import java.util.List;
import java.util.Optional;
import pegbook.packet.Packet;

/**
 * The holes as they were dug: planned, found, what to do.
 *
 * @param title the sheet's title
 * @param lead how many holes were measured
 * @param rows one for each of them
 * @param workings the numbers of the workings behind the columns
 * @param loads loads that stand off the middle of their bottoms; none where no hole lies off
 * @param loadWorkings the numbers of the workings behind their columns
 * @param rooms steel, tubes and neighbours of holes that lie off or have another width
 * @param tapes readings round holes that lie off
 * @param tapeWorking number of the working behind them
 * @param basis what the numbers rest on
 */
public record AsDugSheet(
    String title,
    String lead,
    List<Row> rows,
    Row workings,
    List<LoadRow> loads,
    LoadRow loadWorkings,
    List<String> rooms,
    List<TapeRow> tapes,
    String tapeWorking,
    List<String> basis)
    implements Sheet {

  /** A hole. */
  public record Row(
      String mark,
      String planned,
      String found,
      String difference,
      String wide,
      String moved,
      String concrete,
      String todo) {}

  /** A load off the middle of its bottom. */
  public record LoadRow(
      String mark,
      String moved,
      String width,
      String kern,
      String middle,
      String edge,
      String allowable,
      String verdict) {}

  /** A reading. */
  public record TapeRow(String from, String to, String reading, String other) {}

  /** The sheet, where anything but hours was written down of a hole. */
  static Optional<AsDugSheet> of(Packet packet, Writing writing) {
    if (packet.asDug().rows().isEmpty()) {
      return Optional.empty();
    }
    AsDugWords words = new AsDugWords(packet, writing);
    return Optional.of(
        new AsDugSheet(
            writing.texts().say("as-dug.title"),
            words.lead(),
            words.rows(),
            words.workings(),
            words.loads(),
            words.loadWorkings(),
            words.rooms(),
            words.tapes(),
            words.number("tape"),
            words.basis()));
  }
}
