package pegbook.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import pegbook.testing.Fuzz;

/** A short run of {@link Fuzz}; the long one is a command. */
class FuzzTest {
  @Test
  void mutatedJobsAreRefusedOrPrinted() throws IOException {
    Fuzz fuzz = new Fuzz(80);
    for (int number = 0; number < 200; number++) {
      fuzz.run(number);
    }
    assertThat(fuzz.faults()).isEmpty();
    // A mutator whose jobs were all refused, or all read, would look at half of the program.
    assertThat(fuzz.refused()).isGreaterThan(40);
    assertThat(fuzz.calculated()).isGreaterThan(40);
  }
}
