package dawngauge.ambient;

import dawngauge.explain.Phrase;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.trip.Provenance;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One temperature, whatever the time. */
final class SteadyAir implements AirSeries {

  /** Standard deviation of a temperature given for an hour, in kelvin; ours, no source. */
  static final double SIGMA = 2;

  private final Temperature temperature;
  private final Provenance provenance;
  private final double sigma;

  SteadyAir(
      Entered<Temperature> temperature,
      Provenance provenance,
      @Nullable Entered<TemperatureDifference> uncertainty) {
    this.temperature = temperature.value();
    this.provenance = provenance;
    this.sigma = uncertainty == null ? SIGMA : uncertainty.value().kelvins();
  }

  @Override
  public double kelvinsAt(double epochSeconds) {
    return temperature.kelvins();
  }

  @Override
  public double sigmaAt(double epochSeconds) {
    return sigma;
  }

  @Override
  public double coldSideAt(double epochSeconds) {
    return 0;
  }

  @Override
  public List<Double> kinks() {
    return List.of();
  }

  @Override
  public Provenance provenance() {
    return provenance;
  }

  @Override
  public Phrase given() {
    return Phrase.of("{0}: {1} for the whole stay", provenance.kind().word(), temperature);
  }
}
