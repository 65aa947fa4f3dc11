package pegbook.calc.safetynotes;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.figures.Finding;
import pegbook.figures.Result;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.published.Citation;
import pegbook.published.MarkingColour;

/**
 * The safety notes of a job.
 *
 * @param notes by stage; in a stage the most dangerous first
 * @param liftings how bags are lifted, and what one person should lift so; none without bags
 * @param heatTable what heat feels like, where it may come and the job does not say how much
 * @param findings holes that must not be dug as they stand
 * @param workings the limit for lifting, the heat
 */
public record SafetyNotes(
    List<Note> notes,
    List<Lifting> liftings,
    Optional<HeatTable> heatTable,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public SafetyNotes {
    notes = List.copyOf(notes);
    liftings = List.copyOf(liftings);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  @Override
  public List<Citation> sources() {
    return Stream.concat(
            notes.stream().flatMap(note -> note.citations().stream()),
            Stream.of(MarkingColour.SOURCE))
        .distinct()
        .toList();
  }

  /** The notes of a stage. */
  public List<Note> during(Note.Stage stage) {
    return notes.stream().filter(note -> note.stage() == stage).toList();
  }

  /**
   * The dangers that matter most on a day.
   *
   * @param holes marks that are worked at on that day
   * @param tasks what is done there
   * @param most how many at most
   */
  public List<Note> dangers(List<String> holes, List<Task.Kind> tasks, int most) {
    return notes.stream()
        .filter(note -> note.matters(holes, tasks))
        .sorted(Comparator.comparingInt(Note::danger))
        .limit(most)
        .toList();
  }
}
