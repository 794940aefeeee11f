package dawngauge.ui.common;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;

/** Work off the window's thread, one thing after the other; no other class starts a thread. */
public final class Tasks {

  private static final ExecutorService WORKER =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "dawngauge-work");
            thread.setDaemon(true);
            return thread;
          });

  private Tasks() {}

  /**
   * Computes something in the background.
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
}
