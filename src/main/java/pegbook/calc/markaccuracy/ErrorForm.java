package pegbook.calc.markaccuracy;

import java.util.LinkedHashMap;
import java.util.Map;
import pegbook.geometry.Covariance;
import pegbook.geometry.TapeFix;

/**
 * The error of a place as a sum of causes that know nothing of each other, each with its standard
 * deviation east and north. Two places that share a cause, such as the baseline's length, are off
 * together.
 */
final class ErrorForm {
  private final Map<String, Part> parts = new LinkedHashMap<>();

  /** What one cause does, metres: its standard deviation times its direction. */
  private record Part(double east, double north) {}

  private ErrorForm() {}

  /** No error. */
  static ErrorForm none() {
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

  ErrorForm plus(ErrorForm other) {
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

  Covariance covariance() {
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
