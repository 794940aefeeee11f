package dawngauge.feed;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.net.ConnectException;
import java.net.NoRouteToHostException;
import java.net.UnknownHostException;
import java.security.cert.CertPathValidatorException;
import java.security.cert.CertificateException;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import javax.net.ssl.SSLException;
import javax.net.ssl.SSLPeerUnverifiedException;
import okhttp3.Headers;
import okio.ByteString;
import org.jspecify.annotations.Nullable;

/**
 * What came back of one request.
 *
 * @param status of HTTP, 0 if none came
 * @param headers as sent
 * @param body of an answer that may be one, unpacked; else empty
 * @param trouble why there is no whole answer, or null
 */
record Reply(int status, Headers headers, ByteString body, @Nullable Trouble trouble) {

  /** What kept the answer from coming. */
  enum Trouble {
    /** The name of the host is not known: mostly there is no network. */
    NO_HOST("its name is not found", true),
    /** Nobody listens, or no way leads there. */
    NO_CONNECTION("no connection", true),
    /** Not in time. */
    TIMEOUT("no whole answer in time", true),
    /** It cannot prove who it is, or somebody on the way reads along. */
    NOT_TRUSTED(
        "its certificate is not to be trusted, so nothing was sent; check this computer's clock, and"
            + " whether the network wants you to sign in",
        true),
    /** No common way to speak in secret. */
    NOT_SECURE("no secure connection", true),
    /** The connection ended before the answer did. */
    BROKEN_OFF("the connection broke off", false),
    /** The answer is larger than may be. */
    TOO_LARGE("", false);

    private final String words;
    private final boolean ofHost;

    Trouble(String words, boolean ofHost) {
      this.words = words;
      this.ofHost = ofHost;
    }

    /** In words. */
    String words() {
      return words;
    }

    /** Whether every other question to the host would end like this. */
    boolean ofHost() {
      return ofHost;
    }

    static Trouble of(IOException failure) {
      if (failure instanceof UnknownHostException) {
        return NO_HOST;
      } else if (failure instanceof ConnectException || failure instanceof NoRouteToHostException) {
        return NO_CONNECTION;
      } else if (failure instanceof InterruptedIOException) {
        return TIMEOUT;
      }
      if (failure instanceof SSLPeerUnverifiedException || isOfCertificate(failure)) {
        return NOT_TRUSTED;
      }
      return failure instanceof SSLException ? NOT_SECURE : BROKEN_OFF;
    }

    private static boolean isOfCertificate(Throwable failure) {
      Throwable cause = failure;
      for (int depth = 0; cause != null && depth < 10; depth++) {
        if (cause instanceof CertificateException || cause instanceof CertPathValidatorException) {
          return true;
        }
        cause = cause.getCause();
      }
      return false;
    }
  }

  static Reply of(Trouble trouble) {
    return new Reply(0, Headers.EMPTY, ByteString.EMPTY, trouble);
  }

  /** Whether it leads to another page. */
  boolean isRedirect() {
    return status == 301 || status == 302 || status == 303 || status == 307 || status == 308;
  }

  /** Whether it may be an answer; 203 is how a service says that the question is outdated. */
  boolean isAnswer() {
    return trouble == null && (status == 200 || status == 203);
  }

  /** Whether the same question may be answered in a moment. */
  boolean mayPass() {
    return trouble == Trouble.BROKEN_OFF
        || status == 429
        || status == 500
        || status == 502
        || status == 503
        || status == 504;
  }

  /** How long the service asks to be left alone, at most a day; null if it does not say. */
  @Nullable Duration retryAfter(Instant now) {
    String said = headers.get("Retry-After");
    if (said == null) {
      return null;
    } else if (said.matches("\\d{1,9}")) {
      return shortened(Duration.ofSeconds(Long.parseLong(said)));
    }
    try {
      Instant until = Instant.from(DateTimeFormatter.RFC_1123_DATE_TIME.parse(said));
      return shortened(Duration.between(now, until));
    } catch (DateTimeException unreadable) {
      return null;
    }
  }

  private static Duration shortened(Duration asked) {
    Duration longest = Duration.ofDays(1);
    return asked.isNegative() ? Duration.ZERO : asked.compareTo(longest) > 0 ? longest : asked;
  }
}
