package dawngauge.trip;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Ratio;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where on a trailer's deck a load stands, and what of it hitch and axles take: moments about the
 * hitch, the axles as one group that shares alike (common practice for equalized suspensions, no
 * source).
 *
 * @param load way from the hitch back to the load
 * @param axles way from the hitch back to the middle of the axles
 */
public record DeckPlace(Distance load, Distance axles) {

  /**
   * Parts of a load.
   *
   * @param axles of each axle, to a tenth of a percent
   * @param hitch of the hitch; together with the axles' 100 %
   */
  public record Shares(Map<AxleRef, Entered<Ratio>> axles, Entered<Ratio> hitch) {

    /** Copies the map. */
    public Shares {
      axles = Map.copyOf(axles);
    }
  }

  /**
   * What hitch and axles take of a load; empty where it stands before the hitch or behind the
   * middle of the axles, where it would lift the hitch: then no parts from 0 to 100 % tell it.
   */
  public Optional<Shares> shares(List<AxleRef> all) {
    double part = load.meters() / axles.meters();
    if (all.isEmpty() || !(part >= 0 && part <= 1)) {
      return Optional.empty();
    }
    BigDecimal each = BigDecimal.valueOf(100 * part / all.size()).setScale(1, RoundingMode.HALF_UP);
    Map<AxleRef, Entered<Ratio>> shares = new LinkedHashMap<>();
    all.forEach(axle -> shares.put(axle, percent(each)));
    BigDecimal rest =
        BigDecimal.valueOf(100).subtract(each.multiply(BigDecimal.valueOf(all.size())));
    return Optional.of(new Shares(shares, percent(rest.max(BigDecimal.ZERO))));
  }

  /** The same part for each axle, as near to 100 % together as tenths of a percent go. */
  public static Map<AxleRef, Entered<Ratio>> evenly(List<AxleRef> all) {
    Map<AxleRef, Entered<Ratio>> shares = new LinkedHashMap<>();
    BigDecimal each =
        BigDecimal.valueOf(100.0 / Math.max(1, all.size())).setScale(1, RoundingMode.HALF_UP);
    all.forEach(axle -> shares.put(axle, percent(each)));
    return shares;
  }

  private static Entered<Ratio> percent(BigDecimal percent) {
    BigDecimal plain = percent.stripTrailingZeros();
    BigDecimal shown = plain.scale() < 0 ? plain.setScale(0) : plain;
    return Entered.of(QuantityKind.RATIO, shown.toPlainString() + " %");
  }
}
