package pegbook.calc.safepegs;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.safepegs.SafePegs.Crossing;
import pegbook.calc.safepegs.SafePegs.Find;
import pegbook.calc.safepegs.SafePegs.Peg;
import pegbook.calc.safepegs.SafePegs.PegString;
import pegbook.calc.safepegs.SafePegs.Tape;
import pegbook.figures.Hole;
import pegbook.figures.Placement;
import pegbook.figures.SafePeg;
import pegbook.figures.SpoilHeap;
import pegbook.geometry.Point;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;

/**
 * Chooses pegs outside the diggings.
 *
 * <p>First the strings: lines over the marks, each with a peg past both ends, so that two cross
 * over every centre (see {@link StringPlan}). Then the pegs to tape from: three that see every mark
 * (see {@link PegChoice}), of the strings' own pegs where these do almost as well as any. Every peg
 * stands outside holes, heaps, cart paths, the floor and keep-clear zones (see {@link PegGround}).
 */
public final class SafePegsCalculator {
  /** Pegs that strings need anyway are taken to tape from, up to this many times the best. */
  private static final double ALMOST = 1.3;

  private final Job job;
  private final PegSite site;
  private final StringPlan plan;
  private final TapedDistances distances;

  private SafePegsCalculator(
      Job job, Placement placement, List<Hole> holes, List<SpoilHeap> heaps) {
    this.job = job;
    this.site = PegSite.of(job, placement, holes, heaps);
    this.plan = StringPlan.of(site);
    this.distances =
        new TapedDistances(SafePegsFormulas.in(job.heading().units()), site.division());
  }

  /**
   * Chooses the pegs of a job.
   *
   * @param holes one for each mark
   * @param heaps where the soil lies while the holes are open
   * @throws IllegalArgumentException when a mark has no hole
   */
  public static SafePegs calculate(
      Job job, Placement placement, List<Hole> holes, List<SpoilHeap> heaps) {
    return new SafePegsCalculator(job, placement, holes, heaps).pegs();
  }

  private SafePegs pegs() {
    List<PegDraft> drafts = PegDraft.inOrder(chosen(), site);
    for (int mark = 0; mark < site.marks().size(); mark++) {
      distances.name(site.names().get(mark), site.marks().get(mark));
    }
    for (int peg = 0; peg < drafts.size(); peg++) {
      distances.name(PegSetting.name(peg), drafts.get(peg).at());
    }
    PegSetting setting = new PegSetting(site, plan.pegs().strings(), drafts, distances);
    List<Peg> pegs = new ArrayList<>();
    for (int peg = 0; peg < drafts.size(); peg++) {
      pegs.add(setting.peg(peg));
    }
    List<Point> taped = drafts.stream().filter(PegDraft::taped).map(PegDraft::at).toList();
    MarkFinds finds = new MarkFinds(site, taped, distances);
    List<Find> found = finds.all();
    List<PegString> strings = strings(setting);
    List<Crossing> crossings = crossings(strings);
    SafePegsFindings findings = new SafePegsFindings(site, taped, finds);
    PegWork work = new PegWork(job.heading().units() == UnitSystem.IMPERIAL, pegs, strings);
    return new SafePegs(
        pegs,
        underFloor(pegs),
        finds.seeingAll() >= PegChoice.WANTED,
        found,
        finds.weakest(),
        strings,
        crossings,
        site.paths(),
        site.rules(),
        findings.all(found, crossings, plan.tooMany()),
        distances.workings(),
        work.needs(),
        work.tasks(found.size()));
  }

  /** The strings' pegs, those to tape from among them or beside them. */
  private List<PegDraft> chosen() {
    List<PegDraft> drafts = new ArrayList<>(PegDraft.ofStrings(site, plan.pegs()));
    List<Point> places = new ArrayList<>(drafts.stream().map(PegDraft::at).toList());
    int own = places.size();
    PegChoice ofStrings = PegChoice.three(sightings(places), site.rules().apart());
    PegCandidates candidates = new PegCandidates(site.axis(), site.ground());
    places.addAll(candidates.outside());
    PegChoice any = PegChoice.of(sightings(places), site.rules().apart());
    if (!any.allSeen()) {
      places.subList(own, places.size()).clear();
      places.addAll(candidates.anywhere());
      any = PegChoice.of(sightings(places), site.rules().apart());
    }
    boolean enough =
        ofStrings.allSeen() && (!any.allSeen() || ofStrings.cost() <= ALMOST * any.cost());
    List<Integer> taped = (enough ? ofStrings : any).places();
    if (taped.size() < 2) {
      return drafts;
    }
    for (int place : taped) {
      if (place < own) {
        drafts.set(place, drafts.get(place).fromHere());
      } else {
        PegSwing swing = PegSwing.of(site, places.get(place));
        drafts.add(PegDraft.swung(swing, List.of()).fromHere());
      }
    }
    return drafts;
  }

  private List<String> underFloor(List<Peg> pegs) {
    return pegs.stream()
        .map(Peg::peg)
        .filter(peg -> !site.ground().isOffTheFloor(peg.at(), Length.ZERO))
        .map(SafePeg::id)
        .toList();
  }

  private Sightings sightings(List<Point> places) {
    return new Sightings(
        places, site.marks(), site.sight(), site.rules().tape(), site.reach(), site.accuracy());
  }

  private List<PegString> strings(PegSetting setting) {
    List<PegString> strings = new ArrayList<>();
    for (int string = 0; string < plan.pegs().strings().size(); string++) {
      String first = setting.pegAt(new Strung.End(string, false));
      String second = setting.pegAt(new Strung.End(string, true));
      List<Tape> over = new ArrayList<>();
      for (int mark : plan.pegs().strings().get(string).line().marks()) {
        String name = site.names().get(mark);
        over.add(new Tape(name, distances.set(first, name)));
      }
      strings.add(new PegString(first, second, distances.set(first, second), over));
    }
    return strings;
  }

  private List<Crossing> crossings(List<PegString> strings) {
    List<Crossing> crossings = new ArrayList<>();
    for (int mark = 0; mark < site.marks().size(); mark++) {
      String name = site.names().get(mark);
      for (StringCover.Pair pair : plan.cover().best(mark)) {
        if (pair.sine() >= StringCover.LEAST_SINE) {
          PegString one = strings.get(pair.one());
          PegString other = strings.get(pair.other());
          crossings.add(
              new Crossing(
                  name,
                  pair.one(),
                  pair.other(),
                  distances.stringAngle(
                      name, one.first(), one.second(), other.first(), other.second())));
        }
      }
    }
    return crossings;
  }
}
