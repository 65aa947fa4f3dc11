package pegbook.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What can go wrong round a good job: broken templates, names that cannot be folders, places that
 * cannot be written, two runs at once. Each ends with a message and exit code 2, and leaves nothing
 * half written.
 */
class TroublesTest {
  private static final String SMALLEST = Printing.INPUT.resolve("smallest.json").toString();

  @TempDir Path folder;

  private Printing.Said print(String job, String... more) {
    String output = folder.resolve("out").toString();
    return Printing.run(
        Stream.concat(Stream.of("print", job, "--output", output), Stream.of(more))
            .toArray(String[]::new));
  }

  private String template(String name, String text) throws IOException {
    Path file = folder.resolve("own").resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    return folder.resolve("own").toString();
  }

  private List<String> left() throws IOException {
    Path output = folder.resolve("out");
    if (!Files.exists(output)) {
      return List.of();
    }
    try (Stream<Path> entries = Files.walk(output)) {
      return entries
          .filter(entry -> !entry.equals(output))
          .map(entry -> output.relativize(entry).toString())
          .sorted()
          .toList();
    }
  }

  private static String cover(String inside) {
    return "<html xmlns:th=\"http://www.thymeleaf.org\"><body>\n"
        + "<section class=\"sheet\" th:fragment=\"sheet(sheet)\">\n"
        + inside
        + "\n</section></body></html>";
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<h1 th:text=\"${sheet.title\"></h1>|sheets/cover.html:3: Could not parse",
        "<h1 th:text=\"${sheet.colour}\"></h1>|sheets/cover.html:3: ${sheet.colour}",
        "<h1 th:text=\"#{cover.nothing}\"></h1>|sheets/cover.html:3: #{cover.nothing}",
        "<th:block th:insert=\"~{sheets/lost}\"/>|sheets/cover.html:3: templates: no sheets/lost",
        "<th:block th:replace=\"~{sheets/cover :: sheet(${sheet})}\"/>"
            + "|sheets/cover.html:3: templates insert one another without end",
        "<h1>Deck</p>|binder.html: ",
        "<h1 onclick=\"x()\">Deck</h1>|binder.html: <h1>: a packet has no attribute onclick"
      })
  void aBrokenTemplateIsNamedWithItsLine(String inside, String message) throws IOException {
    Printing.Said said =
        print(SMALLEST, "--templates", template("sheets/cover.html", cover(inside)));
    assertThat(said.err()).startsWith("input/smallest.json: " + message).doesNotContain("\tat ");
    assertThat(said.code()).isEqualTo(2);
    assertThat(left()).isEmpty();
  }

  @Test
  void aBrokenStyleIsNamedWithItsLine() throws IOException {
    String css = Files.readString(Path.of("templates/style/packet.css"));
    String own = template("style/packet.css", css + "\nh1 { colour: red; }\n");
    Printing.Said said = print(SMALLEST, "--templates", own);
    assertThat(said.err()).contains("style/packet.css:" + (css.lines().count() + 2) + ": colour");
    assertThat(said.code()).isEqualTo(2);
  }

  @Test
  void aBrokenFontIsNamed() throws IOException {
    Printing.Said said =
        print(SMALLEST, "--templates", template("fonts/SourceSans3-Regular.ttf", "no font"));
    assertThat(said.err()).contains("fonts/SourceSans3-Regular.ttf").doesNotContain("\tat ");
    assertThat(said.code()).isEqualTo(2);
  }

  /** Two in each, thirty deep: nobody waits for a thousand million of them. */
  @Test
  void whatGoesOnForeverIsGivenUpAndTheOthersGoOn() throws IOException {
    String twice = "<th:block th:insert=\"~{sheets/%s :: sheet(${sheet})}\"/>";
    for (int depth = 0; depth < 25; depth++) {
      String next = String.format(twice, "deep" + (depth + 1));
      template("sheets/deep" + depth + ".html", cover(next + "\n" + next));
    }
    template("sheets/deep25.html", cover("<p></p>"));
    String own = template("sheets/cover.html", cover(String.format(twice, "deep0")));
    Files.writeString(folder.resolve("bad.json"), "{}");
    Printing.Said said =
        print(
            SMALLEST,
            folder.resolve("bad.json").toString(),
            "--templates",
            own,
            "--time-limit",
            "1",
            "--threads",
            "1");
    assertThat(said.err())
        .contains("input/smallest.json: not done after 1 s")
        .contains("bad.json:1 ");
    assertThat(said.out()).contains("2 jobs: 0 printed, 1 refused, 1 failed");
    assertThat(said.code()).isEqualTo(2);
    assertThat(left()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "...json",
        ".json",
        ".hidden.json",
        "a\\b.json",
        "a:b.json",
        "a?.json",
        "nul.json",
        "COM1.x.json",
        "end..json",
        "end .json",
        "line\nend.json"
      })
  void aNameThatIsNoFoldersEverywhereIsRefused(String name) throws IOException {
    Path job = Files.copy(Path.of(SMALLEST), folder.resolve(name));
    Printing.Said said = print(job.toString());
    assertThat(said.err()).contains("file name");
    assertThat(said.code()).isEqualTo(1);
    assertThat(left()).isEmpty();
    try (Stream<Path> entries = Files.list(folder)) {
      assertThat(entries).containsExactly(job);
    }
  }

  @Test
  void aFolderThatCannotBeWrittenIsNamed() throws IOException {
    Files.writeString(folder.resolve("out"), "a file stands there");
    Printing.Said said = print(SMALLEST);
    assertThat(said.err()).contains("smallest cannot be written").contains("--output");
    assertThat(said.code()).isEqualTo(2);
    assertThat(folder.resolve("out")).hasContent("a file stands there");
  }

  @Test
  void whatAKilledRunLeftIsCleared() throws IOException {
    Path waiting = Files.createDirectories(folder.resolve("out/.smallest.new"));
    Files.writeString(waiting.resolve("binder.pdf"), "half a bin");
    Files.writeString(waiting.resolve("lock"), "4711");
    assertThat(print(SMALLEST).code()).isZero();
    assertThat(left()).contains("smallest/binder.pdf").noneMatch(name -> name.startsWith("."));
  }

  @Test
  void aSecondRunOntoTheSamePacketIsToldSo() throws IOException {
    Path waiting = Files.createDirectories(folder.resolve("out/.smallest.new"));
    try (RandomAccessFile lock = new RandomAccessFile(waiting.resolve("lock").toFile(), "rw");
        FileLock held = lock.getChannel().lock()) {
      assertThat(held.isValid()).isTrue();
      Printing.Said said = print(SMALLEST);
      assertThat(said.err()).contains("another run is printing into it");
      assertThat(said.code()).isEqualTo(2);
      assertThat(left()).containsExactly(".smallest.new", ".smallest.new/lock");
    }
    assertThat(print(SMALLEST).code()).isZero();
  }
}
