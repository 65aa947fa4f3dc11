package pegbook.calc.asmarked;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.calc.asmarked.AsMarked.Accuracy;
import pegbook.calc.asmarked.AsMarked.Further;
import pegbook.calc.asmarked.AsMarked.Gaps;
import pegbook.calc.asmarked.AsMarked.Move;
import pegbook.calc.asmarked.AsMarked.Pair;
import pegbook.calc.asmarked.AsMarked.Reason;
import pegbook.calc.asmarked.AsMarked.Row;
import pegbook.calc.asmarked.AsMarked.Suspect;
import pegbook.calc.asmarked.AsMarked.Test;
import pegbook.calc.asmarked.AsMarked.Together;
import pegbook.calc.asmarked.AsMarked.Verdict;
import pegbook.figures.Placement;
import pegbook.figures.TapeAccuracy;
import pegbook.figures.Working;
import pegbook.geometry.network.Chances;
import pegbook.geometry.network.Suppositions;
import pegbook.geometry.network.TapedDistance;
import pegbook.job.Job;
import pegbook.job.Layout;
import pegbook.measure.Length;
import pegbook.measure.Ratio;

/**
 * Looks for what is wrong in the distances taped between painted marks.
 *
 * <p>If nothing is wrong, every distance differs from the plan by the error of its reading and by
 * how well its two marks were set out. Both follow from the job's tape. Whether anything is wrong
 * is told by the weighted sum of squares of the differences, and by the single supposition that
 * explains most. What is wrong is told by weighing suppositions — this one mark is elsewhere, this
 * one reading is wrong — each against the plan; a free adjustment would smear one moved mark over
 * its neighbours. Where no single supposition is enough, {@link TwoMistakes} looks for two. See
 * {@link Judgement} for when nothing is named.
 *
 * <p>Distances cannot show that the whole figure was shifted, turned or mirrored.
 */
public final class AsMarkedCalculator {
  private static final int MOST_SUSPECTS = 6;
  private static final int MOST_AGAIN = 6;

  private final Placement placement;
  private final Layout layout;
  private final AsMarkedFormulas formulas;
  private final String first;
  private final String second;
  private final TapeAccuracy accuracy;
  private final SettingOut settingOut;

  private AsMarkedCalculator(Job job, Placement placement, String first, String second) {
    this.placement = placement;
    this.layout = job.layout();
    this.formulas = AsMarkedFormulas.in(job.heading().units());
    this.first = first;
    this.second = second;
    this.accuracy = TapeAccuracy.of(layout.tape());
    this.settingOut = new SettingOut(placement, first, second, accuracy, layout.tolerance());
  }

  /**
   * Looks at a job's taped distances.
   *
   * @param first the first mark of the baseline from which the marks were set out
   * @param second its second mark
   * @throws IllegalArgumentException when a distance or the baseline names a mark that is not
   *     there; the reader of the job file refuses both
   */
  public static AsMarked calculate(Job job, Placement placement, String first, String second) {
    return new AsMarkedCalculator(job, placement, first, second)
        .asMarked(Distances.of(job.field().marked(), TapeAccuracy.of(job.layout().tape())));
  }

  private AsMarked asMarked(Distances distances) {
    if (distances.good().isEmpty()) {
      return nothing(distances);
    }
    Suppositions suppositions = Suppositions.of(settingOut.network(), taped(distances.good()));
    List<Suspect> suspects = new Suspects(suppositions, distances.good()).ranked();
    List<Row> rows = rows(distances.good(), suppositions);
    Test test = test(suppositions, suspects);
    Judgement judgement =
        test.alarm() ? Judgement.of(distances.good(), suspects, first, second) : Judgement.fits();
    List<Pair> taped = distances.good().stream().map(Distances.Distance::pair).toList();
    Optional<Move> move =
        judgement.verdict() == Verdict.MARK_MOVED
            ? Optional.of(move(suspects.get(0), taped))
            : Optional.empty();
    Optional<Together> together =
        judgement.reason().equals(Optional.of(Reason.SEVERAL))
            ? new TwoMistakes(settingOut.network(), distances.good(), test.squares())
                .find(suspects)
                .map(two -> withMoves(two, taped))
            : Optional.empty();
    List<Further> further = further(judgement, suspects, suppositions, taped);
    List<Pair> again = again(judgement, suspects, rows);
    AsMarked found =
        new AsMarked(
            rows,
            distances.doubled(),
            Triangles.impossible(distances.good()),
            Optional.of(test),
            judgement.verdict(),
            judgement.reason(),
            test.alarm()
                ? suspects.subList(0, Math.min(MOST_SUSPECTS, suspects.size()))
                : List.of(),
            move,
            together,
            further,
            again,
            new GapSearch(placement, layout.tape().length(), all(distances)).gaps(),
            accuracy(distances.good(), suppositions),
            List.of(),
            workings(rows, distances.good(), suppositions, suspects, test));
    return withFindings(found, judgement);
  }

  private static List<TapedDistance> taped(List<Distances.Distance> distances) {
    return distances.stream()
        .map(
            distance ->
                new TapedDistance(
                    distance.pair().from(),
                    distance.pair().to(),
                    distance.taped(),
                    distance.deviation()))
        .toList();
  }

  private AsMarked nothing(Distances distances) {
    AsMarked found =
        new AsMarked(
            List.of(),
            distances.doubled(),
            List.of(),
            Optional.empty(),
            Verdict.NOTHING_TAPED,
            Optional.empty(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            List.of(),
            new Gaps(List.of(), List.of(), List.of(), List.of()),
            new Accuracy(Length.ZERO, Length.ZERO, Length.ZERO, Length.ZERO),
            List.of(),
            List.of());
    return withFindings(found, Judgement.fits());
  }

  /** Distances that disagree were taped all the same. */
  private static List<Pair> all(Distances distances) {
    List<Pair> all = new ArrayList<>();
    distances.good().forEach(distance -> all.add(distance.pair()));
    distances.doubled().forEach(doubled -> all.add(doubled.pair()));
    return all;
  }

  private List<Row> rows(List<Distances.Distance> distances, Suppositions suppositions) {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < distances.size(); i++) {
      Distances.Distance distance = distances.get(i);
      rows.add(
          new Row(
              distance.pair(),
              planned(distance.pair()),
              distance.taped(),
              distance.readings(),
              limit(distance, suppositions).asLength(),
              suppositions.standardised(i),
              suppositions.redundancy(i)));
    }
    return rows;
  }

  private Length planned(Pair pair) {
    return placement.mark(pair.from()).at().distanceTo(placement.mark(pair.to()).at());
  }

  private Working limit(Distances.Distance distance, Suppositions suppositions) {
    Pair pair = distance.pair();
    double places = Math.sqrt(suppositions.placeVariance(pair.from(), pair.to()));
    return Working.of(
        formulas.limit(),
        pair.name(),
        new Ratio(TestLevels.readingFactor()),
        distance.deviation(),
        new Length(places));
  }

  private static Test test(Suppositions suppositions, List<Suspect> suspects) {
    double squares = suppositions.weightedSquares();
    int distances =
        (int) suspects.stream().filter(suspect -> suspect.reading().isPresent()).count();
    double limit = TestLevels.sumLimit(distances);
    Suspect outstanding = Suspects.outstanding(suspects);
    double explainedLimit = Suspects.chanceLimit(outstanding, suspects);
    return new Test(
        squares,
        distances,
        limit,
        Chances.chiSquaredTail(squares, distances),
        suspects.size(),
        outstanding.fall(),
        explainedLimit,
        TestLevels.ALARM,
        squares > limit || outstanding.fall() > explainedLimit);
  }

  /** Two marks with each other's names need no ruler: the names are painted anew. */
  private Together withMoves(Together two, List<Pair> taped) {
    return two.kind() == Together.Kind.SWAPPED
        ? two
        : two.with(
            two.suspects().stream()
                .filter(suspect -> suspect.mark().isPresent())
                .map(suspect -> move(suspect, taped))
                .toList());
  }

  private Move move(Suspect suspect, List<Pair> taped) {
    String mark = suspect.mark().orElseThrow();
    List<String> tapedTo =
        taped.stream()
            .filter(pair -> pair.ends(mark))
            .map(pair -> pair.from().equals(mark) ? pair.to() : pair.from())
            .toList();
    return new MoveSearch(placement, first, second, layout.tape().division(), layout.tolerance())
        .of(suspect, tapedTo);
  }

  private List<Further> further(
      Judgement judgement, List<Suspect> suspects, Suppositions suppositions, List<Pair> taped) {
    if (judgement.verdict() != Verdict.UNCLEAR
        || judgement.reason().equals(Optional.of(Reason.SEVERAL))) {
      return List.of();
    }
    // A suspect mark foretells other distances; a suspect reading foretells them as planned.
    List<Suspect> tied = judgement.tied();
    Suspect leading =
        tied.stream().filter(some -> some.mark().isPresent()).findFirst().orElse(suspects.get(0));
    List<Suspect> rivals = tied.stream().filter(suspect -> !suspect.equals(leading)).toList();
    return new FurtherTapes(placement, suppositions, accuracy, layout.tape().length(), taped)
        .telling(leading, rivals);
  }

  /** Suspected readings, or with several mistakes the readings that are furthest off. */
  private static List<Pair> again(Judgement judgement, List<Suspect> suspects, List<Row> rows) {
    if (judgement.verdict() == Verdict.READING_WRONG) {
      return List.of(suspects.get(0).reading().orElseThrow());
    }
    if (judgement.reason().equals(Optional.of(Reason.SEVERAL))) {
      return rows.stream()
          .filter(Row::isBeyond)
          .sorted(
              Comparator.comparingDouble(row -> -Math.abs(row.difference().dividedBy(row.limit()))))
          .limit(MOST_AGAIN)
          .map(Row::pair)
          .toList();
    }
    return judgement.tied().stream()
        .flatMap(suspect -> suspect.reading().stream())
        .limit(MOST_AGAIN)
        .toList();
  }

  private static Accuracy accuracy(List<Distances.Distance> distances, Suppositions suppositions) {
    List<Length> readings = distances.stream().map(Distances.Distance::deviation).toList();
    List<Length> places =
        distances.stream()
            .map(Distances.Distance::pair)
            .map(pair -> Math.sqrt(suppositions.placeVariance(pair.from(), pair.to())))
            .map(Length::new)
            .toList();
    return new Accuracy(
        readings.stream().reduce(Length::min).orElseThrow(),
        readings.stream().reduce(Length::max).orElseThrow(),
        places.stream().reduce(Length::min).orElseThrow(),
        places.stream().reduce(Length::max).orElseThrow());
  }

  private List<Working> workings(
      List<Row> rows,
      List<Distances.Distance> distances,
      Suppositions suppositions,
      List<Suspect> suspects,
      Test test) {
    List<Working> workings = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      workings.add(limit(distances.get(i), suppositions));
    }
    if (test.alarm()) {
      Suspect leading = suspects.get(0);
      workings.add(
          new Working(formulas.left(), leading.name(), List.of(test.squares(), leading.fall())));
      if (suspects.size() > 1) {
        workings.add(lead(leading, suspects.get(1)));
      }
      if (leading.mark().isPresent()) {
        workings.add(
            Working.of(
                formulas.shift(),
                leading.name(),
                new Length(leading.eastMetres()),
                new Length(leading.northMetres())));
      }
    }
    return workings;
  }

  private Working lead(Suspect leading, Suspect next) {
    return new Working(
        formulas.lead(),
        leading.name(),
        List.of(
            leading.fall(),
            (double) leading.quantities(),
            next.fall(),
            (double) next.quantities()));
  }

  private static AsMarked withFindings(AsMarked found, Judgement judgement) {
    AsMarkedFindings findings = new AsMarkedFindings();
    found.move().ifPresent(findings::moved);
    if (found.verdict() == Verdict.READING_WRONG) {
      findings.misread(found.suspects().get(0), found.rows());
    }
    found.together().ifPresent(findings::together);
    found
        .reason()
        .filter(reason -> found.together().isEmpty())
        .ifPresent(
            reason -> findings.unclear(reason, judgement.tied(), found.further(), found.again()));
    findings.doubled(found.doubled());
    findings.triangles(found.triangles());
    findings.gaps(found.gaps());
    return found.with(findings.all());
  }
}
