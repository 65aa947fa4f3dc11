package pegbook.calc.powerline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pegbook.calc.powerline.PowerLine.Leg;
import pegbook.calc.powerline.PowerLine.Pipe;
import pegbook.calc.powerline.PowerLine.PipeRun;
import pegbook.calc.powerline.PowerLine.Route;
import pegbook.calc.powerline.PowerLine.Trench;
import pegbook.figures.CutPiece;
import pegbook.figures.Formula;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.job.Power;
import pegbook.job.Stock;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Quantity;
import pegbook.measure.UnitSystem;

/**
 * The straight pipe that a line takes, piece by piece. A leg is laid in whole lengths as sold and
 * the rest of one, joined by couplings; at each end that comes out of the ground a piece goes up.
 * Bends are bought bent. Each leg counts from corner to corner: what its bends take of it is
 * trimmed in the trench.
 *
 * @param runs the power's pipe, then that of the data cable
 */
record PipeRuns(List<PipeRun> runs, List<Working> workings) {
  /** A pipe comes up so far over the ground, to its box: common practice. */
  private static final Length OVER_IMPERIAL = Length.ofInches(18);

  private static final Length OVER_METRIC = Length.ofMillimetres(450);

  /** Letters of the pieces. */
  private static final String POWER = "C";

  private static final String DATA = "D";

  static PipeRuns of(Job job, Power power, Route route, Trench trench) {
    Worker worker = new Worker(job, power, route);
    List<PipeRun> runs = new ArrayList<>();
    if (power.wiring().method() != Power.Method.DIRECT_BURIAL) {
      runs.add(worker.run(trench.pipe(), POWER));
    }
    trench.data().ifPresent(data -> runs.add(worker.run(data, DATA)));
    return new PipeRuns(runs, List.copyOf(worker.workings.values()));
  }

  /** Works runs out; two pipes laid in the same lengths have the same steps, printed once. */
  private static final class Worker {
    private final Job job;
    private final Power power;
    private final Route route;
    private final boolean imperial;
    private final PowerLineFormulas formulas;
    private final Map<String, Working> workings = new LinkedHashMap<>();

    Worker(Job job, Power power, Route route) {
      this.job = job;
      this.power = power;
      this.route = route;
      this.imperial = job.heading().units() == UnitSystem.IMPERIAL;
      this.formulas = PowerLineFormulas.in(job.heading().units());
    }

    private Working work(Formula formula, String subject, Quantity... quantities) {
      Working working = Working.of(formula, subject, quantities);
      workings.put(formula.id() + " " + subject + " " + working.inputs(), working);
      return working;
    }

    PipeRun run(Pipe pipe, String letter) {
      Length lay = lay(job.stock().listed(pipe.stock()));
      Map<Length, Map<String, Integer>> pieces = new TreeMap<>(Comparator.reverseOrder());
      for (Leg leg : route.legs()) {
        String label = leg.from() + "–" + leg.to();
        add(pieces, label, leg.length(), lay);
      }
      Length over = imperial ? OVER_IMPERIAL : OVER_METRIC;
      Length cover = CoverRule.of(job, power, Optional.empty()).cover();
      Length riser = work(formulas.riser(), "", cover, over).asLength();
      List<String> ends = ends();
      ends.forEach(end -> add(pieces, end, riser, lay));
      int bends = ends.size() + route.legs().size() - 1;
      int count =
          pieces.values().stream().flatMap(by -> by.values().stream()).mapToInt(n -> n).sum();
      return new PipeRun(
          pipe.stock(),
          named(pipe.stock(), letter, pieces),
          lay,
          riser,
          over,
          ends,
          bends,
          count + bends - 1);
    }

    /** Places at which the pipe comes up; into a pier it goes by the pier's sleeve. */
    private List<String> ends() {
      Leg first = route.legs().get(0);
      Leg last = route.legs().get(route.legs().size() - 1);
      return last.toPier() ? List.of(first.from()) : List.of(first.from(), last.to());
    }

    /** A straight stretch in whole lengths and what is left of one. */
    private void add(
        Map<Length, Map<String, Integer>> pieces, String label, Length length, Length lay) {
      int parts = (int) Math.round(work(formulas.pieces(), label, length, lay).result());
      Length rest = work(formulas.rest(), label, length, new Count(parts), lay).asLength().min(lay);
      if (parts > 1) {
        add(pieces, lay, label, parts - 1);
      }
      add(pieces, rest, label, 1);
    }

    private static void add(
        Map<Length, Map<String, Integer>> pieces, Length length, String label, int count) {
      Length micrometres = new Length(Math.rint(length.metres() * 1e9) / 1e9);
      pieces
          .computeIfAbsent(micrometres, any -> new LinkedHashMap<>())
          .merge(label, count, Integer::sum);
    }

    private static List<CutPiece> named(
        String size, String letter, Map<Length, Map<String, Integer>> pieces) {
      List<CutPiece> named = new ArrayList<>();
      pieces.forEach(
          (length, places) ->
              named.add(
                  new CutPiece(
                      size,
                      letter + (named.size() + 1),
                      length,
                      places.values().stream().mapToInt(n -> n).sum(),
                      List.copyOf(places.keySet()),
                      true)));
      return named;
    }

    /** The listed length that costs least to the metre, the longest of these; else the longest. */
    private Length lay(List<Stock.Bar> listed) {
      List<Stock.Bar> endless = listed.stream().filter(bar -> bar.count().isEmpty()).toList();
      Comparator<Stock.Bar> cheap =
          Comparator.comparingDouble(
              bar ->
                  bar.price().map(price -> price.amount().doubleValue()).orElse(0.0)
                      / bar.length().metres());
      return (endless.isEmpty() ? listed : endless)
          .stream()
              .min(cheap.thenComparing(Stock.Bar::length, Comparator.reverseOrder()))
              .map(Stock.Bar::length)
              .orElseGet(() -> Stock.usualConduit(imperial).get(0));
    }
  }
}
