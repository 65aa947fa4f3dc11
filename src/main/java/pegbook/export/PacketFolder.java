package pegbook.export;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Writes a packet's files into its folder.
 *
 * <p>All files are first written into a folder beside it, then each is moved over its predecessor
 * in one step, so that a reader sees every file whole, old or new, whenever the program is killed.
 * The folder beside it is held by one run at a time; a second run onto the same packet is told so.
 * Files of an earlier packet that this one does not have (a fourth day sheet, say) are removed at
 * the end; files of other names are the user's and stay.
 */
public final class PacketFolder {
  private static final Pattern OURS =
      Pattern.compile(
          "binder\\.pdf|review\\.pdf|(?:day|pour)-\\d+(?:-[a-z]{2})?\\.pdf|results\\.json|tapes\\.csv|buying\\.csv|calendar\\.ics");

  private PacketFolder() {}

  /**
   * Writes files.
   *
   * @param folder the packet's folder, made where there is none
   * @param files contents by file name
   * @throws IOException when the place cannot be written; the packet before it then stands as it
   *     was, file by file
   */
  public static void write(Path folder, Map<String, byte[]> files) throws IOException {
    Path parent = folder.toAbsolutePath().normalize().getParent();
    if (parent == null) {
      throw new IOException(folder + " has no parent folder");
    }
    Files.createDirectories(parent);
    try (FolderLock waiting =
        FolderLock.take(parent.resolve("." + folder.getFileName() + ".new"))) {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Files.write(waiting.file(file.getKey()), file.getValue());
      }
      Files.createDirectories(folder);
      for (String name : files.keySet()) {
        move(waiting.file(name), folder.resolve(name));
      }
      for (String stale : stale(folder, files.keySet())) {
        Files.deleteIfExists(folder.resolve(stale));
      }
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static Set<String> stale(Path folder, Set<String> written) throws IOException {
    Set<String> stale = new TreeSet<>();
    try (Stream<Path> entries = Files.list(folder)) {
      entries
          .map(entry -> entry.getFileName().toString())
          .filter(name -> OURS.matcher(name).matches() && !written.contains(name))
          .forEach(stale::add);
    }
    return stale;
  }
}
