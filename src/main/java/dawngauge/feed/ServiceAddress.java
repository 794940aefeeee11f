package dawngauge.feed;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.util.Optional;
import java.util.regex.Pattern;
import okhttp3.HttpUrl;
import org.jspecify.annotations.Nullable;

/**
 * Where a service, or a mirror of it, is asked: https, or plain http on this computer.
 *
 * @param text the address, under which the service's own paths follow
 */
public record ServiceAddress(String text) {
  private static final int LONGEST = 1000;
  private static final Pattern LOOPBACK = Pattern.compile("localhost|127(?:\\.\\d{1,3}){3}|::1");

  /** Refuses an address that is not safe to ask. */
  public ServiceAddress {
    if (read(text) == null) {
      throw new IllegalArgumentException("\"" + text + "\" is no address of a service");
    }
  }

  /** The address that somebody typed. */
  public static Outcome<ServiceAddress> parse(String typed) {
    String text = typed.strip();
    return read(text) == null
        ? Outcome.failed(Problem.of(ProblemCode.NOT_A_SERVICE_ADDRESS, "", PrintableText.of(text)))
        : Outcome.of(new ServiceAddress(text));
  }

  private static @Nullable HttpUrl read(String text) {
    HttpUrl url = text.length() > LONGEST ? null : HttpUrl.parse(text);
    boolean safe =
        url != null
            && (url.isHttps() || LOOPBACK.matcher(url.host()).matches())
            && url.username().isEmpty()
            && url.password().isEmpty()
            && url.query() == null
            && url.fragment() == null;
    return safe ? url : null;
  }

  /** The address of a path of the service, which begins without a slash. */
  HttpUrl.Builder path(String path) {
    return base().newBuilder().addEncodedPathSegments(path);
  }

  /** Whether a page lies on this host and port and is asked as safely. */
  boolean isHome(HttpUrl url) {
    HttpUrl base = base();
    return url.scheme().equals(base.scheme())
        && url.host().equals(base.host())
        && url.port() == base.port();
  }

  /**
   * An address that the service gave, kept on our host: a mirror passes on the original's, and no
   * answer can send a question elsewhere.
   */
  Optional<HttpUrl> home(String given) {
    HttpUrl url = given.length() > LONGEST ? null : HttpUrl.parse(given);
    if (url == null) {
      return Optional.empty();
    }
    return Optional.of(
        isHome(url)
            ? url.newBuilder().username("").password("").fragment(null).build()
            : path(url.encodedPath().substring(1)).encodedQuery(url.encodedQuery()).build());
  }

  private HttpUrl base() {
    return HttpUrl.get(text);
  }
}
