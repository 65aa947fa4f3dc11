package pegbook.calc.powerline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.powerline.PowerLine.Pipe;
import pegbook.calc.powerline.PowerLine.Route;
import pegbook.calc.powerline.PowerLine.Stretch;
import pegbook.calc.powerline.PowerLine.Trench;
import pegbook.figures.Formula;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.job.Power;
import pegbook.measure.Length;
import pegbook.measure.Quantity;
import pegbook.measure.Ratio;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.published.Citation;
import pegbook.published.SwellFactor;

/**
 * The trench: how deep each stretch, how wide, what comes out and what goes in.
 *
 * @param trench the trench
 */
record TrenchPlan(Trench trench, List<Working> workings) {
  /** Ground between power and data, by habit; some codes ask for as much. */
  private static final Length APART_IMPERIAL = Length.ofInches(12);

  private static final Length APART_METRIC = Length.ofMillimetres(300);

  /** From the outer pipes to the trench's walls. */
  private static final Length WALL_IMPERIAL = Length.ofInches(2);

  private static final Length WALL_METRIC = Length.ofMillimetres(50);

  /** Works it out. */
  private static final class Worker {
    private final Job job;
    private final Power power;
    private final Route route;
    private final Pipe pipe;
    private final PowerLineFormulas formulas;
    private final boolean imperial;
    private final List<Working> workings = new ArrayList<>();

    Worker(Job job, Power power, Route route, Pipe pipe) {
      this.job = job;
      this.power = power;
      this.route = route;
      this.pipe = pipe;
      this.formulas = PowerLineFormulas.in(job.heading().units());
      this.imperial = job.heading().units() == UnitSystem.IMPERIAL;
    }

    private Working work(Formula formula, String subject, Quantity... quantities) {
      Working working = Working.of(formula, subject, quantities);
      workings.add(working);
      return working;
    }

    private Stretch stretch(int number, Optional<Power.Cover> under, Length length) {
      CoverRule rule = CoverRule.of(job, power, under);
      String label = "T" + number;
      Working depth =
          work(formulas.depth(), label, rule.cover(), pipe.outside(), power.trench().bedding());
      return new Stretch(label, under, length, rule.cover(), depth.asLength(), rule.rule());
    }

    /** Open ground first, then what lies under something. */
    private List<Stretch> stretches() {
      Length covered =
          power.trench().under().stream()
              .map(Power.Under::length)
              .reduce(Length.ZERO, Length::plus);
      Length open = route.length().minus(covered).max(Length.ZERO);
      List<Stretch> stretches = new ArrayList<>();
      if (open.isMoreThan(Length.ofMillimetres(1)) || power.trench().under().isEmpty()) {
        stretches.add(stretch(1, Optional.empty(), open));
      }
      for (Power.Under under : power.trench().under()) {
        stretches.add(stretch(stretches.size() + 1, Optional.of(under.what()), under.length()));
      }
      return stretches;
    }

    private Length width(Optional<Pipe> data, Length apart) {
      if (data.isEmpty()) {
        return power.trench().width();
      }
      Length wall = imperial ? WALL_IMPERIAL : WALL_METRIC;
      Length least =
          work(formulas.width(), "", pipe.outside(), data.get().outside(), apart, wall).asLength();
      return least.max(power.trench().width());
    }

    Trench trench() {
      List<Stretch> stretches = stretches();
      Optional<Pipe> data =
          power.wiring().dataCable()
              ? Optional.of(PipeChoice.data(job.heading().units()))
              : Optional.empty();
      Length apart = imperial ? APART_IMPERIAL : APART_METRIC;
      Length width = width(data, apart);
      Volume bank = Volume.ZERO;
      for (Stretch stretch : stretches) {
        bank =
            bank.plus(
                work(formulas.bank(), stretch.label(), stretch.length(), width, stretch.depth())
                    .asVolume());
      }
      Ratio swell =
          job.spoil().swell().orElseGet(() -> SwellFactor.find(job.ground().soil().id()).swell());
      Citation source =
          job.spoil().swell().isPresent()
              ? Citation.COMMON_PRACTICE
              : SwellFactor.find(job.ground().soil().id()).citation();
      Length dataOutside = data.map(Pipe::outside).orElse(Length.ZERO);
      Length bedding = power.trench().bedding();
      return new Trench(
          stretches,
          pipe,
          data,
          width,
          bedding,
          apart,
          tapeDepth(stretches.get(0).cover()),
          bank,
          work(formulas.loose(source), "", bank, swell).asVolume(),
          work(formulas.sand(), "", route.length(), width, pipe.outside(), dataOutside, bedding)
              .asVolume(),
          work(formulas.over(), "", route.length(), width, pipe.outside(), bedding, swell)
              .asVolume());
    }

    /** A foot over the pipe, and halfway where the cover is less than two. */
    private Length tapeDepth(Length cover) {
      Length foot = imperial ? APART_IMPERIAL : APART_METRIC;
      Length half = cover.times(0.5);
      return cover.minus(foot).max(half);
    }
  }

  static TrenchPlan of(Job job, Power power, Route route, Pipe pipe) {
    Worker worker = new Worker(job, power, route, pipe);
    return new TrenchPlan(worker.trench(), worker.workings);
  }
}
