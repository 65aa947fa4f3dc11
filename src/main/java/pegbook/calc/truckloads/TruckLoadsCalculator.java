package pegbook.calc.truckloads;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import pegbook.calc.truckloads.TruckLoads.Load;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.MarkRuns;
import pegbook.figures.Need;
import pegbook.figures.Pour;
import pegbook.figures.Task;
import pegbook.figures.TaskDay;
import pegbook.figures.Working;
import pegbook.job.Concrete.Mixing;
import pegbook.job.Job;
import pegbook.measure.Duration;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.published.Citation;

/**
 * Orders ready-mixed concrete day by day: what is poured on two days is two loads, each set up by
 * itself and each no less than what the plant brings.
 */
public final class TruckLoadsCalculator {
  private static final Citation WINDOW =
      new Citation("astm-c94", "discharge within an hour and a half");

  /** The window and the rates are rules of thumb; a minute over is not a finding. */
  private static final double WINDOW_TOLERANCE = 0.05;

  private final Job job;
  private final Volume step;
  private final List<Load> loads = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final List<Working> workings = new ArrayList<>();

  private TruckLoadsCalculator(Job job) {
    this.job = job;
    this.step =
        job.heading().units() == UnitSystem.IMPERIAL
            ? Volume.ofCubicYards(TruckLoadsFormulas.STEP)
            : new Volume(TruckLoadsFormulas.STEP);
  }

  /**
   * Orders the loads.
   *
   * @param days for each pour its day, in the order of the days and of the pours
   */
  public static TruckLoads calculate(Job job, Map<Pour, TaskDay> days) {
    TruckLoadsCalculator of = new TruckLoadsCalculator(job);
    if (job.concrete().mixing() == Mixing.READY_MIX) {
      Map<TaskDay, List<Pour>> byDay = new LinkedHashMap<>();
      days.forEach(
          (pour, day) ->
              byDay
                  .computeIfAbsent(
                      new TaskDay(Task.Kind.POUR, day.day(), day.date()), any -> new ArrayList<>())
                  .add(pour));
      byDay.forEach(of::load);
      of.shortLoads();
    }
    return new TruckLoads(of.loads, of.findings, of.workings, of.needs());
  }

  private void load(TaskDay day, List<Pour> pours) {
    List<String> marks = pours.stream().map(Pour::mark).toList();
    Volume poured = pours.stream().map(Pour::poured).reduce(Volume.ZERO, Volume::plus);
    Duration most = pours.stream().map(Pour::most).reduce(Duration.ZERO, Duration::plus);
    Working working =
        Working.of(
            TruckLoadsFormulas.load(job.heading().units()),
            MarkRuns.brief(marks),
            poured,
            job.concrete().truckMinimum().orElse(step));
    workings.add(working);
    Load load = new Load(day.day(), day.date(), marks, poured, working.asVolume(), most);
    loads.add(load);
    isLong(load, pours.get(0).window());
  }

  /**
   * More is paid for than the holes of a day take, by more than the plant's step. One question for
   * all such days, as they have one answer: pour more on fewer days.
   */
  private void shortLoads() {
    List<Load> small = loads.stream().filter(load -> over(load).isMoreThan(step)).toList();
    if (job.concrete().truckMinimum().isEmpty() || small.isEmpty()) {
      return;
    }
    Finding finding =
        Finding.of(
                Kind.ASK,
                small.size() == 1 ? "short-load" : "short-loads",
                "concrete.truckMinimum",
                Decider.OWNER,
                Citation.COMMON_PRACTICE)
            .about(small.stream().flatMap(load -> load.marks().stream()).distinct().toList())
            .with("poured", Argument.of(sum(small, Load::poured)))
            .with("over", Argument.of(sum(small, TruckLoadsCalculator::over)));
    findings.add(
        small.size() == 1
            ? finding.with("day", Argument.of(small.get(0).day()))
            : finding
                .with("short", Argument.of(small.size()))
                .with("loads", Argument.of(loads.size())));
  }

  private static Volume over(Load load) {
    return load.order().minus(load.poured());
  }

  private static Volume sum(List<Load> loads, Function<Load, Volume> part) {
    return loads.stream().map(part).reduce(Volume.ZERO, Volume::plus);
  }

  /** A load goes into several holes, and the clock runs for all of it. */
  private void isLong(Load load, Duration window) {
    if (load.most().minutes() > window.minutes() * (1 + WINDOW_TOLERANCE)) {
      findings.add(
          Finding.of(Kind.ASK, "truck-must-wait", "concrete.mixing", Decider.CREW, WINDOW)
              .about(load.marks())
              .with("day", Argument.of(load.day()))
              .with("most", Argument.of(Math.round(load.most().minutes())))
              .with("window", Argument.of(Math.round(window.minutes()))));
    }
  }

  private List<Need> needs() {
    if (loads.isEmpty()) {
      return List.of();
    }
    Unit unit = job.heading().units() == UnitSystem.IMPERIAL ? Unit.CUBIC_YARD : Unit.CUBIC_METRE;
    Volume poured = sum(loads, Load::poured);
    Volume order = sum(loads, Load::order);
    Map<String, Argument> words = new LinkedHashMap<>();
    words.put("strength", Argument.of(job.concrete().strength()));
    words.put("loads", Argument.of(loads.size()));
    return List.of(
        new Need("ready-mix", words, unit.in(poured), unit.in(order), unit, Optional.empty()));
  }
}
