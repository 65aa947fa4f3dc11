package pegbook.calc.safepegs;

import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.Need;
import pegbook.figures.Result;
import pegbook.figures.SafePeg;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.geometry.Compass;
import pegbook.measure.Angle;
import pegbook.measure.Length;

/**
 * Pegs outside the diggings, and how they find each mark again.
 *
 * @param pegs those that are taped from first; empty where no place was found
 * @param underFloor those that stand where the floor comes
 * @param allSeen true when three pegs or more see every mark
 * @param finds one for each mark that two pegs see, in the order of the marks
 * @param weakest the mark that is found again least well, where there is any
 * @param strings stretched over the marks
 * @param crossings one for each mark over which two strings cross well
 * @param paths strips of cart traffic
 * @param rules what pegs keep clear of
 */
public record SafePegs(
    List<Peg> pegs,
    List<String> underFloor,
    boolean allSeen,
    List<Find> finds,
    Optional<Spread> weakest,
    List<PegString> strings,
    List<Crossing> crossings,
    List<CartPath> paths,
    PegRules rules,
    List<Finding> findings,
    List<Working> workings,
    List<Need> needs,
    List<Task> tasks)
    implements Result {
  public SafePegs {
    pegs = List.copyOf(pegs);
    underFloor = List.copyOf(underFloor);
    finds = List.copyOf(finds);
    strings = List.copyOf(strings);
    crossings = List.copyOf(crossings);
    paths = List.copyOf(paths);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
    needs = List.copyOf(needs);
    tasks = List.copyOf(tasks);
  }

  /**
   * A peg and how it is set.
   *
   * @param peg the peg
   * @param setting how
   * @param check a further distance to a mark
   */
  public record Peg(SafePeg peg, Setting setting, Optional<Tape> check) {}

  /** How a peg is set while the marks are there. */
  public sealed interface Setting {
    /**
     * By two tapes.
     *
     * @param left true when it lies to the left, standing on the first mark and looking to the
     *     second
     * @param side the wind towards which that side lies
     */
    record Swing(Tape first, Tape second, boolean left, Compass side) implements Setting {}

    /** On the line from one mark or peg over a mark, drawn out by a distance. */
    record InLine(String from, Tape past) implements Setting {}

    /** Where two such lines cross. */
    record Meeting(InLine one, InLine other) implements Setting {}
  }

  /** A distance to a named mark or from a named peg, set to the tape's division. */
  public record Tape(String name, Length length) {}

  /**
   * How a mark is found again.
   *
   * @param mark the mark
   * @param first tape from a peg
   * @param second tape from another
   * @param left on which side it lies, standing on the first peg and looking to the second
   * @param side the wind towards which that side lies
   * @param crossing angle between the tapes
   * @param weak true when they cross outside the limits
   * @param check tape from a third peg
   */
  public record Find(
      String mark,
      Tape first,
      Tape second,
      boolean left,
      Compass side,
      Angle crossing,
      boolean weak,
      Optional<Tape> check) {}

  /** How well a mark is found again: root of the variance of its place. */
  public record Spread(String mark, Length length) {}

  /**
   * A string between two pegs.
   *
   * @param first the peg from which distances are counted
   * @param second the other
   * @param length from peg to peg
   * @param over the marks under it, with their distances from the first peg
   */
  public record PegString(String first, String second, Length length, List<Tape> over) {
    public PegString {
      over = List.copyOf(over);
    }
  }

  /** Two strings, named by their places in the list, that cross over a mark. */
  public record Crossing(String mark, int one, int other, Angle angle) {}

  /** The peg with a name; without one: {@link IllegalArgumentException}. */
  public SafePeg peg(String id) {
    return pegs.stream()
        .map(Peg::peg)
        .filter(peg -> peg.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no peg " + id));
  }
}
