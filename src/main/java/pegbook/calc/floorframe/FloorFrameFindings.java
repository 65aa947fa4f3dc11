package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.floorframe.FloorFrame.BeamSize;
import pegbook.calc.floorframe.FloorFrame.JoistSize;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.job.Floor;
import pegbook.job.Frame;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.Ratio;
import pegbook.measure.Rounding;
import pegbook.published.Citation;

/** What the reader must know of the frame. */
record FloorFrameFindings(Job job, Frame frame) {
  private static final Citation GUARDS = new Citation("irc", "R312.1.1");
  private static final Citation STEPS = new Citation("irc", "R311.7.5.1");
  private static final Citation BOARDS = new Citation("irc", "R507.7");
  private static final Citation FREE_STANDING = new Citation("irc", "R507.8");

  /** Over so much to the ground a guard must stand. */
  private static final Length GUARD_OVER = Length.ofInches(30);

  /** Nearer than this to it the ground is to be measured. */
  private static final Length GUARD_NEAR = Length.ofInches(24);

  private static final Length RISER = Length.ofInches(7.75);

  /** Boards of an inch and of an inch and a half reach so far, square and slanting. */
  private static final Length THICK = Length.ofInches(1.5);

  private static final double SAME_HEIGHT_METRES = 0.001;

  /** The floor has no frame in the job. */
  static Finding notWorked() {
    return finding(Kind.NOTE, "frame-not-worked", "floor.frame", Decider.OWNER);
  }

  private static Finding finding(Kind kind, String id, String place, Decider decides) {
    return Finding.of(kind, id, place, decides, Citation.COMMON_PRACTICE);
  }

  /** Supports that no ring of beams can go round by. */
  static Finding unsound(FrameSite site) {
    return finding(Kind.STOP, "frame-without-ring", "layout.outline", Decider.ENGINEER)
        .with("count", Argument.of(site.ring().size()));
  }

  static Finding of(LoadPath.Fault fault) {
    return switch (fault.kind()) {
      case GAP_ON_BEAM ->
          finding(Kind.STOP, "frame-pier-on-beam", "piers", Decider.ENGINEER)
              .with("where", Argument.words(fault.subject()));
      case GAP_AT_EDGE, JOIST_LOOSE ->
          finding(Kind.STOP, "frame-pier-cuts-joists", "piers", Decider.ENGINEER)
              .with("pier", Argument.words(fault.subject()));
      case FLOOR_LOST ->
          finding(Kind.STOP, "frame-floor-not-reached", "layout.outline", Decider.ENGINEER);
    };
  }

  Finding joistsTooLong(JoistSizes sizes, Length longest) {
    JoistSize last = sizes.sizes().get(sizes.sizes().size() - 1);
    long rows = Math.max(1, Rounding.UP.steps(longest.dividedBy(last.allowed()), 1) - 1);
    return Finding.of(
            Kind.STOP,
            "frame-joist-too-long",
            "layout.outline",
            Decider.ENGINEER,
            FloorFrameFormulas.MECHANICS)
        .with("span", Argument.of(longest))
        .with("size", Argument.words(last.size()))
        .with("allowed", Argument.of(last.allowed()))
        .with("spacing", Argument.of(frame.joistSpacing()))
        .with("rows", Argument.of(rows));
  }

  Finding overhangsTooLong(Length longest) {
    return Finding.of(
            Kind.STOP,
            "frame-overhang-too-long",
            "layout.supportInset",
            Decider.ENGINEER,
            FloorFrameFormulas.DECK_TABLES)
        .with("overhang", Argument.of(longest));
  }

  Finding beamsTooLong(BeamSizes sizes, JoistLayout layout) {
    BeamSize last = sizes.sizes().get(sizes.sizes().size() - 1);
    Bay bay =
        layout.bays().stream()
            .filter(each -> each.name().equals(last.bay()))
            .findFirst()
            .orElseThrow();
    // Bending falls with the square of the span under what lies on each foot of it.
    long posts = Math.max(1, (long) Math.ceil(Math.sqrt(last.used().fraction()) - 1e-9) - 1);
    return Finding.of(
            Kind.STOP,
            "frame-beam-too-long",
            "layout.outline",
            Decider.ENGINEER,
            FloorFrameFormulas.MECHANICS)
        .about(List.of(bay.from().id(), bay.to().id()))
        .with("span", Argument.of(new Length(bay.length())))
        .with("size", Argument.words(last.name()))
        .with("used", Argument.of(last.used()))
        .with("posts", Argument.of(posts));
  }

  /** What a frame that is built leaves to say. */
  List<Finding> of(JoistLayout layout, FrameSite site, Length height, Optional<EdgeFall> fall) {
    List<Finding> findings = new ArrayList<>();
    if (!layout.idle().isEmpty()) {
      findings.add(
          finding(Kind.ASK, "frame-post-idle", "layout.outline", Decider.OWNER)
              .about(layout.idle().stream().map(Post::id).toList()));
    }
    timber().ifPresent(findings::add);
    overhangs(layout).ifPresent(findings::add);
    edge(layout).ifPresent(findings::add);
    boards().ifPresent(findings::add);
    buildUp(height).ifPresent(findings::add);
    findings.add(bracing());
    fall.ifPresent(some -> guard(some).ifPresent(findings::add));
    fall.flatMap(this::steps).ifPresent(findings::add);
    return findings;
  }

  private Optional<Finding> timber() {
    return frame.timber() instanceof Frame.Timber.Given given
        ? Optional.of(
            finding(Kind.ASK, "frame-timber-code", "floor.frame.values", Decider.BUILDING_AUTHORITY)
                .with("name", Argument.words(given.name()))
                .with("from", Argument.words(given.from())))
        : Optional.empty();
  }

  private Optional<Finding> overhangs(JoistLayout layout) {
    int count = LayoutChoice.longOverhangs(layout);
    return count == 0
        ? Optional.empty()
        : Optional.of(
            Finding.of(
                    Kind.ASK,
                    "frame-overhang-quarter",
                    "layout.supportInset",
                    Decider.BUILDING_AUTHORITY,
                    FloorFrameFormulas.DECK_TABLES)
                .with("count", Argument.of(count))
                .with("longest", Argument.of(JoistSizes.Overhang.longest(layout))));
  }

  /** Boards beyond the outermost joist reach the rim in one step. */
  private Optional<Finding> edge(JoistLayout layout) {
    double low = layout.joists().get(0).y();
    double high = layout.joists().get(layout.joists().size() - 1).y();
    double out =
        layout.edge().corners().stream()
            .mapToDouble(corner -> Math.max(low - corner.north(), corner.north() - high))
            .max()
            .orElse(0);
    return out > frame.joistSpacing().metres() + 1e-6
        ? Optional.of(
            finding(Kind.ASK, "frame-edge-wide", "layout.supportInset", Decider.OWNER)
                .with("out", Argument.of(new Length(out)))
                .with("spacing", Argument.of(frame.joistSpacing())))
        : Optional.empty();
  }

  private Optional<Finding> boards() {
    Frame.Boards boards = frame.boards();
    boolean thick = !boards.thickness().isLessThan(THICK);
    double inches = boards.diagonal() ? thick ? 16 : 12 : thick ? 24 : 16;
    Length most = Length.ofInches(inches);
    return frame.joistSpacing().isMoreThan(most.times(1 + 1e-6))
        ? Optional.of(
            Finding.of(
                    Kind.ASK,
                    "frame-boards-span",
                    "floor.frame.boards",
                    Decider.BUILDING_AUTHORITY,
                    BOARDS)
                .with("thick", Argument.of(boards.thickness()))
                .with("most", Argument.of(most))
                .with("spacing", Argument.of(frame.joistSpacing())))
        : Optional.empty();
  }

  private Optional<Finding> buildUp(Length height) {
    return job.floor()
        .flatMap(Floor::buildUp)
        .filter(given -> Math.abs(given.metres() - height.metres()) > SAME_HEIGHT_METRES)
        .map(
            given ->
                finding(Kind.ASK, "frame-build-up", "floor.buildUp", Decider.OWNER)
                    .with("given", Argument.of(given))
                    .with("worked", Argument.of(height)));
  }

  private Finding bracing() {
    Finding open =
        finding(Kind.ASK, "frame-bracing", "design.lateral", Decider.ENGINEER)
            .citing(FREE_STANDING);
    return job.design()
        .lateral()
        .map(
            said ->
                finding(Kind.NOTE, "frame-bracing-said", "design.lateral", Decider.ENGINEER)
                    .citing(FREE_STANDING)
                    .with("said", Argument.words(said.words())))
        .orElse(open);
  }

  private Optional<Finding> guard(EdgeFall fall) {
    if (fall.height().isLessThan(GUARD_NEAR)) {
      return Optional.empty();
    }
    Finding found =
        fall.height().isMoreThan(GUARD_OVER)
            ? Finding.of(Kind.ASK, "frame-guard", "floor.top", Decider.BUILDING_AUTHORITY, GUARDS)
            : Finding.of(
                Kind.ASK, "frame-guard-near", "floor.top", Decider.BUILDING_AUTHORITY, GUARDS);
    return Optional.of(
        found
            .with("height", Argument.of(fall.height()))
            .with("limit", Argument.of(GUARD_OVER))
            .with("beside", Argument.of(EdgeFall.BESIDE)));
  }

  /**
   * A post that must stand taller than it may under its load: the floor lies the job's height over
   * the highest ground at a support, each post goes down from the frame to its concrete.
   */
  Optional<Finding> tall(List<FloorFrame.PostRow> posts, List<Hole> holes, Length frameHeight) {
    Optional<Length> top = job.floor().flatMap(Floor::top);
    List<Hole> known = holes.stream().filter(hole -> hole.level().isPresent()).toList();
    Optional<Length> highest =
        known.stream()
            .filter(hole -> hole.kind() == MarkKind.SUPPORT)
            .flatMap(hole -> hole.level().stream())
            .reduce(Length::max);
    if (top.isEmpty() || highest.isEmpty()) {
      return Optional.empty();
    }
    Length under = highest.get().plus(top.get()).minus(frameHeight);
    for (Hole hole : known) {
      Length stands = under.minus(hole.level().orElseThrow()).minus(hole.top());
      for (FloorFrame.PostRow post : posts) {
        if (post.mark().equals(hole.mark()) && stands.isMoreThan(post.mayStand())) {
          return Optional.of(
              Finding.of(
                      Kind.ASK,
                      "frame-post-too-tall",
                      "floor.top",
                      Decider.ENGINEER,
                      BeamFormulas.COLUMNS)
                  .about(List.of(post.mark()))
                  .with("mark", Argument.words(post.mark()))
                  .with("stands", Argument.of(stands))
                  .with("may", Argument.of(post.mayStand()))
                  .with("load", Argument.of(post.load())));
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Finding> steps(EdgeFall fall) {
    long risers = Rounding.UP.steps(fall.height().dividedBy(RISER), 1);
    return risers < 2
        ? Optional.empty()
        : Optional.of(
            Finding.of(Kind.NOTE, "frame-steps", "floor.top", Decider.BUILDING_AUTHORITY, STEPS)
                .with("height", Argument.of(fall.height()))
                .with("risers", Argument.of(risers))
                .with("riser", Argument.of(RISER)));
  }

  /** A doubled joist beside an opening, or a header of it, that its load is too much for. */
  static Finding overloaded(boolean isHeader, Ratio used) {
    Finding found =
        isHeader
            ? finding(Kind.ASK, "frame-header-overloaded", "piers", Decider.ENGINEER)
            : finding(Kind.ASK, "frame-trimmer-overloaded", "piers", Decider.ENGINEER);
    return found.citing(FloorFrameFormulas.MECHANICS).with("used", Argument.of(used));
  }
}
