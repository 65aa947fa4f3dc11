package pegbook.calc.workestimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.figures.AlikeHoles;
import pegbook.figures.DigWork;
import pegbook.figures.DugSoFar;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;

/**
 * What digging is left once some holes were dug, or begun.
 *
 * @param digging every hole as it was planned
 * @param soFar how far some of them were dug
 */
public record LeftToDig(List<DigWork> digging, List<DugSoFar> soFar) {
  public LeftToDig {
    digging = List.copyOf(digging);
    soFar = List.copyOf(soFar);
  }

  private Optional<DugSoFar> find(Hole hole) {
    return soFar.stream().filter(one -> one.mark().equals(hole.mark())).findFirst();
  }

  boolean isDug(Hole hole) {
    return find(hole).filter(DugSoFar::isDug).isPresent();
  }

  /** How far a hole was begun; zero where nobody wrote anything down. */
  Length from(Hole hole) {
    return find(hole).flatMap(DugSoFar::goesOnFrom).orElse(Length.ZERO);
  }

  boolean isBegun(Hole hole) {
    return find(hole).filter(one -> !one.isDug()).isPresent();
  }

  /** Holes at which something is left to dig, those that are alike together. */
  List<AlikeHoles> kinds() {
    List<Hole> left = digging.stream().map(DigWork::hole).filter(hole -> !isDug(hole)).toList();
    return AlikeHoles.of(left, hole -> isBegun(hole) ? hole.mark() : "");
  }

  /** Soil that is still to be carted, hole by hole; the workings of its parts are added to some. */
  List<DigWork> carting(UnitSystem units, List<Working> workings) {
    List<DigWork> left = new ArrayList<>();
    for (DigWork work : digging) {
      if (isBegun(work.hole())) {
        Working loose =
            Working.of(
                WorkEstimateFormulas.in(units).restVolume(),
                work.hole().mark(),
                work.loose(),
                work.hole().dug(),
                from(work.hole()));
        workings.add(loose);
        left.add(new DigWork(work.hole(), loose.asVolume(), work.tools(), work.haul()));
      } else if (!isDug(work.hole())) {
        left.add(work);
      }
    }
    return left;
  }
}
