package pegbook.sheet;

import java.util.Collections;
import java.util.List;
import pegbook.figures.Finding;
import pegbook.packet.Packet;

/**
 * A page for the remarks of an inspector or engineer.
 *
 * @param title heading
 * @param questions what the packet asks them, by number
 * @param noQuestions true when it asks nothing
 * @param blanks one for each empty row
 */
public record RemarksSheet(
    String title, List<Question> questions, boolean noQuestions, List<String> blanks)
    implements Sheet {
  private static final int ROWS = 16;

  /** Rows that one question takes the room of. */
  private static final double ROWS_FOR_A_QUESTION = 1.25;

  private static final int LEAST_ROWS = 6;

  /** A question, with its number on the findings sheet. */
  public record Question(String number, String title, String decides) {}

  /** Takes the questions that the packet leaves to others than the crew. */
  public static RemarksSheet of(Packet packet, Writing writing) {
    List<Question> questions =
        FindingsSheet.of(packet, writing).groups().stream()
            .filter(group -> group.kind().equals(FindingsSheet.name(Finding.Kind.ASK)))
            .flatMap(group -> group.boxes().stream())
            .map(box -> new Question(box.number(), box.title(), box.decides()))
            .toList();
    int rows = (int) Math.max(LEAST_ROWS, ROWS - ROWS_FOR_A_QUESTION * questions.size());
    return new RemarksSheet(
        writing.texts().say("remarks.title"),
        questions,
        questions.isEmpty(),
        Collections.nCopies(rows, ""));
  }
}
