package dawngauge.ui;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.Executors;

/**
 * A weather service on this computer that fails in every way at times: a fault of its own, no
 * answer, half of one, a late one, nonsense. Of five questions it answers two as it should.
 */
final class FlakyWeather implements AutoCloseable {

  private static final int HOURS = 24 * 9;

  private final HttpServer server;
  private final Random random = new Random(8);
  private final Instant from;
  private int asked;

  /**
   * Begins to answer.
   *
   * @param from first hour of its forecasts
   */
  FlakyWeather(Instant from) throws IOException {
    this.from = from.truncatedTo(ChronoUnit.HOURS);
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.setExecutor(Executors.newCachedThreadPool());
    server.createContext("/", this::answer);
    server.start();
  }

  /** Where it is asked. */
  String address() {
    return "http://127.0.0.1:" + server.getAddress().getPort();
  }

  /** How often it was asked. */
  synchronized int asked() {
    return asked;
  }

  private synchronized int turn() {
    asked++;
    return random.nextInt(10);
  }

  private void answer(HttpExchange exchange) throws IOException {
    int turn = turn();
    try (exchange) {
      switch (turn) {
        case 0 -> send(exchange, 500, "a fault of its own");
        case 1 -> exchange.getResponseHeaders().add("Retry-After", "1");
        case 2 -> send(exchange, 200, forecast().substring(0, 3000));
        case 3 -> send(exchange, 200, "[[[[");
        case 4 -> {
          late();
          send(exchange, 200, forecast());
        }
        case 5 -> send(exchange, 200, forecast().replace("celsius", "fathom"));
        default -> send(exchange, 200, forecast());
      }
      if (turn == 1) {
        send(exchange, 503, "");
      }
    }
  }

  private static void late() {
    try {
      Thread.sleep(2000);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  private static void send(HttpExchange exchange, int status, String body) throws IOException {
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    exchange.getResponseHeaders().add("Content-Type", "application/json");
    exchange.sendResponseHeaders(status, bytes.length == 0 ? -1 : bytes.length);
    exchange.getResponseBody().write(bytes);
  }

  private String forecast() {
    StringBuilder steps = new StringBuilder();
    for (int hour = 0; hour < HOURS; hour++) {
      double celsius = 6 - 8 * Math.cos(2 * Math.PI * (hour - 9) / 24.0);
      steps.append(
          String.format(
              Locale.ROOT,
              "%s{\"time\":\"%s\",\"data\":{\"instant\":{\"details\":{\"air_temperature\":%.1f}}}}",
              hour == 0 ? "" : ",",
              from.plus(hour, ChronoUnit.HOURS),
              celsius));
    }
    return "{\"properties\":{\"meta\":{\"updated_at\":\""
        + from
        + "\",\"units\":{\"air_temperature\":\"celsius\"}},\"timeseries\":["
        + steps
        + "]}}";
  }

  @Override
  public void close() {
    server.stop(0);
  }
}
