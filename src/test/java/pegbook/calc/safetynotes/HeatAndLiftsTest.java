package pegbook.calc.safetynotes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Working;
import pegbook.job.ExpectedHeat;
import pegbook.measure.Length;
import pegbook.measure.Ratio;
import pegbook.measure.Temperature;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;
import pegbook.published.MarkingColour;
import pegbook.testing.SiteJob;

/** Heat and lifting of a job, worked by hand, in both systems of units. */
class HeatAndLiftsTest {
  private static SafetyNotes notes(double air, double humidity, UnitSystem units) {
    SiteJob site = new SiteJob();
    site.units = units;
    site.heat =
        Optional.of(new ExpectedHeat(Temperature.ofFahrenheit(air), Ratio.ofPercent(humidity)));
    site.hole("S1", Length.ofInches(46));
    return SafetyNotesCalculator.calculate(site.job(), site.holes());
  }

  private static boolean has(SafetyNotes notes, String id) {
    return notes.notes().stream().anyMatch(note -> note.id().equals(id));
  }

  /** NWS SR 90-23: 92 °F at 60 % feel like 104.7 °F, or 40.4 °C; danger begins at 103 °F. */
  @Test
  void dangerAsksTheCrewAndIsToldInItsScale() {
    Finding imperial = notes(92, 60, UnitSystem.IMPERIAL).findings().get(0);
    assertThat(imperial.id()).isEqualTo("heat-danger");
    assertThat(imperial.kind()).isEqualTo(Finding.Kind.ASK);
    assertThat(imperial.arguments())
        .containsEntry("index", Argument.of(Temperature.ofFahrenheit(105)));
    Finding metric = notes(92, 60, UnitSystem.METRIC).findings().get(0);
    assertThat(metric.arguments()).containsEntry("index", Argument.of(Temperature.ofCelsius(41)));
  }

  /** 84 °F at 50 % feel like 86 °F: heat to know of, and no danger. */
  @Test
  void heatBelowDangerIsANoteWithItsClass() {
    SafetyNotes warm = notes(84, 50, UnitSystem.IMPERIAL);
    assertThat(warm.findings()).isEmpty();
    assertThat(warm.notes())
        .filteredOn(note -> note.id().equals("heat-expected"))
        .singleElement()
        .satisfies(
            note ->
                assertThat(note.arguments())
                    .containsEntry("class", Argument.entry("note.heat-class.begin")));
    assertThat(has(warm, "heat")).isFalse();
    assertThat(warm.heatTable()).isEmpty();
    assertThat(warm.workings())
        .extracting(working -> working.formula().id())
        .contains("safety-notes.heat-index");
  }

  /** 70 °F at 50 % feel like 69 °F, less than any class begins at: the table is read on the day. */
  @Test
  void mildAirIsLookedUpInTheTable() {
    SafetyNotes mild = notes(70, 50, UnitSystem.IMPERIAL);
    assertThat(has(mild, "heat-expected")).isFalse();
    assertThat(has(mild, "heat")).isTrue();
    assertThat(mild.heatTable()).isPresent();
    assertThat(mild.findings()).isEmpty();
  }

  /** Classes of the National Weather Service begin at 80, 90, 103 and 125 °F, a hair early. */
  @ParameterizedTest
  @CsvSource({
    "79.999998, NONE",
    "79.9999995, BEGIN",
    "80, BEGIN",
    "89.999998, BEGIN",
    "90, CAUTION",
    "102.999998, CAUTION",
    "102.9999995, DANGER",
    "103, DANGER",
    "124.999998, DANGER",
    "125, EXTREME"
  })
  void classesBeginAtTheirLimitsWithATolerance(double index, HeatIndex.Level level) {
    assertThat(new HeatIndex(index, List.of()).level()).isEqualTo(level);
  }

  /** Where the regression takes over, only its own step is told, and not the simple one. */
  @Test
  void onlyTheStepsThatCountAreTold() {
    assertThat(HeatIndex.of(92, 60).workings()).hasSize(1);
    assertThat(HeatIndex.of(95, 5).workings()).hasSize(2);
    assertThat(HeatIndex.of(75, 50).workings())
        .singleElement()
        .extracting(working -> working.formula().id())
        .isEqualTo("safety-notes.heat-simple");
  }

  /** Rows of 4 °F from 80 and of 2 °C from 27; one column for each tenth of humidity from 40 %. */
  @Test
  void theTableHasSixRowsOfItsScale() {
    HeatTable imperial = HeatTable.of(UnitSystem.IMPERIAL);
    assertThat(imperial.rows())
        .extracting(row -> Math.round(row.air().fahrenheit()))
        .containsExactly(80L, 84L, 88L, 92L, 96L, 100L);
    assertThat(imperial.humidities()).hasSize(6);
    HeatTable metric = HeatTable.of(UnitSystem.METRIC);
    assertThat(metric.rows())
        .extracting(row -> Math.round(row.air().celsius()))
        .containsExactly(27L, 29L, 31L, 33L, 35L, 37L);
  }

  private static List<Double> lift(UnitSystem units, int number) {
    SiteJob site = new SiteJob();
    site.units = units;
    return SafetyNotesFormulas.liftings(site.job()).get(number).limit().inputs();
  }

  /**
   * NIOSH 94-110: the constant is 51 lb or 23 kg, the way counts from 10 in or 250 mm on, a lift a
   * minute takes 0.94 for up to an hour. From the ground 6 in up to 36 in, from a tailgate 32 in: 4
   * in up, counted as ten; in millimetres 150 up to 900, and from 800.
   */
  @Test
  void usualLiftsAreFromTheGroundAndFromATailgate() {
    assertThat(lift(UnitSystem.IMPERIAL, 0).subList(0, 4)).satisfies(near(51, 12, 6, 30));
    assertThat(lift(UnitSystem.IMPERIAL, 1).subList(0, 4)).satisfies(near(51, 12, 32, 10));
    assertThat(lift(UnitSystem.METRIC, 0).subList(0, 4)).satisfies(near(23, 300, 150, 750));
    assertThat(lift(UnitSystem.METRIC, 1).subList(0, 4)).satisfies(near(23, 300, 800, 250));
    assertThat(lift(UnitSystem.METRIC, 0).get(4)).isEqualTo(0.94);
  }

  private static java.util.function.Consumer<List<? extends Double>> near(double... wanted) {
    return values -> {
      for (int i = 0; i < wanted.length; i++) {
        assertThat(values.get(i)).isCloseTo(wanted[i], within(1e-6));
      }
    };
  }

  /**
   * By hand, each factor to two digits: 250/300 is 0.83; 1 − 0.0003 · 600 is 0.82; 0.82 + 45/750 is
   * 0.88; times 0.94 · 0.95 · 23 kg is 12.3. In pounds: 10/12 is 0.83; 1 − 0.0075 · 24 is 0.82;
   * 0.82 + 1.8/30 is 0.88; times 0.94 · 0.95 · 51 lb is 27.3.
   */
  @Test
  void factorsAreRoundedInBothUnits() {
    Working metric =
        new Working(SafetyNotesFormulas.METRIC, "", List.of(23.0, 300.0, 150.0, 750.0, 0.94, 0.95));
    assertThat(SafetyNotesFormulas.byRoundedFactors(metric, false).kilograms())
        .isCloseTo(12.3, within(1e-9));
    Working imperial =
        new Working(SafetyNotesFormulas.IMPERIAL, "", List.of(51.0, 12.0, 6.0, 30.0, 0.94, 0.95));
    assertThat(SafetyNotesFormulas.byRoundedFactors(imperial, true).pounds())
        .isCloseTo(27.3, within(1e-6));
  }

  @Test
  void liftsAreNumberedAndTheirLimitsTold() {
    SafetyNotes notes = notes(70, 50, UnitSystem.IMPERIAL);
    assertThat(notes.workings())
        .filteredOn(working -> working.formula().id().equals("safety-notes.lift-limit"))
        .extracting(Working::subject)
        .containsExactly("1", "2");
    assertThat(notes.liftings()).hasSize(2);
  }

  @Test
  void everySourceOfANoteIsCitedAndNotesOfAStageAreOnlyItsOwn() {
    SafetyNotes notes = notes(84, 50, UnitSystem.IMPERIAL);
    List<Citation> sources = notes.sources();
    assertThat(sources).contains(MarkingColour.SOURCE).doesNotHaveDuplicates();
    notes.notes().forEach(note -> assertThat(sources).containsAll(note.citations()));
    int count = 0;
    for (Note.Stage stage : Note.Stage.values()) {
      assertThat(notes.during(stage)).allSatisfy(n -> assertThat(n.stage()).isEqualTo(stage));
      count += notes.during(stage).size();
    }
    assertThat(count).isEqualTo(notes.notes().size());
  }

  /** Outside the United States its dust and utility rules are not the reader's. */
  @Test
  void rulesOfTheUnitedStatesAreCitedThereOnly() {
    SiteJob there = new SiteJob();
    there.hole("S1", Length.ofInches(46));
    SiteJob elsewhere = new SiteJob();
    elsewhere.country = "DE";
    elsewhere.hole("S1", Length.ofInches(46));
    List<Citation> cited =
        SafetyNotesCalculator.calculate(there.job(), there.holes()).notes().stream()
            .flatMap(note -> note.citations().stream())
            .toList();
    List<Citation> fewer =
        SafetyNotesCalculator.calculate(elsewhere.job(), elsewhere.holes()).notes().stream()
            .flatMap(note -> note.citations().stream())
            .toList();
    assertThat(fewer.size()).isLessThan(cited.size());
  }
}
