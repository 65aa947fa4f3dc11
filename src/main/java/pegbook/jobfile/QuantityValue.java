package pegbook.jobfile;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pegbook.measure.QuantityKind;
import pegbook.measure.QuantityNotation;
import pegbook.measure.Reading;

/**
 * A quantity with its unit, within limits.
 *
 * @param notation how its kind is written
 * @param range its limits
 */
record QuantityValue<Q extends Comparable<Q>>(QuantityNotation<Q> notation, Range range)
    implements Value<Q> {

  @Override
  public Optional<Q> read(Node node, Report report) {
    if (node instanceof Node.Text text) {
      return read(text.value(), node, report);
    } else if (node instanceof Node.Digits number) {
      return read(number.digits(), node, report);
    }
    report.complain(node, Complaint.TYPE, Map.of("kind", called()));
    return Optional.empty();
  }

  private Optional<Q> read(String text, Node node, Report report) {
    Reading<Q> reading = notation.read(text);
    if (reading instanceof Reading.Unclear<Q> unclear) {
      complain(unclear, node, report);
      return Optional.empty();
    }
    Optional<Q> taken = reading.taken().filter(value -> range.contains(value, notation));
    if (taken.isEmpty()) {
      String least = range.least(report.units());
      String most = range.most(report.units());
      Map<String, String> words = Map.of("kind", kind(), "least", least, "most", most);
      report.complain(node, Complaint.RANGE, words);
    }
    return taken;
  }

  private void complain(Reading.Unclear<Q> unclear, Node node, Report report) {
    Complaint complaint =
        switch (unclear.fault()) {
          case NO_UNIT -> Complaint.UNIT_MISSING;
          case UNKNOWN_UNIT -> Complaint.UNIT_UNKNOWN;
          case OTHER_KIND -> Complaint.KIND_OTHER;
          case DECIMAL_COMMA -> Complaint.DECIMAL_COMMA;
          case FRACTION -> Complaint.FRACTION;
          case PARTS -> Complaint.PARTS;
          case STRAY -> Complaint.STRAY;
          case EMPTY, TOO_LONG, NO_NUMBER -> Complaint.QUANTITY;
        };
    String detail = Shown.quoted(unclear.detail());
    String found =
        complaint == Complaint.KIND_OTHER
            ? Complaint.phrase(
                "found.other",
                Map.of(
                    "kind", kind(QuantityKind.valueOf(unclear.detail())), "found", Shown.of(node)))
            : Shown.of(node);
    Map<String, String> words =
        Map.of(
            "kind", kind(),
            "units", String.join(", ", notation.symbols()),
            "detail", detail,
            "write", write(sensible(unclear.mended())),
            "example", example());
    report.complain(node.at(), node.path(), found, complaint, words);
  }

  /** Of the mended texts those within the limits, or all of them when none is. */
  private List<String> sensible(List<String> mended) {
    List<String> within =
        mended.stream()
            .filter(
                text ->
                    notation.read(text).taken().stream()
                        .anyMatch(value -> range.contains(value, notation)))
            .toList();
    return within.isEmpty() ? mended : within;
  }

  /** "write "900 mm" or "900 in"", or nothing. */
  private static String write(List<String> mended) {
    return mended.isEmpty()
        ? ""
        : Complaint.phrase(
            "write",
            Map.of(
                "texts", mended.stream().map(Shown::quoted).collect(Collectors.joining(" or "))));
  }

  private String example() {
    return Complaint.phrase("example." + name(notation.kind()), Map.of());
  }

  private String kind() {
    return kind(notation.kind());
  }

  private static String kind(QuantityKind kind) {
    return Complaint.phrase("kind." + name(kind), Map.of());
  }

  private static String name(QuantityKind kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }

  @Override
  public String called() {
    return Complaint.phrase("with.unit", Map.of("kind", kind()));
  }
}
