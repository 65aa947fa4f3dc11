package pegbook.calc.digschedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pegbook.calc.digschedule.DigSchedule.Row;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.job.Job;
import pegbook.job.Soil;
import pegbook.measure.Area;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.published.Citation;
import pegbook.published.HandDigRate;

/** Where the published rates do not hold, and what a cart load weighs. */
final class RateFindings {
  /** What many barrows carry, by their owners' answers; weak. */
  private static final Mass BARROW = Mass.ofPounds(375);

  private RateFindings() {}

  static List<Finding> of(Job job, DugSoil soil, List<Row> rows) {
    List<Finding> findings = new ArrayList<>();
    if (soil.soil() == Soil.ROCK) {
      findings.add(rock(soil));
    }
    List<String> outside =
        rows.stream().map(Row::hole).filter(RateFindings::isOutside).map(Hole::mark).toList();
    if (!outside.isEmpty()) {
      findings.add(outside(soil, outside));
    }
    if (isCartGiven(job) && soil.cartLoad().isMoreThan(BARROW)) {
      findings.add(heavy(job, soil));
    }
    return findings;
  }

  /** A cart that nobody named is only a measure for counting loads. */
  private static boolean isCartGiven(Job job) {
    return job.defaults().stream().noneMatch(value -> value.path().equals("spoil.cart"));
  }

  private static boolean isOutside(Hole hole) {
    Length radius = hole.diameter().times(0.5);
    Area area = radius.times(radius).times(Math.PI);
    return hole.dug().isMoreThan(HandDigRate.DEEPEST) || area.isMoreThan(HandDigRate.LARGEST_PIT);
  }

  private static Finding rock(DugSoil soil) {
    return Finding.of(
        Kind.ASK, "rock-digging", "ground.soil", Decider.ENGINEER, soil.rate().citation());
  }

  private static Finding outside(DugSoil soil, List<String> marks) {
    return new Finding(
            Kind.NOTE,
            "dig-rate-outside",
            marks,
            "",
            Map.of(),
            Decider.CREW,
            List.of(soil.rate().citation()))
        .with("depth", Argument.of(HandDigRate.DEEPEST))
        .with("area", Argument.of(HandDigRate.LARGEST_PIT));
  }

  private static Finding heavy(Job job, DugSoil soil) {
    return new Finding(
            Kind.NOTE,
            "cart-heavy",
            List.of(),
            "spoil.cart",
            Map.of(),
            Decider.CREW,
            List.of(new Citation("barrow-limits", ""), soil.weight().citation()))
        .with("cart", Argument.of(job.spoil().cart()))
        .with("load", Argument.of(soil.cartLoad()))
        .with("limit", Argument.of(BARROW));
  }
}
