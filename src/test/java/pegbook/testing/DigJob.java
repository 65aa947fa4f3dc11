package pegbook.testing;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import pegbook.figures.MarkKind;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.geometry.Figure;
import pegbook.geometry.Outlines;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.job.Concrete;
import pegbook.job.Crew;
import pegbook.job.Design;
import pegbook.job.Digging;
import pegbook.job.Feature;
import pegbook.job.Field;
import pegbook.job.Floor;
import pegbook.job.Frost;
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
import pegbook.job.Stock;
import pegbook.job.Supports;
import pegbook.job.Tool;
import pegbook.job.UtilityMarking;
import pegbook.job.Water;
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

/**
 * A job for tests of digging: a regular figure with supports at its corners and piers where asked.
 * Every field may be changed before {@link #job()} and {@link #placement()} are taken.
 */
public final class DigJob {
  /** Twenty feet and no offcuts. */
  static final Stock STOCK =
      new Stock(
          Length.ofFeet(20),
          List.of(),
          List.of(),
          Length.ofInches(0.125),
          Length.ofFeet(2),
          Pressure.ofPsi(60_000),
          Stock.Coating.NONE);

  public UnitSystem units = UnitSystem.IMPERIAL;
  public Paper paper = Paper.LETTER;
  public Optional<Angle> latitude = Optional.empty();
  public String country = "US";
  public int sides = 6;
  public Length acrossCorners = Length.ofFeet(14);
  public Length division = Length.ofInches(1 / 16.0);
  public Length supportHole = Length.ofInches(18);
  public Length supportGravel = Length.ofInches(4);
  public Length supportTop = Length.ofInches(6);
  public Optional<Length> supportDepth = Optional.empty();
  public Optional<Frost> frost = Optional.empty();
  public Optional<Length> water = Optional.empty();
  public Soil soil = Soil.SANDY_CLAY;
  public Digging digging = Digging.ORDINARY;
  public Spoil spoil = new Spoil(Volume.ofCubicFeet(3), Optional.empty(), Optional.empty());
  public Optional<Polygon> boundary = Optional.empty();
  public List<Feature> features = new ArrayList<>();
  public List<Pier> piers = new ArrayList<>();
  public Map<String, Length> levels = new LinkedHashMap<>();
  public Optional<Floor> floor = Optional.empty();
  public Optional<LocalDate> issued = Optional.empty();
  public Optional<LocalDate> utilities = Optional.empty();
  public Plan plan = Plan.PLAIN;
  public Field field = Field.NOTHING;
  public List<Tool> tools = new ArrayList<>(usualTools());

  /** Tools as a household has them. */
  public static List<Tool> usualTools() {
    return List.of(
        new Tool(Tool.Kind.SPADE, "spade", Optional.empty(), Length.ofInches(24)),
        new Tool(Tool.Kind.CLAMSHELL, "clamshell digger", Optional.empty(), Length.ofInches(24)),
        new Tool(
            Tool.Kind.HAND_AUGER,
            "hand auger",
            Optional.of(Length.ofInches(8)),
            Length.ofInches(72)),
        new Tool(Tool.Kind.DIGGING_BAR, "digging bar", Optional.empty(), Length.ofInches(66)));
  }

  /** An authority's frost depth in inches. */
  public DigJob frostInches(double inches) {
    frost = Optional.of(new Frost(Length.ofInches(inches), "county office", Optional.empty()));
    return this;
  }

  /** The authority's leave to stay above it. */
  public DigJob exempt(Frost.Covers covers) {
    Frost stated = frost.orElseThrow();
    Frost.Exemption exemption =
        new Frost.Exemption("county inspector", LocalDate.of(2027, 5, 3), covers);
    frost = Optional.of(new Frost(stated.depth(), stated.from(), Optional.of(exemption)));
    return this;
  }

  /** A pier with a 22 in hole and no gravel. */
  public DigJob pier(String id, Point at, Optional<Length> depth) {
    piers.add(
        new Pier(
            id,
            at,
            Length.ofInches(22),
            depth,
            Length.ZERO,
            Length.ofInches(36),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Length.ofInches(1),
            Force.ofPoundsForce(10),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Widenings.NONE));
    return this;
  }

  /** The checked job. */
  public Job job() {
    return new Job(
        "test",
        new Heading("Test", "A", issued, Optional.empty(), units, paper),
        place(),
        new Site(boundary, Optional.empty(), features),
        new Ground(
            soil,
            digging,
            water.map(depth -> new Water(depth, Optional.empty())),
            Optional.empty(),
            Optional.empty(),
            frost,
            Optional.empty(),
            Optional.empty(),
            levels,
            Optional.empty()),
        layout(),
        new Supports(
            supportHole,
            supportDepth,
            supportGravel,
            supportTop,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Widenings.NONE),
        piers,
        floor,
        Optional.empty(),
        Design.UNKNOWN,
        new Crew(
            2,
            new Duration(6),
            Optional.empty(),
            new TreeSet<>(List.of(DayOfWeek.SATURDAY)),
            new TreeSet<>(List.of(Language.ENGLISH)),
            List.of()),
        plan,
        tools,
        spoil,
        concrete(),
        STOCK,
        TestShop.plain(),
        Optional.empty(),
        field,
        Optional.empty(),
        List.of());
  }

  private Place place() {
    return new Place(
        country,
        latitude,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        utilities.map(date -> new UtilityMarking(date, Optional.empty())),
        Optional.empty(),
        List.of());
  }

  private Layout layout() {
    return new Layout(
        new Outline.Regular(sides, acrossCorners),
        Optional.of(Angle.ZERO),
        Length.ofInches(8),
        new Layout.Baseline.Choose(),
        new Layout.Tape(division, Length.ofFeet(25), LayoutJob.COMMON_TAPE),
        Length.ofInches(0.5));
  }

  private static Concrete concrete() {
    return new Concrete(
        Mass.ofPounds(80),
        Optional.empty(),
        Pressure.ofPsi(4000),
        Ratio.ofPercent(10),
        Optional.empty(),
        Optional.empty(),
        Concrete.Mixing.BY_HAND,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** Its figure on the ground. */
  public Placement placement() {
    Figure figure =
        Outlines.regular(sides, acrossCorners, Length.ofInches(8), Angle.ZERO).orElseThrow();
    List<PlacedMark> marks = new ArrayList<>();
    for (Point support : figure.supports()) {
      String id = "S" + (marks.size() + 1);
      marks.add(new PlacedMark(id, MarkKind.SUPPORT, support, level(id)));
    }
    piers.forEach(
        pier -> marks.add(new PlacedMark(pier.id(), MarkKind.PIER, pier.at(), level(pier.id()))));
    return new Placement(figure.outline(), false, marks, List.of(), List.of());
  }

  private Optional<Length> level(String id) {
    return Optional.ofNullable(levels.get(id));
  }
}
