package pegbook.jobfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ExampleJobsTest {
  private static final Path INPUT = Path.of("input");

  static Stream<Path> examples() throws IOException {
    try (Stream<Path> files = Files.list(INPUT)) {
      return files
          .filter(file -> file.toString().endsWith(".json"))
          .filter(file -> !file.endsWith("job.schema.json"))
          .sorted()
          .toList()
          .stream();
    }
  }

  @Test
  void thereAreExamples() throws IOException {
    assertThat(examples()).hasSizeGreaterThanOrEqualTo(4);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void isRead(Path example) throws IOException {
    JobFile read = JobFileReader.read(example.toString(), Files.readAllBytes(example));

    assertThat(problems(read)).isEmpty();
  }

  private static Stream<String> problems(JobFile file) {
    return file instanceof JobFile.Refused refused
        ? refused.problems().stream().map(Problem::text)
        : Stream.of();
  }
}
