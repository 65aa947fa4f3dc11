package pegbook.testing;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Lines painted by one instruction of the PDF.
 *
 * @param order place in the painting order of the page
 * @param outlines its parts as places in order, curves as short lines
 * @param box the box round it, without the width of its line
 * @param stroke width of the line in millimetres, where it is stroked
 * @param dashed true when the line is broken
 * @param strokeGrey 0 black to 1 white
 * @param fill grey it is filled with, 0 black to 1 white, where it is filled
 * @param drawing number on the page of the drawing it stands in
 * @param clip what of the page may be painted here
 * @param tags its place in the tag tree
 */
public record DrawnPath(
    int order,
    List<List<Position>> outlines,
    Box box,
    OptionalDouble stroke,
    boolean dashed,
    double strokeGrey,
    OptionalDouble fill,
    OptionalInt drawing,
    Box clip,
    List<String> tags) {

  /** A straight piece. */
  public record Piece(Position from, Position to) {
    public double length() {
      return from.distanceTo(to);
    }
  }

  /** A full circle. */
  public record Round(Position centre, double radius) {}

  /** Its straight pieces. */
  public List<Piece> pieces() {
    List<Piece> pieces = new ArrayList<>();
    for (List<Position> outline : outlines) {
      for (int i = 1; i < outline.size(); i++) {
        pieces.add(new Piece(outline.get(i - 1), outline.get(i)));
      }
    }
    return pieces;
  }

  public boolean isFilledWhite() {
    return fill.isPresent() && fill.getAsDouble() > 0.99;
  }

  public boolean isVisibleStroke() {
    return stroke.isPresent() && strokeGrey < 0.99;
  }

  /** Whether its filled area lies over a place. */
  public boolean covers(Position place) {
    if (!box.contains(place) || !clip.contains(place)) {
      return false;
    }
    Path2D area = new Path2D.Double();
    for (List<Position> outline : outlines) {
      area.moveTo(outline.get(0).x(), outline.get(0).y());
      outline.forEach(corner -> area.lineTo(corner.x(), corner.y()));
      area.closePath();
    }
    return area.contains(place.x(), place.y());
  }

  /** The circle that it is, where it is one to within 0.02 mm. */
  public Optional<Round> asCircle() {
    if (outlines.size() != 1 || outlines.get(0).size() < 12) {
      return Optional.empty();
    }
    Position centre = box.centre();
    double radius = box.width() / 2;
    boolean round =
        outlines.get(0).stream()
            .allMatch(place -> Math.abs(place.distanceTo(centre) - radius) < 0.02);
    return round ? Optional.of(new Round(centre, radius)) : Optional.empty();
  }
}
