package pegbook.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Holds a finished PDF to the standards it claims, and reads it back. */
public final class PdfChecks {
  static {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private PdfChecks() {}

  /** Fails unless a PDF conforms to PDF/UA-1 and to PDF/A-2a, by the veraPDF library. */
  public static void assertArchivalAndAccessible(byte[] pdf) {
    assertThat(breaches(pdf, PDFAFlavour.PDFUA_1)).as("PDF/UA-1").isEmpty();
    assertThat(breaches(pdf, PDFAFlavour.PDFA_2_A)).as("PDF/A-2a").isEmpty();
  }

  /** What a PDF breaches of a standard: clause, place, reason. */
  public static List<String> breaches(byte[] pdf, PDFAFlavour standard) {
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), standard);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(standard, false)) {
      ValidationResult result = validator.validate(parser);
      assertThat(result.getTotalAssertions()).as("assertions checked").isGreaterThan(100);
      return result.getTestAssertions().stream()
          .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
          .map(
              assertion ->
                  assertion.getRuleId().getClause()
                      + "-"
                      + assertion.getRuleId().getTestNumber()
                      + " at "
                      + assertion.getLocation().getContext()
                      + ": "
                      + assertion.getMessage())
          .toList();
    } catch (VeraPDFException | IOException failed) {
      throw new IllegalStateException("veraPDF could not read the document", failed);
    }
  }

  /** The text of a PDF, page after page. */
  public static String text(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }
}
