package pegbook.calc.workestimate;

import java.util.List;
import java.util.Optional;
import pegbook.figures.Task;
import pegbook.job.Plan.Estimate;
import pegbook.job.Plan.Work;

/** The hours that a job sets itself: at one hole, else at every hole. */
record OwnEstimates(List<Estimate> estimates) {

  /** What the job says of some work at a hole. */
  Optional<Estimate> find(Work work, String mark) {
    return estimates.stream()
        .filter(estimate -> estimate.work() == work)
        .filter(estimate -> estimate.hole().map(mark::equals).orElse(true))
        .reduce((one, other) -> one.hole().isPresent() ? one : other);
  }

  /** A task with the job's hours where it sets any. */
  Task applied(Task task) {
    return work(task.kind())
        .flatMap(work -> task.mark().flatMap(mark -> find(work, mark)))
        .map(own -> new Task(task.kind(), task.mark(), own.least(), own.most()))
        .orElse(task);
  }

  private static Optional<Work> work(Task.Kind kind) {
    return switch (kind) {
      case DIG -> Optional.of(Work.DIG);
      case CARRY_SPOIL -> Optional.of(Work.CARRY_SPOIL);
      case GRAVEL -> Optional.of(Work.GRAVEL);
      case FORM -> Optional.of(Work.FORM);
      case STEEL -> Optional.of(Work.STEEL);
      case FIRST_LIFT, POUR -> Optional.of(Work.POUR);
      case STRIP -> Optional.of(Work.STRIP);
      case MARK_OUT,
          PROVE,
          SET_PEGS,
          BORE,
          LOOK,
          INSPECTION,
          JOINT,
          TRENCH,
          LAY_PIPE,
          TRENCH_INSPECTION,
          BACKFILL,
          FRAME,
          BOARDS ->
          Optional.empty();
    };
  }
}
