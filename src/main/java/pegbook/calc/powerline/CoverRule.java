package pegbook.calc.powerline;

import java.util.Optional;
import pegbook.calc.powerline.PowerLine.Rule;
import pegbook.job.Job;
import pegbook.job.Power;
import pegbook.measure.Length;
import pegbook.published.BurialDepth;
import pegbook.published.BurialDepth.Column;
import pegbook.published.Citation;

/**
 * Least cover over the line, to the top of pipe or cable: in the United States by the code's table,
 * elsewhere by habit; deeper where the authority said so.
 *
 * @param listed by the table or the habit
 * @param cover what is dug for
 * @param rule which of them decided
 */
record CoverRule(Length listed, Length cover, Rule rule) {
  /** Elsewhere: common practice, no source; under traffic a spade more. */
  private static final Length HABIT = Length.ofMillimetres(600);

  private static final Length HABIT_UNDER_TRAFFIC = Length.ofMillimetres(800);

  private static final double RESIDENTIAL_VOLTS = 120;
  private static final double RESIDENTIAL_AMPERES = 20;
  private static final double LOW_VOLTS = 30;

  /** The four conditions of the table's shallow column, each by itself. */
  record Residential(boolean volts, boolean groundFault, boolean amperes, boolean branch) {
    static Residential of(Power.Supply supply) {
      return new Residential(
          supply.voltage().volts() <= RESIDENTIAL_VOLTS + 1e-9,
          supply.groundFault(),
          supply.breaker().amperes() <= RESIDENTIAL_AMPERES + 1e-9,
          supply.circuit() == Power.Circuit.RESIDENTIAL_BRANCH);
    }

    boolean all() {
      return volts && groundFault && amperes && branch;
    }
  }

  /** Least cover of a stretch with something over it, or of open ground. */
  static CoverRule of(Job job, Power power, Optional<Power.Cover> under) {
    boolean table = job.place().isUnitedStates();
    Length listed = table ? listed(power, under) : habit(under);
    Length authority = power.depth().map(Power.Depth::cover).orElse(Length.ZERO);
    boolean deeper = authority.isMoreThan(listed);
    boolean agreed = power.depth().isPresent() && !authority.isLessThan(listed);
    return new CoverRule(
        listed,
        deeper ? authority : listed,
        deeper || agreed ? Rule.AUTHORITY : table ? Rule.CODE : Rule.HABIT);
  }

  private static Length habit(Optional<Power.Cover> under) {
    boolean traffic =
        under
            .filter(cover -> cover == Power.Cover.DWELLING_DRIVEWAY || cover == Power.Cover.STREET)
            .isPresent();
    return traffic ? HABIT_UNDER_TRAFFIC : HABIT;
  }

  private static Length listed(Power power, Optional<Power.Cover> under) {
    BurialDepth row = BurialDepth.find(under.map(Power.Cover::id).orElse("open-ground"));
    boolean raceway = power.wiring().method() != Power.Method.DIRECT_BURIAL;
    Length byMethod = row.cover(column(power.wiring().method()), raceway);
    if (isLowVoltage(power.supply())) {
      return byMethod.min(row.cover(Column.LOW_VOLTAGE, raceway));
    }
    return Residential.of(power.supply()).all()
        ? byMethod.min(row.cover(Column.RESIDENTIAL, raceway))
        : byMethod;
  }

  private static boolean isLowVoltage(Power.Supply supply) {
    return supply.circuit() == Power.Circuit.LANDSCAPE_LIGHTING
        && supply.voltage().volts() <= LOW_VOLTS + 1e-9;
  }

  private static Column column(Power.Method method) {
    return switch (method) {
      case CONDUIT -> Column.CONDUIT;
      case METAL_CONDUIT -> Column.METAL;
      case DIRECT_BURIAL -> Column.DIRECT;
    };
  }

  /** Where the listed cover stands. */
  static Citation source(Job job) {
    return job.place().isUnitedStates()
        ? BurialDepth.find("open-ground").citation()
        : Citation.COMMON_PRACTICE;
  }
}
