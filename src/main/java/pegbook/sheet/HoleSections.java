package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.figures.AlikeHoles;
import pegbook.figures.DatumLine;
import pegbook.figures.FrostSleeve;
import pegbook.figures.Hole;
import pegbook.job.Frost;
import pegbook.job.Side;
import pegbook.job.Tube;
import pegbook.job.Widenings;
import pegbook.job.Widenings.Bell;
import pegbook.job.Widenings.Cap;
import pegbook.measure.Length;
import pegbook.packet.Packet;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.CheckBar;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.ScaleBar;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Spot;
import pegbook.sheet.section.HoleSection;
import pegbook.sheet.section.HoleSizes;
import pegbook.sheet.section.HoleWords;

/**
 * The sections of a packet's holes, one for each kind, all at one scale.
 *
 * @param pairs two side by side
 * @param scale of all
 * @param scaleWords the same in words
 * @param bars scale bar and check bar
 */
record HoleSections(
    List<DigScheduleSheet.Pair> pairs, DrawingScale scale, String scaleWords, Drawing bars) {
  /** Space between two pictures side by side, and the padding of the page's halves. */
  private static final double GAP_MM = 6;

  private static final double TALLEST_MM = 127;
  private static final double BARS_MM = 12;

  static HoleSections of(Packet packet, Writing writing) {
    return new Maker(packet, writing).make();
  }

  /** A hole that stands for all of its kind. */
  private record Kind(AlikeHoles alike, HoleSizes sizes) {}

  private record Maker(Packet packet, Writing writing) {
    HoleSections make() {
      List<Kind> kinds =
          AlikeHoles.of(inOrder()).stream()
              .flatMap(alike -> bySleeve(alike).stream())
              .map(alike -> new Kind(alike, sizes(alike)))
              .toList();
      double widthMm = (writing.page().widthMm() - GAP_MM) / 2;
      DrawingScale scale =
          HoleSection.scale(
              packet.job().heading().units(),
              kinds.stream().map(Kind::sizes).toList(),
              widthMm,
              TALLEST_MM);
      HoleSection.Style style = new HoleSection.Style(widthMm, scale, writing.lettering());
      List<DigScheduleSheet.Section> sections = new ArrayList<>();
      for (Kind kind : kinds) {
        sections.add(section("hole-section-" + (sections.size() + 1), kind, style));
      }
      return new HoleSections(
          pairs(sections),
          scale,
          writing.texts().say("dig-schedule.scale", Map.of("scale", scale.text())),
          bars(scale));
    }

    /** The holes in the order of digging. */
    private List<Hole> inOrder() {
      return packet.digSchedule().rows().stream().map(row -> row.hole()).toList();
    }

    /** Alike holes of which only some have a sleeve against frost are two kinds of section. */
    private List<AlikeHoles> bySleeve(AlikeHoles alike) {
      Map<Length, List<Hole>> byLength = new LinkedHashMap<>();
      alike
          .holes()
          .forEach(
              hole -> byLength.computeIfAbsent(sleeve(hole), key -> new ArrayList<>()).add(hole));
      return byLength.values().stream().map(AlikeHoles::new).toList();
    }

    private Length sleeve(Hole hole) {
      return packet.frostGrip().sleeves().stream()
          .filter(sleeve -> sleeve.mark().equals(hole.mark()))
          .findFirst()
          .map(FrostSleeve::length)
          .orElse(Length.ZERO);
    }

    private static List<DigScheduleSheet.Pair> pairs(List<DigScheduleSheet.Section> sections) {
      List<DigScheduleSheet.Pair> pairs = new ArrayList<>();
      for (int i = 0; i < sections.size(); i += 2) {
        pairs.add(new DigScheduleSheet.Pair(sections.subList(i, Math.min(i + 2, sections.size()))));
      }
      return List.copyOf(pairs);
    }

    private HoleSizes sizes(AlikeHoles alike) {
      Hole hole = alike.first();
      return new HoleSizes(
          hole.diameter(),
          hole.depth(),
          hole.gravel(),
          hole.top(),
          hole.tube().map(Tube::inside),
          hole.tube().map(Tube::from).filter(from -> from == Tube.From.BOTTOM).isPresent(),
          frost()
              .filter(depth -> depth.isMoreThan(Length.ZERO))
              .filter(depth -> !depth.isMoreThan(hole.dug())),
          sleeve(hole),
          reading(hole).map(DatumLine.Reading::toGround),
          wide(hole));
    }

    private static HoleSizes.Wide wide(Hole hole) {
      Widenings wide = hole.widenings();
      return new HoleSizes.Wide(
          wide.bell().map(Bell::diameter).orElse(Length.ZERO),
          wide.bell().map(Bell::flare).orElse(Length.ZERO),
          wide.bottomHeight(),
          wide.pad().isPresent(),
          wide.cap().map(Cap::width).orElse(Length.ZERO),
          wide.capThickness());
    }

    private Optional<DatumLine.Reading> reading(Hole hole) {
      return packet
          .depthTargets()
          .datum()
          .flatMap(
              datum ->
                  datum.readings().stream()
                      .filter(reading -> reading.mark().equals(hole.mark()))
                      .findFirst());
    }

    private DigScheduleSheet.Section section(String id, Kind kind, HoleSection.Style style) {
      Map<String, String> values = values(kind);
      HoleSection.Picture picture =
          HoleSection.draw(
              id,
              writing.texts().say("dig-schedule.section.description", values),
              kind.sizes(),
              words(kind, values),
              style);
      return new DigScheduleSheet.Section(
          picture.drawing(), caption(kind, values) + leftOver(picture));
    }

    /** What had no room on the drawing. */
    private static String leftOver(HoleSection.Picture picture) {
      return picture.leftOver().isEmpty() ? "" : " (" + String.join(", ", picture.leftOver()) + ")";
    }

    /** Whose section it is, and what it cannot show. */
    private String caption(Kind kind, Map<String, String> values) {
      List<String> sentences = new ArrayList<>(List.of(say("caption", values)));
      if (kind.sizes().line().isPresent() && alikeFromTheLine(kind).isEmpty()) {
        sentences.add(say("caption.line", values));
      }
      frost()
          .filter(depth -> depth.isMoreThan(kind.alike().first().dug()))
          .ifPresent(
              depth ->
                  sentences.add(
                      say("caption.frost", Map.of("frost", writing.formats().tape(depth)))));
      return String.join(" ", sentences);
    }

    private Optional<Length> frost() {
      return packet.job().ground().frost().map(Frost::depth);
    }

    private Map<String, String> values(Kind kind) {
      Hole hole = kind.alike().first();
      Formats formats = writing.formats();
      Map<String, String> values = new LinkedHashMap<>();
      values.put("holes", formats.names(kind.alike().marks()));
      values.put("diameter", formats.size(hole.diameter()));
      values.put("depth", formats.tape(hole.depth()));
      values.put("dug", formats.tape(hole.dug()));
      values.put("gravel", formats.size(hole.gravel()));
      values.put("top", formats.size(hole.top()));
      values.put("tube", hole.tube().map(tube -> formats.size(tube.inside())).orElse(""));
      values.put("frost", kind.sizes().frost().map(formats::tape).orElse(""));
      values.put("sleeve", formats.tape(kind.sizes().sleeve()));
      values.put("bell", formats.size(hole.bottomWidth()));
      values.put("begins", formats.tape(hole.shaftDepth()));
      values.put("thickness", formats.size(hole.widenings().bottomHeight()));
      hole.widenings()
          .bell()
          .ifPresent(
              bell -> {
                values.put("flare", formats.size(bell.flare()));
                values.put("toe", formats.size(bell.toe()));
              });
      hole.widenings()
          .cap()
          .ifPresent(
              cap -> {
                values.put("cap", new WideningWords(writing).cap(cap));
                values.put("capThickness", formats.size(cap.thickness()));
              });
      return values;
    }

    private HoleWords.Wide wideWords(Kind kind, Map<String, String> values) {
      Widenings wide = kind.alike().first().widenings();
      boolean bell = wide.bell().isPresent();
      boolean cap = wide.cap().isPresent();
      return new HoleWords.Wide(
          say("bell", values),
          say("begins", values),
          bell ? say("flare", values) : "",
          wide.bell().filter(some -> some.toe().isMoreThan(Length.ZERO)).isPresent()
              ? say("edge", values)
              : "",
          say("pad", values),
          cap ? say("cap", values) : "",
          cap ? say("cap-thickness", values) : "");
    }

    private HoleWords words(Kind kind, Map<String, String> values) {
      boolean gravel = kind.alike().first().gravel().isMoreThan(Length.ZERO);
      return new HoleWords(
          say("diameter", values),
          gravel ? say("depth", values) : say("dug", values),
          say("dug", values),
          say("gravel", values),
          say("top", values),
          say("tube", values),
          say("concrete", values),
          say(isInGravel(kind) ? "side-gravel" : "backfill", values),
          say("frost", values),
          say("sleeve", values),
          say("line", values),
          alikeFromTheLine(kind).map(hole -> formatted(hole.datumToUnderside().orElseThrow())),
          alikeFromTheLine(kind)
              .filter(hole -> gravel)
              .map(hole -> formatted(hole.datumToBottom().orElseThrow())),
          wideWords(kind, values));
    }

    private boolean isInGravel(Kind kind) {
      return packet
          .job()
          .side(kind.alike().first().mark())
          .equals(Optional.of(Side.GRANULAR_BACKFILL));
    }

    private String say(String key, Map<String, String> values) {
      return writing.texts().say("dig-schedule.section." + key, values);
    }

    private String formatted(Length fromTheLine) {
      return writing
          .texts()
          .say(
              "dig-schedule.section.from-line",
              Map.of("depth", writing.formats().tape(fromTheLine)));
    }

    /** The hole whose depth from the line is that of all of its kind. */
    private Optional<Hole> alikeFromTheLine(Kind kind) {
      List<Hole> holes = kind.alike().holes();
      Hole first = holes.get(0);
      boolean one =
          holes.stream()
              .allMatch(
                  hole ->
                      hole.datumToUnderside()
                          .map(writing.formats()::tape)
                          .equals(first.datumToUnderside().map(writing.formats()::tape)));
      return one && first.datumToUnderside().isPresent() ? Optional.of(first) : Optional.empty();
    }

    private Drawing bars(DrawingScale scale) {
      Canvas canvas = new Canvas(writing.page().widthMm() - 1, BARS_MM, writing.lettering());
      double checkMm = CheckBar.length(packet.job().heading().units()).millimetres();
      ScaleBar.draw(
          canvas,
          new Spot(1, 1.5),
          scale,
          canvas.widthMm() - checkMm - 24,
          writing.formats()::distance);
      CheckBar.draw(
          canvas,
          new Spot(canvas.widthMm() - checkMm - 2, 1),
          packet.job().heading().units(),
          writing
              .texts()
              .say(
                  "dig-schedule.check-bar",
                  Map.of(
                      "length",
                      writing.formats().size(CheckBar.length(packet.job().heading().units())))));
      return canvas.drawing(
          "hole-section-bars",
          writing.texts().say("dig-schedule.bars", Map.of("scale", scale.text())));
    }
  }
}
