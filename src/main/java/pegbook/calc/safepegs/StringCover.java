package pegbook.calc.safepegs;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Which strings cross over which marks, as lines are taken one by one. */
final class StringCover {
  /** Sine of the least angle at which two strings cross well: 30 degrees. */
  static final double LEAST_SINE = 0.5 - 1e-7;

  private final List<List<Integer>> over = new ArrayList<>();
  private final List<Strung> strings = new ArrayList<>();
  private final boolean[] crossed;

  /** The two strings that cross best over a mark. */
  record Pair(int one, int other, double sine) {}

  StringCover(int marks) {
    crossed = new boolean[marks];
    for (int mark = 0; mark < marks; mark++) {
      over.add(new ArrayList<>());
    }
  }

  List<Strung> strings() {
    return List.copyOf(strings);
  }

  void take(Strung string) {
    string.line().marks().forEach(mark -> over.get(mark).add(strings.size()));
    strings.add(string);
    string.line().marks().stream()
        .filter(mark -> best(mark).stream().anyMatch(pair -> pair.sine() >= LEAST_SINE))
        .forEach(mark -> crossed[mark] = true);
  }

  /** What a line gives to all its marks: a first string, or a second at a good angle. */
  double gain(MarkLine line) {
    return line.marks().stream().mapToDouble(mark -> gain(line, mark)).sum();
  }

  private double gain(MarkLine line, int mark) {
    if (over.get(mark).isEmpty() || isCrossed(mark)) {
      return isCrossed(mark) ? 0 : 1;
    }
    double sine =
        over.get(mark).stream()
            .mapToDouble(string -> strings.get(string).line().sineTo(line))
            .max()
            .orElse(0);
    return sine < LEAST_SINE ? 0 : 0.5 + 0.5 * sine;
  }

  boolean isCrossed(int mark) {
    return crossed[mark];
  }

  /** The best pair over a mark; none with fewer than two strings. */
  List<Pair> best(int mark) {
    List<Integer> here = over.get(mark);
    List<Pair> best = new ArrayList<>();
    for (int i = 0; i < here.size(); i++) {
      for (int j = i + 1; j < here.size(); j++) {
        MarkLine one = strings.get(here.get(i)).line();
        double sine = one.sineTo(strings.get(here.get(j)).line());
        if (best.isEmpty() || sine > best.get(0).sine() + 1e-9) {
          best.clear();
          best.add(new Pair(here.get(i), here.get(j), sine));
        }
      }
    }
    return best;
  }

  int uncrossed() {
    int still = 0;
    for (boolean mark : crossed) {
      still += mark ? 0 : 1;
    }
    return still;
  }

  /** The same with only the strings over three marks or more. */
  StringCover overRows() {
    StringCover rows = new StringCover(over.size());
    strings.stream().filter(string -> string.line().marks().size() >= 3).forEach(rows::take);
    return rows;
  }

  /** The same with only the strings that cross well over some mark. */
  StringCover pruned() {
    Set<Integer> used = new LinkedHashSet<>();
    for (int mark = 0; mark < over.size(); mark++) {
      best(mark).stream()
          .filter(pair -> pair.sine() >= LEAST_SINE)
          .forEach(pair -> used.addAll(List.of(pair.one(), pair.other())));
    }
    StringCover pruned = new StringCover(over.size());
    for (int string = 0; string < strings.size(); string++) {
      if (used.contains(string)) {
        pruned.take(strings.get(string));
      }
    }
    return pruned;
  }
}
