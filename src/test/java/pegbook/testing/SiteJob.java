package pegbook.testing;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.geometry.Point;
import pegbook.job.AllowablePressure;
import pegbook.job.Concrete;
import pegbook.job.Crew;
import pegbook.job.Design;
import pegbook.job.Digging;
import pegbook.job.ExpectedHeat;
import pegbook.job.Feature;
import pegbook.job.Field;
import pegbook.job.Floor;
import pegbook.job.Ground;
import pegbook.job.Heading;
import pegbook.job.Job;
import pegbook.job.Language;
import pegbook.job.Layout;
import pegbook.job.Outline;
import pegbook.job.Paper;
import pegbook.job.Place;
import pegbook.job.Plan;
import pegbook.job.Site;
import pegbook.job.Soil;
import pegbook.job.Spoil;
import pegbook.job.Steel;
import pegbook.job.Supports;
import pegbook.job.Tool;
import pegbook.job.UtilityMarking;
import pegbook.job.Water;
import pegbook.job.Widenings;
import pegbook.measure.Angle;
import pegbook.measure.Duration;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Pressure;
import pegbook.measure.Ratio;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;

/**
 * A job for tests of what surrounds the figures: place, people, tools, season, use. Every field may
 * be changed before {@link #job()} and {@link #holes()} are taken.
 */
public final class SiteJob {
  public UnitSystem units = UnitSystem.IMPERIAL;
  public String country = "US";
  public Optional<ExpectedHeat> heat = Optional.empty();
  public Optional<Angle> latitude = Optional.empty();
  public Optional<LocalDate> start = Optional.empty();
  public Optional<LocalDate> issued = Optional.of(LocalDate.of(2027, 4, 12));
  public Optional<String> authority = Optional.of("county building office");
  public Optional<String> permit = Optional.of("applied for");
  public Optional<UtilityMarking> utilities = Optional.empty();
  public Optional<Floor> floor = Optional.empty();
  public Optional<AllowablePressure> pressure = Optional.empty();
  public Optional<Length> water = Optional.empty();
  public Digging digging = Digging.ORDINARY;
  public Soil soil = Soil.CLAY;
  public int people = 2;
  public Mass bag = Mass.ofPounds(80);
  public Concrete.Mixing mixing = Concrete.Mixing.BY_HAND;
  public List<Tool.Kind> tools = new ArrayList<>();
  public List<Feature> features = new ArrayList<>();
  private final List<Hole> holes = new ArrayList<>();

  /** A hole without gravel, 18 in wide, without steel. */
  public SiteJob hole(String mark, Length dug) {
    return hole(mark, dug, Length.ofInches(18), Optional.empty());
  }

  /** A hole without gravel. */
  public SiteJob hole(String mark, Length dug, Length diameter, Optional<Steel> steel) {
    holes.add(
        new Hole(
            mark,
            mark.startsWith("P") ? MarkKind.PIER : MarkKind.SUPPORT,
            Point.ORIGIN,
            diameter,
            dug,
            Length.ZERO,
            Length.ZERO,
            Hole.DepthRule.JOB,
            Optional.empty(),
            steel,
            Optional.empty(),
            Optional.empty(),
            Widenings.NONE));
    return this;
  }

  /** A straight buried line or overhead wire. */
  public SiteJob feature(String name, Feature.Kind kind) {
    features.add(
        new Feature(name, kind, new Feature.Shape.Spot(new Point(9, 9)), Optional.empty()));
    return this;
  }

  public List<Hole> holes() {
    return List.copyOf(holes);
  }

  /** The checked job. */
  public Job job() {
    return new Job(
        "test",
        new Heading("Test", "A", issued, Optional.empty(), units, Paper.LETTER),
        new Place(
            country,
            latitude,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            authority,
            Optional.empty(),
            permit,
            utilities,
            heat,
            List.of()),
        new Site(Optional.empty(), Optional.empty(), features),
        new Ground(
            soil,
            digging,
            water.map(depth -> new Water(depth, Optional.empty())),
            Optional.empty(),
            pressure,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Map.of(),
            Optional.empty()),
        layout(),
        supports(),
        List.of(),
        floor,
        Optional.empty(),
        Design.UNKNOWN,
        new Crew(
            people,
            new Duration(6),
            start,
            new TreeSet<>(List.of(DayOfWeek.SATURDAY)),
            new TreeSet<>(List.of(Language.ENGLISH)),
            List.of()),
        Plan.PLAIN,
        tools.stream().map(SiteJob::tool).toList(),
        new Spoil(Volume.ofCubicFeet(3), Optional.empty(), Optional.empty()),
        concrete(),
        DigJob.STOCK,
        TestShop.plain(),
        Optional.empty(),
        Field.NOTHING,
        Optional.empty(),
        List.of());
  }

  private static Tool tool(Tool.Kind kind) {
    return new Tool(kind, kind.name(), Optional.empty(), Length.ofInches(24));
  }

  private static Layout layout() {
    return new Layout(
        new Outline.Regular(6, Length.ofFeet(14)),
        Optional.of(Angle.ZERO),
        Length.ofInches(8),
        new Layout.Baseline.Choose(),
        new Layout.Tape(Length.ofInches(1 / 16.0), Length.ofFeet(25), LayoutJob.COMMON_TAPE),
        Length.ofInches(0.5));
  }

  private static Supports supports() {
    return new Supports(
        Length.ofInches(18),
        Optional.empty(),
        Length.ZERO,
        Length.ZERO,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Widenings.NONE);
  }

  private Concrete concrete() {
    return new Concrete(
        bag,
        Optional.empty(),
        Pressure.ofPsi(4000),
        Ratio.ofPercent(10),
        Optional.empty(),
        Optional.empty(),
        mixing,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
