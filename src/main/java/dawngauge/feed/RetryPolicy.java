package dawngauge.feed;

import dawngauge.feed.Reply.Trouble;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ThreadLocalRandom;
import okhttp3.HttpUrl;
import org.jspecify.annotations.Nullable;

/** When to ask, when to ask again, and when to leave a service alone. */
final class RetryPolicy {

  /** With less than this left nothing is begun. */
  private static final Duration LEAST = Duration.ofMillis(50);

  /** These say nothing of how the host will answer the next question. */
  private static final Set<ProblemCode> NOT_ITS_FAULT =
      EnumSet.of(
          ProblemCode.FEED_OUTSIDE_AREA,
          ProblemCode.FEED_NO_TEMPERATURE,
          ProblemCode.FEED_CANCELLED,
          ProblemCode.FEED_TIME_OVER);

  private final Calls calls;
  private final HttpLimits limits;
  private final Clock clock;
  private final Pause pause;
  private final RefreshBudget budget;
  private final Map<String, HostThrottle> hosts = new ConcurrentHashMap<>();

  RetryPolicy(Calls calls, HttpLimits limits, Clock clock, Pause pause) {
    this.calls = calls;
    this.limits = limits;
    this.clock = clock;
    this.pause = pause;
    this.budget = new RefreshBudget(clock, limits.refresh());
  }

  /** An answer or a redirect, from what is kept or from the service; else why there is none. */
  Outcome<Reply> ask(Question question, HttpUrl url) throws InterruptedException {
    Reply kept = question.anew() ? null : calls.kept(url, question.accept());
    if (kept != null) {
      Problem wrong = wrong(question, kept, 1);
      return wrong == null ? Outcome.of(kept) : Outcome.failed(wrong);
    }
    HostThrottle throttle = throttle(question.service(), url);
    for (int attempt = 1; ; attempt++) {
      Problem not = notNow(question, throttle);
      if (not != null) {
        return Outcome.failed(not);
      }
      sleep(throttle.takeTurn());
      Duration most = left(throttle);
      Instant asked = clock.instant();
      Reply reply = calls.ask(question, url, most);
      Problem wrong = wrong(question, reply, attempt);
      throttle.took(Duration.between(asked, clock.instant()), wrong == null);
      if (wrong == null) {
        return Outcome.of(reply);
      } else if (reply.trouble() == Trouble.TIMEOUT && isSpent(budget.left())) {
        return Outcome.failed(over(question));
      }
      Duration said = reply.retryAfter(clock.instant());
      Duration wait = said == null ? varied(attempt) : said;
      Duration longest = shorter(limits.longestWait(), left(throttle));
      boolean again = reply.mayPass() && attempt < question.attempts();
      boolean tooLong = reply.mayPass() && said != null && said.compareTo(longest) > 0;
      if (!again || wait.compareTo(longest) > 0) {
        return Outcome.failed(
            leaveAlone(
                throttle,
                reply,
                said,
                tooLong ? busy(question, clock.instant().plus(wait)) : wrong));
      }
      sleep(wait);
      throttle.took(wait, false);
    }
  }

  /** A refresh of all places begins. */
  void begin() {
    budget.begin();
    hosts.values().forEach(HostThrottle::begin);
  }

  /** What came of a question in the end; whoever gives nothing of use again is left alone. */
  void tell(String service, HttpUrl url, @Nullable Problem wrong) {
    HostThrottle throttle = throttle(service, url);
    if (wrong == null) {
      throttle.answered();
    } else if (!NOT_ITS_FAULT.contains(wrong.code())) {
      throttle.failed(limits.rest(), wrong);
    }
  }

  /** By service too: where one mirror has both, the faults of one are not those of the other. */
  private HostThrottle throttle(String service, HttpUrl url) {
    return hosts.computeIfAbsent(
        service + " " + url.host() + ":" + url.port(),
        host -> new HostThrottle(clock, limits.pace()));
  }

  /** Why a host is not asked now, or null. */
  private @Nullable Problem notNow(Question question, HostThrottle throttle) {
    Problem resting = throttle.resting();
    if (resting != null) {
      return resting;
    } else if (isSpent(budget.left())) {
      return over(question);
    } else if (isSpent(left(throttle))) {
      Problem slow =
          Problem.of(
              ProblemCode.FEED_SLOW,
              "",
              question.service(),
              String.valueOf(Math.max(1, throttle.waited().toSeconds())),
              UtcText.of(clock.instant().plus(limits.rest())));
      throttle.rest(limits.rest(), slow);
      return slow;
    }
    return null;
  }

  private Problem over(Question question) {
    return Problem.of(
        ProblemCode.FEED_TIME_OVER,
        "",
        question.service(),
        String.valueOf(Math.max(1, budget.whole().toSeconds())));
  }

  /** What a host may still take of this refresh. */
  private Duration left(HostThrottle throttle) {
    return shorter(budget.left(), limits.host().minus(throttle.waited()));
  }

  private static boolean isSpent(Duration left) {
    return left.compareTo(LEAST) <= 0;
  }

  private static Duration shorter(Duration a, Duration b) {
    return a.compareTo(b) < 0 ? a : b;
  }

  /** Leaves a host alone that would fail again; returns why. */
  private Problem leaveAlone(
      HostThrottle throttle, Reply reply, @Nullable Duration asked, Problem why) {
    Trouble trouble = reply.trouble();
    if (why.code() == ProblemCode.FEED_BUSY) {
      throttle.rest(asked == null ? limits.rest() : asked, why);
    } else if (why.code() == ProblemCode.FEED_DENIED || (trouble != null && trouble.ofHost())) {
      throttle.rest(limits.rest(), why);
    }
    return why;
  }

  /** What is wrong with a reply, or null. */
  private @Nullable Problem wrong(Question question, Reply reply, int attempt) {
    String service = question.service();
    Trouble trouble = reply.trouble();
    if (trouble == Trouble.TOO_LARGE) {
      String most = String.valueOf(Math.max(1, limits.answerBytes() >> 20));
      return Problem.of(ProblemCode.FEED_TOO_LARGE, "", service, most);
    } else if (trouble != null) {
      return Problem.of(ProblemCode.FEED_UNREACHABLE, "", service, trouble.words());
    } else if (reply.isAnswer() || reply.isRedirect()) {
      return null;
    }
    String status = String.valueOf(reply.status());
    return switch (reply.status()) {
      case 401, 403 -> Problem.of(ProblemCode.FEED_DENIED, "", service, status);
      case 404, 422 -> Problem.of(ProblemCode.FEED_OUTSIDE_AREA, "", service, status);
      case 429 -> busy(question, busyUntil(reply));
      default ->
          reply.status() >= 500
              ? Problem.of(ProblemCode.FEED_FAILED, "", service, status, String.valueOf(attempt))
              : Problem.of(ProblemCode.FEED_REJECTED, "", service, status);
    };
  }

  private static Problem busy(Question question, Instant until) {
    return Problem.of(ProblemCode.FEED_BUSY, "", question.service(), UtcText.of(until));
  }

  private Instant busyUntil(Reply reply) {
    Instant now = clock.instant();
    Duration asked = reply.retryAfter(now);
    return now.plus(asked == null ? limits.rest() : asked);
  }

  /** The pause after so many attempts: doubled each time, between half and one and a half of it. */
  private Duration varied(int attempt) {
    double factor =
        (1 << Math.min(attempt - 1, 10)) * (0.5 + ThreadLocalRandom.current().nextDouble());
    return Duration.ofMillis(Math.round(limits.retryPause().toMillis() * factor));
  }

  private void sleep(Duration length) throws InterruptedException {
    if (!length.isZero()) {
      pause.of(length);
    }
  }
}
