package dawngauge.ledger;

import dawngauge.forecast.ReadingCheck;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.rules.Quantile;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A reading against what was expected of it, in words. */
public final class LiveLines {

  /** What one tire of an axle may read besides the others, in standard deviations. */
  private static final double ALONE = 2;

  private LiveLines() {}

  /** What is said of a reading whose high side brakes may have raised. */
  private static final String BRAKED = ", more where brakes are hot";

  /** What the gauge should show, "76–80"; empty where nothing is expected. */
  public static String expected(@Nullable ReadingCheck check, UnitSystem units) {
    if (check == null || check.first() || Double.isNaN(check.sigma())) {
      return "";
    }
    return Wording.pressure(check.expected() - spread(check), units)
        + "–"
        + Wording.pressure(check.expected() + spread(check), units)
        + (check.braked() ? "+" : "");
  }

  /** So far from what is expected 9 of 10 readings lie, in pascal; NaN for the first of a tire. */
  public static double spread(ReadingCheck check) {
    return Quantile.NINETY_WITHIN * check.sigma();
  }

  /**
   * What the gauge should show and how far off that is, a sentence; empty where nothing is
   * expected.
   */
  public static String told(ReadingCheck check, UnitSystem units) {
    String off = off(check, units);
    return off.isEmpty()
        ? ""
        : "Should read "
            + expected(check, units)
            + " "
            + units.unitOf(QuantityKind.GAUGE_PRESSURE).symbol()
            + " in 9 of 10 cases"
            + (check.braked() ? BRAKED : "")
            + "; off by "
            + off;
  }

  /** How far off it is, "-3.2 psi, 2.4 σ"; empty where nothing was expected. */
  public static String off(@Nullable ReadingCheck check, UnitSystem units) {
    if (check == null || check.first() || Double.isNaN(check.sigma())) {
      return "";
    }
    return signed(check.off(), units)
        + String.format(Locale.ROOT, ", %.1f σ", Math.abs(check.deviations()));
  }

  /** Whether it is off by more than the weather and the gauge explain. */
  public static boolean unexpected(@Nullable ReadingCheck check) {
    return check != null && check.unexpected();
  }

  /**
   * How the other tires of its axle read at this stop beside it.
   *
   * @param check the reading
   * @param mates the readings of the others, by short form
   */
  public static String mates(
      ReadingCheck check, Map<String, ReadingCheck> mates, UnitSystem units) {
    List<String> told = new ArrayList<>();
    double sum = 0;
    int count = 0;
    for (Map.Entry<String, ReadingCheck> mate : mates.entrySet()) {
      ReadingCheck other = mate.getValue();
      if (!other.first() && !Double.isNaN(other.off())) {
        told.add(mate.getKey() + " " + signed(other.off(), units));
        sum += other.off();
        count++;
      }
    }
    if (count == 0 || check.first()) {
      return "";
    }
    double apart = check.off() - sum / count;
    // What the air and the day do to one tire of an axle they do to the others.
    double own = check.repeatSigma() * Math.sqrt(2 + 2.0 / count);
    String beside = "on its axle: " + String.join(", ", told);
    return Math.abs(apart) > ALONE * own
        ? beside + "; this one alone is " + (apart < 0 ? "lower" : "higher")
        : unexpected(check) ? beside + "; all alike: the air, the gauge or the sun" : beside;
  }

  private static String signed(double pascals, UnitSystem units) {
    String number =
        units.format(new GaugePressure(Math.abs(pascals)), units == UnitSystem.US ? 1 : 2);
    return (pascals < 0 ? "-" : "+") + number;
  }
}
