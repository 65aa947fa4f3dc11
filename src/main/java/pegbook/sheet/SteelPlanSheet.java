package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.calc.cutplan.CutPlan;
import pegbook.calc.steelplan.SteelPlan;
import pegbook.calc.steelplan.SteelPlan.BarLine;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.calc.steelplan.SteelPlan.SizeTotal;
import pegbook.figures.Hole;
import pegbook.measure.Mass;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Spot;

/**
 * Steel: each kind of cage with its drawings, the bar list, what to buy.
 *
 * @param title the sheet's title
 * @param lead how much steel, in a sentence
 * @param elements what each footing counts as
 * @param cages one card for each kind of footing
 * @param bars the bar list
 * @param sizes what is bought of each size
 * @param purchases everything to buy
 * @param starters how starter bars are set, where there are any
 * @param elsewhere a line where the rules named are not those of the place
 */
public record SteelPlanSheet(
    String title,
    String lead,
    SteelElementsPart elements,
    List<Card> cages,
    List<BarRow> bars,
    List<SizeRow> sizes,
    List<Purchase> purchases,
    Optional<String> starters,
    Optional<String> elsewhere)
    implements Sheet {
  private static final double SECTION_WIDTH_MM = 55;
  private static final Spot ELEVATION_SIZE = new Spot(61, 132);

  /** One kind of cage. */
  public record Card(String heading, Drawing section, Drawing elevation, List<SteelFact> facts) {}

  /** A line of the bar list. */
  public record BarRow(
      String mark,
      String size,
      Drawing shape,
      String count,
      String cut,
      String each,
      String mass,
      String footings) {}

  /** How much of a size, and what is bought for it. */
  public record SizeRow(String size, String length, String mass, List<String> orders) {}

  @Override
  public List<Drawing> drawings() {
    return Stream.concat(
            cages.stream().flatMap(card -> Stream.of(card.section(), card.elevation())),
            bars.stream().map(BarRow::shape))
        .toList();
  }

  /** Whether the job has steel to print. */
  public static boolean isWanted(Packet packet) {
    return !packet.steelPlan().cages().isEmpty();
  }

  /** Makes the sheet. */
  public static SteelPlanSheet of(Packet packet, Writing writing) {
    SteelPlan plan = packet.steelPlan();
    List<Card> cards = new ArrayList<>();
    for (Cage cage : plan.cages()) {
      cards.add(card(packet, writing, cage, cards.size() + 1));
    }
    return new SteelPlanSheet(
        writing.texts().say("steel-plan.title"),
        lead(plan, writing),
        SteelElementsPart.of(packet, writing),
        cards,
        plan.barList().stream().map(line -> bar(plan, line, writing)).toList(),
        plan.sizes().stream().map(size -> size(packet.cutPlan(), size, writing)).toList(),
        Purchase.of(
            Stream.concat(packet.cutPlan().needs().stream(), plan.needs().stream()).toList(),
            writing),
        plan.cages().stream().anyMatch(cage -> cage.uprights().starters().isPresent())
            ? Optional.of(writing.texts().say("steel-plan.rule.starters"))
            : Optional.empty(),
        packet.job().place().isUnitedStates()
            ? Optional.empty()
            : Optional.of(writing.texts().say("steel-plan.elsewhere")));
  }

  private static String lead(SteelPlan plan, Writing writing) {
    Mass mass = plan.sizes().stream().map(SizeTotal::mass).reduce(Mass.ZERO, Mass::plus);
    int footings = plan.cages().stream().mapToInt(cage -> cage.marks().size()).sum();
    int pieces = plan.barList().stream().mapToInt(BarLine::count).sum();
    return writing
        .texts()
        .say(
            footings == 1 ? "steel-plan.lead.single" : "steel-plan.lead",
            Map.of(
                "footings", writing.formats().count(footings),
                "pieces", writing.formats().count(pieces),
                "shapes", writing.formats().count(plan.barList().size()),
                "mass", writing.formats().mass(mass)));
  }

  private static Card card(Packet packet, Writing writing, Cage cage, int number) {
    Hole hole =
        packet.asDug().forSteel().stream()
            .filter(each -> each.mark().equals(cage.marks().get(0)))
            .findFirst()
            .orElseThrow();
    return new Card(
        writing.formats().names(cage.marks()),
        CageSection.of(writing, cage, "steel-section-" + number, SECTION_WIDTH_MM),
        CageElevation.of(writing, hole, cage, "steel-elevation-" + number, ELEVATION_SIZE),
        SteelFact.of(packet, writing, cage));
  }

  private static BarRow bar(SteelPlan plan, BarLine line, Writing writing) {
    Formats formats = writing.formats();
    return new BarRow(
        line.barMark(),
        line.size(),
        BarShape.of(writing, plan, line, "bar-shape-" + line.barMark()),
        formats.count(line.count()),
        formats.length(line.cut()),
        mass(line.each(), formats),
        mass(line.mass(), formats),
        formats.names(line.marks()));
  }

  /** Bars are light: a decimal. */
  private static String mass(Mass mass, Formats formats) {
    return formats.in(mass, formats.units() == UnitSystem.IMPERIAL ? Unit.POUND : Unit.KILOGRAM, 1);
  }

  private static SizeRow size(CutPlan cutPlan, SizeTotal size, Writing writing) {
    Formats formats = writing.formats();
    List<String> orders =
        cutPlan.orders(size.size()).stream()
            .map(
                bars ->
                    writing
                        .texts()
                        .say(
                            "steel-plan.size.order",
                            Map.of(
                                "bars", formats.count(bars.bars()),
                                "stock", formats.length(bars.length()))))
            .toList();
    return new SizeRow(
        size.size(), formats.distance(size.length()), mass(size.mass(), formats), orders);
  }
}
