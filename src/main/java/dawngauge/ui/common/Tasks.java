package dawngauge.ui.common;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ThreadFactory;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.application.Platform;

/**
 * Work off the window's thread; no other class starts a thread. What goes wrong there is always
 * kept, and told to the one who asked.
 */
public final class Tasks {

  private static final ExecutorService WORKER =
      Executors.newSingleThreadExecutor(named("dawngauge-work"));

  private static final ExecutorService LONG =
      Executors.newCachedThreadPool(named("dawngauge-long-work"));

  private static volatile Consumer<Throwable> keeper = failure -> {};

  private Tasks() {}

  /** Keeps each failure of work from now on. */
  public static void keepFailures(Consumer<Throwable> kept) {
    keeper = kept;
  }

  /** Tells what is thrown on any thread and caught by nobody. */
  public static void onUncaught(Consumer<Throwable> told) {
    Thread.setDefaultUncaughtExceptionHandler((thread, failure) -> told.accept(failure));
  }

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
   * Begins work whose result somebody asks for later, also before the toolkit has started. What
   * goes wrong is thrown again where it is asked for.
   */
  public static void ahead(Runnable work) {
    LONG.execute(
        () -> {
          try {
            work.run();
          } catch (RuntimeException again) {
            keeper.accept(again);
          }
        });
  }

  /** Work that somebody waits for. */
  public static final class Begun {
    private final Future<?> work;

    private Begun(Future<?> work) {
      this.work = work;
    }

    /** Waits for its end; whether it went well. */
    public boolean isDone() {
      try {
        work.get();
        return true;
      } catch (ExecutionException wrong) {
        return false;
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return false;
      }
    }
  }

  /** Begins work whose end somebody waits for. */
  public static Begun begin(Runnable work) {
    return new Begun(LONG.submit(work));
  }

  /**
   * Computes something short in the background, one thing after the other.
   *
   * @param work what is computed
   * @param taker takes the result on the window's thread
   * @param failed told on the window's thread what went wrong
   */
  public static <T> void compute(
      Supplier<T> work, Consumer<T> taker, Consumer<RuntimeException> failed) {
    WORKER.execute(() -> done(new Job(), work, taker, failed));
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
    LONG.execute(() -> done(job, () -> work.apply(job), taker, failed));
    return job;
  }

  private static <T> void done(
      Job job, Supplier<T> work, Consumer<T> taker, Consumer<RuntimeException> failed) {
    try {
      T result = work.get();
      end(job, () -> taker.accept(result));
    } catch (RuntimeException wrong) {
      keeper.accept(wrong);
      end(job, () -> failed.accept(wrong));
    } catch (Error wrong) {
      keeper.accept(wrong);
      end(job, () -> failed.accept(new IllegalStateException(wrong)));
    }
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
