package dawngauge.forecast;

import dawngauge.physics.GasLaw;
import dawngauge.physics.StandardAtmosphere;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Temperature;
import dawngauge.rules.GaugeErrors;
import dawngauge.trip.Gauge;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import org.jspecify.annotations.Nullable;

/** From what a gauge showed to how much air is in the tire, at one node of the timeline. */
public final class Readings {

  /**
   * A tire in the sun is 0 to 15 K warmer than the air, taken as even: the middle, in kelvin;
   * inferred.
   */
  public static final double SUN_MIDDLE = 7.5;

  /** Its standard deviation. */
  public static final double SUN_SIGMA = 2 * SUN_MIDDLE / Math.sqrt(12);

  /** Standard deviation of an air temperature measured beside the tire, in kelvin; ours. */
  private static final double MEASURED_SIGMA = 1;

  /** Standard deviation of a tire's own temperature as noted by the crew, in kelvin; ours. */
  private static final double OWN_SIGMA = 2;

  /** A warm reading so many deviations off is no confirmation. */
  private static final double UNEXPECTED = 2;

  private final TripContext context;
  private final Timeline timeline;
  private final int node;
  private final Heat heat;
  private final double heatSigma;
  private final boolean warmthKnown;

  Readings(TripContext context, TireState tire, int node) {
    this.context = context;
    this.timeline = context.timeline;
    this.node = node;
    this.heat = tire.heat();
    this.heatSigma = tire.warmSigma();
    this.warmthKnown = tire.warmthKnown();
  }

  /** The fill by a reading; null where the tire's temperature then is not known. */
  @Nullable FillOrigin read(LogEvent.Reading reading) {
    double air = timeline.air[node];
    double airSigma = timeline.sigma[node];
    Entered<Temperature> measured = reading.air();
    if (measured != null) {
      air = measured.value().kelvins();
      airSigma = MEASURED_SIGMA;
    }
    Entered<Temperature> own = reading.tireTemperature();
    boolean cold = reading.state() == ReadingState.COLD;
    boolean sun = reading.state() == ReadingState.COLD_IN_SUN;
    double over = warmthKnown ? heat.kelvins() - timeline.air[node] : 0;
    double warmSigma = warmthKnown ? heatSigma : 0;
    if (own != null) {
      over = own.value().kelvins() - air;
      airSigma = 0;
      warmSigma = OWN_SIGMA;
    } else if (sun) {
      over = over + SUN_MIDDLE;
      warmSigma = Math.hypot(warmSigma, SUN_SIGMA);
    } else if (!cold && (!warmthKnown || !heat.tellsWarmth())) {
      return null;
    }
    return origin(
        FillOrigin.Kind.READING,
        reading.pressure().value().pascals(),
        reading.gauge(),
        air,
        over,
        airSigma,
        measured == null && own == null,
        warmSigma);
  }

  /** The fill by an adjustment; null where the tire's temperature then is not known. */
  @Nullable FillOrigin adjusted(LogEvent.Adjustment adjustment) {
    return warmthKnown
        ? origin(
            FillOrigin.Kind.ADJUSTMENT,
            adjustment.to().value().pascals(),
            adjustment.gauge(),
            timeline.air[node],
            heat.kelvins() - timeline.air[node],
            timeline.sigma[node],
            true,
            heatSigma)
        : null;
  }

  /**
   * The fill by a setting that is taken as done.
   *
   * @param before the tire just before it
   */
  FillOrigin assumed(Setting setting, TireSnapshot before) {
    double kelvins = warmthKnown ? heat.kelvins() : before.airKelvins();
    return new FillOrigin(
        FillOrigin.Kind.ASSUMED,
        before.origin().gauge(),
        before.origin().errors(),
        before.seconds(),
        setting.gaugePascals(),
        kelvins,
        before.airKelvins(),
        before.airPressure(),
        before.elevation(),
        GasLaw.fill(setting.gaugePascals(), before.airPressure(), kelvins),
        before.origin().errors().repeat(),
        before.origin().errors().offset(),
        timeline.sigma[node],
        true,
        warmthKnown ? heatSigma : 0);
  }

  private @Nullable FillOrigin origin(
      FillOrigin.Kind kind,
      double shown,
      String gaugeName,
      double air,
      double over,
      double airSigma,
      boolean airExpected,
      double warmSigma) {
    double around = timeline.pressure[node];
    if (Double.isNaN(air) || Double.isNaN(around)) {
      return null;
    }
    GaugeErrors errors = errors(gaugeName);
    double open = shown + readsLow(gaugeName);
    double kelvins = air + over;
    return new FillOrigin(
        kind,
        gaugeName,
        errors,
        timeline.seconds[node],
        open,
        kelvins,
        air,
        around,
        timeline.elevation[node],
        GasLaw.fill(open, around, kelvins),
        errors.repeat(),
        errors.offset(),
        airSigma,
        airExpected,
        warmSigma);
  }

  /** What an open gauge shows where a reading was taken; as read where the height is not known. */
  double open(LogEvent.Reading reading) {
    double low = readsLow(reading.gauge());
    return reading.pressure().value().pascals() + (Double.isNaN(low) ? 0 : low);
  }

  GaugeErrors errors(String gauge) {
    return GaugeErrors.of(context.trip.rig().gauge(gauge).orElse(null));
  }

  /** What a gauge is expected to show: a tire in the sun more by half of what the sun may do. */
  double expected(TireSnapshot expected, LogEvent.Reading reading) {
    double sun = reading.state() == ReadingState.COLD_IN_SUN ? SUN_MIDDLE * expected.fill() : 0;
    return expected.reading() + sun - readsLow(reading.gauge());
  }

  /** Its spread: with another gauge than before, the constant errors of both do not cancel. */
  double expectedSigma(TireSnapshot expected, LogEvent.Reading reading) {
    FillOrigin before = expected.origin();
    double sun = reading.state() == ReadingState.COLD_IN_SUN ? SUN_SIGMA * expected.fill() : 0;
    double sigma = Math.hypot(expected.readingSigma(), sun);
    if (before.gauge().equals(reading.gauge())) {
      return sigma;
    }
    double now = errors(reading.gauge()).offset();
    return Math.sqrt(sigma * sigma + before.offsetSigma() * before.offsetSigma() + now * now);
  }

  /** How much less than an open gauge a gauge shows here: 0, or sea level's air less that here. */
  double readsLow(String gaugeName) {
    boolean sealed =
        context.trip.rig().gauge(gaugeName).map(Gauge::kind).orElse(Gauge.Kind.OPEN)
            == Gauge.Kind.SEA_LEVEL_SUBTRACTED;
    return sealed ? StandardAtmosphere.SEA_LEVEL_PRESSURE - timeline.pressure[node] : 0;
  }

  /** Spread of the settled pressure by an origin alone, in pascal. */
  static double settledSigma(FillOrigin origin, double airKelvins) {
    double growth = airKelvins / origin.tireKelvins();
    double air = origin.fill() * growth;
    return Math.sqrt(
        Math.pow(growth * origin.repeatSigma(), 2) + Math.pow(air * origin.warmSigma(), 2));
  }

  /**
   * Whether a reading of a tire that is not cold is so far above what is expected that it tells of
   * warmth, for air does not come by itself.
   *
   * @param off how much more it shows than expected, in pascal
   * @param before one standard deviation of a settled reading by what was known, in pascal
   * @param now the same by the reading alone
   */
  public static boolean isWarmth(double off, double before, double now) {
    return off > UNEXPECTED * Math.hypot(before, now);
  }

  /**
   * What is known after a reading. A cold one replaces what was known. A warm one that tells of
   * less air is joined with it by weight, since a morning's cold reading often tells more; one that
   * tells of far less replaces it. One that tells of more tells of warmth, for air does not come by
   * itself, unless the tire was just filled or its own temperature is known.
   *
   * @return null where it tells of warmth alone, so that what was known stays
   */
  static @Nullable FillOrigin joined(
      FillOrigin read, TireSnapshot expected, LogEvent.Reading reading) {
    if (reading.state() == ReadingState.COLD) {
      return read;
    }
    double off = read.gaugePascals() - expected.reading();
    double before = expected.settledSigma();
    double now = settledSigma(read, expected.airKelvins());
    boolean added =
        reading.state() == ReadingState.JUST_FILLED || reading.tireTemperature() != null;
    if (isWarmth(-off, before, now) || (isWarmth(off, before, now) && added)) {
      return read;
    }
    if (read.fill() > expected.fill() && !added) {
      return null;
    }
    double weight = before * before / (before * before + now * now);
    double fill = expected.fill() + weight * (read.fill() - expected.fill());
    double repeat = before * Math.sqrt(1 - weight);
    return new FillOrigin(
        read.kind(),
        read.gauge(),
        read.errors(),
        read.seconds(),
        GasLaw.gauge(fill, read.tireKelvins(), read.airPressure()),
        read.tireKelvins(),
        read.airKelvins(),
        read.airPressure(),
        read.elevation(),
        fill,
        repeat,
        read.offsetSigma(),
        0,
        true,
        0);
  }
}
