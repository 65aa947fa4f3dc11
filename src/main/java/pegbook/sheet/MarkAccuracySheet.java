package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.markaccuracy.MarkAccuracy;
import pegbook.calc.markaccuracy.MarkAccuracy.MarkError;
import pegbook.calc.markaccuracy.MarkAccuracy.PegPlace;
import pegbook.calc.markaccuracy.MarkAccuracy.PegTape;
import pegbook.calc.markaccuracy.MarkAccuracy.PeggedBaseline;
import pegbook.calc.markaccuracy.MarkAccuracy.Remedy;
import pegbook.calc.markaccuracy.MarkAccuracy.ThirdTape;
import pegbook.calc.tapetable.TapeTable;
import pegbook.measure.Length;
import pegbook.packet.Packet;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.plan.AccuracyPicture;

/**
 * How good each mark is.
 *
 * @param title the sheet's title
 * @param lead the worst mark, in one sentence
 * @param picture the ovals
 * @param beside whether it stands beside what it means
 * @param caption how much larger than true they are
 * @param meaning what it means for the helper
 * @param rows the marks in the order of work
 * @param tape how far one distance may be off, and why
 * @param baselines the baseline in use and the better ones
 * @param bad true when a mark is worse than the tolerance
 * @param remedy what brings bad marks inside it; empty where none is bad
 * @param third true when third tapes are the remedy
 * @param thirds the third tapes
 * @param pegged whether the pegs' places and tapes are printed
 * @param pegs how the two pegs are found
 * @param pegTapes tapes from the pegs
 */
public record MarkAccuracySheet(
    String title,
    String lead,
    Drawing picture,
    boolean beside,
    String caption,
    List<String> meaning,
    List<MarkRow> rows,
    List<String> tape,
    List<BaselineRow> baselines,
    boolean bad,
    String remedy,
    boolean third,
    List<ThirdRow> thirds,
    boolean pegged,
    List<String> pegs,
    List<PegRow> pegTapes)
    implements Sheet {
  private static final double MOST_HEIGHT_MM = 112;

  /** From this many times better on, the pegs' tapes are worth their table. */
  private static final double WORTH = 1.5;

  /** One mark. */
  public record MarkRow(
      String mark,
      String setting,
      String major,
      String minor,
      String lean,
      String radius,
      String verdict,
      String emphasis) {}

  /** One baseline. */
  public record BaselineRow(String baseline, String worst, String radius, String verdict) {}

  /** One third tape. */
  public record ThirdRow(String mark, String from, String tape, String radius) {}

  /** Two tapes from the pegs to a mark. */
  public record PegRow(String mark, String side, String first, String second, String radius) {}

  public MarkAccuracySheet {
    meaning = List.copyOf(meaning);
    rows = List.copyOf(rows);
    tape = List.copyOf(tape);
    baselines = List.copyOf(baselines);
    thirds = List.copyOf(thirds);
    pegs = List.copyOf(pegs);
    pegTapes = List.copyOf(pegTapes);
  }

  @Override
  public List<Drawing> drawings() {
    return List.of(picture);
  }

  /** Makes the sheet. */
  public static MarkAccuracySheet of(Packet packet, Writing writing) {
    return new Maker(packet, packet.markAccuracy(), new ErrorWords(writing)).sheet();
  }

  private record Maker(Packet packet, MarkAccuracy accuracy, ErrorWords words) {
    MarkAccuracySheet sheet() {
      AccuracyPicture picture = picture();
      boolean pegged = accuracy.pegged().filter(this::isWorth).isPresent();
      return new MarkAccuracySheet(
          words.say("mark-accuracy.title"),
          lead(),
          picture.drawing(),
          PictureRoom.of(packet, words.writing()).beside(),
          caption(picture),
          meaning(),
          rows(),
          words.tape(accuracy.tape(), accuracy.tolerance()),
          baselines(),
          accuracy.remedy().isPresent(),
          accuracy.remedy().map(this::remedy).orElse(""),
          !thirds().isEmpty(),
          thirds(),
          pegged,
          pegged ? pegs(accuracy.pegged().orElseThrow()) : List.of(),
          pegged ? pegTapes(accuracy.pegged().orElseThrow()) : List.of());
    }

    private String caption(AccuracyPicture picture) {
      Map<String, String> times = Map.of("times", words.writing().formats().count(picture.times()));
      boolean all =
          accuracy.marks().stream().allMatch(mark -> AccuracyPicture.hasOval(accuracy, mark));
      return words.say(
          all ? "mark-accuracy.picture.caption" : "mark-accuracy.picture.caption-some", times);
    }

    private String lead() {
      MarkAccuracy.PairError asked = accuracy.asked();
      return asked
          .radius()
          .map(
              radius ->
                  words.say(
                      "mark-accuracy.lead",
                      Map.of(
                          "mark", asked.worst(),
                          "radius", words.error(radius),
                          "tolerance", words.error(accuracy.tolerance()))))
          .orElseGet(() -> words.say("mark-accuracy.lead-not-told", Map.of("mark", asked.worst())));
    }

    private AccuracyPicture picture() {
      AccuracyPicture.Words on =
          new AccuracyPicture.Words(
              words.say("site-plan.north"),
              length -> words.say("mark-accuracy.bar", Map.of("length", words.length(length))),
              words.say(
                  "mark-accuracy.circle", Map.of("tolerance", words.length(accuracy.tolerance()))));
      Writing writing = words.writing();
      return AccuracyPicture.draw(
          packet.placement(),
          accuracy,
          on,
          writing.formats().units(),
          writing.lettering(),
          PictureRoom.of(packet, writing).widthMm(),
          MOST_HEIGHT_MM,
          times ->
              words.say(
                  "mark-accuracy.picture",
                  Map.of(
                      "times", writing.formats().count(times), "mark", accuracy.asked().worst())));
    }

    private List<String> meaning() {
      return List.of(
          words.say("mark-accuracy.meaning.oval"),
          words.say(
              "mark-accuracy.meaning.right",
              Map.of("first", accuracy.asked().first(), "second", accuracy.asked().second())),
          words.say("mark-accuracy.meaning.mistake"));
    }

    /** In the order of work. */
    private List<MarkRow> rows() {
      TapeTable table = packet.tapeTable();
      List<String> order = new ArrayList<>();
      order.add(table.baseline().first());
      order.add(table.baseline().second());
      table.rows().forEach(row -> order.add(row.mark()));
      Map<String, MarkError> byName = new LinkedHashMap<>();
      accuracy.marks().forEach(mark -> byName.put(mark.mark(), mark));
      return order.stream()
          .flatMap(name -> Optional.ofNullable(byName.get(name)).stream())
          .map(this::row)
          .toList();
    }

    private MarkRow row(MarkError mark) {
      boolean told = mark.verdict() != MarkAccuracy.Verdict.NOT_TOLD;
      String none = words.say("mark-accuracy.no-number");
      String verdict = mark.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-');
      return new MarkRow(
          mark.mark(),
          setting(mark),
          told ? words.error(mark.ellipse().semiMajor()) : none,
          told ? words.error(mark.ellipse().semiMinor()) : none,
          words.lean(mark.lean()),
          told ? words.error(mark.radius()) : none,
          words.say("mark-accuracy.verdict." + verdict),
          mark.isBad() ? "strong" : "");
    }

    private String setting(MarkError mark) {
      String key = mark.setting().name().toLowerCase(Locale.ROOT).replace('_', '-');
      return words.say(
          "mark-accuracy.setting." + key, Map.of("first", mark.first(), "second", mark.second()));
    }

    private List<BaselineRow> baselines() {
      List<BaselineRow> rows = new ArrayList<>();
      MarkAccuracy.PairError asked = accuracy.asked();
      rows.add(pair("mark-accuracy.baseline.asked", asked, ""));
      rows.add(
          pair(
              "mark-accuracy.baseline.best",
              accuracy.bestPair(),
              compared(accuracy.bestPair().radius())));
      accuracy
          .pegged()
          .ifPresent(
              pegs ->
                  rows.add(
                      new BaselineRow(
                          words.say("mark-accuracy.baseline.pegs"),
                          pegs.worst(),
                          words.error(pegs.radius()),
                          compared(Optional.of(pegs.radius())))));
      if (accuracy.pegged().isEmpty()) {
        String none = words.say("mark-accuracy.no-number");
        rows.add(
            new BaselineRow(
                words.say("mark-accuracy.baseline.pegs"),
                none,
                none,
                words.say("mark-accuracy.compared.no-place")));
      }
      return rows;
    }

    private BaselineRow pair(String key, MarkAccuracy.PairError pair, String verdict) {
      return new BaselineRow(
          words.say(key, Map.of("first", pair.first(), "second", pair.second())),
          pair.worst(),
          pair.radius().map(words::error).orElse(words.say("mark-accuracy.no-number")),
          verdict);
    }

    private String compared(Optional<Length> other) {
      Optional<Length> asked = accuracy.asked().radius();
      if (asked.isEmpty() || other.isEmpty()) {
        return words.say(
            other.isPresent() ? "mark-accuracy.compared.told" : "mark-accuracy.compared.none");
      }
      return words.times(asked.get().dividedBy(other.get()));
    }

    private boolean isWorth(PeggedBaseline pegs) {
      if (accuracy.remedy().filter(Remedy.Pegs.class::isInstance).isPresent()) {
        return true;
      }
      Optional<Length> asked = accuracy.asked().radius();
      boolean better = accuracy.bestPair().radius().filter(pegs.radius()::isLessThan).isPresent();
      return better && asked.filter(r -> r.dividedBy(pegs.radius()) >= WORTH).isPresent();
    }

    private String remedy(Remedy remedy) {
      String key =
          remedy instanceof Remedy.OtherPair
              ? "other-pair"
              : remedy instanceof Remedy.ThirdTapes
                  ? "third-tapes"
                  : remedy instanceof Remedy.Pegs ? "pegs" : "none";
      return words.say(
          "mark-accuracy.remedy." + key,
          Map.of(
              "first", accuracy.bestPair().first(),
              "second", accuracy.bestPair().second(),
              "tolerance", words.length(accuracy.tolerance())));
    }

    private List<ThirdRow> thirds() {
      return accuracy.remedy().stream()
          .filter(Remedy.ThirdTapes.class::isInstance)
          .flatMap(remedy -> ((Remedy.ThirdTapes) remedy).tapes().stream())
          .map(this::third)
          .toList();
    }

    private ThirdRow third(ThirdTape tape) {
      return new ThirdRow(
          tape.mark(), tape.from(), words.reading(tape.tape()), words.error(tape.radius()));
    }

    private List<String> pegs(PeggedBaseline pegs) {
      return List.of(
          peg("mark-accuracy.peg.first", pegs.places().get(0), pegs),
          peg("mark-accuracy.peg.second", pegs.places().get(1), pegs));
    }

    private String peg(String key, PegPlace place, PeggedBaseline pegs) {
      return words.say(
          key,
          Map.of(
              "first", place.firstMark(),
              "fromFirst", words.reading(place.fromFirst()),
              "second", place.secondMark(),
              "fromSecond", words.reading(place.fromSecond()),
              "side", side(place.left()),
              "length", words.reading(pegs.length())));
    }

    private String side(boolean left) {
      return words.say(left ? "mark-accuracy.left" : "mark-accuracy.right");
    }

    private List<PegRow> pegTapes(PeggedBaseline pegs) {
      return pegs.tapes().stream().map(this::pegTape).toList();
    }

    private PegRow pegTape(PegTape tape) {
      return new PegRow(
          tape.mark(),
          side(tape.left()),
          words.reading(tape.fromFirst()),
          words.reading(tape.fromSecond()),
          words.error(tape.radius()));
    }
  }
}
