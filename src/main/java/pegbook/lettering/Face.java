package pegbook.lettering;

/** The faces a packet is printed in. The symbols stand in for what the text faces lack. */
public enum Face {
  REGULAR("SourceSans3-Regular.ttf"),
  BOLD("SourceSans3-Bold.ttf"),
  ITALIC("SourceSans3-Italic.ttf"),
  SYMBOLS("DejaVuSans.ttf"),
  SYMBOLS_BOLD("DejaVuSans-Bold.ttf");

  private final String fileName;

  Face(String fileName) {
    this.fileName = fileName;
  }

  /** Path of the font inside the templates folder. */
  public String path() {
    return "fonts/" + fileName;
  }

  /** The face that is asked when this one lacks a character. */
  Face standIn() {
    return this == BOLD || this == SYMBOLS_BOLD ? SYMBOLS_BOLD : SYMBOLS;
  }
}
