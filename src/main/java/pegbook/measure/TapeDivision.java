package pegbook.measure;

import java.util.Arrays;
import java.util.Optional;

/** The marks on the tape that a job is measured with; lengths are set to and written in them. */
public enum TapeDivision {
  INCH(UnitSystem.IMPERIAL, "1 in", Unit.INCH, 1, 1),
  HALF_INCH(UnitSystem.IMPERIAL, "1/2 in", Unit.INCH, 1, 2),
  QUARTER_INCH(UnitSystem.IMPERIAL, "1/4 in", Unit.INCH, 1, 4),
  EIGHTH_INCH(UnitSystem.IMPERIAL, "1/8 in", Unit.INCH, 1, 8),
  SIXTEENTH_INCH(UnitSystem.IMPERIAL, "1/16 in", Unit.INCH, 1, 16),
  THIRTY_SECOND_INCH(UnitSystem.IMPERIAL, "1/32 in", Unit.INCH, 1, 32),
  /** The engineers' tape, in feet with tenths and hundredths. */
  HUNDREDTH_FOOT(UnitSystem.IMPERIAL, "1/100 ft", Unit.FOOT, 1, 100),
  MILLIMETRE(UnitSystem.METRIC, "1 mm", Unit.MILLIMETRE, 1, 1),
  FIVE_MILLIMETRES(UnitSystem.METRIC, "5 mm", Unit.MILLIMETRE, 5, 1),
  CENTIMETRE(UnitSystem.METRIC, "1 cm", Unit.MILLIMETRE, 10, 1);

  private final UnitSystem system;
  private final String text;
  private final Unit unit;
  private final int units;
  private final int parts;

  TapeDivision(UnitSystem system, String text, Unit unit, int units, int parts) {
    this.system = system;
    this.text = text;
    this.unit = unit;
    this.units = units;
    this.parts = parts;
  }

  /** As a job file writes it, for example {@code 1/16 in}. */
  public String text() {
    return text;
  }

  /** In which units this tape is numbered. */
  public UnitSystem system() {
    return system;
  }

  /** Distance between two neighbouring marks. */
  public Length step() {
    return new Length(unit.toSi(units) / parts);
  }

  /** The nearest mark; halfway goes up, as {@link Rounding#NEAREST} says. */
  public Length nearest(Length length) {
    return length.setTo(step(), Rounding.NEAREST);
  }

  /** The division with this distance between marks, within a thousandth of it. */
  public static Optional<TapeDivision> ofStep(Length step) {
    return Arrays.stream(values())
        .filter(division -> Math.abs(step.dividedBy(division.step()) - 1) < 1e-3)
        .findFirst();
  }

  /** Marks to the inch or to the foot; 1 on a metric tape. */
  int parts() {
    return parts;
  }
}
