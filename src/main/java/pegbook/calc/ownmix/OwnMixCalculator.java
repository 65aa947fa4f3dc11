package pegbook.calc.ownmix;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.ownmix.OwnMixPlan.Mix;
import pegbook.calc.ownmix.OwnMixPlan.Weights;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Formula;
import pegbook.figures.Need;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.job.OwnMix;
import pegbook.measure.Count;
import pegbook.measure.Mass;
import pegbook.measure.Pressure;
import pegbook.measure.Quantity;
import pegbook.measure.Ratio;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.published.MixTables;

/**
 * Proportions concrete from cement, sand and stone by absolute volumes.
 *
 * <p>Water follows from slump and stone, cement from water and strength, stone from its size and
 * the sand; sand fills the rest. A strength beyond the table takes the table's last row and asks;
 * one below its first row takes the first, which is the richer mix. The exposure's greatest ratio
 * of water to cement holds the mix where it asks for less. Masses by volume are of a cubic yard or
 * metre.
 */
public final class OwnMixCalculator {
  /** Gravities of sand and stone, neither dry nor wet: common practice. */
  private static final double GRAVITY = 2.65;

  private final Job job;
  private final OwnMix own;
  private final boolean imperial;
  private final OwnMixFormulas formulas;
  private final List<Working> workings = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  private OwnMixCalculator(Job job, OwnMix own) {
    this.job = job;
    this.own = own;
    this.imperial = job.heading().units() == UnitSystem.IMPERIAL;
    this.formulas = new OwnMixFormulas(job.heading().units());
  }

  /**
   * Proportions the mix.
   *
   * @param job strength, air, and what the mix is made of
   * @param poured concrete to mix, all holes
   * @param load concrete of one load of the mixer or tub
   * @param most greatest ratio of water to cement that the exposure allows, where it asks
   */
  public static OwnMixPlan calculate(Job job, Volume poured, Volume load, Optional<Double> most) {
    return job.concrete()
        .ownMix()
        .map(own -> new OwnMixCalculator(job, own).plan(poured, load, most))
        .orElseGet(() -> new OwnMixPlan(Optional.empty(), List.of(), List.of(), List.of()));
  }

  private Working work(Formula formula, Quantity... quantities) {
    Working working = Working.of(formula, "", quantities);
    workings.add(working);
    return working;
  }

  private boolean entrained() {
    return job.concrete().air().filter(air -> air.isMoreThan(Ratio.ZERO)).isPresent();
  }

  private OwnMixPlan plan(Volume poured, Volume load, Optional<Double> most) {
    MixTables.Stone stone = MixTables.stone(own.stone());
    double pounds = stone.waterPounds(own.slump(), entrained());
    Mass water = imperial ? Mass.ofPounds(pounds) : new Mass(MixTables.metric(pounds));
    Pressure aim = held(work(formulas.aim(), job.concrete().strength()).asPressure());
    double ratio = Math.min(ratio(aim), most.orElse(Double.MAX_VALUE));
    Mass cement = work(formulas.cement(), water, new Count(ratio)).asMass();
    Working share = share(stone);
    Mass coarse = work(formulas.stone(), new Count(share.result()), own.stoneDensity()).asMass();
    Ratio air =
        entrained() ? job.concrete().air().orElseThrow() : Ratio.ofPercent(stone.airPercent());
    Count gravity = new Count(GRAVITY);
    Mass sand = work(formulas.sand(), water, cement, coarse, air, gravity, gravity).asMass();
    Weights unit = new Weights(cement, sand, coarse, water);
    Weights damp =
        new Weights(
            cement,
            work(formulas.asItLies(true), sand, own.sandWater()).asMass(),
            work(formulas.asItLies(false), coarse, own.stoneWater()).asMass(),
            work(formulas.water(), water, sand, own.sandWater(), coarse, own.stoneWater())
                .asMass());
    Weights all =
        new Weights(
            work(formulas.inAll("cement"), damp.cement(), poured).asMass(),
            work(formulas.inAll("sand"), damp.sand(), poured).asMass(),
            work(formulas.inAll("stone"), damp.stone(), poured).asMass(),
            work(formulas.inAll("water"), damp.water(), poured).asMass());
    Volume whole = imperial ? Volume.ofCubicYards(1) : new Volume(1);
    int bags = (int) Rounding.UP.steps(all.cement().dividedBy(own.cementBag()), 1);
    Mix mix =
        new Mix(
            aim,
            ratio,
            stone.size(),
            unit,
            damp.times(own.cementBag().dividedBy(cement)),
            damp.times(load.cubicMetres() / whole.cubicMetres()),
            all,
            load,
            bags);
    return new OwnMixPlan(Optional.of(mix), findings, workings, needs(mix));
  }

  /** The strength to aim at, held within the table. */
  private Pressure held(Pressure aim) {
    List<MixTables.Ratio> rows = MixTables.ratios(entrained());
    MixTables.Ratio first = rows.get(0);
    MixTables.Ratio last = rows.get(rows.size() - 1);
    if (aim.isMoreThan(last.strength())) {
      findings.add(
          Finding.of(
                  Kind.ASK,
                  "own-mix-beyond-table",
                  "concrete.ownMix",
                  Decider.ENGINEER,
                  MixTables.WATER_CEMENT)
              .with("aim", Argument.of(aim))
              .with("last", Argument.of(last.strength()))
              .with("specified", Argument.of(job.concrete().strength())));
      return last.strength();
    }
    return aim.isLessThan(first.strength()) ? first.strength() : aim;
  }

  /** Water to cement of a strength within the table. */
  private double ratio(Pressure held) {
    List<MixTables.Ratio> rows = MixTables.ratios(entrained());
    int above = 1;
    while (above < rows.size() - 1 && held.isMoreThan(rows.get(above).strength())) {
      above++;
    }
    MixTables.Ratio lower = rows.get(above - 1);
    MixTables.Ratio upper = rows.get(above);
    return work(
            formulas.waterCement(),
            held,
            lower.strength(),
            new Count(ratio(lower)),
            upper.strength(),
            new Count(ratio(upper)))
        .result();
  }

  private double ratio(MixTables.Ratio row) {
    return entrained() ? row.entrained().orElseThrow() : row.plain();
  }

  private Working share(MixTables.Stone stone) {
    double fineness = own.sand().fineness();
    long steps =
        Math.min(
            Rounding.DOWN.steps(fineness - MixTables.FINEST, MixTables.FINENESS_STEP),
            stone.shares().size() - 2L);
    int column = (int) steps;
    return work(
        formulas.share(),
        new Count(fineness),
        new Count(MixTables.FINEST + column * MixTables.FINENESS_STEP),
        new Count(stone.shares().get(column)),
        new Count(stone.shares().get(column + 1)));
  }

  /** Cement in whole bags; sand and stone in hundreds of pounds or halves of that in kilograms. */
  private List<Need> needs(Mix mix) {
    return List.of(
        new Need(
            "cement-bags",
            Map.of("bag", Argument.of(own.cementBag())),
            mix.all().cement().dividedBy(own.cementBag()),
            mix.cementBags(),
            Unit.NONE,
            Optional.empty()),
        loose("mix-sand", Map.of(), mix.all().sand()),
        loose("mix-stone", Map.of("size", Argument.of(own.stone())), mix.all().stone()));
  }

  private Need loose(String id, Map<String, Argument> words, Mass mass) {
    Unit unit = imperial ? Unit.POUND : Unit.KILOGRAM;
    double step = imperial ? 100 : 50;
    double amount = unit.in(mass);
    return new Need(
        id, words, amount, Rounding.UP.steps(amount, step) * step, unit, Optional.empty());
  }
}
