package pegbook.testing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whether two folders of packets hold the same: {@code SamePackets FOLDER FOLDER}. PDFs by what is
 * read back from them (text and its places, tags, drawings, lines, fields, bookmarks), all other
 * files by their bytes: another Java may pack the same page differently. Ends with 1 when anything
 * differs.
 */
public final class SamePackets {
  private SamePackets() {}

  public static void main(String[] arguments) throws IOException {
    Path one = Path.of(arguments[0]);
    Path other = Path.of(arguments[1]);
    Set<String> names = new TreeSet<>(files(one));
    names.addAll(files(other));
    int different = 0;
    int pages = 0;
    for (String name : names) {
      if (!Files.exists(one.resolve(name)) || !Files.exists(other.resolve(name))) {
        System.out.println(name + " is in one folder only");
        different++;
        continue;
      }
      byte[] first = Files.readAllBytes(one.resolve(name));
      byte[] second = Files.readAllBytes(other.resolve(name));
      if (name.endsWith(".pdf")) {
        PrintedDocument printed = PdfReader.read(first);
        pages += printed.pages().size();
        if (!printed.equals(PdfReader.read(second))) {
          System.out.println(name + " reads differently");
          different++;
        }
      } else if (!Arrays.equals(first, second)) {
        System.out.println(name + " differs");
        different++;
      }
    }
    System.out.println(names.size() + " files, " + pages + " pages: " + different + " differ");
    System.exit(different == 0 && !names.isEmpty() ? 0 : 1);
  }

  private static List<String> files(Path folder) throws IOException {
    try (Stream<Path> walk = Files.walk(folder)) {
      return walk.filter(Files::isRegularFile)
          .map(file -> folder.relativize(file).toString())
          .collect(Collectors.toList());
    }
  }
}
