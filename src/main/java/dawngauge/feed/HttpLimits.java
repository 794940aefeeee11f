package dawngauge.feed;

import java.time.Duration;

/**
 * How patient, polite and careful the way out is.
 *
 * @param connect longest wait for a connection
 * @param read longest silence while an answer comes in
 * @param whole longest time for one question and its answer
 * @param refresh longest time for one refresh of all places; what is left then is told
 * @param host most of that time that one host may cost by failing or by answering slowly
 * @param pace shortest time between the starts of two questions to one host
 * @param parallel most questions under way to one host
 * @param attempts how often a question is asked while the service has faults of its own
 * @param retryPause pause before the second time, doubled for each further one, varied by half
 * @param longestWait longest that a service may ask us to wait before we give up for now
 * @param rest how long a host that failed is left alone
 * @param reuse how long an answer is used again without asking, whatever the service says
 * @param answerBytes most of one answer that is read, unpacked
 * @param cacheBytes most that the answers kept on disk may take
 */
public record HttpLimits(
    Duration connect,
    Duration read,
    Duration whole,
    Duration refresh,
    Duration host,
    Duration pace,
    int parallel,
    int attempts,
    Duration retryPause,
    Duration longestWait,
    Duration rest,
    Duration reuse,
    int answerBytes,
    long cacheBytes) {

  /** Refuses limits that limit nothing. */
  public HttpLimits {
    for (Duration limit :
        new Duration[] {connect, read, whole, refresh, host, retryPause, longestWait, rest}) {
      if (limit.isNegative() || limit.isZero()) {
        throw new IllegalArgumentException(limit + " is not above zero");
      }
    }
    if (pace.isNegative() || reuse.isNegative()) {
      throw new IllegalArgumentException("pace " + pace + " or reuse " + reuse + " is below zero");
    }
    if (parallel < 1 || attempts < 1 || answerBytes < 1 || cacheBytes < 1) {
      throw new IllegalArgumentException("each number is at least one");
    }
  }
}
