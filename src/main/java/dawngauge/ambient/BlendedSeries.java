package dawngauge.ambient;

import dawngauge.explain.Phrase;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Provenance;
import java.util.ArrayList;
import java.util.List;

/**
 * A forecast by the hour that ends, and typical days that go on: behind the last hour what the
 * forecast differs from the typical curve fades away, so that the seam has no step. The spread
 * grows towards that of the typical days at the same pace.
 */
final class BlendedSeries implements AirSeries {

  /** In so long the difference falls to 1/e, in seconds; ours, no source. */
  private static final double FADES = 24 * 3600.0;

  private final AirSeries hours;
  private final AirSeries typical;
  private final double seam;

  /**
   * Joins the two.
   *
   * @param hours the forecast
   * @param figure its hours
   * @param typical what goes on behind it
   */
  BlendedSeries(AirSeries hours, AmbientEntry.Hourly figure, AirSeries typical) {
    this.hours = hours;
    this.typical = typical;
    this.seam = figure.hours().get(figure.hours().size() - 1).time().instant().getEpochSecond();
  }

  @Override
  public double kelvinsAt(double epochSeconds) {
    if (epochSeconds <= seam) {
      return hours.kelvinsAt(epochSeconds);
    }
    double difference = hours.kelvinsAt(seam) - typical.kelvinsAt(seam);
    return typical.kelvinsAt(epochSeconds) + difference * left(epochSeconds);
  }

  /** How much of the forecast is left, from 1 at the seam towards 0. */
  private double left(double epochSeconds) {
    return Math.exp(-(epochSeconds - seam) / FADES);
  }

  @Override
  public double sigmaAt(double epochSeconds) {
    if (epochSeconds <= seam) {
      return hours.sigmaAt(epochSeconds);
    }
    double left = left(epochSeconds);
    double at = typical.sigmaAt(epochSeconds);
    return Math.max(hours.sigmaAt(seam), at + (hours.sigmaAt(seam) - at) * left);
  }

  @Override
  public double coldSideAt(double epochSeconds) {
    return (epochSeconds <= seam ? hours : typical).coldSideAt(epochSeconds);
  }

  @Override
  public List<Double> breakpoints() {
    List<Double> all = new ArrayList<>(hours.breakpoints());
    typical.breakpoints().stream().filter(breakpoint -> breakpoint > seam).forEach(all::add);
    return all;
  }

  @Override
  public Provenance provenance() {
    return hours.provenance();
  }

  @Override
  public Phrase given() {
    return Phrase.of("{0}; then {1}", hours.given(), typical.given());
  }
}
