package dawngauge.ambient;

import dawngauge.explain.Phrase;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Temperature;
import dawngauge.trip.Provenance;
import java.util.List;

/** One temperature, whatever the time. */
final class SteadyAir implements AirSeries {

  private final Temperature temperature;
  private final Provenance provenance;
  private final Sureness sureness;

  SteadyAir(Entered<Temperature> temperature, Provenance provenance, Sureness sureness) {
    this.temperature = temperature.value();
    this.provenance = provenance;
    this.sureness = sureness;
  }

  @Override
  public double kelvinsAt(double epochSeconds) {
    return temperature.kelvins();
  }

  @Override
  public double sigmaAt(double epochSeconds) {
    return sureness.sigmaAt(epochSeconds);
  }

  @Override
  public double coldSideAt(double epochSeconds) {
    return sureness.coldSideAt(epochSeconds);
  }

  @Override
  public List<Double> breakpoints() {
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
