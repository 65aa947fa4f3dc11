package pegbook.calc.safetynotes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Task;
import pegbook.published.Citation;

/**
 * One thing to do so that nobody is hurt.
 *
 * <p>Its words stand in the text bundle: {@code note.ID.do}, a short command, and {@code
 * note.ID.why}, the reason and the limit with this job's numbers.
 *
 * @param id its name in the text bundle
 * @param stage when it matters on the sheet
 * @param danger place in the order of dangers: 1 kills first; a judgement, common practice
 * @param during tasks that bring the danger; empty: every task
 * @param marks holes that it is about; empty: all
 * @param arguments values for the words
 * @param decides who decides where the rule is local
 * @param citations what it leans on
 */
public record Note(
    String id,
    Stage stage,
    int danger,
    List<Task.Kind> during,
    List<String> marks,
    Map<String, Argument> arguments,
    Finding.Decider decides,
    List<Citation> citations) {

  /** Stages of the work, in their order. */
  public enum Stage {
    BEFORE_DIGGING,
    WHILE_DIGGING,
    OPEN_HOLES,
    STEEL_AND_CONCRETE,
    FLOOR,
    LEAVING
  }

  public Note {
    during = List.copyOf(during);
    marks = List.copyOf(marks);
    arguments = Collections.unmodifiableMap(new LinkedHashMap<>(arguments));
    citations = List.copyOf(citations);
  }

  /** A note about every hole and every task, leaning on the habit of the trade. */
  static Note of(String id, Stage stage, int danger) {
    return new Note(
        id,
        stage,
        danger,
        List.of(),
        List.of(),
        Map.of(),
        Finding.Decider.CREW,
        List.of(Citation.COMMON_PRACTICE));
  }

  /** The same, only during some tasks. */
  Note during(Task.Kind... tasks) {
    List<Task.Kind> during = new ArrayList<>(List.of(tasks));
    if (during.contains(Task.Kind.POUR)) {
      during.add(Task.Kind.FIRST_LIFT);
    }
    if (during.contains(Task.Kind.STEEL)) {
      during.add(Task.Kind.JOINT);
    }
    return new Note(id, stage, danger, during, marks, arguments, decides, citations);
  }

  /** The same, only about some holes. */
  Note about(List<String> holes) {
    return new Note(id, stage, danger, during, holes, arguments, decides, citations);
  }

  /** The same with one more value for its words. */
  Note with(String name, Argument value) {
    Map<String, Argument> more = new LinkedHashMap<>(arguments);
    more.put(name, value);
    return new Note(id, stage, danger, during, marks, more, decides, citations);
  }

  /** The same with the one who decides. */
  Note decidedBy(Finding.Decider decider) {
    return new Note(id, stage, danger, during, marks, arguments, decider, citations);
  }

  /** The same leaning on sources; without any it stays with what it had. */
  Note leaningOn(List<Citation> sources) {
    return sources.isEmpty()
        ? this
        : new Note(id, stage, danger, during, marks, arguments, decides, sources);
  }

  /** The same leaning on one more source. */
  Note citing(Citation source) {
    List<Citation> more = new ArrayList<>(citations);
    more.remove(Citation.COMMON_PRACTICE);
    more.add(source);
    return new Note(id, stage, danger, during, marks, arguments, decides, more);
  }

  /** True where a task at some holes brings the danger. */
  public boolean matters(List<String> holes, List<Task.Kind> tasks) {
    return (during.isEmpty() || tasks.stream().anyMatch(during::contains))
        && (marks.isEmpty() || holes.stream().anyMatch(marks::contains));
  }
}
