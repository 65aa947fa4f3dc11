package pegbook.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.measure.NumberText.FractionException;
import pegbook.measure.Reading.Fault;
import pegbook.measure.Reading.Taken;
import pegbook.measure.Reading.Unclear;
import pegbook.measure.SpelledUnit.Joint;

/**
 * How one kind of quantity is written with its unit, and the reader of such texts. It takes whole
 * numbers, decimals with a point, fractions and mixed numbers, each with a unit behind; where the
 * trade joins two units ({@code 12' 9 3/8"}, {@code 8° 30'}), also both, the larger first. A sign
 * in front holds for the whole text. The kinds stand in {@link Notation}.
 */
public final class QuantityNotation<Q> {
  private static final int LONGEST = 60;

  private record Part<Q>(NumberText number, SpelledUnit<Q> unit) {}

  private final QuantityKind kind;
  private final List<SpelledUnit<Q>> units;
  private final List<Joint> joints;
  private final List<String> proposed;

  QuantityNotation(
      QuantityKind kind, List<SpelledUnit<Q>> units, List<Joint> joints, List<String> proposed) {
    this.kind = kind;
    this.units = List.copyOf(units);
    this.joints = List.copyOf(joints);
    this.proposed = List.copyOf(proposed);
  }

  /** The kind of quantity this reads. */
  public QuantityKind kind() {
    return kind;
  }

  /** The symbols of the units it knows. */
  public List<String> symbols() {
    return units.stream().map(SpelledUnit::symbol).toList();
  }

  /** Every spelling of the units it knows. */
  public List<String> spellings() {
    return units.stream().flatMap(unit -> unit.spellings().stream()).toList();
  }

  /** Reads a text; a number without a unit is never taken. */
  public Reading<Q> read(String text) {
    if (text.length() > LONGEST) {
      return new Unclear<>(Fault.TOO_LONG, "", List.of());
    }
    String plain = TradeText.plain(text);
    Reading<Q> first = attempt(plain);
    return first instanceof Unclear<Q> unclear ? explain(plain, unclear) : first;
  }

  private Reading<Q> attempt(String plain) {
    if (plain.isEmpty()) {
      return new Unclear<>(Fault.EMPTY, "", List.of());
    }
    if (DecimalComma.in(plain)) {
      return new Unclear<>(Fault.DECIMAL_COMMA, "", List.of());
    }
    boolean negative = plain.startsWith("-");
    int start = negative || plain.startsWith("+") ? skipSpace(plain, 1) : 0;
    try {
      return parts(plain, start, negative);
    } catch (FractionException impossible) {
      return new Unclear<>(Fault.FRACTION, "", List.of());
    }
  }

  private Reading<Q> parts(String plain, int start, boolean negative) throws FractionException {
    List<Part<Q>> parts = new ArrayList<>();
    int at = start;
    do {
      Optional<NumberText> number = NumberText.at(plain, at);
      if (number.isEmpty()) {
        Fault fault = parts.isEmpty() ? Fault.NO_NUMBER : Fault.STRAY;
        return new Unclear<>(fault, plain.substring(at), List.of());
      }
      int unitAt = skipSpace(plain, number.get().end());
      Optional<SpelledUnit<Q>> unit = unitAt(plain, unitAt);
      if (unit.isEmpty()) {
        Fault fault = unitAt == plain.length() ? Fault.NO_UNIT : Fault.UNKNOWN_UNIT;
        return new Unclear<>(fault, plain.substring(unitAt), List.of());
      }
      parts.add(new Part<>(number.get(), unit.get()));
      at = skipJoint(plain, unitAt + unit.get().lengthAt(plain, unitAt));
    } while (at < plain.length());
    return sum(parts, negative);
  }

  private Reading<Q> sum(List<Part<Q>> parts, boolean negative) {
    double sum = parts.get(0).number().value();
    boolean inOrder = true;
    for (int i = 1; i < parts.size(); i++) {
      Optional<Joint> joint = joint(parts.get(i - 1).unit(), parts.get(i).unit());
      if (joint.isEmpty()) {
        return new Unclear<>(Fault.PARTS, "", List.of());
      }
      NumberText smaller = parts.get(i).number();
      inOrder &= parts.get(i - 1).number().whole() && smaller.value() < joint.get().ratio();
      sum = sum * joint.get().ratio() + smaller.value();
    }
    SpelledUnit<Q> unit = parts.get(parts.size() - 1).unit();
    double signed = negative ? -sum : sum;
    return inOrder
        ? new Taken<>(unit.of().apply(signed))
        : new Unclear<>(
            Fault.PARTS, "", List.of(NumberNotation.typed(signed) + " " + unit.symbol()));
  }

  private Unclear<Q> explain(String plain, Unclear<Q> unclear) {
    return switch (unclear.fault()) {
      case NO_UNIT -> {
        boolean bare =
            plain.chars().noneMatch(c -> Character.isLetter(c) || "'\"°".indexOf(c) >= 0);
        List<String> endings = bare ? proposed : symbols();
        yield with(unclear, endings.stream().map(ending -> plain + " " + ending).toList());
      }
      case UNKNOWN_UNIT -> {
        String number = plain.substring(0, plain.length() - unclear.detail().length()).strip();
        yield Notation.kindOf(plain, kind)
            .map(other -> new Unclear<Q>(Fault.OTHER_KIND, other.name(), List.of()))
            .orElseGet(() -> with(unclear, nearestUnit(number, unclear.detail())));
      }
      case DECIMAL_COMMA -> with(unclear, DecimalComma.mended(plain));
      default -> unclear;
    };
  }

  private List<String> nearestUnit(String number, String written) {
    return NearestWord.among(spellings(), written).stream()
        .map(spelling -> number + " " + unitAt(spelling, 0).orElseThrow().symbol())
        .toList();
  }

  private Unclear<Q> with(Unclear<Q> unclear, List<String> candidates) {
    List<String> mended = candidates.stream().filter(this::understands).toList();
    return new Unclear<>(unclear.fault(), unclear.detail(), mended);
  }

  /** Whether a plain text is a quantity of this kind. */
  boolean understands(String plain) {
    return attempt(plain) instanceof Taken<Q>;
  }

  private Optional<Joint> joint(SpelledUnit<Q> larger, SpelledUnit<Q> smaller) {
    return joints.stream()
        .filter(joint -> joint.larger().equals(larger.symbol()))
        .filter(joint -> joint.smaller().equals(smaller.symbol()))
        .findFirst();
  }

  private Optional<SpelledUnit<Q>> unitAt(String plain, int at) {
    return units.stream()
        .filter(unit -> unit.lengthAt(plain, at) > 0)
        .max((one, other) -> Integer.compare(one.lengthAt(plain, at), other.lengthAt(plain, at)));
  }

  /** Past the hyphen or comma that may stand between two parts, as in {@code 3'-6"}. */
  private static int skipJoint(String plain, int at) {
    int next = skipSpace(plain, at);
    boolean joint = next < plain.length() - 1 && "-,".indexOf(plain.charAt(next)) >= 0;
    return joint ? skipSpace(plain, next + 1) : next;
  }

  private static int skipSpace(String plain, int at) {
    return at < plain.length() && plain.charAt(at) == ' ' ? at + 1 : at;
  }
}
