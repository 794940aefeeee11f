package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.advice.TireAdvice;
import dawngauge.quantity.Mass;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.rules.FittedTire;
import dawngauge.rules.Loads;
import dawngauge.tire.TireSpec;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What stands on one axle.
 *
 * @param ref the axle
 * @param positions short forms, in walking order
 * @param axle the axle in words; of a dual one where each of those tires stands too
 * @param tires kinds of tire on it
 * @param label the label's cold pressure
 * @param load load at the start, and how it is known
 */
public record AxleLine(
    AxleRef ref, String positions, String axle, String tires, String label, String load) {

  /** All of it but the short forms, in one line. */
  public String words() {
    return String.join(" · ", axle, tires, label, load);
  }

  static List<AxleLine> all(Trip trip, @Nullable Advice advice, UnitSystem units) {
    Map<AxleRef, List<TireAdvice>> byAxle = new LinkedHashMap<>();
    if (advice != null && !advice.stops().isEmpty()) {
      for (TireAdvice tire : advice.stops().get(0).tires()) {
        byAxle
            .computeIfAbsent(tire.tire().fitted().position().axle(), key -> new ArrayList<>())
            .add(tire);
      }
    }
    List<AxleLine> lines = new ArrayList<>();
    byAxle.forEach((axle, tires) -> lines.add(line(trip, axle, tires, units)));
    return lines;
  }

  private static AxleLine line(Trip trip, AxleRef axle, List<TireAdvice> tires, UnitSystem units) {
    Set<String> kinds = new LinkedHashSet<>();
    List<String> positions = new ArrayList<>();
    List<String> sides = new ArrayList<>();
    for (TireAdvice tire : tires) {
      WheelPosition position = tire.tire().fitted().position();
      positions.add(trip.rig().shortForm(position));
      sides.add(position.slot().words());
      TireSpec spec = tire.tire().fitted().spec();
      kinds.add(spec == null ? "tire not described" : spec.name());
    }
    FittedTire first = tires.get(0).tire().fitted();
    double label = first.labelPascals();
    Loads.AxleLoad load = tires.get(0).tire().limits().load().axle();
    return new AxleLine(
        axle,
        String.join(" ", positions),
        axle.words() + (first.axle().dual() ? ", dual: " + String.join(", ", sides) : ""),
        String.join(" / ", kinds),
        Double.isNaN(label)
            ? "no label pressure"
            : "label "
                + Wording.figureNumber(label, units)
                + " "
                + units.unitOf(QuantityKind.GAUGE_PRESSURE).symbol(),
        Double.isNaN(load.kilograms())
            ? load.basis().words()
            : units.format(new Mass(load.kilograms())) + ", " + load.basis().words());
  }
}
