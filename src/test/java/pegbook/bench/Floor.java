package pegbook.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import pegbook.lettering.Face;
import pegbook.render.FilledMarkup;
import pegbook.testing.PdfReader;
import pegbook.testing.PrintedPage;
import pegbook.testing.TextRun;

/**
 * The least that a PDF of so much text costs: the PDF library alone, the same fonts, the same lines
 * of text at the same places, one stroke for each painted path; no layout, no tags, no archival
 * metadata.
 */
public final class Floor {
  private static final double POINTS = 72 / 25.4;

  private final List<Page> pages = new ArrayList<>();
  private final TrueTypeFont font;
  private int lines;
  private int glyphs;
  private int strokes;

  private record Line(float x, float y, float size, String text) {}

  private record Page(PDRectangle paper, List<Line> lines, int strokes) {}

  private Floor(TrueTypeFont font) {
    this.font = font;
  }

  /** As much as stands in a PDF. */
  public static Floor of(byte[] pdf) throws IOException {
    byte[] file = FilledMarkup.folder().bytes(Face.REGULAR.path());
    TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
    font.setEnableGsub(false);
    Floor floor = new Floor(font);
    for (PrintedPage page : PdfReader.read(pdf).pages()) {
      List<Line> lines = new ArrayList<>();
      for (TextRun run : page.runs()) {
        lines.add(
            new Line(
                (float) (run.start().x() * POINTS),
                (float) (run.start().y() * POINTS),
                (float) run.size(),
                floor.known(run.text())));
        floor.glyphs += run.glyphs().size();
      }
      floor.lines += lines.size();
      floor.strokes += page.paths().size();
      PDRectangle paper =
          new PDRectangle(
              (float) (page.paper().right() * POINTS), (float) (page.paper().top() * POINTS));
      floor.pages.add(new Page(paper, lines, page.paths().size()));
    }
    return floor;
  }

  /** A letter that the one font lacks counts as another. */
  private String known(String text) throws IOException {
    StringBuilder known = new StringBuilder();
    var glyphIds = font.getUnicodeCmapLookup();
    text.codePoints()
        .forEach(point -> known.appendCodePoint(glyphIds.getGlyphId(point) == 0 ? 'x' : point));
    return known.toString();
  }

  /** Writes it. */
  public byte[] write() throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDFont embedded = PDType0Font.load(document, font, true);
      for (Page page : pages) {
        PDPage sheet = new PDPage(page.paper());
        document.addPage(sheet);
        try (PDPageContentStream stream = new PDPageContentStream(document, sheet)) {
          stream.beginText();
          float x = 0;
          float y = 0;
          for (Line line : page.lines()) {
            stream.setFont(embedded, line.size());
            stream.newLineAtOffset(line.x() - x, line.y() - y);
            stream.showText(line.text());
            x = line.x();
            y = line.y();
          }
          stream.endText();
          for (int stroke = 0; stroke < page.strokes(); stroke++) {
            stream.moveTo(50, 50 + stroke);
            stream.lineTo(300, 50 + stroke);
            stream.stroke();
          }
        }
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      return bytes.toByteArray();
    }
  }

  @Override
  public String toString() {
    return pages.size()
        + " pages, "
        + lines
        + " texts, "
        + glyphs
        + " glyphs, "
        + strokes
        + " paths";
  }
}
