package pegbook.calc.safepegs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.safepegs.SafePegs.Peg;
import pegbook.calc.safepegs.SafePegs.PegString;
import pegbook.figures.Need;
import pegbook.figures.Task;
import pegbook.measure.Duration;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;

/** What pegs and strings take: things to buy, and time. Shares and times are common practice. */
record PegWork(boolean imperial, List<Peg> pegs, List<PegString> strings) {
  private static final Duration PEG_LEAST = Duration.ofMinutes(5);
  private static final Duration PEG_MOST = Duration.ofMinutes(15);
  private static final Duration MARK_LEAST = Duration.ofMinutes(3);
  private static final Duration MARK_MOST = Duration.ofMinutes(8);

  /** One peg in so many breaks or is knocked out. */
  private static final long PEGS_A_SPARE = 10;

  /** Two strings are stretched at a time, each with this much to tie. */
  private static final int STRINGS_AT_A_TIME = 2;

  /** A strip that is seen from afar. */
  private static final Length STRIP = Length.ofMillimetres(600);

  private static final Length ROLL = Length.ofFeet(150);

  private static final Length TO_TIE = Length.ofMillimetres(600);

  List<Need> needs() {
    List<Need> needs = new ArrayList<>();
    if (!pegs.isEmpty()) {
      long order = pegs.size() + Rounding.UP.steps(pegs.size(), PEGS_A_SPARE);
      needs.add(count("safe-pegs", pegs.size(), order));
      needs.add(count("peg-nails", pegs.size(), order));
    }
    if (!strings.isEmpty()) {
      Unit unit = imperial ? Unit.FOOT : Unit.METRE;
      double amount = unit.in(string());
      needs.add(
          new Need(
              "peg-string",
              Map.of(),
              amount,
              (double) Rounding.UP.steps(amount, 1),
              unit,
              Optional.empty()));
    }
    if (!pegs.isEmpty()) {
      needs.add(flagging());
    }
    return needs;
  }

  /** A strip to every peg, two to every string that is stretched at a time. */
  private Need flagging() {
    Length strips = STRIP.times(pegs.size() + 2.0 * Math.min(strings.size(), STRINGS_AT_A_TIME));
    double rolls = strips.dividedBy(ROLL);
    return new Need(
        "flagging",
        Map.of(),
        rolls,
        (double) Rounding.UP.steps(rolls, 1),
        Unit.NONE,
        Optional.empty());
  }

  private static Need count(String id, long amount, long order) {
    return new Need(id, Map.of(), amount, order, Unit.NONE, Optional.empty());
  }

  private Length string() {
    return strings.stream()
        .map(PegString::length)
        .sorted(Comparator.reverseOrder())
        .limit(STRINGS_AT_A_TIME)
        .map(length -> length.plus(TO_TIE))
        .reduce(Length.ZERO, Length::plus);
  }

  /** Setting every peg, then measuring back to every mark while it is there. */
  List<Task> tasks(int marks) {
    return pegs.isEmpty()
        ? List.of()
        : List.of(
            new Task(
                Task.Kind.SET_PEGS,
                Optional.empty(),
                PEG_LEAST.times(pegs.size()).plus(MARK_LEAST.times(marks)),
                PEG_MOST.times(pegs.size()).plus(MARK_MOST.times(marks))));
  }
}
