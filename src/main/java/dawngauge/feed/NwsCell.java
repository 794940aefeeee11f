package dawngauge.feed;

import com.fasterxml.jackson.databind.JsonNode;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.util.Optional;
import okhttp3.HttpUrl;

/**
 * A cell of the grid of the U.S. National Weather Service: where its pages are.
 *
 * @param grid the detailed forecast
 * @param hourly the forecast by the hour
 * @param stations stations nearby
 */
record NwsCell(HttpUrl grid, HttpUrl hourly, HttpUrl stations) {

  /** Reads the answer to a question for a point; a point at sea may have no cell. */
  static Outcome<NwsCell> read(JsonNode answer, ServiceAccess access) {
    JsonNode properties = answer.path("properties");
    Optional<HttpUrl> grid = page(properties, "forecastGridData", access);
    Optional<HttpUrl> hourly = page(properties, "forecastHourly", access);
    Optional<HttpUrl> stations = page(properties, "observationStations", access);
    if (!properties.isObject()) {
      return Outcome.failed(access.notUnderstood("JSON without a cell"));
    } else if (grid.isEmpty() || hourly.isEmpty() || stations.isEmpty()) {
      return Outcome.failed(
          Problem.of(ProblemCode.FEED_OUTSIDE_AREA, "", access.service(), "200, no cell"));
    }
    return Outcome.of(new NwsCell(grid.get(), hourly.get(), stations.get()));
  }

  private static Optional<HttpUrl> page(JsonNode properties, String name, ServiceAccess access) {
    return AirJson.text(properties.path(name)).flatMap(access.address()::home);
  }
}
