package dawngauge.advice;

/** What is to be done about a tire at a stop, weakest first. */
public enum Mark {
  /** Nothing. */
  CLEAR("clear"),
  /** Nothing can be said: a figure that it needs is missing. */
  UNKNOWN("not known"),
  /** A reading is worth taking. */
  RECHECK("re-check"),
  /** Air is to be added or let out. */
  ADJUST("adjust"),
  /** Do not roll. */
  HOLD("hold");

  private final String word;

  Mark(String word) {
    this.word = word;
  }

  /** Its word, shown wherever the mark is. */
  public String word() {
    return word;
  }

  /** The stronger of two. */
  public static Mark stronger(Mark a, Mark b) {
    return a.compareTo(b) >= 0 ? a : b;
  }
}
