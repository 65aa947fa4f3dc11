package pegbook.testing;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.job.Benchmark;
import pegbook.job.Concrete;
import pegbook.job.Crew;
import pegbook.job.Design;
import pegbook.job.Digging;
import pegbook.job.Feature;
import pegbook.job.Field;
import pegbook.job.Ground;
import pegbook.job.Heading;
import pegbook.job.Job;
import pegbook.job.Language;
import pegbook.job.Layout;
import pegbook.job.Outline;
import pegbook.job.Paper;
import pegbook.job.Pier;
import pegbook.job.Place;
import pegbook.job.Plan;
import pegbook.job.Site;
import pegbook.job.Soil;
import pegbook.job.Spoil;
import pegbook.job.Supports;
import pegbook.job.Widenings;
import pegbook.measure.Angle;
import pegbook.measure.Duration;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Pressure;
import pegbook.measure.Ratio;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;

/** A job for tests of marking out; every field may be changed before {@link #job()} is taken. */
public final class LayoutJob {
  /** An ordinary tape in ordinary hands, in a metric job. */
  static final Layout.Accuracy COMMON_TAPE =
      new Layout.Accuracy(Length.ofMillimetres(1.5), new Layout.TapeItself.CommonPractice());

  public UnitSystem units = UnitSystem.METRIC;
  public Paper paper = Paper.A4;
  public String title = "Test platform";
  public Outline outline = new Outline.Regular(6, new Length(4));
  public Optional<Angle> azimuth = Optional.of(Angle.ofDegrees(8));
  public Length inset = new Length(0.2);
  public Layout.Baseline baseline = new Layout.Baseline.Choose();
  public Length division = Length.ofMillimetres(1);
  public Layout.Accuracy accuracy = COMMON_TAPE;
  public Length tape = new Length(30);
  public Length tolerance = Length.ofMillimetres(10);
  public Length hole = new Length(0.45);
  public List<Pier> piers = new ArrayList<>();
  public Map<String, Length> levels = new LinkedHashMap<>();
  public Optional<Polygon> boundary = Optional.empty();
  public Optional<Length> setback = Optional.empty();
  public List<Feature> features = new ArrayList<>();
  public Optional<Benchmark> benchmark = Optional.empty();
  public Field field = Field.NOTHING;

  public static LayoutJob of(Outline outline) {
    LayoutJob job = new LayoutJob();
    job.outline = outline;
    return job;
  }

  /**
   * Supports where they are wanted, in metres, on a floor wider than all of them: north up as
   * drawn, with a tape that reaches everywhere.
   *
   * @param eastNorth places of S1, S2, …, east and north by turns
   */
  public static LayoutJob supports(double... eastNorth) {
    List<Point> supports = new ArrayList<>();
    for (int i = 0; i < eastNorth.length; i += 2) {
      supports.add(new Point(eastNorth[i], eastNorth[i + 1]));
    }
    List<Point> corners =
        List.of(new Point(-90, -90), new Point(90, -90), new Point(90, 90), new Point(-90, 90));
    LayoutJob job = of(new Outline.Free(corners, Optional.of(supports)));
    job.azimuth = Optional.empty();
    job.tape = new Length(100);
    return job;
  }

  public LayoutJob named(String first, String second) {
    baseline = new Layout.Baseline.Named(first, second);
    return this;
  }

  public LayoutJob pier(String id, double east, double north) {
    piers.add(
        new Pier(
            id,
            new Point(east, north),
            new Length(0.5),
            Optional.empty(),
            Length.ZERO,
            new Length(0.9),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            new Length(0.025),
            new Force(45),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Widenings.NONE));
    return this;
  }

  public LayoutJob feature(
      String name, Feature.Kind kind, Feature.Shape shape, Optional<Length> keepClear) {
    features.add(new Feature(name, kind, shape, keepClear));
    return this;
  }

  public LayoutJob spot(String name, double east, double north) {
    return feature(
        name,
        Feature.Kind.OBJECT,
        new Feature.Shape.Spot(new Point(east, north)),
        Optional.empty());
  }

  public Job job() {
    return new Job(
        "test",
        new Heading(title, "A", Optional.empty(), Optional.empty(), units, paper),
        new Place(
            "US",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of()),
        new Site(boundary, setback, features),
        new Ground(
            Soil.LOAM,
            Digging.ORDINARY,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            benchmark,
            levels,
            Optional.empty()),
        new Layout(
            outline,
            azimuth,
            inset,
            baseline,
            new Layout.Tape(division, tape, accuracy),
            tolerance),
        new Supports(
            hole,
            Optional.empty(),
            new Length(0.1),
            new Length(0.15),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Widenings.NONE),
        piers,
        Optional.empty(),
        Optional.empty(),
        Design.UNKNOWN,
        new Crew(
            2,
            new Duration(6),
            Optional.empty(),
            new TreeSet<>(List.of(DayOfWeek.SATURDAY)),
            new TreeSet<>(List.of(Language.ENGLISH)),
            List.of()),
        Plan.PLAIN,
        List.of(),
        new Spoil(Volume.ofCubicFeet(3), Optional.empty(), Optional.empty()),
        new Concrete(
            Mass.ofPounds(80),
            Optional.empty(),
            Pressure.ofPsi(4000),
            Ratio.ofPercent(10),
            Optional.empty(),
            Optional.empty(),
            Concrete.Mixing.BY_HAND,
            Optional.empty(),
            Optional.empty(),
            Optional.empty()),
        DigJob.STOCK,
        TestShop.plain(),
        Optional.empty(),
        field,
        Optional.empty(),
        List.of());
  }
}
