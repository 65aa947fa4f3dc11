package pegbook.calc.powerline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.powerline.PowerLine.Chosen;
import pegbook.calc.powerline.PowerLine.Line;
import pegbook.figures.Argument;
import pegbook.figures.Formula;
import pegbook.figures.Need;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.job.Power;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Quantity;
import pegbook.measure.Ratio;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;

/** What the power line takes from the shops. */
final class PowerLineNeeds {
  private static final Ratio WIRE_WASTE = Ratio.ofPercent(5);

  /** A coupling joins each length to the next: pipes with a socket need none, and spare is kept. */
  private static final int BENDS = 2;

  private final Job job;
  private final Power power;
  private final Line line;
  private final boolean imperial;
  private final PowerLineFormulas formulas;
  private final List<Working> workings = new ArrayList<>();
  private final List<Need> needs = new ArrayList<>();

  private PowerLineNeeds(Job job, Power power, Line line) {
    this.job = job;
    this.power = power;
    this.line = line;
    this.imperial = job.heading().units() == UnitSystem.IMPERIAL;
    this.formulas = PowerLineFormulas.in(job.heading().units());
  }

  /** Needs with what they are worked from. */
  record Planned(List<Need> needs, List<Working> workings) {}

  static Planned of(Job job, Power power, Line line) {
    PowerLineNeeds planner = new PowerLineNeeds(job, power, line);
    planner.pipes();
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

  /** Pipe in sold lengths; each offcut is joined on, so that lengths are simply filled up. */
  private void pipes() {
    Length sold = imperial ? Length.ofFeet(10) : new Length(3);
    Length wanted = line.route().length();
    double amount = wanted.dividedBy(sold);
    Optional<Double> pieces = Optional.empty();
    if (power.wiring().method() != Power.Method.DIRECT_BURIAL) {
      pieces = Optional.of(work(formulas.pieces("conduit"), wanted, sold).result());
      boolean metal = power.wiring().method() == Power.Method.METAL_CONDUIT;
      need(
          metal ? "power-metal-conduit" : "power-conduit",
          pipe(line.trench().pipe(), sold),
          amount,
          pieces.get(),
          Unit.NONE);
      fittings(line.trench().pipe(), pieces.get());
    }
    if (line.trench().data().isPresent()) {
      PowerLine.Pipe data = line.trench().data().get();
      double dataPieces =
          pieces.orElseGet(() -> work(formulas.pieces("conduit"), wanted, sold).result());
      need("power-data-conduit", pipe(data, sold), amount, dataPieces, Unit.NONE);
      fittings(data, dataPieces);
      roll("power-data-cable", "data-cable", Map.of(), 1, line.route().oneWay());
    }
  }

  private Map<String, Argument> pipe(PowerLine.Pipe pipe, Length sold) {
    Map<String, Argument> words = new LinkedHashMap<>();
    words.put("size", Argument.words(pipe.name()));
    words.put("stock", Argument.of(sold));
    words.put("outside", Argument.of(pipe.outside()));
    words.put("inside", Argument.of(pipe.inside()));
    return words;
  }

  /** A coupling at each joint, a bend up at each end and at each corner. */
  private void fittings(PowerLine.Pipe pipe, double pieces) {
    Map<String, Argument> size = Map.of("size", Argument.words(pipe.name()));
    int corners = Math.max(0, power.route().size() - 2);
    double bends = BENDS + (double) corners;
    need("power-bends", size, bends, bends, Unit.NONE);
    double couplings = Math.max(0, pieces - 1) + bends;
    need("power-couplings", size, couplings, couplings, Unit.NONE);
  }

  private void conductors(Chosen chosen) {
    Argument metal = Argument.entry("power-line.metal." + power.wiring().metal().id());
    boolean cable = !imperial || power.wiring().method() == Power.Method.DIRECT_BURIAL;
    Map<String, Argument> words = new LinkedHashMap<>();
    words.put("size", Argument.words(chosen.size()));
    words.put("metal", metal);
    if (cable) {
      words.put("cores", Argument.of(chosen.loaded() + 1L));
      roll("power-cable", "cable", words, 1, line.route().oneWay());
    } else {
      roll("power-wire", "wire", words, chosen.loaded(), line.route().oneWay());
      Map<String, Argument> earth = new LinkedHashMap<>();
      earth.put("size", Argument.words(chosen.earth()));
      earth.put("metal", metal);
      roll("power-earth-wire", "earth-wire", earth, 1, line.route().oneWay());
    }
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
