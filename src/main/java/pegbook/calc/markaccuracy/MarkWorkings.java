package pegbook.calc.markaccuracy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import pegbook.figures.BaselineErrors;
import pegbook.figures.Formula;
import pegbook.figures.PlacedMark;
import pegbook.figures.TapeAccuracy;
import pegbook.figures.Working;
import pegbook.geometry.ErrorEllipse;
import pegbook.geometry.Swing;
import pegbook.job.Layout.TapeItself;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Quantity;
import pegbook.published.TapeLimit;

/** Works the errors of the marks that decide, step by step, for the engineer with a pencil. */
final class MarkWorkings {
  private final MarkAccuracyFormulas formulas;
  private final BaselineErrors errors;
  private final Map<String, Working> workings = new LinkedHashMap<>();

  MarkWorkings(MarkAccuracyFormulas formulas, BaselineErrors errors) {
    this.formulas = formulas;
    this.errors = errors;
  }

  List<Working> all() {
    return List.copyOf(workings.values());
  }

  /**
   * Works a mark that is swung from two others.
   *
   * @return the radius that holds 95 % of its errors
   */
  Length swing(PlacedMark mark, PlacedMark first, PlacedMark second) {
    String subject = mark.id() + " (" + first.id() + ", " + second.id() + ")";
    Length a = first.at().distanceTo(mark.at());
    Length b = second.at().distanceTo(mark.at());
    Length c = first.at().distanceTo(second.at());
    Length one = distance(first, mark);
    Length two = distance(second, mark);
    Length base = distance(first, second);
    Length whole = worked(formulas.second(), subject, two, base, a, b, c).asLength();
    Quantity crossing = Swing.angleAt(mark.at(), first.at(), second.at());
    Length major = worked(formulas.major(), subject, one, whole, crossing).asLength();
    Length minor = worked(formulas.minor(), subject, one, whole, crossing, major).asLength();
    return worked(formulas.radius(), subject, major, minor).asLength();
  }

  /** Works the radius of an ellipse that was come by otherwise. */
  Length radius(String mark, ErrorEllipse ellipse) {
    return worked(formulas.radius(), mark, ellipse.semiMajor(), ellipse.semiMinor()).asLength();
  }

  private Length distance(PlacedMark from, PlacedMark to) {
    String subject = from.id() + "–" + to.id();
    TapeAccuracy tape = errors.tape();
    Length distance = from.at().distanceTo(to.at());
    Length part = tapePart(subject, distance);
    return worked(formulas.distance(), subject, tape.reading(), part, tape.division()).asLength();
  }

  private Length tapePart(String subject, Length distance) {
    if (errors.tape().itself() instanceof TapeItself.OfClass tape) {
      TapeLimit limit = TapeLimit.find(tape.tapeClass().name());
      return worked(
              formulas.ofClass(tape.tapeClass()),
              subject,
              limit.constant(),
              new Count(limit.millimetresPerMetre()),
              distance,
              limit.fromEnd())
          .asLength();
    }
    TapeItself.Growing growing = errors.tape().growing();
    return worked(formulas.growing(), subject, growing.error(), growing.over(), distance)
        .asLength();
  }

  /** Keeps a working once. */
  private Working worked(Formula formula, String subject, Quantity... quantities) {
    String key = formula.id() + " " + subject;
    workings.putIfAbsent(key, Working.of(formula, subject, quantities));
    return Objects.requireNonNull(workings.get(key));
  }
}
