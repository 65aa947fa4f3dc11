package pegbook.calc.tapetable;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.geometry.Point;
import pegbook.job.Outline;
import pegbook.measure.Length;
import pegbook.testing.LayoutJob;

/** Every tape that the table tells to hold, once. */
class TapedPairsTest {
  static Stream<LayoutJob> layouts() {
    LayoutJob flat =
        LayoutJob.of(
            new Outline.Free(
                List.of(
                    new Point(-50, -50), new Point(50, -50), new Point(50, 50), new Point(-50, 50)),
                java.util.Optional.of(
                    List.of(
                        new Point(0, 0),
                        new Point(10, 0),
                        new Point(3, 1),
                        new Point(6, 0.5),
                        new Point(5, 4)))));
    flat.azimuth = java.util.Optional.empty();
    flat.tape = new Length(100);
    return Stream.of(new LayoutJob(), new LayoutJob().pier("P1", 0, 0).pier("P2", 0.4, 0.2), flat);
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void everyTapeIsAPairOnce(LayoutJob job) {
    TapeTable table =
        TapeTableCalculator.calculate(job.job(), PlacementCalculator.calculate(job.job()));
    Set<Set<String>> wanted = new HashSet<>();
    String first = table.baseline().first();
    String second = table.baseline().second();
    wanted.add(new TreeSet<>(List.of(first, second)));
    for (TapeTable.Row row : table.rows()) {
      wanted.add(new TreeSet<>(List.of(first, row.mark())));
      wanted.add(new TreeSet<>(List.of(second, row.mark())));
      row.check().ifPresent(check -> wanted.add(new TreeSet<>(List.of(check.to(), row.mark()))));
    }
    for (TapeTable.BetterPair pair : table.betterPairs()) {
      wanted.add(new TreeSet<>(List.of(pair.first(), pair.mark())));
      wanted.add(new TreeSet<>(List.of(pair.second(), pair.mark())));
    }
    assertThat(table.pairs())
        .extracting(pair -> (Set<String>) new TreeSet<>(List.of(pair.first(), pair.second())))
        .containsExactlyInAnyOrderElementsOf(wanted);
  }
}
