package pegbook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import pegbook.testing.PageCheck;
import pegbook.testing.PdfChecks;
import pegbook.testing.Rules;

/** The printed demo packet, read back. */
class RendererTest {
  private static byte[] bytes = {};
  private static List<String> pages = List.of();

  @BeforeAll
  static void print() throws IOException {
    bytes = new Renderer(Demo.FOLDER, Demo.FACES).render(Demo.binder());
    pages = new ArrayList<>();
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        stripper.setSortByPosition(true);
        pages.add(stripper.getText(pdf));
      }
    }
  }

  @Test
  void conformsToPdfUa1AndPdfA2a() {
    PdfChecks.assertArchivalAndAccessible(bytes);
  }

  @Test
  void keepsTheRulesOfThePage() {
    assertThat(PageCheck.problems(bytes, Rules.binder())).isEmpty();
  }

  @Test
  void aPdfThatConformsToNothingIsSeenAsSuch() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      pdf.getDocumentCatalog().setStructureTreeRoot(null);
      pdf.getDocumentCatalog().setLanguage(null);
      ByteArrayOutputStream spoiled = new ByteArrayOutputStream();
      pdf.save(spoiled);
      assertThat(PdfChecks.breaches(spoiled.toByteArray(), PDFAFlavour.PDFUA_1)).isNotEmpty();
      assertThat(PdfChecks.breaches(spoiled.toByteArray(), PDFAFlavour.PDFA_2_A)).isNotEmpty();
    }
  }

  @Test
  void textExtractsAsWritten() {
    assertThat(pages.get(0)).contains("Nine holes, 12′ 9 ³⁄₈″ across, off the office flange.");
    assertThat(pages.get(1)).contains("S3 12′ 3 ³⁄₈″ 3.5 ft ≥ 3½″ → ok");
    assertThat(pages.get(4)).contains("100 mm", "gravel ∠", "12′ 9 ³⁄₈″");
  }

  @Test
  void contentsNameThePageOfEverySheetThatFollows() {
    assertThat(pages.get(0))
        .containsPattern("Marking out[ .]+2\\s")
        .containsPattern("Site plan[ .]+5\\s")
        .containsPattern("What follows[ .]+6\\s");
    assertThat(pages.get(0)).doesNotContainPattern("Alder Hollow *\\.");
  }

  @Test
  void everyPageHasTheStripOfItsSheet() {
    assertThat(pages).hasSize(6);
    List<String> sheets =
        List.of("Cover", "Marking out", "Marking out", "Marking out", "Site plan", "Gallery");
    for (int at = 0; at < pages.size(); at++) {
      assertThat(pages.get(at))
          .contains(
              "Sky deck, Alder Hollow " + sheets.get(at) + " B 2027-04-12 " + (at + 1) + " of 6")
          .contains("01234567", "Figures to check, not permission to dig.");
    }
  }

  @Test
  void tableHeadsRepeatAndRowsStayWhole() {
    for (String page : pages.subList(1, 4)) {
      assertThat(page).contains("Mark Tape Check Note");
    }
    String rows = String.join("", pages.subList(1, 4));
    for (int at = 1; at <= 90; at++) {
      assertThat(rows).contains("S" + at + " 12′ " + at % 12 + " ³⁄₈″ 3.5 ft");
    }
    assertThat(rows.split(" last", -1)).as("the loop's last row").hasSize(2);
  }

  @Test
  void bookmarksFollowTheHeadings() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      assertThat(titles(pdf.getDocumentCatalog().getDocumentOutline()))
          .containsExactly(
              "Sky deck, Alder Hollow",
              "Marking out",
              "> Why",
              "Site plan",
              "Gallery",
              "> Side by side",
              "What follows");
    }
  }

  private static List<String> titles(PDOutlineNode node) {
    List<String> titles = new ArrayList<>();
    for (PDOutlineItem item : node.children()) {
      titles.add(item.getTitle());
      titles(item).forEach(title -> titles.add("> " + title));
    }
    return titles;
  }

  @Test
  void saysWhatItIsAndWhenItWasIssued() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      assertThat(pdf.getDocumentInformation().getTitle())
          .isEqualTo("Build packet: Sky deck, Alder Hollow");
      assertThat(pdf.getDocumentInformation().getSubject())
          .isEqualTo("Marks, holes & concrete of a deck");
      Calendar created = pdf.getDocumentInformation().getCreationDate();
      created.setTimeZone(TimeZone.getTimeZone("UTC"));
      assertThat(created.toInstant()).hasToString("2027-04-12T00:00:00Z");
      assertThat(pdf.getDocumentInformation().getModificationDate().toInstant())
          .isEqualTo(created.toInstant());
      assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en");
      PDViewerPreferences preferences = pdf.getDocumentCatalog().getViewerPreferences();
      assertThat(preferences.getPrintScaling()).isEqualTo("None");
      assertThat(preferences.displayDocTitle()).isTrue();
    }
  }

  @Test
  void aDocumentThatIsNotIssuedHasNoDate() throws IOException {
    PacketDocument issued = Demo.binder();
    PacketDocument draft =
        new PacketDocument(
            issued.template(),
            issued.language(),
            issued.title(),
            issued.subject(),
            issued.author(),
            Optional.empty(),
            issued.hash(),
            PageSize.A4,
            issued.strip(),
            issued.model(),
            issued.drawings(),
            issued.texts());
    byte[] printed = new Renderer(Demo.FOLDER, Demo.FACES).render(draft);
    PdfChecks.assertArchivalAndAccessible(printed);
    try (PDDocument pdf = Loader.loadPDF(printed)) {
      assertThat(pdf.getDocumentInformation().getCreationDate()).isNull();
      assertThat(pdf.getPage(0).getMediaBox().getHeight()).isCloseTo(841.89f, within(0.03f));
    }
  }

  @Test
  void everyFontIsEmbeddedOnce() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      Map<String, COSBase> fonts = new TreeMap<>();
      for (PDPage page : pdf.getPages()) {
        collectFonts(page.getResources(), fonts);
      }
      assertThat(fonts.keySet())
          .containsExactly(
              "DejaVuSans", "SourceSans3-Bold", "SourceSans3-Italic", "SourceSans3-Regular");
    }
  }

  private static void collectFonts(PDResources resources, Map<String, COSBase> fonts)
      throws IOException {
    for (COSName name : resources.getFontNames()) {
      PDFont font = resources.getFont(name);
      assertThat(font.isEmbedded()).isTrue();
      COSBase known =
          fonts.put(font.getName().replaceFirst("^[A-Z]{6}\\+", ""), font.getCOSObject());
      assertThat(known == null || known == font.getCOSObject()).isTrue();
    }
    for (COSName name : resources.getXObjectNames()) {
      collectFonts(((PDFormXObject) resources.getXObject(name)).getResources(), fonts);
    }
  }
}
