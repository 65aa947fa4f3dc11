package pegbook.sheet.drawing;

/** The packet's colours: black, one grey, and the white that clears what lies under a label. */
public enum Ink {
  BLACK,
  GREY,
  LIGHT,
  WHITE
}
