package dawngauge.feed;

import com.fasterxml.jackson.databind.JsonNode;
import dawngauge.ambient.WeatherQuery;
import dawngauge.geo.Coordinate;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import okio.ByteString;

/** Reads bytes as every kind of answer that the weather services give; nobody is asked. */
public final class AnswerReader implements AutoCloseable {

  private static final Instant NOW = Instant.parse("2027-04-06T12:00:00Z");
  private static final ServiceAddress NOWHERE = new ServiceAddress("https://weather.example/");
  private static final WeatherQuery QUERY =
      new WeatherQuery(
          new Coordinate(37.469123, -105.870456), 2300, NOW, NOW.plus(Duration.ofDays(2)));

  private final HttpJson http;
  private final ServiceAccess access;
  private final MetFeed met;
  private final NwsStations stations;

  /**
   * A reader.
   *
   * @param cache a folder of its own
   */
  public AnswerReader(Path cache) {
    http =
        new HttpJson(
            Consent.parse("crew@example.org").get(),
            "Dawngauge/test",
            FeedTest.limits(),
            cache,
            Clock.fixed(NOW, ZoneOffset.UTC),
            waited -> {});
    access = new ServiceAccess(http, "service", NOWHERE, "application/json");
    met = new MetFeed(NOWHERE, http);
    stations = new NwsStations(access);
  }

  /** Reads an answer; whether it is JSON at all. */
  public boolean read(byte[] answer) {
    JsonNode tree = JsonBody.tree(ByteString.of(answer)).orElse(null);
    if (tree == null) {
      return false;
    }
    NwsForecast.detailed(tree, access).then(series -> series.answer(QUERY));
    NwsForecast.hourly(tree, access).then(series -> series.answer(QUERY));
    met.read(tree, 2300).then(series -> series.answer(QUERY));
    met.read(tree, Double.NaN).then(series -> series.answer(QUERY));
    NwsCell.read(tree, access);
    stations.stations(tree);
    Spans spans = new Spans();
    stations.read(tree, spans);
    spans.series("service", spans.latest(), 2300).answer(QUERY);
    return true;
  }

  @Override
  public void close() {
    http.close();
  }
}
