package pegbook.jobfile;

import static pegbook.job.Default.Basis.COMMON_PRACTICE;

import java.util.List;
import java.util.Optional;
import pegbook.job.Tool;
import pegbook.measure.Length;

/** What the crew digs with. */
final class ToolKeys {
  static final Key<Tool.Kind> KIND =
      Key.required("kind", ChoiceValue.of(Tool.Kind.class), "\"clamshell\"");
  static final Key<String> NAME = Key.free("name", Values.NAME);
  static final Key<Length> DIAMETER =
      Key.orElseAsked(
          "diameter",
          Values.length("2 in", "4 ft", "50 mm", "1.2 m"),
          "\"8 in\"",
          "\"200 mm\"",
          COMMON_PRACTICE);
  static final Key<Length> REACH =
      Key.free("reach", Values.length("6 in", "30 ft", "150 mm", "9 m"));
  static final SectionValue<Tool> TOOL =
      new SectionValue<>(List.of(KIND, NAME, DIAMETER, REACH), ToolKeys::tool);

  static final Key<List<Tool>> TOOLS =
      Key.orElse(
          "tools",
          new ListValue<>(new ShortForm<>(KIND, TOOL), 1, 20),
          "[\"spade\", \"clamshell\", \"hand auger\", \"digging bar\"]",
          COMMON_PRACTICE);

  private ToolKeys() {}

  private static Tool tool(Fields fields) {
    Tool.Kind kind = fields.get(KIND);
    boolean bores = kind == Tool.Kind.HAND_AUGER || kind == Tool.Kind.POWER_AUGER;
    return new Tool(
        kind,
        fields.find(NAME).orElse(kind.word()),
        bores ? Optional.of(fields.getOrAssume(DIAMETER)) : fields.find(DIAMETER),
        fields.getOrAssume(reach(kind)));
  }

  /** How deep each kind works when the job does not say; common practice. */
  static Key<Length> reach(Tool.Kind kind) {
    return switch (kind) {
      case SPADE, CLAMSHELL -> reach("\"2 ft\"", "\"600 mm\"");
      case HAND_AUGER -> reach("\"4 ft\"", "\"1.2 m\"");
      case POWER_AUGER -> reach("\"3 ft\"", "\"900 mm\"");
      case DIGGING_BAR -> reach("\"5 ft\"", "\"1.5 m\"");
    };
  }

  private static Key<Length> reach(String imperial, String metric) {
    return Key.orElseAsked("reach", REACH.value(), imperial, metric, COMMON_PRACTICE);
  }
}
