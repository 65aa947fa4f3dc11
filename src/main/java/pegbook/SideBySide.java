package pegbook;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

/** Does the same with each item of a list, on a few threads at a time. */
final class SideBySide {
  private SideBySide() {}

  /**
   * What a function gives for each item, in their order; the items are begun in their order, so
   * that the longest should stand first. What it throws first is thrown.
   *
   * @param threads how many at a time, this thread among them
   */
  static <T, R> List<R> of(List<T> items, int threads, Function<T, R> work) {
    List<FutureTask<R>> tasks = new ArrayList<>();
    for (T item : items) {
      tasks.add(new FutureTask<>(() -> work.apply(item)));
    }
    AtomicInteger next = new AtomicInteger();
    Runnable takeTasks =
        () -> {
          for (int at = next.getAndIncrement(); at < tasks.size(); at = next.getAndIncrement()) {
            tasks.get(at).run();
          }
        };
    List<Thread> others = new ArrayList<>();
    for (int thread = 1; thread < Math.min(threads, items.size()); thread++) {
      Thread other = new Thread(null, takeTasks, "pegbook-document", Workers.STACK_BYTES);
      other.setDaemon(true);
      other.start();
      others.add(other);
    }
    takeTasks.run();
    try {
      List<R> results = new ArrayList<>();
      for (FutureTask<R> task : tasks) {
        results.add(task.get());
      }
      return results;
    } catch (InterruptedException stopped) {
      others.forEach(Thread::interrupt);
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped", stopped);
    } catch (ExecutionException failed) {
      next.set(tasks.size());
      if (failed.getCause() instanceof RuntimeException thrown) {
        throw thrown;
      }
      if (failed.getCause() instanceof Error thrown) {
        throw thrown;
      }
      throw new IllegalStateException(failed);
    }
  }
}
