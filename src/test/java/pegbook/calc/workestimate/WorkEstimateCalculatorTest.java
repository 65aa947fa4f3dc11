package pegbook.calc.workestimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.calc.asdug.AsDugCalculator;
import pegbook.calc.depthtargets.DepthTargetsCalculator;
import pegbook.calc.digschedule.DigSchedule;
import pegbook.calc.digschedule.DigScheduleCalculator;
import pegbook.calc.workestimate.WorkEstimate.Basis;
import pegbook.calc.workestimate.WorkEstimate.HoleWork;
import pegbook.calc.workestimate.WorkEstimate.Part;
import pegbook.calc.workestimate.WorkEstimate.PartTime;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.FrostSleeve;
import pegbook.figures.Hole;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.geometry.Point;
import pegbook.job.Digging;
import pegbook.job.Field;
import pegbook.job.Plan;
import pegbook.job.Soil;
import pegbook.job.Spoil;
import pegbook.job.Tool;
import pegbook.measure.Duration;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.published.HandDigRate;
import pegbook.published.HaulRate;
import pegbook.published.WorkRange;
import pegbook.testing.Chance;
import pegbook.testing.DigJob;
import pegbook.testing.TrialPacket;

class WorkEstimateCalculatorTest {
  private static WorkEstimate estimate(DigJob of) {
    return estimate(of, List.of());
  }

  private static WorkEstimate estimate(DigJob of, List<Task> others) {
    return estimate(of, List.of(), others);
  }

  private static WorkEstimate estimate(DigJob of, List<FrostSleeve> sleeves, List<Task> others) {
    List<Hole> holes = DepthTargetsCalculator.calculate(of.job(), of.placement()).holes();
    DigSchedule schedule = DigScheduleCalculator.calculate(of.job(), of.placement(), holes);
    return WorkEstimateCalculator.calculate(
        of.job(),
        new LeftToDig(schedule.digging(), AsDugCalculator.calculate(of.job(), holes).soFar()),
        sleeves,
        others);
  }

  private static List<String> found(WorkEstimate estimate) {
    return estimate.findings().stream().map(Finding::id).toList();
  }

  /** A spade and nothing else, in a hole so wide that it swings. */
  private static DigJob wide(Digging digging, double depthMetres) {
    DigJob job = new DigJob();
    job.units = UnitSystem.METRIC;
    job.digging = digging;
    job.soil = Soil.SAND;
    job.division = new Length(0.001);
    job.supportHole = new Length(1);
    job.acrossCorners = new Length(20);
    job.supportDepth = Optional.of(new Length(depthMetres));
    job.supportGravel = Length.ZERO;
    job.tools.clear();
    job.tools.add(new Tool(Tool.Kind.SPADE, "spade", Optional.empty(), new Length(0.6)));
    return job;
  }

  /** Guild of Project Controls, reference rates, pits up to 2 m²: both bands, every ground. */
  @ParameterizedTest
  @CsvFileSource(
      resources = "/pegbook/digging/hand-dig-rates.csv",
      numLinesToSkip = 1,
      useHeadersInDisplayName = false)
  void timeFollowsThePublishedRates(String ground, double upper, double lower) {
    HandDigRate rate = HandDigRate.find(ground);
    WorkEstimateFormulas formulas = WorkEstimateFormulas.in(UnitSystem.METRIC);
    double across = 2000 / StrictMath.sqrt(Math.PI);
    double again =
        formulas
            .partTime(Part.BY_HAND, rate.citation())
            .function()
            .applyAsDouble(new double[] {across, 0, 1500, 1500, upper, lower});
    assertThat(again).isEqualTo(1.5 / upper + 1.5 / lower, offset(1e-9));
    assertThat(rate.upper().cubicMetresPerHour()).isEqualTo(upper, offset(0.005));
    assertThat(rate.lower().cubicMetresPerHour()).isEqualTo(lower, offset(0.005));
  }

  /** Other publications' rates lie within the range of an open hole, or as near as they say. */
  @ParameterizedTest
  @CsvFileSource(
      resources = "/pegbook/workestimate/other-rates.csv",
      useHeadersInDisplayName = true)
  void otherPublicationsLieInTheRange(String ground, double hours, double miss, String source) {
    HandDigRate rate = HandDigRate.find(ground);
    WorkRange range = WorkRange.find("open");
    double least = range.least() / rate.upper().cubicMetresPerHour();
    double most = range.most() / rate.upper().cubicMetresPerHour();
    assertThat(hours).as(source).isBetween(least * (1 - miss), most);
  }

  /** The same, hand transport of spoil: 6.25, 3.23, 2.13 m³ an hour up to 10, 20, 50 m. */
  @Test
  void cartingFollowsThePublishedRates() {
    DigJob job = wide(Digging.EASY, 1);
    for (HaulRate rate : HaulRate.all()) {
      job.spoil =
          new Spoil(
              Volume.ofLitres(100),
              Optional.empty(),
              Optional.of(new Point(0, rate.upTo().metres() - 10.0001)));
      WorkEstimate estimate = estimate(job);
      Working carry =
          estimate.workings().stream()
              .filter(working -> working.formula().id().equals("work-estimate.carry-time"))
              .filter(working -> working.inputs().get(1) == rate.rate().cubicMetresPerHour())
              .findFirst()
              .orElseThrow();
      assertThat(carry.result() * rate.rate().cubicMetresPerHour())
          .isEqualTo(carry.inputs().get(0), offset(1e-9));
    }
  }

  /**
   * By the pencil: 1 m across, 1 m deep in loose soil: π/4 m³ at 0.50 m³/h is 1.571 h; range 1 to
   * 2.5, cleaning 10 to 25 minutes: 1.74 down to 1½, 4.34 up to 4½.
   */
  @Test
  void anOpenHoleByThePencil() {
    HoleWork work = estimate(wide(Digging.EASY, 1)).dig("S1");
    assertThat(work.least().hours()).isEqualTo(1.5);
    assertThat(work.most().hours()).isEqualTo(4.5);
    assertThat(work.parts()).extracting(PartTime::part).containsExactly(Part.BY_HAND, Part.CLEAR);
    assertThat(work.part(Part.BY_HAND).orElseThrow().least().hours())
        .isEqualTo(1.5708, offset(0.00005));
    assertThat(work.basis()).isEqualTo(Basis.RATES);
  }

  /** By the pencil, in inches: an 18 in hole, an 8 in auger from 24 to 46 in; firm 0.43 m³/h. */
  @Test
  void anAugerLeavesARingToWiden() {
    DigJob job = new DigJob();
    job.supportDepth = Optional.of(Length.ofInches(42));
    HoleWork work = estimate(job).dig("S1");
    double rate = 0.43 / 0.028316846592;
    double auger = Math.PI * 64 / 4 * 22 / 1728 / rate;
    double ring = Math.PI * (324 - 64) / 4 * 22 / 1728 / rate;
    assertThat(work.part(Part.AUGER).orElseThrow().least().hours())
        .isEqualTo(1.5 * auger, offset(1e-6));
    assertThat(work.part(Part.WIDEN).orElseThrow().most().hours())
        .isEqualTo(4 * ring, offset(1e-6));
  }

  @Test
  @Tag("long")
  void partsMakeUpTheWhole() {
    TrialPacket.examples().forEach(WorkEstimateCalculatorTest::addUp);
  }

  private static void addUp(TrialPacket trial) {
    for (HoleWork work : trial.packet().workEstimate().holes()) {
      if (work.basis() == Basis.DUG) {
        assertThat(work.most()).isEqualTo(Duration.ZERO);
        continue;
      }
      double least = work.parts().stream().mapToDouble(part -> part.least().hours()).sum();
      double most = work.parts().stream().mapToDouble(part -> part.most().hours()).sum();
      assertThat(work.least().hours()).isBetween(Math.max(0.5, least - 0.5), Math.max(0.5, least));
      assertThat(work.most().hours()).isBetween(most - 1e-6, most + 0.5);
    }
  }

  private static DigJob withPowerAuger() {
    DigJob job = new DigJob();
    job.tools.add(
        new Tool(
            Tool.Kind.POWER_AUGER,
            "power auger",
            Optional.of(Length.ofInches(18)),
            Length.ofInches(60)));
    return job;
  }

  @Test
  void aPowerAugerSavesTimeAndIsStartedByHand() {
    HoleWork byHand = estimate(new DigJob()).dig("S1");
    HoleWork bored = estimate(withPowerAuger()).dig("S1");
    assertThat(bored.least()).isLessThanOrEqualTo(byHand.least());
    assertThat(bored.most()).isLessThan(byHand.most());
    assertThat(bored.parts())
        .extracting(PartTime::part)
        .containsExactly(Part.START, Part.AUGER, Part.CLEAR);
  }

  @Test
  void aBookedMachineBoresOnItsOwn() {
    DigJob job = withPowerAuger();
    assertThat(estimate(job).tasks()).noneMatch(task -> task.kind() == Task.Kind.BORE);
    job.plan =
        new Plan(
            0,
            Optional.of(new Plan.Machine("auger", Plan.Purpose.DIGGING, LocalDate.of(2027, 5, 8))),
            Plan.PLAIN.utility(),
            Plan.PLAIN.inspection(),
            Plan.PLAIN.loadAfter(),
            Optional.empty(),
            List.of());
    WorkEstimate booked = estimate(job);
    for (HoleWork work : booked.holes()) {
      Task bore = booked.task(Task.Kind.BORE, work.hole().mark()).orElseThrow();
      Task rest = booked.task(Task.Kind.DIG, work.hole().mark()).orElseThrow();
      assertThat(bore.least().plus(rest.least()).hours())
          .isEqualTo(work.least().hours(), offset(1e-9));
      assertThat(bore.most().plus(rest.most()).hours())
          .isEqualTo(work.most().hours(), offset(1e-9));
      assertThat(bore.most().hours()).isPositive();
    }
  }

  @Test
  void rockHasItsOwnRateAndAFinding() {
    DigJob job = new DigJob();
    job.soil = Soil.ROCK;
    WorkEstimate estimate = estimate(job);
    assertThat(found(estimate)).contains("rock-digging");
    assertThat(estimate.rate().ground()).isEqualTo("rock");
  }

  static Stream<String> grounds() {
    return Stream.of("CLAY EASY heavy", "SAND STONY boulder-clay", "SANDY_CLAY EASY firm");
  }

  @ParameterizedTest
  @MethodSource("grounds")
  void theSlowerOfSoilAndDiggingCounts(String ground) {
    String[] words = ground.split(" ", -1);
    DigJob job = new DigJob();
    job.soil = Soil.valueOf(words[0]);
    job.digging = Digging.valueOf(words[1]);
    assertThat(estimate(job).rate().ground()).isEqualTo(words[2]);
  }

  @Test
  void beyondTheRatesIsSaid() {
    DigJob job = new DigJob();
    job.supportDepth = Optional.of(new Length(3.2));
    assertThat(found(estimate(job))).contains("dig-rate-outside");
    job.supportDepth = Optional.empty();
    job.spoil = new Spoil(Volume.ofCubicFeet(3), Optional.empty(), Optional.of(new Point(80, 0)));
    assertThat(found(estimate(job))).containsExactly("haul-far");
  }

  /** What the job says stands: at one hole, else at all of them. */
  @Test
  void theJobsOwnHoursStand() {
    DigJob job = new DigJob();
    job.plan =
        new Plan(
            0,
            Optional.empty(),
            Plan.PLAIN.utility(),
            Plan.PLAIN.inspection(),
            Plan.PLAIN.loadAfter(),
            Optional.empty(),
            List.of(
                own(Plan.Work.DIG, Optional.of("S2"), 7, 8),
                own(Plan.Work.DIG, Optional.empty(), 2, 3),
                own(Plan.Work.POUR, Optional.empty(), 1, 1)));
    Task pour = new Task(Task.Kind.POUR, Optional.of("S1"), new Duration(4), new Duration(9));
    WorkEstimate estimate = estimate(job, List.of(pour));
    assertThat(estimate.dig("S2").most().hours()).isEqualTo(8);
    assertThat(estimate.dig("S1").least().hours()).isEqualTo(2);
    assertThat(estimate.dig("S1").basis()).isEqualTo(Basis.JOB);
    assertThat(estimate.task(Task.Kind.POUR, "S1").orElseThrow().most().hours()).isEqualTo(1);
  }

  private static Plan.Estimate own(
      Plan.Work work, Optional<String> hole, double least, double most) {
    return new Plan.Estimate(work, hole, new Duration(least), new Duration(most));
  }

  /** A hole that took twice the published rate makes its likes take twice, give or take. */
  @Test
  void aFirstHoleRescalesTheRest() {
    DigJob job = wide(Digging.EASY, 1);
    double atRate = Math.PI / 4 / 0.5;
    job.field = new Field(List.of(), List.of(Field.Dug.inHours("S3", new Duration(2 * atRate))));
    WorkEstimate estimate = estimate(job);
    assertThat(estimate.real().orElseThrow().factor()).isEqualTo(2, offset(1e-9));
    HoleWork dug = estimate.dig("S3");
    assertThat(dug.basis()).isEqualTo(Basis.DUG);
    assertThat(dug.most()).isEqualTo(Duration.ZERO);
    assertThat(estimate.task(Task.Kind.DIG, "S3")).isEmpty();
    assertThat(estimate.task(Task.Kind.CARRY_SPOIL, "S3")).isEmpty();
    HoleWork other = estimate.dig("S1");
    assertThat(other.basis()).isEqualTo(Basis.RESCALED);
    assertThat(other.least().hours()).isEqualTo(2);
    assertThat(other.most().hours()).isEqualTo(5);
    Finding note = estimate.findings().get(0);
    assertThat(note.id()).isEqualTo("hours-rescaled");
    assertThat(note.arguments()).containsEntry("most", Argument.of(new Duration(4.5)));
  }

  private static Field.Dug found(String hole, double metres, Optional<Duration> hours) {
    return new Field.Dug(
        hole,
        hours,
        Optional.of(new Length(metres)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /**
   * By the pencil: of 1 m in loose soil 0.75 m are dug, so a quarter is left: 0.393 h at the rate,
   * and a quarter of the soil to cart.
   */
  @Test
  void aHoleThatIsTooShallowKeepsItsRest() {
    DigJob job = wide(Digging.EASY, 1);
    WorkEstimate before = estimate(job);
    job.field = new Field(List.of(), List.of(found("S1", 0.75, Optional.empty())));
    WorkEstimate estimate = estimate(job);
    HoleWork rest = estimate.dig("S1");
    assertThat(rest.basis()).isEqualTo(Basis.RATES);
    assertThat(rest.begun()).isTrue();
    assertThat(rest.part(Part.BY_HAND).orElseThrow().least().hours())
        .isEqualTo(Math.PI / 4 / 4 / 0.5, offset(1e-6));
    assertThat(estimate.begun()).containsExactly("S1");
    assertThat(estimate.dig("S2")).isEqualTo(before.dig("S2"));
    assertThat(estimate.task(Task.Kind.CARRY_SPOIL, "S1").orElseThrow().most().hours())
        .isEqualTo(
            before.task(Task.Kind.CARRY_SPOIL, "S1").orElseThrow().most().hours() / 4,
            offset(1e-9));
    job.plan =
        new Plan(
            0,
            Optional.empty(),
            Plan.PLAIN.utility(),
            Plan.PLAIN.inspection(),
            Plan.PLAIN.loadAfter(),
            Optional.empty(),
            List.of(own(Plan.Work.DIG, Optional.empty(), 4, 8)));
    assertThat(estimate(job).dig("S1").most()).isEqualTo(h(2));
    assertThat(estimate(job).dig("S2").most()).isEqualTo(h(8));
  }

  private static Duration h(double hours) {
    return new Duration(hours);
  }

  /** Three quarters dug in the hours of the whole at the rate: 4/3 of the published time. */
  @Test
  void hoursOfAPartAreHeldAgainstThatPart() {
    DigJob job = wide(Digging.EASY, 1);
    double whole = Math.PI / 4 / 0.5;
    job.field = new Field(List.of(), List.of(found("S1", 0.75, Optional.of(new Duration(whole)))));
    assertThat(estimate(job).real().orElseThrow().factor()).isEqualTo(4.0 / 3, offset(1e-9));
  }

  /** Painted, proved and pegged is before the first hole; the rest of the list stays. */
  @Test
  void whatComesBeforeTheFirstHoleIsDoneWithIt() {
    DigJob job = wide(Digging.EASY, 1);
    List<Task> others =
        List.of(
            new Task(Task.Kind.MARK_OUT, Optional.empty(), h(1), h(2)),
            new Task(Task.Kind.SET_PEGS, Optional.empty(), h(1), h(2)),
            new Task(Task.Kind.POUR, Optional.of("S1"), h(1), h(2)));
    assertThat(estimate(job, others).tasks()).containsAll(others);
    job.field = new Field(List.of(), List.of(found("S1", 1, Optional.empty())));
    assertThat(estimate(job, others).tasks()).contains(others.get(2)).doesNotContain(others.get(0));
    assertThat(estimate(job, others).task(Task.Kind.DIG, "S1")).isEmpty();
  }

  /** Rock on the way: what is left goes at the rate of rock. */
  @Test
  void whatIsLeftInRockTakesTheRateOfRock() {
    DigJob job = wide(Digging.EASY, 1);
    job.field = new Field(List.of(), List.of(found("S1", 0.75, Optional.empty())));
    Duration soil = estimate(job).dig("S1").most();
    Field.Dug dug = job.field.dug().get(0);
    job.field =
        new Field(
            List.of(),
            List.of(
                new Field.Dug(
                    "S1",
                    dug.hours(),
                    dug.depth(),
                    dug.diameter(),
                    dug.movedBy(),
                    dug.soil(),
                    dug.water(),
                    Optional.of(new Length(0.75)))));
    assertThat(estimate(job).dig("S1").most()).isGreaterThan(soil);
  }

  @Property(tries = 60, seed = Chance.SEED)
  void aSlowerFirstHoleNeverMakesTheOthersQuicker(
      @ForAll @DoubleRange(min = 0.5, max = 20) double hours,
      @ForAll @DoubleRange(min = 1, max = 3) double slower) {
    DigJob job = new DigJob();
    job.field = new Field(List.of(), List.of(Field.Dug.inHours("S1", new Duration(hours))));
    HoleWork quick = estimate(job).dig("S2");
    job.field =
        new Field(List.of(), List.of(Field.Dug.inHours("S1", new Duration(hours * slower))));
    HoleWork slow = estimate(job).dig("S2");
    assertThat(slow.least()).isGreaterThanOrEqualTo(quick.least());
    assertThat(slow.most()).isGreaterThanOrEqualTo(quick.most());
  }

  @Property(tries = 100, seed = Chance.SEED)
  void harderGroundDeeperAndWiderTakeNoLess(
      @ForAll Soil soil,
      @ForAll @DoubleRange(min = 8, max = 40) double hole,
      @ForAll @DoubleRange(min = 12, max = 90) double depth) {
    double before = 0;
    for (Digging digging : List.of(Digging.EASY, Digging.ORDINARY, Digging.HEAVY, Digging.STONY)) {
      DigJob job = new DigJob();
      job.acrossCorners = Length.ofFeet(40);
      job.supportHole = Length.ofInches(hole);
      job.supportDepth = Optional.of(Length.ofInches(depth));
      job.soil = soil;
      job.digging = digging;
      HoleWork work = estimate(job).dig("S1");
      assertThat(work.most().hours()).isGreaterThanOrEqualTo(before);
      assertThat(work.least().hours()).isBetween(0.5, work.most().hours());
      before = work.most().hours();
      job.supportDepth = Optional.of(Length.ofInches(depth * 1.3));
      assertThat(estimate(job).dig("S1").most().hours()).isGreaterThanOrEqualTo(before);
    }
  }

  /** Inches or millimetres, the hours are the same. */
  @Test
  void unitsMakeNoDifference() {
    List<List<Duration>> both = new ArrayList<>();
    for (UnitSystem units : UnitSystem.values()) {
      DigJob job = new DigJob().pier("P1", Point.ORIGIN, Optional.of(Length.ofInches(70)));
      job.units = units;
      job.supportDepth = Optional.of(Length.ofInches(42));
      both.add(estimate(job).holes().stream().map(HoleWork::most).toList());
    }
    assertThat(both.get(0)).isEqualTo(both.get(1)).isNotEmpty();
  }

  /** A hole without a tube has nothing to set but its sleeve, and nothing to strip. */
  @Test
  void aSleeveAgainstFrostIsSetWithTheForms() {
    Length length = Length.ofInches(42);
    List<FrostSleeve> sleeves = List.of(new FrostSleeve("S1", Length.ofInches(18), length));
    WorkEstimate estimate = estimate(new DigJob(), sleeves, List.of());
    assertThat(estimate.task(Task.Kind.FORM, "S1")).isPresent();
    assertThat(estimate.task(Task.Kind.FORM, "S2")).isEmpty();
    assertThat(estimate.task(Task.Kind.STRIP, "S1")).isEmpty();
  }

  @Test
  @Tag("long")
  void formsAreSetAndStrippedWhereThereIsATube() {
    TrialPacket deck = TrialPacket.example(java.nio.file.Path.of("input/sky-deck.json"));
    WorkEstimate estimate = deck.packet().workEstimate();
    Task support = estimate.task(Task.Kind.FORM, "S1").orElseThrow();
    Task pier = estimate.task(Task.Kind.FORM, "P1").orElseThrow();
    assertThat(support.least().minutes()).isEqualTo(10, offset(1e-9));
    assertThat(pier.least().minutes()).as("both sleeves and anchors").isEqualTo(40, offset(1e-9));
    assertThat(estimate.task(Task.Kind.STRIP, "S1")).isPresent();
    TrialPacket plain = TrialPacket.example(java.nio.file.Path.of("input/smallest.json"));
    assertThat(plain.packet().workEstimate().task(Task.Kind.FORM, "S1")).isEmpty();
  }
}
