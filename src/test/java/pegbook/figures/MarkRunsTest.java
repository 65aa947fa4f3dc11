package pegbook.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarkRunsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "S1|S1",
        "S1 S2|S1, S2",
        "S1 S2 S3|S1–S3",
        "S1 S2 S3 P1|S1–S3, P1",
        "S9 S10 S11 S13 P1 P2 P3|S9–S11, S13, P1–P3",
        "S2 S1|S2, S1",
        "oak well|oak, well"
      })
  void shortensRuns(String names, String brief) {
    assertThat(MarkRuns.brief(List.of(names.split(" ")))).isEqualTo(brief);
  }
}
