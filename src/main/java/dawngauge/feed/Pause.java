package dawngauge.feed;

import java.time.Duration;

/** Lets time pass; handed in, so that tests need not wait. */
@FunctionalInterface
public interface Pause {

  /** Waits. */
  Pause WAITING = length -> Thread.sleep(Math.max(1, length.toMillis()));

  /**
   * Returns after that long.
   *
   * @param length above zero
   * @throws InterruptedException if the thread is interrupted meanwhile
   */
  void of(Duration length) throws InterruptedException;
}
