package dawngauge.ui.common;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ThreadFactory;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.application.Platform;

/** Work off the window's thread; no other class starts a thread. */
public final class Tasks {

  private static final ExecutorService WORKER =
      Executors.newSingleThreadExecutor(named("dawngauge-work"));

  private static final ExecutorService LONG =
      Executors.newCachedThreadPool(named("dawngauge-long-work"));

  private Tasks() {}

  /** Long work that goes on. */
  public static final class Job {
    private volatile boolean givenUp;

    private Job() {}

    /** Gives the work up: nobody is told of its end any more. */
    public void giveUp() {
      givenUp = true;
    }

    /** Whether the work may stop. */
    public boolean isGivenUp() {
      return givenUp;
    }
  }

  /** No work at all. */
  public static Job none() {
    return new Job();
  }

  private static ThreadFactory named(String name) {
    return work -> {
      Thread thread = new Thread(work, name);
      thread.setDaemon(true);
      return thread;
    };
  }

  /**
   * Computes something short in the background, one thing after the other.
   *
   * @param work what is computed
   * @param taker takes the result on the window's thread
   */
  public static <T> void compute(Supplier<T> work, Consumer<T> taker) {
    WORKER.execute(
        () -> {
          T result = work.get();
          Platform.runLater(() -> taker.accept(result));
        });
  }

  /**
   * Does something that may take long, beside everything else.
   *
   * @param work what is done; it looks now and then whether it was given up
   * @param taker takes the result on the window's thread, unless it was given up
   * @param failed told on the window's thread what went wrong, unless it was given up
   */
  public static <T> Job work(
      Function<Job, T> work, Consumer<T> taker, Consumer<RuntimeException> failed) {
    Job job = new Job();
    LONG.execute(
        () -> {
          try {
            T result = work.apply(job);
            end(job, () -> taker.accept(result));
          } catch (RuntimeException wrong) {
            end(job, () -> failed.accept(wrong));
          } catch (StackOverflowError | OutOfMemoryError wrong) {
            end(job, () -> failed.accept(new IllegalStateException(wrong)));
          }
        });
    return job;
  }

  private static void end(Job job, Runnable telling) {
    Platform.runLater(
        () -> {
          if (!job.isGivenUp()) {
            telling.run();
          }
        });
  }
}
