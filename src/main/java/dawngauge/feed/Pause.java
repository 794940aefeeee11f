package dawngauge.feed;

import java.time.Duration;

/** Lets time pass; handed in, so that tests need not wait. */
@FunctionalInterface
public interface Pause {

  /**
   * Returns after that long.
   *
   * @param length above zero
   * @throws InterruptedException if the thread is interrupted meanwhile
   */
  void of(Duration length) throws InterruptedException;
}
