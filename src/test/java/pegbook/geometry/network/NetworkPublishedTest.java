package pegbook.geometry.network;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.published.Table;

/** Adjusts the published networks and holds them to their last printed digit. */
class NetworkPublishedTest {
  /** The worst difference of each network and column, in units of the last printed digit. */
  private static final Map<String, Double> WORST = new TreeMap<>();

  @AfterAll
  static void write() throws IOException {
    StringBuilder table = new StringBuilder();
    WORST.forEach(
        (where, units) -> table.append(String.format(Locale.ROOT, "%s %.3f%n", where, units)));
    Files.writeString(Path.of("target", "published-networks.txt"), table, UTF_8);
  }

  static List<String> networks() {
    return PublishedNetworks.names();
  }

  private static Adjustment adjusted(String network) {
    return NetworkAdjustment.of(PublishedNetworks.network(network), Datum.held()).adjusted();
  }

  /** Half a unit of the last digit that a cell prints, and the error of writing it in binary. */
  private static void agrees(Table.Row row, String column, double computed) {
    String text = row.text(column);
    int point = text.indexOf('.');
    double unit = point < 0 ? 1 : StrictMath.pow(10, -(text.length() - point - 1));
    assertThat(computed)
        .as("%s of %s", column, row.cells())
        .isCloseTo(row.number(column), within(0.5 * unit + 1e-9));
    if (row.cells().containsKey("network") && !text.isEmpty()) {
      double units = Math.abs(computed - row.number(column)) / unit;
      WORST.merge(row.text("network") + " " + column, units, Math::max);
    }
  }

  @ParameterizedTest
  @MethodSource("networks")
  void pointsAndTheirErrorsAreThePublishedOnes(String name) {
    Adjustment adjustment = adjusted(name);
    double factor = adjustment.varianceFactor().orElseThrow();
    for (Table.Row row : PublishedNetworks.rows("adjusted", name)) {
      AdjustedPoint point = adjustment.point(row.text("point"));
      agrees(row, "east", point.at().east());
      agrees(row, "north", point.at().north());
      agrees(row, "east_micrometre", point.at().east());
      agrees(row, "north_micrometre", point.at().north());
      Spread spread = point.spread().times(factor);
      agrees(row, "deviation_east_cm", spread.eastDeviation().metres() * 100);
      agrees(row, "deviation_north_cm", spread.northDeviation().metres() * 100);
      agrees(row, "deviation_total_cm", spread.totalDeviation().metres() * 100);
      agrees(row, "deviation_east_mm", spread.eastDeviation().millimetres());
      agrees(row, "deviation_north_mm", spread.northDeviation().millimetres());
      agrees(row, "covariance_mm2", spread.eastNorth() * 1e6);
      agrees(row, "half_axis_long_mm", spread.longHalfAxis().millimetres());
      agrees(row, "half_axis_short_mm", spread.shortHalfAxis().millimetres());
      double theta = (450 - spread.longAxisAzimuth().degrees()) % 180;
      agrees(row, "theta_deg", theta < 0.005 ? theta + 180 : theta);
    }
  }

  @ParameterizedTest
  @MethodSource("networks")
  void residualsAndRedundanciesAreThePublishedOnes(String name) {
    Adjustment adjustment = adjusted(name);
    double root = Math.sqrt(adjustment.varianceFactor().orElseThrow());
    List<Table.Row> rows = PublishedNetworks.rows("residuals", name);
    for (int i = 0; i < rows.size(); i++) {
      Table.Row row = rows.get(i);
      AdjustedDistance distance = adjustment.distances().get(i);
      assertThat(distance.taped().from()).isEqualTo(row.text("from"));
      assertThat(distance.taped().to()).isEqualTo(row.text("to"));
      agrees(row, "adjusted", distance.adjusted().metres());
      agrees(row, "residual_mm", distance.residual().millimetres());
      agrees(row, "redundancy", distance.redundancy());
      agrees(row, "w", distance.standardised().orElseThrow());
      agrees(row, "tau", Math.abs(distance.standardised().orElseThrow()) / root);
      agrees(row, "error_mm", distance.estimatedError().orElseThrow().millimetres());
    }
  }

  @ParameterizedTest
  @MethodSource("networks")
  void sumsAreThePublishedOnes(String name) {
    Adjustment adjustment = adjusted(name);
    Table.Row row = PublishedNetworks.rows("summary", name).get(0);
    double before = row.number("sigma_before_mm");
    assertThat(adjustment.distances()).hasSize((int) row.number("distances"));
    assertThat(adjustment.degreesOfFreedom()).isEqualTo((int) row.number("redundancy"));
    double factor = adjustment.varianceFactor().orElseThrow();
    agrees(row, "sigma_after_mm", before * Math.sqrt(factor));
    double squares = adjustment.weightedSquares() * before * before;
    assertThat(squares)
        .isCloseTo(row.number("squares_mm2"), within(squares > 10000 ? 0.05 : 0.005));
  }

  @Test
  void redundancyNumbersAddUpToTheDegreesOfFreedom() {
    for (String name : networks()) {
      Adjustment adjustment = adjusted(name);
      assertThat(adjustment.distances().stream().mapToDouble(AdjustedDistance::redundancy).sum())
          .isCloseTo(adjustment.degreesOfFreedom(), within(1e-9));
    }
  }

  @ParameterizedTest
  @MethodSource("chiSquaredRows")
  void chiSquaredPercentilesAreThePublishedOnes(Table.Row row) {
    for (String percentile : List.of("p0.025", "p0.05", "p0.95", "p0.975", "p0.99")) {
      agrees(
          row,
          percentile,
          Chances.chiSquaredQuantile(
              Double.parseDouble(percentile.substring(1)), (int) row.number("dof")));
    }
  }

  static List<Table.Row> chiSquaredRows() {
    return Table.read("/pegbook/geometry/network/chi-squared").rows();
  }

  @ParameterizedTest
  @CsvSource({
    "0.5, 1.177410",
    "0.9, 2.145966",
    "0.95, 2.447747",
    "0.99, 3.034854",
    "0.999, 3.716922"
  })
  void ellipsesAreScaledByTheirShare(double share, double scale) {
    // Exact mathematics: the root of -2 ln(1 - P).
    assertThat(Chances.ellipseScale(share)).isCloseTo(scale, within(0.5e-6));
  }
}
