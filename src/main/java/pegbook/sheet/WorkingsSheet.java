package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import pegbook.figures.Formula;
import pegbook.figures.MarkRuns;
import pegbook.figures.Symbol;
import pegbook.figures.Working;
import pegbook.packet.NumberedWorkings;
import pegbook.packet.Packet;

/**
 * Every working of the packet: each formula once, and under it the numbers put in.
 *
 * @param title heading
 * @param groups by subject
 */
public record WorkingsSheet(String title, List<Group> groups) implements Sheet {
  /** Share of the page's width that a table beside its formula has; see the template. */
  private static final double SHARE_BESIDE = 0.58;

  private static final double NORMAL_SIZE = 10;

  /** Room left and right of a number in its cell, and a little air. */
  private static final double ROOM_MM = 4;

  private static final int ROWS_BESIDE = 12;

  /** The formulas of one subject. */
  public record Group(String number, String heading, List<Entry> entries) {}

  /**
   * One formula.
   *
   * @param number as other sheets name it
   * @param expression as printed
   * @param meanings of the letters
   * @param valid where it holds; empty: everywhere
   * @param heads of the columns of inputs
   * @param resultHead of the last column
   * @param beside true when the table is narrow and short enough to stand beside the formula
   * @param type class of the table's type: small where the numbers are long
   */
  public record Entry(
      String number,
      String name,
      String expression,
      String meanings,
      String valid,
      boolean bounded,
      String source,
      List<String> heads,
      String resultHead,
      List<Row> rows,
      boolean beside,
      String type) {}

  /** What it was worked for, the numbers put in, what it gives. */
  public record Row(String subject, List<String> numbers, String result) {}

  /** Words the packet's workings. */
  public static WorkingsSheet of(Packet packet, Writing writing) {
    List<Group> groups = new ArrayList<>();
    for (NumberedWorkings.Group group : packet.workings().groups()) {
      List<Entry> entries = group.entries().stream().map(entry -> entry(entry, writing)).toList();
      String heading = writing.texts().say("workings.group." + group.subject());
      groups.add(new Group(group.number(), heading, entries));
    }
    return new WorkingsSheet(writing.texts().say("workings.title"), List.copyOf(groups));
  }

  private static Entry entry(NumberedWorkings.Entry entry, Writing writing) {
    Texts texts = writing.texts();
    Formula formula = entry.formula();
    List<Row> rows = rows(entry, texts);
    return new Entry(
        entry.number(),
        texts.say("formula." + formula.id()),
        formula.expression(),
        meanings(formula, texts),
        formula.valid(),
        !formula.valid().isEmpty(),
        new Sources(texts).write(formula.source()),
        formula.inputs().stream().map(WorkingsSheet::head).toList(),
        head(formula.result()),
        rows,
        rows.size() <= ROWS_BESIDE && fits(rows, SHARE_BESIDE, NORMAL_SIZE, writing),
        fits(rows, 1, NORMAL_SIZE, writing) ? "" : "small");
  }

  /** True when every number fits its column; columns are as wide as one another. */
  private static boolean fits(List<Row> rows, double share, double size, Writing writing) {
    double columnMm =
        (writing.page().widthMm() * share - ROOM_MM) / (rows.get(0).numbers().size() + 2);
    return rows.stream()
        .flatMap(row -> Stream.concat(row.numbers().stream(), Stream.of(row.result())))
        .allMatch(number -> writing.lettering().widthMm(number, size, true) + ROOM_MM <= columnMm);
  }

  private static String meanings(Formula formula, Texts texts) {
    List<Symbol> symbols = new ArrayList<>();
    symbols.add(formula.result());
    symbols.addAll(formula.inputs());
    List<String> meanings =
        symbols.stream()
            .map(symbol -> symbol.letter() + " = " + texts.say("symbol." + symbol.id()))
            .toList();
    return String.join("; ", meanings);
  }

  private static String head(Symbol symbol) {
    String unit = symbol.unit().symbol();
    return unit.isEmpty() ? symbol.letter() : symbol.letter() + " (" + unit + ")";
  }

  /** One row for all that have the same numbers. */
  private static List<Row> rows(NumberedWorkings.Entry entry, Texts texts) {
    WorkedNumbers numbers = WorkedNumbers.of(entry.formula(), entry.workings());
    Map<List<String>, List<String>> subjects = new LinkedHashMap<>();
    for (Working working : entry.workings()) {
      List<String> printed = new ArrayList<>(numbers.inputs(working));
      printed.add(numbers.result(working));
      subjects.computeIfAbsent(printed, key -> new ArrayList<>()).add(working.subject());
    }
    List<Row> rows = new ArrayList<>();
    subjects.forEach(
        (printed, names) ->
            rows.add(
                new Row(
                    subject(names, texts),
                    List.copyOf(printed.subList(0, printed.size() - 1)),
                    printed.get(printed.size() - 1))));
    return List.copyOf(rows);
  }

  private static String subject(List<String> names, Texts texts) {
    List<String> named = names.stream().filter(name -> !name.isEmpty()).distinct().toList();
    return named.isEmpty() ? texts.say("workings.whole") : MarkRuns.brief(named);
  }
}
