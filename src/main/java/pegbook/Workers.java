package pegbook;

import java.time.Duration;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;

/**
 * Threads that take tasks in order, each task for so long at most.
 *
 * <p>A thread cannot be ended from outside. One whose task's time is over is asked to end, left
 * alone and replaced; what its task still gives is dropped. All of them end with the process.
 */
final class Workers implements AutoCloseable {
  /** The layout library calls itself for each box in a box. */
  static final long STACK_BYTES = 8L << 20;

  private final Duration limit;
  private final int threads;
  private final Queue<Task<?>> tasks = new ConcurrentLinkedQueue<>();
  private final ScheduledExecutorService clock =
      Executors.newSingleThreadScheduledExecutor(work -> daemon(work, "pegbook-clock"));

  Workers(int threads, Duration limit) {
    this.threads = threads;
    this.limit = limit;
  }

  /** What is to be done. */
  interface Work<T> {
    /**
     * Does it.
     *
     * @param mayFinish asked once, before anything is written: true from then on no time limit
     *     counts, false when the time was over before
     */
    T get(BooleanSupplier mayFinish);
  }

  /** Where a task stands. */
  private enum State {
    RUNNING,
    FINISHING,
    GIVEN_UP
  }

  /** A task that was handed over. */
  static final class Task<T> {
    private final Work<T> work;
    private final CompletableFuture<Optional<T>> result = new CompletableFuture<>();
    private final AtomicReference<State> state = new AtomicReference<>(State.RUNNING);

    private Task(Work<T> work) {
      this.work = work;
    }

    /**
     * Waits for what it gives; none when its time was over.
     *
     * @throws ExecutionException with what it threw
     */
    Optional<T> get() throws ExecutionException, InterruptedException {
      return result.get();
    }

    private boolean mayFinish() {
      return state.compareAndSet(State.RUNNING, State.FINISHING);
    }

    private boolean isGivenUp() {
      boolean givenUp = state.compareAndSet(State.RUNNING, State.GIVEN_UP);
      if (givenUp) {
        result.complete(Optional.empty());
      }
      return givenUp;
    }

    private void run() {
      try {
        result.complete(Optional.of(work.get(this::mayFinish)));
      } catch (Throwable failed) {
        result.completeExceptionally(failed);
      }
      mayFinish();
    }
  }

  /** Hands a task over. */
  <T> Task<T> add(Work<T> work) {
    Task<T> task = new Task<>(work);
    tasks.add(task);
    return task;
  }

  /** Begins with the tasks that were handed over. */
  void start() {
    for (int thread = 0; thread < threads; thread++) {
      startOne();
    }
  }

  private void startOne() {
    daemon(this::takeTasks, "pegbook-worker").start();
  }

  private void takeTasks() {
    for (Task<?> task = tasks.poll(); task != null; task = tasks.poll()) {
      Thread thread = Thread.currentThread();
      Task<?> timed = task;
      ScheduledFuture<?> alarm =
          clock.schedule(
              () -> {
                if (timed.isGivenUp()) {
                  thread.interrupt();
                  startOne();
                }
              },
              limit.toMillis(),
              TimeUnit.MILLISECONDS);
      task.run();
      alarm.cancel(false);
      if (task.state.get() == State.GIVEN_UP) {
        return;
      }
    }
  }

  private static Thread daemon(Runnable work, String name) {
    Thread thread = new Thread(null, work, name, STACK_BYTES);
    thread.setDaemon(true);
    return thread;
  }

  @Override
  public void close() {
    tasks.clear();
    clock.shutdownNow();
  }
}
