package dawngauge.feed;

import com.fasterxml.jackson.databind.JsonNode;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import okhttp3.HttpUrl;
import org.jspecify.annotations.Nullable;

/**
 * The only way out: asks a service and returns the JSON that it answers, politely, patiently, and
 * only on the service's own host. Every failure is a problem without a place.
 */
final class HttpJson implements AutoCloseable {
  private static final int MOST_REDIRECTS = 3;

  private final Calls calls;
  private final RetryPolicy retries;
  private final HttpLimits limits;
  private final Clock clock;

  HttpJson(
      Consent consent,
      String program,
      HttpLimits limits,
      Path cacheFolder,
      Clock clock,
      Pause pause) {
    calls = new Calls(consent, program, limits, cacheFolder);
    retries = new RetryPolicy(calls, limits, clock, pause);
    this.limits = limits;
    this.clock = clock;
  }

  /** How it asks. */
  HttpLimits limits() {
    return limits;
  }

  /** What tells the time. */
  Clock clock() {
    return clock;
  }

  /** A refresh of all places begins. */
  void begin() {
    retries.begin();
  }

  /** What came of a question to an address in the end, once its answer was read. */
  void tell(String service, HttpUrl url, @Nullable Problem wrong) {
    retries.tell(service, url, wrong);
  }

  /** The answer as a JSON object. */
  Outcome<JsonNode> get(Question question) throws InterruptedException {
    HttpUrl url = question.url();
    for (int redirects = 0; redirects <= MOST_REDIRECTS; redirects++) {
      Outcome<Reply> outcome = retries.ask(question, url);
      Reply reply = outcome.valueOrNull();
      if (reply == null) {
        return Outcome.failed(outcome.problems());
      } else if (!reply.isRedirect()) {
        return read(question, url, reply);
      }
      String location = reply.headers().get("Location");
      HttpUrl next = location == null ? null : url.resolve(location);
      if (next == null || !question.address().isHome(next)) {
        String shown = next == null ? "no address" : next.scheme() + "://" + next.host();
        return failed(question, ProblemCode.FEED_REDIRECTED, PrintableText.of(shown));
      }
      url = next;
    }
    return failed(question, ProblemCode.FEED_REDIRECTED, "one address after the other");
  }

  private Outcome<JsonNode> read(Question question, HttpUrl url, Reply reply) {
    String type = reply.headers().get("Content-Type");
    Optional<JsonNode> tree = JsonBody.tree(reply.body());
    if (tree.isEmpty()) {
      calls.forget(url); // or it would be read again until it expires
      String sent =
          reply.body().size() > 0
              ? "text that is no JSON object"
              : "nothing of use, as \"" + PrintableText.of(type == null ? "" : type) + "\"";
      return failed(question, ProblemCode.FEED_NOT_UNDERSTOOD, sent);
    }
    List<Problem> notes =
        reply.status() == 203
            ? List.of(Problem.of(ProblemCode.FEED_DEPRECATED, "", question.service()))
            : List.of();
    return Outcome.of(tree.get(), notes);
  }

  private static Outcome<JsonNode> failed(Question question, ProblemCode code, String how) {
    return Outcome.failed(Problem.of(code, "", question.service(), how));
  }

  @Override
  public void close() {
    calls.close();
  }
}
