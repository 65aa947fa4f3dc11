package pegbook.testing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.special.Erf;

/**
 * Reads a formula as a person reads it from the page and works it with numbers: only the printed
 * characters count, nothing of the code behind them. Angles are in degrees. Words that the packet
 * puts behind a formula ("set up to the next s", "brought to 0–360") are read as well; words that
 * nobody taught this reader are an error. Φ is the share of the normal distribution below a value,
 * by Hipparchus.
 */
public final class PrintedFormula {
  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

  /** A value this near to a step, as a share of it, lies on it. */
  private static final double ON_STEP = 1e-6;

  private final String text;
  private final Map<String, Double> values;
  private final List<String> names;
  private final double foot;
  private double degree = Math.PI / 180;
  private int at;

  private PrintedFormula(String text, Map<String, Double> values, double foot) {
    this.text = text;
    this.values = values;
    this.names =
        values.keySet().stream()
            .sorted(Comparator.comparingInt(String::length).reversed())
            .toList();
    this.foot = foot;
  }

  /**
   * Works a formula.
   *
   * @param expression as printed: "V = π · d² / 4 · h"
   * @param values of its letters
   * @param foot how many of the result's unit make a foot, for "whole feet"
   */
  public static double work(String expression, Map<String, Double> values, double foot) {
    Map<String, Double> known = new HashMap<>(values);
    String[] branches = expression.split("; where ", -1);
    String main = branches[0];
    if (branches.length > 1) {
      String[] other = branches[1].split(": ", 2);
      String[] sides = other[0].split(" > ", -1);
      main = sub(sides[0], known, foot) > sub(sides[1], known, foot) * (1 + 1e-9) ? other[1] : main;
    }
    List<String> parts = parts(main);
    for (int i = parts.size() - 1; i > 0; i--) {
      String part = parts.get(i);
      int equals = part.indexOf(" = ");
      if (equals > 0) {
        known.put(part.substring(0, equals), sub(part.substring(equals + 3), known, foot));
      }
    }
    String first = parts.get(0);
    double result = sub(first.substring(first.indexOf(" = ") + 3), known, foot);
    for (String part : parts.subList(1, parts.size())) {
      if (!part.contains(" = ")) {
        result = new PrintedFormula(part, known, foot).words(result);
      }
    }
    return result;
  }

  /**
   * The left side of an equation that is solved for a letter, with that letter's value put in; its
   * angles are in radians.
   */
  public static double left(String equation, Map<String, Double> values) {
    PrintedFormula reader =
        new PrintedFormula(equation.substring(0, equation.indexOf(" = ")), values, 1);
    reader.degree = 1;
    double value = reader.sum();
    if (reader.at < reader.text.length()) {
      throw reader.unread();
    }
    return value;
  }

  private static double sub(String text, Map<String, Double> values, double foot) {
    PrintedFormula reader = new PrintedFormula(text, values, foot);
    double value = reader.sum();
    if (reader.at < text.length()) {
      throw reader.unread();
    }
    return value;
  }

  /** What commas outside brackets part. */
  private static List<String> parts(String text) {
    List<String> parts = new ArrayList<>();
    int depth = 0;
    int from = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      depth += c == '(' ? 1 : c == ')' ? -1 : 0;
      if (depth == 0 && text.startsWith(", ", i)) {
        parts.add(text.substring(from, i));
        from = i + 2;
      }
    }
    parts.add(text.substring(from));
    return parts;
  }

  private IllegalArgumentException unread() {
    return new IllegalArgumentException("cannot read " + text.substring(at) + " of " + text);
  }

  private double words(double value) {
    double changed = value;
    if (skip("set up to the next ") || skip("set up to ")) {
      changed = step(value, step(), 1);
    } else if (skip("set down to ")) {
      changed = step(value, step(), -1);
    } else if (skip("set to the nearest ")) {
      changed = step(value, step(), 0);
    } else if (skip("one at least")) {
      changed = Math.max(1, value);
    } else if (skip("at least ") || skip("not less than ")) {
      changed = Math.max(value, step());
    } else if (skip("but not more than ")) {
      changed = Math.min(value, sum());
    } else if (skip("brought to 0–")) {
      double round = number();
      changed = value - round * Math.floor(value / round);
    }
    if (at < text.length()) {
      throw unread();
    }
    return changed;
  }

  private double step() {
    if (skip("a whole number")) {
      return 1;
    }
    if (skip("whole feet")) {
      return foot;
    }
    double step = skip("½") ? 0.5 : sum();
    // The unit that follows is the result's own.
    List.of(" h", " mm", " m", " in", " ft").forEach(this::skip);
    return step;
  }

  private static double step(double value, double step, int direction) {
    double steps = value / step;
    if (direction == 0 || Math.abs(steps - Math.rint(steps)) < ON_STEP) {
      return step * Math.floor(steps + 0.5);
    }
    return step * (direction > 0 ? Math.ceil(steps) : Math.floor(steps));
  }

  private boolean skip(String word) {
    if (text.startsWith(word, at)) {
      at += word.length();
      return true;
    }
    return false;
  }

  private double sum() {
    double value = skip("−") ? -product() : product();
    while (true) {
      if (skip(" + ")) {
        value += product();
      } else if (skip(" − ")) {
        value -= product();
      } else if (skip(" set to the nearest ")) {
        value = step(value, product(), 0);
      } else {
        return value;
      }
    }
  }

  private double product() {
    double value = power();
    while (true) {
      if (skip(" · ")) {
        value *= power();
      } else if (skip(" / ") || skip("/")) {
        value /= power();
      } else {
        return value;
      }
    }
  }

  private double power() {
    double base = base();
    skip("°");
    int raised = at < text.length() ? RAISED.indexOf(text.charAt(at)) : -1;
    if (raised >= 0) {
      return Math.pow(base, raised());
    }
    if (skip("^")) {
      return Math.pow(base, base());
    }
    return base;
  }

  private int raised() {
    int value = 0;
    while (at < text.length() && RAISED.indexOf(text.charAt(at)) >= 0) {
      value = 10 * value + RAISED.indexOf(text.charAt(at++));
    }
    return value;
  }

  private double base() {
    if (skip("(")) {
      double value = sum();
      return closed(value, ")");
    }
    if (skip("|")) {
      return closed(Math.abs(sum()), "|");
    }
    if (skip("⌊")) {
      return closed(whole(sum(), -1), "⌋");
    }
    if (skip("⌈")) {
      return closed(whole(sum(), 1), "⌉");
    }
    if (skip("√")) {
      return Math.sqrt(base());
    }
    if (skip("∛")) {
      return Math.cbrt(base());
    }
    if (skip("π")) {
      return Math.PI;
    }
    for (String list : List.of("min", "max", "atan2")) {
      if (skip(list + "(")) {
        return list(list);
      }
    }
    for (String name :
        List.of("arcsin", "arccos", "sinh", "cosh", "sin", "cos", "tan", "lg", "Φ")) {
      if (skip(name)) {
        int raised = at < text.length() && RAISED.indexOf(text.charAt(at)) >= 0 ? raised() : 1;
        skip(" ");
        return Math.pow(function(name, argument()), raised);
      }
    }
    for (String name : names) {
      if (skip(name)) {
        return values.get(name);
      }
    }
    return number();
  }

  private double closed(double value, String bracket) {
    if (!skip(bracket)) {
      throw unread();
    }
    return value;
  }

  private static double whole(double value, int direction) {
    return step(value, 1, direction);
  }

  private double list(String name) {
    List<Double> all = new ArrayList<>();
    do {
      all.add(sum());
    } while (skip(", "));
    closed(0, ")");
    return switch (name) {
      case "min" -> all.stream().min(Double::compare).orElseThrow();
      case "max" -> all.stream().max(Double::compare).orElseThrow();
      default -> Math.toDegrees(Math.atan2(all.get(0), all.get(1)));
    };
  }

  /** What a function without brackets takes: a letter, with a number before it or not. */
  private double argument() {
    if (text.startsWith("(", at)) {
      return base();
    }
    double factor = Character.isDigit(text.charAt(at)) ? number() : 1;
    for (String name : names) {
      if (skip(name)) {
        return factor * values.get(name);
      }
    }
    return factor;
  }

  private double function(String name, double value) {
    return switch (name) {
      case "sin" -> Math.sin(degree * value);
      case "cos" -> Math.cos(degree * value);
      case "tan" -> Math.tan(degree * value);
      case "arcsin" -> Math.toDegrees(Math.asin(value));
      case "arccos" -> Math.toDegrees(Math.acos(value));
      case "sinh" -> Math.sinh(value);
      case "cosh" -> Math.cosh(value);
      case "Φ" -> 0.5 * Erf.erfc(-value / Math.sqrt(2));
      default -> Math.log10(value);
    };
  }

  /** A number, its thousands parted by a space; one right before a letter multiplies it. */
  private double number() {
    int from = at;
    while (at < text.length()
        && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.' || isThousand(at))) {
      at++;
    }
    if (from == at) {
      throw unread();
    }
    double value = Double.parseDouble(text.substring(from, at).replace(" ", ""));
    for (String name : names) {
      if (at < text.length() && text.startsWith(name, at)) {
        return value * power();
      }
    }
    return value;
  }

  private boolean isThousand(int place) {
    return text.charAt(place) == ' '
        && place + 3 < text.length()
        && text.substring(place + 1, place + 4).chars().allMatch(Character::isDigit);
  }
}
