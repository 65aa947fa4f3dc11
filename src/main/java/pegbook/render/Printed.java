package pegbook.render;

/** A printed document. */
public final class Printed {
  private final byte[] bytes;
  private final int pages;

  Printed(byte[] bytes, int pages) {
    this.bytes = bytes;
    this.pages = pages;
  }

  /** The PDF; not a copy. */
  public byte[] bytes() {
    return bytes;
  }

  public int pages() {
    return pages;
  }
}
