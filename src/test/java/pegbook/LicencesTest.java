package pegbook;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the list of third-party licences to what really travels with the program. */
class LicencesTest {
  private static final Path LICENCES = Path.of("src", "licences");
  private static final Path FONTS = Path.of("templates", "fonts");

  /** Written by the build: the libraries of the packaged folder. */
  private static final Path TRAVELLING = Path.of("target", "travelling-libraries.txt");

  private static final Pattern ARTIFACT =
      Pattern.compile("^ +(?<group>[^:]+):(?<name>[^:]+):jar:(?<version>[^:]+):(compile|runtime)");

  /** A row of the table of libraries. */
  record Library(String library, String version, String text, List<String> inside) {
    String artifact() {
      return library.substring(library.indexOf(':') + 1);
    }

    @Override
    public String toString() {
      return library;
    }
  }

  static List<Library> libraries() throws IOException {
    return rows(7)
        .map(cells -> new Library(cells[1], cells[2], cells[4], words(cells[5])))
        .toList();
  }

  private static List<String> words(String cell) {
    return cell.equals("-") ? List.of() : List.of(cell.split(" "));
  }

  /** The rows of the table that has so many columns, without its head. */
  private static Stream<String[]> rows(int columns) throws IOException {
    return Files.readAllLines(LICENCES.resolve("THIRD-PARTY.md"), UTF_8).stream()
        .filter(line -> line.startsWith("| ") && !line.startsWith("|---"))
        .map(line -> line.substring(2, line.length() - 2).split(" \\| "))
        .filter(cells -> cells.length == columns)
        .skip(1);
  }

  @Test
  void theListNamesEveryLibraryThatTravels() throws IOException {
    Set<String> travelling =
        Files.readAllLines(TRAVELLING, UTF_8).stream()
            .map(ARTIFACT::matcher)
            .filter(Matcher::find)
            .map(m -> m.group("group") + ":" + m.group("name") + ":" + m.group("version"))
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> listed =
        libraries().stream()
            .map(library -> library.library() + ":" + library.version())
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(travelling).isNotEmpty();
    assertThat(listed).isEqualTo(travelling);
  }

  @ParameterizedTest
  @MethodSource("libraries")
  void namesTheNoticesInsideTheJar(Library library) throws IOException {
    Set<String> inside = new TreeSet<>();
    try (JarFile jar = new JarFile(jarOf(library))) {
      jar.stream()
          .map(entry -> entry.getName())
          .filter(name -> name.matches("META-INF/[^/]*(LICEN[CS]E|NOTICE)[^/]*"))
          .forEach(name -> inside.add(name.substring("META-INF/".length())));
    }
    assertThat(new TreeSet<>(library.inside())).isEqualTo(inside);
  }

  private static String jarOf(Library library) {
    String file = library.artifact() + "-" + library.version() + ".jar";
    return Arrays.stream(System.getProperty("java.class.path").split(java.io.File.pathSeparator))
        .filter(path -> Path.of(path).endsWith(file))
        .findFirst()
        .orElseThrow(() -> new AssertionError(file + " is not on the class path"));
  }

  @Test
  void everyTextIsNamedAndEveryNameHasItsText() throws IOException {
    Set<String> named =
        libraries().stream().map(Library::text).collect(Collectors.toCollection(TreeSet::new));
    assertThat(filesEnding(LICENCES, ".txt")).isEqualTo(named);
    for (String text : named) {
      assertThat(Files.readString(LICENCES.resolve(text), UTF_8)).hasSizeGreaterThan(1000);
    }
  }

  @Test
  void everyFontIsNamedAndHasItsTextBesideIt() throws IOException {
    Set<String> named = new TreeSet<>();
    rows(4)
        .forEach(
            cells -> {
              named.add(cells[0]);
              assertThat(FONTS.resolve(cells[2])).isNotEmptyFile();
            });
    assertThat(named).isNotEmpty().isEqualTo(filesEnding(FONTS, ".ttf"));
  }

  private static Set<String> filesEnding(Path folder, String ending) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(ending))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }
}
