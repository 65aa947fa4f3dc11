package pegbook.sheet;

import java.util.List;
import pegbook.sheet.drawing.Drawing;

/** One subject of the packet, ready to be placed by its template. */
public interface Sheet {
  /** As its heading, its bookmark and the contents name it. */
  String title();

  /** Every drawing that its template places. */
  default List<Drawing> drawings() {
    return List.of();
  }
}
