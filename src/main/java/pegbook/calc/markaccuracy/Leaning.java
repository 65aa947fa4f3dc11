package pegbook.calc.markaccuracy;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.calc.markaccuracy.MarkAccuracy.Lean;
import pegbook.figures.PlacedMark;
import pegbook.geometry.ErrorEllipse;

/** Which way an error mostly lies, told by the marks that the helper can see. */
record Leaning(List<PlacedMark> marks) {
  /** An ellipse no longer than this many times its width is as good as a circle. */
  private static final double ROUND = 1.2;

  /** A line within so many degrees of the ellipse's axis stands for it. */
  private static final double ALIKE_DEGREES = 15;

  /**
   * Told by the marks that the mark is taped from, then by any other, then by its azimuth.
   *
   * @param mark the mark that may be off
   * @param first the mark of its first tape
   * @param second the mark of its second tape
   */
  Lean of(ErrorEllipse ellipse, PlacedMark mark, PlacedMark first, PlacedMark second) {
    if (ellipse.semiMajor().metres() == 0) {
      return new Lean.Nowhere();
    }
    if (ellipse.semiMajor().metres() <= ROUND * ellipse.semiMinor().metres()) {
      return new Lean.AllRound();
    }
    List<PlacedMark> own =
        Stream.of(first, second).filter(other -> !other.equals(mark)).distinct().toList();
    Optional<Lean> told =
        nearest(ellipse, mark, own, 0)
            .<Lean>map(Lean.Towards::new)
            .or(() -> nearest(ellipse, mark, own, 90).map(Lean.SquareTo::new))
            .or(() -> nearest(ellipse, mark, marks, 0).map(Lean.Towards::new));
    return told.orElseGet(() -> new Lean.Azimuth(ellipse.azimuth()));
  }

  /** The mark whose line makes nearest to an angle with the long axis. */
  private static Optional<String> nearest(
      ErrorEllipse ellipse, PlacedMark mark, List<PlacedMark> others, double degrees) {
    return others.stream()
        .filter(other -> !other.equals(mark))
        .filter(other -> off(ellipse, mark, other, degrees) <= ALIKE_DEGREES)
        .min(
            Comparator.comparingLong(other -> Math.round(1e6 * off(ellipse, mark, other, degrees))))
        .map(PlacedMark::id);
  }

  private static double off(
      ErrorEllipse ellipse, PlacedMark mark, PlacedMark other, double degrees) {
    double apart = mark.at().azimuthTo(other.at()).minus(ellipse.azimuth()).degrees();
    double folded = Math.abs(apart - 180 * Math.rint(apart / 180));
    return Math.abs(folded - degrees);
  }
}
