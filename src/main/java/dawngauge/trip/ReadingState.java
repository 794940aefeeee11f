package dawngauge.trip;

import java.time.Duration;

/** How warm a tire was when it was read. */
public enum ReadingState {
  /** Parked at least three hours or driven under a mile, in shade or before sun reached it. */
  COLD("cold"),
  /** As cold, but the sun was on it. */
  COLD_IN_SUN("cold, in sun"),
  /** Warm from running. */
  WARM("warm"),
  /** Filled within the last ten minutes. */
  JUST_FILLED("just filled");

  /** Parked so long a tire counts as cold (NHTSA consumer text). */
  public static final Duration COLD_AFTER = Duration.ofHours(3);

  private final String word;

  ReadingState(String word) {
    this.word = word;
  }

  /** Its name in files and sentences. */
  public String word() {
    return word;
  }
}
