package pegbook.jobfile;

import static pegbook.job.Default.Basis.COMMON_PRACTICE;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import pegbook.geometry.Point;
import pegbook.job.Concrete;
import pegbook.job.Crew;
import pegbook.job.Floor;
import pegbook.job.Language;
import pegbook.job.Spoil;
import pegbook.measure.Duration;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Notation;
import pegbook.measure.Pressure;
import pegbook.measure.Ratio;
import pegbook.measure.Volume;

/** What is carried, who works, what is dug out and what goes in. */
final class WorkKeys {
  private static final QuantityValue<Pressure> LOAD =
      Values.pressure("0 psf", "1000 psf", "0 kPa", "50 kPa");

  static final Key<Floor.Use> USE =
      Key.orElse("use", ChoiceValue.of(Floor.Use.class), "\"private deck\"", COMMON_PRACTICE);
  static final Key<Pressure> LIVE = Key.free("live", LOAD);
  static final Key<Pressure> DEAD = Key.free("dead", LOAD);
  static final Key<Pressure> GROUND_SNOW = Key.free("groundSnow", LOAD);
  static final Key<Length> FLOOR_TOP =
      Key.free("top", Values.length("0 in", "30 ft", "0 mm", "9 m"));
  static final Key<Length> BUILD_UP =
      Key.free("buildUp", Values.length("1 in", "4 ft", "25 mm", "1.2 m"));
  static final SectionValue<Floor> FLOOR =
      new SectionValue<>(
          List.of(USE, LIVE, DEAD, GROUND_SNOW, FLOOR_TOP, BUILD_UP, FrameKeys.FRAME),
          fields ->
              new Floor(
                  fields.get(USE),
                  fields.find(LIVE),
                  fields.find(DEAD),
                  fields.find(GROUND_SNOW),
                  fields.find(FLOOR_TOP),
                  fields.find(BUILD_UP),
                  fields.find(FrameKeys.FRAME)));

  static final Key<Integer> PEOPLE =
      Key.orElse("people", new WholeNumber(1, 50), "2", COMMON_PRACTICE);
  static final Key<Duration> HOURS_PER_DAY =
      Key.orElse(
          "hoursPerDay",
          new QuantityValue<>(Notation.DURATIONS, Range.same("1 h", "16 h")),
          "\"6 h\"",
          COMMON_PRACTICE);
  static final Key<LocalDate> START = Key.free("start", Values.DATE);
  static final Key<SortedSet<DayOfWeek>> WORK_DAYS =
      Key.orElse(
          "workDays",
          new MappedValue<>(
              new ListValue<>(new ChoiceValue<>(days()), 1, 7),
              days -> new TreeSet<DayOfWeek>(days)),
          "[\"sat\", \"sun\"]",
          COMMON_PRACTICE);
  static final Key<SortedSet<Language>> DAY_SHEETS =
      Key.free(
          "daySheets",
          new MappedValue<>(
              new ListValue<>(ChoiceValue.of(Language.class), 1, 2),
              languages -> new TreeSet<Language>(languages)));
  static final SectionValue<Crew> CREW =
      new SectionValue<>(
          List.of(PEOPLE, HOURS_PER_DAY, START, WORK_DAYS, DAY_SHEETS, LiftKeys.LIFTS),
          fields ->
              new Crew(
                  fields.get(PEOPLE),
                  fields.get(HOURS_PER_DAY),
                  fields.find(START),
                  fields.get(WORK_DAYS),
                  fields.find(DAY_SHEETS).orElseGet(() -> new TreeSet<>(List.of(Language.ENGLISH))),
                  fields.find(LiftKeys.LIFTS).orElse(List.of())));

  static final Key<Volume> CART =
      Key.orElse(
          "cart",
          Values.volume("0.5 ft3", "40 ft3", "15 L", "1200 L"),
          "\"4 ft3\"",
          "\"100 L\"",
          COMMON_PRACTICE);
  static final Key<Ratio> SWELL = Key.free("swell", Values.ratio("0 %", "150 %"));
  static final Key<Point> SPOIL_PLACE = Key.free("place", Values.PLACE);
  static final SectionValue<Spoil> SPOIL =
      new SectionValue<>(
          List.of(CART, SWELL, SPOIL_PLACE),
          fields -> new Spoil(fields.get(CART), fields.find(SWELL), fields.find(SPOIL_PLACE)));

  static final Key<Mass> BAG =
      Key.orElse(
          "bag",
          Values.mass("10 lb", "220 lb", "5 kg", "100 kg"),
          "\"80 lb\"",
          "\"25 kg\"",
          COMMON_PRACTICE);
  static final Key<Volume> YIELD =
      Key.free("yield", Values.volume("0.05 ft3", "4 ft3", "1 L", "120 L"));
  static final Key<Pressure> STRENGTH =
      Key.orElse(
          "strength",
          Values.pressure("1500 psi", "15000 psi", "10 MPa", "100 MPa"),
          "\"4000 psi\"",
          "\"25 MPa\"",
          COMMON_PRACTICE);
  static final Key<Ratio> WASTE =
      Key.orElse("waste", Values.ratio("0 %", "50 %"), "\"10 %\"", COMMON_PRACTICE);
  static final Key<Ratio> OVER_BREAK = Key.free("overBreak", Values.ratio("0 %", "100 %"));
  static final Key<Ratio> AIR = Key.free("air", Values.ratio("0 %", "12 %"));
  static final Key<Concrete.Mixing> MIXING =
      Key.orElse("mixing", ChoiceValue.of(Concrete.Mixing.class), "\"mixer\"", COMMON_PRACTICE);
  static final Key<Volume> TRUCK_MINIMUM =
      Key.free("truckMinimum", Values.volume("0.25 yd3", "13 yd3", "0.25 m3", "10 m3"));
  static final Key<Volume> BATCH =
      Key.free("batch", Values.volume("0.2 ft3", "18 ft3", "5 L", "500 L"));
  static final SectionValue<Concrete> CONCRETE =
      new SectionValue<>(
          List.of(
              BAG,
              YIELD,
              STRENGTH,
              WASTE,
              OVER_BREAK,
              AIR,
              MIXING,
              TRUCK_MINIMUM,
              BATCH,
              OwnMixKeys.OWN_MIX),
          WorkKeys::isMixedHere,
          fields -> concrete(fields));

  private WorkKeys() {}

  /** What comes from a truck is not mixed on site. */
  private static boolean isMixedHere(Fields fields, Report report) {
    boolean both =
        fields.has(OwnMixKeys.OWN_MIX)
            && fields.find(MIXING).filter(Concrete.Mixing.READY_MIX::equals).isPresent();
    if (both) {
      report.complain(fields.node(OwnMixKeys.OWN_MIX), Complaint.MIX_AND_TRUCK, Map.of());
    }
    return !both;
  }

  private static Concrete concrete(Fields fields) {
    return new Concrete(
        fields.get(BAG),
        fields.find(YIELD),
        fields.get(STRENGTH),
        fields.get(WASTE),
        fields.find(OVER_BREAK),
        fields.find(AIR),
        fields.get(MIXING),
        fields.find(TRUCK_MINIMUM),
        fields.find(BATCH),
        fields.find(OwnMixKeys.OWN_MIX));
  }

  private static Map<String, DayOfWeek> days() {
    Map<String, DayOfWeek> days = new LinkedHashMap<>();
    for (DayOfWeek day : DayOfWeek.values()) {
      days.put(day.name().substring(0, 3).toLowerCase(Locale.ROOT), day);
    }
    return days;
  }
}
