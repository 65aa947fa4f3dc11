package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import pegbook.calc.pierstiffness.PierStiffness;
import pegbook.calc.pierstiffness.PierStiffness.AlikePiers;
import pegbook.calc.pierstiffness.PierStiffness.FloorGap;
import pegbook.calc.pierstiffness.PierStiffness.GroundModulus;
import pegbook.calc.pierstiffness.PierStiffness.Other;
import pegbook.figures.Hole;
import pegbook.job.Frost;
import pegbook.measure.Length;
import pegbook.packet.Packet;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Spot;

/**
 * Piers: each kind drawn to scale, how still it stands, what another size would do, and a template
 * for its bolts.
 *
 * @param title the sheet's title
 * @param ground what the ground was taken for
 * @param cards one for each kind of pier
 * @param templates parts of the bolts' templates; empty: no bolts
 */
public record PierSheet(String title, String ground, List<Card> cards, List<Template> templates)
    implements Sheet {
  private static final double TOP_VIEW_MM = 62;
  private static final Spot ELEVATION_SIZE = new Spot(112, 137);

  /** Heading and lines over a template's part. */
  private static final double OVER_TEMPLATE_MM = 42;

  /**
   * One kind of pier.
   *
   * @param heading its marks
   * @param lead the range of tilt and frequency, in a sentence
   * @param elevation cut upright
   * @param caption words that found no room on it
   * @param topView from above
   * @param facts what is built
   * @param cases the table's columns
   * @param rows its rows
   * @param note what the table does not reach
   * @param byDiameter the plot against the diameter
   * @param byDepth the plot against the depth
   * @param first true for the first card of the sheet
   */
  public record Card(
      String heading,
      String lead,
      Drawing elevation,
      String caption,
      Drawing topView,
      List<Fact> facts,
      List<PierTable.Column> cases,
      List<PierTable.Row> rows,
      String note,
      Drawing byDiameter,
      Drawing byDepth,
      boolean first) {}

  /** A line about a pier, with the number of its working where it has one. */
  public record Fact(String label, String value, String working) {}

  /**
   * A part of a template.
   *
   * @param joins true where it joins others
   */
  public record Template(String heading, Drawing drawing, boolean joins) {}

  @Override
  public List<Drawing> drawings() {
    return Stream.concat(
            cards.stream()
                .flatMap(
                    card ->
                        Stream.of(
                            card.elevation(), card.topView(), card.byDiameter(), card.byDepth())),
            templates.stream().map(Template::drawing))
        .toList();
  }

  /** Whether the job has piers. */
  public static boolean isWanted(Packet packet) {
    return !packet.pierStiffness().piers().isEmpty();
  }

  /** Makes the sheet. */
  public static PierSheet of(Packet packet, Writing writing) {
    List<Card> cards = new ArrayList<>();
    List<Template> templates = new ArrayList<>();
    for (AlikePiers piers : packet.pierStiffness().piers()) {
      String id = "pier-" + piers.marks().get(0);
      cards.add(card(packet, writing, piers, id, cards.isEmpty()));
      templates.addAll(templates(writing, piers, id));
    }
    return new PierSheet(
        writing.texts().say("pier.title"),
        ground(packet.pierStiffness().ground(), writing),
        cards,
        templates);
  }

  private static String ground(GroundModulus ground, Writing writing) {
    Formats formats = writing.formats();
    Map<String, String> values =
        Map.of(
            "low", formats.strength(ground.low()),
            "high", formats.strength(ground.high()),
            "poisson", formats.number(ground.poisson(), 2),
            "from",
                ground.given()
                    ? ground.from().orElse(writing.texts().say("pier.ground.no-source"))
                    : new Sources(writing.texts()).write(ground.source()));
    return writing
        .texts()
        .say(ground.given() ? "pier.ground.given" : "pier.ground.assumed", values);
  }

  private static Card card(
      Packet packet, Writing writing, AlikePiers piers, String id, boolean first) {
    PierElevation.Content content = content(packet, piers);
    PierElevation.Picture elevation =
        PierElevation.of(writing, content, id + "-elevation", ELEVATION_SIZE);
    PierTable table = new PierTable(packet, writing, piers);
    double half = writing.page().widthMm() / 2 - 4;
    Hole hole = piers.hole();
    List<Other> all = Stream.concat(piers.byDiameter().stream(), piers.byDepth().stream()).toList();
    return new Card(
        writing.formats().names(piers.marks()),
        table.lead(),
        elevation.drawing(),
        caption(writing, piers, elevation.leftOver()),
        PierTopView.of(writing, content, id + "-top", TOP_VIEW_MM),
        new PierFacts(packet, writing, piers, content.gap()).all(),
        table.columns(),
        table.rows(),
        table.note(),
        plot(writing, id + "-diameter", half, piers.byDiameter(), all, hole.shaft(), "diameter"),
        plot(writing, id + "-depth", half, piers.byDepth(), all, hole.depth(), "depth"),
        first);
  }

  private static String caption(Writing writing, AlikePiers piers, List<String> leftOver) {
    List<String> parts = new ArrayList<>(leftOver);
    if (piers.pier().sleeve().isPresent()) {
      parts.add(writing.texts().say("pier.drawing.sleeve-side"));
    }
    return String.join("; ", parts);
  }

  private static Drawing plot(
      Writing writing,
      String id,
      double widthMm,
      List<Other> others,
      List<Other> all,
      Length size,
      String what) {
    return PierPlot.of(
        writing, id, widthMm, others, all, size, writing.texts().say("pier.plot." + what));
  }

  private static PierElevation.Content content(Packet packet, AlikePiers piers) {
    PierStiffness stiffness = packet.pierStiffness();
    String first = piers.marks().get(0);
    FloorGap gap =
        stiffness.gaps().stream()
            .filter(each -> each.mark().equals(first))
            .findFirst()
            .orElseThrow();
    return new PierElevation.Content(
        piers.hole(),
        piers.pier(),
        gap,
        packet.steelPlan().cages().stream()
            .filter(cage -> cage.marks().contains(first))
            .findFirst(),
        packet.job().ground().frost().map(Frost::depth),
        packet.frostGrip().sleeves().stream()
            .filter(sleeve -> sleeve.mark().equals(first))
            .findFirst());
  }

  private static List<Template> templates(Writing writing, AlikePiers piers, String id) {
    if (piers.pier().anchors().isEmpty()) {
      return List.of();
    }
    Spot room =
        new Spot(writing.page().widthMm() - 0.5, writing.page().heightMm() - OVER_TEMPLATE_MM);
    List<Drawing> parts =
        new AnchorTemplate(
                writing,
                piers.pier().anchors().orElseThrow(),
                piers.pier().sleeve(),
                piers.hole().formAbove(),
                room)
            .drawings(id + "-template");
    List<Template> templates = new ArrayList<>();
    for (Drawing part : parts) {
      String heading =
          writing
              .texts()
              .say(
                  "pier.template.heading",
                  Map.of(
                      "marks", writing.formats().names(piers.marks()),
                      "part", writing.formats().count(templates.size() + 1),
                      "parts", writing.formats().count(parts.size())));
      templates.add(new Template(heading, part, parts.size() > 1));
    }
    return List.copyOf(templates);
  }
}
