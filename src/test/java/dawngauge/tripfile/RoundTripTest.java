package dawngauge.tripfile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dawngauge.trip.Trip;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What is read and written again is the same trip, figure by figure as it was typed. */
class RoundTripTest {
  @Test
  void fullFileHasNoProblem() {
    assertThat(TripFile.parse(Samples.full()).problems()).isEmpty();
  }

  @Test
  void readWrittenAndReadAgainIsEqual() {
    Trip trip = TripFile.parse(Samples.full()).get();
    String text = TripFile.text(trip);
    Trip again = TripFile.parse(text).get();
    assertThat(again).isEqualTo(trip);
    assertThat(TripFile.text(again)).isEqualTo(text);
  }

  @Test
  void everyFieldAndFigureSurvivesAsTyped() {
    Trip trip = TripFile.parse(Samples.full()).get();
    assertThat(leaves(TripFile.text(trip))).isEqualTo(leaves(Samples.full()));
  }

  /** All plain values by their place. */
  private static Map<String, String> leaves(String json) {
    Map<String, String> leaves = new TreeMap<>();
    gather(JsonText.tree(json).get(), "", leaves);
    return leaves;
  }

  private static void gather(JsonNode node, String place, Map<String, String> leaves) {
    if (node.isValueNode()) {
      leaves.put(place, node.toString());
    } else if (node.isObject()) {
      node.properties()
          .forEach(
              field -> gather(field.getValue(), ValueReader.under(place, field.getKey()), leaves));
    } else {
      for (int i = 0; i < node.size(); i++) {
        gather(node.path(i), place + "/" + i, leaves);
      }
    }
  }
}
