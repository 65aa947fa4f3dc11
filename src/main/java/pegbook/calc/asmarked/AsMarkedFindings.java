package pegbook.calc.asmarked;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import pegbook.calc.asmarked.AsMarked.Doubled;
import pegbook.calc.asmarked.AsMarked.Further;
import pegbook.calc.asmarked.AsMarked.Gaps;
import pegbook.calc.asmarked.AsMarked.Move;
import pegbook.calc.asmarked.AsMarked.Pair;
import pegbook.calc.asmarked.AsMarked.Reason;
import pegbook.calc.asmarked.AsMarked.Row;
import pegbook.calc.asmarked.AsMarked.Suspect;
import pegbook.calc.asmarked.AsMarked.Together;
import pegbook.calc.asmarked.AsMarked.Triangle;
import pegbook.figures.Argument;
import pegbook.figures.DistanceLimit;
import pegbook.figures.Finding;
import pegbook.published.Citation;

/** What the reader of the as-marked distances must act on. */
final class AsMarkedFindings {
  private static final String PLACE = "field.marked";

  private final List<Finding> all = new ArrayList<>();

  List<Finding> all() {
    return all;
  }

  private static Finding finding(Finding.Kind kind, String id) {
    return Finding.of(kind, id, PLACE, Finding.Decider.CREW, DistanceLimit.TESTING);
  }

  private static Finding practice(Finding.Kind kind, String id) {
    return Finding.of(kind, id, PLACE, Finding.Decider.CREW, Citation.COMMON_PRACTICE);
  }

  /** One mark is elsewhere: a stop where it is off by more than the job allows. */
  void moved(Move move) {
    boolean beyond = move.isBeyond();
    all.add(
        finding(
                beyond ? Finding.Kind.STOP : Finding.Kind.NOTE,
                beyond ? "as-marked-moved" : "as-marked-near")
            .about(List.of(move.mark()))
            .with("mark", Argument.words(move.mark()))
            .with("distance", Argument.of(move.distance()))
            .with("tolerance", Argument.of(move.tolerance())));
  }

  /** One reading is wrong. */
  void misread(Suspect suspect, List<Row> rows) {
    Pair pair = suspect.reading().orElseThrow();
    Row row = rows.stream().filter(some -> some.pair().equals(pair)).findFirst().orElseThrow();
    all.add(
        finding(Finding.Kind.ASK, "as-marked-misread")
            .about(List.of(pair.from(), pair.to()))
            .with("pair", Argument.words(pair.name()))
            .with("taped", Argument.of(row.taped()))
            .with("planned", Argument.of(row.planned())));
  }

  /** Two mistakes at once, or two names exchanged: no hole is dug at these marks. */
  void together(Together two) {
    boolean swapped = two.kind() == Together.Kind.SWAPPED;
    all.add(
        finding(Finding.Kind.STOP, swapped ? "as-marked-swapped" : "as-marked-two")
            .about(marksOf(two.suspects()))
            .with("one", Argument.words(two.suspects().get(0).name()))
            .with("other", Argument.words(two.suspects().get(1).name())));
  }

  /** Something is wrong, and nothing can be named. */
  void unclear(Reason reason, List<Suspect> tied, List<Further> further, List<Pair> again) {
    List<String> tapes = new ArrayList<>(further.stream().map(tape -> tape.pair().name()).toList());
    again.stream().map(Pair::name).filter(name -> !tapes.contains(name)).forEach(tapes::add);
    all.add(
        finding(Finding.Kind.ASK, idOf(reason))
            .about(marksOf(tied))
            .with("suspects", Argument.of(tied.stream().map(Suspect::name).limit(6).toList()))
            .with(
                "tapes",
                tapes.isEmpty() ? Argument.entry("as-marked.tape-all-again") : Argument.of(tapes)));
  }

  private static String idOf(Reason reason) {
    return switch (reason) {
      case BASELINE_ONLY -> "as-marked-baseline-only";
      case ONE_REDUNDANCY -> "as-marked-one-redundancy";
      case TWO_TAPES -> "as-marked-two-tapes";
      case EQUAL -> "as-marked-equal";
      case SEVERAL -> "as-marked-several";
    };
  }

  private static List<String> marksOf(List<Suspect> suspects) {
    Set<String> marks = new LinkedHashSet<>();
    suspects.forEach(
        suspect -> {
          suspect.mark().ifPresent(marks::add);
          suspect.reading().ifPresent(pair -> marks.addAll(List.of(pair.from(), pair.to())));
        });
    return List.copyOf(marks);
  }

  /** Readings of one distance that disagree; the worst is shown. */
  void doubled(List<Doubled> doubled) {
    if (doubled.isEmpty()) {
      return;
    }
    Doubled worst =
        doubled.stream()
            .reduce(
                (a, b) -> b.most().minus(b.least()).isMoreThan(a.most().minus(a.least())) ? b : a)
            .orElseThrow();
    all.add(
        practice(Finding.Kind.ASK, "as-marked-doubled")
            .with("pairs", Argument.of(doubled.stream().map(some -> some.pair().name()).toList()))
            .with("worst", Argument.words(worst.pair().name()))
            .with("least", Argument.of(worst.least()))
            .with("most", Argument.of(worst.most()))
            .with("limit", Argument.of(worst.limit())));
  }

  /** Three distances that cannot meet; the widest gap is shown. */
  void triangles(List<Triangle> triangles) {
    if (triangles.isEmpty()) {
      return;
    }
    Triangle worst = triangles.get(0);
    Pair longest = worst.longest();
    all.add(
        practice(Finding.Kind.ASK, "as-marked-triangle")
            .about(List.of(longest.from(), longest.to(), worst.corner()))
            .with("longest", Argument.words(longest.name()))
            .with("one", Argument.words(new Pair(longest.from(), worst.corner()).name()))
            .with("other", Argument.words(new Pair(worst.corner(), longest.to()).name()))
            .with("taped", Argument.of(worst.taped()))
            .with("others", Argument.of(worst.others())));
  }

  /** Marks that too few tapes reach. */
  void gaps(Gaps gaps) {
    if (!gaps.once().isEmpty()) {
      all.add(
          practice(Finding.Kind.ASK, "as-marked-once")
              .about(gaps.once())
              .with("marks", Argument.of(gaps.once())));
    }
    if (!gaps.missing().isEmpty()) {
      List<String> few = new ArrayList<>(gaps.never());
      few.addAll(gaps.once());
      few.addAll(gaps.twice());
      all.add(
          practice(Finding.Kind.NOTE, "as-marked-few")
              .with("marks", Argument.of(few))
              .with("count", Argument.of(gaps.missing().size()))
              .with(
                  "tapes",
                  Argument.of(gaps.missing().stream().map(Pair::name).limit(12).toList())));
    }
  }
}
