package pegbook.calc.buyinglist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.figures.Argument;
import pegbook.figures.Need;
import pegbook.figures.Task;
import pegbook.figures.TaskDay;
import pegbook.figures.Working;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.testing.FillJob;

/** Masses of goods worked by hand from the densities that the workings print. */
class MassesByHandTest {
  private static Need need(String id, double order, Unit unit, Object... words) {
    Map<String, Argument> arguments = new LinkedHashMap<>();
    for (int i = 0; i < words.length; i += 2) {
      arguments.put((String) words[i], (Argument) words[i + 1]);
    }
    return new Need(id, arguments, order, order, unit, Optional.empty());
  }

  private static OrderMass of(Need need, UnitSystem units) {
    return OrderMass.of("A1", need, units).orElseThrow();
  }

  private static Argument mm(double millimetres) {
    return Argument.of(Length.ofMillimetres(millimetres));
  }

  /**
   * Rings of 10 pipes of 10 ft, trade size 3/4: 1.05 in outside; 0.804 in inside of plastic, 0.836
   * in of metal (NEC Chapter 9, Table 4, recalled), at 0.61 and 3.4 lb/ft for each square inch.
   */
  @ParameterizedTest
  @CsvSource({"PVC 3/4 in, 0.804, 0.61", "metal 3/4 in, 0.836, 3.4"})
  void pipesAreRings(String size, double inside, double pounds) {
    Object[] words = {
      "size", Argument.words(size), "stock", Argument.of(Length.ofFeet(10)),
    };
    double area = Math.PI / 4 * (1.05 * 1.05 - inside * inside);
    OrderMass pipes = of(need("conduit", 10, Unit.NONE, words), UnitSystem.IMPERIAL);
    assertThat(pipes.mass().pounds()).isEqualTo(100 * area * pounds, offset(1e-6));
    assertThat(pipes.piece().orElseThrow().pounds()).isEqualTo(10 * area * pounds, offset(1e-6));
    assertThat(OrderMass.of("A1", need("conduit", 1, Unit.NONE), UnitSystem.IMPERIAL)).isEmpty();
  }

  /** Seven of 2x8 of 12 ft: 1 1/2 by 7 1/4 in (American Softwood Lumber Standard) at 45 lb/ft³. */
  @Test
  void timberOfTheFrameWeighsByItsDressedSize() {
    Need joists =
        need(
            "timber",
            7,
            Unit.NONE,
            "size",
            Argument.words("2x8"),
            "stock",
            Argument.of(Length.ofFeet(12)));
    assertThat(of(joists, UnitSystem.IMPERIAL).mass().pounds())
        .isEqualTo(7 * 12 * 1.5 * 7.25 / 144 * 45, offset(1e-6));
    Need nobody = need("timber", 7, Unit.NONE, "size", Argument.words("3x99"), "stock", mm(3000));
    assertThat(OrderMass.of("A1", nobody, UnitSystem.METRIC)).isEmpty();
  }

  /** Twenty boards of 28 by 145 mm, 4 m long, at 700 kg/m³. */
  @Test
  void boardsOfTheFloor() {
    Need boards =
        need("floor-boards", 20, Unit.NONE, "width", mm(145), "thick", mm(28), "stock", mm(4000));
    OrderMass mass = of(boards, UnitSystem.METRIC);
    assertThat(mass.mass().kilograms()).isEqualTo(20 * 4 * 0.145 * 0.028 * 700, offset(1e-9));
    assertThat(mass.piece().orElseThrow().kilograms())
        .isEqualTo(4 * 0.145 * 0.028 * 700, offset(1e-9));
  }

  /** A yard of gravel is 2700 lb, a cubic metre 1600 kg; bags of half a cubic foot 50 lb each. */
  @Test
  void gravelAndSandWeighAlike() {
    for (String id : List.of("gravel", "side-gravel", "power-sand")) {
      assertThat(of(need(id, 2, Unit.CUBIC_YARD), UnitSystem.IMPERIAL).mass().pounds())
          .isEqualTo(5400, offset(1e-6));
      assertThat(of(need(id, 2, Unit.CUBIC_METRE), UnitSystem.METRIC).mass().kilograms())
          .isEqualTo(3200, offset(1e-6));
    }
    Need bags = need("gravel-bags", 6, Unit.NONE, "bag", Argument.of(Volume.ofCubicFeet(0.5)));
    assertThat(of(bags, UnitSystem.IMPERIAL).mass().pounds()).isEqualTo(300, offset(1e-6));
    Need litres = need("gravel-bags", 6, Unit.NONE, "bag", Argument.of(Volume.ofLitres(20)));
    assertThat(of(litres, UnitSystem.METRIC).mass().kilograms()).isEqualTo(192, offset(1e-9));
  }

  /** What is weighed is shown: every line with a mass has its working, named by the line. */
  @Test
  void everyMassHasItsWorking() {
    BuyingList list =
        BuyingListCalculator.calculate(
            new FillJob().job(),
            List.of(
                need("concrete-bags", 3, Unit.NONE, "bag", Argument.of(Mass.ofPounds(80))),
                need("gravel", 1, Unit.CUBIC_YARD)),
            List.of());
    assertThat(list.workings()).extracting(Working::subject).contains("A1", "A2");
  }

  /** Goods of a pour are wanted by its first lift, where that comes first. */
  @Test
  void theFirstLiftIsAPourToo() {
    LocalDate date = LocalDate.of(2027, 5, 8);
    BuyingList list =
        BuyingListCalculator.calculate(
            new FillJob().job(),
            List.of(need("concrete-bags", 3, Unit.NONE, "bag", Argument.of(Mass.ofPounds(80)))),
            List.of(
                new TaskDay(Task.Kind.MARK_OUT, 1, Optional.of(date)),
                new TaskDay(Task.Kind.STEEL, 2, Optional.of(date)),
                new TaskDay(Task.Kind.FIRST_LIFT, 3, Optional.of(date)),
                new TaskDay(Task.Kind.POUR, 5, Optional.of(date))));
    assertThat(list.lines().get(0).by().orElseThrow().day()).isEqualTo(3);
  }
}
