package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.calc.steelplan.SteelPlan.Hook;
import pegbook.calc.steelplan.SteelPlan.Rings;
import pegbook.figures.BarPiece;
import pegbook.figures.Task;
import pegbook.measure.Length;
import pegbook.packet.Packet;

/**
 * What the bars of a day are: a helper has the day's sheet only, and "4 A" says nothing without the
 * bar list.
 *
 * @param packet whose day
 * @param writing words and formats
 * @param day the day
 */
record DayBars(Packet packet, Writing writing, WorkDay day) {

  /** The pieces of one bar mark that go in today. */
  private record Today(BarPiece piece, int count, List<Cage> cages) {}

  /**
   * A line for each bar mark that goes in today: how many, size, cut, bend, distance. Steel that
   * was begun on an earlier day is counted there, and is not cut twice.
   */
  List<String> lines() {
    return Stream.concat(today().stream().map(this::line), goesOn().stream()).toList();
  }

  /** Holes whose steel is begun today. */
  private List<String> begun() {
    return marks(day, false);
  }

  private static List<String> marks(WorkDay of, boolean continued) {
    return of.portions().stream()
        .filter(portion -> portion.kind() == Task.Kind.STEEL && portion.continued() == continued)
        .flatMap(portion -> portion.mark().stream())
        .distinct()
        .toList();
  }

  /** Whose steel goes on today, and which day's sheet lists its bars. */
  private List<String> goesOn() {
    Map<Integer, List<String>> byDay = new TreeMap<>();
    for (String mark : marks(day, true)) {
      packet.dayPlan().days().stream()
          .filter(earlier -> earlier.number() < day.number())
          .filter(earlier -> marks(earlier, false).contains(mark))
          .findFirst()
          .ifPresent(
              earlier ->
                  byDay.computeIfAbsent(earlier.number(), any -> new ArrayList<>()).add(mark));
    }
    List<String> lines = new ArrayList<>();
    byDay.forEach(
        (number, marks) ->
            lines.add(
                writing
                    .texts()
                    .say(
                        "day-plan.bar.goes-on",
                        Map.of(
                            "holes", writing.formats().names(marks),
                            "day", writing.formats().count(number)))));
    return lines;
  }

  private List<Today> today() {
    Map<String, Today> today = new LinkedHashMap<>();
    for (Cage cage : packet.steelPlan().cages()) {
      int footings = (int) cage.marks().stream().filter(begun()::contains).count();
      if (footings > 0) {
        cage.pieces()
            .forEach(
                piece -> today.merge(piece.barMark(), first(piece, footings, cage), DayBars::and));
      }
    }
    return List.copyOf(today.values());
  }

  private static Today first(BarPiece piece, int footings, Cage cage) {
    return new Today(piece, piece.count() * footings, List.of(cage));
  }

  private static Today and(Today one, Today other) {
    List<Cage> cages = new ArrayList<>(one.cages());
    cages.addAll(other.cages());
    return new Today(one.piece(), one.count() + other.count(), cages);
  }

  private String line(Today today) {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("mark", today.piece().barMark());
    words.put("count", writing.formats().count(today.count()));
    words.put("size", today.piece().size());
    words.put("cut", writing.formats().length(today.piece().cut()));
    if (today.piece().shape() == BarPiece.Shape.HOOKED_ONE_END) {
      words.put("leg", today.cages().get(0).uprights().lowestHook().map(this::leg).orElse(""));
      return writing.texts().say("day-plan.bar.hooked", words);
    }
    Optional<Rings> rings = today.cages().get(0).rings();
    if (today.piece().shape() != BarPiece.Shape.RING || rings.isEmpty()) {
      return writing.texts().say("day-plan.bar.straight", words);
    }
    words.put("outside", writing.formats().size(rings.get().outside()));
    words.put("spacing", spacing(today));
    return writing.texts().say("day-plan.bar.ring", words);
  }

  private String leg(Hook hook) {
    return writing.formats().size(hook.leg());
  }

  /** From ring to ring; with the footings' names where cages of the day differ. */
  private String spacing(Today today) {
    Map<String, List<String>> marks = new LinkedHashMap<>();
    for (Cage cage : today.cages()) {
      Length spacing = cage.rings().map(Rings::spacing).orElse(Length.ZERO);
      marks
          .computeIfAbsent(writing.formats().size(spacing), each -> new ArrayList<>())
          .addAll(cage.marks().stream().filter(begun()::contains).toList());
    }
    if (marks.size() == 1) {
      return marks.keySet().iterator().next();
    }
    return String.join(
        ", ",
        marks.entrySet().stream()
            .map(
                entry ->
                    writing
                        .texts()
                        .say(
                            "day-plan.bar.spacing-of",
                            Map.of(
                                "spacing",
                                entry.getKey(),
                                "holes",
                                writing.formats().names(entry.getValue()))))
            .toList());
  }
}
