package pegbook.calc.safetynotes;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.safetynotes.Note.Stage;
import pegbook.figures.Argument;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Hole;
import pegbook.figures.Task.Kind;
import pegbook.job.Concrete;
import pegbook.job.Job;
import pegbook.measure.Mass;
import pegbook.measure.Rounding;
import pegbook.published.Citation;
import pegbook.published.LocalRules.Topic;
import pegbook.published.SafetyLimit;

/** Steel and concrete. */
record PourNotes(Job job, List<Hole> holes, Rules rules) {
  List<Note> notes(Lifting lift) {
    List<Note> notes = new ArrayList<>();
    List<Hole> reinforced = holes.stream().filter(hole -> hole.steel().isPresent()).toList();
    if (!reinforced.isEmpty()) {
      notes.add(barEnds(reinforced));
      notes.add(Note.of("cut-steel", Stage.STEEL_AND_CONCRETE, 25).during(Kind.STEEL));
    }
    notes.add(
        Note.of("cement-burns", Stage.STEEL_AND_CONCRETE, 7)
            .during(Kind.POUR, Kind.STRIP)
            .decidedBy(Decider.WORK_SAFETY_AUTHORITY)
            .leaningOn(List.of(new Citation("osha-3351", ""))));
    if (job.concrete().mixing() == Concrete.Mixing.READY_MIX) {
      notes.add(
          Note.of("truck", Stage.STEEL_AND_CONCRETE, 9)
              .during(Kind.POUR)
              .with("deepest", Argument.of(SafetyNotesCalculator.deepest(holes))));
    } else {
      notes.add(lifting(lift));
      notes.add(cementDust());
    }
    if (job.concrete().mixing() == Concrete.Mixing.MIXER || !reinforced.isEmpty()) {
      notes.add(groundFault());
    }
    return notes;
  }

  private Note groundFault() {
    return Note.of("ground-fault", Stage.STEEL_AND_CONCRETE, 13)
        .during(Kind.STEEL, Kind.POUR)
        .decidedBy(Decider.ELECTRICAL_AUTHORITY)
        .leaningOn(rules.on(Topic.ELECTRICAL, new Citation("cfr-1926", "1926.404(b)(1)(ii)")));
  }

  private Note barEnds(List<Hole> reinforced) {
    int ends =
        reinforced.stream()
            .mapToInt(hole -> hole.steel().map(steel -> steel.bars()).orElse(0))
            .sum();
    List<String> marks = SafetyNotesCalculator.marks(reinforced);
    return Note.of("bar-ends", Stage.STEEL_AND_CONCRETE, 4)
        .during(Kind.FORM, Kind.STEEL, Kind.INSPECTION, Kind.POUR)
        .about(marks)
        .with("ends", Argument.of(ends))
        .with("holes", Argument.of(marks))
        .decidedBy(Decider.WORK_SAFETY_AUTHORITY)
        .leaningOn(rules.construction("701(b)"));
  }

  private Note lifting(Lifting lift) {
    Mass limit =
        lift.limit().asMass().setTo(SafetyNotesFormulas.step(job.heading().units()), Rounding.DOWN);
    Mass bag = job.concrete().bag();
    String id = bag.isMoreThan(limit) ? "lift-together" : "lift-well";
    return Note.of(id, Stage.STEEL_AND_CONCRETE, 12)
        .during(Kind.POUR)
        .with("bag", Argument.of(bag))
        .with("limit", Argument.of(limit))
        .with("lift", lift.name())
        .leaningOn(List.of(lift.limit().formula().source()))
        .citing(SafetyLimit.find("lift-grip").source());
  }

  private Note cementDust() {
    Note note =
        Note.of(rules.id("cement-dust"), Stage.STEEL_AND_CONCRETE, 22)
            .during(Kind.POUR)
            .decidedBy(Decider.WORK_SAFETY_AUTHORITY)
            .leaningOn(rules.construction("1153(d)"));
    return rules.unitedStates()
        ? note.with("limit", Argument.of((long) SafetyLimit.find("silica-limit").value()))
            .with("action", Argument.of((long) SafetyLimit.find("silica-action").value()))
        : note;
  }
}
