package pegbook.calc.safetynotes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.safetynotes.Note.Stage;
import pegbook.figures.Argument;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Hole;
import pegbook.figures.Task.Kind;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.published.Citation;
import pegbook.published.ExcavationRule;
import pegbook.published.SafetyLimit;

/** The holes themselves: nobody in them, their sides, water, and while they stand open. */
record HoleNotes(Job job, List<Hole> holes, Rules rules) {
  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    notes.add(noEntry());
    notes.add(
        Note.of("rescue", Stage.WHILE_DIGGING, 9)
            .during(Kind.DIG, Kind.GRAVEL, Kind.FORM, Kind.STEEL, Kind.POUR));
    notes.addAll(rules.unitedStates() ? sides() : sidesElsewhere());
    water().ifPresent(notes::add);
    notes.add(covers());
    notes.add(dailyLook());
    notes.add(
        Note.of("children-animals", Stage.OPEN_HOLES, 11)
            .decidedBy(Decider.OWNER)
            .with("holes", Argument.of(holes.size())));
    notes.add(Note.of("leave-site", Stage.LEAVING, 30));
    return notes;
  }

  private Note noEntry() {
    return Note.of("no-entry", Stage.WHILE_DIGGING, 1)
        .during(Kind.DIG, Kind.GRAVEL, Kind.FORM, Kind.STEEL, Kind.POUR)
        .with("deepest", Argument.of(SafetyNotesCalculator.deepest(holes)))
        .with("narrowest", Argument.of(narrowest()))
        .decidedBy(Decider.WORK_SAFETY_AUTHORITY)
        .leaningOn(rules.construction("652(a)(1)"));
  }

  private Length narrowest() {
    return holes.stream().map(Hole::diameter).min(Length::compareTo).orElse(Length.ZERO);
  }

  /** The depths at which rules of the United States begin, each with its condition. */
  private List<Note> sides() {
    List<Note> notes = new ArrayList<>();
    ExcavationRule protective = ExcavationRule.find("unshored-depth");
    List<Hole> deep = reaching(protective.threshold());
    List<Hole> shallow = holes.stream().filter(hole -> !deep.contains(hole)).toList();
    if (!deep.isEmpty()) {
      notes.add(side("cave-in-deep", 2, deep, protective.threshold(), protective.citation()));
    }
    if (!shallow.isEmpty()) {
      notes.add(
          side("cave-in-shallow", 14, shallow, protective.threshold(), protective.citation()));
    }
    SafetyLimit wayOut = SafetyLimit.find("way-out");
    List<Hole> fourFeet = reaching(wayOut.length());
    if (!fourFeet.isEmpty()) {
      notes.add(
          side("four-feet", 20, fourFeet, wayOut.length(), wayOut.source())
              .with("travel", Argument.of(SafetyLimit.find("way-out-travel").length()))
              .citing(SafetyLimit.find("air-test").source()));
    }
    return notes;
  }

  private static Note side(String id, int danger, List<Hole> some, Length limit, Citation source) {
    List<String> marks = SafetyNotesCalculator.marks(some);
    return Note.of(id, Stage.WHILE_DIGGING, danger)
        .during(Kind.DIG, Kind.GRAVEL, Kind.FORM, Kind.STEEL, Kind.POUR)
        .about(marks)
        .with("holes", Argument.of(marks))
        .with("limit", Argument.of(limit))
        .decidedBy(Decider.WORK_SAFETY_AUTHORITY)
        .leaningOn(List.of(source));
  }

  private List<Note> sidesElsewhere() {
    return List.of(
        Note.of("cave-in-elsewhere", Stage.WHILE_DIGGING, 14)
            .during(Kind.DIG, Kind.GRAVEL, Kind.FORM, Kind.STEEL, Kind.POUR)
            .with("deepest", Argument.of(SafetyNotesCalculator.deepest(holes)))
            .decidedBy(Decider.WORK_SAFETY_AUTHORITY)
            .leaningOn(rules.construction()));
  }

  private Optional<Note> water() {
    return job.ground()
        .waterDepth()
        .filter(depth -> depth.isLessThan(SafetyNotesCalculator.deepest(holes)))
        .map(
            depth ->
                Note.of("water", Stage.WHILE_DIGGING, 10)
                    .during(Kind.DIG, Kind.GRAVEL, Kind.FORM, Kind.STEEL, Kind.POUR)
                    .about(SafetyNotesCalculator.marks(deeperThan(depth)))
                    .with("holes", Argument.of(SafetyNotesCalculator.marks(deeperThan(depth))))
                    .with("water", Argument.of(depth))
                    .decidedBy(Decider.WORK_SAFETY_AUTHORITY)
                    .leaningOn(rules.construction("651(h)(1)")));
  }

  private Note covers() {
    SafetyLimit strength = SafetyLimit.find("cover-strength");
    return Note.of("cover-holes", Stage.OPEN_HOLES, 8)
        .during(Kind.DIG, Kind.GRAVEL, Kind.FORM, Kind.STEEL, Kind.INSPECTION, Kind.POUR)
        .with("holes", Argument.of(holes.size()))
        .with("times", Argument.of((long) strength.value()))
        .decidedBy(Decider.WORK_SAFETY_AUTHORITY)
        .leaningOn(rules.construction("501(b)(4)", "502(i)"));
  }

  private Note dailyLook() {
    return Note.of("daily-look", Stage.OPEN_HOLES, 19)
        .during(Kind.DIG, Kind.GRAVEL, Kind.FORM, Kind.STEEL, Kind.INSPECTION, Kind.POUR)
        .decidedBy(Decider.WORK_SAFETY_AUTHORITY)
        .leaningOn(rules.construction("651(k)(1)"));
  }

  private List<Hole> reaching(Length limit) {
    return holes.stream().filter(hole -> SafetyNotesCalculator.reaches(hole, limit)).toList();
  }

  private List<Hole> deeperThan(Length depth) {
    return holes.stream().filter(hole -> hole.dug().isMoreThan(depth)).toList();
  }
}
