package pegbook.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A second process under another time zone, locale, charset and hash seed prints the same bytes.
 */
class RepeatTest {
  @Test
  void anotherProcessPrintsTheSameBytes(@TempDir Path folder) throws Exception {
    Path log = folder.resolve("log.txt");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Duser.timezone=Asia/Kolkata",
                "-Duser.language=tr",
                "-Duser.country=TR",
                "-Dfile.encoding=ISO-8859-1",
                "-XX:+UnlockExperimentalVMOptions",
                "-XX:hashCode=0",
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                "pegbook.Main",
                "print",
                "input/sky-deck.json",
                "--output",
                folder.toString())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
    assertThat(process.exitValue()).as(Files.readString(log)).isZero();
    Path first = Printing.packet("sky-deck");
    Path second = folder.resolve("sky-deck");
    assertThat(names(second)).isEqualTo(names(first)).hasSizeGreaterThan(4);
    for (String name : names(first)) {
      assertThat(second.resolve(name)).hasSameBinaryContentAs(first.resolve(name));
    }
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> String.valueOf(file.getFileName())).sorted().toList();
    }
  }
}
