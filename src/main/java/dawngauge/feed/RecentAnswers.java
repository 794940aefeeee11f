package dawngauge.feed;

import dawngauge.problem.Outcome;
import dawngauge.problem.ProblemCode;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;

/**
 * Answers of the last minutes, so that one refresh asks each thing once, from however many places
 * and threads it is wanted. A failure that may pass is remembered for a shorter time.
 *
 * @param <T> kind of answer
 */
final class RecentAnswers<T> {
  private static final int MOST = 500;

  private final Clock clock;
  private final Duration reuse;
  private final Duration rest;

  private final Map<String, Slot<T>> slots =
      new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Slot<T>> eldest) {
          return size() > MOST;
        }
      };

  RecentAnswers(HttpJson http) {
    this(http.clock(), http.limits().reuse(), http.limits().rest());
  }

  RecentAnswers(Clock clock, Duration reuse, Duration rest) {
    this.clock = clock;
    this.reuse = reuse;
    this.rest = rest;
  }

  /** How a thing is asked. */
  interface Ask<T> {
    Outcome<T> ask() throws InterruptedException;
  }

  /** The answer remembered under a key, or else a new one. Others with the same key wait for it. */
  Outcome<T> get(String key, Ask<T> ask) throws InterruptedException {
    return get(key, false, ask);
  }

  /** A new answer, remembered from now on. */
  Outcome<T> anew(String key, Ask<T> ask) throws InterruptedException {
    return get(key, true, ask);
  }

  private Outcome<T> get(String key, boolean anew, Ask<T> ask) throws InterruptedException {
    Slot<T> slot = slot(key);
    slot.lock.lockInterruptibly();
    try {
      Outcome<T> known = slot.outcome;
      if (anew || known == null || !holds(known, slot.since)) {
        slot.outcome = null;
        known = ask.ask();
        slot.outcome = known;
        slot.since = clock.instant();
      }
      return known;
    } finally {
      slot.lock.unlock();
    }
  }

  private boolean holds(Outcome<T> known, Instant since) {
    if (known.problems().stream().anyMatch(p -> p.code() == ProblemCode.FEED_TIME_OVER)) {
      return false; // the next refresh has its own time
    }
    boolean lasting =
        known.hasValue()
            || known.problems().stream()
                .anyMatch(problem -> problem.code() == ProblemCode.FEED_OUTSIDE_AREA);
    Duration age = Duration.between(since, clock.instant());
    return !age.isNegative() && age.compareTo(lasting ? reuse : rest) < 0;
  }

  private Slot<T> slot(String key) {
    synchronized (slots) {
      return slots.computeIfAbsent(key, absent -> new Slot<>());
    }
  }

  private static final class Slot<T> {
    private final ReentrantLock lock = new ReentrantLock();
    private @Nullable Outcome<T> outcome;
    private Instant since = Instant.MIN;
  }
}
