package dawngauge.advice;

import java.time.Instant;
import java.util.EnumSet;
import java.util.Set;

/**
 * When the crew is to look at the tires.
 *
 * @param visit index of the stop
 * @param start when to begin
 * @param end when it should be done
 * @param cold whether the tires are cold then; where they are not before a day's start, no cold
 *     reading is possible at that stop
 * @param reasons why then
 */
public record Reminder(int visit, Instant start, Instant end, boolean cold, Set<Why> reasons) {

  /** Why the tires are to be looked at. */
  public enum Why {
    /** Before a day's first start. */
    BEFORE_START,
    /** The first stop after it. */
    FIRST_STOP,
    /** The first stop after air was added or let out. */
    AFTER_SETTING,
    /** Air is to be added or let out there. */
    SET_HERE,
    /** A wheel was changed, and has run 50 miles since. */
    WHEEL_CHANGED
  }

  /** Copies the set. */
  public Reminder {
    reasons = reasons.isEmpty() ? Set.of() : Set.copyOf(EnumSet.copyOf(reasons));
  }
}
