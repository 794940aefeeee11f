package dawngauge.trip;

/**
 * How warm a tire ran on earlier trips of its rig, by its readings, as a part of the modelled rise.
 *
 * @param factor heat factor, {@link Tire#LEAST_HEAT_FACTOR} to {@link Tire#MOST_HEAT_FACTOR}
 * @param spread one standard deviation of it, above zero
 */
public record HeatRecord(double factor, double spread) {

  /** No record is surer than this. */
  public static final double LEAST_SPREAD = 0.01;

  /** None is less sure: that is no record. */
  public static final double MOST_SPREAD = 1;
}
