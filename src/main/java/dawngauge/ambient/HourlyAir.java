package dawngauge.ambient;

import dawngauge.explain.Phrase;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Provenance;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

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
  private final Sureness sureness;

  HourlyAir(AmbientEntry.Hourly hourly, Provenance provenance, Sureness sureness) {
    List<AmbientEntry.Hourly.At> hours = hourly.hours();
    seconds = new double[hours.size()];
    kelvins = new double[hours.size()];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] = hours.get(i).time().instant().getEpochSecond();
      kelvins[i] = hours.get(i).temperature().value().kelvins();
    }
    this.provenance = provenance;
    this.sureness = sureness;
  }

  /** The last of the given times, in epoch seconds. */
  double ends() {
    return seconds[seconds.length - 1];
  }

  @Override
  public double kelvinsAt(double epochSeconds) {
    int last = seconds.length - 1;
    if (epochSeconds <= seconds[0]) {
      return kelvins[0];
    } else if (epochSeconds >= seconds[last]) {
      return kelvins[last];
    }
    int found = Arrays.binarySearch(seconds, epochSeconds);
    if (found >= 0) {
      return kelvins[found];
    }
    int i = -found - 1;
    double part = (epochSeconds - seconds[i - 1]) / (seconds[i] - seconds[i - 1]);
    return kelvins[i - 1] + part * (kelvins[i] - kelvins[i - 1]);
  }

  @Override
  public double sigmaAt(double epochSeconds) {
    double outside =
        Math.max(
            0, Math.max(seconds[0] - epochSeconds, epochSeconds - seconds[seconds.length - 1]));
    return sureness.sigmaAt(epochSeconds) + GROWTH * outside / 3600;
  }

  @Override
  public double coldSideAt(double epochSeconds) {
    return sureness.coldSideAt(epochSeconds);
  }

  @Override
  public List<Double> breakpoints() {
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
    Phrase hours = Phrase.of("by the hour, {0} times", String.valueOf(seconds.length));
    Instant given = provenance.issued();
    Entered<Elevation> height = provenance.elevation();
    String source = provenance.source() == null ? "" : " " + provenance.source();
    if (given == null) {
      return Phrase.of("{0}{1}: {2}", provenance.kind().word(), source, hours);
    }
    String when = given.truncatedTo(ChronoUnit.MINUTES).toString();
    return height == null
        ? Phrase.of("{0}{1}, issued {2}: {3}", provenance.kind().word(), source, when, hours)
        : Phrase.of(
            "{0}{1}, issued {2}, for {3}: {4}",
            provenance.kind().word(), source, when, height.value(), hours);
  }
}
