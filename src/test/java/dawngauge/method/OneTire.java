package dawngauge.method;

import dawngauge.trip.Gauge;
import dawngauge.trip.HeatRecord;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Sections 4 to 7 and 11: one tire from stop to stop. Pascal, kelvin, seconds. */
final class OneTire {
  private static final double MONTH = 30.4375 * 86_400;
  private static final double SEVENTY = 294.261;
  private static final double PSI = 6894.757;

  /** The tire at a moment. */
  record Moment(
      double reading,
      double settled,
      double judged,
      double low,
      double settledSigma,
      double readingSigma,
      double sigma,
      double fineSigma) {}

  /** The tire at a stop and on the leg ahead; null where nothing is known. */
  record AtStop(
      @Nullable Moment arrival,
      @Nullable Moment leaving,
      @Nullable Moment low,
      boolean aheadKnown) {}

  /** Index 0: the last reading or setting. */
  private record Origin(
      double seconds,
      double fill,
      double kelvins,
      double repeat,
      double offset,
      double airSigma,
      boolean airExpected,
      double warmSigma) {}

  final List<AtStop> stops = new ArrayList<>();
  private final Trip trip;
  private final Samples samples;
  private final Tire tire;
  private final Curves curves;
  private final Warmth warmth;
  private final double[] byAir;
  private double fill = Double.NaN;
  private @Nullable Origin origin;

  /**
   * Follows a tire.
   *
   * @param set what is taken as set at each stop; NaN for nothing
   */
  OneTire(Trip trip, Times times, Samples samples, WheelPosition position, double[] set) {
    this.trip = trip;
    this.samples = samples;
    this.tire = trip.rig().fittedAt(position).orElseThrow();
    this.curves = new Curves(trip.rig(), position);
    this.warmth =
        new Warmth(curves.ratedSingle, samples.kelvins[0], recordOf(tire), tire.heatFactor());
    this.byAir = Arrays.stream(samples.kelvins).map(warmth::byAir).toArray();
    samples.straighten(byAir);
    Weights weights = new Weights(trip);
    for (int i = 0; i < set.length; i++) {
      int node = samples.node(times.arrive[i]);
      Moment arrival = judgedAt(node);
      note(node);
      arrival = arrival == null ? judgedAt(node) : arrival;
      set(node, times.check[i], set[i]);
      while (samples.seconds[node] < times.leave[i]) {
        goOver(node, 0, 0);
        node++;
        note(node);
        set(node, times.check[i], set[i]);
      }
      Moment leaving = judgedAt(node);
      Moment low = leaving;
      boolean aheadKnown = i == set.length - 1 || !samples.bridged[node];
      if (i < set.length - 1) {
        Weights.Load load = weights.carried(i, position);
        double rise = rise(load.mean(), times.speed[i]);
        while (samples.seconds[node] < times.arrive[i + 1]) {
          goOver(node, rise, load.spread());
          node++;
          aheadKnown &= !samples.bridged[node];
          Moment here = judgedAt(node);
          low = here != null && (low == null || here.judged < low.judged) ? here : low;
        }
      }
      stops.add(new AtStop(arrival, leaving, i < set.length - 1 ? low : null, aheadKnown));
    }
  }

  private static String recordOf(Tire tire) {
    HeatRecord record = tire.heatRecord();
    return record == null ? "" : record.factor() + " ± " + record.spread();
  }

  private double rise(double load, double speed) {
    double p68 = Objects.requireNonNull(origin).fill * 293.15 - 101_325;
    return warmth.rise(load / curves.rated, p68 / curves.ratedPressure, speed, tire.heatFactor());
  }

  private void goOver(int node, double rise, double loadSpread) {
    double before = warmth.kelvins();
    double seconds = samples.seconds[node + 1] - samples.seconds[node];
    boolean rolls = samples.leg[node] >= 0;
    warmth.goOver(
        samples.kelvins[node],
        samples.kelvins[node + 1],
        seconds,
        rolls,
        rise * byAir[node],
        rise * byAir[node + 1],
        loadSpread);
    Origin known = origin;
    if (known != null) {
      double mean = (before + warmth.kelvins()) / 2;
      double around = (samples.pressure[node] + samples.pressure[node + 1]) / 2;
      double k =
          tire.lossPerDay() == null
              ? 0.75 / 35 / MONTH * 293.15 / SEVENTY * Math.pow(1.9, (mean - SEVENTY) / 10)
              : tire.lossPerDay().value().pascals() / (known.fill * 293.15 - 101_325) / 86_400;
      double empty = around / mean;
      fill = empty + (fill - empty) * Math.exp(-k * seconds * mean / 293.15);
    }
  }

  /** What is taken as set at the check. */
  private void set(int node, double check, double figure) {
    Origin known = origin;
    if (samples.seconds[node] == check && !Double.isNaN(figure) && known != null) {
      // The gauge is that of the reading before; a joined origin's repeatability is not the
      // gauge's.
      setTo(node, figure, gaugeOf(node));
    }
  }

  /** Gauge with which the tire was last read. */
  private String gaugeOf(int node) {
    String name = "";
    for (LogEvent event : trip.log()) {
      if (event instanceof LogEvent.Reading reading
          && reading.tire().equals(tire.id())
          && Times.of(reading.time()) <= samples.seconds[node]) {
        name = reading.gauge();
      }
    }
    return name;
  }

  private void note(int node) {
    for (LogEvent event : trip.log()) {
      boolean now = Times.of(event.time()) == samples.seconds[node];
      if (event instanceof LogEvent.Reading reading && now && reading.tire().equals(tire.id())) {
        read(node, reading);
      } else if (event instanceof LogEvent.Adjustment to && now && to.tire().equals(tire.id())) {
        double open = to.to().value().pascals() + readsLow(node, to.gauge());
        setTo(node, open, to.gauge());
      }
    }
  }

  private void read(int node, LogEvent.Reading reading) {
    boolean sun = reading.state() == ReadingState.COLD_IN_SUN;
    Moment expected = at(node);
    double before = fill;
    Origin earlier = origin;
    double shown = reading.pressure().value().pascals() + readsLow(node, reading.gauge());
    double air = reading.air() == null ? samples.kelvins[node] : reading.air().value().kelvins();
    double kelvins = air + warmth.kelvins() - samples.kelvins[node] + (sun ? 7.5 : 0);
    double warmSigma = sun ? Math.hypot(warmth.sigma(), 15 / Math.sqrt(12)) : warmth.sigma();
    double airSigma = reading.air() == null ? samples.sigma[node] : 1;
    boolean airExpected = reading.air() == null && reading.tireTemperature() == null;
    if (reading.tireTemperature() != null) {
      kelvins = reading.tireTemperature().value().kelvins();
      warmSigma = 2;
      airSigma = 0;
      warmth.noted(kelvins);
    }
    Origin read = known(node, shown, reading.gauge(), kelvins, airSigma, airExpected, warmSigma);
    if (expected == null || reading.state() == ReadingState.COLD) {
      return;
    }
    double growth = samples.kelvins[node] / kelvins;
    double s1 = expected.settledSigma;
    double s2 = Math.hypot(growth * read.repeat, read.fill * growth * warmSigma);
    double off = (shown - expected.reading) / Math.hypot(s1, s2);
    boolean filled =
        reading.state() == ReadingState.JUST_FILLED || reading.tireTemperature() != null;
    if (off >= -2 && (off <= 2 || !filled)) {
      if (read.fill > before && !filled) {
        fill = before;
        origin = earlier;
        return;
      }
      double weight = s1 * s1 / (s1 * s1 + s2 * s2);
      fill = before + weight * (read.fill - before);
      double repeat = 1 / Math.sqrt(1 / (s1 * s1) + 1 / (s2 * s2));
      origin = new Origin(read.seconds, fill, kelvins, repeat, read.offset, 0, true, 0);
    }
  }

  private void setTo(int node, double open, String gauge) {
    double airSigma = samples.sigma[node];
    known(node, open, gauge, warmth.kelvins(), airSigma, true, warmth.sigma());
  }

  private Origin known(
      int node,
      double open,
      String gauge,
      double kelvins,
      double airSigma,
      boolean airExpected,
      double warmSigma) {
    Gauge with = trip.rig().gauge(gauge).orElseThrow();
    double step = with.step().value().pascals();
    double limit =
        with.span() == null || with.grade() == null
            ? 2 * PSI
            : with.span().value().pascals() * with.grade().value().value();
    fill = (open + samples.pressure[node]) / kelvins;
    Origin found =
        new Origin(
            samples.seconds[node],
            fill,
            kelvins,
            Math.max(0.5 * PSI, step / 2),
            limit / Math.sqrt(3),
            airSigma,
            airExpected,
            warmSigma);
    origin = found;
    return found;
  }

  private double readsLow(int node, String gauge) {
    boolean sealed =
        trip.rig().gauge(gauge).orElseThrow().kind() == Gauge.Kind.SEA_LEVEL_SUBTRACTED;
    return sealed ? 101_325 - samples.pressure[node] : 0;
  }

  private @Nullable Moment judgedAt(int node) {
    return samples.bridged[node] ? null : at(node);
  }

  /** Sections 4 and 11. */
  private @Nullable Moment at(int node) {
    Origin from = origin;
    if (from == null) {
      return null;
    }
    double air = samples.kelvins[node];
    double around = samples.pressure[node];
    double age = samples.seconds[node] - from.seconds;
    double memory = from.airExpected ? Math.exp(-age / (12 * 3600)) : 0;
    double g = air / from.kelvins;
    double x = fill * g * from.airSigma;
    double y = fill * samples.sigma[node];
    double byAir = x * x + y * y - 2 * memory * x * y;
    double loss = 0.4 * (from.fill - fill) * air;
    double weather = 2 * (1 - Math.exp(-age / 86_400)) * Math.pow(0.3 * PSI, 2) / 3;
    double rest = byAir + Math.pow(fill * g * from.warmSigma, 2) + loss * loss + weather;
    double repeat = Math.pow(g * from.repeat, 2);
    double fine = Math.pow(g * Math.min(from.repeat, 0.5 * PSI), 2);
    double offset = Math.pow(g * from.offset, 2);
    double settledReading = rest + repeat + from.repeat * from.repeat;
    double warm = Math.pow(fill * warmth.sigma(), 2);
    double judged = fill * Math.min(air, warmth.kelvins()) - around;
    return new Moment(
        fill * warmth.kelvins() - around,
        fill * air - around,
        judged,
        judged - fill * samples.coldSide[node] * (1 - memory),
        Math.sqrt(settledReading),
        Math.sqrt(settledReading + warm),
        Math.sqrt(rest + repeat + offset),
        Math.sqrt(rest + fine + offset));
  }
}
