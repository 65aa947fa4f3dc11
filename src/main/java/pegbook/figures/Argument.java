package pegbook.figures;

import java.time.LocalDate;
import java.util.List;
import pegbook.measure.Quantity;

/** A value that goes into words; the sheets write it in the packet's units. */
public sealed interface Argument {
  /** A quantity, written by its kind: lengths to the sixteenth or millimetre, and so on. */
  record Measured(Quantity quantity) implements Argument {}

  /** A whole number. */
  record Whole(long number) implements Argument {}

  /** Names of marks, holes or features, joined with commas. */
  record Names(List<String> names) implements Argument {
    public Names {
      names = List.copyOf(names);
    }
  }

  /** The job's own words, printed as they are. */
  record Words(String words) implements Argument {}

  /** A further entry of the text bundle, such as the name of a tool or a rule. */
  record Entry(String key) implements Argument {}

  /** A day. */
  record Day(LocalDate day) implements Argument {}

  static Argument of(Quantity quantity) {
    return new Measured(quantity);
  }

  static Argument of(long number) {
    return new Whole(number);
  }

  static Argument of(List<String> names) {
    return new Names(names);
  }

  static Argument of(LocalDate day) {
    return new Day(day);
  }

  /** The job's own words. */
  static Argument words(String words) {
    return new Words(words);
  }

  /** A further entry of the text bundle. */
  static Argument entry(String key) {
    return new Entry(key);
  }
}
