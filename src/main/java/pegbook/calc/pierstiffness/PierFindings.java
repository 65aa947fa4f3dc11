package pegbook.calc.pierstiffness;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pegbook.calc.pierstiffness.PierStiffness.AlikePiers;
import pegbook.calc.pierstiffness.PierStiffness.FloorGap;
import pegbook.calc.pierstiffness.PierStiffness.GroundModulus;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.job.Job;
import pegbook.measure.Count;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.published.Citation;

/** What the piers' builder must act on; thresholds are common practice. */
final class PierFindings {
  /** Lengths closer than this count as equal. */
  private static final Length TOLERANCE = Length.ofMillimetres(0.1);

  private static final double NUMBER_TOLERANCE = 1e-6;

  /** Below this the pier is near tipping. */
  private static final double LEAST_OVERTURNING = 1.5;

  /** Below this one edge of the base lifts: the force's moment reaches past the core of a disk. */
  private static final double FULL_CONTACT = 4;

  /** Below this half the cracking moment is reached, and the concrete may not count as whole. */
  private static final double LEAST_CRACKING = 2;

  private static final double GREATEST_SLENDERNESS = 10;
  private static final Length TALLEST = Length.ofMillimetres(2440);

  private final Job job;
  private final List<Hole> holes;
  private final List<Finding> findings = new ArrayList<>();

  PierFindings(Job job, List<Hole> holes) {
    this.job = job;
    this.holes = holes;
  }

  List<Finding> all() {
    return List.copyOf(findings);
  }

  private static Finding finding(Kind kind, String id, String place, Decider who, Citation... of) {
    return new Finding(kind, id, List.of(), place, Map.of(), who, List.of(of));
  }

  private List<String> allPiers() {
    return job.piers().stream().map(pier -> pier.id()).toList();
  }

  /** Says what the ground was taken for, where the job gives nothing. */
  void ground(GroundModulus ground, boolean questionable) {
    if (ground.given()) {
      return;
    }
    Finding found =
        questionable
            ? finding(
                Kind.ASK,
                "pier-ground-questionable",
                "ground.shearModulus",
                Decider.ENGINEER,
                ground.source())
            : finding(
                Kind.NOTE,
                "pier-ground-assumed",
                "ground.shearModulus",
                Decider.ENGINEER,
                ground.source());
    findings.add(
        found
            .with("low", Argument.of(ground.low()))
            .with("high", Argument.of(ground.high()))
            .about(allPiers()));
  }

  /** Whether a pier stands clear of the floor. */
  void gap(FloorGap gap) {
    Length cut = gap.toEdge();
    if (cut.isLessThan(TOLERANCE)) {
      findings.add(gapFinding(Kind.STOP, "pier-touches-floor", gap));
    } else if (cut.plus(TOLERANCE).isLessThan(gap.wanted())) {
      findings.add(gapFinding(Kind.ASK, "pier-gap-short", gap));
    }
    if (gap.inside()) {
      endsUnder(gap);
    }
  }

  private static Finding gapFinding(Kind kind, String id, FloorGap gap) {
    return finding(kind, id, "piers." + gap.mark() + ".gap", Decider.OWNER, Citation.GEOMETRY)
        .with("distance", Argument.of(gap.toEdge().abs()))
        .with("wanted", Argument.of(gap.wanted()))
        .about(List.of(gap.mark()));
  }

  /** A pier inside the floor that does not come up through it. */
  private void endsUnder(FloorGap gap) {
    Hole pier = hole(gap.mark());
    gap.floor()
        .filter(over -> !pier.top().isMoreThan(over.plus(TOLERANCE)))
        .map(
            over ->
                finding(
                        Kind.ASK,
                        "pier-under-floor",
                        "piers." + gap.mark() + ".top",
                        Decider.OWNER,
                        Citation.GEOMETRY)
                    .with("top", Argument.of(pier.top()))
                    .with("floor", Argument.of(over))
                    .about(List.of(gap.mark())))
        .ifPresent(findings::add);
  }

  private Hole hole(String mark) {
    return holes.stream().filter(hole -> hole.mark().equals(mark)).findFirst().orElseThrow();
  }

  /** Checks piers that are alike against the limits of the method. */
  void piers(AlikePiers piers, double cracking) {
    Hole hole = piers.hole();
    Length lever = hole.depth().plus(hole.top());
    double slenderness = lever.dividedBy(hole.formAbove());
    if (slenderness > GREATEST_SLENDERNESS + NUMBER_TOLERANCE
        || hole.top().isMoreThan(TALLEST.plus(TOLERANCE))) {
      findings.add(
          about(piers, Kind.ASK, "pier-slender", "top", Citation.COMMON_PRACTICE)
              .with("times", Argument.of(Math.round(Math.floor(slenderness))))
              .with("most", Argument.of(Math.round(GREATEST_SLENDERNESS)))
              .with("height", Argument.of(hole.top()))
              .with("tallest", Argument.of(TALLEST)));
    }
    if (cracking < LEAST_CRACKING - NUMBER_TOLERANCE) {
      findings.add(
          about(
                  piers,
                  Kind.ASK,
                  "pier-may-crack",
                  "wind",
                  new Citation("aci-318-19-memory", "19.2.3.1"))
              .with("factor", factor(cracking))
              .with("wanted", factor(LEAST_CRACKING)));
    }
    if (hole.widenings().isAny()) {
      findings.add(about(piers, Kind.NOTE, "pier-widened", "hole", Citation.COMMON_PRACTICE));
    }
    tipping(piers);
    if (piers.pier().instrument().isEmpty()) {
      findings.add(
          about(
              piers, Kind.ASK, "pier-instrument-unknown", "instrument", Citation.COMMON_PRACTICE));
    }
    settlement(piers);
    findings.addAll(PierTop.findings(piers));
  }

  private void tipping(AlikePiers piers) {
    double worst = Math.min(piers.overturning(), piers.windOverturning().orElse(1e9));
    boolean windRules = worst < piers.overturning();
    Force force = windRules ? piers.pier().wind().orElseThrow() : piers.pier().push();
    if (worst >= FULL_CONTACT - NUMBER_TOLERANCE) {
      return;
    }
    boolean near = worst < LEAST_OVERTURNING - NUMBER_TOLERANCE;
    Finding found =
        near
            ? about(
                piers,
                Kind.ASK,
                "pier-may-tip",
                windRules ? "wind" : "push",
                Citation.COMMON_PRACTICE)
            : about(
                piers,
                Kind.NOTE,
                "pier-base-lifts",
                windRules ? "wind" : "push",
                Citation.COMMON_PRACTICE);
    findings.add(
        found
            .with("force", Argument.of(force))
            .with("factor", factor(worst))
            .with("wanted", factor(near ? LEAST_OVERTURNING : FULL_CONTACT)));
  }

  /** Slow leaning is not computed; on soil that gives way slowly it is what matters. */
  private void settlement(AlikePiers piers) {
    switch (job.ground().soil()) {
      case LOAM, SILT, SANDY_CLAY, CLAY ->
          findings.add(about(piers, Kind.NOTE, "pier-settles", "depth", Citation.COMMON_PRACTICE));
      default -> {
        // Sand and gravel settle while they are loaded; the others are asked about as ground.
      }
    }
  }

  /** A number of times, to a tenth set down: it stands for a capacity. */
  private static Argument factor(double times) {
    return Argument.of(new Count(Math.floor(times * 10 + NUMBER_TOLERANCE) / 10));
  }

  static Finding about(AlikePiers piers, Kind kind, String id, String key, Citation source) {
    return finding(kind, id, "piers." + piers.marks().get(0) + "." + key, Decider.ENGINEER, source)
        .about(piers.marks());
  }
}
