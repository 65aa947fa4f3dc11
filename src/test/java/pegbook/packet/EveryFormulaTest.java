package pegbook.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;
import pegbook.testing.PrintedFormula;

/**
 * Every formula that a calculator can print, in both systems of units, whether a job asks for it or
 * not: it speaks the units of its system, and gives what its printed characters give.
 */
class EveryFormulaTest {
  /** Some constants are printed with four digits. */
  private static final double DIGITS = 5e-5;

  /** Solved or said in words; the sheets' tests put their results into the equations. */
  private static final Set<String> SOLVED =
      Set.of(
          "frost-depth.coefficient",
          "mark-accuracy.radius",
          "own-mix.aim",
          "pier-stiffness.column-root");

  /** There the wire's table, or the caller, takes the variant that it names. */
  private static final Set<String> BY_OTHER = Set.of("ConductorFormulas", "SafetyNotesFormulas");

  /** Holds for shares below one; above, the post carries nothing and has no height. */
  private static final String OF_SHARES = "floor-frame.post-height";

  /** Tries from small shares to thousands; where a formula does not hold, it gives no number. */
  private static final List<List<Double>> RANGES =
      List.of(
          List.of(0.1, 0.9),
          List.of(1.0, 9.0),
          List.of(10.0, 80.0),
          List.of(80.0, 110.0),
          List.of(0.5, 3000.0));

  static List<Class<?>> classes() {
    try {
      Path root =
          Path.of(Formula.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      try (Stream<Path> files = Files.walk(root.resolve("pegbook/calc"))) {
        List<Class<?>> found = new ArrayList<>();
        for (Path file : files.sorted().toList()) {
          String name = root.relativize(file).toString().replace('/', '.').replace('\\', '.');
          if (name.endsWith("Formulas.class")) {
            found.add(Class.forName(name.substring(0, name.length() - ".class".length())));
          }
        }
        return found;
      }
    } catch (IOException | URISyntaxException | ClassNotFoundException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void noneIsForgotten() {
    assertThat(classes()).hasSizeGreaterThan(35);
    assertThat(classes().stream().mapToLong(kind -> formulas(kind, UnitSystem.METRIC).size()).sum())
        .isGreaterThan(250);
  }

  @ParameterizedTest
  @MethodSource("classes")
  void printedCharactersGiveWhatIsUsed(Class<?> kind) {
    for (UnitSystem system : UnitSystem.values()) {
      for (Formula formula : formulas(kind, system)) {
        if (!BY_OTHER.contains(kind.getSimpleName())) {
          assertThat(Stream.concat(formula.inputs().stream(), Stream.of(formula.result())))
              .as(formula.id())
              .extracting(Symbol::unit)
              .doesNotContainAnyElementsOf(UnitsOfSystems.foreignTo(system));
        }
        if (!SOLVED.contains(formula.id())) {
          compare(formula);
        }
      }
    }
  }

  private static void compare(Formula formula) {
    double foot = Unit.FOOT.toSi(1) / formula.result().unit().toSi(1);
    int compared = 0;
    for (List<Double> range : formula.id().equals(OF_SHARES) ? RANGES.subList(0, 1) : RANGES) {
      for (int turn = 0; turn < 6; turn++) {
        double[] values = new double[formula.inputs().size()];
        Map<String, Double> letters = new HashMap<>();
        for (int i = 0; i < values.length; i++) {
          // Spread over the range without a pattern that two letters would share.
          double share = (0.137 + 0.618034 * (i + 1) * (turn + 1) + 0.271 * turn) % 1;
          boolean angle = formula.inputs().get(i).unit() == Unit.DEGREE;
          values[i] = angle ? 90 * share : range.get(0) + share * (range.get(1) - range.get(0));
          letters.put(formula.inputs().get(i).letter(), values[i]);
        }
        double used = formula.function().applyAsDouble(values);
        double printed = PrintedFormula.work(formula.expression(), letters, foot);
        if (Double.isFinite(used) && Double.isFinite(printed)) {
          compared++;
          assertThat(Math.abs(used - printed))
              .as("%s: %s with %s", formula.id(), formula.expression(), letters)
              .isLessThanOrEqualTo(DIGITS * Math.abs(printed) + 1e-9);
        }
      }
    }
    assertThat(compared).as("%s with numbers that it holds for", formula.id()).isPositive();
  }

  /**
   * What each method of a class gives that takes nothing, or only what tells variants apart, and
   * what its fields hold.
   */
  private static List<Formula> formulas(Class<?> kind, UnitSystem system) {
    List<Formula> formulas = new ArrayList<>(fields(kind));
    for (Method method : kind.getDeclaredMethods()) {
      boolean ours = method.getReturnType() == Formula.class && !method.isSynthetic();
      if (!ours || Modifier.isPrivate(method.getModifiers())) {
        continue;
      }
      for (boolean choice : new boolean[] {true, false}) {
        Object[] with =
            Arrays.stream(method.getParameterTypes())
                .map(type -> argument(type, system, choice))
                .toArray();
        if (Arrays.asList(with).contains(NOTHING)) {
          continue;
        }
        Object on = Modifier.isStatic(method.getModifiers()) ? null : in(kind, system);
        formulas.add((Formula) open(method, on, with));
      }
    }
    return formulas;
  }

  private static List<Formula> fields(Class<?> kind) {
    List<Formula> formulas = new ArrayList<>();
    for (Field field : kind.getDeclaredFields()) {
      if (field.getType() == Formula.class && Modifier.isStatic(field.getModifiers())) {
        try {
          field.setAccessible(true);
          formulas.add((Formula) field.get(null));
        } catch (IllegalAccessException e) {
          throw new LinkageError(e.getMessage(), e);
        }
      }
    }
    return formulas;
  }

  private static final Object NOTHING = new Object();

  private static Object argument(Class<?> type, UnitSystem system, boolean choice) {
    if (type == boolean.class) {
      return choice;
    } else if (type == UnitSystem.class) {
      return system;
    } else if (type == Citation.class) {
      return Citation.COMMON_PRACTICE;
    } else if (type == String.class) {
      return "some.formula";
    }
    return NOTHING;
  }

  private static Object in(Class<?> kind, UnitSystem system) {
    try {
      for (Constructor<?> constructor : kind.getDeclaredConstructors()) {
        if (constructor.getParameterCount() == 1
            && constructor.getParameterTypes()[0] == UnitSystem.class) {
          constructor.setAccessible(true);
          return constructor.newInstance(system);
        }
      }
      return open(kind.getDeclaredMethod("in", UnitSystem.class), null, system);
    } catch (ReflectiveOperationException e) {
      throw new LinkageError(kind + " is made in another way", e);
    }
  }

  private static Object open(Method method, Object on, Object... with) {
    try {
      method.setAccessible(true);
      return method.invoke(on, with);
    } catch (ReflectiveOperationException e) {
      throw new LinkageError(e.getMessage(), e);
    }
  }
}
