package pegbook.jobfile;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import pegbook.geometry.Point;
import pegbook.job.Frame;
import pegbook.job.Layout.Baseline;
import pegbook.job.Outline;
import pegbook.job.Plan;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;

/** Marks against each other: how many, what they are called, whether they fit, how far they lie. */
final class MarkChecks {
  /** A pier farther from the centre than this does not belong to the structure. */
  static final Length FARTHEST = Length.ofFeet(300);

  private static final Pattern A_PIERS_NAME = Pattern.compile("piers(\\[\\d+](\\.id)?)?");

  private MarkChecks() {}

  static void look(JobMarks marks, Report report) {
    countMarks(marks, report);
    fitSupports(marks, report);
    nameBaseline(marks, report);
    nameLevels(marks, report);
    nameFrame(marks, report);
    namePiers(marks, report);
    keepPiersNear(marks, report);
    namePowerPier(marks, report);
    nameTapes(marks, report);
    nameHoles(marks, report, "field.dug", FieldKeys.HOLE, dug -> "");
    nameHoles(
        marks,
        report,
        "plan.estimates",
        PlanKeys.HOLE,
        estimate -> estimate.find(PlanKeys.WORK).map(Plan.Work::name).orElse(""));
  }

  private static void countMarks(JobMarks marks, Report report) {
    int count = marks.outline().map(Outline::supportCount).orElse(0) + marks.piers().size();
    if (count > JobMarks.MOST) {
      Node at = node(report, "layout", LayoutKeys.OUTLINE);
      Map<String, String> most = Map.of("most", Integer.toString(JobMarks.MOST));
      report.complain(at.at(), at.path(), count + " marks", Complaint.MARKS_TOO_MANY, most);
    }
  }

  private static void fitSupports(JobMarks marks, Report report) {
    if (marks.misfit()) {
      Fields layout = report.object("layout").orElseThrow();
      layout.complain(LayoutKeys.SUPPORT_INSET, Complaint.INSET_SWALLOWS);
    }
  }

  private static void nameBaseline(JobMarks marks, Report report) {
    Optional<Fields> layout = report.object("layout");
    Optional<Baseline> baseline = layout.flatMap(fields -> fields.find(LayoutKeys.BASELINE));
    if (baseline.isEmpty() || !(baseline.get() instanceof Baseline.Named named)) {
      return;
    }
    if (named.first().equals(named.second())) {
      Node second = layout.get().item(LayoutKeys.BASELINE, 1);
      report.complain(second, Complaint.MARK_TWICE, Map.of());
    }
    know(marks, named.first(), layout.get().item(LayoutKeys.BASELINE, 0), report);
    if (!named.first().equals(named.second())) {
      know(marks, named.second(), layout.get().item(LayoutKeys.BASELINE, 1), report);
    }
  }

  /** Joists lie along the line of two supports. */
  private static void nameFrame(JobMarks marks, Report report) {
    Optional<Fields> frame = report.object("floor.frame");
    Optional<Frame.Along> along = frame.flatMap(fields -> fields.find(FrameKeys.ALONG));
    if (along.isEmpty()) {
      return;
    }
    if (along.get().first().equals(along.get().second())) {
      report.complain(frame.get().item(FrameKeys.ALONG, 1), Complaint.MARK_TWICE, Map.of());
      return;
    }
    List<String> two = List.of(along.get().first(), along.get().second());
    for (int i = 0; i < two.size(); i++) {
      Node at = frame.get().item(FrameKeys.ALONG, i);
      if (two.get(i).startsWith("P")) {
        report.complain(at, Complaint.NOT_A_SUPPORT, Map.of());
      } else {
        know(marks, two.get(i), at, report);
      }
    }
  }

  private static void nameLevels(JobMarks marks, Report report) {
    Optional<Fields> ground = report.object("ground");
    if (ground.isPresent()
        && ground.get().node(GroundKeys.LEVELS) instanceof Node.Section levels
        && levels.entries().size() <= JobMarks.MOST) {
      levels
          .entries()
          .forEach(
              (mark, entry) -> {
                Node.Text name = new Node.Text(entry.value().path(), entry.keyAt(), mark);
                know(marks, mark, name, report);
              });
    }
  }

  private static void nameTapes(JobMarks marks, Report report) {
    Optional<Length> reach =
        report.object("layout.tape").flatMap(tape -> tape.find(LayoutKeys.TAPE_LENGTH));
    for (int i = 0; i <= FieldKeys.MOST; i++) {
      Optional<Fields> taped = report.object("field.marked[" + i + "]");
      if (taped.isEmpty()) {
        return;
      }
      Fields fields = taped.get();
      for (Key<String> end : List.of(FieldKeys.FROM, FieldKeys.TO)) {
        fields.find(end).ifPresent(mark -> know(marks, mark, fields.node(end), report));
      }
      Optional<Length> reading = fields.find(FieldKeys.TAPE);
      if (reading.isPresent() && reach.filter(reading.get()::isMoreThan).isPresent()) {
        Map<String, String> words = Map.of("most", report.written(reach.get()));
        report.complain(fields.node(FieldKeys.TAPE), Complaint.TAPE_SHORT, words);
      }
    }
  }

  /** Holes of a list that are not in the job, or stand in it twice for the same. */
  private static void nameHoles(
      JobMarks marks, Report report, String list, Key<String> hole, Function<Fields, String> what) {
    Map<String, Integer> firstLine = new LinkedHashMap<>();
    for (int i = 0; i <= JobMarks.MOST; i++) {
      Optional<Fields> item = report.object(list + "[" + i + "]");
      if (item.isEmpty()) {
        return;
      }
      Fields fields = item.get();
      Node at = fields.has(hole) ? fields.node(hole) : fields.section();
      fields.find(hole).ifPresent(mark -> know(marks, mark, at, report));
      String name = fields.find(hole).orElse("") + " " + what.apply(fields);
      Integer before = firstLine.putIfAbsent(name, at.at().line());
      if (before != null && !fields.isRefused(hole)) {
        report.complain(at, Complaint.HOLE_TWICE, Map.of("line", Integer.toString(before)));
      }
    }
  }

  /** A mark that nothing in the job makes; a pier's name may be one that was refused. */
  private static void know(JobMarks marks, String mark, Node at, Report report) {
    Optional<List<String>> names = marks.names();
    if (names.isEmpty() || names.get().contains(mark)) {
      return;
    }
    if (mark.startsWith("P") && report.hasProblemAt(A_PIERS_NAME)) {
      return;
    }
    Map<String, String> words = Map.of("marks", range(names.get()));
    report.complain(at, Complaint.MARK_UNKNOWN, words);
  }

  /** "S1 to S6, P1". */
  private static String range(List<String> names) {
    long supports = names.stream().filter(name -> name.startsWith("S")).count();
    String piers =
        names.stream()
            .filter(name -> name.startsWith("P"))
            .limit(10)
            .map(name -> ", " + name)
            .reduce("", String::concat);
    return "S1 to S" + supports + piers;
  }

  private static void namePiers(JobMarks marks, Report report) {
    Map<String, Fields> firstByName = new LinkedHashMap<>();
    for (Fields pier : marks.piers()) {
      Optional<String> name = pier.find(PierKeys.ID);
      Optional<Fields> first = name.map(id -> firstByName.putIfAbsent(id, pier));
      if (first.isPresent()) {
        int line = first.get().node(PierKeys.ID).at().line();
        Map<String, String> words = Map.of("line", Integer.toString(line));
        report.complain(pier.node(PierKeys.ID), Complaint.ID_TWICE, words);
      }
    }
  }

  private static void keepPiersNear(JobMarks marks, Report report) {
    for (Fields pier : marks.piers()) {
      Optional<Length> far =
          pier.find(PierKeys.AT)
              .map(Point.ORIGIN::distanceTo)
              .filter(distance -> distance.isMoreThan(FARTHEST));
      if (far.isPresent()) {
        report.complain(
            pier.node(PierKeys.AT),
            Complaint.PIER_FAR,
            Map.of("most", report.units() == UnitSystem.IMPERIAL ? "300 ft" : "91 m"));
      }
    }
  }

  /** The pier to which the power line goes. */
  private static void namePowerPier(JobMarks marks, Report report) {
    Optional<Fields> power = report.object(PowerKeys.POWER.name());
    Optional<String> pier = power.flatMap(fields -> fields.find(PowerKeys.PIER));
    boolean known =
        pier.isEmpty()
            || report.hasProblemAt(A_PIERS_NAME)
            || marks.piers().stream().anyMatch(each -> each.find(PierKeys.ID).equals(pier));
    if (!known) {
      report.complain(power.get().node(PowerKeys.PIER), Complaint.PIER_UNKNOWN, Map.of());
    }
  }

  private static Node node(Report report, String object, Key<?> key) {
    return report.object(object).orElseThrow().node(key);
  }
}
