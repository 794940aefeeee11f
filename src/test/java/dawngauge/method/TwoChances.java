package dawngauge.method;

import java.util.function.DoubleUnaryOperator;

/**
 * Section 12, with floor and margin of section 10, of one tire; for speed it wants more pressure.
 */
record TwoChances(Curves curves, Weights.Load load, double forSpeed) {
  private static final int QUANTILES = 32;

  double underFloor(OneTire.Moment moment) {
    return chance(curves::likelyNeeded, moment);
  }

  double notShown(OneTire.Moment moment) {
    return chance(curves::needed, moment);
  }

  private double chance(DoubleUnaryOperator needed, OneTire.Moment moment) {
    return Math.max(
        chance(needed, moment.low(), moment.sigma()),
        chance(needed, moment.low(), moment.fineSigma()));
  }

  private double chance(DoubleUnaryOperator needed, double low, double sigma) {
    double sum = 0;
    for (int i = 0; i < QUANTILES; i++) {
      double pressure = needed.applyAsDouble(load.quantile((i + 0.5) / QUANTILES));
      sum += Double.isNaN(pressure) ? 1 : Bell.under((pressure + forSpeed - low) / sigma);
    }
    return sum / QUANTILES;
  }

  double floor() {
    return curves.needed(load.mean()) + forSpeed;
  }

  double margin(OneTire.Moment moment) {
    return curves.carriedAt(moment.judged() - forSpeed) / load.mean() - 1;
  }
}
