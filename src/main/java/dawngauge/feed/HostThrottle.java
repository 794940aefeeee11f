package dawngauge.feed;

import dawngauge.problem.Problem;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How one host is treated: questions at a pace, none while it is left alone, and no more of a
 * refresh spent on it than its share.
 */
final class HostThrottle {

  /** No host, however broken, is left alone longer than this without a new try. */
  static final Duration LONGEST_REST = Duration.ofHours(1);

  /** What an answer may take before it counts as waiting; ours, no source. */
  static final Duration QUICK = Duration.ofSeconds(2);

  /** So many questions in a row without an answer, and the host is left alone; ours. */
  private static final int MOST_FAILURES = 2;

  private final Clock clock;
  private final Duration pace;
  private Duration waited = Duration.ZERO;
  private int failures;
  private Instant free = Instant.MIN;
  private Instant until = Instant.MIN;
  private @Nullable Problem reason;

  HostThrottle(Clock clock, Duration pace) {
    this.clock = clock;
    this.pace = pace;
  }

  /** Books the next turn. Returns how long to wait for it; zero or more. */
  synchronized Duration takeTurn() {
    Instant now = clock.instant();
    boolean setBack = free.isAfter(now.plus(LONGEST_REST));
    Instant turn = free.isAfter(now) && !setBack ? free : now;
    free = turn.plus(pace);
    return Duration.between(now, turn);
  }

  /** A refresh begins: what the host cost before is forgotten. */
  synchronized void begin() {
    waited = Duration.ZERO;
  }

  /** Time went by for the host: all of it counts without an answer, else what was not quick. */
  synchronized void took(Duration length, boolean answered) {
    Duration counted = answered ? length.minus(QUICK) : length;
    waited = counted.isNegative() ? waited : waited.plus(counted);
  }

  /** What the host has cost since the refresh began. */
  synchronized Duration waited() {
    return waited;
  }

  /** A question was answered. */
  synchronized void answered() {
    failures = 0;
  }

  /** A question came to nothing, for a reason that is the host's. */
  synchronized void failed(Duration rest, Problem why) {
    failures++;
    if (failures >= MOST_FAILURES && resting() == null) {
      rest(rest, why);
    }
  }

  /** Leaves the host alone for a while. */
  synchronized void rest(Duration length, Problem why) {
    until = clock.instant().plus(length.compareTo(LONGEST_REST) < 0 ? length : LONGEST_REST);
    reason = why;
  }

  /** Why the host is left alone now, or null. */
  synchronized @Nullable Problem resting() {
    Instant now = clock.instant();
    boolean setBack = until.isAfter(now.plus(LONGEST_REST));
    return now.isBefore(until) && !setBack ? reason : null;
  }
}
