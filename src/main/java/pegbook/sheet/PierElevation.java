package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.pierstiffness.PierStiffness.FloorGap;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.figures.FrostSleeve;
import pegbook.figures.Hole;
import pegbook.job.Anchors;
import pegbook.job.Pier;
import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Spot;

/**
 * A pier cut upright, to scale: ground, gravel, frost depth, concrete, steel, sleeve, bolts, and
 * the floor with the gap to it.
 */
final class PierElevation {
  static final double TYPE = 9;
  private static final double LEFT_MM = 25;
  static final double RIGHT_MM = 33;
  private static final double ABOVE_MM = 12;
  private static final double BELOW_MM = 18;

  /**
   * What is drawn.
   *
   * @param hole with its depths
   * @param pier as the job has it
   * @param gap to the floor
   * @param cage its steel, where it has any
   * @param frost the authority's frost depth, where it is known
   * @param side sleeve against frost, where there is one
   */
  record Content(
      Hole hole,
      Pier pier,
      FloorGap gap,
      Optional<Cage> cage,
      Optional<Length> frost,
      Optional<FrostSleeve> side) {
    /** The walking surface above the ground, where the floor comes up to the pier. */
    Optional<Length> floor() {
      return gap.inside()
          ? gap.floor().filter(over -> over.isMoreThan(PierPlaces.BOARD))
          : Optional.empty();
    }

    Length highest() {
      Length bolts = pier.anchors().map(Anchors::above).orElse(Length.ZERO);
      return hole.top().plus(bolts).max(floor().orElse(Length.ZERO));
    }

    Length halfWidth() {
      Length half = hole.widest().times(0.5);
      return floor().isPresent()
          ? half.max(gap.opening().times(0.5).plus(PierPlaces.FLOOR_SHOWN))
          : half;
    }
  }

  private final Writing writing;
  private final Hole hole;
  private final PierPlaces at;
  private final Canvas canvas;

  private PierElevation(Writing writing, Content content, Spot size) {
    this.writing = writing;
    this.hole = content.hole();
    Length height = hole.dug().plus(content.highest());
    DrawingScale scale =
        DrawingScale.largestThatFits(
                writing.formats().units(),
                new Extent(0, 0, content.halfWidth().times(2).metres(), height.metres()),
                size.x() - LEFT_MM - RIGHT_MM - 2 * PierPlaces.SOIL_MM,
                size.y() - ABOVE_MM - BELOW_MM)
            .orElseThrow(() -> new IllegalStateException("no scale for " + height));
    this.canvas =
        new Canvas(size.x(), scale.millimetres(height) + ABOVE_MM + BELOW_MM, writing.lettering());
    this.at =
        new PierPlaces(
            content,
            scale,
            LEFT_MM + (size.x() - LEFT_MM - RIGHT_MM) / 2,
            scale.millimetres(content.halfWidth()) + PierPlaces.SOIL_MM,
            BELOW_MM,
            BELOW_MM + scale.millimetres(hole.dug()));
  }

  /**
   * A drawn pier.
   *
   * @param leftOver words that found no room, for the caption
   */
  record Picture(Drawing drawing, List<String> leftOver) {
    Picture {
      leftOver = List.copyOf(leftOver);
    }
  }

  /**
   * Draws a pier.
   *
   * @param size width on paper, and the greatest height
   */
  static Picture of(Writing writing, Content content, String id, Spot size) {
    PierElevation elevation = new PierElevation(writing, content, size);
    List<String> leftOver = elevation.draw();
    return new Picture(elevation.canvas.drawing(id, elevation.description()), leftOver);
  }

  /** Returns the words that found no room. */
  private List<String> draw() {
    canvas.writeFixed(
        new Element.Label(
            new Spot(2, 2),
            writing.texts().say("pier.drawing.elevation", Map.of("scale", at.scale().text())),
            TYPE,
            Element.Anchor.LEFT,
            0,
            false,
            false));
    new PierParts(canvas, at).draw();
    List<String> leftOver = new ArrayList<>();
    new PierNames(writing, canvas, at, leftOver).draw();
    return leftOver;
  }

  private String description() {
    return writing
        .texts()
        .say(
            "pier.drawing.elevation-description",
            Map.of(
                "mark", hole.mark(),
                "depth", writing.formats().length(hole.depth()),
                "top", writing.formats().length(hole.top())));
  }
}
