package pegbook.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command line: what is printed, what is left alone, and how it ends. */
class CommandLineTest {
  private static final String TEN_MISTAKES =
      """
      {
        "title": "Ten mistakes",
        "colour": "red",
        "ground": { "soil": "sandy clai", "frost": { "depth": 42, "from": "the county" } },
        "layout": {
          "outline": { "regular": { "sides": 2, "acrossFlats": "12 ft" } },
          "centreToFirstMark": "8 furlongs",
          "baseline": ["S1"],
          "tolerance": "-1 in"
        },
        "supports": { "hole": "900 ft", "gravel": "4" },
        "crew": { "people": 0 }
      }
      """;

  @TempDir Path folder;

  private void smallest(String name) throws IOException {
    Files.copy(Printing.INPUT.resolve("smallest.json"), folder.resolve(name));
  }

  private List<String> printed() throws IOException {
    try (Stream<Path> packets = Files.list(folder.resolve("out"))) {
      return packets.map(packet -> String.valueOf(packet.getFileName())).sorted().toList();
    }
  }

  @Test
  void oneBadJobDoesNotStopThreeGoodOnes() throws IOException {
    smallest("a.json");
    smallest("b.json");
    smallest("d.json");
    Files.writeString(folder.resolve("c.json"), TEN_MISTAKES);
    Printing.Said said =
        Printing.run("print", folder.toString(), "--output", folder.resolve("out").toString());
    assertThat(said.code()).isEqualTo(1);
    assertThat(printed()).containsExactly("a", "b", "d");
    assertThat(said.err().lines()).hasSize(10).allMatch(line -> line.contains("c.json:"));
  }

  @Test
  void checkWritesNothing() throws IOException {
    smallest("a.json");
    Printing.Said said = Printing.run("check", folder.toString());
    assertThat(said.code()).isZero();
    assertThat(said.out()).contains("stop").contains("ask");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).hasSize(1);
    }
  }

  @Test
  void aPacketIsReplacedAndTheUsersOwnFilesStay() throws IOException {
    smallest("a.json");
    Path packet = Files.createDirectories(folder.resolve("out/a"));
    Files.writeString(packet.resolve("day-9.pdf"), "of an earlier packet");
    Files.writeString(packet.resolve("notes.txt"), "the user's");
    Printing.run("print", folder.toString(), "--output", folder.resolve("out").toString());
    assertThat(packet.resolve("day-9.pdf")).doesNotExist();
    assertThat(packet.resolve("notes.txt")).hasContent("the user's");
    assertThat(printed()).containsExactly("a");
  }

  @Test
  void aRefusedJobLeavesItsEarlierPacketAlone() throws IOException {
    smallest("a.json");
    String output = folder.resolve("out").toString();
    assertThat(Printing.run("print", folder.toString(), "--output", output).code()).isZero();
    Map<String, String> before = contents(folder.resolve("out/a"));
    assertThat(before).containsKeys("binder.pdf", "results.json");
    Files.writeString(folder.resolve("a.json"), TEN_MISTAKES);
    assertThat(Printing.run("print", folder.toString(), "--output", output).code()).isEqualTo(1);
    assertThat(contents(folder.resolve("out/a"))).isEqualTo(before);
    assertThat(printed()).containsExactly("a");
  }

  /** Every file of a packet by its name, a byte a letter, with the moment it was written. */
  private static Map<String, String> contents(Path packet) throws IOException {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> files = Files.list(packet)) {
      for (Path file : files.toList()) {
        String bytes = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
        contents.put(
            String.valueOf(file.getFileName()), Files.getLastModifiedTime(file) + " " + bytes);
      }
    }
    return contents;
  }

  @Test
  void aPlaceThatIsNotThereIsWrongUseAndSaysWhatToDo() {
    Printing.Said said = Printing.run("print", folder.resolve("gone.json").toString());
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains("gone.json").contains("pegbook new");
  }

  @Test
  void anUnknownWordIsWrongUse() {
    assertThat(Printing.run("paint").code()).isEqualTo(2);
    assertThat(Printing.run().code()).isEqualTo(2);
  }

  @Test
  void aNewJobCanBePrintedAndIsNeverWrittenOver() throws IOException {
    String input = folder.resolve("jobs").toString();
    assertThat(Printing.run("new", "my-deck", "--input", input).code()).isZero();
    assertThat(Printing.run("check", input).code()).isZero();
    String before = Files.readString(folder.resolve("jobs/my-deck.json"));
    assertThat(Printing.run("new", "my-deck", "--input", input).code()).isEqualTo(2);
    assertThat(folder.resolve("jobs/my-deck.json")).hasContent(before);
    assertThat(Printing.run("new", "../elsewhere", "--input", input).code()).isEqualTo(2);
  }
}
