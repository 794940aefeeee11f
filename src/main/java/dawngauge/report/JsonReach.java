package dawngauge.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.advice.Reach;
import dawngauge.problem.Problem;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How far the air in the tires reaches from a stop, as JSON. */
public final class JsonReach {

  private JsonReach() {}

  /**
   * The text.
   *
   * @param problems what is missing or assumed
   * @param units units of the sentences in it
   */
  public static String of(Trip trip, Reach reach, List<Problem> problems, UnitSystem units) {
    JsonPage page = new JsonPage("reach", trip, units);
    List<Stop> stops = trip.route().stops();
    ObjectNode root = page.root();
    JsonPage.stop(root, reach.visit(), stops.get(reach.visit()));
    if (reach.nextHose().isPresent()) {
      int hose = reach.nextHose().getAsInt();
      JsonPage.stop(root.putObject("nextHose"), hose, stops.get(hose));
    } else {
      root.putNull("nextHose");
    }
    ArrayNode tires = root.putArray("tires");
    for (Reach.OfTire tire : reach.tires()) {
      ObjectNode node = tires.addObject();
      page.tire(node, tire.at().fitted().position(), tire.at().fitted().tire().id());
      page.put(node, "hold", tire.hold());
      JsonPage.pressure(node, "reads", tire.reads());
      ArrayNode ahead = node.putArray("ahead");
      for (int stop = reach.visit() + 1; stop <= reach.end(); stop++) {
        ObjectNode there = ahead.addObject();
        JsonPage.stop(there, stop, stops.get(stop));
        there.put("reached", reached(tire, stop));
        boolean told = tire.hold() == null && tire.known(stop);
        JsonPage.pressure(there, "spare", told ? tire.spare(stop) : Double.NaN);
      }
      GaugePressure toHose = reach.nextHose().isPresent() ? tire.toHose() : null;
      JsonPage.put(node, "leastToHose", toHose);
      JsonPage.put(node, "leastToEnd", tire.toEnd());
    }
    page.problems(problems);
    return page.text();
  }

  /** Null where what it meets on the way is not known. */
  private static @Nullable Boolean reached(Reach.OfTire tire, int stop) {
    if (tire.hold() != null || tire.reached() < Math.min(stop, tire.knownTo())) {
      return false;
    }
    return tire.known(stop) ? true : null;
  }
}
