package pegbook.calc.safetynotes;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.safetynotes.Note.Stage;
import pegbook.figures.Argument;
import pegbook.figures.Season;
import pegbook.figures.Task.Kind;
import pegbook.job.Job;
import pegbook.measure.Temperature;
import pegbook.published.Citation;
import pegbook.published.SafetyLimit;

/** The people: alone, in heat, cold and storms. */
record CrewNotes(Job job) {
  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    if (job.crew().people() == 1) {
      notes.add(Note.of("alone", Stage.BEFORE_DIGGING, 5));
    }
    Season season = Season.of(job.place().latitude(), job.crew().start());
    if (season.mayBeHot()) {
      notes.add(heat());
    }
    if (season.mayBeCold()) {
      notes.add(
          Note.of("cold", Stage.WHILE_DIGGING, 23)
              .during(Kind.DIG, Kind.CARRY_SPOIL, Kind.STEEL, Kind.POUR));
    }
    SafetyLimit wait = SafetyLimit.find("storm-wait");
    notes.add(
        Note.of("lightning", Stage.WHILE_DIGGING, 16)
            .with("minutes", Argument.of((long) wait.value()))
            .leaningOn(List.of(wait.source())));
    return notes;
  }

  private static Note heat() {
    return Note.of("heat", Stage.WHILE_DIGGING, 21)
        .during(Kind.DIG, Kind.CARRY_SPOIL, Kind.GRAVEL, Kind.POUR)
        .with("caution", temperature("heat-caution"))
        .with("danger", temperature("heat-danger"))
        .leaningOn(List.of(new Citation("nws-heat", "")));
  }

  private static Argument temperature(String id) {
    if (SafetyLimit.find(id).quantity() instanceof Temperature temperature) {
      return Argument.of(temperature);
    }
    throw new IllegalArgumentException(id + " is no temperature");
  }
}
