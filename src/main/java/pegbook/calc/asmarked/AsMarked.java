package pegbook.calc.asmarked;

import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.Result;
import pegbook.figures.Working;
import pegbook.measure.Length;

/**
 * What the distances taped between painted marks say.
 *
 * @param rows the distances, in the order of the job; doubled readings that agree are one row
 * @param doubled readings of one distance that disagree; they take no part
 * @param triangles of three distances that cannot meet
 * @param test whether anything is wrong; absent when nothing was taped
 * @param verdict what is wrong
 * @param reason why nothing is named, where something is wrong and nothing is named
 * @param suspects the suppositions that explain most, best first
 * @param move how to move the mark that is named, where one is
 * @param together two mistakes that explain the distances, where one does not and both are told
 * @param further distances that would tell the suspects apart
 * @param again distances to tape once more
 * @param gaps marks that too few tapes reach, and the distances that are missing
 * @param accuracy what the standard deviations rest on
 */
public record AsMarked(
    List<Row> rows,
    List<Doubled> doubled,
    List<Triangle> triangles,
    Optional<Test> test,
    Verdict verdict,
    Optional<Reason> reason,
    List<Suspect> suspects,
    Optional<Move> move,
    Optional<Together> together,
    List<Further> further,
    List<Pair> again,
    Gaps gaps,
    Accuracy accuracy,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public AsMarked {
    rows = List.copyOf(rows);
    doubled = List.copyOf(doubled);
    triangles = List.copyOf(triangles);
    suspects = List.copyOf(suspects);
    further = List.copyOf(further);
    again = List.copyOf(again);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  /** True when the job has distances to look at. */
  public boolean isTaped() {
    return !rows.isEmpty() || !doubled.isEmpty();
  }

  /** By how much a suspect must be ahead of all others to be named. */
  public double leadNeeded() {
    return TestLevels.lead();
  }

  /** How many times as likely it must make the readings as the next suspect does. */
  public double oddsNeeded() {
    return TestLevels.ODDS;
  }

  /** The same with what the reader must act on. */
  AsMarked with(List<Finding> more) {
    return new AsMarked(
        rows, doubled, triangles, test, verdict, reason, suspects, move, together, further, again,
        gaps, accuracy, more, workings);
  }

  /** What is wrong. */
  public enum Verdict {
    /** Nothing was taped. */
    NOTHING_TAPED,
    /** The distances fit the plan as well as such tapes can. */
    FITS,
    /** One mark is not where the plan has it. */
    MARK_MOVED,
    /** One reading is wrong. */
    READING_WRONG,
    /** Something is wrong, and the distances do not tell what. */
    UNCLEAR
  }

  /** Why nothing is named. */
  public enum Reason {
    /** Every tape ends at the baseline: the very distances by which the marks were set. */
    BASELINE_ONLY,
    /** At most one distance more than the figure needs. */
    ONE_REDUNDANCY,
    /** Only two tapes reach the mark suspected; they give a place and do not check it. */
    TWO_TAPES,
    /** Two suppositions explain the distances about as well. */
    EQUAL,
    /** No single supposition explains the distances. */
    SEVERAL
  }

  /** Two marks. */
  public record Pair(String from, String to) {
    /** As printed: both names with a dash between them. */
    public String name() {
      return from + "–" + to;
    }

    /** True when it ends at a mark. */
    public boolean ends(String mark) {
      return from.equals(mark) || to.equals(mark);
    }
  }

  /**
   * One distance.
   *
   * @param pair its marks
   * @param planned as the plan has it
   * @param taped as it was read; the mean of several readings that agree
   * @param readings how many
   * @param limit of the difference, either way: nearly all good readings stay within it
   * @param standardised residual over its own deviation
   * @param redundancy how much of an error in this reading alone the others show, 0 to 1
   */
  public record Row(
      Pair pair,
      Length planned,
      Length taped,
      int readings,
      Length limit,
      double standardised,
      double redundancy) {
    /** Taped less planned. */
    public Length difference() {
      return taped.minus(planned);
    }

    /** True when the difference is larger than its limit. */
    public boolean isBeyond() {
      return difference().abs().isMoreThan(limit);
    }
  }

  /** Readings of one distance that disagree by more than the tape allows. */
  public record Doubled(Pair pair, Length least, Length most, Length limit) {}

  /**
   * Three distances that cannot meet.
   *
   * @param longest the longest of the three
   * @param corner the third mark
   * @param taped reading of the longest
   * @param others both other readings, end to end
   */
  public record Triangle(Pair longest, String corner, Length taped, Length others) {
    /** By how much the longest is too long, or the others together too short. */
    public Length gap() {
      return taped.minus(others);
    }
  }

  /**
   * Whether anything is wrong.
   *
   * @param squares weighted sum of squares of all differences
   * @param distances its degrees of freedom
   * @param limit that it stays under when nothing is wrong, but for the level
   * @param chance of so large a sum when nothing is wrong
   * @param suppositions how many things might be wrong
   * @param explained what the supposition explains that stands out most
   * @param explainedLimit what the best of so many would explain by chance, but for the level
   * @param level chance of an alarm when nothing is wrong, all tests together
   * @param alarm true when something is wrong
   */
  public record Test(
      double squares,
      int distances,
      double limit,
      double chance,
      int suppositions,
      double explained,
      double explainedLimit,
      double level,
      boolean alarm) {}

  /**
   * One supposition.
   *
   * @param mark the mark supposed to be elsewhere, or none
   * @param reading the reading supposed wrong, or none
   * @param quantities how many quantities the supposition may choose: 1, or 2 for a mark
   * @param eastMetres of a mark: how far east of the plan it would be
   * @param northMetres how far north
   * @param size how far the mark would be off, or how much too long the reading would be
   * @param deviation standard deviation of {@code size}, for a mark in its worst direction
   * @param fall by how much it lowers the weighted sum of squares
   * @param left what is left of the sum
   * @param leftLimit what may be left when the supposition is the whole truth
   * @param lead by how much the best supposition is ahead of this one
   */
  public record Suspect(
      Optional<String> mark,
      Optional<Pair> reading,
      int quantities,
      double eastMetres,
      double northMetres,
      Length size,
      Length deviation,
      double fall,
      double left,
      double leftLimit,
      double lead) {
    /** True when nothing else need be wrong. */
    public boolean isEnough() {
      return left <= leftLimit;
    }

    /** The mark's name or the reading's marks. */
    public String name() {
      return mark.or(() -> reading.map(Pair::name)).orElseThrow();
    }
  }

  /**
   * Two mistakes that explain the distances together.
   *
   * @param kind what they are
   * @param suspects both, each with the other granted
   * @param left what is left of the sum of squares
   * @param leftLimit what may be left when they are the whole truth
   * @param lead by how much they are ahead of every other two
   * @param moves how to move the marks among them
   */
  public record Together(
      Kind kind,
      List<Suspect> suspects,
      double left,
      double leftLimit,
      double lead,
      List<Move> moves) {
    /** What they are. */
    public enum Kind {
      /** Two marks have each other's names. */
      SWAPPED,
      /** Two marks, two readings, or one of each. */
      TWO
    }

    public Together {
      suspects = List.copyOf(suspects);
      moves = List.copyOf(moves);
    }

    Together(Kind kind, List<Suspect> suspects, double left, double leftLimit, double lead) {
      this(kind, suspects, left, leftLimit, lead, List.of());
    }

    /** The same with the ways to move its marks. */
    Together with(List<Move> ways) {
      return new Together(kind, suspects, left, leftLimit, lead, ways);
    }
  }

  /**
   * How to move a mark to where the plan has it.
   *
   * @param mark its name
   * @param distance how far it is off
   * @param deviation standard deviation of that, in its worst direction
   * @param tolerance radius a mark may be off
   * @param steps two moves, one after the other; a move of nothing is left out
   * @param tapes what the tapes read when it is right
   */
  public record Move(
      String mark,
      Length distance,
      Length deviation,
      Length tolerance,
      List<Step> steps,
      List<NewTape> tapes) {
    public Move {
      steps = List.copyOf(steps);
      tapes = List.copyOf(tapes);
    }

    /** True when the mark is off by more than the job allows. */
    public boolean isBeyond() {
      return distance.isMoreThan(tolerance);
    }
  }

  /** Which way to move. */
  public enum Way {
    /** Toward the first mark named. */
    TOWARD,
    /** Away from the first mark named. */
    AWAY,
    /** Toward the line of both marks. */
    TO_LINE,
    /** Away from the line of both marks. */
    FROM_LINE,
    /** In the direction from the first mark to the second. */
    ALONG,
    /** To the left, as one looks to the first mark. */
    LEFT,
    /** To the right, as one looks to the first mark. */
    RIGHT
  }

  /**
   * One move.
   *
   * @param amount how far, set to the tape's division
   * @param way which way
   * @param first the mark the way is named by
   * @param second the second mark, where it takes two; otherwise the first again
   */
  public record Step(Length amount, Way way, String first, String second) {}

  /** What the tape from a mark reads, set to the division. */
  public record NewTape(String from, Length tape) {}

  /**
   * A distance that would tell.
   *
   * @param pair its marks
   * @param expected its reading if the leading suspect is the culprit, set to the division
   * @param otherwise its reading if not, set to the division
   */
  public record Further(Pair pair, Length expected, Length otherwise) {}

  /**
   * What was not taped.
   *
   * @param never marks that no tape reaches
   * @param once marks that only one tape reaches
   * @param twice marks that only two tapes reach: they give a place and do not check it
   * @param missing distances that would bring every mark to three tapes
   */
  public record Gaps(
      List<String> never, List<String> once, List<String> twice, List<Pair> missing) {
    public Gaps {
      never = List.copyOf(never);
      once = List.copyOf(once);
      twice = List.copyOf(twice);
      missing = List.copyOf(missing);
    }
  }

  /**
   * What the standard deviations rest on.
   *
   * @param least smallest standard deviation of a reading
   * @param most largest
   * @param leastPlace smallest standard deviation of a taped distance as its marks were set out
   * @param mostPlace largest
   */
  public record Accuracy(Length least, Length most, Length leastPlace, Length mostPlace) {}
}
