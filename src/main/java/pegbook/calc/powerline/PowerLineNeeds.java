package pegbook.calc.powerline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.powerline.PowerLine.Chosen;
import pegbook.calc.powerline.PowerLine.Line;
import pegbook.calc.powerline.PowerLine.PipeRun;
import pegbook.figures.Argument;
import pegbook.figures.Formula;
import pegbook.figures.Need;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.job.Power;
import pegbook.measure.Area;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Quantity;
import pegbook.measure.Ratio;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.published.Wire;

/** What the power line takes from the shops. */
final class PowerLineNeeds {
  private static final Ratio WIRE_WASTE = Ratio.ofPercent(5);

  private final Job job;
  private final Power power;
  private final Line line;
  private final boolean imperial;
  private final PowerLineFormulas formulas;
  private final List<Working> workings = new ArrayList<>();
  private final List<Need> needs = new ArrayList<>();

  /** Of the chosen size in its series. */
  private final int index;

  private PowerLineNeeds(Job job, Power power, Line line, int index) {
    this.index = index;
    this.job = job;
    this.power = power;
    this.line = line;
    this.imperial = job.heading().units() == UnitSystem.IMPERIAL;
    this.formulas = PowerLineFormulas.in(job.heading().units());
  }

  /** Needs with what they are worked from. */
  record Planned(List<Need> needs, List<Working> workings) {}

  static Planned of(Job job, Power power, Line line, int index) {
    PowerLineNeeds planner = new PowerLineNeeds(job, power, line, index);
    planner.fittings();
    line.conductors().chosen().ifPresent(planner::conductors);
    planner.roll("power-warning-tape", "warning-tape", Map.of(), 1, line.route().length());
    planner.sand();
    return new Planned(planner.needs, planner.workings);
  }

  private Working work(Formula formula, Quantity... quantities) {
    Working working = Working.of(formula, "", quantities);
    workings.add(working);
    return working;
  }

  private void need(
      String id, Map<String, Argument> words, double amount, double order, Unit unit) {
    needs.add(new Need(id, words, amount, order, unit, Optional.empty()));
  }

  /** Bends and couplings; straight pipe is the cut plan's to order. */
  private void fittings() {
    for (PipeRun run : line.pipes()) {
      Map<String, Argument> size = Map.of("size", Argument.words(run.size()));
      need("power-bends", size, run.bends(), run.bends(), Unit.NONE);
      need("power-couplings", size, run.couplings(), run.couplings(), Unit.NONE);
    }
    if (line.trench().data().isPresent()) {
      roll("power-data-cable", "data-cable", Map.of(), 1, line.route().oneWay());
    }
  }

  private void conductors(Chosen chosen) {
    Argument metal = Argument.entry("power-line.metal." + power.wiring().metal().id());
    boolean cable = !imperial || power.wiring().method() == Power.Method.DIRECT_BURIAL;
    Map<String, Argument> words = new LinkedHashMap<>();
    words.put("size", Argument.words(chosen.size()));
    words.put("metal", metal);
    if (cable) {
      words.put("cores", Argument.of(chosen.loaded() + 1L));
      if (!imperial) {
        Area each = MetricSeries.cable(index).area();
        double outside = MetricSeries.cable(index).outside().metres();
        areas(
            words,
            new Area(each.squareMetres() * (chosen.loaded() + 1)),
            new Area(Math.PI / 4 * outside * outside));
      }
      roll("power-cable", "cable", words, 1, line.route().oneWay());
    } else {
      areas(words, chosen.size());
      roll("power-wire", "wire", words, chosen.loaded(), line.route().oneWay());
      Map<String, Argument> earth = new LinkedHashMap<>();
      earth.put("size", Argument.words(chosen.earth()));
      earth.put("metal", metal);
      areas(earth, chosen.earth());
      roll("power-earth-wire", "earth-wire", earth, 1, line.route().oneWay());
    }
  }

  /** Metal and whole area of an insulated conductor, for what it weighs. */
  private static void areas(Map<String, Argument> words, String size) {
    Wire wire = Wire.find(size.replace(" AWG", ""));
    wire.insulated()
        .ifPresent(
            whole ->
                areas(words, Area.ofSquareInches(Math.PI / 4 * wire.circularMils() / 1e6), whole));
  }

  private static void areas(Map<String, Argument> words, Area metal, Area whole) {
    words.put("conducting", Argument.of(metal));
    words.put("whole", Argument.of(whole));
  }

  private void roll(
      String id, String formula, Map<String, Argument> words, int count, Length each) {
    Working order = work(formulas.roll(formula), new Count(count), each, WIRE_WASTE);
    Unit unit = formulas.far();
    need(id, words, count * unit.in(each), order.result(), unit);
  }

  /** Sand by the heap in quarters, as gravel is. */
  private void sand() {
    Volume sand = line.trench().sand();
    Unit unit = imperial ? Unit.CUBIC_YARD : Unit.CUBIC_METRE;
    double quarter = 0.25;
    double amount = unit.in(sand);
    if (amount > 0 && job.power().isPresent()) {
      need("power-sand", Map.of(), amount, Rounding.UP.steps(amount, quarter) * quarter, unit);
    }
  }
}
