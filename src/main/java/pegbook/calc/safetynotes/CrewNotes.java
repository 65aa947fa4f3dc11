package pegbook.calc.safetynotes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.safetynotes.Note.Stage;
import pegbook.figures.Argument;
import pegbook.figures.Season;
import pegbook.figures.Task.Kind;
import pegbook.job.ExpectedHeat;
import pegbook.job.Job;
import pegbook.measure.Temperature;
import pegbook.published.Citation;
import pegbook.published.SafetyLimit;

/** The people: alone, in heat, cold and storms. */
record CrewNotes(Job job, Optional<HeatIndex> expected) {
  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    if (job.crew().people() == 1) {
      notes.add(Note.of("alone", Stage.BEFORE_DIGGING, 5));
    }
    Season season = Season.of(job.place().latitude(), job.crew().start());
    Optional<HeatIndex> hot = expected.filter(index -> index.level() != HeatIndex.Level.NONE);
    if (hot.isPresent()) {
      notes.add(heat(hot.get(), job.place().heat().orElseThrow()));
    } else if (season.mayBeHot() || expected.isPresent()) {
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

  /** The hottest hours that the job expects, by the class they fall into. */
  private Note heat(HeatIndex index, ExpectedHeat heat) {
    int danger =
        switch (index.level()) {
          case EXTREME -> 3;
          case DANGER -> 7;
          case CAUTION -> 18;
          case BEGIN, NONE -> 21;
        };
    String level = index.level().word();
    return Note.of("heat-expected", Stage.WHILE_DIGGING, danger)
        .during(Kind.DIG, Kind.CARRY_SPOIL, Kind.GRAVEL, Kind.POUR)
        .with("index", Argument.of(index.rounded(job.heading().units())))
        .with("temperature", Argument.of(heat.temperature()))
        .with("humidity", Argument.of(heat.humidity()))
        .with("measure", Argument.entry("note.heat-measure." + level))
        .with("class", Argument.entry("note.heat-class." + level))
        .leaningOn(List.of(new Citation("nws-heat", "SR 90-23")));
  }

  private static Argument temperature(String id) {
    if (SafetyLimit.find(id).quantity() instanceof Temperature temperature) {
      return Argument.of(temperature);
    }
    throw new IllegalArgumentException(id + " is no temperature");
  }
}
