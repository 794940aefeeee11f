package dawngauge.ui;

import static java.util.stream.Collectors.toMap;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.ledger.FitnessPage;
import dawngauge.ledger.ForecastPage;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.PlanLines;
import dawngauge.ledger.PlanPage;
import dawngauge.planner.Plan;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.CsvTable;
import dawngauge.report.PageText;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * The spring demo is built from an empty window without a look at its file, one thing by keyboard
 * and the next by mouse, and the file that is written is the demo's in all that is judged.
 */
@Timeout(600)
class DemoByHandWindowTest extends WindowTest {

  /** The id of a tire behind its place, in the table of figures. */
  private static final String TIRE_ID = "(?m)(,[pt]\\d\\w*,[^,]*,)[A-Z]\\d(?=,)";

  @Test
  void theDemoIsBuiltFromAnEmptyWindow() throws JsonProcessingException {
    Trip demo = demo();
    OpenWindow open = open(planner().store().starterTrip().get());
    new TripByHand(open, demo).build();
    assertThat(judged(open.document.trip())).isEqualTo(judged(demo));
    assertThat(said(open.document.trip())).isEqualTo(said(demo));
  }

  /** Forecast, fitness and plan with their reasons, and the forecast's figures unrounded. */
  private static String said(Trip trip) {
    Plan plan = planner().plan(trip);
    return String.join(
        "\n",
        CsvTable.raw(trip, plan.advice(), null).replaceAll(TIRE_ID, "$1"),
        PageText.of(
            ForecastPage.of(
                Ledger.of(
                    trip, plan.advice(), plan.problems(), plan.fitness(), UnitSystem.US, null)),
            true),
        PageText.of(FitnessPage.of(trip, plan.fitness(), UnitSystem.US), true),
        PageText.of(
            PlanPage.of(trip, PlanLines.of(trip, plan.adjustment().get(), UnitSystem.US)), true));
  }

  /**
   * A trip as its file has it, but for what nothing is judged by: notes, the names by which parts
   * refer to each other, and the order of lists that have none.
   */
  private static String judged(Trip trip) throws JsonProcessingException {
    JsonMapper mapper = new JsonMapper();
    JsonNode file = mapper.readTree(planner().store().text(trip));
    Map<String, String> names = new HashMap<>();
    for (WheelPosition position : trip.rig().positions()) {
      trip.rig().fittedAt(position).ifPresent(t -> names.put(t.id(), position.words()));
    }
    trip.rig().spares().forEach(spare -> names.put(spare.tire(), "spare"));
    for (int i = 0; i < trip.route().stops().size(); i++) {
      names.put(trip.route().stops().get(i).id(), "stop " + (i + 1));
    }
    return mapper.writerWithDefaultPrettyPrinter().writeValueAsString(bare(file, names, ""));
  }

  private static JsonNode bare(JsonNode node, Map<String, String> names, String key) {
    JsonNodeFactory make = JsonNodeFactory.instance;
    if (node instanceof ObjectNode object) {
      ObjectNode bare = make.objectNode();
      new TreeMap<>(
              object.properties().stream().collect(toMap(Map.Entry::getKey, Map.Entry::getValue)))
          .forEach(
              (name, value) -> {
                if (!name.equals("note") && !name.startsWith("x-")) {
                  bare.set(name, bare(value, names, name));
                }
              });
      return bare;
    } else if (node instanceof ArrayNode array) {
      List<JsonNode> all = new ArrayList<>();
      array.forEach(each -> all.add(bare(each, names, key)));
      if (Set.of("tireTypes", "tires", "ambient", "log").contains(key)) {
        all.sort(Comparator.comparing(JsonNode::toString));
      }
      return make.arrayNode().addAll(all);
    }
    boolean refers =
        Set.of("id", "tire", "stop", "left", "right").contains(key)
            || key.matches("(left|right) (inner|outer)");
    return refers ? make.textNode(names.getOrDefault(node.asText(), node.asText())) : node;
  }
}
