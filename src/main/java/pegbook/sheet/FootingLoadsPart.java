package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pegbook.calc.footingloads.FootingLoads;
import pegbook.calc.footingloads.FootingLoads.Share;
import pegbook.calc.footingloads.FootingLoads.Taken;
import pegbook.figures.CombinedLoad;
import pegbook.figures.SupportLoad;
import pegbook.geometry.Cell;
import pegbook.measure.Area;
import pegbook.measure.Force;
import pegbook.packet.Packet;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.plan.PlanPicture;
import pegbook.sheet.plan.SharePicture;

/**
 * The floor shared out, and the loads of each support before and after combining.
 *
 * @param plan the shares to scale
 * @param caption its scale and what it shows
 * @param unnamed a sentence on names that found no room; empty when all did
 * @param taken what lies on the floor, one sentence each
 * @param rows alike supports in one row
 * @param sum the last row
 * @param working the numbers of the workings behind the columns
 * @param whole true where the table is short enough to stand on one page, sum and all
 * @param notes how to read it
 */
public record FootingLoadsPart(
    Drawing plan,
    String caption,
    String unnamed,
    List<String> taken,
    List<Row> rows,
    Row sum,
    Row working,
    boolean whole,
    List<String> notes) {
  /** So many rows stand on one page with their head, sum and notes. */
  private static final int MOST_ROWS_ON_A_PAGE = 18;

  private static final double MOST_HEIGHT_MM = 125;

  /** From so many supports on the plan takes what its page leaves below the heading. */
  private static final int CROWD = 12;

  private static final double HEADING_MM = 66;

  /** Below this the floor counts as whole. */
  private static final double LEAST_OPENING_SQUARE_METRES = 1e-6;

  /** A row of the table, cells in the order of its columns. */
  public record Row(
      String marks,
      String area,
      String dead,
      String live,
      String snow,
      String governs,
      String total) {}

  static FootingLoadsPart of(Packet packet, Writing writing) {
    return new Maker(packet, writing).part();
  }

  private record Maker(Packet packet, Writing writing) {
    FootingLoadsPart part() {
      PlanPicture picture = picture();
      return new FootingLoadsPart(
          picture.drawing(),
          say("footings.plan.caption", Map.of("scale", picture.scale().text())),
          picture.unnamed().isEmpty()
              ? ""
              : say(
                  "footings.plan.unnamed",
                  Map.of("names", writing.formats().names(picture.unnamed()))),
          taken(),
          rows(),
          sum(),
          working(),
          rows().size() <= MOST_ROWS_ON_A_PAGE,
          notes());
    }

    private String say(String key, Map<String, String> values) {
      return writing.texts().say(key, values);
    }

    private FootingLoads loads() {
      return packet.footingLoads();
    }

    private PlanPicture picture() {
      Map<String, Cell> parts = new LinkedHashMap<>();
      Map<String, String> areas = new LinkedHashMap<>();
      for (Share share : loads().shares()) {
        parts.put(share.mark(), share.cell());
        areas.put(share.mark(), writing.formats().area(share.cell().area()));
      }
      return SharePicture.draw(
          new SharePicture.Content(
              writing.formats().units(), packet.placement().outline().corners(), parts, areas),
          SitePlanSheet.planWords(packet, writing),
          writing.lettering(),
          writing.page().widthMm(),
          mostHeightMm(),
          "footings-shares",
          say(
              "footings.plan.picture",
              Map.of("supports", writing.formats().count(loads().shares().size()))));
    }

    private double mostHeightMm() {
      return loads().shares().size() > CROWD
          ? writing.page().heightMm() - HEADING_MM
          : MOST_HEIGHT_MM;
    }

    private List<String> taken() {
      List<String> lines = new ArrayList<>();
      lines.add(taken("dead", loads().pressures().dead()));
      lines.add(taken("live", loads().pressures().live()));
      lines.add(
          loads()
              .pressures()
              .snow()
              .map(
                  snow ->
                      say("footings.taken.snow", Map.of("load", writing.formats().pressure(snow))))
              .orElseGet(() -> writing.texts().say("footings.taken.snow-unknown")));
      return lines;
    }

    private String taken(String load, Taken taken) {
      return say(
          "footings.taken." + load + (taken.given() ? "" : "-assumed"),
          Map.of("load", writing.formats().pressure(taken.value())));
    }

    /** One row for supports whose cells all read the same. */
    private List<Row> rows() {
      Map<Row, List<String>> alike = new LinkedHashMap<>();
      for (CombinedLoad load : loads().loads()) {
        alike.computeIfAbsent(row("", load), row -> new ArrayList<>()).add(load.mark());
      }
      List<Row> rows = new ArrayList<>();
      alike.forEach(
          (row, marks) ->
              rows.add(
                  new Row(
                      writing.formats().names(marks),
                      row.area(),
                      row.dead(),
                      row.live(),
                      row.snow(),
                      row.governs(),
                      row.total())));
      return rows;
    }

    private Row row(String marks, CombinedLoad load) {
      String name = load.governs().name().toLowerCase(Locale.ROOT).replace('_', '-');
      return new Row(
          marks,
          writing.formats().area(load.parts().area()),
          force(load.parts().dead()),
          force(load.parts().live()),
          load.parts().snow().map(this::force).orElse(writing.texts().say("footings.unknown")),
          writing.texts().say("footings.combination." + name),
          force(load.total()));
    }

    private String force(Force force) {
      return BearingPart.force(force, writing.formats());
    }

    private Row sum() {
      Area floor = loads().outline().minus(loads().openings());
      List<SupportLoad> parts = loads().supportLoads();
      Force dead = parts.stream().map(SupportLoad::dead).reduce(Force.ZERO, Force::plus);
      Force live = parts.stream().map(SupportLoad::live).reduce(Force.ZERO, Force::plus);
      boolean snow = loads().pressures().snow().isPresent();
      Force fallen =
          parts.stream().flatMap(part -> part.snow().stream()).reduce(Force.ZERO, Force::plus);
      return new Row(
          writing.texts().say("footings.sum"),
          writing.formats().area(floor),
          force(dead),
          force(live),
          snow ? force(fallen) : writing.texts().say("footings.unknown"),
          "",
          "");
    }

    private Row working() {
      return new Row(
          writing.texts().say("footings.working"),
          number("floor"),
          number("dead"),
          number("live"),
          number("snow"),
          "",
          number(loads().pressures().snow().isPresent() ? "combined" : "without-snow"));
    }

    private String number(String formula) {
      return packet.workings().numberOf("footing-loads." + formula).orElse("");
    }

    private List<String> notes() {
      List<String> notes = new ArrayList<>();
      boolean open = loads().openings().squareMetres() > LEAST_OPENING_SQUARE_METRES;
      notes.add(
          say(
              open ? "footings.note.shares" : "footings.note.shares-whole",
              Map.of(
                  "edge", writing.formats().area(loads().outline()),
                  "openings", writing.formats().area(loads().openings()))));
      if (loads().loads().stream().anyMatch(load -> load.parts() instanceof SupportLoad.ByBeam)) {
        notes.add(writing.texts().say("footings.note.by-beam"));
      }
      return notes;
    }
  }
}
