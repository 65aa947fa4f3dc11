package pegbook.calc.safetynotes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.job.Concrete;
import pegbook.job.Digging;
import pegbook.job.Feature;
import pegbook.job.Steel;
import pegbook.job.Tool;
import pegbook.job.UtilityMarking;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.UnitSystem;
import pegbook.published.LiftFrequency;
import pegbook.published.MarkingColour;
import pegbook.published.SafetyLimit;
import pegbook.testing.FootingJob;
import pegbook.testing.SiteJob;

class SafetyNotesCalculatorTest {
  private static final Optional<Steel> FOUR_BARS =
      Optional.of(
          new Steel(
              4,
              "#4",
              Optional.empty(),
              Length.ofInches(3),
              Steel.Foot.STRAIGHT,
              Optional.empty()));

  private static SafetyNotes notes(Consumer<SiteJob> change) {
    SiteJob site = new SiteJob();
    change.accept(site);
    if (site.holes().isEmpty()) {
      site.hole("S1", Length.ofInches(46)).hole("S2", Length.ofInches(46));
    }
    return SafetyNotesCalculator.calculate(site.job(), site.holes());
  }

  private static List<String> ids(SafetyNotes notes) {
    return notes.notes().stream().map(Note::id).toList();
  }

  private static Note note(SafetyNotes notes, String id) {
    return notes.notes().stream().filter(some -> some.id().equals(id)).findFirst().orElseThrow();
  }

  // Published

  @ParameterizedTest
  @CsvFileSource(resources = "/pegbook/safety/thresholds.csv", useHeadersInDisplayName = true)
  void thresholdsAreThePublishedOnes(String id, double value, String unit) {
    assertThat(SafetyLimit.find(id).value()).as("%s in %s", id, unit).isEqualTo(value);
  }

  @Test
  void marksHaveTheColoursOfTheCode() throws Exception {
    String published =
        new String(
            SafetyNotesCalculatorTest.class
                .getResourceAsStream("/pegbook/safety/marking-colours.csv")
                .readAllBytes(),
            java.nio.charset.StandardCharsets.UTF_8);
    Set<String> colours =
        published
            .lines()
            .filter(line -> !line.startsWith("#"))
            .skip(1)
            .map(line -> line.substring(0, line.indexOf(',')))
            .collect(Collectors.toSet());
    assertThat(MarkingColour.all())
        .extracting(MarkingColour::colour)
        .containsExactlyInAnyOrderElementsOf(colours);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/pegbook/safety/lift-factors.csv", useHeadersInDisplayName = true)
  void liftLimitReproducesTheExample(
      double reach, double from, double up, double frequency, double grip, double limit) {
    double[] numbers = {51, reach, from, up, frequency, grip};
    assertThat(SafetyNotesFormulas.IMPERIAL.function().applyAsDouble(numbers))
        .isCloseTo(limit, within(0.05));
  }

  /** Example 4 of the publication, figure 14: rounded factors give 34.9 lb, exact ones 34.8 lb. */
  @Test
  void roundedFactorsGiveThePrintedExample() {
    assertThat(Lifting.rounded(51, List.of(1.0, 0.94, 0.82 + 1.8 / 37, 1.0, 0.88, 0.95)))
        .isEqualTo(34.9, within(1e-9));
    Working exact =
        new Working(SafetyNotesFormulas.IMPERIAL, "", List.of(51.0, 10.0, 22.0, 37.0, 0.88, 0.95));
    assertThat(exact.result()).isCloseTo(34.8, within(0.05));
    assertThat(SafetyNotesFormulas.byRoundedFactors(exact, true).pounds())
        .isCloseTo(34.9, within(1e-6));
  }

  /** Table 5, page 15: work of an hour or less. */
  @ParameterizedTest
  @CsvSource({"1, 0.94", "4, 0.84", "8, 0.60", "12, 0.37"})
  void theOftenerTheLess(int perMinute, double factor) {
    assertThat(LiftFrequency.factor(perMinute, Length.ofInches(6))).isEqualTo(factor);
    assertThat(LiftFrequency.factor(perMinute, Length.ofInches(40))).isEqualTo(factor);
  }

  @Test
  void theUsualLiftsAreToldAndTheHardestDecides() {
    List<Lifting> liftings = SafetyNotesFormulas.liftings(new SiteJob().job());
    assertThat(liftings).hasSize(2);
    assertThat(liftings.get(0).limit().asMass())
        .as("from the ground less than from a tailgate")
        .isLessThan(liftings.get(1).limit().asMass());
    assertThat(liftings.get(0).index().fraction())
        .isCloseTo(80 / liftings.get(0).limit().asMass().pounds(), within(1e-9));
  }

  /** The two forms of the equation have rounded constants of their own, but must tell one story. */
  @Test
  void liftLimitIsAboutTheSameInBothUnits() {
    Mass imperial = SafetyNotesFormulas.oneBag(UnitSystem.IMPERIAL).asMass();
    Mass metric = SafetyNotesFormulas.oneBag(UnitSystem.METRIC).asMass();
    assertThat(metric.kilograms()).isCloseTo(imperial.kilograms(), within(0.5));
  }

  // Depths

  @ParameterizedTest
  @CsvSource({
    "47.9, false, true, false",
    "48, true, true, false",
    "59.9, true, true, false",
    "59.99, true, false, true", // 60 in less than the tolerance of 0.5 mm
    "60, true, false, true",
    "72, true, false, true"
  })
  void depthRulesBeginAtTheirThresholds(
      double inches, boolean fourFeet, boolean shallow, boolean deep) {
    List<String> ids = ids(notes(site -> site.hole("S1", Length.ofInches(inches))));
    assertThat(ids.contains("four-feet")).isEqualTo(fourFeet);
    assertThat(ids.contains("cave-in-shallow")).isEqualTo(shallow);
    assertThat(ids.contains("cave-in-deep")).isEqualTo(deep);
    assertThat(ids).contains("no-entry");
  }

  @Test
  void depthNotesNameTheirHolesOnly() {
    SafetyNotes notes =
        notes(site -> site.hole("S1", Length.ofInches(46)).hole("P1", Length.ofInches(62)));
    assertThat(note(notes, "cave-in-deep").marks()).containsExactly("P1");
    assertThat(note(notes, "cave-in-shallow").marks()).containsExactly("S1");
    assertThat(note(notes, "four-feet").marks()).containsExactly("P1");
  }

  @Test
  void aDeepHoleThatTakesAPersonStops() {
    SafetyNotes notes =
        notes(
            site ->
                site.hole("S1", Length.ofInches(59))
                    .hole("S2", Length.ofInches(61), Length.ofInches(10), Optional.empty())
                    .hole("P1", Length.ofInches(60))
                    .hole("P2", Length.ofInches(66)));
    assertThat(notes.findings()).hasSize(1);
    Finding finding = notes.findings().get(0);
    assertThat(finding.kind()).isEqualTo(Finding.Kind.STOP);
    assertThat(finding.subjects()).containsExactly("P1", "P2");
    assertThat(finding.arguments())
        .containsEntry("deepest", Argument.of(Length.ofInches(66)))
        .containsEntry("limit", Argument.of(Length.ofFeet(5)));
  }

  @Test
  void holesUnderFiveFeetDoNotStop() {
    assertThat(notes(site -> site.hole("P1", Length.ofInches(58))).findings()).isEmpty();
  }

  @Test
  void waterMattersOnlyWhereAHoleReachesIt() {
    SafetyNotes wet =
        notes(
            site -> {
              site.water = Optional.of(Length.ofInches(50));
              site.hole("S1", Length.ofInches(46)).hole("P1", Length.ofInches(56));
            });
    assertThat(note(wet, "water").marks()).containsExactly("P1");
    SafetyNotes dry =
        notes(
            site -> {
              site.water = Optional.of(Length.ofInches(50));
              site.hole("S1", Length.ofInches(46));
            });
    assertThat(ids(dry)).doesNotContain("water");
  }

  // Tools and ground

  @Test
  void onlyToolsOfTheJobHaveNotes() {
    assertThat(ids(notes(site -> {})))
        .doesNotContain("power-auger", "hand-auger", "clamshell", "spade", "digging-bar");
    assertThat(ids(notes(site -> site.tools.addAll(EnumSet.allOf(Tool.Kind.class)))))
        .contains("power-auger", "hand-auger", "clamshell", "spade", "digging-bar");
  }

  @Test
  void stonesMakeThePowerAugerKick() {
    SafetyNotes stony =
        notes(
            site -> {
              site.tools.add(Tool.Kind.POWER_AUGER);
              site.digging = Digging.STONY;
            });
    assertThat(ids(stony)).contains("stones", "stone-dust");
    assertThat(note(stony, "power-auger").arguments())
        .containsEntry("catch", Argument.entry("note.catch.stones"));
    assertThat(ids(notes(site -> {}))).doesNotContain("stones", "stone-dust");
  }

  @Test
  void linesAndWiresAreNamedWhereTheJobNamesThem() {
    SafetyNotes notes =
        notes(
            site ->
                site.feature("gas line", Feature.Kind.BURIED_LINE)
                    .feature("oak", Feature.Kind.OBJECT)
                    .feature("service drop", Feature.Kind.OVERHEAD_WIRE));
    assertThat(note(notes, "known-lines").arguments())
        .containsEntry("lines", Argument.of(List.of("gas line")));
    assertThat(note(notes, "overhead-wires").arguments())
        .containsEntry("wires", Argument.of(List.of("service drop")))
        .containsEntry("clear", Argument.of(Length.ofFeet(10)));
    assertThat(ids(notes(site -> {}))).doesNotContain("known-lines", "overhead-wires");
  }

  @Test
  void confirmedMarksAreToBeFoundAgain() {
    SafetyNotes marked =
        notes(
            site ->
                site.utilities =
                    Optional.of(
                        new UtilityMarking(LocalDate.of(2027, 5, 2), Optional.of("12345"))));
    assertThat(ids(marked)).contains("utilities-marked").doesNotContain("utilities");
    assertThat(ids(notes(site -> {}))).contains("utilities").doesNotContain("utilities-marked");
  }

  // Steel and concrete

  @Test
  void aJobWithoutSteelHasNoBarEnds() {
    assertThat(ids(notes(site -> {}))).doesNotContain("bar-ends", "cut-steel", "ground-fault");
  }

  @Test
  void barEndsAreCounted() {
    SafetyNotes notes =
        notes(
            site ->
                site.hole("S1", Length.ofInches(46), Length.ofInches(18), FOUR_BARS)
                    .hole("S2", Length.ofInches(46), Length.ofInches(18), FOUR_BARS)
                    .hole("P1", Length.ofInches(46)));
    Note ends = note(notes, "bar-ends");
    assertThat(ends.arguments()).containsEntry("ends", Argument.of(8));
    assertThat(ends.marks()).containsExactly("S1", "S2");
  }

  @Test
  void bagsAreLiftedAndBreatheDustOnlyWhereThereAreBags() {
    assertThat(ids(notes(site -> {}))).contains("lift-together", "cement-dust");
    List<String> truck = ids(notes(site -> site.mixing = Concrete.Mixing.READY_MIX));
    assertThat(truck)
        .contains("truck", "cement-burns")
        .doesNotContain("lift-together", "lift-well", "cement-dust");
  }

  @ParameterizedTest
  @CsvSource({"80, lift-together", "26, lift-together", "25, lift-well", "10, lift-well"})
  void heavyBagsTakeTwo(double pounds, String id) {
    assertThat(ids(notes(site -> site.bag = Mass.ofPounds(pounds)))).contains(id);
  }

  // People and weather

  @ParameterizedTest
  @CsvSource({
    "44.9, 2027-07-01, true, false",
    "44.9, 2027-01-15, false, true",
    "44.9, 2027-04-15, true, true",
    "-35, 2027-01-15, true, false",
    "-35, 2027-07-15, false, true",
    "5, 2027-01-15, true, false"
  })
  void seasonFollowsStartAndLatitude(double latitude, LocalDate start, boolean hot, boolean cold) {
    List<String> ids =
        ids(
            notes(
                site -> {
                  site.latitude = Optional.of(Angle.ofDegrees(latitude));
                  site.start = Optional.of(start);
                }));
    assertThat(ids.contains("heat")).isEqualTo(hot);
    assertThat(ids.contains("cold")).isEqualTo(cold);
  }

  @Test
  void unknownSeasonMayBeEither() {
    assertThat(ids(notes(site -> {}))).contains("heat", "cold");
  }

  @Test
  void onePersonIsWarnedAboutWorkingAlone() {
    assertThat(ids(notes(site -> site.people = 1))).contains("alone");
    assertThat(ids(notes(site -> {}))).doesNotContain("alone");
  }

  // Elsewhere

  @ParameterizedTest
  @ValueSource(strings = {"GB", "CA", "AU", "NZ", "NO", "DE"})
  void noRuleOfTheUnitedStatesIsNamedElsewhere(String country) {
    SafetyNotes notes =
        notes(
            site -> {
              site.country = country;
              site.digging = Digging.STONY;
              site.tools.addAll(EnumSet.allOf(Tool.Kind.class));
              site.feature("gas line", Feature.Kind.BURIED_LINE)
                  .feature("wire", Feature.Kind.OVERHEAD_WIRE)
                  .hole("S1", Length.ofInches(70), Length.ofInches(18), FOUR_BARS);
            });
    assertThat(notes.notes())
        .allSatisfy(
            note -> {
              assertThat(note.citations()).as(note.id()).isNotEmpty();
              assertThat(note.citations())
                  .as(note.id())
                  .noneMatch(
                      citation ->
                          citation.publication().startsWith("cfr-")
                              || citation.publication().equals("one-call"));
            });
    assertThat(ids(notes))
        .contains("cave-in-elsewhere", "utilities-elsewhere")
        .doesNotContain("four-feet", "cave-in-deep", "utilities");
  }

  @Test
  void britainAndAustraliaHaveTheirOwnPublications() {
    assertThat(note(notes(site -> site.country = "GB"), "spoil-back").citations())
        .extracting(citation -> citation.publication())
        .containsExactly("gb-hsg150", "gb-cdm");
    assertThat(note(notes(site -> site.country = "AU"), "utilities-elsewhere").citations())
        .extracting(citation -> citation.publication())
        .containsExactly("au-dig");
  }

  // Order and the day's dangers

  @Test
  void notesRunByStageTheWorstFirst() {
    List<Note> notes = notes(site -> site.tools.addAll(EnumSet.allOf(Tool.Kind.class))).notes();
    assertThat(IntStream.range(1, notes.size()))
        .allMatch(
            at -> {
              Note before = notes.get(at - 1);
              Note after = notes.get(at);
              return before.stage().compareTo(after.stage()) < 0
                  || (before.stage() == after.stage() && before.danger() <= after.danger());
            });
    assertThat(notes).extracting(Note::id).doesNotHaveDuplicates();
  }

  @Test
  void aDigDayAndAPourDayHaveDifferentDangers() {
    SafetyNotes notes =
        notes(
            site -> {
              site.tools.add(Tool.Kind.POWER_AUGER);
              site.hole("S1", Length.ofInches(46), Length.ofInches(18), FOUR_BARS);
            });
    assertThat(notes.dangers(List.of("S1"), List.of(Task.Kind.DIG), 3))
        .extracting(Note::id)
        .containsExactly("no-entry", "utilities", "power-auger");
    assertThat(notes.dangers(List.of("S1"), List.of(Task.Kind.STEEL, Task.Kind.POUR), 3))
        .extracting(Note::id)
        .containsExactly("no-entry", "bar-ends", "cement-burns");
    assertThat(notes.dangers(List.of("S1"), List.of(Task.Kind.MARK_OUT), 3))
        .extracting(Note::id)
        .first()
        .isEqualTo("utilities");
  }

  @Test
  void theDaysDangersAreOnlyThoseOfTheDaysHoles() {
    SafetyNotes notes =
        notes(site -> site.hole("S1", Length.ofInches(46)).hole("P1", Length.ofInches(62)));
    assertThat(notes.dangers(List.of("S1"), List.of(Task.Kind.DIG), 30))
        .extracting(Note::id)
        .doesNotContain("cave-in-deep");
    assertThat(notes.dangers(List.of("P1"), List.of(Task.Kind.DIG), 3))
        .extracting(Note::id)
        .contains("cave-in-deep");
  }

  @Test
  void everyStageHasANote() {
    assertThat(notes(site -> {}).notes())
        .extracting(Note::stage)
        .contains(
            Stream.of(Note.Stage.values())
                .filter(stage -> stage != Note.Stage.FLOOR)
                .toArray(Note.Stage[]::new));
  }

  /** Posts that fall, open joists, saws: only where the packet has the frame. */
  @Test
  void theFloorsNotesComeWithItsFrame() {
    FootingJob parts = new FootingJob();
    assertThat(new FloorNotes(parts.job()).notes()).isEmpty();
    parts.floor = "{ \"frame\": { \"species\": \"hem fir\" } }";
    assertThat(new FloorNotes(parts.job()).notes())
        .extracting(Note::id)
        .contains("frame-brace", "frame-walk");
  }

  @Test
  void theDeepestHoleIsTheOneDugDeepest() {
    SafetyNotes notes =
        notes(site -> site.hole("S1", Length.ofInches(46)).hole("P1", Length.ofInches(58)));
    assertThat(note(notes, "no-entry").arguments())
        .containsEntry("deepest", Argument.of(Length.ofInches(58)));
  }
}
