package pegbook.job;

import java.util.Locale;
import java.util.Optional;
import pegbook.measure.Length;
import pegbook.measure.Pressure;

/**
 * What a floor's frame is made of.
 *
 * @param timber what the timber bears
 * @param wet stands outdoors: it is wet at times
 * @param joistSpacing from joist to joist, centre to centre, at most
 * @param along two marks to whose line the joists are parallel; absent: the packet chooses
 * @param beamPlies members that make up a beam; absent: two, or three where two are not enough
 * @param boards the floor's boards
 */
public record Frame(
    Timber timber,
    boolean wet,
    Length joistSpacing,
    Optional<Along> along,
    Optional<Integer> beamPlies,
    Boards boards) {

  /** The line between two marks. */
  public record Along(String first, String second) {}

  /** What the timber bears. */
  public sealed interface Timber {
    /**
     * By a published table.
     *
     * @param incised cut all over for the treatment; absent: as the species usually is
     */
    record Graded(Species species, Grade grade, Optional<Boolean> incised) implements Timber {}

    /**
     * As someone says: stresses allowed under the loads as they are, with every factor of the local
     * code in them.
     *
     * @param name of the class
     * @param from whose word it is
     */
    record Given(
        String name,
        String from,
        Pressure bending,
        Pressure shear,
        Pressure bearing,
        Pressure compression,
        Pressure stiffness)
        implements Timber {}
  }

  /** Species, or groups sold as one. */
  public enum Species {
    SOUTHERN_PINE(false),
    DOUGLAS_FIR_LARCH(true),
    HEM_FIR(true),
    SPRUCE_PINE_FIR(true),
    REDWOOD_OR_CEDAR(false);

    private final boolean incised;

    Species(boolean incised) {
      this.incised = incised;
    }

    /** Whether it takes a treatment only where it is incised: common practice. */
    public boolean isIncised() {
      return incised;
    }

    /** As the tables name it: lower case, hyphens. */
    public String id() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** Grades. */
  public enum Grade {
    SELECT_STRUCTURAL,
    NO_1,
    NO_2;

    /** As the tables name it: lower case, hyphens. */
    public String id() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /**
   * The floor's boards.
   *
   * @param width as it measures
   * @param thickness as it measures
   * @param gap between two
   * @param sold length of one
   * @param diagonal at 45 degrees to the joists, else square to them
   */
  public record Boards(Length width, Length thickness, Length gap, Length sold, boolean diagonal) {}
}
