package pegbook.jobfile;

import static pegbook.job.Default.Basis.COMMON_PRACTICE;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pegbook.job.DaySpan;
import pegbook.job.Plan;
import pegbook.measure.Duration;
import pegbook.measure.Notation;

/** What the days must reckon with. */
final class PlanKeys {
  private static final Pattern SPAN = Pattern.compile("([0-9]{1,3}) (work )?days?");
  private static final CheckedText<DaySpan> DAY_SPAN =
      new CheckedText<>(Complaint.DAY_SPAN, PlanKeys::span);

  /** Person-hours of one task, or of all days that one hole took. */
  static final QuantityValue<Duration> PERSON_HOURS =
      new QuantityValue<>(Notation.DURATIONS, Range.same("1 min", "500 h"));

  static final Key<Integer> RAIN_DAYS =
      Key.orElse("rainDays", new WholeNumber(0, 60), "1", COMMON_PRACTICE);

  static final Key<String> WHAT = Key.required("what", Values.NAME, "\"auger on a small loader\"");
  static final Key<Plan.Purpose> PURPOSE =
      Key.required("for", ChoiceValue.of(Plan.Purpose.class), "\"digging\"");
  static final Key<LocalDate> MACHINE_DATE = Key.required("date", Values.DATE, "\"2027-05-15\"");
  static final Key<Plan.Machine> MACHINE =
      Key.free(
          "machine",
          new SectionValue<>(
              List.of(WHAT, PURPOSE, MACHINE_DATE),
              fields ->
                  new Plan.Machine(
                      fields.get(WHAT), fields.get(PURPOSE), fields.get(MACHINE_DATE))));

  static final Key<DaySpan> UTILITY_NOTICE =
      Key.orElse("notice", DAY_SPAN, "\"3 work days\"", COMMON_PRACTICE);
  static final Key<DaySpan> VALID = Key.free("valid", DAY_SPAN);
  static final Key<Plan.Utility> UTILITY =
      Key.part(
          "utility",
          new SectionValue<>(
              List.of(UTILITY_NOTICE, VALID),
              fields -> new Plan.Utility(fields.get(UTILITY_NOTICE), fields.find(VALID))));

  static final Key<DaySpan> INSPECTION_NOTICE =
      Key.orElse("notice", DAY_SPAN, "\"2 work days\"", COMMON_PRACTICE);
  static final Key<Plan.Looks> LOOKS =
      Key.orElse("looks", ChoiceValue.of(Plan.Looks.class), "\"steel\"", COMMON_PRACTICE);
  static final Key<Plan.Inspection> INSPECTION =
      Key.part(
          "inspection",
          new SectionValue<>(
              List.of(INSPECTION_NOTICE, LOOKS),
              fields -> new Plan.Inspection(fields.get(INSPECTION_NOTICE), fields.get(LOOKS))));

  static final Key<DaySpan> LOAD_AFTER =
      Key.orElse("loadAfter", DAY_SPAN, "\"7 days\"", COMMON_PRACTICE);
  static final Key<LocalDate> DEADLINE = Key.free("deadline", Values.DATE);

  static final Key<Plan.Work> WORK =
      Key.required("work", ChoiceValue.of(Plan.Work.class), "\"dig\"");
  static final Key<String> HOLE = Key.free("hole", Values.MARK);
  static final Key<Duration> LEAST = Key.required("least", PERSON_HOURS, "\"2 h\"");
  static final Key<Duration> MOST = Key.required("most", PERSON_HOURS, "\"5 h\"");
  static final SectionValue<Plan.Estimate> ESTIMATE =
      new SectionValue<>(
          List.of(WORK, HOLE, LEAST, MOST),
          PlanKeys::rises,
          fields ->
              new Plan.Estimate(
                  fields.get(WORK), fields.find(HOLE), fields.get(LEAST), fields.get(MOST)));
  static final Key<List<Plan.Estimate>> ESTIMATES =
      Key.free("estimates", new ListValue<>(ESTIMATE, 0, 500));

  static final SectionValue<Plan> PLAN =
      new SectionValue<>(
          List.of(RAIN_DAYS, MACHINE, UTILITY, INSPECTION, LOAD_AFTER, DEADLINE, ESTIMATES),
          fields ->
              new Plan(
                  fields.get(RAIN_DAYS),
                  fields.find(MACHINE),
                  fields.get(UTILITY),
                  fields.get(INSPECTION),
                  fields.get(LOAD_AFTER),
                  fields.find(DEADLINE),
                  fields.find(ESTIMATES).orElse(List.of())));

  private PlanKeys() {}

  private static Optional<DaySpan> span(String text) {
    Matcher span = SPAN.matcher(text);
    return span.matches()
        ? Optional.of(new DaySpan(Integer.parseInt(span.group(1)), span.group(2) != null))
        : Optional.empty();
  }

  private static boolean rises(Fields fields, Report report) {
    Optional<Duration> least = fields.find(LEAST);
    Optional<Duration> most = fields.find(MOST);
    boolean rises = least.isEmpty() || most.isEmpty() || least.get().compareTo(most.get()) <= 0;
    if (!rises) {
      report.complain(fields.node(MOST), Complaint.MOST_BELOW_LEAST, Map.of());
    }
    return rises;
  }
}
