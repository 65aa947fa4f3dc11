package pegbook.calc.buyinglist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.buyinglist.BuyingList.Group;
import pegbook.calc.buyinglist.BuyingList.Line;
import pegbook.calc.buyinglist.BuyingList.Supplier;
import pegbook.figures.Argument;
import pegbook.figures.Need;
import pegbook.figures.Task;
import pegbook.figures.TaskDay;
import pegbook.job.Job;
import pegbook.job.Prices;
import pegbook.job.Prices.Item;
import pegbook.job.Prices.TubePrice;
import pegbook.job.Shop;
import pegbook.job.Stock;
import pegbook.measure.Area;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Money;
import pegbook.measure.Pressure;
import pegbook.measure.Unit;
import pegbook.measure.Volume;
import pegbook.testing.FillJob;

class BuyingListCalculatorTest {
  private static final LocalDate DATE = LocalDate.of(2027, 5, 8);
  private static final List<TaskDay> DAYS =
      List.of(
          new TaskDay(Task.Kind.MARK_OUT, 1, Optional.of(DATE)),
          new TaskDay(Task.Kind.STEEL, 3, Optional.of(DATE.plusDays(2))),
          new TaskDay(Task.Kind.STEEL, 2, Optional.of(DATE.plusDays(1))),
          new TaskDay(Task.Kind.POUR, 4, Optional.of(DATE.plusDays(3))));

  private static Need pieces(String id, double amount, double order, Object... words) {
    Map<String, Argument> arguments = new LinkedHashMap<>();
    for (int i = 0; i < words.length; i += 2) {
      arguments.put((String) words[i], (Argument) words[i + 1]);
    }
    return new Need(id, arguments, amount, order, Unit.NONE, Optional.empty());
  }

  private static Need bags(int count) {
    return pieces("concrete-bags", count, count, "bag", Argument.of(Mass.ofPounds(80)));
  }

  private static Need bars(String size, int count) {
    return pieces(
        "bars",
        count,
        count,
        "size",
        Argument.words(size),
        "stock",
        Argument.of(Length.ofFeet(20)));
  }

  private static Job job(Optional<Mass> load, Optional<Prices> prices) {
    Job plain = new FillJob().job();
    return new Job(
        plain.name(),
        plain.heading(),
        plain.place(),
        plain.site(),
        plain.ground(),
        plain.layout(),
        plain.supports(),
        plain.piers(),
        plain.floor(),
        plain.wind(),
        plain.design(),
        plain.crew(),
        plain.plan(),
        plain.tools(),
        plain.spoil(),
        plain.concrete(),
        STOCK,
        new Shop(load, Length.ofFeet(4), Volume.ofCubicFeet(0.5)),
        prices,
        plain.field(),
        plain.power(),
        plain.defaults());
  }

  /** Bars of 20 ft have a price, and one of another length, which is not theirs. */
  private static final Stock STOCK =
      new Stock(
          Length.ofFeet(20),
          List.of(
              new Stock.Bar("#4", Length.ofFeet(10), Optional.of(usd("6.10")), Optional.empty()),
              new Stock.Bar("#4", Length.ofFeet(20), Optional.of(usd("11.80")), Optional.empty())),
          List.of(),
          Length.ZERO,
          Length.ofFeet(2),
          Pressure.ofPsi(60_000),
          Stock.Coating.NONE);

  private static Money usd(String amount) {
    return new Money(new BigDecimal(amount), "USD");
  }

  private static BuyingList list(Need... needs) {
    return BuyingListCalculator.calculate(
        job(Optional.empty(), Optional.empty()), List.of(needs), DAYS);
  }

  @Test
  void whatTwoSubjectsWantOfOneThingIsOneLine() {
    BuyingList list =
        list(bars("#4", 5), pieces("wire-ties", 40, 40), bars("#4", 2), bars("#3", 1));
    assertThat(list.lines()).hasSize(3);
    Line four = list.lines().get(0);
    assertThat(four.need().amount()).isEqualTo(7);
    assertThat(four.need().order()).isEqualTo(7);
    assertThat(list.lines().get(1).need().order()).isEqualTo(1);
  }

  @Test
  void suppliersAndGoodsStandInTheirOrderAndAreNamed() {
    BuyingList list = list(pieces("peg-nails", 9, 10), bars("#4", 5), bags(10));
    assertThat(list.groups())
        .extracting(Group::supplier)
        .containsExactly(Supplier.BUILDING_YARD, Supplier.STEEL_YARD, Supplier.HARDWARE_SHOP);
    assertThat(list.lines()).extracting(Line::name).containsExactly("A1", "B1", "C1");
  }

  /** A need that no row knows is not lost. */
  @Test
  void anUnknownNeedStandsUnderOther() {
    BuyingList list = list(pieces("something-new", 3, 4));
    assertThat(list.groups().get(0).supplier()).isEqualTo(Supplier.OTHER);
    assertThat(list.lines().get(0).spare()).isEqualTo(1);
  }

  @Test
  void nothingIsBoughtWhereNothingIsOrdered() {
    assertThat(list(pieces("wire-ties", 0, 0)).groups()).isEmpty();
  }

  @Test
  void aThingIsNeededOnTheFirstDayOfItsWork() {
    BuyingList list = list(bars("#4", 5), bags(3), pieces("gravel-bags", 1, 1));
    assertThat(list.lines())
        .extracting(line -> line.by().orElseThrow().day())
        .as("bags for the pour, gravel on the first day of all as none is planned, bars")
        .containsExactly(4, 1, 2);
    assertThat(
            BuyingListCalculator.calculate(
                    job(Optional.empty(), Optional.empty()), List.of(bags(3)), List.of())
                .lines()
                .get(0)
                .by())
        .isEmpty();
  }

  /** ASTM A615: a #4 bar weighs 0.668 lb/ft, a #5 bar 1.043 lb/ft; 20 ft bars. */
  @ParameterizedTest
  @CsvSource({"#3, 0.376", "#4, 0.668", "#5, 1.043", "#6, 1.502"})
  void barsWeighWhatTheStandardPrints(String size, double poundsPerFoot) {
    Line line = list(bars(size, 3)).lines().get(0);
    assertThat(line.mass().orElseThrow().pounds() / 60).isEqualTo(poundsPerFoot, offset(0.0005));
  }

  /**
   * Masses worked out by hand: 300 lb of sand; four boards 2 by 6 in of 8 ft at 35 lb/ft³; two
   * sheets 3/4 in of 4 by 8 ft at 3 lb/ft² for each inch; 10 stakes; 6 posts. Nobody knows tubes.
   */
  @Test
  void sandTimberAndPlywoodCountForTheTrips() {
    Need sand = new Need("mix-sand", Map.of(), 260, 300, Unit.POUND, Optional.empty());
    Need stone = new Need("mix-stone", Map.of(), 410, 500, Unit.POUND, Optional.empty());
    BuyingList list =
        BuyingListCalculator.calculate(
            job(Optional.of(Mass.ofPounds(500)), Optional.empty()),
            List.of(
                sand,
                stone,
                pieces(
                    "form-boards",
                    4,
                    4,
                    "thick",
                    Argument.of(Length.ofInches(2)),
                    "wide",
                    Argument.of(Length.ofInches(6)),
                    "stock",
                    Argument.of(Length.ofFeet(8))),
                pieces(
                    "hole-covers",
                    2,
                    2,
                    "thick",
                    Argument.of(Length.ofInches(0.75)),
                    "width",
                    Argument.of(Length.ofFeet(4)),
                    "length",
                    Argument.of(Length.ofFeet(8))),
                pieces("ground-stakes", 10, 10),
                pieces("fence-posts", 6, 6),
                pieces("form-tube", 1, 1, "inside", Argument.of(Length.ofInches(12)))),
            DAYS);
    Map<String, Double> masses = new LinkedHashMap<>();
    list.lines()
        .forEach(
            line -> masses.put(line.need().id(), line.mass().map(Mass::pounds).orElse(Double.NaN)));
    assertThat(masses.get("mix-sand")).isEqualTo(300, offset(1e-6));
    assertThat(masses.get("form-boards")).isEqualTo(4 * 8 * (2.0 / 12) * 0.5 * 35, offset(1e-6));
    assertThat(masses.get("hole-covers")).isEqualTo(2 * 32 * 0.75 * 3, offset(1e-6));
    assertThat(masses.get("ground-stakes")).isEqualTo(10, offset(1e-6));
    assertThat(masses.get("fence-posts")).isEqualTo(30, offset(1e-6));
    assertThat(masses.get("form-tube")).isNaN();
    double all = 300 + 500 + 4 * 8 * (2.0 / 12) * 0.5 * 35 + 144 + 10 + 30;
    assertThat(list.groups().get(0).mass().orElseThrow().pounds()).isEqualTo(all, offset(1e-6));
    assertThat(list.groups().get(0).trips())
        .as("sheets of 72 lb, six to a trip")
        .hasValue((int) Math.ceil(all / 432));
  }

  /** Sand is priced by what its order counts. */
  @Test
  void sandAndStoneHavePrices() {
    TreeMap<Item, Money> items = new TreeMap<>();
    items.put(Item.SAND, usd("0.021"));
    items.put(Item.STONE, usd("0.0195"));
    BuyingList list =
        BuyingListCalculator.calculate(
            job(Optional.empty(), Optional.of(new Prices("USD", items, List.of()))),
            List.of(
                new Need("mix-sand", Map.of(), 1260, 1300, Unit.POUND, Optional.empty()),
                new Need("mix-stone", Map.of(), 1410, 1500, Unit.POUND, Optional.empty())),
            DAYS);
    assertThat(list.lines())
        .extracting(line -> line.sum().orElseThrow().amount().toPlainString())
        .containsExactly("27.30", "29.25");
  }

  /**
   * By hand from NEC Chapter 9, Tables 5 and 8: 12 AWG has 6530 circular mils, 0.005129 in², and
   * 0.0133 in² with its insulation. Bare copper of 12 AWG weighs 19.77 lb to 1000 ft (wire tables
   * of the National Bureau of Standards, from memory), insulated about 24 lb (makers' lists, from
   * memory).
   */
  @Test
  void wireWeighsItsMetalAndItsInsulation() {
    double metal = Math.PI / 4 * 6530 / 1e6;
    assertThat(wire("power-wire", "copper", metal, metal)).isCloseTo(19.77, offset(0.01));
    assertThat(wire("power-wire", "copper", metal, 0.0133)).isCloseTo(24.7, offset(0.1));
    assertThat(wire("power-wire", "aluminium", metal, metal))
        .isCloseTo(19.77 * 2.70 / 8.89, offset(0.01));
  }

  /** Pounds of 1000 ft. */
  private static double wire(String id, String metal, double conducting, double whole) {
    Map<String, Argument> words = new LinkedHashMap<>();
    words.put("size", Argument.words("12 AWG"));
    words.put("metal", Argument.entry("power-line.metal." + metal));
    words.put("conducting", Argument.of(Area.ofSquareInches(conducting)));
    words.put("whole", Argument.of(Area.ofSquareInches(whole)));
    return list(new Need(id, words, 990, 1000, Unit.FOOT, Optional.empty()))
        .lines()
        .get(0)
        .mass()
        .orElseThrow()
        .pounds();
  }

  /** Each priced by its size, its length or its volume. */
  @Test
  void electricalGoodsHavePrices() {
    TreeMap<Item, Money> items = new TreeMap<>();
    items.put(Item.WARNING_TAPE, usd("0.06"));
    items.put(Item.BEDDING_SAND, usd("38"));
    Prices prices =
        new Prices(
            "USD",
            items,
            List.of(),
            List.of(
                new Prices.FittingPrice("PVC 1 in", Optional.of(usd("4.20")), Optional.empty())));
    BuyingList list =
        BuyingListCalculator.calculate(
            job(Optional.empty(), Optional.of(prices)),
            List.of(
                pieces("power-bends", 3, 3, "size", Argument.words("PVC 1 in")),
                pieces("power-bends", 3, 3, "size", Argument.words("PVC 2 in")),
                pieces("power-couplings", 9, 9, "size", Argument.words("PVC 1 in")),
                new Need("power-warning-tape", Map.of(), 98, 100, Unit.FOOT, Optional.empty()),
                new Need("power-sand", Map.of(), 1.3, 1.5, Unit.CUBIC_YARD, Optional.empty())),
            DAYS);
    Map<String, String> sums = new TreeMap<>();
    list.lines()
        .forEach(
            line ->
                sums.put(
                    line.name(),
                    line.sum().map(sum -> sum.amount().toPlainString()).orElse("none")));
    assertThat(sums)
        .containsExactly(
            Map.entry("A1", "57.00"),
            Map.entry("B1", "12.60"),
            Map.entry("B2", "none"),
            Map.entry("B3", "none"),
            Map.entry("B4", "6.00"));
  }

  /** 125 bags of 80 lb are 10 000 lb; 12 bags make a trip of 1000 lb, so 11 trips. */
  @Test
  void tripsAreInWholeBags() {
    BuyingList list =
        BuyingListCalculator.calculate(
            job(Optional.of(Mass.ofPounds(1000)), Optional.empty()), List.of(bags(125)), DAYS);
    Group group = list.groups().get(0);
    assertThat(group.mass().orElseThrow().pounds()).isEqualTo(10_000, offset(1e-6));
    assertThat(group.trips()).hasValue(11);
    assertThat(list(bags(125)).groups().get(0).trips()).isEmpty();
  }

  @Test
  void aPieceTooHeavyForTheLoadIsAFinding() {
    BuyingList list =
        BuyingListCalculator.calculate(
            job(Optional.of(Mass.ofPounds(60)), Optional.empty()), List.of(bags(4)), DAYS);
    assertThat(list.groups().get(0).trips()).isEmpty();
    assertThat(list.findings())
        .singleElement()
        .satisfies(finding -> assertThat(finding.id()).isEqualTo("piece-heavier-than-load"));
  }

  @Test
  void pricesAreMultipliedAndSummedExactly() {
    TreeMap<Item, Money> items = new TreeMap<>();
    items.put(Item.BAG, usd("6.20"));
    items.put(Item.NAIL, usd("0.045"));
    items.put(Item.READY_MIX, usd("165.55"));
    Prices prices =
        new Prices("USD", items, List.of(new TubePrice(Length.ofInches(14), usd("16.40"))));
    Need truck = new Need("ready-mix", Map.of(), 2.1, 2.25, Unit.CUBIC_YARD, Optional.empty());
    BuyingList list =
        BuyingListCalculator.calculate(
            job(Optional.empty(), Optional.of(prices)),
            List.of(
                bags(125),
                pieces("peg-nails", 9, 11),
                truck,
                pieces("form-tube", 0.75, 1, "inside", Argument.of(Length.ofMillimetres(355.6))),
                pieces("form-tube", 1, 1, "inside", Argument.of(Length.ofInches(16))),
                bars("#4", 5),
                bars("#5", 3)),
            DAYS);
    Map<String, String> sums = new LinkedHashMap<>();
    list.lines()
        .forEach(
            line ->
                sums.put(
                    line.name(),
                    line.sum().map(sum -> sum.amount().toPlainString()).orElse("none")));
    assertThat(sums)
        .containsEntry("A1", "372.49") // 2.25 · 165.55 = 372.4875
        .containsEntry("B1", "775.00")
        .containsEntry("B2", "16.40")
        .containsEntry("B3", "none")
        .containsEntry("C1", "59.00")
        .containsEntry("C2", "none")
        .containsEntry("D1", "0.50"); // 11 · 0.045 = 0.495
    assertThat(list.withoutPrice()).isEqualTo(2);
    assertThat(list.total().orElseThrow().amount()).isEqualByComparingTo("1223.39");
    assertThat(
            list.groups().stream()
                .flatMap(group -> group.sum().stream())
                .reduce(Money::plus)
                .orElseThrow())
        .isEqualTo(list.total().orElseThrow());
  }

  /** The yen has no part of itself to pay with. */
  @Test
  void sumsAreWhatCanBePaid() {
    TreeMap<Item, Money> items = new TreeMap<>();
    items.put(Item.BAG, new Money(new BigDecimal("398.5"), "JPY"));
    Prices prices = new Prices("JPY", items, List.of());
    BuyingList list =
        BuyingListCalculator.calculate(
            job(Optional.empty(), Optional.of(prices)), List.of(bags(3)), DAYS);
    assertThat(list.total().orElseThrow().amount().toPlainString()).isEqualTo("1196");
  }
}
