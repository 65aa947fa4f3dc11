package pegbook.figures;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import pegbook.geometry.Covariance;
import pegbook.geometry.TapeFix;

/**
 * The error of a place as a sum of causes that know nothing of each other, each with its standard
 * deviation east and north. Two places that share a cause, such as the baseline's length, are off
 * together.
 */
public final class ErrorForm {
  private final Map<String, Part> parts = new LinkedHashMap<>();

  /** What one cause does, metres: its standard deviation times its direction. */
  private record Part(double east, double north) {}

  private static final Part NOTHING = new Part(0, 0);

  private ErrorForm() {}

  /** No error. */
  public static ErrorForm none() {
    return new ErrorForm();
  }

  /** One cause that acts along a direction. */
  static ErrorForm of(String cause, double sigmaMetres, double east, double north) {
    return none().plus(cause, sigmaMetres * east, sigmaMetres * north);
  }

  private ErrorForm plus(String cause, double east, double north) {
    ErrorForm sum = new ErrorForm();
    sum.parts.putAll(parts);
    sum.parts.merge(
        cause,
        new Part(east, north),
        (one, more) -> new Part(one.east() + more.east(), one.north() + more.north()));
    return sum;
  }

  public ErrorForm plus(ErrorForm other) {
    ErrorForm sum = this;
    for (Map.Entry<String, Part> part : other.parts.entrySet()) {
      sum = sum.plus(part.getKey(), part.getValue().east(), part.getValue().north());
    }
    return sum;
  }

  /** What it does to a mark when it moves the beginning of one of the mark's tapes. */
  ErrorForm seen(TapeFix.Pull pull) {
    ErrorForm seen = new ErrorForm();
    parts.forEach(
        (cause, part) -> {
          double along = part.east() * pull.eastAlong() + part.north() * pull.northAlong();
          seen.parts.put(cause, new Part(along * pull.eastGain(), along * pull.northGain()));
        });
    return seen;
  }

  /**
   * How far two places may be off along a direction, one against the other: what both have in
   * common does not count.
   *
   * @param east east part of the direction, of length one
   * @param north north part
   * @return variance, square metres
   */
  public double varianceAgainst(ErrorForm other, double east, double north) {
    double sum = 0;
    Set<String> causes = new LinkedHashSet<>(parts.keySet());
    causes.addAll(other.parts.keySet());
    for (String cause : causes) {
      Part own = parts.getOrDefault(cause, NOTHING);
      Part others = other.parts.getOrDefault(cause, NOTHING);
      double along = (own.east() - others.east()) * east + (own.north() - others.north()) * north;
      sum += along * along;
    }
    return sum;
  }

  /** Where the place may lie. */
  public Covariance covariance() {
    double east = 0;
    double eastNorth = 0;
    double north = 0;
    for (Part part : parts.values()) {
      east += part.east() * part.east();
      eastNorth += part.east() * part.north();
      north += part.north() * part.north();
    }
    return new Covariance(east, eastNorth, north);
  }
}
