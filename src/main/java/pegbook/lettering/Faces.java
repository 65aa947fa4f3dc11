package pegbook.lettering;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The packet's fonts, each parsed once, when first asked for. May be shared between threads.
 *
 * <p>Ligatures are off: a ligature glyph carries no text, so that what is printed could not be
 * searched or read aloud.
 */
public final class Faces {
  private final Function<String, byte[]> files;
  private final Map<Face, TrueTypeFont> parsed = new EnumMap<>(Face.class);

  /**
   * Fonts read from files.
   *
   * @param files gives the bytes of a file by its path in the templates folder
   */
  public Faces(Function<String, byte[]> files) {
    this.files = files;
  }

  /** A run of characters that one face can print. */
  public record Run(Face face, String text) {}

  /**
   * The parsed font of a face.
   *
   * @throws UncheckedIOException when the file is not a TrueType font
   */
  public synchronized TrueTypeFont font(Face face) {
    return parsed.computeIfAbsent(face, this::parse);
  }

  private TrueTypeFont parse(Face face) {
    try {
      TrueTypeFont font =
          new TTFParser().parse(new RandomAccessReadBuffer(files.apply(face.path())));
      font.setEnableGsub(false);
      return font;
    } catch (IOException broken) {
      throw new UncheckedIOException(face.path() + ": " + broken.getMessage(), broken);
    }
  }

  /** The face that prints a character: the wanted one, else its stand-in, else none. */
  public Optional<Face> faceFor(int codePoint, Face wanted) {
    if (!readsLeftToRight(codePoint)) {
      return Optional.empty();
    }
    if (glyph(codePoint, wanted) != 0) {
      return Optional.of(wanted);
    }
    Face standIn = wanted.standIn();
    return glyph(codePoint, standIn) == 0 ? Optional.empty() : Optional.of(standIn);
  }

  /** Nothing here joins or turns round letters, so a script that needs it is not printable. */
  private static boolean readsLeftToRight(int codePoint) {
    if (Character.isISOControl(codePoint)) {
      return false;
    }
    return switch (Character.getDirectionality(codePoint)) {
      case Character.DIRECTIONALITY_RIGHT_TO_LEFT,
          Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC,
          Character.DIRECTIONALITY_ARABIC_NUMBER,
          Character.DIRECTIONALITY_RIGHT_TO_LEFT_EMBEDDING,
          Character.DIRECTIONALITY_RIGHT_TO_LEFT_OVERRIDE,
          Character.DIRECTIONALITY_RIGHT_TO_LEFT_ISOLATE ->
          false;
      default -> true;
    };
  }

  /**
   * Cuts a line into runs of one face each.
   *
   * @throws IllegalArgumentException when a character is in none of the fonts; names the character
   */
  public List<Run> runs(String text, Face wanted) {
    List<Run> runs = new ArrayList<>();
    StringBuilder run = new StringBuilder();
    Face current = wanted;
    for (int point : text.codePoints().toArray()) {
      Face face = faceOf(point, wanted);
      if (face != current && !run.isEmpty()) {
        runs.add(new Run(current, run.toString()));
        run.setLength(0);
      }
      current = face;
      run.appendCodePoint(point);
    }
    if (!run.isEmpty()) {
      runs.add(new Run(current, run.toString()));
    }
    return runs;
  }

  private Face faceOf(int codePoint, Face wanted) {
    return faceFor(codePoint, wanted)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no font of the packet can print the character " + nameOf(codePoint)));
  }

  /** A character as a reader can look it up: its code and its name. */
  public static String nameOf(int codePoint) {
    String name = Character.getName(codePoint);
    String code = "U+" + String.format(Locale.ROOT, "%04X", codePoint);
    return name == null ? code : code + " " + name;
  }

  /** Advance of one character in thousandths of the type's height, as the PDF states it. */
  long advance(int codePoint, Face face) {
    TrueTypeFont font = font(face);
    try {
      int advance = font.getAdvanceWidth(glyph(codePoint, face));
      return Math.round(advance * 1000.0 / font.getUnitsPerEm());
    } catch (IOException broken) {
      throw new UncheckedIOException(face.path(), broken);
    }
  }

  private int glyph(int codePoint, Face face) {
    try {
      CmapLookup characters = font(face).getUnicodeCmapLookup();
      return characters.getGlyphId(codePoint);
    } catch (IOException broken) {
      throw new UncheckedIOException(face.path(), broken);
    }
  }
}
