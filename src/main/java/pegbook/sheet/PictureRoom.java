package pegbook.sheet;

import pegbook.packet.Packet;

/**
 * Where a picture of all marks stands: beside words when the marks are few, across the page when
 * they are many and their names need the room.
 *
 * @param beside whether it stands beside words
 * @param widthMm how wide it is
 */
record PictureRoom(boolean beside, double widthMm) {
  /** As many names as half a page's width takes; found by looking at pages. */
  private static final int FEW = 12;

  /** The picture's share of the page; the words beside it take the rest. */
  private static final double SHARE = 0.42;

  /** What the columns keep apart by. */
  private static final double GAP_MM = 4;

  static PictureRoom of(Packet packet, Writing writing) {
    double page = writing.page().widthMm();
    boolean beside = packet.placement().marks().size() <= FEW;
    return new PictureRoom(beside, beside ? Math.floor(SHARE * page) - GAP_MM : page);
  }
}
