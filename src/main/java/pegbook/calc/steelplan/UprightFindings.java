package pegbook.calc.steelplan;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.calc.steelplan.SteelPlan.Embedment;
import pegbook.calc.steelplan.SteelPlan.Hook;
import pegbook.calc.steelplan.SteelPlan.Starters;
import pegbook.calc.steelplan.SteelPlan.Turn;
import pegbook.figures.AlikeHoles;
import pegbook.figures.AnchorageFormulas;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Kind;
import pegbook.job.Steel;
import pegbook.measure.Length;
import pegbook.published.Citation;

/** Where upright bars do not reach far enough, lap too little or do not fit. */
final class UprightFindings {
  private static final Citation JOINT = new Citation("aci-318-19-memory", "26.5.6, 22.9.4.2");

  private final AlikeHoles alike;
  private final Cage cage;
  private final List<Finding> findings = new ArrayList<>();

  private UprightFindings(AlikeHoles alike, Cage cage) {
    this.alike = alike;
    this.cage = cage;
  }

  static List<Finding> of(AlikeHoles alike, Cage cage) {
    UprightFindings judge = new UprightFindings(alike, cage);
    cage.uprights().embedment().filter(Embedment::isShort).ifPresent(judge::embedment);
    cage.uprights().starters().ifPresentOrElse(judge::starters, judge::noJoint);
    cage.uprights().lowestHook().filter(hook -> hook.turn() == Turn.NO_ROOM).ifPresent(judge::hook);
    return judge.findings;
  }

  private String barMark() {
    int piece = cage.uprights().starters().isPresent() ? cage.pieces().size() - 1 : 0;
    return cage.pieces().get(piece).barMark();
  }

  private void embedment(Embedment embedment) {
    String id = embedment.isHooked() ? "hook-embedment-short" : "embedment-short";
    Citation source = embedment.isHooked() ? AnchorageFormulas.HOOK : AnchorageFormulas.DEVELOPMENT;
    findings.add(
        ask(Kind.ASK, id, embedment.atJoint() ? "steel.firstLift" : "steel.foot", source)
            .with("bar", Argument.words(barMark()))
            .with("size", Argument.words(cage.size()))
            .with(
                "section",
                Argument.entry("steel-plan.section." + (embedment.atJoint() ? "joint" : "ground")))
            .with("reach", Argument.of(embedment.reach()))
            .with("needed", Argument.of(embedment.needed()))
            .with("more", Argument.of(embedment.needed().minus(embedment.reach())))
            .with("hooked", Argument.of(embedment.neededHooked())));
  }

  private void starters(Starters starters) {
    findings.add(
        ask(Kind.NOTE, "two-lifts", "steel.firstLift", JOINT)
            .with("joint", Argument.of(starters.joint()))
            .with("bar", Argument.words(barMark())));
    if (starters.lap().plus(SteelPlanFindings.TOLERANCE).isLessThan(starters.leastLap())) {
      findings.add(
          ask(Kind.ASK, "lap-short", "steel.firstLift", AnchorageFormulas.LAP)
              .with("bar", Argument.words(barMark()))
              .with("size", Argument.words(cage.size()))
              .with("lap", Argument.of(starters.lap()))
              .with("needed", Argument.of(starters.leastLap())));
    }
    if (cage.bars() > 1
        && starters.clear().plus(SteelPlanFindings.TOLERANCE).isLessThan(cage.leastClear())) {
      findings.add(
          ask(Kind.ASK, "laps-too-close", "steel.bars", SteelPlanFormulas.CLEAR_SPACING)
              .with("clear", Argument.of(starters.clear().max(Length.ZERO)))
              .with("wanted", Argument.of(cage.leastClear())));
    }
  }

  /** A first lift that ends below the steel or above it. */
  private void noJoint() {
    alike
        .first()
        .steel()
        .flatMap(Steel::firstLift)
        .ifPresent(
            lift ->
                findings.add(
                    ask(Kind.ASK, "joint-outside-steel", "steel.firstLift", Citation.GEOMETRY)
                        .with("joint", Argument.of(lift))
                        .with("height", Argument.of(cage.height()))));
  }

  private void hook(Hook hook) {
    findings.add(
        ask(Kind.ASK, "hook-has-no-room", "steel.foot", UprightFormulas.STANDARD_HOOK)
            .with("bar", Argument.words(barMark()))
            .with("size", Argument.words(cage.size()))
            .with("leg", Argument.of(hook.leg()))
            .with("concrete", Argument.of(alike.first().standing())));
  }

  private Finding ask(Kind kind, String id, String key, Citation source) {
    return SteelPlanFindings.finding(kind, id, alike, key, source);
  }
}
