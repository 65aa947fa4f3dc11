package pegbook.calc.depthtargets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.figures.DatumLine;
import pegbook.figures.Hole;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;

/** Sets the datum line and reads depths from it. */
final class DatumLines {
  private DatumLines() {}

  /**
   * Height of the line above the benchmark: clear of the highest known ground by 6 in or 150 mm
   * (common practice), set up to a whole inch or 10 mm.
   */
  static Optional<Length> height(Job job, Placement placement, List<Working> workings) {
    boolean imperial = job.heading().units() == UnitSystem.IMPERIAL;
    Length step = imperial ? Length.ofInches(1) : Length.ofMillimetres(10);
    return highest(placement)
        .map(
            mark -> {
              Working working =
                  Working.of(
                      DepthTargetsFormulas.in(job.heading().units()).datum(),
                      mark.id(),
                      mark.level().orElseThrow(),
                      clearance(job.heading().units()),
                      step);
              workings.add(working);
              return working.asLength();
            });
  }

  private static Length clearance(UnitSystem units) {
    return units == UnitSystem.IMPERIAL ? Length.ofInches(6) : Length.ofMillimetres(150);
  }

  private static Optional<PlacedMark> highest(Placement placement) {
    return placement.marks().stream()
        .filter(mark -> mark.level().isPresent())
        .max(Comparator.comparing(mark -> mark.level().orElseThrow()));
  }

  /** From the line down to the underside of the concrete. */
  static Working underside(Job job, String mark, Length line, Length level, DepthChoice choice) {
    return Working.of(
        DepthTargetsFormulas.in(job.heading().units()).datumDepth(),
        mark,
        line,
        level,
        choice.target(),
        job.layout().tape().division());
  }

  /** The line with a reading for every mark whose level is known. */
  static Optional<DatumLine> of(Optional<Length> line, Placement placement, List<Hole> holes) {
    return line.map(
        height -> {
          PlacedMark highest = highest(placement).orElseThrow();
          List<DatumLine.Reading> readings = new ArrayList<>();
          holes.forEach(hole -> reading(height, hole).ifPresent(readings::add));
          Length clearance = height.minus(highest.level().orElseThrow());
          return new DatumLine(height, highest.id(), clearance, readings);
        });
  }

  private static Optional<DatumLine.Reading> reading(Length line, Hole hole) {
    return hole.level()
        .flatMap(
            level ->
                hole.datumToUnderside()
                    .map(
                        underside ->
                            new DatumLine.Reading(
                                hole.mark(),
                                level,
                                line.minus(level),
                                underside,
                                hole.datumToBottom().orElseThrow(),
                                line.minus(level).minus(hole.top()),
                                level.plus(hole.top()))));
  }
}
