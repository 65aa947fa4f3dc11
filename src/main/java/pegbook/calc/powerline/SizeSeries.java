package pegbook.calc.powerline;

import java.util.List;
import java.util.Optional;
import pegbook.figures.Working;
import pegbook.job.Power;
import pegbook.measure.Current;
import pegbook.measure.Length;
import pegbook.measure.Ratio;

/** The sizes of conductors of one system, and what its tables say of them. */
interface SizeSeries {
  /**
   * A load at the end of a line.
   *
   * @param oneWay length of a conductor
   * @param ways 2 where the current goes and returns, 1 between three conductors loaded alike
   */
  record Load(Length oneWay, Current current, Ratio powerFactor, int ways) {}

  /** Names of the sizes, the smallest first. */
  List<String> names();

  /** How the job file writes a size. */
  String written(int size);

  /** Amperes that a size may carry; nothing where it is not made, or has no value. */
  Optional<Double> amperes(int size, Power.Metal metal);

  /** Amperes of the largest breaker over a small size, where there is such a limit. */
  Optional<Double> breakerLimit(int size, Power.Metal metal);

  /** Voltage lost in a size, where the tables have it in this metal and make. */
  Optional<Working> drop(int size, Power.Metal metal, Power.Strands strands, Load load);

  /** Rating of the terminals by which ampacities are read, °C; 0: the table has only one. */
  int celsius();
}
