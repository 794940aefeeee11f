package dawngauge.feed;

import com.fasterxml.jackson.databind.JsonNode;
import dawngauge.ambient.WeatherAnswer;
import dawngauge.ambient.WeatherQuery;
import dawngauge.geo.Coordinate;
import dawngauge.geo.GreatCircle;
import dawngauge.problem.Outcome;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import okhttp3.HttpUrl;
import org.jspecify.annotations.Nullable;

/** Temperatures that stations of the U.S. National Weather Service measured; about a week back. */
final class NwsStations {

  /** Stations asked at most, from the nearest on. */
  private static final int MOST_STATIONS = 3;

  /** Beyond this the air there says little of the air here; ours, no source. */
  private static final double FARTHEST_METERS = 80_000;

  /** Most observations in one answer, and a span that no station fills: one in five minutes. */
  private static final int MOST_OBSERVATIONS = 500;

  private static final Duration SLICE = Duration.ofHours(36);
  private static final int MOST_SLICES = 8;
  private static final Duration AROUND = Duration.ofHours(2);

  /**
   * Marks of a measurement that failed a check: rejected, questioned, found bad by a person (MADIS,
   * "QC Data Descriptor Values", madis-data.cprk.ncep.noaa.gov/doc/qc_info.txt).
   */
  private static final Set<String> FAILED = Set.of("X", "Q", "B");

  private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_-]{1,20}");

  private final ServiceAccess access;
  private final RecentAnswers<List<Station>> lists;
  private final RecentAnswers<Spans> measurements;

  NwsStations(ServiceAccess access) {
    this.access = access;
    lists = new RecentAnswers<>(access.http());
    measurements = new RecentAnswers<>(access.http());
  }

  record Station(String name, Coordinate place, double elevationMeters) {}

  /** What the nearest station measured, or one further off if that has less. */
  Outcome<WeatherAnswer> measured(NwsCell cell, WeatherQuery query) throws InterruptedException {
    Outcome<List<Station>> list =
        lists.get(
            cell.stations().toString(),
            () -> access.get(cell.stations(), answer -> stations(answer)));
    List<Station> found = list.valueOrNull();
    if (found == null) {
      return Outcome.failed(list.problems());
    }
    List<Station> nearest =
        found.stream()
            .filter(station -> away(station, query) <= FARTHEST_METERS)
            .sorted(Comparator.comparingDouble(station -> away(station, query)))
            .limit(MOST_STATIONS)
            .toList();
    Outcome<WeatherAnswer> best = null;
    for (Station station : nearest) {
      Outcome<WeatherAnswer> answer = measured(station, query);
      if (answer.hasValue() && answer.problems().isEmpty()) {
        return answer;
      } else if (best == null || (answer.hasValue() && !best.hasValue())) {
        best = answer;
      }
    }
    return best == null ? access.nothing(query) : best;
  }

  private Outcome<WeatherAnswer> measured(Station station, WeatherQuery query)
      throws InterruptedException {
    Instant from = query.from().minus(AROUND).truncatedTo(ChronoUnit.HOURS);
    Instant to = query.to().plus(AROUND).truncatedTo(ChronoUnit.HOURS);
    String key = station.name() + " " + from + "/" + to;
    long kilometers = Math.round(away(station, query) / 1000);
    String service = access.service() + ", station " + station.name() + " at " + kilometers + " km";
    return measurements
        .get(key, () -> all(station, from, to))
        .then(spans -> series(spans, station, service).answer(query));
  }

  private static double away(Station station, WeatherQuery query) {
    return GreatCircle.between(station.place(), query.place()).meters();
  }

  private static Series series(Spans spans, Station station, String service) {
    return spans.series(service, spans.latest(), station.elevationMeters());
  }

  /** Slice by slice, since one answer does not hold more. */
  private Outcome<Spans> all(Station station, Instant from, Instant to)
      throws InterruptedException {
    Spans spans = new Spans();
    Instant end = to.isBefore(access.now()) ? to : access.now().truncatedTo(ChronoUnit.SECONDS);
    Instant start = from;
    for (int slice = 0; slice < MOST_SLICES && start.isBefore(end); slice++) {
      Instant next = start.plus(SLICE).isBefore(end) ? start.plus(SLICE) : end;
      HttpUrl url =
          access
              .address()
              .path("stations/" + station.name() + "/observations")
              .addQueryParameter("start", start.toString())
              .addQueryParameter("end", next.toString())
              .addQueryParameter("limit", String.valueOf(MOST_OBSERVATIONS))
              .build();
      Outcome<Boolean> read = access.get(url, answer -> read(answer, spans));
      if (!read.hasValue()) {
        return Outcome.failed(read.problems());
      }
      start = next;
    }
    return Outcome.of(spans);
  }

  Outcome<Boolean> read(JsonNode answer, Spans spans) {
    JsonNode features = answer.path("features");
    if (!features.isArray()) {
      return Outcome.failed(access.notUnderstood("JSON without measurements"));
    }
    for (JsonNode feature : features) {
      JsonNode properties = feature.path("properties");
      JsonNode temperature = properties.path("temperature");
      String quality = temperature.path("qualityControl").asText();
      if (!FAILED.contains(quality.substring(quality.lastIndexOf(':') + 1))) {
        spans.addMoment(
            properties.path("timestamp"),
            temperature.path("value"),
            temperature.path("unitCode").asText());
      }
    }
    return Outcome.of(true);
  }

  Outcome<List<Station>> stations(JsonNode answer) {
    JsonNode features = answer.path("features");
    if (!features.isArray()) {
      return Outcome.failed(access.notUnderstood("JSON without stations"));
    }
    List<Station> stations = new ArrayList<>();
    for (JsonNode feature : features) {
      Station station = station(feature);
      if (station != null) {
        stations.add(station);
      }
    }
    return Outcome.of(stations);
  }

  private static @Nullable Station station(JsonNode feature) {
    String name = feature.path("properties").path("stationIdentifier").asText();
    JsonNode place = feature.path("geometry").path("coordinates");
    double longitude = AirJson.number(place.path(0)).orElse(Double.NaN);
    double latitude = AirJson.number(place.path(1)).orElse(Double.NaN);
    boolean usable =
        NAME.matcher(name).matches() && Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180;
    return usable
        ? new Station(
            name,
            new Coordinate(latitude, longitude),
            AirJson.meters(feature.path("properties").path("elevation")))
        : null;
  }
}
