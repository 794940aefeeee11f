package dawngauge.feed;

import java.time.Instant;

/**
 * One temperature that a service gave.
 *
 * @param start first moment for which it holds
 * @param end first moment for which it holds no more; equal to the start if it is of one moment
 * @param kelvins temperature of the air
 */
record Span(Instant start, Instant end, double kelvins) {

  /** The same, ending where another begins. */
  Span until(Instant next) {
    return end.isAfter(next) ? new Span(start, next, kelvins) : this;
  }
}
