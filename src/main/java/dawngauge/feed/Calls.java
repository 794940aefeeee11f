package dawngauge.feed;

import dawngauge.feed.Reply.Trouble;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import okhttp3.CacheControl;
import okhttp3.Call;
import okhttp3.Callback;
import okhttp3.Dispatcher;
import okhttp3.HttpUrl;
import okhttp3.MediaType;
import okhttp3.OkHttpClient;
import okhttp3.Request;
import okhttp3.Response;
import okhttp3.ResponseBody;
import okio.BufferedSource;
import okio.ByteString;
import org.jspecify.annotations.Nullable;

/**
 * Single requests: each ends in time, is cut off where it is too large, can be interrupted, and
 * runs on a thread that does not keep the program alive.
 */
final class Calls implements AutoCloseable {

  /**
   * No kept answer is used beyond this without asking whether it holds, whatever its sender says.
   */
  private static final int OLDEST_HOURS = 6;

  /** Looking up a name cannot be cut short; the call is given up this long after its time. */
  private static final Duration GRACE = Duration.ofSeconds(2);

  private final HttpLimits limits;
  private final CacheFolder folder;
  private final ExecutorService threads;
  private final OkHttpClient client;
  private final String agent;

  Calls(Consent consent, String program, HttpLimits limits, Path cacheFolder) {
    this.limits = limits;
    agent = program + " (" + consent.contact() + ")";
    folder = new CacheFolder(cacheFolder, limits.cacheBytes());
    threads =
        Executors.newCachedThreadPool(
            work -> {
              Thread thread = new Thread(work, "weather service");
              thread.setDaemon(true);
              return thread;
            });
    Dispatcher dispatcher = new Dispatcher(threads);
    dispatcher.setMaxRequestsPerHost(limits.parallel());
    client =
        new OkHttpClient.Builder()
            .dispatcher(dispatcher)
            .cache(folder.cache())
            .connectTimeout(limits.connect())
            .readTimeout(limits.read())
            .writeTimeout(limits.read())
            .callTimeout(limits.whole())
            .retryOnConnectionFailure(true) // a kept connection that the other side has closed
            .followRedirects(false)
            .followSslRedirects(false)
            .build();
  }

  /** The kept answer, if there is one that still holds; nothing is sent. */
  @Nullable Reply kept(HttpUrl url, String accept) throws InterruptedException {
    CacheControl rule =
        new CacheControl.Builder().onlyIfCached().maxAge(OLDEST_HOURS, TimeUnit.HOURS).build();
    Reply reply = run(url, accept, rule, limits.whole());
    return reply.status() == 504 || reply.trouble() != null ? null : reply;
  }

  /**
   * What the service answers; if a kept answer may still hold it is only asked whether it does.
   *
   * @param most longest wait for it, where that is shorter than the limit for each question
   */
  Reply ask(Question question, HttpUrl url, Duration most) throws InterruptedException {
    CacheControl.Builder rule = new CacheControl.Builder();
    return run(
        url,
        question.accept(),
        question.anew()
            ? rule.noCache().build()
            : rule.maxAge(OLDEST_HOURS, TimeUnit.HOURS).build(),
        most.compareTo(limits.whole()) < 0 ? most : limits.whole());
  }

  /** Keeps the answer from one address no longer. */
  void forget(HttpUrl url) {
    folder.forget(url);
  }

  private Reply run(HttpUrl url, String accept, CacheControl rule, Duration most)
      throws InterruptedException {
    Call call =
        client.newCall(
            new Request.Builder()
                .url(url)
                .header("User-Agent", agent)
                .header("Accept", accept)
                .cacheControl(rule)
                .build());
    call.timeout().timeout(most.toMillis(), TimeUnit.MILLISECONDS);
    Waiting waiting = new Waiting(limits.answerBytes());
    call.enqueue(waiting);
    try {
      return waiting.reply.get(most.plus(GRACE).toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException stopped) {
      call.cancel();
      throw stopped;
    } catch (TimeoutException late) {
      call.cancel();
      return Reply.of(Trouble.TIMEOUT);
    } catch (ExecutionException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  @Override
  public void close() {
    client.dispatcher().cancelAll();
    client.connectionPool().evictAll();
    threads.shutdown();
    folder.close();
  }

  /** Takes the answer on the other thread. */
  private static final class Waiting implements Callback {
    private final int mostBytes;
    private final CompletableFuture<Reply> reply = new CompletableFuture<>();

    Waiting(int mostBytes) {
      this.mostBytes = mostBytes;
    }

    @Override
    public void onFailure(Call call, IOException failure) {
      reply.complete(Reply.of(Trouble.of(failure)));
    }

    @Override
    public void onResponse(Call call, Response response) {
      try (response) {
        reply.complete(read(call, response));
      } catch (IOException failure) {
        reply.complete(Reply.of(Trouble.of(failure)));
      } finally {
        reply.complete(Reply.of(Trouble.BROKEN_OFF)); // only if it is not complete yet
      }
    }

    private Reply read(Call call, Response response) throws IOException {
      Reply bare = new Reply(response.code(), response.headers(), ByteString.EMPTY, null);
      ResponseBody body = response.body();
      if (!bare.isAnswer() || !isJson(body.contentType())) {
        return bare;
      }
      BufferedSource source = body.source();
      if (body.contentLength() > mostBytes || source.request(mostBytes + 1L)) {
        call.cancel(); // or closing would read on, for the kept answer
        return Reply.of(Trouble.TOO_LARGE);
      }
      return new Reply(response.code(), response.headers(), source.readByteString(), null);
    }

    private static boolean isJson(@Nullable MediaType type) {
      return type != null
          && type.type().equals("application")
          && (type.subtype().equals("json") || type.subtype().endsWith("+json"));
    }
  }
}
