package pegbook.calc.safetynotes;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.safetynotes.Note.Stage;
import pegbook.figures.Argument;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Hole;
import pegbook.figures.Task.Kind;
import pegbook.job.Feature;
import pegbook.job.Job;
import pegbook.job.UtilityMarking;
import pegbook.published.Citation;
import pegbook.published.LocalRules.Topic;
import pegbook.published.SafetyLimit;

/** What lies under the ground and hangs over it. */
record GroundNotes(Job job, List<Hole> holes, Rules rules) {
  /** Names with more letters than this make a command too long to be read on a site. */
  private static final int MOST_LETTERS = 40;

  private static final Citation ONE_CALL = new Citation("one-call", "");

  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    notes.add(utilities());
    notes.add(
        Note.of("private-lines", Stage.BEFORE_DIGGING, 16)
            .during(Kind.DIG, Kind.TRENCH)
            .decidedBy(Decider.OWNER)
            .leaningOn(rules.on(Topic.UTILITIES, ONE_CALL)));
    notes.add(handDigging());
    List<String> lines = named(Feature.Kind.BURIED_LINE);
    if (!lines.isEmpty()) {
      notes.add(
          knownLines(lines)
              .during(Kind.DIG, Kind.TRENCH)
              .decidedBy(Decider.UTILITY_SERVICE)
              .leaningOn(rules.construction("651(b)(3)", "651(b)(4)")));
    }
    List<String> wires = named(Feature.Kind.OVERHEAD_WIRE);
    if (!wires.isEmpty()) {
      notes.add(wires(wires));
    }
    return notes;
  }

  /** By name where a command stays short with it; long names stand on the site plan. */
  private static Note knownLines(List<String> lines) {
    int letters = lines.stream().mapToInt(String::length).sum();
    return letters <= MOST_LETTERS
        ? Note.of("known-lines", Stage.BEFORE_DIGGING, 6).with("lines", Argument.of(lines))
        : Note.of("known-lines-of-plan", Stage.BEFORE_DIGGING, 6)
            .with("count", Argument.of(lines.size()));
  }

  private Note utilities() {
    Note note =
        Note.of(utilitiesId(), Stage.BEFORE_DIGGING, 3)
            .during(Kind.MARK_OUT, Kind.PROVE, Kind.DIG, Kind.TRENCH)
            .decidedBy(Decider.UTILITY_SERVICE)
            .leaningOn(
                rules.on(
                    Topic.UTILITIES, new Citation("cfr-1926", "1926.651(b)(1) to (4)"), ONE_CALL))
            .with("holes", Argument.of(holes.size()))
            .with("deepest", Argument.of(SafetyNotesCalculator.deepest(holes)));
    return job.place()
        .utilities()
        .map(UtilityMarking::confirmed)
        .map(day -> note.with("confirmed", Argument.of(day)))
        .orElse(note);
  }

  private String utilitiesId() {
    return job.place().utilities().isPresent() ? "utilities-marked" : rules.id("utilities");
  }

  private Note handDigging() {
    SafetyLimit zone = SafetyLimit.find("hand-dig-zone");
    Note note =
        Note.of(rules.id("hand-dig-zone"), Stage.BEFORE_DIGGING, 10)
            .during(Kind.DIG, Kind.TRENCH)
            .decidedBy(Decider.UTILITY_SERVICE)
            .leaningOn(rules.on(Topic.UTILITIES, zone.source()));
    return rules.unitedStates()
        ? note.with("zone", Argument.of(zone.length()))
            .with("narrow", Argument.of(SafetyLimit.find("hand-dig-zone-narrow").length()))
        : note;
  }

  private Note wires(List<String> wires) {
    SafetyLimit clearance = SafetyLimit.find("wire-clearance");
    Note note =
        Note.of(rules.id("overhead-wires"), Stage.BEFORE_DIGGING, 2)
            .with("wires", Argument.of(wires))
            .decidedBy(Decider.ELECTRICAL_AUTHORITY)
            .leaningOn(rules.on(Topic.ELECTRICAL, clearance.source()));
    return rules.unitedStates() ? note.with("clear", Argument.of(clearance.length())) : note;
  }

  private List<String> named(Feature.Kind kind) {
    return job.site().features().stream()
        .filter(feature -> feature.kind() == kind)
        .map(Feature::name)
        .toList();
  }
}
