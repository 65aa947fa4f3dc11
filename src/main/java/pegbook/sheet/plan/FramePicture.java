package pegbook.sheet.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.calc.floorframe.FloorFrame.Gap;
import pegbook.calc.floorframe.FloorFrame.Member;
import pegbook.calc.floorframe.FloorFrame.MemberKind;
import pegbook.geometry.Point;
import pegbook.lettering.Lettering;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.PlanFrame;
import pegbook.sheet.drafting.Plate;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * The frame from above, north up, to scale: beams heavy and broken as they lie under the joists,
 * joists thin, doubled joists and headers thick, the rim, openings, posts with their names outside.
 */
public final class FramePicture {
  private static final double MARGIN_MM = 11;
  private static final double SIZE = 8;
  private static final double DOT_MM = 1.1;
  private static final double CLEAR_MM = 2;
  private static final Pen BEAM = Pen.HEAVY.dashed();
  private static final Pen JOIST = Pen.THIN;
  private static final Pen DOUBLED = Pen.THICK;
  private static final Pen RIM = Pen.MEDIUM;
  private static final Pen BLOCK = Pen.HAIR;

  private FramePicture() {}

  /**
   * What is shown.
   *
   * @param units in which the scale is named
   * @param outline the floor's edge
   * @param members in any order
   * @param posts by name
   * @param gaps piers that are framed round
   */
  public record Content(
      UnitSystem units,
      List<Point> outline,
      List<Member> members,
      Map<String, Point> posts,
      List<Gap> gaps) {
    public Content {
      outline = List.copyOf(outline);
      members = List.copyOf(members);
      posts = new LinkedHashMap<>(posts);
      gaps = List.copyOf(gaps);
    }
  }

  /**
   * Draws the picture.
   *
   * @param widthMm its width
   * @param mostMm the most it may be high
   */
  public static PlanPicture draw(
      Content content,
      PlanWords words,
      Lettering lettering,
      double widthMm,
      double mostMm,
      String description) {
    Extent extent = Extent.of(content.outline());
    List<DrawingScale> series = DrawingScale.series(content.units());
    DrawingScale scale =
        DrawingScale.largestThatFits(
                content.units(),
                extent,
                widthMm - 2 * MARGIN_MM,
                mostMm - 2 * MARGIN_MM - Furniture.HEIGHT_MM)
            .orElse(series.get(series.size() - 1));
    double shown = scale.millimetres(new Length(extent.heightMetres())) + 2 * MARGIN_MM;
    double height = Math.min(mostMm, shown + Furniture.HEIGHT_MM);
    Canvas canvas = new Canvas(widthMm, height, lettering);
    Spot middle = new Spot(canvas.widthMm() / 2, (Furniture.HEIGHT_MM + canvas.heightMm()) / 2);
    PlanFrame frame = new PlanFrame(extent.centre(), middle, scale);
    Furniture.draw(canvas, scale, words);
    canvas.keepFree(Plate.between(0, 0, canvas.widthMm(), Furniture.HEIGHT_MM));
    for (MemberKind kind : MemberKind.values()) {
      content.members().stream()
          .filter(member -> member.kind() == kind)
          .forEach(
              member ->
                  canvas.line(
                      frame.spot(member.at().from()), frame.spot(member.at().to()), pen(kind)));
    }
    content
        .gaps()
        .forEach(
            gap ->
                canvas.circle(
                    frame.spot(gap.centre()), frame.millimetres(gap.radius()), Pen.MEDIUM));
    List<String> unnamed = names(content, canvas, frame);
    return new PlanPicture(canvas.drawing("floor-frame-plan", description), scale, unnamed);
  }

  private static Pen pen(MemberKind kind) {
    return switch (kind) {
      case BEAM -> BEAM;
      case JOIST -> JOIST;
      case DOUBLED, HEADER -> DOUBLED;
      case RIM -> RIM;
      case BLOCK -> BLOCK;
    };
  }

  private static List<String> names(Content content, Canvas canvas, PlanFrame frame) {
    LabelPlacer placer = new LabelPlacer(canvas);
    List<String> unnamed = new java.util.ArrayList<>();
    content
        .posts()
        .forEach(
            (name, at) -> {
              canvas.dot(frame.spot(at), DOT_MM);
              canvas.keepFree(new Plate(frame.spot(at), DOT_MM, DOT_MM, 0));
            });
    Spot centre = frame.spot(frame.ground());
    content
        .posts()
        .forEach(
            (name, at) -> {
              Spot spot = frame.spot(at);
              double outwards =
                  Spots.distanceMm(centre, spot) < 1 ? 45 : Spots.directionDegrees(centre, spot);
              if (!placer.place(new Wording(List.of(name), SIZE, true), spot, CLEAR_MM, outwards)) {
                unnamed.add(name);
              }
            });
    content
        .gaps()
        .forEach(
            gap ->
                placer.placeOver(
                    new Wording(List.of(gap.pier()), SIZE, true),
                    frame.spot(gap.centre()),
                    CLEAR_MM,
                    90));
    return unnamed;
  }
}
