package dawngauge.weights;

import java.util.HashMap;
import java.util.Map;

/**
 * A load that is a sum of parts, with the doubts of each. Doubts are independent and normal; a
 * difference takes away what both have in common.
 */
public final class SummedLoad {

  static final SummedLoad NOTHING = new SummedLoad(0, Map.of());

  private final double kilograms;

  /** What each doubt makes of it at one standard deviation, in kilogram with its sign. */
  private final Map<Doubt, Double> doubts;

  private SummedLoad(double kilograms, Map<Doubt, Double> doubts) {
    this.kilograms = kilograms;
    this.doubts = Map.copyOf(doubts);
  }

  /** A load without a doubt. */
  static SummedLoad of(double kilograms) {
    return new SummedLoad(kilograms, Map.of());
  }

  /** The likely load, in kilogram. */
  public double kilograms() {
    return kilograms;
  }

  /** One standard deviation of it, in kilogram. */
  public double sigma() {
    return Math.sqrt(covariance(this));
  }

  /** How far two loads go wrong together, in kilogram squared. */
  double covariance(SummedLoad other) {
    double sum = 0;
    for (Map.Entry<Doubt, Double> each : doubts.entrySet()) {
      sum += each.getValue() * other.doubts.getOrDefault(each.getKey(), 0.0);
    }
    return sum;
  }

  /** The same with a doubt more, in kilogram at one standard deviation. */
  SummedLoad doubted(Doubt doubt, double sigma) {
    Map<Doubt, Double> all = new HashMap<>(doubts);
    all.merge(doubt, sigma, Double::sum);
    return new SummedLoad(kilograms, all);
  }

  SummedLoad plus(SummedLoad other) {
    Map<Doubt, Double> all = new HashMap<>(doubts);
    other.doubts.forEach((doubt, sigma) -> all.merge(doubt, sigma, Double::sum));
    return new SummedLoad(kilograms + other.kilograms, all);
  }

  SummedLoad minus(SummedLoad other) {
    return plus(other.times(-1));
  }

  SummedLoad times(double part) {
    Map<Doubt, Double> all = new HashMap<>();
    doubts.forEach((doubt, sigma) -> all.put(doubt, sigma * part));
    return new SummedLoad(kilograms * part, all);
  }
}
