package pegbook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDCheckBox;
import org.apache.pdfbox.pdmodel.interactive.form.PDField;
import org.apache.pdfbox.pdmodel.interactive.form.PDNonTerminalField;
import org.apache.pdfbox.pdmodel.interactive.form.PDTextField;
import org.junit.jupiter.api.Test;
import pegbook.testing.PageCheck;
import pegbook.testing.PdfChecks;
import pegbook.testing.PdfReader;
import pegbook.testing.Rules;

/** What is to be filled in on a day sheet. */
class FormTest {
  private static final byte[] DAY = new Renderer(Demo.FOLDER, Demo.FACES).render(Demo.day());

  @Test
  void conformsToPdfUa1AndPdfA2a() {
    PdfChecks.assertArchivalAndAccessible(DAY);
  }

  @Test
  void keepsTheRulesOfThePage() {
    assertThat(PageCheck.problems(DAY, Rules.daySheet())).isEmpty();
  }

  @Test
  void fieldsComeInTheOrderOfThePageWithStableNames() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(DAY)) {
      List<String> names = new ArrayList<>();
      for (PDField field : pdf.getDocumentCatalog().getAcroForm().getFieldTree()) {
        if (!(field instanceof PDNonTerminalField)) {
          names.add(field.getFullyQualifiedName());
        }
      }
      List<String> expected = new ArrayList<>();
      for (int at = 1; at <= 12; at++) {
        expected.add("day-1.S" + at + ".done");
        expected.add("day-1.S" + at + ".depth");
      }
      expected.add("day-1.weather");
      expected.add("covered");
      assertThat(names).isEqualTo(expected);
    }
  }

  @Test
  void fieldsSayWhatTheyAreAndNeedNoHelpToBeShown() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(DAY)) {
      PDAcroForm form = pdf.getDocumentCatalog().getAcroForm();
      assertThat(form.getNeedAppearances()).isFalse();
      assertThat(form.getField("day-1.S3.done")).isInstanceOf(PDCheckBox.class);
      assertThat(form.getField("day-1.S3.depth")).isInstanceOf(PDTextField.class);
      assertThat(form.getField("day-1.S3.done").getAlternateFieldName()).isEqualTo("S3 is dug");
      PDAnnotationWidget widget = form.getField("day-1.S3.done").getWidgets().get(0);
      assertThat(widget.isPrinted()).isTrue();
      assertThat(widget.getAppearance().getNormalAppearance().getSubDictionary()).hasSize(2);
    }
  }

  @Test
  void fieldsLieOverTheirRow() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(DAY)) {
      PDAcroForm form = pdf.getDocumentCatalog().getAcroForm();
      for (int at = 1; at <= 12; at++) {
        PDRectangle tick = rectangle(form, "day-1.S" + at + ".done");
        PDRectangle text = rectangle(form, "day-1.S" + at + ".depth");
        double base = base("S" + at) / 25.4 * 72;
        assertThat(tick.getLowerLeftY()).isLessThan((float) base);
        assertThat(tick.getUpperRightY()).isGreaterThan((float) base);
        assertThat(text.getLowerLeftY()).isLessThan((float) base);
        assertThat(text.getUpperRightY()).isGreaterThan((float) base);
        assertThat(tick.getWidth() / 72 * 25.4).isCloseTo(4.6 + 0.7, within(0.05));
        assertThat(text.getUpperRightX() / 72 * 25.4).isLessThanOrEqualTo(215.9 - 11);
        assertThat(text.getLowerLeftX()).isGreaterThan(tick.getUpperRightX());
      }
    }
  }

  private static double base(String text) {
    return PdfReader.read(DAY).pages().get(0).runs().stream()
        .filter(run -> run.text().equals(text))
        .findFirst()
        .orElseThrow()
        .start()
        .y();
  }

  private static PDRectangle rectangle(PDAcroForm form, String name) {
    return form.getField(name).getWidgets().get(0).getRectangle();
  }

  @Test
  void aTickAndAnEntryCanBeMadeAndReadBack() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(DAY)) {
      PDAcroForm form = pdf.getDocumentCatalog().getAcroForm();
      ((PDCheckBox) form.getField("day-1.S2.done")).check();
      form.getField("day-1.S2.depth").setValue("47 in");
      java.io.ByteArrayOutputStream filled = new java.io.ByteArrayOutputStream();
      pdf.save(filled);
      try (PDDocument again = Loader.loadPDF(filled.toByteArray())) {
        PDAcroForm read = again.getDocumentCatalog().getAcroForm();
        assertThat(((PDCheckBox) read.getField("day-1.S2.done")).isChecked()).isTrue();
        assertThat(((PDCheckBox) read.getField("day-1.S3.done")).isChecked()).isFalse();
        assertThat(read.getField("day-1.S2.depth").getValueAsString()).isEqualTo("47 in");
      }
    }
  }
}
