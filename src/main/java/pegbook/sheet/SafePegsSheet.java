package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pegbook.calc.safepegs.PegRules;
import pegbook.calc.safepegs.SafePegs;
import pegbook.calc.safepegs.SafePegs.Crossing;
import pegbook.calc.safepegs.SafePegs.Find;
import pegbook.calc.safepegs.SafePegs.Peg;
import pegbook.calc.safepegs.SafePegs.PegString;
import pegbook.calc.safepegs.SafePegs.Setting;
import pegbook.calc.safepegs.SafePegs.Tape;
import pegbook.geometry.Compass;
import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;
import pegbook.sheet.drafting.CheckBar;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.plan.PegPicture;
import pegbook.sheet.plan.PlanContent;
import pegbook.sheet.plan.PlanPicture;
import pegbook.sheet.plan.PlanWords;

/**
 * The safe pegs: where they stand, how they are set, how each mark is found again, which strings
 * cross over which centre.
 *
 * @param title the sheet's title
 * @param lead which pegs are taped from
 * @param plan the pegs to scale
 * @param caption its scale and what its lines mean
 * @param unnamed a sentence on names that found no room; empty when all did
 * @param pegs how each peg is set
 * @param finds how each mark is found again
 * @param weakest how well the worst is found; empty without any
 * @param stretched true when there are strings
 * @param strings the strings
 * @param crossings which strings cross over which mark, two beside each other
 * @param steps how to go about it, in order
 * @param purchases what it takes
 * @param rules what pegs keep clear of
 */
public record SafePegsSheet(
    String title,
    String lead,
    Drawing plan,
    String caption,
    String unnamed,
    List<PegRow> pegs,
    List<FindRow> finds,
    String weakest,
    boolean stretched,
    List<StringRow> strings,
    List<CrossingPair> crossings,
    List<String> steps,
    List<Purchase> purchases,
    String rules)
    implements Sheet {
  private static final double HEADING_MM = 66;

  /** How one peg is set. */
  public record PegRow(String peg, String how, String first, String second, String check) {}

  /** How one mark is found again. */
  public record FindRow(
      String mark, String first, String second, String side, String crossing, String check) {}

  /** One string. */
  public record StringRow(String string, String length, String over) {}

  /** Two marks beside each other; the second may be empty. */
  public record CrossingPair(CrossingCell left, CrossingCell right) {}

  /** The strings over one mark. */
  public record CrossingCell(String mark, String strings, String angle) {
    static final CrossingCell EMPTY = new CrossingCell("", "", "");
  }

  public SafePegsSheet {
    pegs = List.copyOf(pegs);
    finds = List.copyOf(finds);
    strings = List.copyOf(strings);
    crossings = List.copyOf(crossings);
    steps = List.copyOf(steps);
    purchases = List.copyOf(purchases);
  }

  @Override
  public List<Drawing> drawings() {
    return List.of(plan);
  }

  /** Makes the sheet; none where no place for pegs was found. */
  public static Optional<SafePegsSheet> of(Packet packet, Writing writing) {
    return packet.safePegs().finds().isEmpty()
        ? Optional.empty()
        : Optional.of(new Maker(packet, packet.safePegs(), writing).sheet());
  }

  private record Maker(Packet packet, SafePegs figures, Writing writing) {
    SafePegsSheet sheet() {
      PlanPicture picture = picture();
      return new SafePegsSheet(
          say("safe-pegs.title"),
          lead(),
          picture.drawing(),
          say("safe-pegs.caption", Map.of("scale", picture.scale().text())),
          unnamed(picture),
          figures.pegs().stream().map(this::peg).toList(),
          figures.finds().stream().map(this::find).toList(),
          weakest(),
          !figures.strings().isEmpty(),
          figures.strings().stream().map(this::string).toList(),
          crossings(),
          steps(),
          Purchase.of(figures.needs(), writing),
          rules());
    }

    private String say(String key) {
      return writing.texts().say(key);
    }

    private String say(String key, Map<String, String> values) {
      return writing.texts().say(key, values);
    }

    private String length(Length length) {
      return writing.formats().length(length);
    }

    private String tape(Tape tape) {
      return say(
          "safe-pegs.tape",
          Map.of("name", tape.name(), "tape", writing.formats().tape(tape.length())));
    }

    private List<String> taped() {
      return figures.pegs().stream()
          .map(Peg::peg)
          .filter(peg -> peg.taped())
          .map(peg -> peg.id())
          .toList();
    }

    private String lead() {
      return say(
          figures.allSeen() ? "safe-pegs.lead.all" : "safe-pegs.lead.split",
          Map.of(
              "pegs", writing.formats().names(taped()),
              "count", writing.formats().count(figures.pegs().size())));
    }

    private PlanPicture picture() {
      PageArea page = writing.page();
      return PegPicture.draw(
          PlanContent.of(packet),
          figures,
          planWords(),
          writing.lettering(),
          page.widthMm(),
          page.heightMm() - HEADING_MM,
          "safe-pegs-picture",
          say(
              "safe-pegs.picture",
              Map.of(
                  "holes", writing.formats().count(packet.depthTargets().holes().size()),
                  "pegs", writing.formats().count(figures.pegs().size()))));
    }

    private PlanWords planWords() {
      Length bar = CheckBar.length(writing.formats().units());
      return new PlanWords(
          say("site-plan.north"),
          say("site-plan.check-bar", Map.of("length", length(bar))),
          say("site-plan.benchmark"),
          say("site-plan.lot-line"),
          "",
          holes -> writing.formats().names(holes),
          this::length,
          writing.formats()::distance,
          this::round,
          writing.formats()::tape);
    }

    private String round(Length length) {
      boolean imperial = writing.formats().units() == UnitSystem.IMPERIAL;
      return pegbook.measure.NumberNotation.write(length, imperial ? Unit.FOOT : Unit.METRE);
    }

    private String unnamed(PlanPicture picture) {
      return picture.unnamed().isEmpty()
          ? ""
          : say(
              "site-plan.unnamed",
              Map.of(
                  "names",
                  writing.formats().names(picture.unnamed().stream().distinct().toList())));
    }

    private PegRow peg(Peg peg) {
      String check = peg.check().map(this::tape).orElse("");
      Setting setting = peg.setting();
      if (setting instanceof Setting.Swing swing) {
        Map<String, String> values =
            Map.of(
                "first", swing.first().name(),
                "second", swing.second().name(),
                "side", side(swing.left(), swing.side()));
        String how = say("safe-pegs.how.swing", values);
        return new PegRow(peg.peg().id(), how, tape(swing.first()), tape(swing.second()), check);
      }
      if (setting instanceof Setting.InLine line) {
        String how = say("safe-pegs.how.line", Map.of("line", line(line)));
        return new PegRow(peg.peg().id(), how, past(line), "", check);
      }
      Setting.Meeting meeting = (Setting.Meeting) setting;
      String how =
          say(
              "safe-pegs.how.meeting",
              Map.of("one", line(meeting.one()), "other", line(meeting.other())));
      return new PegRow(peg.peg().id(), how, past(meeting.one()), past(meeting.other()), check);
    }

    private String line(Setting.InLine line) {
      return line.from() + "–" + line.past().name();
    }

    private String past(Setting.InLine line) {
      return say(
          "safe-pegs.past",
          Map.of(
              "name", line.past().name(),
              "tape", writing.formats().tape(line.past().length())));
    }

    private String side(boolean left, Compass wind) {
      String word = say("compass." + wind.name().toLowerCase(Locale.ROOT).replace('_', '-'));
      return say(left ? "safe-pegs.side.left" : "safe-pegs.side.right", Map.of("wind", word));
    }

    private FindRow find(Find find) {
      String angle = writing.formats().roundAngle(find.crossing());
      return new FindRow(
          find.mark(),
          tape(find.first()),
          tape(find.second()),
          side(find.left(), find.side()),
          find.weak() ? say("tape-table.weak", Map.of("angle", angle)) : angle,
          find.check().map(this::tape).orElse(say("safe-pegs.nothing")));
    }

    private String weakest() {
      boolean imperial = writing.formats().units() == UnitSystem.IMPERIAL;
      return figures
          .weakest()
          .map(
              spread ->
                  say(
                      "safe-pegs.weakest",
                      Map.of(
                          "mark", spread.mark(),
                          "spread",
                              writing
                                  .formats()
                                  .in(
                                      spread.length(),
                                      imperial ? Unit.INCH : Unit.MILLIMETRE,
                                      imperial ? 2 : 0))))
          .orElse("");
    }

    private String name(PegString string) {
      return string.first() + "–" + string.second();
    }

    private StringRow string(PegString string) {
      String over =
          string.over().stream()
              .map(
                  tape ->
                      say(
                          "safe-pegs.over",
                          Map.of(
                              "mark", tape.name(),
                              "tape", writing.formats().tape(tape.length()))))
              .collect(Collectors.joining("; "));
      return new StringRow(name(string), writing.formats().tape(string.length()), over);
    }

    private List<CrossingPair> crossings() {
      List<CrossingCell> cells = figures.crossings().stream().map(this::crossing).toList();
      int half = (cells.size() + 1) / 2;
      List<CrossingPair> pairs = new ArrayList<>();
      for (int i = 0; i < half; i++) {
        CrossingCell right = half + i < cells.size() ? cells.get(half + i) : CrossingCell.EMPTY;
        pairs.add(new CrossingPair(cells.get(i), right));
      }
      return pairs;
    }

    private CrossingCell crossing(Crossing crossing) {
      return new CrossingCell(
          crossing.mark(),
          say(
              "safe-pegs.cross",
              Map.of(
                  "one", name(figures.strings().get(crossing.one())),
                  "other", name(figures.strings().get(crossing.other())))),
          writing.formats().roundAngle(crossing.angle()));
    }

    private List<String> steps() {
      List<String> steps = new ArrayList<>(List.of("set", "line", "back", "find", "hit"));
      if (!figures.strings().isEmpty()) {
        steps.add("string");
        steps.add(packet.depthTargets().datum().isPresent() ? "datum" : "height");
        steps.add("form");
      }
      if (!figures.underFloor().isEmpty()) {
        steps.add("floor");
      }
      Map<String, String> values = values();
      return steps.stream().map(step -> say("safe-pegs.step." + step, values)).toList();
    }

    private Map<String, String> values() {
      Map<String, String> values = new LinkedHashMap<>();
      PegRules rules = figures.rules();
      values.put("tape", length(rules.tape()));
      values.put("string", length(rules.string()));
      values.put("tolerance", length(packet.job().layout().tolerance()));
      values.put("pegs", writing.formats().names(figures.underFloor()));
      values.put("hole", length(rules.hole()));
      values.put("heap", length(rules.heap()));
      values.put("floor", length(rules.floor()));
      values.put("path", length(rules.path()));
      values.put("feature", length(rules.feature()));
      values.put("line", length(rules.line()));
      values.put("passing", length(rules.passing()));
      values.put("lot", length(rules.lot()));
      return values;
    }

    private String rules() {
      return say("safe-pegs.rules.text", values());
    }
  }
}
