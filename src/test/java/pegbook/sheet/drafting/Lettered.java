package pegbook.sheet.drafting;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import pegbook.lettering.Faces;
import pegbook.lettering.FontLettering;
import pegbook.lettering.Lettering;

/** The packet's own lettering, for tests. */
public final class Lettered {
  private static final Faces FACES = new Faces(Lettered::file);

  private Lettered() {}

  public static Lettering lettering() {
    return new FontLettering(FACES);
  }

  private static byte[] file(String name) {
    try {
      return Files.readAllBytes(Path.of("templates").resolve(name));
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }
}
