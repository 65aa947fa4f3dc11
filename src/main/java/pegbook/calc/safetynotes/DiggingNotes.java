package pegbook.calc.safetynotes;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.safetynotes.Note.Stage;
import pegbook.figures.Argument;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Hole;
import pegbook.figures.Task.Kind;
import pegbook.job.Digging;
import pegbook.job.Job;
import pegbook.job.Soil;
import pegbook.job.Tool;
import pegbook.published.ExcavationRule;
import pegbook.published.SafetyLimit;

/** Tools, stones and spoil. */
record DiggingNotes(Job job, List<Hole> holes, Rules rules) {
  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    if (has(Tool.Kind.POWER_AUGER)) {
      notes.add(powerAuger());
    }
    if (has(Tool.Kind.DIGGING_BAR)) {
      notes.add(tool("digging-bar", 15));
    }
    if (has(Tool.Kind.HAND_AUGER)) {
      notes.add(tool("hand-auger", 26));
    }
    if (has(Tool.Kind.CLAMSHELL)) {
      notes.add(tool("clamshell", 27));
    }
    if (has(Tool.Kind.SPADE)) {
      notes.add(tool("spade", 28));
    }
    if (isStony()) {
      notes.add(
          tool("stones", 18)
              .decidedBy(Decider.WORK_SAFETY_AUTHORITY)
              .leaningOn(rules.construction("102(a)(1)")));
      notes.add(stoneDust());
    }
    notes.add(spoil());
    return notes;
  }

  private boolean has(Tool.Kind kind) {
    return job.tools().stream().anyMatch(tool -> tool.kind() == kind);
  }

  private boolean isStony() {
    Soil soil = job.ground().soil();
    return job.ground().digging() == Digging.STONY
        || soil == Soil.ROCK
        || soil == Soil.GRAVEL
        || soil == Soil.SANDY_GRAVEL;
  }

  private static Note tool(String id, int danger) {
    return Note.of(id, Stage.WHILE_DIGGING, danger).during(Kind.DIG);
  }

  private Note powerAuger() {
    SafetyLimit noise = SafetyLimit.find("noise");
    return tool("power-auger", 5)
        .with("catch", Argument.entry(isStony() ? "note.catch.stones" : "note.catch.roots"))
        .with("noise", Argument.of((long) noise.value()))
        .decidedBy(Decider.WORK_SAFETY_AUTHORITY)
        .leaningOn(rules.construction("52"));
  }

  private Note stoneDust() {
    Note note =
        tool(rules.id("stone-dust"), 24)
            .during(Kind.DIG, Kind.STEEL)
            .decidedBy(Decider.WORK_SAFETY_AUTHORITY)
            .leaningOn(rules.construction("1153 Table 1"));
    return rules.unitedStates()
        ? note.with("hours", Argument.of((long) SafetyLimit.find("silica-saw").value()))
        : note;
  }

  private Note spoil() {
    return Note.of("spoil-back", Stage.WHILE_DIGGING, 17)
        .during(Kind.DIG, Kind.CARRY_SPOIL, Kind.GRAVEL, Kind.POUR, Kind.TRENCH)
        .with("back", Argument.of(ExcavationRule.find("spoil-edge").threshold()))
        .decidedBy(Decider.WORK_SAFETY_AUTHORITY)
        .leaningOn(rules.construction("651(j)(2)"));
  }
}
