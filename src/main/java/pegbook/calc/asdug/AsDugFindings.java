package pegbook.calc.asdug;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.asdug.AsDug.Depth;
import pegbook.calc.asdug.AsDug.Row;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.job.Job;
import pegbook.job.Soil;
import pegbook.measure.Length;
import pegbook.published.Citation;

/** What a hole's found depth, width, soil, water and rock ask for. */
final class AsDugFindings {
  private final Job job;
  private final List<Finding> findings = new ArrayList<>();

  private AsDugFindings(Job job) {
    this.job = job;
  }

  static List<Finding> of(Job job, List<Row> rows) {
    AsDugFindings judge = new AsDugFindings(job);
    for (Row row : rows) {
      judge.depth(row);
      judge.width(row);
      judge.soil(row);
      judge.water(row);
    }
    return List.copyOf(judge.findings);
  }

  private static Finding finding(Row row, Kind kind, String id, Decider decides) {
    return Finding.of(kind, id, "field.dug", decides, Citation.COMMON_PRACTICE)
        .about(List.of(row.mark()))
        .with("hole", Argument.words(row.mark()));
  }

  private void depth(Row row) {
    Length by = row.deeper().orElse(Length.ZERO);
    Optional<Length> rock = row.dug().rock();
    if (row.depth() == Depth.SHALLOW) {
      Length found = row.dug().depth().orElseThrow();
      Finding shallow =
          rock.isPresent()
              ? finding(row, Kind.STOP, "rock-above-depth", Decider.BUILDING_AUTHORITY)
                  .with("rock", Argument.of(rock.get()))
              : finding(row, Kind.STOP, "dug-too-shallow", Decider.CREW);
      findings.add(
          shallow
              .with("found", Argument.of(found))
              .with("target", Argument.of(row.planned().depth()))
              .with("planned", Argument.of(row.planned().dug()))
              .with("more", Argument.of(by.negated())));
      return;
    }
    rock.ifPresent(
        at ->
            findings.add(
                finding(row, Kind.ASK, "dug-on-rock", Decider.BUILDING_AUTHORITY)
                    .with("rock", Argument.of(at))));
    String id =
        switch (row.depth()) {
          case LESS_GRAVEL -> "dug-less-gravel";
          case MORE_GRAVEL -> "dug-more-gravel";
          case MORE_CONCRETE -> "dug-more-concrete";
          default -> "";
        };
    if (!id.isEmpty()) {
      findings.add(
          finding(row, Kind.NOTE, id, Decider.CREW)
              .with("by", Argument.of(by.abs()))
              .with("gravel", Argument.of(row.filled().gravel())));
    }
  }

  private void width(Row row) {
    Length found = row.filled().diameter();
    Length planned = row.planned().diameter();
    if (found.minus(planned).abs().isMoreThan(AsDugCalculator.TOLERANCE)) {
      findings.add(
          finding(
                  row,
                  Kind.NOTE,
                  found.isLessThan(planned) ? "dug-narrower" : "dug-wider",
                  Decider.CREW)
              .with("found", Argument.of(found))
              .with("planned", Argument.of(planned)));
    }
  }

  private void soil(Row row) {
    Optional<Soil> other = row.dug().soil().filter(soil -> soil != job.ground().soil());
    if (other.isEmpty()) {
      return;
    }
    boolean carriesNothing = other.get() == Soil.PEAT || other.get() == Soil.FILL;
    findings.add(
        finding(
                row,
                carriesNothing ? Kind.STOP : Kind.ASK,
                carriesNothing ? "dug-soft-soil" : "dug-other-soil",
                Decider.ENGINEER)
            .with("found", soil(other.get()))
            .with("planned", soil(job.ground().soil())));
  }

  private static Argument soil(Soil soil) {
    return Argument.entry("soil." + soil.id());
  }

  /** Water that stands in the hole; below its bottom nobody can have seen any. */
  private void water(Row row) {
    Length bottom = row.dug().depth().orElse(row.planned().dug());
    row.dug()
        .water()
        .filter(water -> water.isLessThan(bottom))
        .ifPresent(
            water ->
                findings.add(
                    finding(row, Kind.STOP, "dug-water", Decider.BUILDING_AUTHORITY)
                        .with("water", Argument.of(water))
                        .with("deep", Argument.of(bottom.minus(water)))));
  }
}
