package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import pegbook.calc.asmarked.AsMarked;
import pegbook.calc.asmarked.AsMarked.Gaps;
import pegbook.calc.asmarked.AsMarked.Move;
import pegbook.calc.asmarked.AsMarked.Pair;
import pegbook.calc.asmarked.AsMarked.Row;
import pegbook.calc.asmarked.AsMarked.Step;
import pegbook.calc.asmarked.AsMarked.Suspect;
import pegbook.calc.asmarked.AsMarked.Together;
import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;

/** The sentences of the as-marked sheet. */
record AsMarkedWords(Packet packet, AsMarked found, Writing writing) {
  private static final int MOST_NAMED = 12;
  private static final int MOST_SUSPECTS = 4;

  AsMarkedWords(Packet packet, Writing writing) {
    this(packet, packet.asMarked(), writing);
  }

  private String say(String key, String... namesAndValues) {
    Map<String, String> values = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      values.put(namesAndValues[i], namesAndValues[i + 1]);
    }
    return writing.texts().say("as-marked." + key, values);
  }

  private boolean imperial() {
    return writing.formats().units() == UnitSystem.IMPERIAL;
  }

  /** A small length: hundredths of an inch, or tenths of a millimetre. */
  String small(Length length) {
    return writing
        .formats()
        .in(length, imperial() ? Unit.INCH : Unit.MILLIMETRE, imperial() ? 2 : 1);
  }

  /** A difference, with its sign. */
  String signed(Length length) {
    String written = small(length);
    return length.metres() > 0 && written.matches(".*[1-9].*") ? "+" + written : written;
  }

  /** What is wrong. */
  String verdict() {
    return switch (found.verdict()) {
      case NOTHING_TAPED -> say("nothing");
      case FITS -> say("fits", "count", writing.formats().count(found.rows().size()));
      case MARK_MOVED -> moved(found.move().orElseThrow());
      case READING_WRONG -> misread(found.suspects().get(0));
      case UNCLEAR -> found.together().map(this::together).orElseGet(this::unclear);
    };
  }

  private String together(Together two) {
    String key = two.kind() == Together.Kind.SWAPPED ? "swapped" : "two";
    return say(key, "one", name(two.suspects().get(0)), "other", name(two.suspects().get(1)));
  }

  private String unclear() {
    return say(
        found.reason().orElseThrow().name().toLowerCase(Locale.ROOT).replace('_', '-'),
        "suspects",
        tied());
  }

  private String moved(Move move) {
    return say(
        move.isBeyond() ? "moved" : "near",
        "mark",
        move.mark(),
        "distance",
        small(move.distance()),
        "deviation",
        small(move.deviation()),
        "tolerance",
        writing.formats().length(move.tolerance()));
  }

  private String misread(Suspect suspect) {
    Pair pair = suspect.reading().orElseThrow();
    Row row =
        found.rows().stream().filter(some -> some.pair().equals(pair)).findFirst().orElseThrow();
    return say(
        "misread",
        "pair",
        pair.name(),
        "taped",
        writing.formats().tape(row.taped()),
        "expected",
        writing.formats().length(row.taped().minus(suspect.size())));
  }

  private String tied() {
    return found.suspects().stream()
        .filter(suspect -> suspect.lead() < found.leadNeeded())
        .limit(MOST_SUSPECTS)
        .map(this::name)
        .collect(Collectors.joining(", "));
  }

  /** The mark or reading that a supposition is about. */
  String name(Suspect suspect) {
    return suspect
        .mark()
        .map(mark -> say("suspect.mark", "mark", mark))
        .orElseGet(() -> say("suspect.reading", "pair", suspect.reading().orElseThrow().name()));
  }

  /** By how much the mark would be off, or the reading too long. */
  String off(Suspect suspect) {
    return suspect.mark().isPresent() ? small(suspect.size()) : signed(suspect.size());
  }

  /** Over the readings that the first mark suspected foretells. */
  String foretelling() {
    return found.suspects().stream()
        .filter(suspect -> suspect.mark().isPresent())
        .findFirst()
        .or(() -> found.suspects().stream().findFirst())
        .map(suspect -> say("column.expected", "suspect", name(suspect)))
        .orElse("");
  }

  /** How to move the mark, sentence by sentence. */
  List<String> move() {
    return found
        .together()
        .map(two -> two.moves().stream().flatMap(move -> sentences(move).stream()).toList())
        .orElseGet(() -> found.move().map(this::sentences).orElse(List.of()));
  }

  private List<String> sentences(Move move) {
    List<String> steps = move.steps().stream().map(this::step).toList();
    String how =
        switch (steps.size()) {
          case 0 -> say("move.none", "mark", move.mark());
          case 1 -> say("move.one", "mark", move.mark(), "one", steps.get(0));
          default ->
              say("move.two", "mark", move.mark(), "one", steps.get(0), "other", steps.get(1));
        };
    String tapes =
        move.tapes().stream()
            .map(
                tape ->
                    say(
                        "move.tape",
                        "tape",
                        writing.formats().tape(tape.tape()),
                        "mark",
                        tape.from()))
            .collect(Collectors.joining(", "));
    return List.of(how, say("move.tapes", "tapes", tapes), say("move.again", "mark", move.mark()));
  }

  private String step(Step step) {
    return say(
        "way." + step.way().name().toLowerCase(Locale.ROOT).replace('_', '-'),
        "amount",
        writing.formats().tape(step.amount()),
        "first",
        step.first(),
        "second",
        step.second());
  }

  /** What else to tape. */
  String tell() {
    if (!found.again().isEmpty()) {
      return say("tell.again", "pairs", pairs(found.again()));
    }
    return found.further().isEmpty() ? say("tell.none") : "";
  }

  private static String pairs(List<Pair> pairs) {
    return pairs.stream().limit(MOST_NAMED).map(Pair::name).collect(Collectors.joining(", "));
  }

  /** A reading, or how many were averaged. */
  String taped(Row row) {
    String tape = writing.formats().length(row.taped());
    return row.readings() == 1
        ? tape
        : say("mean", "tape", tape, "count", writing.formats().count(row.readings()));
  }

  /** What the table of distances shows. */
  String rowsWhy() {
    return found.rows().isEmpty()
        ? ""
        : say("rows.why", "working", packet.workings().numberOf("as-marked.limit").orElse(""));
  }

  /** The global test. */
  List<AsMarkedSheet.Fact> test(AsMarked.Test test) {
    Formats formats = writing.formats();
    double perThousand = test.chance() * 1000;
    return List.of(
        new AsMarkedSheet.Fact(say("test.sum"), formats.number(test.squares(), 1)),
        new AsMarkedSheet.Fact(
            say("test.limit", "chance", formats.number(test.level() / 2 * 100, 1)),
            formats.number(test.limit(), 1)),
        new AsMarkedSheet.Fact(
            say("test.chance"),
            perThousand < 1
                ? say("test.chance.less", "chance", formats.count(1))
                : say("test.chance.in", "chance", formats.number(perThousand, 0))),
        new AsMarkedSheet.Fact(
            say("test.best", "count", formats.count(test.suppositions())),
            formats.number(test.explained(), 1)),
        new AsMarkedSheet.Fact(
            say("test.best-limit", "chance", formats.number(test.level() / 2 * 100, 1)),
            formats.number(test.explainedLimit(), 1)),
        new AsMarkedSheet.Fact(
            say("test.alarm"),
            say("test.alarm.in", "chance", formats.number(test.level() * 100, 0))));
  }

  /** What the table of suspects shows. */
  String suspectsWhy() {
    return say(
        "suspects.why",
        "lead",
        writing.formats().number(found.leadNeeded(), 1),
        "odds",
        writing.formats().number(found.oddsNeeded(), 0));
  }

  /** What is not checked. */
  List<String> gaps() {
    Gaps gaps = found.gaps();
    List<String> sentences = new ArrayList<>();
    marks(sentences, "gaps.never", gaps.never());
    marks(sentences, "gaps.once", gaps.once());
    marks(sentences, "gaps.twice", gaps.twice());
    int more = gaps.missing().size() - MOST_NAMED;
    if (more > 0) {
      sentences.add(
          say("gaps.more", "pairs", pairs(gaps.missing()), "count", writing.formats().count(more)));
    } else if (!gaps.missing().isEmpty()) {
      sentences.add(say("gaps.missing", "pairs", pairs(gaps.missing())));
    }
    return sentences;
  }

  private void marks(List<String> sentences, String key, List<String> marks) {
    if (!marks.isEmpty()) {
      sentences.add(say(key, "marks", writing.formats().names(marks)));
    }
  }

  /** What the limits rest on. */
  String basis() {
    return found.rows().isEmpty()
        ? ""
        : say(
            "limits.basis",
            "least",
            small(found.accuracy().least()),
            "most",
            small(found.accuracy().most()),
            "leastPlace",
            small(found.accuracy().leastPlace()),
            "mostPlace",
            small(found.accuracy().mostPlace()),
            "first",
            packet.tapeTable().baseline().first(),
            "second",
            packet.tapeTable().baseline().second());
  }
}
