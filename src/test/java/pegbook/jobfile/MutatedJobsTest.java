package pegbook.jobfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Example jobs with something broken in them, always the same: they are read or refused, no more.
 */
class MutatedJobsTest {
  private static final List<String> PIECES =
      List.of(
          "",
          "\"",
          "{",
          "}",
          "[",
          "]",
          ",",
          ":",
          "null",
          "true",
          "-1",
          "0",
          "1e400",
          "NaN",
          "\"\"",
          "\"0 in\"",
          "\"900 ft\"",
          "\"S1\"",
          "\"centre\"",
          "[]",
          "{}",
          "\\",
          "\u0000",
          "\u202e",
          "½",
          "\ud83d",
          "\"1/0 in\"",
          "\"0 ft, 0 ft\"",
          "\"P1\"",
          "999999999999999999");

  @Test
  void neverThrow() throws IOException {
    Random random = new Random(20270412);
    int read = 0;
    List<Path> examples = ExampleJobsTest.examples().toList();
    for (int i = 0; i < 800; i++) {
      String text = Files.readString(examples.get(i % examples.size()));
      String mutated = i % 2 == 0 ? cut(text, random) : replaced(text, random);
      JobFile file = JobFileReader.read("x.json", mutated.getBytes(StandardCharsets.UTF_8));
      if (file instanceof JobFile.Refused refused) {
        assertThat(refused.problems())
            .as(mutated)
            .isNotEmpty()
            .allSatisfy(MutatedJobsTest::isWhole);
      } else {
        read++;
      }
    }
    // Some changes are harmless; a reader that refused or took everything would be no reader.
    assertThat(read).isBetween(20, 700);
  }

  @Test
  void bytesNeverThrow() throws IOException {
    Random random = new Random(20270413);
    byte[] sound = Files.readAllBytes(Path.of("input/sky-deck.json"));
    for (int i = 0; i < 400; i++) {
      byte[] bytes = sound.clone();
      for (int change = 0; change <= i % 4; change++) {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
      }
      assertThat(JobFileReader.read("x.json", bytes)).isNotNull();
    }
  }

  private static void isWhole(Problem problem) {
    assertThat(problem.line()).isPositive();
    assertThat(problem.column()).isPositive();
    assertThat(problem.expected()).isNotEmpty();
    assertThat(problem.found()).isNotEmpty();
    assertThat(problem.text()).doesNotContain("\n").doesNotContain("{kind}");
  }

  /** A stretch cut out or put in again somewhere else. */
  private static String cut(String text, Random random) {
    int from = random.nextInt(text.length());
    int to = Math.min(text.length(), from + random.nextInt(30));
    String rest = text.substring(0, from) + text.substring(to);
    int at = random.nextInt(rest.length());
    return random.nextBoolean()
        ? rest
        : rest.substring(0, at) + text.substring(from, to) + rest.substring(at);
  }

  /** One value of the text, or one character, replaced by a piece of trouble. */
  private static String replaced(String text, Random random) {
    String piece = PIECES.get(random.nextInt(PIECES.size()));
    int colon = text.indexOf(": ", random.nextInt(text.length()));
    if (colon < 0 || random.nextInt(4) == 0) {
      int at = random.nextInt(text.length());
      return text.substring(0, at) + piece + text.substring(at + 1);
    }
    int end = colon + 2;
    while (end < text.length() && ",}]\n".indexOf(text.charAt(end)) < 0) {
      end++;
    }
    return text.substring(0, colon + 2) + piece + text.substring(end);
  }
}
