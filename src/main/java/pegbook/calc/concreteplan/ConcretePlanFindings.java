package pegbook.calc.concreteplan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pegbook.calc.concreteplan.ConcretePlan.Fill;
import pegbook.calc.concreteplan.ConcretePlan.Lift;
import pegbook.calc.concreteplan.ConcretePlan.Mix;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.job.Job;
import pegbook.job.Tube;
import pegbook.measure.Duration;
import pegbook.measure.Length;
import pegbook.published.Citation;
import pegbook.published.ConcreteBag;

/** What the reader must act on before concrete is bought and poured. */
final class ConcretePlanFindings {
  private static final Citation WINDOW =
      new Citation("astm-c94", "discharge within an hour and a half");

  private final Job job;
  private final List<Hole> holes;
  private final MixingRate rate;
  private final List<Finding> findings = new ArrayList<>();

  private ConcretePlanFindings(Job job, List<Hole> holes) {
    this.job = job;
    this.holes = holes;
    this.rate = MixingRate.of(job.concrete().mixing());
  }

  static List<Finding> of(Job job, List<Hole> holes, List<Fill> fills, Mix mix) {
    ConcretePlanFindings found = new ConcretePlanFindings(job, holes);
    found.tubes();
    found.pours(fills);
    found.bag(mix);
    found.forms();
    return List.copyOf(found.findings);
  }

  private void tubes() {
    for (AlikeHoles alike : AlikeHoles.of(holes)) {
      Hole hole = alike.first();
      hole.tube()
          .map(Tube::inside)
          .filter(inside -> inside.isMoreThan(hole.diameter()))
          .ifPresent(
              inside ->
                  findings.add(
                      Finding.of(
                              Kind.STOP,
                              "tube-wider-than-hole",
                              place(hole, "tube"),
                              Decider.OWNER,
                              Citation.COMMON_PRACTICE)
                          .about(alike.marks())
                          .with("tube", Argument.of(inside))
                          .with("hole", Argument.of(hole.diameter()))));
    }
  }

  /** One finding for all holes whose pours take the same time. */
  private void pours(List<Fill> fills) {
    for (AlikeHoles alike : AlikeHoles.of(holes)) {
      Fill fill =
          fills.stream()
              .filter(each -> each.mark().equals(alike.first().mark()))
              .findFirst()
              .orElseThrow();
      fill.lifts().stream()
          .max(Comparator.comparing(lift -> lift.pour().most().minutes()))
          .ifPresent(
              longest -> {
                switch (rate.pace(job.heading().units()).fit(longest.pour())) {
                  case TOO_LONG -> pour(Kind.STOP, "pour-too-long", alike, longest);
                  case MAY_RUN_LONG -> pour(Kind.ASK, "pour-may-run-long", alike, longest);
                  case FITS -> {}
                }
              });
    }
  }

  private void pour(Kind kind, String id, AlikeHoles alike, Lift lift) {
    findings.add(
        Finding.of(kind, id, "concrete.mixing", Decider.CREW, WINDOW)
            .about(alike.marks())
            .with("bags", Argument.of(lift.bags()))
            .with("volume", Argument.of(lift.poured()))
            .with("people", Argument.of(job.crew().people()))
            .with("least", minutes(lift.pour().least()))
            .with("most", minutes(lift.pour().most()))
            .with("window", minutes(rate.window()))
            .with("mixing", mixing()));
  }

  private void bag(Mix mix) {
    if (job.concrete().yield().isEmpty() && !ConcreteBag.covers(mix.bag())) {
      findings.add(
          Finding.of(
                  Kind.ASK,
                  "bag-outside-table",
                  "concrete.yield",
                  Decider.OWNER,
                  ConcreteBag.SOURCE)
              .with("bag", Argument.of(mix.bag()))
              .with("least", Argument.of(ConcreteBag.all().get(0).mass()))
              .with(
                  "most", Argument.of(ConcreteBag.all().get(ConcreteBag.all().size() - 1).mass())));
    }
  }

  private void forms() {
    List<Hole> bare =
        holes.stream()
            .filter(hole -> hole.tube().isEmpty() && hole.top().isMoreThan(Length.ZERO))
            .toList();
    if (!bare.isEmpty()) {
      findings.add(
          Finding.of(
                  Kind.NOTE,
                  "form-above-ground",
                  place(bare.get(0), "tube"),
                  Decider.CREW,
                  Citation.COMMON_PRACTICE)
              .about(bare.stream().map(Hole::mark).toList()));
    }
  }

  private Argument mixing() {
    return Argument.entry(
        switch (job.concrete().mixing()) {
          case BY_HAND -> "concrete-plan.mixing.by-hand";
          case MIXER -> "concrete-plan.mixing.mixer";
          case READY_MIX -> "concrete-plan.mixing.ready-mix";
        });
  }

  private static Argument minutes(Duration duration) {
    return Argument.of(Math.round(duration.minutes()));
  }

  private static String place(Hole hole, String key) {
    return switch (hole.kind()) {
      case SUPPORT -> "supports." + key;
      case PIER -> "piers." + hole.mark() + "." + key;
    };
  }
}
