package pegbook.jobfile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import pegbook.job.Default;
import pegbook.measure.Length;
import pegbook.measure.LengthNotation;
import pegbook.measure.TapeDivision;
import pegbook.measure.UnitSystem;

/** What reading one file has found so far: its problems, and the defaults that it used. */
final class Report {
  /** More than these help nobody; the last one then says how many were left out. */
  static final int MOST_PROBLEMS = 100;

  private static final Comparator<Problem> IN_FILE_ORDER =
      Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column);

  private final String file;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Default> defaults = new ArrayList<>();
  private final Map<String, Fields> objects = new TreeMap<>();
  private UnitSystem units = UnitSystem.IMPERIAL;

  Report(String file) {
    this.file = file;
  }

  /** Adds a problem with the value at a node, which is shown as what was found. */
  void complain(Node node, Complaint complaint, Map<String, String> words) {
    complain(node.at(), node.path(), Shown.of(node), complaint, words);
  }

  /** Adds a problem. */
  void complain(
      Location at, String path, String found, Complaint complaint, Map<String, String> words) {
    problems.add(
        new Problem(
            file,
            at.line(),
            at.column(),
            path,
            complaint.expected(words),
            found,
            complaint.wayOut(words)));
  }

  /** Whether a problem was found at a path of this form. */
  boolean hasProblemAt(Pattern path) {
    return problems.stream().anyMatch(problem -> path.matcher(problem.path()).matches());
  }

  /** A length as one types it into a job file. */
  String written(Length length) {
    TapeDivision division =
        units == UnitSystem.IMPERIAL ? TapeDivision.SIXTEENTH_INCH : TapeDivision.MILLIMETRE;
    return LengthNotation.typed(length, division);
  }

  /** Notes a default that was used. */
  void assume(Default assumed) {
    defaults.add(assumed);
  }

  /** Keeps the values of an object for checks between objects. */
  void keep(Fields fields) {
    objects.put(fields.section().path(), fields);
  }

  /** The values of the object at a path, where an object was read there. */
  Optional<Fields> object(String path) {
    return Optional.ofNullable(objects.get(path));
  }

  void printIn(UnitSystem system) {
    units = system;
  }

  UnitSystem units() {
    return units;
  }

  boolean hasProblems() {
    return !problems.isEmpty();
  }

  List<Default> defaults() {
    return List.copyOf(defaults);
  }

  /** The problems in the order of the file. */
  List<Problem> problems() {
    List<Problem> sorted = problems.stream().sorted(IN_FILE_ORDER).toList();
    if (sorted.size() <= MOST_PROBLEMS) {
      return sorted;
    }
    List<Problem> first = new ArrayList<>(sorted.subList(0, MOST_PROBLEMS));
    Problem next = sorted.get(MOST_PROBLEMS);
    Map<String, String> count =
        Map.of("more", Integer.toString(sorted.size() - MOST_PROBLEMS), "most", "" + MOST_PROBLEMS);
    first.add(
        new Problem(
            file,
            next.line(),
            next.column(),
            "",
            Complaint.MANY.expected(count),
            Complaint.MANY.word("found", count),
            Complaint.MANY.wayOut(count)));
    return List.copyOf(first);
  }
}
