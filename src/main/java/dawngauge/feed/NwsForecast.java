package dawngauge.feed;

import com.fasterxml.jackson.databind.JsonNode;
import dawngauge.problem.Outcome;
import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads the two forecasts of the U.S. National Weather Service. */
final class NwsForecast {
  private NwsForecast() {}

  /** The detailed one: intervals in UTC, equal neighbours merged. */
  static Outcome<Series> detailed(JsonNode answer, ServiceAccess access) {
    JsonNode properties = answer.path("properties");
    JsonNode layer = properties.path("temperature");
    JsonNode values = layer.path("values");
    if (!values.isArray()) {
      return Outcome.failed(access.notUnderstood("JSON without temperatures"));
    }
    String unit = layer.path(layer.has("uom") ? "uom" : "unitCode").asText();
    Spans spans = new Spans();
    for (JsonNode value : values) {
      spans.addInterval(value.path("validTime").asText(), value.path("value"), unit);
    }
    return series(properties, spans, access);
  }

  /** The one by the hour: local time with its offset; a plain number and a unit, or one figure. */
  static Outcome<Series> hourly(JsonNode answer, ServiceAccess access) {
    JsonNode properties = answer.path("properties");
    JsonNode periods = properties.path("periods");
    if (!periods.isArray()) {
      return Outcome.failed(access.notUnderstood("JSON without hours"));
    }
    Spans spans = new Spans();
    for (JsonNode period : periods) {
      JsonNode temperature = period.path("temperature");
      boolean figure = temperature.isObject();
      spans.addInterval(
          period.path("startTime").asText() + "/" + period.path("endTime").asText(),
          figure ? temperature.path("value") : temperature,
          (figure ? temperature.path("unitCode") : period.path("temperatureUnit")).asText());
    }
    return series(properties, spans, access);
  }

  private static Outcome<Series> series(JsonNode properties, Spans spans, ServiceAccess access) {
    return Outcome.of(
        spans.series(
            access.service(), issued(properties), AirJson.meters(properties.path("elevation"))));
  }

  private static @Nullable Instant issued(JsonNode properties) {
    return Stream.of("updateTime", "updated", "generatedAt")
        .map(name -> IsoTime.instant(properties.path(name).asText()))
        .flatMap(Optional::stream)
        .findFirst()
        .orElse(null);
  }
}
