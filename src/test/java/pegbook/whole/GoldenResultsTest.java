package pegbook.whole;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.testing.FigureDifferences;

/**
 * The figures of every example, against those that a person has looked at. To accept new ones, read
 * what this test prints, then run it with {@code -Dpegbook.refresh=true}.
 */
class GoldenResultsTest {
  private static final Path GOLDEN = Path.of("src", "test", "resources", "golden");
  private static final boolean REFRESH = Boolean.getBoolean("pegbook.refresh");

  static List<String> examples() {
    return Printing.examples();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void figuresAreThoseThatWereLookedAt(String example) throws IOException {
    ObjectMapper json = new ObjectMapper();
    Path golden = GOLDEN.resolve(example + ".json");
    byte[] now = Printing.bytes(Printing.packet(example).resolve("results.json"));
    List<String> differences =
        Files.exists(golden)
            ? FigureDifferences.between(
                json.readTree(Files.readAllBytes(golden)), json.readTree(now))
            : List.of(golden + " is missing");
    if (REFRESH) {
      differences.forEach(difference -> System.out.println(example + ": " + difference));
      Files.createDirectories(GOLDEN);
      Files.write(golden, now);
    } else {
      assertThat(differences).as("figures of " + example).isEmpty();
    }
  }

  @Test
  void noGoldenFileIsLeftOverFromAnExampleThatIsGone() throws IOException {
    try (Stream<Path> files = Files.list(GOLDEN)) {
      assertThat(files.map(file -> String.valueOf(file.getFileName()).replace(".json", "")))
          .isSubsetOf(examples());
    }
  }
}
