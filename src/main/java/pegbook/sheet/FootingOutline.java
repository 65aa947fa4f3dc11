package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.figures.Hole;
import pegbook.job.Widenings.Bell;
import pegbook.job.Widenings.Cap;
import pegbook.measure.Length;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drawing.Spot;

/**
 * The edges of a footing cut upright, on paper: the wall of its hole and its concrete.
 *
 * @param hole the hole with bell, pad and cap where it has them
 * @param scale of the drawing
 * @param middle the footing's axis, mm from the left
 * @param ground height of the ground, mm
 */
record FootingOutline(Hole hole, DrawingScale scale, double middle, double ground) {
  double half(Length diameter) {
    return scale.millimetres(diameter) / 2;
  }

  double height(Length aboveGround) {
    return ground + scale.millimetres(aboveGround);
  }

  private Spot spot(int side, Length width, Length aboveGround) {
    return new Spot(middle + side * half(width), height(aboveGround));
  }

  /** One side of the wall, from the ground down to the bare bottom. */
  List<Spot> wall(int side) {
    List<Spot> wall = new ArrayList<>();
    wall.add(spot(side, hole.diameter(), Length.ZERO));
    hole.widenings()
        .bell()
        .ifPresent(
            bell -> {
              Length begins = hole.shaftDepth();
              wall.add(spot(side, hole.diameter(), begins.negated()));
              wall.add(spot(side, bell.diameter(), begins.plus(bell.flare()).negated()));
            });
    wall.add(spot(side, hole.bottomWidth(), hole.dug().negated()));
    return wall;
  }

  /** The whole wall: down the left, across the bottom, up the right. */
  List<Spot> wall() {
    return around(wall(-1), wall(1));
  }

  /** The soil of one side, out to some distance from the axis. */
  List<Spot> soil(int side, double far) {
    List<Spot> soil = new ArrayList<>(wall(side));
    soil.add(new Spot(middle + side * far, height(hole.dug().negated())));
    soil.add(new Spot(middle + side * far, ground));
    return soil;
  }

  /** The concrete all round. */
  List<Spot> concrete() {
    return around(side(-1), side(1));
  }

  private static List<Spot> around(List<Spot> down, List<Spot> up) {
    List<Spot> all = new ArrayList<>(down);
    for (int i = up.size() - 1; i >= 0; i--) {
      all.add(up.get(i));
    }
    return all;
  }

  /** One side of the concrete, from its top down to its underside. */
  private List<Spot> side(int side) {
    List<Spot> edge = new ArrayList<>();
    Optional<Cap> cap = hole.widenings().cap();
    cap.ifPresent(
        head -> {
          edge.add(spot(side, head.width(), hole.top()));
          edge.add(spot(side, head.width(), hole.column()));
        });
    edge.add(spot(side, hole.formAbove(), hole.column()));
    edge.add(spot(side, hole.formAbove(), Length.ZERO));
    edge.add(spot(side, hole.shaft(), Length.ZERO));
    Length begins = hole.shaftDepth().negated();
    edge.add(spot(side, hole.shaft(), begins));
    if (hole.widenings().pad().isPresent()) {
      edge.add(spot(side, hole.diameter(), begins));
    }
    Length flare = hole.widenings().bell().map(Bell::flare).orElse(Length.ZERO);
    edge.add(spot(side, hole.standing(), begins.minus(flare)));
    edge.add(spot(side, hole.standing(), hole.depth().negated()));
    return edge;
  }
}
