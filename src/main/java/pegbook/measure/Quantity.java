package pegbook.measure;

/** A value with a unit: what a working takes and gives. */
public interface Quantity {
  /**
   * The value in the coherent SI unit of its kind (metre, kilogram, newton, pascal, radian, one).
   */
  double si();
}
