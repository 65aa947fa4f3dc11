package pegbook.calc.steelplan;

import java.util.List;
import java.util.Optional;
import pegbook.measure.Length;
import pegbook.measure.Ratio;
import pegbook.published.Citation;

/**
 * What footings that are alike count as, and the rule for upright steel that follows from it.
 *
 * @param marks the footings
 * @param kind what they count as
 * @param width least width of the concrete
 * @param slenderness whole height to least width
 * @param freeSlenderness height above the ground to least width
 * @param bars upright bars given; none where there is no steel
 * @param given upright steel to concrete; absent where there is none
 * @param asked least upright steel that the rule asks; absent where it asks none, or is not known
 * @param barsWanted bars of the size given that make it; absent where nothing is short
 * @param verdict how the steel stands to the rule
 */
public record Element(
    List<String> marks,
    Kind kind,
    Length width,
    double slenderness,
    double freeSlenderness,
    int bars,
    Optional<Ratio> given,
    Optional<Ratio> asked,
    Optional<Integer> barsWanted,
    Verdict verdict) {
  /** Definitions and rules of pedestals and plain concrete. */
  static final Citation PEDESTAL = new Citation("aci-318-19-memory", "2.3, 14.3.3");

  /** The rules of columns. */
  static final Citation COLUMN = new Citation("aci-318-19-memory", "10.6.1.1, 10.3.1.2");

  /** Concrete shafts in the ground where earthquakes are strong. */
  static final Citation PIER = new Citation("ibc", "1810.3.9.4.2 (2018)");

  public Element {
    marks = List.copyOf(marks);
  }

  /** What a footing counts as. */
  public enum Kind {
    /** No higher than wide: a pad. */
    FOOTING,
    /** No more than three times as high as wide. */
    PEDESTAL,
    /** Higher, but the ground holds it: no more than three widths stand above it. */
    PIER,
    /** More than three widths stand free above the ground. */
    COLUMN;

    /** Where its rule stands. */
    public Citation source() {
      return switch (this) {
        case FOOTING, PEDESTAL -> Element.PEDESTAL;
        case PIER -> Element.PIER;
        case COLUMN -> Element.COLUMN;
      };
    }
  }

  /** How steel stands to the rule of its element. */
  public enum Verdict {
    /** The rule asks for no upright steel. */
    NOT_ASKED,
    /** As much as the rule asks, or more. */
    WITHIN,
    /** Less than the rule asks. */
    LESS,
    /** More than the rule allows. */
    MORE,
    /** The rule is not known for this case: the engineer says. */
    ENGINEER
  }
}
