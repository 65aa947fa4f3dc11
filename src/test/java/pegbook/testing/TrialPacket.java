package pegbook.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.job.Language;
import pegbook.jobfile.JobFile;
import pegbook.jobfile.JobFileReader;
import pegbook.lettering.Faces;
import pegbook.lettering.FontLettering;
import pegbook.packet.Packet;
import pegbook.packet.Packets;
import pegbook.render.TemplateFolder;
import pegbook.sheet.Texts;
import pegbook.sheet.Writing;

/**
 * A packet computed from an example or a made-up job, with all that its sheets are written with.
 */
public record TrialPacket(String name, Packet packet) {
  private static final TemplateFolder FOLDER =
      TemplateFolder.of(Optional.of(Path.of("templates")), Optional.empty());
  private static final List<TrialPacket> MADE = new ArrayList<>();
  private static final FontLettering LETTERING = new FontLettering(new Faces(FOLDER::bytes));

  /** The packet's words. */
  public static final Texts TEXTS =
      Texts.read(file -> FOLDER.text("texts/en/" + file + ".properties"));

  /** The words of day sheets in Spanish. */
  public static final Texts SPANISH =
      Texts.read(Language.SPANISH, file -> FOLDER.findText("texts/es/" + file + ".properties"));

  /** Packets of every job in {@code input/}, in the order of their names. */
  public static Stream<TrialPacket> examples() {
    try (Stream<Path> files = Files.list(Path.of("input"))) {
      return files
          .filter(file -> file.toString().endsWith(".json"))
          .filter(file -> !file.endsWith("job.schema.json"))
          .sorted()
          .toList()
          .stream()
          .map(TrialPacket::example);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Packets of so many made-up jobs; computed once in a process. */
  public static synchronized Stream<TrialPacket> made(int count) {
    while (MADE.size() < count) {
      int number = MADE.size();
      byte[] text = JobMaker.text(number).getBytes(StandardCharsets.UTF_8);
      MADE.add(of("made " + number, text));
    }
    return List.copyOf(MADE.subList(0, count)).stream();
  }

  /** The packet of a job in {@code input/}. */
  public static TrialPacket example(Path file) {
    try {
      return of(file.getFileName().toString(), Files.readAllBytes(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The packet of a job file's text. */
  public static TrialPacket text(String name, String text) {
    return of(name, text.getBytes(StandardCharsets.UTF_8));
  }

  private static TrialPacket of(String name, byte[] bytes) {
    if (JobFileReader.read(name, bytes) instanceof JobFile.Read read) {
      return new TrialPacket(name, Packets.calculate(read.job(), read.sha256()));
    }
    throw new IllegalArgumentException(name + " is refused");
  }

  /** What its sheets are written with. */
  public Writing writing() {
    return Writing.of(packet.job(), TEXTS, LETTERING);
  }

  /** What its day sheets in Spanish are written with. */
  public Writing spanish() {
    return Writing.of(packet.job(), SPANISH, LETTERING);
  }

  @Override
  public String toString() {
    return name;
  }
}
