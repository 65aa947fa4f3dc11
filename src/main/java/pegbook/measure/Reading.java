package pegbook.measure;

import java.util.List;
import java.util.Optional;

/**
 * What came of reading a text as a quantity: the quantity, or why not and what was probably meant.
 */
public sealed interface Reading<Q> {

  /** The text was understood. */
  record Taken<Q>(Q value) implements Reading<Q> {}

  /**
   * The text was not understood.
   *
   * @param fault what is wrong with it
   * @param detail the part that is wrong, in the text's own letters; empty when it is the whole
   * @param mended texts that would be understood and are close to this one, likeliest first
   */
  record Unclear<Q>(Fault fault, String detail, List<String> mended) implements Reading<Q> {
    public Unclear {
      mended = List.copyOf(mended);
    }
  }

  /** Why a text is no quantity of its kind. */
  enum Fault {
    EMPTY,
    TOO_LONG,
    /** It does not begin with a number. */
    NO_NUMBER,
    NO_UNIT,
    UNKNOWN_UNIT,
    /** A good quantity, but of another kind; the detail is that kind's name. */
    OTHER_KIND,
    DECIMAL_COMMA,
    /** A denominator of zero or past a thousand, or a whole number before an improper fraction. */
    FRACTION,
    /**
     * Parts that do not follow from large to small, such as {@code 3.5 ft 6 in}, {@code 3 ft 14
     * in}.
     */
    PARTS,
    /** Something follows that does not belong to it. */
    STRAY
  }

  /** The quantity, when the text was understood. */
  default Optional<Q> taken() {
    return this instanceof Taken<Q> taken ? Optional.of(taken.value()) : Optional.empty();
  }
}
