package dawngauge.feed;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** What is left of the time that one refresh of all places may take. */
final class RefreshBudget {
  private final Clock clock;
  private final Duration whole;
  private @Nullable Instant begun;

  RefreshBudget(Clock clock, Duration whole) {
    this.clock = clock;
    this.whole = whole;
  }

  /** A refresh begins now. */
  synchronized void begin() {
    begun = clock.instant();
  }

  /** What is left; all of it before any refresh began, or where the clock was set back since. */
  synchronized Duration left() {
    Duration spent = begun == null ? Duration.ZERO : Duration.between(begun, clock.instant());
    return spent.isNegative() ? whole : whole.minus(spent);
  }

  Duration whole() {
    return whole;
  }
}
