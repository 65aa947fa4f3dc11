package pegbook.calc.depthtargets;

import java.util.List;
import java.util.Optional;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.job.Frost;
import pegbook.measure.Length;

/**
 * What each rule asks of the depth of footings, and what was decided.
 *
 * @param marks the footings that it holds for
 * @param kind what they are
 * @param place where the job file asks for their depth
 * @param least the code's least depth
 * @param frost the authority's frost depth, where it is known
 * @param asked what the job asks for, where it does
 * @param exemption the leave on which the job stays above the frost depth, where it leans on one
 * @param target the depth target
 * @param rule which rule decided it
 */
public record DepthChoice(
    List<String> marks,
    MarkKind kind,
    String place,
    Length least,
    Optional<Length> frost,
    Optional<Length> asked,
    Optional<Frost.Exemption> exemption,
    Length target,
    Hole.DepthRule rule) {

  /** Depths closer than this are the same: 0.1 mm. */
  static final Length TOLERANCE = Length.ofMillimetres(0.1);

  public DepthChoice {
    marks = List.copyOf(marks);
  }

  /** True when the job asks for less than the authority's frost depth. */
  public boolean asksForLessThanFrost() {
    return asked.isPresent() && frost.isPresent() && isLess(asked.get(), frost.get());
  }

  /** True when the job asks for less than the code's least depth. */
  public boolean asksForLessThanLeast() {
    return asked.isPresent() && isLess(asked.get(), least);
  }

  static boolean isLess(Length one, Length other) {
    return one.plus(TOLERANCE).isLessThan(other);
  }
}
