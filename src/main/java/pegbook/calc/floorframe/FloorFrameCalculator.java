package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.floorframe.BeamSizes.Beam;
import pegbook.calc.floorframe.FloorFrame.BayRow;
import pegbook.calc.floorframe.FloorFrame.BoardPlan;
import pegbook.calc.floorframe.FloorFrame.Built;
import pegbook.figures.Finding;
import pegbook.figures.FloorPressures;
import pegbook.figures.Formula;
import pegbook.figures.Hole;
import pegbook.figures.Placement;
import pegbook.figures.Working;
import pegbook.geometry.Point;
import pegbook.job.Floor;
import pegbook.job.Frame;
import pegbook.job.Job;
import pegbook.job.Stock;
import pegbook.measure.Angle;
import pegbook.measure.Area;
import pegbook.measure.Count;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Quantity;
import pegbook.published.TimberSize;

/**
 * Frames the floor: lays beams and joists out, sizes them by calculation, and hands each support
 * what the beams bring. A job that asks for no frame gets none, with a note where it has a floor.
 */
public final class FloorFrameCalculator {
  /** Every end of a beam lies on wood or metal with so much (IRC R507.5.1). */
  private static final Length LEAST_BEARING = Length.ofInches(1.5);

  private final Job job;
  private final Frame frame;
  private final FrameSite site;
  private final FloorFrameFormulas formulas;
  private final BeamFormulas beamFormulas;
  private final FloorFrameFindings judge;
  private final List<Working> workings = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  private FloorFrameCalculator(Job job, Frame frame, FrameSite site) {
    this.job = job;
    this.frame = frame;
    this.site = site;
    this.formulas = new FloorFrameFormulas(job.heading().units());
    this.beamFormulas = new BeamFormulas(job.heading().units());
    this.judge = new FloorFrameFindings(job, frame);
  }

  /**
   * Frames the floor of a job.
   *
   * @param job its floor, piers and stock
   * @param placement the floor's edge and the marks
   * @param holes for the piers' concrete above the ground
   */
  public static FloorFrame calculate(Job job, Placement placement, List<Hole> holes) {
    Optional<Frame> frame = job.floor().flatMap(Floor::frame);
    if (frame.isEmpty()) {
      return FloorFrame.none(
          job.floor().isPresent() ? List.of(FloorFrameFindings.notWorked()) : List.of());
    }
    FrameSite site = FrameSite.of(job, placement, holes);
    if (!site.isSound()) {
      return FloorFrame.none(List.of(FloorFrameFindings.unsound(site)));
    }
    return new FloorFrameCalculator(job, frame.get(), site).build(placement, holes);
  }

  private Working work(Formula formula, String subject, Quantity... quantities) {
    Working working = Working.of(formula, subject, quantities);
    workings.add(working);
    return working;
  }

  private FloorFrame build(Placement placement, List<Hole> holes) {
    Length ply = TimberSize.joists(job.heading().units()).get(0).width();
    JoistLayout layout = LayoutChoice.of(site, frame, ply.metres());
    LoadPath path = LoadPath.of(site, layout);
    if (!path.faults().isEmpty()) {
      return FloorFrame.none(
          path.faults().stream().distinct().map(FloorFrameFindings::of).toList());
    }
    JoistSizes.Loads loads = loads();
    JoistSizes joists = JoistSizes.of(job, frame, layout, loads);
    BeamSizes beams = BeamSizes.of(job, frame, layout, path, loads);
    workings.addAll(joists.workings());
    if (joists.chosen().isEmpty()) {
      findings.add(
          joists.isOverhangLong()
              ? judge.overhangsTooLong(JoistSizes.Overhang.longest(layout))
              : judge.joistsTooLong(joists, new Length(layout.longestSpan())));
    }
    if (beams.chosen().isEmpty()) {
      workings.addAll(beams.workings());
      findings.add(judge.beamsTooLong(beams, layout));
    }
    if (!findings.isEmpty()) {
      return new FloorFrame(Optional.empty(), findings, workings, List.of(), List.of(), List.of());
    }
    Ground ground = new Ground(placement, holes);
    return whole(ground, layout, path, new Sized(joists, beams, loads));
  }

  /** What the frame stands over. */
  private record Ground(Placement placement, List<Hole> holes) {}

  /** Members with their loads. */
  private record Sized(JoistSizes joists, BeamSizes beams, JoistSizes.Loads loads) {
    TimberSize joist() {
      return joists.chosen().orElseThrow();
    }

    Beam beam() {
      return beams.chosen().orElseThrow();
    }
  }

  private JoistSizes.Loads loads() {
    FloorPressures on = FloorPressures.of(job);
    return new JoistSizes.Loads(
        work(formulas.load(), "", on.dead(), on.live(), on.snow()).asPressure(),
        work(formulas.movingLoad(), "", on.dead(), on.live(), on.snow()).asPressure(),
        work(formulas.wholeLoad(), "", on.dead(), on.live(), on.snow()).asPressure());
  }

  private FloorFrame whole(Ground ground, JoistLayout layout, LoadPath path, Sized sized) {
    FramePieces pieces =
        new FramePieces(
            layout, path, sized.joist(), sized.beam(), step(), longestSold(sized.joist()));
    OpeningSizes openings = OpeningSizes.of(job, frame, path, sized.joist(), sized.loads());
    workings.addAll(openings.workings());
    findings.addAll(openings.findings());
    workings.addAll(sized.beams().workings());
    List<BayRow> bays = bays(layout, path, sized, pieces);
    PostSizes posts = PostSizes.of(job, frame, path, sized.loads().whole());
    workings.addAll(posts.workings());
    Working height =
        work(
            beamFormulas.frameHeight(),
            "",
            sized.beam().size().depth(),
            sized.joist().depth(),
            frame.boards().thickness());
    BoardPlan boards = BoardLaying.plan(job, frame.boards(), layout);
    Optional<EdgeFall> fall = EdgeFall.of(job, ground.placement());
    fall.ifPresent(some -> workings.add(some.working()));
    findings.addAll(judge.of(layout, site, height.asLength(), fall));
    judge.tall(posts.rows(), ground.holes(), height.asLength()).ifPresent(findings::add);
    Map<String, Area> carried = new LinkedHashMap<>();
    path.carried().forEach((mark, area) -> carried.put(mark, new Area(area)));
    layout.idle().forEach(post -> carried.put(post.id(), Area.ZERO));
    Built built =
        new Built(
            azimuth(layout),
            frame.joistSpacing(),
            sized.joists().sizes(),
            new Length(layout.longestSpan()),
            JoistSizes.Overhang.longest(layout).max(Length.ZERO),
            sized.beams().sizes(),
            bays,
            posts.rows(),
            posts.size().size(),
            height.asLength(),
            pieces.members(),
            site.gaps().stream()
                .map(
                    gap ->
                        new FloorFrame.Gap(
                            gap.pier(), gap.opening().centre(), gap.opening().radius()))
                .toList(),
            pieces.pieces(),
            boards,
            carried,
            new Area(path.floor()));
    FrameNeeds needs = new FrameNeeds(layout, path, pieces, sized.beam(), boards);
    int count = built.pieces().stream().mapToInt(pegbook.figures.CutPiece::count).sum();
    return new FloorFrame(
        Optional.of(built),
        findings,
        workings,
        needs.needs(sized.joist().size(), posts.size().size()),
        needs.tasks(count),
        List.of(StrengthFormulas.VALUES, sized.joist().citation()));
  }

  /**
   * Pieces are cut a little long and trimmed where they lie; whole steps also keep the cut plan
   * small, as its search counts in the steps that all lengths share.
   */
  private Length step() {
    return formulas.isImperial() ? Length.ofInches(0.25) : Length.ofMillimetres(5);
  }

  /** The line of the joists, as an azimuth under 180 degrees. */
  private static Angle azimuth(JoistLayout layout) {
    Point end = new Point(layout.axes().east(), layout.axes().north());
    double radians = Point.ORIGIN.azimuthTo(end).radians();
    return new Angle(radians >= Math.PI - 1e-9 ? radians - Math.PI : radians);
  }

  /** What the rim is cut from at the longest. */
  private Length longestSold(TimberSize size) {
    return job.stock().timber().stream()
        .filter(bar -> bar.size().equals(size.size()))
        .map(Stock.Bar::length)
        .reduce(Length::max)
        .orElse(Stock.longestUsual(job.heading().units()));
  }

  private List<BayRow> bays(JoistLayout layout, LoadPath path, Sized sized, FramePieces pieces) {
    List<BayRow> rows = new ArrayList<>();
    for (LoadPath.BayLoad load : path.bays()) {
      Bay bay = layout.bays().get(load.bay());
      double whole = sized.loads().whole().pascals();
      double second = load.total() * load.centre() / load.length();
      Force to = new Force(second * whole);
      Force from = new Force((load.total() - second) * whole);
      Working bearing =
          Working.of(
              beamFormulas.bearingLength(),
              bay.name(),
              to.max(from),
              sized.beam().strength().bearing(),
              new Count(sized.beam().plies()),
              sized.beam().size().width());
      rows.add(
          new BayRow(
              bay.name(),
              new Length(bay.length()),
              new Area(load.total()),
              from,
              to,
              bearing.asLength().max(LEAST_BEARING),
              new Length(pieces.tail(load.bay()))));
    }
    return rows;
  }
}
