package dawngauge.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.random.HaltonSequenceGenerator;

/**
 * The chance that some tire has too little for its load on some day of a trip, from the chances of
 * each tire at its likeliest moment of each day. Errors last as long as what makes them: the
 * constant error of the gauge and the air at the reading are drawn once for all tires, the air of a
 * day anew each day for all tires, what is a tire's own (its load above all, and the reading) once
 * for that tire.
 *
 * <p>P = 1 − E Π_tires Φ(least over its days of (distance + g·x + b·u + a·y_day) / own); x, u and y
 * are standard normal, E the mean over 1,000 points of Halton's sequence (Halton 1960).
 */
public final class WholeTrip {

  private static final int POINTS = 1000;

  /** Before these the sequence is not yet even. */
  private static final int SKIPPED = 40;

  /** As many as the sequence has; later days are drawn with earlier ones. */
  private static final int MOST_DRAWN = 40;

  /** Of the gauge and of the air at the reading. */
  private static final int OF_THE_TRIP = 2;

  /** The own part of an error is never taken for less than this part of it. */
  private static final double LEAST_OWN = 0.05;

  /** Normal deviates of each point, the same for every trip. */
  private static final double[][] DRAWS = draws();

  private WholeTrip() {}

  /**
   * A tire at its likeliest moment of a day. Parts of the error are standard deviations in the unit
   * of {@code sigma}.
   *
   * @param tire which one
   * @param day any number of the day
   * @param chance that it has too little for its load then
   * @param sigma one standard deviation of its distance from what its load needs
   * @param gauge the part of it that is the gauge's constant error
   * @param airRead the part of it that is the air's when the tire was read or set
   * @param air the part of it that is the air's now
   */
  public record Moment(
      String tire,
      long day,
      double chance,
      double sigma,
      double gauge,
      double airRead,
      double air) {
    private double distance() {
      return Quantile.deviations(1 - chance) * sigma;
    }

    private double own() {
      double own = sigma * sigma - gauge * gauge - airRead * airRead - air * air;
      return Math.max(Math.sqrt(Math.max(0, own)), LEAST_OWN * sigma);
    }
  }

  /** The same with what does not change from draw to draw, in deviations of its own error. */
  private record Parts(double distance, double gauge, double airRead, double air, int drawn) {}

  /**
   * The chance over all moments, 0 to 1: never under the largest of them, never over their sum.
   *
   * @param moments one a tire and day; those without a chance are left out
   */
  public static double chance(List<Moment> moments) {
    double largest = 0;
    double sum = 0;
    Map<Long, Integer> days = new TreeMap<>();
    for (Moment moment : moments) {
      largest = Math.max(largest, moment.chance);
      sum += moment.chance;
      days.put(moment.day, 0);
    }
    if (largest >= 1 || sum == 0) {
      return largest;
    }
    int drawn = OF_THE_TRIP;
    for (Map.Entry<Long, Integer> day : days.entrySet()) {
      day.setValue(drawn);
      drawn = drawn + 1 < MOST_DRAWN ? drawn + 1 : OF_THE_TRIP;
    }
    double sound = sound(byTire(moments, days));
    return Math.min(Math.min(1, sum), Math.max(largest, 1 - sound));
  }

  private static List<List<Parts>> byTire(List<Moment> moments, Map<Long, Integer> days) {
    Map<String, List<Parts>> tires = new LinkedHashMap<>();
    for (Moment moment : moments) {
      if (moment.chance > 0) {
        double own = moment.own();
        tires
            .computeIfAbsent(moment.tire, tire -> new ArrayList<>())
            .add(
                new Parts(
                    moment.distance() / own,
                    moment.gauge / own,
                    moment.airRead / own,
                    moment.air / own,
                    days.getOrDefault(moment.day, OF_THE_TRIP)));
      }
    }
    return List.copyOf(tires.values());
  }

  private static double sound(List<List<Parts>> tires) {
    double sound = 0;
    for (double[] draw : DRAWS) {
      double product = 1;
      for (List<Parts> tire : tires) {
        double least = Double.POSITIVE_INFINITY;
        for (Parts day : tire) {
          double left = day.distance + day.gauge * draw[0] + day.airRead * draw[1];
          least = Math.min(least, left + day.air * draw[day.drawn]);
        }
        product *= Quantile.under(least);
      }
      sound += product / POINTS;
    }
    return sound;
  }

  private static double[][] draws() {
    HaltonSequenceGenerator points = new HaltonSequenceGenerator(MOST_DRAWN);
    points.skipTo(SKIPPED);
    double[][] draws = new double[POINTS][];
    for (int point = 0; point < POINTS; point++) {
      draws[point] = points.nextVector();
      for (int i = 0; i < MOST_DRAWN; i++) {
        draws[point][i] = Quantile.deviations(draws[point][i]);
      }
    }
    return draws;
  }
}
