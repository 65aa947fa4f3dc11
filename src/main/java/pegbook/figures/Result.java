package pegbook.figures;

import java.util.List;
import pegbook.published.Citation;

/** What every calculator's result carries beside its figures. */
public interface Result {
  /** What the reader must act on. */
  List<Finding> findings();

  /** The steps by which the deciding figures were come by, in reading order. */
  List<Working> workings();

  /** What must be bought for it. */
  default List<Need> needs() {
    return List.of();
  }

  /** What it leans on beside the sources of its findings and workings: tables, notes. */
  default List<Citation> sources() {
    return List.of();
  }

  /** What must be done for it. */
  default List<Task> tasks() {
    return List.of();
  }
}
