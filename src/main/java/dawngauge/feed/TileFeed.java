package dawngauge.feed;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import okhttp3.CacheControl;
import okhttp3.Interceptor;
import okhttp3.MediaType;
import okhttp3.OkHttpClient;
import okhttp3.Request;
import okhttp3.Response;
import okhttp3.ResponseBody;
import okio.BufferedSource;
import org.jspecify.annotations.Nullable;

/**
 * A server of map pictures, each a square of the map at a level of {@code z/x/y}. Asked only for
 * what is looked at; answers are kept as the server says, or 7 days where it says nothing, and are
 * then only asked whether they still hold. Without a network the kept ones are shown, however old.
 */
public final class TileFeed implements AutoCloseable {

  /** The least that the tile policy of the OpenStreetMap Foundation asks for. */
  private static final int KEPT_DAYS = 7;

  private final String template;
  private final String agent;
  private final HttpLimits limits;
  private final Clock clock;
  private final CacheFolder folder;
  private final OkHttpClient client;
  private volatile Instant resting = Instant.MIN;

  private TileFeed(
      String template,
      Consent consent,
      String program,
      HttpLimits limits,
      Path cacheFolder,
      Clock clock) {
    this.template = template;
    this.agent = program + " (" + consent.contact() + ")";
    this.limits = limits;
    this.clock = clock;
    folder = new CacheFolder(cacheFolder, limits.cacheBytes());
    client =
        new OkHttpClient.Builder()
            .cache(folder.cache())
            .connectTimeout(limits.connect())
            .readTimeout(limits.read())
            .callTimeout(limits.whole())
            .followRedirects(false)
            .followSslRedirects(false)
            .addNetworkInterceptor(TileFeed::kept)
            .build();
  }

  /**
   * Opens a server.
   *
   * @param template its address with {z}, {x} and {y} for level, column and row
   * @return why the address cannot be asked, if it cannot
   */
  public static Outcome<TileFeed> open(
      String template,
      Consent consent,
      String program,
      HttpLimits limits,
      Path cacheFolder,
      Clock clock) {
    boolean whole =
        template.contains("{z}") && template.contains("{x}") && template.contains("{y}");
    Outcome<ServiceAddress> address = ServiceAddress.parse(whole ? filled(template, 0, 0, 0) : "");
    return address.hasValue()
        ? Outcome.of(new TileFeed(template, consent, program, limits, cacheFolder, clock))
        : Outcome.failed(
            Problem.of(ProblemCode.NOT_A_TILE_ADDRESS, "", PrintableText.of(template)));
  }

  private static String filled(String template, int level, int x, int y) {
    return template
        .replace("{z}", String.valueOf(level))
        .replace("{x}", String.valueOf(x))
        .replace("{y}", String.valueOf(y));
  }

  /** An answer that says nothing of its keeping is kept for the least time. */
  private static Response kept(Interceptor.Chain chain) throws IOException {
    Response response = chain.proceed(chain.request());
    boolean silent = response.header("Cache-Control") == null && response.header("Expires") == null;
    return silent && response.isSuccessful()
        ? response
            .newBuilder()
            .header("Cache-Control", "max-age=" + TimeUnit.DAYS.toSeconds(KEPT_DAYS))
            .build()
        : response;
  }

  /**
   * One picture as PNG or JPEG; waits for it.
   *
   * @return empty where the server has none or cannot be reached; it is then left alone for a while
   */
  public Optional<byte[]> tile(int level, int x, int y) {
    String url = filled(template, level, x, y);
    if (!clock.instant().isBefore(resting)) {
      byte[] fresh = ask(url, new CacheControl.Builder().build());
      if (fresh != null) {
        return Optional.of(fresh);
      }
    }
    return Optional.ofNullable(
        ask(
            url,
            new CacheControl.Builder()
                .onlyIfCached()
                .maxStale(Integer.MAX_VALUE, TimeUnit.SECONDS)
                .build()));
  }

  private byte @Nullable [] ask(String url, CacheControl rule) {
    Request request =
        new Request.Builder()
            .url(url)
            .header("User-Agent", agent)
            .header("Accept", "image/png, image/jpeg")
            .cacheControl(rule)
            .build();
    try (Response response = client.newCall(request).execute()) {
      ResponseBody body = response.body();
      BufferedSource source = body.source();
      if (response.code() == 200 && isPicture(body.contentType())) {
        return source.request(limits.answerBytes() + 1L) ? null : source.readByteArray();
      }
      boolean absent = response.code() == 404 || response.code() == 410;
      if (!absent && !rule.onlyIfCached()) {
        rest();
      }
    } catch (IOException unreachable) {
      rest();
    }
    return null;
  }

  private void rest() {
    resting = clock.instant().plus(limits.rest());
  }

  private static boolean isPicture(@Nullable MediaType type) {
    return type != null
        && type.type().equals("image")
        && (type.subtype().equals("png") || type.subtype().equals("jpeg"));
  }

  @Override
  public void close() {
    client.dispatcher().cancelAll();
    client.connectionPool().evictAll();
    folder.close();
  }
}
