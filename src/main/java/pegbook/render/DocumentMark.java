package pegbook.render;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.SimpleTimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences.PRINT_SCALING;

/**
 * What a document says of itself: title, author, dates, id, and that it is to be printed in true
 * size. Dates and id come from the job, never from the clock, so that a second run gives the same
 * bytes.
 */
final class DocumentMark {
  private static final String MAKER = "Pegbook";

  private DocumentMark() {}

  static void set(PDDocument pdf, PacketDocument document) {
    pdf.setDocumentInformation(information(document));
    pdf.setDocumentId(id(document));
    PDMetadata metadata = new PDMetadata(pdf);
    try {
      metadata.importXMPMetadata(packet(document).getBytes(StandardCharsets.UTF_8));
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    pdf.getDocumentCatalog().setMetadata(metadata);
    PDViewerPreferences preferences = pdf.getDocumentCatalog().getViewerPreferences();
    preferences.setPrintScaling(PRINT_SCALING.None);
    preferences.setDisplayDocTitle(true);
  }

  private static PDDocumentInformation information(PacketDocument document) {
    PDDocumentInformation information = new PDDocumentInformation();
    information.setTitle(document.title());
    information.setAuthor(document.author());
    information.setSubject(document.subject());
    information.setCreator(MAKER);
    information.setProducer(MAKER);
    document
        .issued()
        .map(DocumentMark::midnight)
        .ifPresent(
            date -> {
              information.setCreationDate(date);
              information.setModificationDate(date);
            });
    return information;
  }

  private static Calendar midnight(LocalDate date) {
    Calendar calendar = new GregorianCalendar(new SimpleTimeZone(0, "UTC"), Locale.ROOT);
    calendar.clear();
    calendar.set(date.getYear(), date.getMonthValue() - 1, date.getDayOfMonth());
    return calendar;
  }

  /** Differs between the documents of one job. */
  private static long id(PacketDocument document) {
    long ofJob = new BigInteger(document.hash(), 16).longValue();
    return 31 * (31 * ofJob + document.template().hashCode()) + document.title().hashCode();
  }

  private static String packet(PacketDocument document) {
    String dates =
        document
            .issued()
            .map(
                date ->
                    "<xmp:CreateDate>{date}T00:00:00Z</xmp:CreateDate><xmp:ModifyDate>{date}T00:00:00Z</xmp:ModifyDate>"
                        .replace("{date}", date.toString()))
            .orElse("");
    try (InputStream template = DocumentMark.class.getResourceAsStream("metadata.xml")) {
      if (template == null) {
        throw new IOException("no metadata.xml in the program");
      }
      return new String(template.readAllBytes(), StandardCharsets.UTF_8)
          .replace("{dates}", dates)
          .replace("{maker}", MAKER)
          .replace("{author}", escaped(document.author()))
          .replace("{subject}", escaped(document.subject()))
          .replace("{title}", escaped(document.title()));
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
