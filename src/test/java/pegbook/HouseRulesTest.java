package pegbook;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.conditions.ArchConditions.accessTargetWhere;
import static com.tngtech.archunit.lang.conditions.ArchConditions.never;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;
import static pegbook.ArchitectureTest.MAIN;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import net.jqwik.api.Property;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import pegbook.testing.Chance;

/** Holds the rules that keep the output the same everywhere, and the house's shapes and names. */
class HouseRulesTest {
  /** Not sqrt, rounding, min and max: those are exact on every machine. */
  private static final Set<String> INEXACT =
      Set.of(
          "sin",
          "cos",
          "tan",
          "asin",
          "acos",
          "atan",
          "atan2",
          "sinh",
          "cosh",
          "tanh",
          "exp",
          "expm1",
          "log",
          "log10",
          "log1p",
          "pow",
          "cbrt",
          "hypot",
          "toRadians",
          "toDegrees");

  private static final List<String> VAGUE =
      List.of("Util", "Utils", "Manager", "Helper", "Impl", "Base");

  @Test
  void inexactFunctionsComeFromStrictMath() {
    classes()
        .should(neverAccess("an inexact function of Math", Math.class, INEXACT::contains))
        .because("Math may differ between machines, and the output must not")
        .check(MAIN);
  }

  @Test
  void nothingButTheRootAsksTheTime() {
    noClasses()
        .that()
        .resideOutsideOfPackage("pegbook")
        .should()
        .callMethodWhere(
            describe(
                "ask the clock",
                call ->
                    call.getName().equals("now")
                        || call.getName().equals("currentTimeMillis")
                        || call.getName().equals("nanoTime")))
        .orShould()
        .dependOnClassesThat()
        .belongToAnyOf(java.time.Clock.class, java.util.Date.class)
        .check(MAIN);
  }

  @Test
  void nothingIsRandom() {
    noClasses()
        .should()
        .dependOnClassesThat(
            describe(
                "are random",
                type ->
                    type.isAssignableTo(java.util.random.RandomGenerator.class)
                        || type.getName().equals("java.util.UUID")))
        .check(MAIN);
    classes()
        .should(neverAccess("Math.random", Math.class, "random"::equals))
        .andShould(neverAccess("StrictMath.random", StrictMath.class, "random"::equals))
        .check(MAIN);
  }

  /** A property that starts anywhere makes a build that fails one day and not the next. */
  @Test
  void propertiesStartWhereTheyStarted() {
    JavaClasses tests =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.ONLY_INCLUDE_TESTS)
            .importPackages("pegbook");
    methods()
        .that()
        .areAnnotatedWith(Property.class)
        .should(
            ArchCondition.<JavaMethod>from(
                describe(
                    "name their seed",
                    method ->
                        method.getAnnotationOfType(Property.class).seed().equals(Chance.SEED))))
        .check(tests);
  }

  @Test
  void formatsNameTheirLocale() {
    classes()
        .should(
            neverAccess(
                "a format that takes the machine's locale",
                access ->
                    access.getTargetOwner().isEquivalentTo(String.class)
                        && (access.getName().equals("formatted")
                            || (access.getName().equals("format")
                                && !takesFirst(access, "java.util.Locale")))))
        .andShould(neverAccess("Locale.getDefault", java.util.Locale.class, "getDefault"::equals))
        .check(MAIN);
  }

  private static boolean takesFirst(JavaAccess<?> access, String type) {
    return access.getTarget().getFullName().contains("(" + type);
  }

  @Test
  void nothingIsKeptInHashOrder() {
    Set<String> hashed = Set.of("java.util.HashMap", "java.util.HashSet");
    Set<String> collectors = Set.of("toSet", "toUnmodifiableSet", "toUnmodifiableMap");
    classes()
        .should(
            neverAccess(
                "a collection kept in hash order",
                access ->
                    (hashed.contains(access.getTargetOwner().getName())
                            && access.getName().equals("<init>"))
                        || (access.getTargetOwner().getName().equals("java.util.stream.Collectors")
                            && collectors.contains(access.getName()))
                        || (access.getName().equals("copyOf")
                            && Set.of("java.util.Map", "java.util.Set")
                                .contains(access.getTargetOwner().getName()))))
        .because("its order changes between runs; use a List, LinkedHashMap or TreeMap")
        .check(MAIN);
  }

  @Test
  void calculatorsTouchNothingOutside() {
    noClasses()
        .that()
        .resideInAnyPackage("pegbook.calc..", "pegbook.geometry..", "pegbook.figures..")
        .should()
        .dependOnClassesThat(
            resideInAnyPackage("java.io..", "java.nio..", "java.net..", "java.util.logging..")
                .or(resideInAnyPackage("java.text..", "org.slf4j.."))
                .or(describe("are Locale", type -> type.isEquivalentTo(java.util.Locale.class)))
                .or(describe("are System", type -> type.isEquivalentTo(System.class))))
        .allowEmptyShould(true)
        .check(MAIN);
  }

  @Test
  void calculatorsHaveOneShape() {
    classes()
        .that()
        .resideInAPackage("pegbook.calc..")
        .and()
        .haveSimpleNameEndingWith("Calculator")
        .should()
        .haveModifier(JavaModifier.FINAL)
        .andShould()
        .haveOnlyPrivateConstructors()
        .andShould(haveOnlyAStaticCalculate())
        .allowEmptyShould(true)
        .check(MAIN);
  }

  private static ArchCondition<JavaClass> haveOnlyAStaticCalculate() {
    return ArchCondition.from(
        describe(
            "have one public method, a static calculate of at most four arguments",
            type -> {
              var open =
                  type.getMethods().stream()
                      .filter(method -> method.getModifiers().contains(JavaModifier.PUBLIC))
                      .toList();
              return open.size() == 1
                  && open.get(0).getName().equals("calculate")
                  && open.get(0).getModifiers().contains(JavaModifier.STATIC)
                  && open.get(0).getParameters().size() <= 4;
            }));
  }

  @Test
  void onlyTheRootSpeaksToTheTerminal() {
    noClasses()
        .that()
        .resideOutsideOfPackage("pegbook")
        .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS)
        .check(MAIN);
  }

  @Test
  void namesSayWhatTheThingIs() {
    List<String> vague =
        MAIN.stream()
            .map(JavaClass::getName)
            .filter(name -> VAGUE.stream().anyMatch(name::endsWith))
            .toList();
    assertThat(vague).isEmpty();
  }

  @Test
  void everyPackageIsNullMarked() {
    JavaPackage root = MAIN.getPackage("pegbook");
    List<String> unmarked =
        Stream.concat(Stream.of(root), root.getSubpackagesInTree().stream())
            .filter(some -> !some.getClasses().isEmpty())
            .filter(some -> !some.isAnnotatedWith(NullMarked.class))
            .map(JavaPackage::getName)
            .toList();
    assertThat(unmarked).isEmpty();
  }

  private static ArchCondition<JavaClass> neverAccess(
      String what, Class<?> owner, Predicate<String> name) {
    return neverAccess(
        what,
        access -> access.getTargetOwner().isEquivalentTo(owner) && name.test(access.getName()));
  }

  private static ArchCondition<JavaClass> neverAccess(String what, Predicate<JavaAccess<?>> which) {
    DescribedPredicate<JavaAccess<?>> predicate = describe(what, which);
    return never(accessTargetWhere(predicate)).as("never use %s", what);
  }
}
