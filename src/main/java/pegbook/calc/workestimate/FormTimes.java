package pegbook.calc.workestimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.figures.FrostSleeve;
import pegbook.figures.Hole;
import pegbook.figures.Task;
import pegbook.job.Job;
import pegbook.job.Pier;
import pegbook.measure.Duration;

/**
 * Setting forms, sleeves (for cables, against frost) and anchor templates, and stripping the forms,
 * in person-hours. Common practice, no source.
 */
final class FormTimes {
  private static final double FORM_LEAST_MINUTES = 10;
  private static final double FORM_MOST_MINUTES = 30;
  private static final double INSERT_LEAST_MINUTES = 10;
  private static final double INSERT_MOST_MINUTES = 25;
  private static final double JOINT_LEAST_MINUTES = 20;
  private static final double JOINT_MOST_MINUTES = 60;
  private static final Duration STRIP_LEAST = Duration.ofMinutes(5);
  private static final Duration STRIP_MOST = Duration.ofMinutes(20);

  private FormTimes() {}

  static List<Task> of(Job job, List<Hole> holes, List<FrostSleeve> sleeves) {
    List<Task> tasks = new ArrayList<>();
    holes.forEach(hole -> form(job, hole, sleeves).ifPresent(tasks::add));
    holes.stream()
        .filter(hole -> hole.joint().isPresent())
        .map(FormTimes::joint)
        .forEach(tasks::add);
    holes.stream()
        .filter(hole -> hole.tube().isPresent() || hole.widenings().cap().isPresent())
        .map(hole -> task(Task.Kind.STRIP, hole, STRIP_LEAST, STRIP_MOST))
        .forEach(tasks::add);
    return tasks;
  }

  private static Optional<Task> form(Job job, Hole hole, List<FrostSleeve> sleeves) {
    int forms = hole.isFormedOnJoint() ? 0 : forms(hole);
    int inserts =
        job.piers().stream()
            .filter(pier -> pier.id().equals(hole.mark()))
            .mapToInt(FormTimes::inserts)
            .sum();
    if (sleeves.stream().anyMatch(sleeve -> sleeve.mark().equals(hole.mark()))) {
      inserts++;
    }
    if (forms + inserts == 0) {
      return Optional.empty();
    }
    return Optional.of(
        task(
            Task.Kind.FORM,
            hole,
            Duration.ofMinutes(forms * FORM_LEAST_MINUTES + inserts * INSERT_LEAST_MINUTES),
            Duration.ofMinutes(forms * FORM_MOST_MINUTES + inserts * INSERT_MOST_MINUTES)));
  }

  /** The joint of two lifts: brushed, roughened, its bars lapped, the form set where it begins. */
  private static Task joint(Hole hole) {
    int forms = hole.isFormedOnJoint() ? forms(hole) : 0;
    return task(
        Task.Kind.JOINT,
        hole,
        Duration.ofMinutes(JOINT_LEAST_MINUTES + forms * FORM_LEAST_MINUTES),
        Duration.ofMinutes(JOINT_MOST_MINUTES + forms * FORM_MOST_MINUTES));
  }

  /** A tube, and the form of a cap. */
  private static int forms(Hole hole) {
    return (hole.tube().isPresent() ? 1 : 0) + (hole.widenings().cap().isPresent() ? 1 : 0);
  }

  private static int inserts(Pier pier) {
    return (pier.sleeve().isPresent() ? 1 : 0) + (pier.anchors().isPresent() ? 1 : 0);
  }

  private static Task task(Task.Kind kind, Hole hole, Duration least, Duration most) {
    return new Task(kind, Optional.of(hole.mark()), least, most);
  }
}
