package pegbook.jobfile;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Bytes of a job file to text: not too many, in UTF-8, a byte order mark left out. */
final class JobText {
  static final int MOST_BYTES = 1024 * 1024;
  private static final char BYTE_ORDER_MARK = '\ufeff';

  private JobText() {}

  static Optional<String> of(byte[] bytes, Report report) {
    if (bytes.length > MOST_BYTES) {
      String found = String.format(Locale.ROOT, "%d bytes", bytes.length);
      report.complain(Location.START, "", found, Complaint.FILE_TOO_LARGE, Map.of());
      return Optional.empty();
    }
    Optional<String> text = decode(bytes, report);
    if (text.isPresent() && text.get().isBlank()) {
      report.complain(Location.START, "", "nothing", Complaint.FILE_EMPTY, Map.of());
      return Optional.empty();
    }
    return text;
  }

  private static Optional<String> decode(byte[] bytes, Report report) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    int zero = text.indexOf('\0');
    if (!result.isError() && zero < 0) {
      return Optional.of(
          !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text);
    }
    // Text in UTF-16 shows as zero bytes or as its own byte order mark.
    String found =
        result.isError() && zero < 0
            ? String.format(Locale.ROOT, "the byte %02X", bytes[in.position()])
            : "a zero byte";
    Location at = Location.in(text, zero < 0 ? text.length() : zero);
    report.complain(at, "", found, Complaint.NOT_UTF8, Map.of());
    return Optional.empty();
  }
}
