package pegbook.sheet;

import java.util.ArrayList;
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
  /** Who answers for themselves. */
  private static final List<Finding.Decider> OWN =
      List.of(Finding.Decider.OWNER, Finding.Decider.CREW);

  private static final int ROWS = 18;

  /** Rows that one question takes the room of. */
  private static final double ROWS_FOR_A_QUESTION = 1.25;

  private static final int LEAST_ROWS = 6;

  /** A question, with its number on the findings sheet. */
  public record Question(String number, String title, String decides) {}

  /** Takes the questions that the packet leaves to others than the crew. */
  public static RemarksSheet of(Packet packet, Writing writing) {
    List<Question> questions = questions(packet, writing.texts(), writing.formats());
    int rows = (int) Math.max(LEAST_ROWS, ROWS - ROWS_FOR_A_QUESTION * questions.size());
    return new RemarksSheet(
        writing.texts().say("remarks.title"),
        questions,
        questions.isEmpty(),
        Collections.nCopies(rows, ""));
  }

  private static List<Question> questions(Packet packet, Texts texts, Formats formats) {
    List<Question> questions = new ArrayList<>();
    int number = 0;
    for (Finding finding : packet.findings()) {
      number++;
      if (finding.kind() == Finding.Kind.ASK && !OWN.contains(finding.decides())) {
        questions.add(
            new Question(
                FindingsSheet.number(number),
                texts.say(
                    "finding." + finding.id() + ".title", formats.arguments(finding.arguments())),
                FindingsSheet.decider(finding.decides(), texts)));
      }
    }
    return List.copyOf(questions);
  }
}
