package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.calc.buyinglist.BuyingList.Line;
import pegbook.calc.buyinglist.BuyingList.Supplier;
import pegbook.calc.cutplan.CutPlan.CutBar;
import pegbook.calc.cutplan.CutPlan.SizePlan;
import pegbook.figures.Argument;
import pegbook.figures.Need;
import pegbook.figures.Task;
import pegbook.job.Stock;
import pegbook.measure.Length;
import pegbook.packet.Packet;
import pegbook.testing.PrintedJob;
import pegbook.testing.PrintedTable;
import pegbook.testing.PrintedValue;
import pegbook.testing.TrialPacket;

/** The sheets against the list: each thing that a sheet wants bought, once, and nothing else. */
class BuyingListSheetTest {
  private static final String SHEET = "Buying list";

  static Stream<TrialPacket> jobs() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(10));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void whatTheSubjectsWantIsWhatTheListHas(TrialPacket trial) {
    Packet packet = trial.packet();
    Map<String, double[]> wanted = new LinkedHashMap<>();
    packet.results().stream()
        .flatMap(result -> result.needs().stream())
        .filter(need -> need.order() > 0)
        .forEach(need -> add(wanted, need));
    Map<String, double[]> listed = new LinkedHashMap<>();
    packet.buyingList().lines().forEach(line -> add(listed, line.need()));
    assertThat(listed.keySet()).containsExactlyInAnyOrderElementsOf(wanted.keySet());
    wanted.forEach(
        (id, amounts) -> assertThat(listed.get(id)).as(id).containsExactly(amounts, within(1e-9)));
  }

  private static void add(Map<String, double[]> sums, Need need) {
    double[] sum = sums.computeIfAbsent(need.id() + " " + need.unit(), any -> new double[] {0, 0});
    sum[0] += need.amount();
    sum[1] += need.order();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void noLineIsThereTwiceAndEveryThingHasASupplierAndADay(TrialPacket trial) {
    BuyingListSheet sheet = BuyingListSheet.of(trial.packet(), trial.writing());
    List<String> whats =
        sheet.groups().stream()
            .flatMap(group -> group.rows().stream())
            .map(BuyingListSheet.Row::what)
            .toList();
    assertThat(whats).doesNotHaveDuplicates().isNotEmpty();
    assertThat(trial.packet().buyingList().groups())
        .noneMatch(group -> group.supplier() == Supplier.OTHER);
    assertThat(trial.packet().buyingList().lines()).allMatch(line -> line.by().isPresent());
  }

  /** The orders printed on the sheets of the subjects stand on the list with the same words. */
  @ParameterizedTest
  @MethodSource("jobs")
  void theSheetsPrintTheSameOrders(TrialPacket trial) {
    Packet packet = trial.packet();
    Writing writing = trial.writing();
    List<Purchase> printed = new ArrayList<>(ConcretePlanSheet.of(packet, writing).purchases());
    if (SteelPlanSheet.isWanted(packet)) {
      printed.addAll(SteelPlanSheet.of(packet, writing).purchases());
    }
    SafePegsSheet.of(packet, writing).ifPresent(sheet -> printed.addAll(sheet.purchases()));
    List<Purchase> listed =
        BuyingListSheet.of(packet, writing).groups().stream()
            .flatMap(group -> group.rows().stream())
            .map(row -> new Purchase(row.what(), row.order()))
            .toList();
    assertThat(listed).containsAll(printed);
  }

  /**
   * Bars, timber, boards and pipe: every piece that a sheet asks for is cut once, and what it is
   * cut from is either in the shed or one line of the list, with the cut plan's number.
   */
  @ParameterizedTest
  @MethodSource("jobs")
  void everyPieceIsCutOnceFromWhatIsBought(TrialPacket trial) {
    Packet packet = trial.packet();
    Map<String, Integer> wanted = new TreeMap<>();
    Stream.of(
            packet.steelPlan().pieces(),
            packet.floorFrame().pieces(),
            packet.levels().postPieces(packet.floorFrame().postSize()),
            packet.powerLine().pieces())
        .flatMap(List::stream)
        .forEach(piece -> wanted.merge(piece.toString(), piece.count(), Integer::sum));
    Map<String, Integer> cut = new TreeMap<>();
    Map<String, Double> ordered = new TreeMap<>();
    for (SizePlan size : packet.cutPlan().sizes()) {
      size.tooLong().forEach(piece -> cut.merge(piece.toString(), piece.count(), Integer::sum));
      for (CutBar bar : size.bars()) {
        bar.runs()
            .forEach(
                run -> cut.merge(run.piece().toString(), bar.times() * run.count(), Integer::sum));
        if (!bar.isFromShed()) {
          ordered.merge(stock(size.size(), bar.length()), (double) bar.times(), Double::sum);
        }
      }
    }
    assertThat(cut).isEqualTo(wanted);
    Map<String, Double> listed = new TreeMap<>();
    packet.buyingList().lines().stream()
        .map(Line::need)
        .filter(need -> CUT.contains(need.id()))
        .forEach(need -> listed.put(stock(need), need.order()));
    assertThat(listed).isEqualTo(ordered);
  }

  private static final List<String> CUT = List.of("bars", "timber", "floor-boards", "conduit");

  private static String stock(String size, Length length) {
    return size + " " + Math.round(length.millimetres() * 10);
  }

  private static String stock(Need need) {
    String size =
        need.arguments().get("size") instanceof Argument.Words words ? words.words() : Stock.BOARDS;
    Argument.Measured length = (Argument.Measured) need.arguments().get("stock");
    return stock(size, (Length) length.quantity());
  }

  /** Read back from the paper: bags, sums and the day of the first pour. */
  @Test
  void theDeckPrintsItsListAndItsTotal() {
    PrintedJob deck = PrintedJob.example("sky-deck");
    Packet packet = TrialPacket.example(java.nio.file.Path.of("input/sky-deck.json")).packet();
    PrintedTable building = PrintedTable.headed(deck.tables(SHEET), "Line");
    assertThat(building.cell("A1", "Order"))
        .isEqualTo(Integer.toString(packet.concretePlan().totals().bags()));
    int firstPour =
        packet.dayPlan().days().stream()
            .filter(day -> day.has(Task.Kind.POUR))
            .findFirst()
            .orElseThrow()
            .number();
    assertThat(building.cell("A1", "By day")).isEqualTo(Integer.toString(firstPour));
    assertThat(PrintedValue.number(building.cell("A1", "Sum USD")))
        .isCloseTo(packet.concretePlan().totals().bags() * 6.20, within(0.005));
    double sum =
        packet.buyingList().lines().stream()
            .map(Line::sum)
            .flatMap(java.util.Optional::stream)
            .mapToDouble(money -> money.amount().doubleValue())
            .sum();
    assertThat(packet.buyingList().total().orElseThrow().amount().doubleValue())
        .isCloseTo(sum, within(1e-9));
  }
}
