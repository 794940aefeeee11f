package dawngauge.report;

import dawngauge.fitness.Defect;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import java.util.List;

/** What was found about the rig before the trip, as JSON. */
public final class JsonFitness {

  private JsonFitness() {}

  /**
   * The text.
   *
   * @param trip the trip
   * @param defects what was found, worst first
   * @param unknown what is missing to say more, a line each
   * @param units units of the sentences in it
   */
  public static String of(Trip trip, List<Defect> defects, List<String> unknown, UnitSystem units) {
    JsonPage page = new JsonPage("fitness", trip, units);
    page.fitness(defects);
    JsonPage.strings(page.root(), "notKnown", unknown);
    return page.text();
  }
}
