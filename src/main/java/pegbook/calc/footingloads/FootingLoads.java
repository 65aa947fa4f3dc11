package pegbook.calc.footingloads;

import java.util.List;
import java.util.Optional;
import pegbook.figures.CombinedLoad;
import pegbook.figures.Finding;
import pegbook.figures.Result;
import pegbook.figures.SupportLoad;
import pegbook.figures.Working;
import pegbook.geometry.Cell;
import pegbook.measure.Area;
import pegbook.measure.Pressure;
import pegbook.published.Citation;

/**
 * What the supports carry.
 *
 * @param outline area inside the floor's edge
 * @param openings what of it piers with their gaps take away
 * @param shares the part of the floor that each support carries, in the order of the marks
 * @param pressures what lies on the floor
 * @param loads what each support carries at worst, in the order of the marks
 * @param basis what the design rests on, one line each
 */
public record FootingLoads(
    Area outline,
    Area openings,
    List<Share> shares,
    Pressures pressures,
    List<CombinedLoad> loads,
    List<BasisLine> basis,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public FootingLoads {
    shares = List.copyOf(shares);
    loads = List.copyOf(loads);
    basis = List.copyOf(basis);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  /** A support's part of the floor. */
  public record Share(String mark, Cell cell) {}

  /**
   * What lies on the floor.
   *
   * @param dead own weight of the floor
   * @param live load of use
   * @param snow on the ground, taken for that on the floor; absent where nobody knows it
   */
  public record Pressures(Taken dead, Taken live, Optional<Pressure> snow) {}

  /**
   * A load on the floor.
   *
   * @param value how much
   * @param given true when the job says so, false when it was assumed
   * @param source where an assumed one is from
   */
  public record Taken(Pressure value, boolean given, Citation source) {}

  /** Unfactored loads of every support, in the order of the marks. */
  public List<SupportLoad> supportLoads() {
    return loads.stream().map(CombinedLoad::parts).toList();
  }
}
