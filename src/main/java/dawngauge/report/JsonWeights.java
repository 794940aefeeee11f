package dawngauge.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.ledger.WorksheetPage;
import dawngauge.quantity.Mass;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import dawngauge.weights.ExpectedWeights;
import dawngauge.weights.NextWeighing;
import dawngauge.weights.RatedLoad;
import dawngauge.weights.SummedLoad;

/** The weight worksheet worked out, as JSON. */
public final class JsonWeights {

  private JsonWeights() {}

  /**
   * The text.
   *
   * @param units units of the sentences in it
   */
  public static String of(Trip trip, ExpectedWeights weights, UnitSystem units) {
    JsonPage page = new JsonPage("weights", trip, units);
    ArrayNode all = page.root().putArray("expectedLoads");
    for (RatedLoad load : weights.loads()) {
      ObjectNode node = all.addObject();
      node.put("loadOf", load.what());
      node.put("bearer", load.kind().word());
      JsonPage.put(
          node,
          "expectedLoad",
          load.expected().map(SummedLoad::kilograms).orElse(Double.NaN),
          Mass::new);
      JsonPage.put(
          node,
          "expectedLoadSigma",
          load.expected().map(SummedLoad::sigma).orElse(Double.NaN),
          Mass::new);
      JsonPage.put(node, "rating", load.rating(), Mass::new);
      page.put(node, "ratedBy", load.ratedBy());
      JsonPage.put(node, "weighedLoad", load.weighed(), Mass::new);
      node.put("verdict", load.verdict().word());
    }
    JsonPage.strings(page.root(), "notKnown", weights.missing());
    NextWeighing next = weights.next().orElse(null);
    if (next == null) {
      page.root().putNull("nextWeighing");
    } else {
      ObjectNode node = page.root().putObject("nextWeighing");
      node.put("weigh", next.weigh());
      node.put("narrows", next.settles().what());
      JsonPage.put(node, "sigmaNow", next.sigmaNow(), Mass::new);
      JsonPage.put(node, "sigmaThen", next.sigmaThen(), Mass::new);
    }
    return page.text(WorksheetPage.CAUTIONS);
  }
}
