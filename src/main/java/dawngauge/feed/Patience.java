package dawngauge.feed;

import dawngauge.feed.Reply.Trouble;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ThreadLocalRandom;
import okhttp3.HttpUrl;
import org.jspecify.annotations.Nullable;

/** When to ask, when to ask again, and when to leave a service alone. */
final class Patience {
  private final Calls calls;
  private final HttpLimits limits;
  private final Clock clock;
  private final Pause pause;
  private final Map<String, Manners> hosts = new ConcurrentHashMap<>();

  Patience(Calls calls, HttpLimits limits, Clock clock, Pause pause) {
    this.calls = calls;
    this.limits = limits;
    this.clock = clock;
    this.pause = pause;
  }

  /** An answer or a redirect, from what is kept or from the service; else why there is none. */
  Outcome<Reply> ask(Question question, HttpUrl url) throws InterruptedException {
    Reply kept = question.anew() ? null : calls.kept(url, question.accept());
    if (kept != null) {
      Problem wrong = wrong(question, kept, 1);
      return wrong == null ? Outcome.of(kept) : Outcome.failed(wrong);
    }
    Manners manners =
        hosts.computeIfAbsent(
            url.host() + ":" + url.port(), host -> new Manners(clock, limits.pace()));
    for (int attempt = 1; ; attempt++) {
      Problem resting = manners.resting();
      if (resting != null) {
        return Outcome.failed(resting);
      }
      sleep(manners.takeTurn());
      Reply reply = calls.ask(url, question.accept(), question.anew());
      Problem wrong = wrong(question, reply, attempt);
      if (wrong == null) {
        return Outcome.of(reply);
      }
      Duration asked = reply.retryAfter(clock.instant());
      boolean again = reply.mayPass() && attempt < question.attempts();
      if (!again || (asked != null && asked.compareTo(limits.longestWait()) > 0)) {
        leaveAlone(manners, reply, asked, wrong);
        return Outcome.failed(wrong);
      }
      sleep(asked == null ? varied(attempt) : asked);
    }
  }

  private void leaveAlone(Manners manners, Reply reply, @Nullable Duration asked, Problem wrong) {
    Trouble trouble = reply.trouble();
    if (reply.status() == 429) {
      manners.rest(asked == null ? limits.rest() : asked, wrong);
    } else if (reply.status() == 401
        || reply.status() == 403
        || (trouble != null && trouble.ofHost())) {
      manners.rest(limits.rest(), wrong);
    }
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
      case 429 -> Problem.of(ProblemCode.FEED_BUSY, "", service, UtcText.of(busyUntil(reply)));
      default ->
          reply.status() >= 500
              ? Problem.of(ProblemCode.FEED_FAILED, "", service, status, String.valueOf(attempt))
              : Problem.of(ProblemCode.FEED_REJECTED, "", service, status);
    };
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
