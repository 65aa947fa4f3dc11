package pegbook.testing;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Prints what is wrong on the pages of PDFs, for a person at work on a sheet: {@code CheckPages
 * FILE or FOLDER…}. Ends with 1 when anything is.
 */
public final class CheckPages {
  private CheckPages() {}

  public static void main(String[] arguments) throws IOException {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    boolean clean = true;
    for (String argument : arguments) {
      for (Path file : pdfs(Path.of(argument))) {
        List<Problem> problems = PageCheck.problems(Files.readAllBytes(file), Rules.of(file));
        problems.forEach(problem -> out.println(file + ": " + problem));
        clean &= problems.isEmpty();
      }
    }
    System.exit(clean ? 0 : 1);
  }

  private static List<Path> pdfs(Path place) throws IOException {
    try (Stream<Path> files = Files.walk(place)) {
      return files.filter(file -> file.toString().endsWith(".pdf")).sorted().toList();
    }
  }
}
