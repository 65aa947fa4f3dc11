package pegbook.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.job.Heading;
import pegbook.job.Language;
import pegbook.packet.Packet;

/** Which documents a packet has, and which sheets stand in each. */
public final class Booklets {
  private static final int SHORT_HASH = 12;

  /** Day sheets have large type and little room. */
  private static final int SHORTEST_HASH = 8;

  private final Packet packet;
  private final Writing writing;

  private Booklets(Packet packet, Writing writing) {
    this.packet = packet;
    this.writing = writing;
  }

  /**
   * The packet's documents, in the order of their names on paper.
   *
   * @param writing of the binder and the review packet
   * @param daySheets writing of the day sheets: one for each language in which they print
   */
  public static List<Booklet> of(Packet packet, Writing writing, List<Writing> daySheets) {
    Booklets booklets = new Booklets(packet, writing);
    List<Booklet> all = new ArrayList<>(List.of(booklets.binder(), booklets.review()));
    for (Writing language : daySheets) {
      Booklets own = new Booklets(packet, language);
      packet.dayPlan().days().forEach(day -> all.add(own.day(day)));
      packet.dayPlan().days().stream()
          .filter(PourDaySheet::isWanted)
          .forEach(day -> all.add(own.pour(day)));
    }
    return List.copyOf(all);
  }

  /** Everything, in the order of the work. */
  private Booklet binder() {
    Map<String, Optional<? extends Sheet>> sheets = new LinkedHashMap<>();
    sheets.put("cover", Optional.of(CoverSheet.of(packet, writing)));
    sheets.put("findings", Optional.of(FindingsSheet.of(packet, writing)));
    sheets.put("sitePlan", Optional.of(SitePlanSheet.of(packet, writing)));
    sheets.put("tapeTable", Optional.of(TapeTableSheet.of(packet, writing)));
    sheets.put("safePegs", SafePegsSheet.of(packet, writing));
    sheets.put("trueNorth", trueNorth());
    sheets.put("provingMarks", Optional.of(ProvingMarksSheet.of(packet, writing)));
    sheets.put("asMarked", asMarked());
    sheets.put("levels", levels());
    sheets.put("swingSketches", Optional.of(SwingSketchesSheet.of(packet, writing)));
    sheets.put("markAccuracy", Optional.of(MarkAccuracySheet.of(packet, writing)));
    sheets.put("digSchedule", Optional.of(DigScheduleSheet.of(packet, writing)));
    sheets.put("asDug", AsDugSheet.of(packet, writing));
    sheets.put("daySheets", Optional.of(DaySheets.of(packet, writing)));
    sheets.put("footings", Optional.of(FootingsSheet.of(packet, writing)));
    sheets.put("pier", pier());
    sheets.put("concretePlan", Optional.of(ConcretePlanSheet.of(packet, writing)));
    sheets.put("steelPlan", steelPlan());
    sheets.put("cutPlan", cutPlan());
    sheets.put("floorFrame", floorFrame());
    sheets.put("powerLine", powerLine());
    sheets.put("buyingList", Optional.of(BuyingListSheet.of(packet, writing)));
    sheets.put("calendar", calendar());
    sheets.put("safetyNotes", Optional.of(SafetyNotesSheet.of(packet, writing)));
    sheets.put("workings", Optional.of(WorkingsSheet.of(packet, writing)));
    sheets.put("sources", Optional.of(SourcesSheet.of(packet, writing)));
    sheets.put("revision", Optional.of(RevisionSheet.of(packet, writing)));
    return booklet("binder", "binder", Map.of(), sheets, strip());
  }

  /** What an inspector or engineer needs, no more. */
  private Booklet review() {
    Map<String, Optional<? extends Sheet>> sheets = new LinkedHashMap<>();
    sheets.put("cover", Optional.of(CoverSheet.of(packet, writing)));
    sheets.put("findings", Optional.of(FindingsSheet.of(packet, writing)));
    sheets.put("sitePlan", Optional.of(SitePlanSheet.of(packet, writing)));
    sheets.put("asMarked", asMarked());
    sheets.put("digSchedule", Optional.of(DigScheduleSheet.of(packet, writing)));
    sheets.put("asDug", AsDugSheet.of(packet, writing));
    sheets.put("footings", Optional.of(FootingsSheet.of(packet, writing)));
    sheets.put("pier", pier());
    sheets.put("concretePlan", Optional.of(ConcretePlanSheet.of(packet, writing)));
    sheets.put("steelPlan", steelPlan());
    sheets.put("floorFrame", floorFrame());
    sheets.put("powerLine", powerLine());
    sheets.put("workings", Optional.of(WorkingsSheet.of(packet, writing)));
    sheets.put("sources", Optional.of(SourcesSheet.of(packet, writing)));
    sheets.put("remarks", Optional.of(RemarksSheet.of(packet, writing)));
    return booklet("review", "review", Map.of(), sheets, strip());
  }

  /** One working day, for the people who do it. */
  private Booklet day(WorkDay day) {
    Map<String, String> words = Map.of("day", writing.formats().count(day.number()));
    Map<String, Optional<? extends Sheet>> sheets = new LinkedHashMap<>();
    sheets.put("day", Optional.of(DaySheet.of(packet, writing, day)));
    return booklet("day-" + day.number() + ending(), "day", words, sheets, dayStrip());
  }

  /** What is looked at before a day's concrete, for those who pour and the one who looks. */
  private Booklet pour(WorkDay day) {
    Map<String, String> words = Map.of("day", writing.formats().count(day.number()));
    Map<String, Optional<? extends Sheet>> sheets = new LinkedHashMap<>();
    sheets.put("pour", Optional.of(PourDaySheet.of(packet, writing, day)));
    return booklet("pour-" + day.number() + ending(), "pour", words, sheets, dayStrip());
  }

  /** What the file's name of a day sheet in another language than English ends with. */
  private String ending() {
    Language language = writing.texts().language();
    return language == Language.ENGLISH ? "" : "-" + language.tag();
  }

  private Optional<AsMarkedSheet> asMarked() {
    return packet.asMarked().isTaped()
        ? Optional.of(AsMarkedSheet.of(packet, writing))
        : Optional.empty();
  }

  private Optional<TrueNorthSheet> trueNorth() {
    return TrueNorthSheet.isWanted(packet)
        ? Optional.of(TrueNorthSheet.of(packet, writing))
        : Optional.empty();
  }

  private Optional<LevelsSheet> levels() {
    return LevelsSheet.isWanted(packet)
        ? Optional.of(LevelsSheet.of(packet, writing))
        : Optional.empty();
  }

  private Optional<PierSheet> pier() {
    return PierSheet.isWanted(packet)
        ? Optional.of(PierSheet.of(packet, writing))
        : Optional.empty();
  }

  private Optional<CalendarSheet> calendar() {
    return CalendarSheet.isWanted(packet)
        ? Optional.of(CalendarSheet.of(packet, writing))
        : Optional.empty();
  }

  private Optional<SteelPlanSheet> steelPlan() {
    return SteelPlanSheet.isWanted(packet)
        ? Optional.of(SteelPlanSheet.of(packet, writing))
        : Optional.empty();
  }

  private Optional<PowerLineSheet> powerLine() {
    return PowerLineSheet.isWanted(packet)
        ? Optional.of(PowerLineSheet.of(packet, writing))
        : Optional.empty();
  }

  private Optional<FloorFrameSheet> floorFrame() {
    return packet.floorFrame().built().map(built -> FloorFrameSheet.of(packet, built, writing));
  }

  private Optional<CutPlanSheet> cutPlan() {
    return CutPlanSheet.isWanted(packet)
        ? Optional.of(CutPlanSheet.of(packet, writing))
        : Optional.empty();
  }

  private Booklet booklet(
      String name,
      String template,
      Map<String, String> more,
      Map<String, Optional<? extends Sheet>> sheets,
      Booklet.Strip foot) {
    Map<String, String> words = new LinkedHashMap<>(more);
    words.put("job", packet.job().heading().title());
    words.put("revision", packet.job().heading().revision());
    return new Booklet(
        name,
        template,
        writing.texts().say("booklet." + template + ".title", words),
        writing.texts().say("booklet." + template + ".summary", words),
        sheets,
        foot,
        writing.texts());
  }

  private Booklet.Strip strip() {
    return new StripWords(writing, StripWords.SMALL)
        .fitted(strip(packet, writing, SHORT_HASH, "strip.caution"));
  }

  private Booklet.Strip dayStrip() {
    return new StripWords(writing, StripWords.LARGE)
        .fitted(strip(packet, writing, SHORTEST_HASH, "strip.day.caution"));
  }

  private static Booklet.Strip strip(
      Packet packet, Writing writing, int hashDigits, String caution) {
    Heading heading = packet.job().heading();
    Texts texts = writing.texts();
    Optional<LocalDate> issued = heading.issued();
    return new Booklet.Strip(
        heading.title(),
        heading.revision(),
        issued.map(writing.formats()::date).orElse(texts.say("strip.notIssued")),
        heading.owner().orElse(texts.say("strip.noOwner")),
        texts.say("strip.maker"),
        packet.jobHash().substring(0, hashDigits),
        texts.say(caution));
  }
}
