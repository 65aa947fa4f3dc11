package pegbook.sheet.section;

import java.util.Optional;

/**
 * The words of a section, finished.
 *
 * @param diameter such as "hole 18″"
 * @param depth of the concrete's underside
 * @param dug depth to the bare bottom
 * @param gravel its thickness, with its name
 * @param top height of the concrete above the ground
 * @param tube its diameter, with its name
 * @param concrete name of the concrete
 * @param backfill name of the soil filled in round a tube
 * @param frost the frost depth
 * @param sleeve against frost, with its length
 * @param line name of the datum line
 * @param lineToUnderside from the line to the underside, where one number holds
 * @param lineToBottom from the line to the bare bottom, where one number holds
 * @param wide of bell, pad and cap
 */
public record HoleWords(
    String diameter,
    String depth,
    String dug,
    String gravel,
    String top,
    String tube,
    String concrete,
    String backfill,
    String frost,
    String sleeve,
    String line,
    Optional<String> lineToUnderside,
    Optional<String> lineToBottom,
    Wide wide) {
  /**
   * Of what is wider than the shaft; only those that are drawn are asked for.
   *
   * @param bell its diameter, for a line across
   * @param begins depth at which the bell or the pad begins
   * @param flare height of the bell's flare
   * @param edge height of the upright edge under it; empty where it is sharp
   * @param pad its thickness
   * @param cap its width, for a line across
   * @param thickness of the cap
   */
  public record Wide(
      String bell,
      String begins,
      String flare,
      String edge,
      String pad,
      String cap,
      String thickness) {}
}
