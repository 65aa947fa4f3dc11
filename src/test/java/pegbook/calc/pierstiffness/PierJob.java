package pegbook.calc.pierstiffness;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import pegbook.calc.depthtargets.DepthTargetsCalculator;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.figures.Placement;
import pegbook.job.Job;
import pegbook.jobfile.JobFile;
import pegbook.jobfile.JobFileReader;

/** A job with one pier, written as a job file; parts may be changed before it is read. */
final class PierJob {
  String units = "imperial";
  String soil = "sand";
  String stiffness = "";
  String strength = "4000 psi";
  String at = "centre";
  String pier =
      "\"hole\": \"22 in\", \"tube\": \"16 in\", \"depth\": \"58 in\", \"top\": \"36 in\"";
  String instrument = "85 lb";
  String push = "10 lbf";
  String more = "";
  String floor = "";

  PierJob metric() {
    units = "metric";
    return this;
  }

  /** A pier of millimetres on ground of megapascals, with an instrument of kilograms. */
  PierJob of(double hole, double depth, double top, double modulus, double mass) {
    units = "metric";
    strength = "30 MPa";
    pier =
        String.format(
            Locale.ROOT,
            "\"hole\": \"%.0f mm\", \"depth\": \"%.0f mm\", \"top\": \"%.0f mm\"",
            hole,
            depth,
            top);
    stiffness = String.format(Locale.ROOT, "\"%.3f MPa\"", modulus);
    instrument = String.format(Locale.ROOT, "%.2f kg", mass);
    push = "45 N";
    return this;
  }

  Job job() {
    String text =
        """
        {"title": "x", "units": "%s",
         "ground": {"soil": "%s"%s},
         "layout": {"outline": {"regular": {"sides": 6, "acrossFlats": "20 ft"}},
                    "centreToFirstMark": "30 deg"},
         "piers": [{"id": "P1", "at": "%s", %s, "push": "%s"%s%s}],
         "concrete": {"strength": "%s"}%s}
        """
            .formatted(
                units,
                soil,
                stiffness.isEmpty() ? "" : ", \"shearModulus\": " + stiffness,
                at,
                pier,
                push,
                instrument.isEmpty() ? "" : ", \"instrument\": \"" + instrument + "\"",
                more,
                strength,
                floor.isEmpty() ? "" : ", \"floor\": " + floor);
    JobFile file = JobFileReader.read("pier.json", text.getBytes(StandardCharsets.UTF_8));
    if (file instanceof JobFile.Read read) {
      return read.job();
    }
    throw new IllegalArgumentException(file + "\n" + text);
  }

  PierStiffness stiffness() {
    Job job = job();
    Placement placement = PlacementCalculator.calculate(job);
    return PierStiffnessCalculator.calculate(
        job, placement, DepthTargetsCalculator.calculate(job, placement).holes());
  }

  List<String> findings() {
    return stiffness().findings().stream().map(found -> found.id()).toList();
  }
}
