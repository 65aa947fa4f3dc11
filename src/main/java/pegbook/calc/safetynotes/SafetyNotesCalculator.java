package pegbook.calc.safetynotes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.published.Citation;
import pegbook.published.ExcavationRule;

/**
 * Chooses the safety notes by what a job contains: depths, tools, stones, season, steel, concrete,
 * crew. Where a rule has a condition, the note carries it.
 */
public final class SafetyNotesCalculator {
  /** A depth this much short of a threshold counts as on it. */
  private static final Length THRESHOLD_TOLERANCE = Length.ofMillimetres(0.5);

  /** A hole narrower than this does not take a grown person; common practice, no source. */
  private static final Length ENTERABLE = Length.ofInches(12);

  private SafetyNotesCalculator() {}

  /**
   * Chooses the notes.
   *
   * @param job the job
   * @param holes its holes with their depths
   */
  public static SafetyNotes calculate(Job job, List<Hole> holes) {
    Rules rules = Rules.of(job.place());
    List<Working> workings = new ArrayList<>();
    List<Lifting> liftings = SafetyNotesFormulas.liftings(job);
    liftings.forEach(lifting -> workings.add(lifting.limit()));
    Optional<HeatIndex> heat =
        job.place()
            .heat()
            .map(
                given ->
                    HeatIndex.of(given.temperature().fahrenheit(), given.humidity().percent()));
    heat.ifPresent(index -> workings.addAll(index.workings()));
    List<Note> notes =
        Stream.of(
                new GroundNotes(job, holes, rules).notes(),
                new DiggingNotes(job, holes, rules).notes(),
                new HoleNotes(job, holes, rules).notes(),
                new PourNotes(job, holes, rules).notes(hardest(liftings)),
                new FloorNotes(job).notes(),
                new CrewNotes(job, heat).notes())
            .flatMap(List::stream)
            .sorted(Comparator.comparing(Note::stage).thenComparingInt(Note::danger))
            .toList();
    List<Finding> findings = new ArrayList<>(deepHoles(holes));
    heat.flatMap(index -> tooHot(index, job)).ifPresent(findings::add);
    boolean reads = notes.stream().anyMatch(note -> note.id().equals("heat"));
    boolean lifts = notes.stream().anyMatch(note -> note.id().startsWith("lift-"));
    return new SafetyNotes(
        notes,
        lifts ? liftings : List.of(),
        reads ? Optional.of(HeatTable.of(job.heading().units())) : Optional.empty(),
        findings,
        workings);
  }

  /** The lift that allows least. */
  private static Lifting hardest(List<Lifting> liftings) {
    return liftings.stream()
        .min(Comparator.comparing(lifting -> lifting.limit().asMass()))
        .orElseThrow();
  }

  /** True where a hole reaches a threshold of depth. */
  static boolean reaches(Hole hole, Length threshold) {
    return !hole.dug().plus(THRESHOLD_TOLERANCE).isLessThan(threshold);
  }

  static Length deepest(List<Hole> holes) {
    return holes.stream().map(Hole::dug).max(Length::compareTo).orElse(Length.ZERO);
  }

  static List<String> marks(List<Hole> holes) {
    return holes.stream().map(Hole::mark).toList();
  }

  /** Hours in which heat stroke is likely. */
  private static Optional<Finding> tooHot(HeatIndex index, Job job) {
    return index.level().compareTo(HeatIndex.Level.DANGER) < 0
        ? Optional.empty()
        : Optional.of(
            Finding.of(
                    Finding.Kind.ASK,
                    "heat-danger",
                    "place.heat",
                    Finding.Decider.CREW,
                    new Citation("nws-heat", "SR 90-23"))
                .with("index", Argument.of(index.rounded(job.heading().units()))));
  }

  private static List<Finding> deepHoles(List<Hole> holes) {
    ExcavationRule limit = ExcavationRule.find("unshored-depth");
    List<Hole> deep =
        holes.stream()
            .filter(hole -> reaches(hole, limit.threshold()))
            .filter(hole -> !hole.diameter().isLessThan(ENTERABLE))
            .toList();
    if (deep.isEmpty()) {
      return List.of();
    }
    return List.of(
        new Finding(
                Finding.Kind.STOP,
                "deep-hole-unshored",
                marks(deep),
                "supports.depth, piers.depth",
                Map.of(),
                Finding.Decider.WORK_SAFETY_AUTHORITY,
                List.of(limit.citation()))
            .with("holes", Argument.of(marks(deep)))
            .with("deepest", Argument.of(deepest(deep)))
            .with("limit", Argument.of(limit.threshold()))
            .with("wide", Argument.of(ENTERABLE)));
  }
}
