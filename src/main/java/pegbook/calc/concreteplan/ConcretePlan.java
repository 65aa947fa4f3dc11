package pegbook.calc.concreteplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.Need;
import pegbook.figures.Pour;
import pegbook.figures.Result;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.measure.Area;
import pegbook.measure.Duration;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Ratio;
import pegbook.measure.Volume;

/**
 * What every hole is filled with.
 *
 * @param fills one for each hole, in the order of the marks
 * @param totals of the whole job
 * @param mix the bag, its yield and water, and what is added to the drawn volumes
 * @param pace how fast two people mix and place
 * @param pourOrder marks in the order in which they are poured: piers first, each in one go, while
 *     the crew is fresh; then supports
 */
public record ConcretePlan(
    List<Fill> fills,
    Totals totals,
    Mix mix,
    Pace pace,
    List<String> pourOrder,
    List<Finding> findings,
    List<Working> workings,
    List<Need> needs,
    List<Task> tasks)
    implements Result {
  public ConcretePlan {
    fills = List.copyOf(fills);
    pourOrder = List.copyOf(pourOrder);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
    needs = List.copyOf(needs);
    tasks = List.copyOf(tasks);
  }

  /**
   * One hole's filling.
   *
   * @param mark the hole
   * @param standing diameter of the concrete that stands on the bottom
   * @param bearing area of it
   * @param gravelLoose gravel to tip in, before it is tamped
   * @param parts concrete part by part, from the bottom up, as drawn
   * @param below concrete from its underside to the ground, as drawn
   * @param above concrete above the ground, as drawn
   * @param poured concrete to mix, with what a dug hole takes more and what is spilt
   * @param backfill soil to tamp in round a tube that stands on the bottom
   * @param sideGravel clean gravel to fill in round it instead, loose, against the grip of frost
   * @param bags whole bags to open
   * @param batches turns of the mixer or the tub, in whole bags; none from a truck
   * @param mass of the concrete as drawn
   * @param lifts what is placed in one go: one, or two with a joint between them
   */
  public record Fill(
      String mark,
      Length standing,
      Area bearing,
      Volume gravelLoose,
      List<Part> parts,
      Volume below,
      Volume above,
      Volume poured,
      Optional<Volume> backfill,
      Optional<Volume> sideGravel,
      int bags,
      int batches,
      Mass mass,
      List<Lift> lifts) {
    public Fill {
      parts = List.copyOf(parts);
      lifts = List.copyOf(lifts);
    }

    /** Concrete of a kind of part; zero where there is none. */
    public Volume part(PartKind kind) {
      return parts.stream()
          .filter(part -> part.kind() == kind)
          .map(Part::volume)
          .reduce(Volume.ZERO, Volume::plus);
    }

    /** What is placed on the day of a kind of pour. */
    public Lift lift(Task.Kind kind) {
      return kind == Task.Kind.FIRST_LIFT ? lifts.get(0) : lifts.get(lifts.size() - 1);
    }

    /** Concrete as drawn. */
    public Volume drawn() {
      return below.plus(above);
    }
  }

  /** A part of a footing, as drawn. */
  public record Part(PartKind kind, Volume volume) {}

  /** What a footing is made of. */
  public enum PartKind {
    /** Undercut at the bottom. */
    BELL,
    /** Slab at the bottom, under a tube. */
    PAD,
    /** Below the ground, over bell and pad. */
    SHAFT,
    /** Above the ground, under a cap. */
    COLUMN,
    /** Wider head. */
    CAP;

    /** Whether it lies below the ground. */
    public boolean isBelow() {
      return this == BELL || this == PAD || this == SHAFT;
    }
  }

  /**
   * Concrete that is placed in one go.
   *
   * @param kind the only or last, or the first of two
   * @param to height of its top over the underside of the concrete
   * @param poured concrete to mix
   * @param bags whole bags to open
   * @param batches turns of the mixer or the tub
   * @param pour how long it takes the crew
   */
  public record Lift(Task.Kind kind, Length to, Volume poured, int bags, int batches, Span pour) {}

  /** A time that goes well, and one that goes badly. */
  public record Span(Duration least, Duration most) {}

  /**
   * Sums over the holes.
   *
   * @param drawn concrete as drawn
   * @param poured concrete to mix
   * @param readyMix the same as a truck brings it, set up to its step
   * @param bags whole bags
   * @param bagsMass what they weigh, for the trip from the shop
   * @param gravelLoose gravel, loose
   * @param gravelOrder the same set up to what is ordered
   * @param backfill soil tamped in round tubes
   * @param sideGravel gravel filled in round tubes, loose
   * @param mass of the concrete as drawn
   */
  public record Totals(
      Volume drawn,
      Volume poured,
      Volume readyMix,
      int bags,
      Mass bagsMass,
      Volume gravelLoose,
      Volume gravelOrder,
      Volume backfill,
      Volume sideGravel,
      Mass mass) {}

  /**
   * The mix.
   *
   * @param bag mass of a bag
   * @param yield concrete that a bag makes
   * @param water mixing water of a bag, where a range was found
   * @param overBreak what a dug hole takes more than drawn
   * @param waste what is spilt
   * @param bagsInBatch whole bags that are mixed at a time; 0 where the crew mixes its own
   * @param batch concrete that is mixed at a time, where it is not in whole bags
   */
  public record Mix(
      Mass bag,
      Volume yield,
      Optional<WaterRange> water,
      Ratio overBreak,
      Ratio waste,
      int bagsInBatch,
      Volume batch) {}

  /**
   * How fast two people mix and place.
   *
   * @param least for a cubic foot or a cubic metre, as the packet prints, all going well
   * @param most all going badly
   * @param window what the concrete allows from first batch to last in a hole
   */
  public record Pace(Duration least, Duration most, Duration window) {
    /** The window and the rates are rules of thumb; a minute over is not a finding. */
    private static final double TOLERANCE = 0.05;

    /** Whether a pour ends before the window does. */
    public Fit fit(Span pour) {
      if (isOver(pour.least())) {
        return Fit.TOO_LONG;
      }
      return isOver(pour.most()) ? Fit.MAY_RUN_LONG : Fit.FITS;
    }

    private boolean isOver(Duration time) {
      return time.minutes() > window.minutes() * (1 + TOLERANCE);
    }
  }

  /** How a pour fits into the time that its concrete allows. */
  public enum Fit {
    FITS,
    /** Only where all goes well. */
    MAY_RUN_LONG,
    /** Not even where all goes well. */
    TOO_LONG
  }

  /** Mixing water of a bag. */
  public record WaterRange(Volume least, Volume most) {}

  /** The pours in their order, as other subjects read them. */
  public List<Pour> pours() {
    List<Pour> pours = new ArrayList<>();
    for (String mark : pourOrder) {
      for (Lift lift : fill(mark).lifts()) {
        pours.add(
            new Pour(
                mark,
                lift.kind(),
                lift.poured(),
                lift.batches(),
                mix.bagsInBatch(),
                lift.pour().most(),
                pace.window()));
      }
    }
    return List.copyOf(pours);
  }

  /**
   * The filling of a hole.
   *
   * @throws IllegalArgumentException when there is none
   */
  public Fill fill(String mark) {
    return fills.stream()
        .filter(fill -> fill.mark().equals(mark))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no hole " + mark));
  }
}
