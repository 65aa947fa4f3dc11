package pegbook.jobfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Bad job files and the exact messages they bring. The cases stand in {@code refusals.txt}: each
 * names the kind of problem, changes keys of a sound job ({@code -- key: value}) or gives the whole
 * text ({@code |}), and lists every message.
 */
class RefusalTest {
  private static final Map<String, String> SOUND = new LinkedHashMap<>();

  static {
    SOUND.put("title", "\"x\"");
    SOUND.put("ground", "{\"soil\": \"sand\"}");
    SOUND.put("layout", "{\"outline\": {\"regular\": {\"sides\": 6, \"side\": \"6 ft\"}}}");
  }

  record Case(Complaint kind, String text, List<String> messages) {
    @Override
    public String toString() {
      return kind + " " + messages;
    }
  }

  static List<Case> cases() throws IOException {
    List<Case> cases = new ArrayList<>();
    for (String block : resource("refusals.txt").split("\n\n", -1)) {
      List<String> lines =
          block.lines().filter(line -> !line.isBlank() && !line.startsWith("# ")).toList();
      if (!lines.isEmpty()) {
        cases.add(readCase(lines));
      }
    }
    return cases;
  }

  private static Case readCase(List<String> lines) {
    Map<String, String> keys = new LinkedHashMap<>(SOUND);
    List<String> raw = new ArrayList<>();
    List<String> messages = new ArrayList<>();
    for (String line : lines.subList(1, lines.size())) {
      if (line.startsWith("-- ")) {
        int colon = line.indexOf(": ");
        keys.put(line.substring(3, colon), line.substring(colon + 2));
      } else if (line.startsWith("|")) {
        raw.add(line.substring(1));
      } else {
        messages.add(line);
      }
    }
    String sound =
        keys.entrySet().stream()
            .filter(entry -> !entry.getValue().equals("-"))
            .map(entry -> "\"" + entry.getKey() + "\": " + entry.getValue())
            .collect(Collectors.joining(",\n", "{\n", "\n}\n"));
    String text = raw.isEmpty() ? sound : String.join("\n", raw);
    return new Case(Complaint.valueOf(lines.get(0).substring(3)), text, messages);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void bringsExactlyItsMessages(Case bad) {
    assertThat(messages("x.json", bad.text().getBytes(StandardCharsets.UTF_8)))
        .containsExactlyElementsOf(bad.messages().stream().map(line -> "x.json:" + line).toList());
  }

  @Test
  void everyKindOfProblemIsProvoked() throws IOException {
    TreeSet<Complaint> provoked =
        cases().stream().map(Case::kind).collect(Collectors.toCollection(TreeSet::new));
    // These need bytes or a file name, or more text than a case should hold; see below.
    provoked.addAll(
        List.of(
            Complaint.FILE_TOO_LARGE,
            Complaint.FILE_NAME,
            Complaint.NOT_UTF8,
            Complaint.MANY,
            Complaint.TOO_LONG));

    assertThat(provoked).containsExactly(Complaint.values());
  }

  @Test
  void everyKindOfProblemHasWordsAndNoWordsAreLeftOver() throws IOException {
    Properties words = new Properties();
    try (InputStream in = Complaint.class.getResourceAsStream("problems.properties")) {
      words.load(in);
    }
    List<String> kinds = Stream.of(Complaint.values()).map(Enum::name).toList();

    assertThat(words.stringPropertyNames())
        .containsAll(kinds.stream().map(kind -> kind + ".expected").toList());
    assertThat(words.stringPropertyNames().stream().filter(key -> key.matches("[A-Z].*")))
        .allSatisfy(key -> assertThat(kinds).contains(key.substring(0, key.indexOf('.'))));
  }

  @Test
  void refusesALargeFile() {
    byte[] large = new byte[JobText.MOST_BYTES + 1];

    assertThat(messages("x.json", large))
        .containsExactly("x.json:1: expected a file of at most 1048576 bytes, found 1048577 bytes");
  }

  @Test
  void refusesAFileWhoseNameCannotNameAFolder() {
    for (String name : List.of("a:b.json", ".json", " x.json", "x .json", "CON.json", "é\n.json")) {
      assertThat(messages("input/" + name, sound()))
          .hasSize(1)
          .allMatch(message -> message.contains("can also name a folder, found "));
    }
    assertThat(messages("input/a:b.json", sound()))
        .containsExactly(
            "input/a:b.json:1: expected a file name of letters, digits, spaces, dots, hyphens and"
                + " underscores that can also name a folder, found \"a:b.json\"; rename the file");
    assertThat(JobFileReader.read("input/Hütte 3.b.json", sound()))
        .isInstanceOfSatisfying(
            JobFile.Read.class, read -> assertThat(read.job().name()).isEqualTo("Hütte 3.b"));
  }

  @Test
  void refusesOtherEncodings() {
    assertThat(
            messages("x.json", "{\n \"title\": \"Hütte\"}".getBytes(StandardCharsets.ISO_8859_1)))
        .containsExactly(
            "x.json:2: expected text in UTF-8, found the byte FC; save the file as UTF-8 in the"
                + " editor");
    assertThat(messages("x.json", "{}".getBytes(StandardCharsets.UTF_16LE)))
        .containsExactly(
            "x.json:1: expected text in UTF-8, found a zero byte; save the file as UTF-8 in the"
                + " editor");
    assertThat(messages("x.json", "{}".getBytes(StandardCharsets.UTF_16))).hasSize(1);
  }

  @Test
  void takesAByteOrderMark() {
    byte[] marked =
        ("\ufeff" + new String(sound(), StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8);

    assertThat(JobFileReader.read("x.json", marked)).isInstanceOf(JobFile.Read.class);
  }

  @Test
  void stopsListingAfterAHundredProblems() {
    StringBuilder text = new StringBuilder("{\n");
    for (int i = 0; i < 150; i++) {
      text.append("\"wrong").append(i).append("\": 1,\n");
    }
    text.append("\"title\": \"x\"}");

    List<String> messages = messages("x.json", text.toString().getBytes(StandardCharsets.UTF_8));

    // The two missing parts come first: they are told at the beginning of the file.
    assertThat(messages).hasSize(101);
    assertThat(messages.get(100))
        .isEqualTo(
            "x.json:100: expected a job file, found 52 more problems; mend the first 100 and read"
                + " it again");
  }

  @Test
  void refusesEndlessListsAndObjectsAtOnce() {
    String list = "{\n\"tools\": [" + "1, ".repeat(300_000) + "1]}";
    String object = "{" + "\"a\": 1, ".repeat(3) + distinctKeys(50_000) + "\"z\": 1}";

    assertThat(messages("x.json", list.getBytes(StandardCharsets.UTF_8)))
        .containsExactly(
            "x.json:2 tools: expected at most 1000 keys or items in one { } or [ ], found more");
    assertThat(messages("x.json", object.getBytes(StandardCharsets.UTF_8)))
        .hasSize(3)
        .contains("x.json:1: expected at most 1000 keys or items in one { } or [ ], found more");
  }

  private static String distinctKeys(int count) {
    return java.util.stream.IntStream.range(0, count)
        .mapToObj(i -> "\"k" + i + "\": 1, ")
        .collect(Collectors.joining());
  }

  private static byte[] sound() {
    return SOUND.entrySet().stream()
        .map(entry -> "\"" + entry.getKey() + "\": " + entry.getValue())
        .collect(Collectors.joining(",\n", "{\n", "\n}\n"))
        .getBytes(StandardCharsets.UTF_8);
  }

  static List<String> messages(String file, byte[] bytes) {
    return JobFileReader.read(file, bytes) instanceof JobFile.Refused refused
        ? refused.problems().stream().map(Problem::text).toList()
        : List.of();
  }

  private static String resource(String name) throws IOException {
    try (InputStream in = RefusalTest.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
