package pegbook.calc.asdug;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.asdug.AsDug.Row;
import pegbook.calc.asdug.DugChecks.Between;
import pegbook.calc.asdug.DugChecks.OffCentre;
import pegbook.calc.asdug.DugChecks.Room;
import pegbook.figures.Argument;
import pegbook.figures.Bottom;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.job.Job;
import pegbook.job.Soil;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.published.Citation;
import pegbook.published.SoilBearing;

/** What holes off their marks, of another width or in other soil ask for. */
final class DugChecksFindings {
  /** Thinner walls between open holes fall in: common practice, no source. */
  private static final Length THIN_WALL = Length.ofMillimetres(300);

  private final Job job;
  private final AsDug asDug;
  private final List<Bottom> bottoms;
  private final List<Finding> findings = new ArrayList<>();

  DugChecksFindings(Job job, AsDug asDug, List<Bottom> bottoms) {
    this.job = job;
    this.asDug = asDug;
    this.bottoms = bottoms;
  }

  List<Finding> of(List<OffCentre> loads, List<Room> rooms, List<Between> betweens) {
    loads.forEach(this::load);
    asDug.rows().forEach(this::moved);
    rooms.forEach(this::room);
    betweens.forEach(this::between);
    asDug.rows().forEach(this::soil);
    return List.copyOf(findings);
  }

  private static Finding finding(
      String mark, Kind kind, String id, Decider decides, Citation source) {
    return Finding.of(kind, id, "field.dug", decides, source)
        .about(List.of(mark))
        .with("hole", Argument.words(mark));
  }

  private void load(OffCentre load) {
    switch (load.verdict()) {
      case OUTSIDE_KERN ->
          findings.add(
              finding(
                      load.mark(),
                      Kind.STOP,
                      "dug-off-middle",
                      Decider.ENGINEER,
                      AsDugFormulas.KERN)
                  .with("moved", Argument.of(load.moved()))
                  .with("kern", Argument.of(load.kern()))
                  .with("width", Argument.of(load.width())));
      case EXCEEDS ->
          findings.add(
              finding(
                      load.mark(),
                      Kind.STOP,
                      "dug-edge-pressure",
                      Decider.ENGINEER,
                      AsDugFormulas.KERN)
                  .with("moved", Argument.of(load.moved()))
                  .with("edge", Argument.of(load.edge().orElseThrow()))
                  .with("allowable", Argument.of(load.allowable().orElseThrow())));
      default -> {
        // Its figures stand on the sheet.
      }
    }
  }

  /** Further off than a mark may be. */
  private void moved(Row row) {
    Length tolerance = job.layout().tolerance();
    if (row.moved().minus(AsDugCalculator.TOLERANCE).isMoreThan(tolerance)) {
      findings.add(
          finding(row.mark(), Kind.ASK, "dug-moved", Decider.CREW, Citation.COMMON_PRACTICE)
              .with("moved", Argument.of(row.moved()))
              .with("tolerance", Argument.of(tolerance)));
    }
  }

  private void room(Room room) {
    room.cover()
        .filter(left -> left.plus(AsDugCalculator.TOLERANCE).isLessThan(room.wantedCover()))
        .ifPresent(
            left ->
                findings.add(
                    finding(
                            room.mark(),
                            Kind.STOP,
                            "dug-cover-thin",
                            Decider.CREW,
                            Citation.GEOMETRY)
                        .with("cover", Argument.of(left.max(Length.ZERO)))
                        .with("wanted", Argument.of(room.wantedCover()))
                        .with("more", Argument.of(room.wantedCover().minus(left)))));
    room.tube()
        .filter(left -> left.plus(AsDugCalculator.TOLERANCE).isLessThan(Length.ZERO))
        .ifPresent(
            left ->
                findings.add(
                    finding(
                            room.mark(),
                            Kind.STOP,
                            "dug-tube-over-rim",
                            Decider.CREW,
                            Citation.COMMON_PRACTICE)
                        .with("over", Argument.of(left.negated()))));
  }

  private void between(Between between) {
    boolean thin = between.soil().isLessThan(THIN_WALL.min(between.planned()));
    if (thin) {
      findings.add(
          finding(between.mark(), Kind.ASK, "dug-thin-wall", Decider.CREW, Citation.COMMON_PRACTICE)
              .with("neighbour", Argument.words(between.neighbour()))
              .with("soil", Argument.of(between.soil().max(Length.ZERO)))
              .with("wanted", Argument.of(THIN_WALL)));
    }
  }

  /** Found soil that by the table carries less than the footing presses with. */
  private void soil(Row row) {
    Optional<Soil> other = row.dug().soil().filter(soil -> soil != job.ground().soil());
    Optional<SoilBearing> table = other.flatMap(soil -> SoilBearing.find(soil.id()));
    Optional<Pressure> presses =
        bottoms.stream()
            .filter(bottom -> bottom.mark().equals(row.mark()))
            .map(Bottom::pressure)
            .findFirst();
    if (table.isPresent()
        && presses.isPresent()
        && presses.get().pascals() > table.get().pressure().pascals()) {
      findings.add(
          finding(
                  row.mark(),
                  Kind.STOP,
                  "dug-soil-weaker",
                  Decider.ENGINEER,
                  table.get().citation())
              .with("found", Argument.entry("soil." + other.orElseThrow().id()))
              .with("pressure", Argument.of(presses.get()))
              .with("table", Argument.of(table.get().pressure())));
    }
  }
}
