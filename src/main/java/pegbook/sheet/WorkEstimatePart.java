package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.calc.workestimate.WorkEstimate;
import pegbook.calc.workestimate.WorkEstimate.Basis;
import pegbook.calc.workestimate.WorkEstimate.HoleWork;
import pegbook.calc.workestimate.WorkEstimate.Part;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Task;
import pegbook.measure.Duration;
import pegbook.measure.Rounding;
import pegbook.packet.Packet;

/**
 * How long each task takes at a hole, in person-minutes, for holes that are alike.
 *
 * @param heads of the columns after the first: only tasks that some hole has
 * @param rows one for each kind of hole
 * @param notes where the numbers are from
 */
public record WorkEstimatePart(List<String> heads, List<Row> rows, List<String> notes) {
  /** Minutes are set to so many. */
  private static final long STEP_MINUTES = 5;

  /** The holes, and a range for each column; empty where they have no such task. */
  public record Row(String marks, List<String> cells) {}

  /** A column of the table. */
  private record Column(String head, List<Optional<String>> cells) {
    boolean isUsed() {
      return cells.stream().anyMatch(Optional::isPresent);
    }
  }

  static WorkEstimatePart of(Packet packet, Writing writing) {
    List<List<String>> kinds = kinds(packet);
    List<Column> columns = new ArrayList<>();
    for (Part part : Part.values()) {
      columns.add(
          column(
              writing,
              part == Part.BY_HAND ? "dig" : DayWords.word(part),
              kinds,
              mark -> part(packet, part, mark)));
    }
    Stream.of(
            Task.Kind.CARRY_SPOIL,
            Task.Kind.GRAVEL,
            Task.Kind.FORM,
            Task.Kind.STEEL,
            Task.Kind.FIRST_LIFT,
            Task.Kind.JOINT,
            Task.Kind.POUR,
            Task.Kind.STRIP)
        .map(
            kind ->
                column(
                    writing,
                    DayWords.word(kind),
                    kinds,
                    mark -> packet.workEstimate().task(kind, mark).map(WorkEstimatePart::range)))
        .forEach(columns::add);
    List<Column> used = columns.stream().filter(Column::isUsed).toList();
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < kinds.size(); i++) {
      int row = i;
      rows.add(
          new Row(
              writing.formats().names(kinds.get(i)),
              used.stream().map(column -> column.cells().get(row).orElse("")).toList()));
    }
    return new WorkEstimatePart(
        used.stream().map(Column::head).toList(), rows, notes(packet, writing));
  }

  /** A least and a most time. */
  private record Minutes(Duration least, Duration most) {}

  private interface Times {
    Optional<Minutes> at(String mark);
  }

  private static Minutes range(Task task) {
    return new Minutes(task.least(), task.most());
  }

  /** A part of digging; the whole of it by hand where its parts are not told apart. */
  private static Optional<Minutes> part(Packet packet, Part part, String mark) {
    HoleWork work = packet.workEstimate().dig(mark);
    if (work.basis() == Basis.DUG) {
      return Optional.empty();
    }
    if (work.parts().isEmpty()) {
      return part == Part.BY_HAND
          ? Optional.of(new Minutes(work.least(), work.most()))
          : Optional.empty();
    }
    return work.part(part).map(time -> new Minutes(time.least(), time.most()));
  }

  private static Column column(
      Writing writing, String head, List<List<String>> kinds, Times times) {
    return new Column(
        writing.texts().say("work-estimate.column." + head),
        kinds.stream()
            .map(marks -> times.at(marks.get(0)).map(minutes -> cell(minutes, writing)))
            .toList());
  }

  private static String cell(Minutes minutes, Writing writing) {
    String from = steps(Rounding.DOWN, minutes.least(), writing);
    String to = steps(Rounding.UP, minutes.most(), writing);
    return from.equals(to) ? from : from + "–" + to;
  }

  /** Minutes, set to a step and never to none. */
  private static String steps(Rounding rounding, Duration time, Writing writing) {
    long steps = rounding.steps(time.minutes(), (double) STEP_MINUTES);
    return writing.formats().count(Math.max(1, steps) * STEP_MINUTES);
  }

  /**
   * Holes that are alike in what is done at them and how long it takes, in the order of digging.
   */
  private static List<List<String>> kinds(Packet packet) {
    WorkEstimate estimate = packet.workEstimate();
    List<List<String>> kinds = new ArrayList<>();
    for (AlikeHoles alike : AlikeHoles.of(estimate.holes().stream().map(HoleWork::hole).toList())) {
      List<List<String>> here = new ArrayList<>();
      for (String mark : alike.marks()) {
        here.stream()
            .filter(some -> isAlike(estimate, some.get(0), mark))
            .findFirst()
            .ifPresentOrElse(
                some -> some.add(mark), () -> here.add(new ArrayList<>(List.of(mark))));
      }
      kinds.addAll(here);
    }
    return kinds;
  }

  private static boolean isAlike(WorkEstimate estimate, String one, String other) {
    HoleWork first = estimate.dig(one);
    HoleWork second = estimate.dig(other);
    return first.least().equals(second.least())
        && first.most().equals(second.most())
        && first.basis() == second.basis()
        && estimate
            .task(Task.Kind.CARRY_SPOIL, one)
            .map(Task::least)
            .equals(estimate.task(Task.Kind.CARRY_SPOIL, other).map(Task::least));
  }

  private static List<String> notes(Packet packet, Writing writing) {
    List<String> notes = new ArrayList<>();
    notes.add(
        writing
            .texts()
            .say(
                "work-estimate.basis",
                Map.of(
                    "source",
                    new Sources(writing.texts()).write(packet.workEstimate().rate().citation()))));
    WorkEstimate estimate = packet.workEstimate();
    note("dug", estimate.dug(), writing).ifPresent(notes::add);
    note("begun", estimate.begun(), writing).ifPresent(notes::add);
    for (Basis basis : List.of(Basis.RESCALED, Basis.JOB)) {
      List<String> marks =
          estimate.holes().stream()
              .filter(work -> work.basis() == basis)
              .map(work -> work.hole().mark())
              .toList();
      note(DayWords.word(basis), marks, writing).ifPresent(notes::add);
    }
    return notes;
  }

  private static Optional<String> note(String key, List<String> marks, Writing writing) {
    return marks.isEmpty()
        ? Optional.empty()
        : Optional.of(
            writing
                .texts()
                .say(
                    "work-estimate.basis." + key, Map.of("holes", writing.formats().names(marks))));
  }
}
