package pegbook.testing;

import java.nio.charset.StandardCharsets;
import java.util.List;
import pegbook.calc.depthtargets.DepthTargetsCalculator;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.figures.Hole;
import pegbook.figures.Placement;
import pegbook.job.Job;
import pegbook.jobfile.JobFile;
import pegbook.jobfile.JobFileReader;

/**
 * A job for tests of loads and footings, as the parts of its job file. Every part may be changed
 * before it is read.
 */
public final class FootingJob {
  public String units = "imperial";
  public String outline = rectangle("16 ft", "12 ft", 2, 2);
  public String azimuth = "300 deg";
  public String inset = "12 in";
  public String ground = "\"soil\": \"clay\"";
  public String supports = "{ \"hole\": \"18 in\", \"depth\": \"36 in\", \"top\": \"6 in\" }";
  public String piers = "[]";
  public String floor = "{ \"live\": \"40 psf\", \"dead\": \"10 psf\" }";
  public String features = "[]";
  public String design = "{}";
  public String stock = "";

  /** A rectangle with a grid of supports. */
  public static String rectangle(String length, String width, int columns, int rows) {
    return """
    { "rectangle": { "length": "%s", "width": "%s", "columns": %d, "rows": %d } }
    """
        .formatted(length, width, columns, rows);
  }

  /** The text of the job file. */
  public String text() {
    return """
    { "title": "Trial", "units": "%s", "ground": { %s }, "site": { "features": %s },
      "layout": { "outline": %s, "centreToFirstMark": "%s", "supportInset": "%s" },
      "supports": %s, "piers": %s, "floor": %s, "design": %s,
      "stock": { %s } }
    """
        .formatted(
            units, ground, features, outline, azimuth, inset, supports, piers, floor, design,
            stock);
  }

  /**
   * The checked job.
   *
   * @throws IllegalArgumentException when it is refused
   */
  public Job job() {
    JobFile file = JobFileReader.read("trial.json", text().getBytes(StandardCharsets.UTF_8));
    if (file instanceof JobFile.Read read) {
      return read.job();
    }
    throw new IllegalArgumentException(file.toString());
  }

  public static Placement placement(Job job) {
    return PlacementCalculator.calculate(job);
  }

  public static List<Hole> holes(Job job) {
    return DepthTargetsCalculator.calculate(job, placement(job)).holes();
  }
}
