package pegbook.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.figures.Formula;
import pegbook.figures.Result;
import pegbook.figures.Working;

/**
 * The packet's workings: one group for each subject, numbered 1, 2…; in it one entry for each
 * formula, numbered 1.1, 1.2…; under it every subject it was worked for.
 */
public record NumberedWorkings(List<Group> groups) {

  /** The formulas of one subject; its name is the part of their ids before the dot. */
  public record Group(String subject, String number, List<Entry> entries) {}

  /** One formula with all that it was worked for. */
  public record Entry(String number, Formula formula, List<Working> workings) {}

  /** Numbers the workings of results, in their order. */
  public static NumberedWorkings of(List<Result> results) {
    Map<String, Map<String, List<Working>>> bySubject = new LinkedHashMap<>();
    for (Result result : results) {
      for (Working working : result.workings()) {
        String id = working.formula().id();
        bySubject
            .computeIfAbsent(id.substring(0, id.indexOf('.')), key -> new LinkedHashMap<>())
            .computeIfAbsent(id, key -> new ArrayList<>())
            .add(working);
      }
    }
    List<Group> groups = new ArrayList<>();
    bySubject.forEach((subject, byId) -> groups.add(group(subject, groups.size() + 1, byId)));
    return new NumberedWorkings(List.copyOf(groups));
  }

  private static Group group(String subject, int number, Map<String, List<Working>> byId) {
    List<Entry> entries = new ArrayList<>();
    byId.forEach(
        (id, workings) ->
            entries.add(
                new Entry(
                    number + "." + (entries.size() + 1),
                    workings.get(0).formula(),
                    List.copyOf(workings))));
    return new Group(subject, Integer.toString(number), List.copyOf(entries));
  }

  /** The number of a formula's entry, where it was worked at all. */
  public Optional<String> numberOf(String formulaId) {
    return groups.stream()
        .flatMap(group -> group.entries().stream())
        .filter(entry -> entry.formula().id().equals(formulaId))
        .map(Entry::number)
        .findFirst();
  }
}
