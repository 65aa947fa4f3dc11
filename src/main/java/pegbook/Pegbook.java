package pegbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import pegbook.export.BuyingCsv;
import pegbook.export.CalendarIcs;
import pegbook.export.ResultsJson;
import pegbook.export.TapesCsv;
import pegbook.job.Language;
import pegbook.jobfile.JobFile;
import pegbook.jobfile.JobFileReader;
import pegbook.lettering.Faces;
import pegbook.lettering.FontLettering;
import pegbook.packet.Packet;
import pegbook.packet.Packets;
import pegbook.render.Printed;
import pegbook.render.RenderException;
import pegbook.render.Renderer;
import pegbook.render.TemplateFolder;
import pegbook.sheet.Booklet;
import pegbook.sheet.Booklets;
import pegbook.sheet.Texts;
import pegbook.sheet.Writing;

/**
 * The flow: a job file is read or refused; its figures are calculated; sheets are made of them; the
 * sheets are rendered; the results are exported.
 *
 * <pre>
 * input/NAME.json → jobfile → job → calc.* → packet → sheet → render → output/NAME/
 *                                                          → export
 * </pre>
 */
final class Pegbook {
  private final Map<Language, Texts> texts;
  private final FontLettering lettering;
  private final Renderer renderer;

  private Pegbook(Map<Language, Texts> texts, FontLettering lettering, Renderer renderer) {
    this.texts = texts;
    this.lettering = lettering;
    this.renderer = renderer;
  }

  /** With the user's own templates, where they have some. */
  static Pegbook of(Optional<Path> ownTemplates) {
    Optional<Path> home = Optional.ofNullable(System.getProperty("pegbook.home")).map(Path::of);
    TemplateFolder templates = TemplateFolder.of(ownTemplates, home);
    Map<Language, Texts> texts = new EnumMap<>(Language.class);
    for (Language language : Language.values()) {
      texts.put(language, texts(templates, language));
    }
    Faces faces = new Faces(templates::bytes);
    Renderer renderer = new Renderer(templates, faces);
    return new Pegbook(texts, new FontLettering(faces), renderer);
  }

  private static Texts texts(TemplateFolder templates, Language language) {
    return language == Language.ENGLISH
        ? Texts.read(file -> templates.text(textFile(language, file)))
        : Texts.read(language, file -> templates.findText(textFile(language, file)));
  }

  private static String textFile(Language language, String file) {
    return "texts/" + language.tag() + "/" + file + ".properties";
  }

  private Writing writing(Packet packet, Language language) {
    Texts words = Objects.requireNonNull(texts.get(language));
    return Writing.of(packet.job(), words, lettering);
  }

  /** Reads a job file and calculates its figures. */
  Outcome check(Path file) {
    return read(file, packet -> new Outcome.Done(packet, Map.of(), 0));
  }

  /**
   * Reads a job file, calculates its figures and renders its packet.
   *
   * @param threads how many documents may be rendered at a time
   */
  Outcome print(Path file, int threads) {
    return read(file, packet -> done(packet, threads));
  }

  private interface Printing {
    Outcome of(Packet packet);
  }

  private Outcome read(Path file, Printing printing) {
    JobFile read;
    try {
      read = JobFileReader.read(file.toString(), Files.readAllBytes(file));
    } catch (IOException e) {
      return new Outcome.Unusable(file + " cannot be read: " + e.getMessage());
    }
    if (read instanceof JobFile.Refused refused) {
      return new Outcome.Refused(refused.problems());
    }
    JobFile.Read accepted = (JobFile.Read) read;
    try {
      Packet packet = Packets.calculate(accepted.job(), accepted.sha256());
      return printing.of(packet);
    } catch (RenderException | UncheckedIOException e) {
      return new Outcome.Unusable(file + ": " + e.getMessage());
    }
  }

  /** The documents of a packet, the longest first. */
  List<Booklet> booklets(Packet packet) {
    List<Writing> daySheets =
        packet.job().crew().daySheets().stream()
            .map(language -> writing(packet, language))
            .toList();
    return Booklets.of(packet, writing(packet, Language.ENGLISH), daySheets);
  }

  /** Renders one of them. */
  Printed print(Booklet booklet, Packet packet) {
    return renderer.print(Documents.of(booklet, packet));
  }

  private Outcome done(Packet packet, int threads) {
    List<Booklet> booklets = booklets(packet);
    List<Printed> printed = SideBySide.of(booklets, threads, booklet -> print(booklet, packet));
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (int i = 0; i < booklets.size(); i++) {
      files.put(booklets.get(i).name() + ".pdf", printed.get(i).bytes());
    }
    files.put("results.json", ResultsJson.of(packet));
    files.put("tapes.csv", TapesCsv.of(packet));
    Writing writing = writing(packet, Language.ENGLISH);
    files.put("buying.csv", BuyingCsv.of(packet, writing));
    CalendarIcs.of(packet, writing).ifPresent(file -> files.put("calendar.ics", file));
    return new Outcome.Done(packet, files, printed.stream().mapToInt(Printed::pages).sum());
  }
}
