package pegbook.export;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.OptionalInt;
import pegbook.packet.Packet;
import pegbook.sheet.CalendarEntries;
import pegbook.sheet.CalendarEntries.Entry;
import pegbook.sheet.Writing;

/**
 * The plan for a calendar of one's own: {@code calendar.ics} (RFC 5545, UTF-8). Every entry is a
 * whole day without a time zone. Its stamp is the packet's day of issue, its name the job file's
 * with the key of what is done, and its sequence the packet's revision, so that the next revision
 * moves what stands in a calendar instead of standing beside it.
 */
public final class CalendarIcs {
  /** RFC 5545, 3.1: a line longer than this is folded. */
  private static final int MOST_OCTETS = 75;

  private static final DateTimeFormatter BASIC = DateTimeFormatter.BASIC_ISO_DATE;

  private final StringBuilder text = new StringBuilder();

  private CalendarIcs() {}

  /** The file, where the days have dates. */
  public static Optional<byte[]> of(Packet packet, Writing writing) {
    CalendarEntries entries = CalendarEntries.of(packet, writing);
    if (entries.entries().isEmpty()) {
      return Optional.empty();
    }
    CalendarIcs calendar = new CalendarIcs();
    calendar.write(packet, entries);
    return Optional.of(calendar.text.toString().getBytes(StandardCharsets.UTF_8));
  }

  private void write(Packet packet, CalendarEntries entries) {
    LocalDate stamp =
        packet.job().heading().issued().orElseGet(() -> entries.entries().get(0).date());
    OptionalInt sequence = RevisionSequence.of(packet.job().heading().revision());
    line("BEGIN:VCALENDAR");
    line("VERSION:2.0");
    line("PRODID:-//Pegbook//Build packet//EN");
    line("CALSCALE:GREGORIAN");
    for (Entry entry : entries.entries()) {
      line("BEGIN:VEVENT");
      line("UID:" + escaped(entry.id() + "." + packet.job().name()) + "@pegbook");
      sequence.ifPresent(number -> line("SEQUENCE:" + number));
      line("DTSTAMP:" + BASIC.format(stamp) + "T000000Z");
      line("DTSTART;VALUE=DATE:" + BASIC.format(entry.date()));
      line("DTEND;VALUE=DATE:" + BASIC.format(entry.date().plusDays(1)));
      line("SUMMARY:" + escaped(entry.summary()));
      line("DESCRIPTION:" + escaped(entry.description()));
      line("TRANSP:TRANSPARENT");
      line("END:VEVENT");
    }
    line("END:VCALENDAR");
  }

  /** RFC 5545, 3.3.11: text. */
  static String escaped(String text) {
    return text.replace("\\", "\\\\")
        .replace(";", "\\;")
        .replace(",", "\\,")
        .replace("\r\n", "\\n")
        .replace("\n", "\\n");
  }

  /** A line, folded between characters, never within the octets of one. */
  private void line(String line) {
    int octets = 0;
    for (int i = 0; i < line.length(); ) {
      int letter = line.codePointAt(i);
      int size = new String(Character.toChars(letter)).getBytes(StandardCharsets.UTF_8).length;
      if (octets + size > MOST_OCTETS) {
        text.append("\r\n ");
        octets = 1;
      }
      text.appendCodePoint(letter);
      octets += size;
      i += Character.charCount(letter);
    }
    text.append("\r\n");
  }
}
