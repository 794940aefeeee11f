package dawngauge.feed;

import dawngauge.problem.Problem;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** How one host is treated: questions at a pace, none while it is left alone. */
final class Manners {

  /** No host, however broken, is left alone longer than this without a new try. */
  static final Duration LONGEST_REST = Duration.ofHours(1);

  private final Clock clock;
  private final Duration pace;
  private Instant free = Instant.MIN;
  private Instant until = Instant.MIN;
  private @Nullable Problem reason;

  Manners(Clock clock, Duration pace) {
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
