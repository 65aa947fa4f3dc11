package pegbook.calc.depthtargets;

import java.util.ArrayList;
import java.util.List;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.figures.Working;
import pegbook.job.Frost;
import pegbook.job.Job;
import pegbook.job.Widenings.Bell;
import pegbook.job.Widenings.Cap;
import pegbook.job.Widenings.Pad;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * What bells, pads and caps bring: soil that does not stand over an undercut, sides too flat, plain
 * concrete too thin for how far it stands out, and caps so low that the ground may lift them.
 */
final class WideningFindings {
  /** Least slope of a bell's side. */
  private static final Angle STEEP = Angle.ofDegrees(60);

  private static final double TIE_DEGREES = 1e-6;

  private final Job job;
  private final WideningFormulas formulas;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Working> workings = new ArrayList<>();

  WideningFindings(Job job, List<Hole> holes) {
    this.job = job;
    this.formulas = new WideningFormulas(job.heading().units());
    for (AlikeHoles alike : AlikeHoles.of(holes)) {
      alike.first().widenings().bell().ifPresent(bell -> bell(alike, bell));
      alike.first().widenings().pad().ifPresent(pad -> pad(alike, pad));
      alike.first().widenings().cap().ifPresent(cap -> cap(alike, cap));
      frost(alike);
    }
    WideningRoom room = WideningRoom.of(job, holes);
    findings.addAll(room.findings());
    workings.addAll(room.workings());
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }

  List<Working> workings() {
    return List.copyOf(workings);
  }

  private Length either(double inches, double millimetres) {
    return job.heading().units() == UnitSystem.IMPERIAL
        ? Length.ofInches(inches)
        : Length.ofMillimetres(millimetres);
  }

  private static Finding told(AlikeHoles alike, Finding finding, String key) {
    Hole hole = alike.first();
    String place =
        hole.kind() == MarkKind.SUPPORT ? "supports." + key : "piers." + hole.mark() + "." + key;
    return new Finding(
        finding.kind(),
        finding.id(),
        alike.marks(),
        place,
        finding.arguments(),
        finding.decides(),
        finding.citations());
  }

  private static Finding ask(String id, Citation source) {
    return Finding.of(Kind.ASK, id, "", Decider.ENGINEER, source);
  }

  private void bell(AlikeHoles alike, Bell bell) {
    Hole hole = alike.first();
    Working slope =
        Working.of(
            formulas.slope(), alike.subject(), bell.flare(), bell.diameter(), hole.diameter());
    workings.add(slope);
    if (slope.result() < STEEP.degrees() - TIE_DEGREES) {
      Length stands = bell.diameter().minus(hole.diameter()).times(0.5);
      findings.add(
          told(alike, ask("bell-flat", WideningFormulas.SLOPE), "bell.height")
              .with("slope", Argument.of(slope.asAngle()))
              .with("steep", Argument.of(STEEP))
              .with(
                  "least",
                  Argument.of(stands.times(Math.sqrt(3)).setTo(either(1, 10), Rounding.UP))));
    }
    soil(alike);
    job.ground()
        .waterDepth()
        .filter(water -> !DepthChoice.isLess(hole.dug(), water))
        .ifPresent(
            water ->
                findings.add(
                    told(
                            alike,
                            Finding.of(
                                Kind.STOP,
                                "bell-in-water",
                                "",
                                Decider.ENGINEER,
                                Citation.COMMON_PRACTICE),
                            "bell")
                        .with("water", Argument.of(water))
                        .with("deepest", Argument.of(hole.dug()))));
    findings.add(
        told(
                alike,
                Finding.of(Kind.NOTE, "bell-undercut", "", Decider.CREW, Citation.COMMON_PRACTICE),
                "bell")
            .with("diameter", Argument.of(bell.diameter()))
            .with("begins", Argument.of(hole.shaftDepth())));
  }

  /** Which soil stands over an undercut: common practice, no source. */
  private void soil(AlikeHoles alike) {
    Argument soil = Argument.entry("soil." + job.ground().soil().id());
    switch (job.ground().soil()) {
      case GRAVEL, SANDY_GRAVEL, SAND, SILTY_SAND, PEAT, FILL ->
          findings.add(
              told(
                      alike,
                      Finding.of(
                          Kind.STOP, "bell-caves", "", Decider.ENGINEER, Citation.COMMON_PRACTICE),
                      "bell")
                  .with("soil", soil));
      case CLAYEY_SAND, LOAM, SILT ->
          findings.add(
              told(alike, ask("bell-may-cave", Citation.COMMON_PRACTICE), "bell")
                  .with("soil", soil));
      default -> {
        // Clays hold an undercut for a while; rock is another trade's.
      }
    }
  }

  private void pad(AlikeHoles alike, Pad pad) {
    Hole hole = alike.first();
    Length wanted = thickness(alike, hole.diameter(), hole.shaft());
    if (DepthChoice.isLess(pad.thickness(), wanted)) {
      findings.add(
          told(alike, ask("pad-thin", WideningFormulas.PLAIN), "pad.thickness")
              .with("thickness", Argument.of(pad.thickness()))
              .with("wanted", Argument.of(wanted)));
    }
  }

  private Length thickness(AlikeHoles alike, Length wide, Length shaft) {
    Working thickness =
        Working.of(
            formulas.thickness(), alike.subject(), wide, shaft, either(6, 150), either(1, 10));
    workings.add(thickness);
    return thickness.asLength();
  }

  private void cap(AlikeHoles alike, Cap cap) {
    Hole hole = alike.first();
    Length wanted = thickness(alike, cap.width(), hole.formAbove());
    if (DepthChoice.isLess(cap.thickness(), wanted)) {
      findings.add(
          told(alike, ask("cap-thin", WideningFormulas.PLAIN), "cap.thickness")
              .with("thickness", Argument.of(cap.thickness()))
              .with("wanted", Argument.of(wanted)));
    }
    if (DepthChoice.isLess(hole.column(), either(6, 150))) {
      findings.add(
          told(alike, ask("cap-near-ground", Citation.COMMON_PRACTICE), "top")
              .with("clear", Argument.of(hole.column()))
              .with("wanted", Argument.of(either(6, 150))));
    }
  }

  /** A bell or a pad that freezes is gripped where it is widest. */
  private void frost(AlikeHoles alike) {
    Hole hole = alike.first();
    job.ground()
        .frost()
        .map(Frost::depth)
        .filter(any -> hole.widenings().bottomHeight().isMoreThan(Length.ZERO))
        .filter(frost -> DepthChoice.isLess(hole.shaftDepth(), frost))
        .ifPresent(
            frost ->
                findings.add(
                    told(alike, ask("wide-bottom-freezes", Citation.COMMON_PRACTICE), "depth")
                        .with("frost", Argument.of(frost))
                        .with("begins", Argument.of(hole.shaftDepth()))));
  }
}
