package dawngauge.ambient;

import dawngauge.explain.Phrase;
import dawngauge.quantity.Entered;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Provenance;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Temperatures at given times: linear between them, steady before the first and after the last,
 * with a spread that grows by the hour out there.
 */
final class HourlyAir implements AirSeries {

  /** Growth of the spread outside the given times, in kelvin an hour; ours, no source. */
  private static final double GROWTH = 0.5;

  private final double[] seconds;
  private final double[] kelvins;
  private final Provenance provenance;
  private final double sigma;

  HourlyAir(
      AmbientEntry.Hourly hourly,
      Provenance provenance,
      @Nullable Entered<TemperatureDifference> uncertainty) {
    List<AmbientEntry.Hourly.At> hours = hourly.hours();
    seconds = new double[hours.size()];
    kelvins = new double[hours.size()];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] = hours.get(i).time().instant().getEpochSecond();
      kelvins[i] = hours.get(i).temperature().value().kelvins();
    }
    this.provenance = provenance;
    this.sigma = uncertainty == null ? SteadyAir.SIGMA : uncertainty.value().kelvins();
  }

  @Override
  public double kelvinsAt(double epochSeconds) {
    int last = seconds.length - 1;
    if (epochSeconds <= seconds[0]) {
      return kelvins[0];
    } else if (epochSeconds >= seconds[last]) {
      return kelvins[last];
    }
    int i = 1;
    while (seconds[i] < epochSeconds) {
      i++;
    }
    double part = (epochSeconds - seconds[i - 1]) / (seconds[i] - seconds[i - 1]);
    return kelvins[i - 1] + part * (kelvins[i] - kelvins[i - 1]);
  }

  @Override
  public double sigmaAt(double epochSeconds) {
    double outside =
        Math.max(
            0, Math.max(seconds[0] - epochSeconds, epochSeconds - seconds[seconds.length - 1]));
    return sigma + GROWTH * outside / 3600;
  }

  @Override
  public double coldSideAt(double epochSeconds) {
    return 0;
  }

  @Override
  public List<Double> kinks() {
    List<Double> all = new ArrayList<>();
    for (double second : seconds) {
      all.add(second);
    }
    return all;
  }

  @Override
  public Provenance provenance() {
    return provenance;
  }

  @Override
  public Phrase given() {
    return Phrase.of(
        "{0}: by the hour, {1} times", provenance.kind().word(), String.valueOf(seconds.length));
  }
}
