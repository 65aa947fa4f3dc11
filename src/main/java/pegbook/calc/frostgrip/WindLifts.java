package pegbook.calc.frostgrip;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.frostgrip.FrostGrip.Footing;
import pegbook.calc.frostgrip.FrostGrip.WindLift;
import pegbook.figures.CombinedLoad;
import pegbook.figures.MarkRuns;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.job.Pier;
import pegbook.job.Wind;
import pegbook.measure.Area;
import pegbook.measure.Force;
import pegbook.measure.Mass;

/**
 * What wind lifts: a roof over the floor, shared out to the supports as the floor is, and what
 * stands on piers.
 */
record WindLifts(Job job, List<CombinedLoad> loads, FrostGripFormulas formulas) {

  /** A footing that the wind reaches, and the step by which its force was come by. */
  private record Blown(String mark, Force up, Force dead, Force hold, Optional<Working> working) {}

  /** What makes footings alike, in whole newtons. */
  private record Alike(long up, long dead, long hold) {}

  List<WindLift> of(List<Footing> footings, List<Working> workings) {
    Map<Alike, List<Blown>> groups = new LinkedHashMap<>();
    for (Footing footing : footings) {
      blown(footing)
          .ifPresent(
              blown ->
                  groups
                      .computeIfAbsent(
                          new Alike(
                              Math.round(blown.up().newtons()),
                              Math.round(blown.dead().newtons()),
                              Math.round(blown.hold().newtons())),
                          key -> new ArrayList<>())
                      .add(blown));
    }
    List<WindLift> lifts = new ArrayList<>();
    for (List<Blown> group : groups.values()) {
      String subject = MarkRuns.brief(group.stream().map(Blown::mark).toList());
      Blown first = group.get(0);
      first
          .working()
          .ifPresent(
              working -> workings.add(new Working(working.formula(), subject, working.inputs())));
      Working anchor = Working.of(formulas.anchor(), subject, first.up(), first.dead());
      Working net = Working.of(formulas.net(), subject, first.up(), first.hold());
      workings.add(anchor);
      workings.add(net);
      group.forEach(
          blown ->
              lifts.add(
                  new WindLift(
                      blown.mark(), blown.up(), blown.hold(), anchor.asForce(), net.asForce())));
    }
    return lifts;
  }

  private Optional<Blown> blown(Footing footing) {
    Optional<Pier> pier =
        job.piers().stream().filter(one -> one.id().equals(footing.mark())).findFirst();
    if (pier.isPresent()) {
      Force dead = new Force(pier.get().instrument().map(Mass::kilograms).orElse(0.0) * 9.80665);
      return pier.get()
          .uplift()
          .map(up -> new Blown(footing.mark(), up, dead, footing.hold(), Optional.empty()));
    }
    return job.wind().flatMap(wind -> roof(wind, footing));
  }

  private Optional<Blown> roof(Wind wind, Footing footing) {
    Area floor = new Area(loads.stream().mapToDouble(load -> area(load).squareMetres()).sum());
    return loads.stream()
        .filter(load -> load.mark().equals(footing.mark()))
        .filter(load -> area(load).isMoreThan(Area.ZERO))
        .findFirst()
        .map(
            load -> {
              Working up =
                  Working.of(
                      formulas.windUp(),
                      footing.mark(),
                      wind.uplift(),
                      wind.area().orElse(floor),
                      area(load),
                      floor);
              return new Blown(
                  footing.mark(),
                  up.asForce(),
                  load.parts().dead(),
                  footing.hold(),
                  Optional.of(up));
            });
  }

  private static Area area(CombinedLoad load) {
    return load.parts().area();
  }
}
