package pegbook.packet;

import java.util.Comparator;
import java.util.List;
import pegbook.calc.asdug.AsDug;
import pegbook.calc.asdug.DugChecks;
import pegbook.calc.asmarked.AsMarked;
import pegbook.calc.bearing.Bearing;
import pegbook.calc.buyinglist.BuyingList;
import pegbook.calc.concreteexposure.ConcreteExposure;
import pegbook.calc.concreteplan.ConcretePlan;
import pegbook.calc.cutplan.CutPlan;
import pegbook.calc.dayplan.DayPlan;
import pegbook.calc.depthtargets.DepthTargets;
import pegbook.calc.digschedule.DigSchedule;
import pegbook.calc.floorframe.FloorFrame;
import pegbook.calc.footingloads.FootingLoads;
import pegbook.calc.frostdepth.FrostDepth;
import pegbook.calc.frostgrip.FrostGrip;
import pegbook.calc.levels.Levels;
import pegbook.calc.markaccuracy.MarkAccuracy;
import pegbook.calc.ownmix.OwnMixPlan;
import pegbook.calc.pierstiffness.PierStiffness;
import pegbook.calc.pourday.PourDay;
import pegbook.calc.powerline.PowerLine;
import pegbook.calc.provingmarks.ProvingMarks;
import pegbook.calc.safepegs.SafePegs;
import pegbook.calc.safetynotes.SafetyNotes;
import pegbook.calc.siteplan.SitePlan;
import pegbook.calc.startconditions.StartConditions;
import pegbook.calc.steelplan.SteelPlan;
import pegbook.calc.supplies.Supplies;
import pegbook.calc.tapecorrections.TapeCorrections;
import pegbook.calc.tapetable.TapeTable;
import pegbook.calc.truckloads.TruckLoads;
import pegbook.calc.truenorth.TrueNorth;
import pegbook.calc.workestimate.WorkEstimate;
import pegbook.figures.Finding;
import pegbook.figures.Placement;
import pegbook.figures.Result;
import pegbook.job.Job;

/**
 * All figures of one packet.
 *
 * @param job the checked job
 * @param jobHash SHA-256 of the job file, hexadecimal
 * @param placement the figure on the ground
 * @param sitePlan the figure among its surroundings
 * @param tapeTable how each mark is taped
 * @param tapeCorrections what slope and heat do to the tapes
 * @param markAccuracy how good each mark is
 * @param safePegs pegs outside the diggings, from which marks are found again
 * @param provingMarks which distances prove the marks
 * @param asMarked what the distances between painted marks say
 * @param trueNorth how true north is found
 * @param depthTargets how deep each hole goes, and why
 * @param levels what a stick reads from the datum line
 * @param digSchedule in which order and with what the holes are dug, and where the soil lies
 * @param asDug the holes as they were dug, and as they are filled
 * @param dugChecks what holes off their marks, or of another width, are held against
 * @param footingLoads what the supports carry
 * @param bearing the footings against the ground
 * @param frostDepth how deep frost goes
 * @param frostGrip what lifts footings, and what holds them
 * @param pierStiffness how still the piers stand, and how clear of the floor
 * @param concretePlan what fills the holes
 * @param concreteExposure what the concrete must stand
 * @param ownMix cement, sand and stone by weight, where the crew mixes from them
 * @param steelPlan what stands in the concrete
 * @param cutPlan which piece is cut from which bar
 * @param floorFrame beams, joists, boards and posts, where the job asks for them
 * @param powerLine the buried power line, where there is one
 * @param safetyNotes the dangers of this job, and who decides
 * @param startConditions what must be settled before anything begins
 * @param workEstimate how long each task takes
 * @param dayPlan which work on which day
 * @param truckLoads what trucks bring on which day
 * @param supplies small things: paint, covers, fence, forms, bolts
 * @param pourDay the pace of the days of pouring
 * @param buyingList what is bought where, and by when
 */
public record Packet(
    Job job,
    String jobHash,
    Placement placement,
    SitePlan sitePlan,
    TapeTable tapeTable,
    TapeCorrections tapeCorrections,
    MarkAccuracy markAccuracy,
    SafePegs safePegs,
    ProvingMarks provingMarks,
    AsMarked asMarked,
    TrueNorth trueNorth,
    DepthTargets depthTargets,
    Levels levels,
    DigSchedule digSchedule,
    AsDug asDug,
    DugChecks dugChecks,
    FootingLoads footingLoads,
    Bearing bearing,
    FrostDepth frostDepth,
    FrostGrip frostGrip,
    PierStiffness pierStiffness,
    ConcretePlan concretePlan,
    ConcreteExposure concreteExposure,
    OwnMixPlan ownMix,
    SteelPlan steelPlan,
    CutPlan cutPlan,
    FloorFrame floorFrame,
    PowerLine powerLine,
    SafetyNotes safetyNotes,
    StartConditions startConditions,
    WorkEstimate workEstimate,
    DayPlan dayPlan,
    TruckLoads truckLoads,
    Supplies supplies,
    PourDay pourDay,
    BuyingList buyingList) {

  /** Every calculator's result, in the order of the packet's sheets. */
  public List<Result> results() {
    return List.of(
        startConditions,
        placement,
        sitePlan,
        tapeTable,
        tapeCorrections,
        markAccuracy,
        safePegs,
        trueNorth,
        provingMarks,
        asMarked,
        depthTargets,
        levels,
        digSchedule,
        asDug,
        dugChecks,
        workEstimate,
        dayPlan,
        footingLoads,
        bearing,
        frostDepth,
        frostGrip,
        pierStiffness,
        concretePlan,
        concreteExposure,
        ownMix,
        steelPlan,
        cutPlan,
        floorFrame,
        powerLine,
        truckLoads,
        supplies,
        buyingList,
        safetyNotes,
        pourDay);
  }

  /**
   * All findings: stops first, then questions, then notes; each kind in the order of the sheets.
   */
  public List<Finding> findings() {
    return results().stream()
        .flatMap(result -> result.findings().stream())
        .sorted(Comparator.comparing(Finding::kind))
        .toList();
  }

  /** All workings with their numbers. */
  public NumberedWorkings workings() {
    return NumberedWorkings.of(results());
  }
}
