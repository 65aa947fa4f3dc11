package pegbook.calc.workestimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbook.figures.FrostSleeve;
import pegbook.figures.Hole;
import pegbook.figures.Task;
import pegbook.job.Anchors;
import pegbook.job.Pier;
import pegbook.job.Sleeve;
import pegbook.job.Steel;
import pegbook.job.Tube;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.testing.FillJob;

/** Times of forms by hand, from the minutes that the class gives as common practice. */
class FormTimesTest {
  private static Optional<Task> task(FillJob job, Task.Kind kind, String mark) {
    return FormTimes.of(job.job(), job.holes, List.of()).stream()
        .filter(task -> task.kind() == kind && task.mark().equals(Optional.of(mark)))
        .findFirst();
  }

  private static void takes(Optional<Task> task, double least, double most) {
    assertThat(task.orElseThrow().least().minutes()).isEqualTo(least, offset(1e-9));
    assertThat(task.orElseThrow().most().minutes()).isEqualTo(most, offset(1e-9));
  }

  private static FillJob deck() {
    FillJob job = new FillJob();
    job.with(job.hole("S1", 18, 48, 4, 0));
    job.with(job.tube(job.hole("S2", 18, 48, 4, 6), 14, Tube.From.GROUND));
    job.with(job.tube(job.hole("P1", 22, 58, 0, 36), 16, Tube.From.GROUND));
    job.with(job.tube(job.hole("P2", 22, 58, 0, 36), 16, Tube.From.GROUND));
    job.dig.piers.add(pier("P1", true, true));
    job.dig.piers.add(pier("P2", false, true));
    return job;
  }

  /** A tube takes 10 to 30 minutes, each sleeve or template 10 to 25 more. */
  @Test
  void aFormAndItsInserts() {
    FillJob job = deck();
    assertThat(task(job, Task.Kind.FORM, "S1")).isEmpty();
    takes(task(job, Task.Kind.FORM, "S2"), 10, 30);
    takes(task(job, Task.Kind.FORM, "P1"), 10 + 2 * 10, 30 + 2 * 25);
    takes(task(job, Task.Kind.FORM, "P2"), 10 + 10, 30 + 25);
    assertThat(task(job, Task.Kind.STRIP, "S1")).isEmpty();
    takes(task(job, Task.Kind.STRIP, "P2"), 5, 20);
    assertThat(task(job, Task.Kind.JOINT, "P1")).isEmpty();
  }

  /** A sleeve against frost is one thing more, at its own hole only, tube or none. */
  @Test
  void aSleeveAgainstFrost() {
    FillJob job = deck();
    List<FrostSleeve> sleeves =
        List.of(new FrostSleeve("S1", Length.ofInches(18), Length.ofInches(42)));
    List<Task> tasks = FormTimes.of(job.job(), job.holes, sleeves);
    takes(find(tasks, "S1"), 10, 25);
    takes(find(tasks, "S2"), 10, 30);
  }

  private static Optional<Task> find(List<Task> tasks, String mark) {
    return tasks.stream()
        .filter(task -> task.kind() == Task.Kind.FORM && task.mark().equals(Optional.of(mark)))
        .findFirst();
  }

  /** A joint takes 20 to 60 minutes; where the form begins on it, the form is set then. */
  @Test
  void aJointOfTwoLifts() {
    FillJob job = new FillJob();
    job.with(lifts(job, job.tube(job.hole("P1", 22, 58, 0, 36), 16, Tube.From.GROUND), 40));
    job.with(lifts(job, job.tube(job.hole("P2", 22, 58, 0, 36), 16, Tube.From.BOTTOM), 40));
    takes(task(job, Task.Kind.JOINT, "P1"), 20 + 10, 60 + 30);
    assertThat(task(job, Task.Kind.FORM, "P1")).isEmpty();
    takes(task(job, Task.Kind.JOINT, "P2"), 20, 60);
    takes(task(job, Task.Kind.FORM, "P2"), 10, 30);
  }

  private static Hole lifts(FillJob job, Hole hole, double first) {
    return job.starters(
        job.steel(hole, 6, "#5", 3, Optional.empty()),
        Steel.Foot.STRAIGHT,
        Optional.of(Length.ofInches(first)));
  }

  private static Pier pier(String id, boolean withSleeve, boolean withAnchors) {
    Anchors anchors =
        new Anchors(
            3,
            Length.ofInches(0.5),
            Length.ofInches(5.5),
            Length.ofInches(3),
            Length.ofInches(8),
            Angle.ZERO);
    Sleeve sleeve =
        new Sleeve(Length.ofInches(2), Length.ZERO, Angle.ofDegrees(120), Length.ofInches(18));
    return FillJob.fitted(
        id,
        withAnchors ? Optional.of(anchors) : Optional.empty(),
        withSleeve ? Optional.of(sleeve) : Optional.empty());
  }
}
