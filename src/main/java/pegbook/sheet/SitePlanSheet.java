package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.calc.siteplan.SitePlan;
import pegbook.calc.siteplan.SitePlan.Clearance;
import pegbook.calc.siteplan.SitePlan.Keeper;
import pegbook.calc.siteplan.SitePlan.Tie;
import pegbook.figures.Hole;
import pegbook.geometry.Compass;
import pegbook.job.Feature;
import pegbook.measure.Length;
import pegbook.measure.NumberNotation;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;
import pegbook.sheet.drafting.CheckBar;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.plan.Legend;
import pegbook.sheet.plan.PlanContent;
import pegbook.sheet.plan.PlanPicture;
import pegbook.sheet.plan.PlanWords;
import pegbook.sheet.plan.SitePictures;
import pegbook.sheet.plan.SitePlans;

/**
 * The site plan: the figure among its surroundings to scale, the ties, the clearances, the marks'
 * places.
 *
 * @param title the sheet's title
 * @param plan the site to scale
 * @param planCaption its scale and what it shows
 * @param legend what the lines mean
 * @param marking the figure at a larger scale, where the site is much larger
 * @param markingCaption its scale; empty without one
 * @param parts plans of parts of the figure, where its marks stand too close
 * @param unnamed a sentence on names that found no room; empty when all did
 * @param tied true when there are ties
 * @param ties the ties
 * @param surrounded true when there is something to keep clear of
 * @param clearances the clearances
 * @param marks the marks, in two columns
 */
public record SitePlanSheet(
    String title,
    Drawing plan,
    String planCaption,
    Drawing legend,
    Optional<Drawing> marking,
    String markingCaption,
    List<PartFigure> parts,
    String unnamed,
    boolean tied,
    List<TieRow> ties,
    boolean surrounded,
    List<ClearanceRow> clearances,
    List<MarkPair> marks)
    implements Sheet {
  /** Room on a page for the sheet's heading, caution, the plan's caption and legend. */
  private static final double SITE_HEADING_MM = 57;

  /** Room on a page for a heading and a caption. */
  private static final double FIGURE_HEADING_MM = 24;

  /** A part of the figure and what stands under it. */
  public record PartFigure(Drawing drawing, String caption) {}

  /** One tie. */
  public record TieRow(String number, String from, String mark, String tape, String towards) {}

  /** One clearance. */
  public record ClearanceRow(
      String number,
      String keeper,
      String thing,
      String towards,
      String distance,
      String required,
      String verdict,
      String emphasis) {}

  /** Two marks beside each other; the second may be empty. */
  public record MarkPair(MarkCell left, MarkCell right) {}

  /** A mark's place. */
  public record MarkCell(String mark, String east, String north, String hole) {
    static final MarkCell EMPTY = new MarkCell("", "", "", "");
  }

  public SitePlanSheet {
    parts = List.copyOf(parts);
    ties = List.copyOf(ties);
    clearances = List.copyOf(clearances);
    marks = List.copyOf(marks);
  }

  @Override
  public List<Drawing> drawings() {
    return Stream.of(
            Stream.of(plan, legend), marking.stream(), parts.stream().map(PartFigure::drawing))
        .flatMap(drawings -> drawings)
        .toList();
  }

  /** Makes the sheet. */
  public static SitePlanSheet of(Packet packet, Writing writing) {
    return new Maker(packet, writing).sheet();
  }

  /** The words that every plan of the ground shares. */
  static PlanWords planWords(Packet packet, Writing writing) {
    return new Maker(packet, writing).planWords();
  }

  private record Maker(Packet packet, Writing writing) {
    SitePlanSheet sheet() {
      PlanContent content = PlanContent.of(packet);
      PageArea page = writing.page();
      SitePictures pictures =
          new SitePictures(
              content,
              planWords(),
              writing.lettering(),
              page.widthMm(),
              page.heightMm() - SITE_HEADING_MM,
              page.heightMm() - FIGURE_HEADING_MM);
      SitePlans plans =
          pictures.draw(
              new SitePictures.Descriptions(
                  describe("site-plan.picture"),
                  describe("site-plan.marking.picture"),
                  part -> writing.texts().say("site-plan.part.picture", Map.of("part", part))));
      PlanPicture plan = plans.site();
      Optional<PlanPicture> marking = plans.marking();
      SitePlan figures = packet.sitePlan();
      return new SitePlanSheet(
          say("site-plan.title"),
          plan.drawing(),
          caption(marking.isPresent() ? "site-plan.caption.split" : "site-plan.caption", plan),
          Legend.draw(
              content,
              legendNames(),
              writing.lettering(),
              page.widthMm(),
              "site-plan-legend",
              say("site-plan.legend")),
          marking.map(PlanPicture::drawing),
          marking.map(picture -> caption("site-plan.marking.caption", picture)).orElse(""),
          plans.parts().stream().map(this::part).toList(),
          unnamed(plans.unnamed()),
          !figures.ties().isEmpty(),
          figures.ties().stream().map(this::tie).toList(),
          !figures.clearances().isEmpty(),
          clearances(figures.clearances()),
          marks());
    }

    private String say(String key) {
      return writing.texts().say(key);
    }

    private String length(Length length) {
      return writing.formats().length(length);
    }

    private String caption(String key, PlanPicture picture) {
      return writing.texts().say(key, Map.of("scale", picture.scale().text()));
    }

    private String describe(String key) {
      return writing
          .texts()
          .say(key, Map.of("holes", writing.formats().count(packet.depthTargets().holes().size())));
    }

    private PartFigure part(SitePlans.Part part) {
      return new PartFigure(
          part.picture().drawing(),
          writing
              .texts()
              .say(
                  "site-plan.part.caption",
                  Map.of("part", part.letter(), "scale", part.picture().scale().text())));
    }

    private String unnamed(List<String> names) {
      return names.isEmpty()
          ? ""
          : writing
              .texts()
              .say("site-plan.unnamed", Map.of("names", writing.formats().names(names)));
    }

    private PlanWords planWords() {
      Length bar = CheckBar.length(writing.formats().units());
      String setback = packet.job().site().setback().map(this::length).orElse("");
      return new PlanWords(
          say("site-plan.north"),
          writing.texts().say("site-plan.check-bar", Map.of("length", length(bar))),
          say("site-plan.benchmark"),
          say("site-plan.lot-line"),
          writing.texts().say("site-plan.setback", Map.of("distance", setback)),
          holes ->
              writing
                  .texts()
                  .say("site-plan.heap", Map.of("holes", writing.formats().names(holes))),
          this::length,
          writing.formats()::distance,
          this::round,
          writing.formats()::tape);
    }

    private String round(Length length) {
      Unit unit = writing.formats().units() == UnitSystem.IMPERIAL ? Unit.FOOT : Unit.METRE;
      return NumberNotation.write(length, unit);
    }

    private Legend.Names legendNames() {
      return new Legend.Names(
          say("site-plan.legend.floor"),
          say("site-plan.legend.hole"),
          say("site-plan.legend.heap"),
          say("site-plan.legend.baseline"),
          say("site-plan.legend.route"),
          say("site-plan.legend.tie"),
          say("site-plan.legend.lot-line"),
          say("site-plan.legend.setback"),
          say("site-plan.legend.keep-clear"),
          say("site-plan.legend.buried"),
          say("site-plan.legend.overhead"),
          say("site-plan.legend.object"),
          say("site-plan.legend.benchmark"));
    }

    private String wind(Compass wind) {
      return say("compass." + wind.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    private TieRow tie(Tie tie) {
      return new TieRow(
          "T" + tie.number(),
          new FixedWords(writing.texts()).of(tie.fixed()),
          tie.mark(),
          writing.formats().tape(tie.tape()),
          wind(tie.towards()));
    }

    private List<ClearanceRow> clearances(List<Clearance> clearances) {
      List<ClearanceRow> rows = new ArrayList<>();
      for (Clearance clearance : clearances) {
        rows.add(clearance("C" + (rows.size() + 1), clearance));
      }
      return rows;
    }

    private ClearanceRow clearance(String number, Clearance clearance) {
      return new ClearanceRow(
          number,
          keeper(clearance),
          clearance.feature().isEmpty() ? say("site-plan.lot-line") : clearance.feature(),
          wind(clearance.towards()),
          length(clearance.distance()),
          clearance.required().map(this::length).orElse(say("site-plan.not-given")),
          say("site-plan.verdict." + verdict(clearance)),
          clearance.breach() ? "strong" : "");
    }

    /** Whether a distance is kept; without one, whether somebody must be asked for it. */
    private String verdict(Clearance clearance) {
      if (clearance.required().isPresent()) {
        return clearance.breach() ? "breach" : "kept";
      }
      boolean object =
          packet.job().site().features().stream()
              .anyMatch(
                  feature ->
                      feature.name().equals(clearance.feature())
                          && feature.kind() == Feature.Kind.OBJECT);
      return object ? "none" : "ask";
    }

    private String keeper(Clearance clearance) {
      String key =
          clearance.keeper() == Keeper.HOLE
              ? "site-plan.keeper.hole"
              : clearance.keeper() == Keeper.HEAP
                  ? "site-plan.keeper.heap"
                  : "site-plan.keeper.floor";
      return writing.texts().say(key, Map.of("mark", clearance.mark()));
    }

    private List<MarkPair> marks() {
      List<MarkCell> cells = packet.depthTargets().holes().stream().map(this::mark).toList();
      int half = (cells.size() + 1) / 2;
      List<MarkPair> pairs = new ArrayList<>();
      for (int i = 0; i < half; i++) {
        MarkCell right = half + i < cells.size() ? cells.get(half + i) : MarkCell.EMPTY;
        pairs.add(new MarkPair(cells.get(i), right));
      }
      return pairs;
    }

    private MarkCell mark(Hole hole) {
      return new MarkCell(
          hole.mark(),
          axis(hole.centre().east(), "east", "west"),
          axis(hole.centre().north(), "north", "south"),
          writing.formats().size(hole.diameter()));
    }

    private String axis(double metres, String forward, String back) {
      Length distance = new Length(Math.abs(metres));
      boolean none = distance.isLessThan(new Length(5e-7));
      String way = none ? "on" : metres > 0 ? forward : back;
      return writing.texts().say("site-plan.axis." + way, Map.of("distance", length(distance)));
    }
  }
}
