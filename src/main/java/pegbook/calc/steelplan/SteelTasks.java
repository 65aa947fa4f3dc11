package pegbook.calc.steelplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.figures.BarPiece;
import pegbook.figures.Task;
import pegbook.measure.Duration;

/** Cutting, bending, tying and setting the steel, in person-hours. Common practice, no source. */
final class SteelTasks {
  private static final double CUT_LEAST_MINUTES = 1;
  private static final double CUT_MOST_MINUTES = 3;
  private static final double BEND_LEAST_MINUTES = 3;
  private static final double BEND_MOST_MINUTES = 8;
  private static final double TIE_LEAST_MINUTES = 0.5;
  private static final double TIE_MOST_MINUTES = 1;
  private static final double SET_LEAST_MINUTES = 10;
  private static final double SET_MOST_MINUTES = 30;

  private SteelTasks() {}

  static List<Task> of(List<Cage> cages) {
    List<Task> tasks = new ArrayList<>();
    for (Cage cage : cages) {
      Duration least =
          minutes(
              cage, CUT_LEAST_MINUTES, BEND_LEAST_MINUTES, TIE_LEAST_MINUTES, SET_LEAST_MINUTES);
      Duration most =
          minutes(cage, CUT_MOST_MINUTES, BEND_MOST_MINUTES, TIE_MOST_MINUTES, SET_MOST_MINUTES);
      cage.marks()
          .forEach(mark -> tasks.add(new Task(Task.Kind.STEEL, Optional.of(mark), least, most)));
    }
    return tasks;
  }

  private static Duration minutes(Cage cage, double cut, double bend, double tie, double set) {
    int pieces = cage.pieces().stream().mapToInt(BarPiece::count).sum();
    int rings = cage.rings().map(SteelPlan.Rings::count).orElse(0);
    int hooked =
        cage.pieces().stream()
            .filter(piece -> piece.shape() == BarPiece.Shape.HOOKED_ONE_END)
            .mapToInt(BarPiece::count)
            .sum();
    return Duration.ofMinutes(
        pieces * cut + (rings + hooked) * bend + rings * cage.bars() * tie + set);
  }
}
