package dawngauge.geo;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Unit;
import java.util.Locale;

/**
 * The bar that tells a map's scale: 1, 2 or 5 times a power of ten long.
 *
 * @param length how long it is on the ground
 * @param text the length with its unit
 */
public record ScaleBar(Distance length, String text) {

  /** The longest bar that is not longer than a distance above zero. */
  public static ScaleBar within(Distance most, Unit unit) {
    double whole = most.in(unit);
    double length = Math.pow(10, Math.floor(Math.log10(whole)));
    length = (whole >= 5 * length) ? 5 * length : (whole >= 2 * length) ? 2 * length : length;
    String number =
        length >= 1 ? String.format(Locale.ROOT, "%.0f", length) : String.valueOf(length);
    return new ScaleBar(Distance.of(length, unit), number + " " + unit.symbol());
  }
}
