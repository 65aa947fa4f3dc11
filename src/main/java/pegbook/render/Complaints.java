package pegbook.render;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the libraries complain of while a document is made on this thread. They only log; here a
 * complaint is a failure, because each means that something is not printed as it was meant.
 */
final class Complaints implements AutoCloseable {
  private static final ThreadLocal<@Nullable Complaints> CURRENT = new ThreadLocal<>();

  private final List<String> complaints = new ArrayList<>();

  private Complaints() {}

  /** Starts to listen on this thread; closing ends it. */
  static Complaints listen() {
    Complaints listener = new Complaints();
    CURRENT.set(listener);
    return listener;
  }

  /** Notes a complaint of whatever runs on this thread; dropped when nobody listens. */
  static void heard(String complaint) {
    Complaints listener = CURRENT.get();
    if (listener != null) {
      listener.add(complaint);
    }
  }

  void add(String complaint) {
    complaints.add(complaint);
  }

  /**
   * Passes when there was no complaint.
   *
   * @throws RenderException that tells them all
   */
  void refuse(String where) {
    if (!complaints.isEmpty()) {
      throw new RenderException(where, String.join("; ", complaints.stream().distinct().toList()));
    }
  }

  @Override
  public void close() {
    CURRENT.remove();
  }
}
