package pegbook;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Holds the import table of DEVELOPERS.md: which package may know which other package, and which
 * library. A line of the table that names a package not written yet holds for nothing and passes.
 */
class ArchitectureTest {
  static final JavaClasses MAIN =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("pegbook");

  /**
   * One line of the table.
   *
   * @param name the package under {@code pegbook}, or "" for the root itself
   * @param allowed the packages under {@code pegbook} it may import, beside itself
   * @param libraries the foreign packages it may import, beside the language's own
   */
  record Line(String name, List<String> allowed, List<String> libraries) {
    boolean owns(JavaClass type) {
      return isIn(type, name.isEmpty() ? "pegbook" : "pegbook." + name, !name.isEmpty());
    }

    boolean allows(JavaClass type) {
      return owns(type) || allowed.stream().anyMatch(other -> isIn(type, "pegbook." + other, true));
    }

    boolean allowsLibrary(JavaClass type) {
      return Stream.concat(LANGUAGE.stream(), libraries.stream())
          .anyMatch(library -> isIn(type, library, true));
    }

    @Override
    public String toString() {
      return name.isEmpty() ? "(root)" : name;
    }
  }

  private static final List<String> LANGUAGE =
      List.of("java.lang", "java.util", "java.math", "java.time", "java.text", "org.jspecify");
  private static final List<String> FILES = List.of("java.io", "java.nio");

  private static final List<Line> TABLE =
      List.of(
          new Line("measure", List.of(), List.of()),
          new Line(
              "geometry", List.of("measure"), List.of("org.locationtech.jts", "org.hipparchus")),
          new Line("cutting", List.of(), List.of("org.ojalgo")),
          new Line("published", List.of("measure"), FILES),
          new Line("job", List.of("measure", "geometry"), List.of()),
          new Line(
              "jobfile",
              List.of("job", "measure", "geometry", "published"),
              with(FILES, "java.security", "com.fasterxml.jackson")),
          // A hole carries the form and the steel its job asks for.
          new Line("figures", List.of("measure", "geometry", "published", "job"), List.of()),
          new Line(
              "calc",
              List.of("job", "figures", "geometry", "cutting", "measure", "published"),
              List.of()),
          new Line(
              "packet",
              List.of(
                  "measure",
                  "geometry",
                  "cutting",
                  "published",
                  "job",
                  "jobfile",
                  "figures",
                  "calc"),
              List.of()),
          new Line("lettering", List.of(), with(FILES, "org.apache.fontbox", "org.apache.pdfbox")),
          new Line("sheet", with(uptoPacket(), "lettering"), FILES),
          new Line(
              "render",
              List.of("sheet", "lettering"),
              with(
                  FILES,
                  "java.awt",
                  "java.security",
                  "javax.xml",
                  "org.w3c.dom",
                  "org.xml.sax",
                  "org.apache.commons.logging",
                  "org.apache.fontbox",
                  "org.apache.pdfbox",
                  "org.apache.xmpbox",
                  "com.openhtmltopdf",
                  "org.thymeleaf")),
          new Line(
              "export",
              with(uptoPacket(), "lettering", "sheet"),
              with(FILES, "com.fasterxml.jackson")),
          new Line(
              "",
              with(uptoPacket(), "lettering", "sheet", "render", "export"),
              with(FILES, "java.security", "picocli")));

  private static List<String> uptoPacket() {
    return List.of(
        "measure",
        "geometry",
        "cutting",
        "published",
        "job",
        "jobfile",
        "figures",
        "calc",
        "packet");
  }

  private static List<String> with(List<String> some, String... more) {
    return Stream.concat(some.stream(), Stream.of(more)).toList();
  }

  static List<Line> table() {
    return TABLE;
  }

  private static boolean isIn(JavaClass type, String packageName, boolean orBelow) {
    String found = type.getBaseComponentType().getPackageName();
    return found.equals(packageName) || (orBelow && found.startsWith(packageName + "."));
  }

  private static boolean isOurs(JavaClass type) {
    return isIn(type, "pegbook", true);
  }

  @ParameterizedTest
  @MethodSource("table")
  void importsOnlyWhatItsLineAllows(Line line) {
    noClasses()
        .that(describe("are in " + line, line::owns))
        .should()
        .dependOnClassesThat(
            describe("are in pegbook outside " + line.allowed(), t -> isOurs(t) && !line.allows(t)))
        .allowEmptyShould(true)
        .check(MAIN);
  }

  @ParameterizedTest
  @MethodSource("table")
  void usesOnlyTheLibrariesOfItsLine(Line line) {
    noClasses()
        .that(describe("are in " + line, line::owns))
        .should()
        .dependOnClassesThat(foreignTo(line))
        .allowEmptyShould(true)
        .check(MAIN);
  }

  private static DescribedPredicate<JavaClass> foreignTo(Line line) {
    return describe(
        "are a library not in " + line.libraries(),
        type ->
            !isOurs(type)
                && !type.getBaseComponentType().isPrimitive()
                && !line.allowsLibrary(type));
  }

  @Test
  void everyClassHasALineInTheTable() {
    assertThat(MAIN).isNotEmpty();
    classes()
        .should()
        .resideInAnyPackage(
            TABLE.stream()
                .map(line -> line.name().isEmpty() ? "pegbook" : "pegbook." + line.name() + "..")
                .toArray(String[]::new))
        .check(MAIN);
  }

  @Test
  void subjectsDoNotKnowEachOther() {
    slices()
        .matching("pegbook.calc.(*)..")
        .should()
        .notDependOnEachOther()
        .allowEmptyShould(true)
        .check(MAIN);
  }

  @Test
  void onlyTheNetworkKnowsLinearAlgebra() {
    noClasses()
        .that()
        .resideOutsideOfPackage("pegbook.geometry.network..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.hipparchus..")
        .check(MAIN);
  }

  /** What it gives is a guide in doubles; the rest of the search decides in whole numbers. */
  @Test
  void oneClassKnowsTheLibraryForLinearPrograms() {
    noClasses()
        .that()
        .doNotHaveFullyQualifiedName("pegbook.cutting.LinearProgram")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.ojalgo..")
        .check(MAIN);
  }

  @Test
  void packagesFormNoCycle() {
    slices().matching("pegbook.(**)").should().beFreeOfCycles().check(MAIN);
  }
}
