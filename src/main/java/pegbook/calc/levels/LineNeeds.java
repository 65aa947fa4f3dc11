package pegbook.calc.levels;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.levels.Levels.Row;
import pegbook.figures.Argument;
import pegbook.figures.Need;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;

/**
 * What the datum line takes: a stake at each end and at each place where it is propped, and its
 * string. Lengths to drive and to tie are common practice.
 */
final class LineNeeds {
  /** How deep a stake is driven. */
  private static final Length DRIVEN = Length.ofMillimetres(450);

  private static final Length TO_TIE = Length.ofMillimetres(600);

  private LineNeeds() {}

  static List<Need> of(Job job, List<Row> rows, LineSag sag) {
    boolean imperial = job.heading().units() == UnitSystem.IMPERIAL;
    List<Need> needs = new ArrayList<>();
    int stakes = sag.spans() + 1;
    needs.add(
        new Need(
            "datum-stakes",
            Map.of("length", Argument.of(stake(rows, imperial))),
            stakes,
            stakes,
            Unit.NONE,
            Optional.empty()));
    Unit unit = imperial ? Unit.FOOT : Unit.METRE;
    double string = unit.in(sag.span().plus(TO_TIE));
    needs.add(
        new Need(
            "datum-string",
            Map.of(),
            string,
            (double) Rounding.UP.steps(string, 1),
            unit,
            Optional.empty()));
    return needs;
  }

  /** From under the lowest ground up to the line, in whole feet or half metres. */
  private static Length stake(List<Row> rows, boolean imperial) {
    Length highest =
        rows.stream().map(Row::toGround).max(Comparator.naturalOrder()).orElse(Length.ZERO);
    Length step = imperial ? Length.ofFeet(1) : Length.ofMillimetres(500);
    return highest.max(Length.ZERO).plus(DRIVEN).setTo(step, Rounding.UP);
  }
}
