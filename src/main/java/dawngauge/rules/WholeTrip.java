package dawngauge.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The chance that some tire has too little for its load on some day of a trip, from the chances of
 * each tire at its likeliest moment of each day. Errors that are shared are drawn together: the
 * constant error of the gauge over the whole trip, that of the air over a day. Days are independent
 * beyond that.
 *
 * <p>P = 1 − E_g Π_days E_a Π_tires Φ((distance + g·x + a·y) / own), both expectations over
 * standard normal x and y by Gauss–Hermite quadrature with 20 nodes (Abramowitz and Stegun 1964,
 * 25.4.46).
 */
public final class WholeTrip {

  private static final GaussIntegrator NODES = new GaussIntegratorFactory().hermite(20);

  /** The own part of an error is never taken for less than this part of it. */
  private static final double LEAST_OWN = 0.05;

  private WholeTrip() {}

  /**
   * A tire at its likeliest moment of a day.
   *
   * @param day any number of the day
   * @param chance that it has too little for its load then
   * @param sigma one standard deviation of its distance from what its load needs
   * @param gauge the part of it that is the gauge's constant error
   * @param air the part of it that is the air's
   */
  public record Moment(long day, double chance, double sigma, double gauge, double air) {
    private double distance() {
      return Quantile.deviations(1 - chance) * sigma;
    }

    private double own() {
      double own = Math.sqrt(Math.max(0, sigma * sigma - gauge * gauge - air * air));
      return Math.max(own, LEAST_OWN * sigma);
    }
  }

  /**
   * The chance over all moments, 0 to 1: never under the largest of them, never over their sum.
   *
   * @param moments one a tire and day; those without a chance are left out
   */
  public static double chance(List<Moment> moments) {
    double largest = 0;
    double sum = 0;
    Map<Long, List<Moment>> days = new TreeMap<>();
    for (Moment moment : moments) {
      largest = Math.max(largest, moment.chance);
      sum += moment.chance;
      if (moment.chance > 0 && moment.chance < 1) {
        days.computeIfAbsent(moment.day, day -> new ArrayList<>()).add(moment);
      }
    }
    if (largest >= 1) {
      return 1;
    }
    double sound = 0;
    for (int i = 0; i < NODES.getNumberOfPoints(); i++) {
      double product = 1;
      for (List<Moment> day : days.values()) {
        product *= ofDay(day, Math.sqrt(2) * NODES.getPoint(i));
      }
      sound += NODES.getWeight(i) / Math.sqrt(Math.PI) * product;
    }
    return Math.min(Math.min(1, sum), Math.max(largest, 1 - sound));
  }

  /** Chance that all tires of a day are sound with a gauge so many deviations off. */
  private static double ofDay(List<Moment> tires, double gauge) {
    double sound = 0;
    for (int i = 0; i < NODES.getNumberOfPoints(); i++) {
      double air = Math.sqrt(2) * NODES.getPoint(i);
      double product = 1;
      for (Moment tire : tires) {
        double left = tire.distance() + tire.gauge * gauge + tire.air * air;
        product *= Quantile.under(left / tire.own());
      }
      sound += NODES.getWeight(i) / Math.sqrt(Math.PI) * product;
    }
    return sound;
  }
}
