package pegbook.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import pegbook.calc.digschedule.DigSchedule;
import pegbook.packet.Packet;
import pegbook.sheet.drawing.Drawing;

/**
 * The dig schedule with its depth targets, the sections of the holes, and the spoil.
 *
 * @param title the sheet's title
 * @param lead the work in two sentences
 * @param levels true when any depth is given from a datum line
 * @param line where that line stands
 * @param depths one row for each hole, in the order of digging
 * @param depthWorking numbers of the workings behind the columns
 * @param measuring how a depth is measured
 * @param choices what each rule asks for, and which one won
 * @param choiceNotes where the rules are from
 * @param firstSections the first pictures, side by side
 * @param moreSections the others, two side by side
 * @param scale their scale
 * @param bars scale bar and check bar
 * @param asDug what to do when the ground is not as expected
 * @param order the order of digging and its reason
 * @param tools which tool for which stretch
 * @param soil one row for each kind of hole
 * @param soilTotal sums
 * @param soilWorking numbers of the workings behind the columns
 * @param carry how long the carrying takes
 * @param left what of the soil is left over; empty where no tube takes soil or gravel
 * @param heapLead what heaps there are
 * @param tip where the carts tip; empty without a tip
 * @param heaps two heaps a row
 * @param basis what the numbers rest on
 */
public record DigScheduleSheet(
    String title,
    String lead,
    boolean levels,
    String line,
    List<DepthRow> depths,
    DepthRow depthWorking,
    List<String> measuring,
    List<ChoiceRow> choices,
    List<String> choiceNotes,
    List<Section> firstSections,
    List<Pair> moreSections,
    String scale,
    Drawing bars,
    List<String> asDug,
    String order,
    List<ToolLine> tools,
    List<SoilRow> soil,
    SoilRow soilTotal,
    SoilRow soilWorking,
    String carry,
    String left,
    String heapLead,
    String tip,
    List<HeapRow> heaps,
    List<String> basis)
    implements Sheet {

  /** A hole's depths; cells in the order of the columns. */
  public record DepthRow(
      String order,
      String mark,
      String diameter,
      String target,
      String gravel,
      String dug,
      String lineToUnderside,
      String lineToBottom,
      String rule) {}

  /** What the rules ask of some footings. */
  public record ChoiceRow(
      String marks, String least, String frost, String asked, String target, String rule) {}

  /** A picture and the holes it stands for. */
  public record Section(Drawing picture, String caption) {}

  /** One or two pictures that stand side by side. */
  public record Pair(List<Section> sections) {
    public Pair {
      sections = List.copyOf(sections);
    }
  }

  /** The tools of some holes, from the top down. */
  public record ToolLine(String marks, String steps) {}

  /** The soil of holes that are alike. */
  public record SoilRow(
      String marks, String bank, String loose, String loads, String mass, String hours) {}

  /** A heap, named by its hole; all empty: no heap. */
  public record Heap(String mark, String size, String place) {}

  /** Two heaps side by side. */
  public record HeapRow(Heap left, Heap right) {}

  /** Makes the sheet. */
  public static DigScheduleSheet of(Packet packet, Writing writing) {
    DigTables tables = new DigTables(packet, writing);
    DigWords words = new DigWords(packet, writing);
    HoleSections sections = HoleSections.of(packet, writing);
    DigSchedule schedule = packet.digSchedule();
    return new DigScheduleSheet(
        writing.texts().say("dig-schedule.title"),
        words.lead(),
        packet.depthTargets().datum().isPresent(),
        words.line(),
        tables.depths(),
        tables.depthWorking(),
        words.measuring(),
        tables.choices(),
        words.choiceNotes(),
        sections.pairs().get(0).sections(),
        sections.pairs().subList(1, sections.pairs().size()),
        sections.scaleWords(),
        sections.bars(),
        words.asDug(),
        writing.texts().say("dig-schedule.order", order(schedule, writing)),
        tables.tools(),
        tables.soil(),
        tables.soilTotal(),
        tables.soilWorking(),
        words.carry(),
        words.left(),
        words.heapLead(),
        tables.tip(),
        tables.heaps(),
        words.basis());
  }

  private static Map<String, String> order(DigSchedule schedule, Writing writing) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put(
        "order",
        writing.formats().names(schedule.rows().stream().map(row -> row.hole().mark()).toList()));
    return values;
  }

  @Override
  public List<Drawing> drawings() {
    Stream<Section> more = moreSections.stream().flatMap(pair -> pair.sections().stream());
    return Stream.concat(
            Stream.concat(firstSections.stream(), more).map(Section::picture), Stream.of(bars))
        .toList();
  }
}
