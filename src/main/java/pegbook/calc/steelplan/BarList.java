package pegbook.calc.steelplan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.calc.steelplan.SteelPlan.BarLine;
import pegbook.calc.steelplan.SteelPlan.SizeTotal;
import pegbook.figures.AlikeHoles;
import pegbook.figures.BarPiece;
import pegbook.figures.Working;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.UnitSystem;
import pegbook.published.Bars;

/** Gathers pieces cut and bent alike under one mark, and adds them up by size. */
final class BarList {
  private final SteelPlanFormulas formulas;
  private final Map<Cut, BarLine> lines = new LinkedHashMap<>();
  private final Map<String, Working> massPerLength = new LinkedHashMap<>();
  private final List<Working> pieceMasses = new ArrayList<>();

  /** What makes pieces alike; the cut in whole micrometres. */
  private record Cut(String size, BarPiece.Shape shape, long micrometres) {}

  BarList(UnitSystem units) {
    this.formulas = new SteelPlanFormulas(units);
  }

  /** Puts the pieces of footings that are alike on the list; gives those of one footing. */
  BarPiece piece(AlikeHoles alike, String size, BarPiece.Shape shape, int count, Length cut) {
    Cut key = new Cut(size, shape, Math.round(cut.metres() * 1e6));
    BarLine before = lines.containsKey(key) ? lines.get(key) : begin(size, shape, cut);
    List<String> marks = new ArrayList<>(before.marks());
    marks.addAll(alike.marks());
    BarLine line =
        new BarLine(
            before.barMark(),
            size,
            shape,
            before.count() + count * alike.count(),
            cut,
            before.each(),
            marks);
    lines.put(key, line);
    return new BarPiece(alike.first().mark(), line.barMark(), size, shape, count, cut, line.each());
  }

  private BarLine begin(String size, BarPiece.Shape shape, Length cut) {
    Working perLength =
        massPerLength.computeIfAbsent(
            size, name -> Working.of(formulas.massPerLength(), name, Bars.get(name).diameter()));
    String barMark = barMark(lines.size());
    Working each = Working.of(formulas.pieceMass(), barMark, perLength::si, cut);
    pieceMasses.add(each);
    return new BarLine(barMark, size, shape, 0, cut, each.asMass(), List.of());
  }

  /** A to Z, then AA, AB and so on. */
  static String barMark(int index) {
    String last = String.valueOf((char) ('A' + index % 26));
    return index < 26 ? last : barMark(index / 26 - 1) + last;
  }

  List<BarLine> lines() {
    return List.copyOf(lines.values());
  }

  List<Working> workings() {
    List<Working> workings = new ArrayList<>(massPerLength.values());
    workings.addAll(pieceMasses);
    return workings;
  }

  /** How much of each size, in the order in which the sizes first come. */
  List<SizeTotal> sizes() {
    return massPerLength.keySet().stream().map(this::size).toList();
  }

  private SizeTotal size(String name) {
    List<BarLine> of = lines.values().stream().filter(line -> line.size().equals(name)).toList();
    Length length =
        of.stream().map(line -> line.cut().times(line.count())).reduce(Length.ZERO, Length::plus);
    Mass mass = of.stream().map(BarLine::mass).reduce(Mass.ZERO, Mass::plus);
    return new SizeTotal(name, length, mass);
  }
}
