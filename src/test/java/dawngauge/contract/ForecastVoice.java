package dawngauge.contract;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;

/** The forecast for other programs, as JSON: the exact figures. */
final class ForecastVoice implements Voice {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** Half of the last place of its figures in psi. */
  private static final double WITHIN = 0.0005;

  private static final Map<Field, String> FIGURES =
      Map.of(Field.FLOOR, "floor", Field.AIM, "aim", Field.CEILING, "ceiling");

  @Override
  public String name() {
    return "forecast";
  }

  @Override
  public Map<Place, Saying> of(Grid.Haul haul) {
    Map<Place, Saying> said = new LinkedHashMap<>();
    for (JsonNode stop : read(Page.of(haul, "forecast", "--format", "json")).path("stops")) {
      int index = stop.path("number").asInt() - 1;
      for (JsonNode tire : stop.path("tires")) {
        Saying saying = saying(tire);
        String name = tire.path("tire").asText();
        said.put(new Place(name, index), saying);
        boolean low = saying.yes(Field.RAN_LOW);
        said.merge(
            new Place(name, Place.WHOLE_TRIP),
            Saying.NOTHING.with(Field.RAN_LOW, low),
            (before, now) -> low ? now : before);
      }
    }
    return said;
  }

  private static Saying saying(JsonNode tire) {
    boolean low = false;
    for (JsonNode reason : tire.path("reasons")) {
      low = low || Words.ranLow(reason.path("text").asText());
    }
    Saying saying =
        Saying.NOTHING
            .with(Field.RAN_LOW, low)
            .with(Field.HOLD, tire.path("mark").asText().equals("hold"));
    for (Map.Entry<Field, String> figure : FIGURES.entrySet()) {
      saying = figure(saying, figure.getKey(), tire.path(figure.getValue()));
    }
    if (tire.hasNonNull("loadBasis")) {
      saying = saying.with(Field.LOAD_BASIS, LoadBasis.of(tire.path("loadBasis").asText()));
    }
    saying =
        saying.with(
            Field.SETS, Stream.of("setAt", "setCold", "setOnArrival").anyMatch(tire::hasNonNull));
    saying = figure(saying, Field.SET_COLD, tire.path("setCold"));
    return figure(saying, Field.SET_ON_ARRIVAL, tire.path("setOnArrival"));
  }

  private static Saying figure(Saying saying, Field field, JsonNode node) {
    return node.hasNonNull("psi")
        ? saying.with(field, new Figure(node.path("psi").asDouble(), WITHIN))
        : saying;
  }

  private static JsonNode read(String json) {
    try {
      return MAPPER.readTree(json);
    } catch (JsonProcessingException wrong) {
      throw new IllegalStateException(wrong);
    }
  }
}
