package pegbook.export;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.ParseWarning;
import biweekly.util.DateTimeComponents;
import biweekly.util.ICalDate;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.sheet.CalendarEntries;
import pegbook.sheet.CalendarEntries.Entry;
import pegbook.testing.TrialPacket;

/** {@code calendar.ics} against a parser of others, and against RFC 5545 byte by byte. */
class CalendarIcsTest {
  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(25));
  }

  private static Optional<String> file(TrialPacket trial) {
    return CalendarIcs.of(trial.packet(), trial.writing())
        .map(bytes -> new String(bytes, StandardCharsets.UTF_8));
  }

  /** A date as it stands in the file, whatever the machine's zone. */
  private static LocalDate day(ICalDate date) {
    DateTimeComponents raw = date.getRawComponents();
    return LocalDate.of(raw.getYear(), raw.getMonth(), raw.getDate());
  }

  /** Another parser finds every entry with its day, words and name, and nothing to complain of. */
  @ParameterizedTest
  @MethodSource("packets")
  void anotherParserReadsTheSame(TrialPacket trial) {
    CalendarEntries entries = CalendarEntries.of(trial.packet(), trial.writing());
    Optional<String> file = file(trial);
    assertThat(file.isPresent()).isEqualTo(!entries.entries().isEmpty());
    if (file.isEmpty()) {
      return;
    }
    List<List<ParseWarning>> warnings = new ArrayList<>();
    ICalendar calendar = Biweekly.parse(file.get()).warnings(warnings).first();
    assertThat(warnings.stream().flatMap(List::stream)).isEmpty();
    assertThat(calendar.validate(ICalVersion.V2_0).isEmpty()).isTrue();
    assertThat(calendar.getEvents()).hasSameSizeAs(entries.entries());
    for (int i = 0; i < entries.entries().size(); i++) {
      Entry entry = entries.entries().get(i);
      VEvent event = calendar.getEvents().get(i);
      assertThat(event.getSummary().getValue()).isEqualTo(entry.summary());
      assertThat(event.getDescription().getValue()).isEqualTo(entry.description());
      assertThat(event.getDateStart().getValue().hasTime()).isFalse();
      assertThat(day(event.getDateStart().getValue())).isEqualTo(entry.date());
      assertThat(day(event.getDateEnd().getValue())).isEqualTo(entry.date().plusDays(1));
    }
    assertThat(calendar.getEvents().stream().map(event -> event.getUid().getValue()))
        .doesNotHaveDuplicates()
        .allMatch(uid -> uid.endsWith("." + trial.packet().job().name() + "@pegbook"));
  }

  /** RFC 5545, 3.1: lines end with CRLF and have 75 octets at most. */
  @ParameterizedTest
  @MethodSource("packets")
  void linesAreFoldedAndEndAsTheStandardWants(TrialPacket trial) {
    file(trial)
        .ifPresent(
            text -> {
              assertThat(text).endsWith("END:VCALENDAR\r\n");
              assertThat(text.replace("\r\n", "")).doesNotContain("\n", "\r");
              assertThat(Arrays.stream(text.split("\r\n", -1)))
                  .allMatch(line -> line.getBytes(StandardCharsets.UTF_8).length <= 75)
                  .noneMatch(line -> line.contains("\ufffd"));
            });
  }

  @Test
  void theStampIsTheDayOfIssueAndTheBytesRepeat() {
    TrialPacket deck = TrialPacket.example(Path.of("input/sky-deck.json"));
    String text = file(deck).orElseThrow();
    assertThat(text).contains("DTSTAMP:20270412T000000Z").isEqualTo(file(deck).orElseThrow());
    assertThat(text.lines().filter(line -> line.startsWith("DTSTAMP")).distinct()).hasSize(1);
  }

  /**
   * The next revision of a job moves the same entries: their names stay, their sequence grows (RFC
   * 5545, 3.8.4.7 and 3.8.7.4).
   */
  @Test
  void theNextRevisionMovesTheSameEntries() throws java.io.IOException {
    String text = java.nio.file.Files.readString(Path.of("input/sky-deck.json"));
    List<VEvent> first = events(TrialPacket.text("sky-deck.json", text));
    List<VEvent> next =
        events(
            TrialPacket.text(
                "sky-deck.json",
                text.replace("\"revision\": \"B\"", "\"revision\": \"C\"")
                    .replace("\"start\": \"2027-05-08\"", "\"start\": \"2027-05-15\"")));
    assertThat(next).extracting(event -> event.getUid().getValue()).doesNotHaveDuplicates();
    assertThat(next)
        .extracting(event -> event.getUid().getValue())
        .containsAnyElementsOf(first.stream().map(event -> event.getUid().getValue()).toList());
    assertThat(first).allMatch(event -> event.getSequence().getValue() == 1000);
    assertThat(next).allMatch(event -> event.getSequence().getValue() == 2000);
    assertThat(day(named(next).getDateStart().getValue()))
        .isEqualTo(day(named(first).getDateStart().getValue()).plusDays(7));
  }

  private static VEvent named(List<VEvent> events) {
    return events.stream()
        .filter(event -> event.getUid().getValue().equals("day-1.sky-deck@pegbook"))
        .findFirst()
        .orElseThrow();
  }

  private static List<VEvent> events(TrialPacket trial) {
    return Biweekly.parse(file(trial).orElseThrow()).first().getEvents();
  }

  @ParameterizedTest
  @CsvSource({
    "A, B",
    "B, Z",
    "Z, AA",
    "1, 2",
    "9, 10",
    "A, A1",
    "A1, A2",
    "A2, B",
    "P01, P02",
    "P09, C01"
  })
  void sequencesGrowFromRevisionToRevision(String one, String next) {
    int first = RevisionSequence.of(one).orElseThrow();
    int second = RevisionSequence.of(next).orElseThrow();
    if (one.charAt(0) <= next.charAt(0) || one.length() < next.length()) {
      assertThat(second).isGreaterThan(first);
    } else {
      assertThat(second).as("letters rule: C stands before P").isLessThan(first);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"for review", "draft two", "", "?"})
  void wordsWithoutAnOrderHaveNoSequence(String revision) {
    assertThat(RevisionSequence.of(revision)).isEmpty();
  }

  @Test
  void textIsEscaped() {
    assertThat(CalendarIcs.escaped("a,b;c\\d\ne")).isEqualTo("a\\,b\\;c\\\\d\\ne");
  }

  @Test
  void withoutAFirstDayThereIsNoFile() {
    assertThat(file(TrialPacket.example(Path.of("input/smallest.json")))).isEmpty();
  }
}
