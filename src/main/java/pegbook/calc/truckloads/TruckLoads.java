package pegbook.calc.truckloads;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.Need;
import pegbook.figures.Result;
import pegbook.figures.Working;
import pegbook.measure.Duration;
import pegbook.measure.Volume;

/**
 * The loads of ready-mixed concrete; none where the crew mixes.
 *
 * @param loads one for each day of pours
 */
public record TruckLoads(
    List<Load> loads, List<Finding> findings, List<Working> workings, List<Need> needs)
    implements Result {
  public TruckLoads {
    loads = List.copyOf(loads);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
    needs = List.copyOf(needs);
  }

  /** What all loads bring. */
  public Volume order() {
    return loads.stream().map(Load::order).reduce(Volume.ZERO, Volume::plus);
  }

  /**
   * What a truck brings on a day.
   *
   * @param day number of the work day
   * @param date where the job names its first day
   * @param marks holes that it fills, in the order of the pours
   * @param poured what they take
   * @param order the same set up to the plant's step, and to its least load where that is known
   * @param most how long the crew needs to empty it, all going badly
   */
  public record Load(
      int day,
      Optional<LocalDate> date,
      List<String> marks,
      Volume poured,
      Volume order,
      Duration most) {
    public Load {
      marks = List.copyOf(marks);
    }
  }
}
