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
    Optional<Length> line) {

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
