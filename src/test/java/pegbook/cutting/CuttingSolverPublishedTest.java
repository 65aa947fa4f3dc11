package pegbook.cutting;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static pegbook.cutting.Problems.endless;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.cutting.CuttingProblem.Piece;

/** Holds plans to numbers of bars that are known to be the least. */
class CuttingSolverPublishedTest {
  @ParameterizedTest
  @CsvSource({"uniform-20.csv, 9", "uniform-40.csv, 17", "uniform-60.csv, 27"})
  void settlesThePublishedInstances(String file, int least) throws IOException {
    CuttingPlan plan = CuttingSolver.solve(Problems.of(read(file), endless(150, 0)));
    assertThat(plan.count()).isEqualTo(least);
    assertThat(plan.isBest()).isTrue();
  }

  private static List<Integer> read(String file) throws IOException {
    try (InputStream in = CuttingSolverPublishedTest.class.getResourceAsStream(file)) {
      return new String(in.readAllBytes(), UTF_8)
          .lines()
          .filter(line -> line.matches("\\d+"))
          .map(Integer::valueOf)
          .toList();
    }
  }

  /**
   * V. Chvátal, Linear Programming (1983), chapter 13: rolls 100 in wide give 97 of 45 in, 610 of
   * 36 in, 395 of 31 in and 211 of 14 in; parts of rolls take 452 1/4, whole ones 453. From memory.
   */
  @Test
  void cutsChvatalsRolls() {
    CuttingPlan plan =
        CuttingSolver.solve(
            new CuttingProblem(
                List.of(
                    new Piece(45, 97), new Piece(36, 610), new Piece(31, 395), new Piece(14, 211)),
                List.of(endless(100, 0))));
    assertThat(plan.count()).isEqualTo(453);
    assertThat(plan.isBest()).isTrue();
  }

  /** The size of the largest plan that the packet promises to settle; seconds on two processors. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 18, 19})
  void settlesOneHundredAndTwentyPieces(long seed) {
    CuttingPlan plan =
        CuttingSolver.solve(Problems.of(Problems.uniform(120, 20, 100, seed), endless(150, 0)));
    assertThat(plan.isBest()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"20, 2", "20, 5", "40, 1"})
  void findsTheTripletsThatWerePlanted(int bars, long seed) {
    CuttingPlan plan =
        CuttingSolver.solve(Problems.of(Problems.triplets(bars, seed), endless(1000, 7)));
    assertThat(plan.count()).isEqualTo(bars);
    assertThat(plan.cost()).isEqualTo(7L * bars);
    assertThat(plan.isBest()).isTrue();
  }

  /** Two pieces of 50 need 101 where a cut takes 1: one cut, not two. */
  @Test
  void countsTheKerfBetweenPiecesOnly() {
    CuttingProblem bare = new CuttingProblem(List.of(new Piece(50, 6)), List.of(endless(100, 1)));
    assertThat(CuttingSolver.solve(bare).count()).isEqualTo(3);
    assertThat(CuttingSolver.solve(bare.withKerf(1)).count()).isEqualTo(6);
    CuttingProblem room = new CuttingProblem(List.of(new Piece(50, 6)), List.of(endless(101, 1)));
    assertThat(CuttingSolver.solve(room.withKerf(1)).count()).isEqualTo(3);
  }
}
