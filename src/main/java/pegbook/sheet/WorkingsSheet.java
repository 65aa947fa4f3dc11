package pegbook.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pegbook.figures.Formula;
import pegbook.figures.MarkRuns;
import pegbook.figures.PlacedMark;
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
  /** From this many rows on, a number that is the same in all of them is printed once, above. */
  private static final int ROWS_TO_FIX = 4;

  /** The formulas of one subject. */
  public record Group(String number, String heading, List<Entry> entries) {}

  /**
   * One formula.
   *
   * @param number as other sheets name it
   * @param expression as printed
   * @param meanings of the letters
   * @param valid where it holds; empty: everywhere
   * @param fixed inputs that are the same in every row, printed once above the table
   * @param heads of the columns of the other inputs
   * @param resultHead of the last column
   * @param rows one for each set of numbers
   * @param lines the rows as they stand: one, or two beside each other where the table is long
   * @param twice true when two rows stand beside each other
   * @param beside true when the table is narrow and short enough to stand beside the formula
   * @param formulaWidth class of the width that is then the formula's
   * @param numbersWidth class of the width that is the table's
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
      List<Fixed> fixed,
      List<String> heads,
      String resultHead,
      List<Row> rows,
      List<List<Row>> lines,
      boolean twice,
      boolean beside,
      String formulaWidth,
      String numbersWidth,
      String type) {}

  /** An input with the one number that it has in every row, and its unit. */
  public record Fixed(String letter, String number, String unit) {}

  /** What it was worked for, the numbers put in but for the fixed ones, what it gives. */
  public record Row(String subject, List<String> numbers, String result) {}

  /** Words the packet's workings. */
  public static WorkingsSheet of(Packet packet, Writing writing) {
    List<Group> groups = new ArrayList<>();
    List<String> marks = packet.placement().marks().stream().map(PlacedMark::id).toList();
    for (NumberedWorkings.Group group : packet.workings().groups()) {
      List<Entry> entries =
          group.entries().stream().map(entry -> entry(entry, marks, writing)).toList();
      String heading = writing.texts().say("workings.group." + group.subject());
      groups.add(new Group(group.number(), heading, entries));
    }
    return new WorkingsSheet(writing.texts().say("workings.title"), List.copyOf(groups));
  }

  private static Entry entry(NumberedWorkings.Entry entry, List<String> marks, Writing writing) {
    Texts texts = writing.texts();
    Formula formula = entry.formula();
    List<Row> all = rows(entry, marks, texts);
    List<Integer> fixed = fixed(all);
    List<Row> rows = all.stream().map(row -> without(row, fixed)).toList();
    List<String> heads = others(formula.inputs(), fixed).stream().map(WorkingsSheet::head).toList();
    String resultHead = head(formula.result());
    WorkingLayout layout =
        WorkingLayout.of(
            Stream.concat(heads.stream(), Stream.of(resultHead)).toList(), rows, writing);
    return new Entry(
        entry.number(),
        texts.say("formula." + formula.id()),
        formula.expression(),
        meanings(formula, texts),
        formula.valid(),
        !formula.valid().isEmpty(),
        new Sources(texts).write(formula.source()),
        fixed.stream().map(at -> fixed(formula.inputs().get(at), all.get(0), at)).toList(),
        heads,
        resultHead,
        rows,
        lines(rows, layout.twice()),
        layout.twice(),
        layout.isBeside(),
        "share-" + (100 - layout.share()),
        "share-" + layout.share(),
        layout.type());
  }

  /** Places of the inputs that are the same in all of many rows. */
  private static List<Integer> fixed(List<Row> rows) {
    int inputs = rows.get(0).numbers().size();
    return IntStream.range(0, rows.size() < ROWS_TO_FIX ? 0 : inputs)
        .filter(at -> rows.stream().map(row -> row.numbers().get(at)).distinct().count() == 1)
        .boxed()
        .toList();
  }

  private static Fixed fixed(Symbol symbol, Row row, int at) {
    return new Fixed(symbol.letter(), row.numbers().get(at), symbol.unit().symbol());
  }

  private static Row without(Row row, List<Integer> fixed) {
    return new Row(row.subject(), others(row.numbers(), fixed), row.result());
  }

  private static <T> List<T> others(List<T> all, List<Integer> without) {
    return IntStream.range(0, all.size())
        .filter(at -> !without.contains(at))
        .mapToObj(all::get)
        .toList();
  }

  /** One row a line, or the second half of them beside the first; an empty one fills the last. */
  private static List<List<Row>> lines(List<Row> rows, boolean twice) {
    if (!twice) {
      return rows.stream().map(List::of).toList();
    }
    int half = (rows.size() + 1) / 2;
    Row none = new Row("", rows.get(0).numbers().stream().map(number -> "").toList(), "");
    return IntStream.range(0, half)
        .mapToObj(at -> List.of(rows.get(at), at + half < rows.size() ? rows.get(at + half) : none))
        .toList();
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
  private static List<Row> rows(NumberedWorkings.Entry entry, List<String> marks, Texts texts) {
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
                    subject(names, marks, texts),
                    List.copyOf(printed.subList(0, printed.size() - 1)),
                    printed.get(printed.size() - 1))));
    return List.copyOf(rows);
  }

  /** Marks in the order of the plan, so that many are a few runs; anything else as it comes. */
  private static List<String> inOrder(List<String> names, List<String> marks) {
    return marks.containsAll(names)
        ? names.stream().sorted(Comparator.comparingInt(marks::indexOf)).toList()
        : names;
  }

  private static String subject(List<String> names, List<String> marks, Texts texts) {
    List<String> given =
        names.stream()
            .filter(name -> !name.isEmpty())
            .flatMap(name -> Stream.of(name.split(", ", -1)))
            .distinct()
            .toList();
    List<String> named = inOrder(given, marks);
    return named.isEmpty() ? texts.say("workings.whole") : MarkRuns.brief(named);
  }
}
