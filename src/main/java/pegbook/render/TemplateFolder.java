package pegbook.render;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The files a packet is printed with: templates, style, fonts, texts. Each is looked for in the
 * folder the user chose, then in the program's home, then in the program itself; so a user's folder
 * need hold only what differs. Reads nothing outside these places.
 */
public final class TemplateFolder {
  private static final Pattern NAME =
      Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]*(/[A-Za-z0-9][A-Za-z0-9._-]*)*");

  private final Optional<Path> chosen;
  private final List<Path> folders;

  private TemplateFolder(Optional<Path> chosen, List<Path> folders) {
    this.chosen = chosen;
    this.folders = folders;
  }

  /**
   * The places to look in.
   *
   * @param chosen the user's own templates folder
   * @param home the program's home, which has a folder {@code templates}
   * @throws IllegalArgumentException when the user's folder is not a folder
   */
  public static TemplateFolder of(Optional<Path> chosen, Optional<Path> home) {
    chosen
        .filter(folder -> !Files.isDirectory(folder))
        .ifPresent(
            folder -> {
              throw new IllegalArgumentException("templates: " + folder + " is not a folder");
            });
    Optional<Path> own = home.map(folder -> folder.resolve("templates")).filter(Files::isDirectory);
    return new TemplateFolder(
        chosen,
        Stream.of(chosen, own).flatMap(Optional::stream).map(TemplateFolder::real).toList());
  }

  private static Path real(Path folder) {
    try {
      return folder.toRealPath();
    } catch (IOException unreadable) {
      throw new UncheckedIOException("templates: " + folder, unreadable);
    }
  }

  /** Whether the user chose a folder of their own, and so may have dropped or reordered sheets. */
  public boolean isChosen() {
    return chosen.isPresent();
  }

  /**
   * A file's bytes.
   *
   * @param name path inside the folder, with {@code /}, such as {@code style/packet.css}
   * @throws UncheckedIOException when no place has it, or it leads out of the folder
   */
  public byte[] bytes(String name) {
    return find(name)
        .orElseThrow(() -> new UncheckedIOException(new IOException("templates: no " + name)));
  }

  /** A file's text, in UTF-8; like {@link #bytes}. */
  public String text(String name) {
    return new String(bytes(name), StandardCharsets.UTF_8);
  }

  /** A file's text, or none when no place has it. */
  public Optional<String> findText(String name) {
    return find(name).map(bytes -> new String(bytes, StandardCharsets.UTF_8));
  }

  /** A file's bytes, or none when no place has it. */
  public Optional<byte[]> find(String name) {
    if (!NAME.matcher(name).matches()) {
      throw new UncheckedIOException(new IOException("templates: not a file's name: " + name));
    }
    try {
      for (Path folder : folders) {
        Path file = folder.resolve(name);
        if (Files.isRegularFile(file)) {
          return Optional.of(Files.readAllBytes(inside(folder, file)));
        }
      }
      return fromProgram(name);
    } catch (IOException unreadable) {
      throw new UncheckedIOException("templates: " + name, unreadable);
    }
  }

  /** Follows links, and refuses a file that lies outside: a copied folder must stand alone. */
  private static Path inside(Path folder, Path file) throws IOException {
    Path real = file.toRealPath();
    if (!real.startsWith(folder)) {
      throw new IOException(file + " leads out of " + folder);
    }
    return real;
  }

  private static Optional<byte[]> fromProgram(String name) throws IOException {
    try (InputStream stream = TemplateFolder.class.getResourceAsStream("/templates/" + name)) {
      return stream == null ? Optional.empty() : Optional.of(stream.readAllBytes());
    }
  }
}
