package dawngauge.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.advice.Breakdown;
import dawngauge.ledger.BreakdownPage;
import dawngauge.quantity.Mass;
import dawngauge.quantity.UnitSystem;
import dawngauge.rules.FittedTire;
import dawngauge.rules.SpareFit;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What carries for a flat tire and which spare may take its place, as JSON. */
public final class JsonBreakdown {

  private final JsonPage page;
  private final List<Stop> stops;

  private JsonBreakdown(JsonPage page, List<Stop> stops) {
    this.page = page;
    this.stops = stops;
  }

  /**
   * The text.
   *
   * @param units units of the sentences in it
   */
  public static String of(Trip trip, Breakdown breakdown, UnitSystem units) {
    JsonPage page = new JsonPage("breakdown", trip, units);
    new JsonBreakdown(page, trip.route().stops()).write(breakdown);
    return page.text(BreakdownPage.CAUTIONS);
  }

  private void write(Breakdown breakdown) {
    ObjectNode root = page.root();
    JsonPage.stop(root, breakdown.stop(), stops.get(breakdown.stop()));
    tire(root, breakdown.flat());
    ArrayNode carriers = root.putArray("carriers");
    for (Breakdown.Carrier carrier : breakdown.carriers()) {
      ObjectNode node = carriers.addObject();
      tire(node, carrier.tire());
      JsonPage.put(node, "load", carrier.load(), Mass::new);
      JsonPage.put(node, "most", carrier.most(), Mass::new);
      JsonPage.pressure(node, "ceiling", carrier.tire().ceilingPascals());
      node.put("carries", carrier.known() ? (Boolean) carrier.carries() : null);
    }
    ArrayNode spares = root.putArray("spares");
    breakdown.spares().forEach(choice -> spare(spares.addObject(), choice));
  }

  private void tire(ObjectNode node, FittedTire tire) {
    page.tire(node, tire.position(), tire.tire().id());
  }

  /** One that something speaks against has no figures that somebody could act on. */
  private void spare(ObjectNode node, Breakdown.Choice choice) {
    boolean serves = choice.serves();
    node.put("tireId", choice.fit().spare().tire());
    node.put("serves", serves(choice));
    JsonPage.strings(node, "against", choice.faults().stream().map(SpareFit.Fault::words).toList());
    JsonPage.strings(node, "notKnown", choice.unknown());
    JsonPage.pressure(node, "setCold", serves ? choice.cold() : Double.NaN);
    JsonPage.pressure(node, "ceiling", serves ? choice.fit().ceilingPascals() : Double.NaN);
    JsonPage.put(node, "fastest", serves ? choice.fastest() : null);
    JsonPage.put(node, "load", serves ? choice.load() : Double.NaN, Mass::new);
    if (serves && !Double.isNaN(choice.load())) {
      JsonPage.stop(node.putObject("reaches"), choice.reaches(), stops.get(choice.reaches()));
    } else {
      node.putNull("reaches");
    }
  }

  /** Null where not all is known that it is judged by. */
  private static @Nullable Boolean serves(Breakdown.Choice choice) {
    if (!choice.serves()) {
      return false;
    }
    return choice.unknown().isEmpty() ? true : null;
  }
}
