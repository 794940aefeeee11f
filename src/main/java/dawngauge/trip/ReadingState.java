package dawngauge.trip;

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

  private final String word;

  ReadingState(String word) {
    this.word = word;
  }

  /** Its name in files and sentences. */
  public String word() {
    return word;
  }
}
