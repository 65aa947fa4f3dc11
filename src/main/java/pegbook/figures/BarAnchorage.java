package pegbook.figures;

import pegbook.job.Stock.Coating;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.UnitSystem;

/**
 * How far the bars of a job must reach into its concrete to hold, and how far two must lie beside
 * each other: the factors that the rule gives its formulas ({@link AnchorageFormulas}).
 *
 * @param units of the packet
 * @param concrete strength of the concrete
 * @param yield strength of the steel
 * @param coating of the bars
 */
public record BarAnchorage(UnitSystem units, Pressure concrete, Pressure yield, Coating coating) {
  /** Up to #6, 19 mm; a bar of 20 mm takes the longer rows. */
  private static final Length SMALL_BAR = Length.ofMillimetres(19.5);

  /** Grades 60, 80 and 100 (420, 550, 690 MPa), whichever unit rounds them up. */
  private static final Pressure GRADE_60 = Pressure.ofMegapascals(421);

  private static final Pressure GRADE_80 = Pressure.ofMegapascals(552);

  /** From here on the concrete's own factor of a hook is one. */
  private static final double HOOK_CONCRETE_PSI = 6000;

  private static final double HOOK_CONCRETE_MPA = 42;

  /** How much concrete lies between and over bars. */
  public enum Room {
    /** A bar's width over it, and one between bars in rings, or two without. */
    APART,
    /** Less. */
    CLOSE
  }

  /** Where a bar lies when the concrete is poured. */
  public enum Place {
    /** Upright, or with no more than 12 in (300 mm) of fresh concrete under it. */
    UPRIGHT_OR_LOW,
    /** Level, with more than that under it: water and air gather there. */
    TOP
  }

  /** Development length of a straight bar in tension, by the table. */
  public Working development(String subject, Length bar, Room room, Place place) {
    return simple(new AnchorageFormulas(units).development(), subject, bar, room, place);
  }

  /** Lap in tension, class B: all bars are lapped at one place. */
  public Working lap(String subject, Length bar, Room room, Place place) {
    return simple(new AnchorageFormulas(units).lap(), subject, bar, room, place);
  }

  private Working simple(Formula formula, String subject, Length bar, Room room, Place place) {
    return Working.of(
        formula,
        subject,
        new Count(imperial() && room == Room.CLOSE ? 3 : 1),
        new Count(divisor(bar, room)),
        yield,
        concrete,
        new Count(placeFactor(place)),
        new Count(coatingFactor()),
        new Count(gradeFactor()),
        bar);
  }

  /**
   * Development length of a straight bar in tension with what lies round it.
   *
   * @param round from the bar's middle to the nearest surface, or half-way to the next bar
   */
  public Working closely(String subject, Length bar, Length round, Place place) {
    return Working.of(
        new AnchorageFormulas(units).closely(),
        subject,
        round,
        yield,
        concrete,
        new Count(placeFactor(place)),
        new Count(coatingFactor()),
        new Count(isSmall(bar) ? 0.8 : 1),
        new Count(gradeFactor()),
        bar);
  }

  /**
   * Development length of a standard hook.
   *
   * @param fromBarToBar between the middles of hooked bars
   * @param besideHook concrete beside it, square to the plane of its bend
   */
  public Working hook(String subject, Length bar, Length fromBarToBar, Length besideHook) {
    return Working.of(
        new AnchorageFormulas(units).hook(),
        subject,
        yield,
        concrete,
        new Count(coating == Coating.EPOXY ? 1.2 : 1),
        new Count(fromBarToBar.isLessThan(bar.times(6)) ? 1.6 : 1),
        new Count(besideHook.isLessThan(bar.times(6)) ? 1.25 : 1),
        new Count(hookConcreteFactor()),
        bar);
  }

  private boolean imperial() {
    return units == UnitSystem.IMPERIAL;
  }

  private static boolean isSmall(Length bar) {
    return bar.isLessThan(SMALL_BAR);
  }

  private double divisor(Length bar, Room room) {
    if (imperial()) {
      return (isSmall(bar) ? 25 : 20) * (room == Room.CLOSE ? 2 : 1);
    }
    if (room == Room.CLOSE) {
      return isSmall(bar) ? 1.4 : 1.1;
    }
    return isSmall(bar) ? 2.1 : 1.7;
  }

  private static double placeFactor(Place place) {
    return place == Place.TOP ? 1.3 : 1;
  }

  /** Epoxy by its greater factor: nobody measures six bar widths between coated bars. */
  private double coatingFactor() {
    return coating == Coating.EPOXY ? 1.5 : 1;
  }

  /** A grade between those of the table takes the factor of the next one up. */
  private double gradeFactor() {
    if (!yield.isMoreThan(GRADE_60)) {
      return 1;
    }
    return yield.isMoreThan(GRADE_80) ? 1.3 : 1.15;
  }

  private double hookConcreteFactor() {
    double factor =
        imperial()
            ? (concrete.psi() < HOOK_CONCRETE_PSI ? concrete.psi() / 15_000 + 0.6 : 1)
            : (concrete.megapascals() < HOOK_CONCRETE_MPA ? concrete.megapascals() / 105 + 0.6 : 1);
    return StrictMath.ceil(factor * 1000) / 1000;
  }
}
