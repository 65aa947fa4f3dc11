package pegbook.figures;

import java.util.Optional;
import pegbook.geometry.Covariance;
import pegbook.geometry.Crossings;
import pegbook.geometry.ErrorEllipse;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.measure.Length;

/**
 * How far marks may be off that are taped from a baseline.
 *
 * <p>What is right by definition: the place of the baseline's first mark, and the direction to its
 * second. The second mark is off along the baseline by the error of the baseline's own length. A
 * mark beside the baseline has the errors of its two tapes, and the second tape also begins at a
 * mark that is off: only the part along that tape counts, which is the baseline's error times the
 * cosine of the angle between the two. A mark on the baseline's own line has the error of one tape
 * along it and the error of the string across it. All errors are small and know nothing of each
 * other; they add up by the law of propagation of variances.
 *
 * @param tape how far one distance may be off
 * @param crossings which marks count as on the baseline's line
 */
public record BaselineErrors(TapeAccuracy tape, Crossings crossings) {
  /** Share of all errors that the tolerance has to hold. */
  public static final double SHARE = 0.95;

  /**
   * Near the baseline's line arcs bend too much for their tangents to stand for them: a mark must
   * lie this many times its largest standard deviation off the line. Own choice, held by trial.
   */
  private static final double LEAST_OFFSET = 4;

  /**
   * Where a mark may lie, or nothing for one so near to the line that nobody can tell.
   *
   * @param baseline from the first to the second mark; the mark is neither of them
   */
  public Optional<ErrorEllipse> at(Segment baseline, Point mark) {
    if (crossings.isOnLine(baseline, mark)) {
      return Optional.of(ErrorEllipse.of(onLine(baseline, mark)));
    }
    ErrorEllipse ellipse = ErrorEllipse.of(beside(baseline, mark));
    double offset = Math.abs(baseline.offsetMetres(mark));
    return Optional.of(ellipse).filter(known -> isTold(known, offset));
  }

  /** True when an error is small beside a mark's distance from the line that gives it. */
  public static boolean isTold(ErrorEllipse ellipse, double offsetMetres) {
    return offsetMetres >= LEAST_OFFSET * ellipse.semiMajor().metres();
  }

  /** Where the second mark may lie. */
  public ErrorEllipse atSecond(Segment baseline) {
    double sigma = tape.sigma(baseline.length()).metres();
    double east = (baseline.to().east() - baseline.from().east()) / baseline.length().metres();
    double north = (baseline.to().north() - baseline.from().north()) / baseline.length().metres();
    return ErrorEllipse.of(Covariance.along(east, north, sigma * sigma));
  }

  /**
   * Standard deviation across the string line: the mark is set to it, and it is held at its ends.
   */
  public Length acrossString(Segment baseline, Point mark) {
    double part = baseline.alongMetres(mark) / baseline.length().metres();
    return tape.reading().times(Math.sqrt(1 + part * part + (1 - part) * (1 - part)));
  }

  private Covariance onLine(Segment baseline, Point mark) {
    double base = baseline.length().metres();
    double east = (baseline.to().east() - baseline.from().east()) / base;
    double north = (baseline.to().north() - baseline.from().north()) / base;
    double along = tape.sigma(baseline.from().distanceTo(mark)).metres();
    double across = acrossString(baseline, mark).metres();
    return Covariance.along(east, north, along * along)
        .plus(Covariance.along(-north, east, across * across));
  }

  private Covariance beside(Segment baseline, Point mark) {
    double first = baseline.from().distanceTo(mark).metres();
    double second = baseline.to().distanceTo(mark).metres();
    double base = baseline.length().metres();
    double firstEast = (mark.east() - baseline.from().east()) / first;
    double firstNorth = (mark.north() - baseline.from().north()) / first;
    double secondEast = (mark.east() - baseline.to().east()) / second;
    double secondNorth = (mark.north() - baseline.to().north()) / second;
    double baseEast = (baseline.to().east() - baseline.from().east()) / base;
    double baseNorth = (baseline.to().north() - baseline.from().north()) / base;
    double cosine = secondEast * baseEast + secondNorth * baseNorth;
    double baseSigma = tape.sigma(new Length(base)).metres() * cosine;
    double one = square(tape.sigma(new Length(first)).metres());
    double two = square(tape.sigma(new Length(second)).metres()) + square(baseSigma);
    double cross = firstEast * secondNorth - firstNorth * secondEast;
    double scale = 1 / (cross * cross);
    return new Covariance(
        (secondNorth * secondNorth * one + firstNorth * firstNorth * two) * scale,
        -(secondNorth * secondEast * one + firstNorth * firstEast * two) * scale,
        (secondEast * secondEast * one + firstEast * firstEast * two) * scale);
  }

  private static double square(double value) {
    return value * value;
  }
}
