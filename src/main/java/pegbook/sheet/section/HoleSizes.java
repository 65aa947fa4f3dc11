package pegbook.sheet.section;

import java.util.Optional;
import pegbook.measure.Length;

/**
 * The sizes of a hole as its section shows them.
 *
 * @param diameter dug
 * @param depth from the ground to the underside of the concrete
 * @param gravel under the concrete; zero is none
 * @param top of the concrete above the ground
 * @param tube inside diameter of the form, where there is one
 * @param tubeFromBottom true when the tube stands on the bottom and soil is filled in round it
 * @param frost the authority's frost depth below the ground, where it is known and not zero
 * @param sleeve against frost, from the ground down; zero is none
 * @param line height of the datum line above the ground, where it is known
 * @param wide what is wider than the shaft
 */
public record HoleSizes(
    Length diameter,
    Length depth,
    Length gravel,
    Length top,
    Optional<Length> tube,
    boolean tubeFromBottom,
    Optional<Length> frost,
    Length sleeve,
    Optional<Length> line,
    Wide wide) {

  /**
   * What is wider than the shaft; zero is none.
   *
   * @param bell its diameter
   * @param flare height over which the hole widens to it
   * @param bottom height of bell or pad, from the underside of the concrete up
   * @param pad true where the bottom is a pad as wide as the hole
   * @param cap width of the cap
   * @param thickness of the cap, from the top down
   */
  public record Wide(
      Length bell, Length flare, Length bottom, boolean pad, Length cap, Length thickness) {
    /** A shaft and nothing else. */
    public static final Wide NONE =
        new Wide(Length.ZERO, Length.ZERO, Length.ZERO, false, Length.ZERO, Length.ZERO);

    boolean isBelled() {
      return bell.isMoreThan(Length.ZERO);
    }

    boolean isCapped() {
      return cap.isMoreThan(Length.ZERO);
    }
  }

  /** Width of the bare bottom. */
  Length bottomWidth() {
    return diameter.max(wide.bell());
  }

  /** Width of all that is drawn. */
  Length widest() {
    return bottomWidth().max(wide.cap()).max(shaft());
  }

  Length dug() {
    return depth.plus(gravel);
  }

  /** Height of the highest thing shown above the ground. */
  Length above() {
    return top.max(line.orElse(Length.ZERO)).max(Length.ZERO);
  }

  /** Width of the concrete above the ground. */
  Length shaft() {
    return tube.orElse(diameter);
  }
}
