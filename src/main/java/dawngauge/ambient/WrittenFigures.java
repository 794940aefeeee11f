package dawngauge.ambient;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.quantity.Unit;
import java.util.Locale;

/** Rounds the SI figures that the program itself writes into a trip. */
final class WrittenFigures {

  private WrittenFigures() {}

  static Entered<Temperature> of(Temperature temperature) {
    return Entered.of(QuantityKind.TEMPERATURE, tenths(temperature.in(Unit.CELSIUS)) + " °C");
  }

  static Entered<TemperatureDifference> of(TemperatureDifference difference) {
    return Entered.of(
        QuantityKind.TEMPERATURE_DIFFERENCE, tenths(difference.in(Unit.CELSIUS)) + " °C");
  }

  static Entered<Elevation> of(Elevation elevation) {
    return Entered.of(QuantityKind.ELEVATION, Math.round(elevation.meters()) + " m");
  }

  /** A way that finds its point again when it is read, to the last digit. */
  static Entered<Distance> exactly(Distance distance) {
    return Entered.of(QuantityKind.DISTANCE, distance.meters() + " m");
  }

  private static String tenths(double number) {
    return String.format(Locale.ROOT, "%.1f", number);
  }
}
