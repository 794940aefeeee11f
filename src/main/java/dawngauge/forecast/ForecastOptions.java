package dawngauge.forecast;

/**
 * What a user may choose about how limits are judged.
 *
 * @param confidence one-sided, per tire and judged point, with which a tire is to carry its load;
 *     0.9 unless chosen
 * @param reserve part of the load that a chosen target must leave to spare; 0.1 unless chosen
 *     (common practice, no source)
 */
public record ForecastOptions(double confidence, double reserve) {

  /** Refuses figures that make no sense. */
  public ForecastOptions {
    if (!(confidence >= 0.5 && confidence <= 0.999)) {
      throw new IllegalArgumentException("confidence " + confidence + " is outside 0.5 to 0.999");
    }
    if (!(reserve >= 0 && reserve <= 1)) {
      throw new IllegalArgumentException("reserve " + reserve + " is outside 0 to 1");
    }
  }
}
