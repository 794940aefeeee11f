package dawngauge.trip;

import java.util.List;

/**
 * What a page for the phone sent back, as it was typed there; nothing of it is judged yet.
 *
 * @param fingerprint of the trip that the page was made of
 * @param entries in the order in which they were typed
 */
public record Taken(String fingerprint, List<Entry> entries) {

  /** What the text that comes back says it is. */
  public static final String FORMAT = "dawngauge taken";

  /** Raised by a change that breaks what is sent back. */
  public static final int VERSION = 1;

  /** No note on the way is longer, in characters. */
  public static final int LONGEST_NOTE = 200;

  /** Copies the list. */
  public Taken {
    entries = List.copyOf(entries);
  }

  /**
   * One thing typed; texts that it lacks are empty.
   *
   * @param kind reading, set or note
   * @param stop id of the stop
   * @param tire id of the tire
   * @param at by the clock of the stop, "2027-04-06T05:15"
   * @param figure what was read, or set, with its unit
   * @param gauge name of the gauge
   * @param state how warm the tire was
   * @param text of a note
   */
  public record Entry(
      String kind,
      String stop,
      String tire,
      String at,
      String figure,
      String gauge,
      String state,
      String text) {}
}
