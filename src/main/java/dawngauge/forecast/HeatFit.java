package dawngauge.forecast;

import dawngauge.physics.WarmUp;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Median;
import dawngauge.quantity.Unit;
import dawngauge.trip.HeatRecord;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.RigEdits;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How much more or less than modelled a tire warms up, by its warm readings. Only those count that
 * have a cold reading of the same tire on the same day before them, and nothing set between. Before
 * any reading the factor is 1 ± 0.25, or what earlier trips told; a reading moves it as far as it
 * is sure. After a long steep descent a warm reading tells of the brakes: it does not count.
 *
 * @param tire id of the tire
 * @param position where it stood at the last of the readings
 * @param before the factor the trip has now
 * @param factor the factor by the readings
 * @param sigma one standard deviation of it
 * @param readings how many count
 * @param usual the middle of the factors of the rig's other tires; 1 with fewer than three
 */
public record HeatFit(
    String tire,
    WheelPosition position,
    double before,
    double factor,
    double sigma,
    int readings,
    double usual) {

  /** So many times what is usual, or less, is a fault: it is not to be learned. */
  private static final double LEAST = 0.6;

  /** The same upwards. */
  private static final double MOST = 1.4;

  /** A brake or a bearing heats one wheel; what so many others do is no fault of one. */
  private static final int LEAST_OTHERS = 3;

  /** A smaller change is none, nor is one within its own spread; ours. */
  private static final double NEWS = 0.05;

  /** Where a factor of one more changes a reading by less, it tells nothing; in pascal, ours. */
  private static final double LEAST_SLOPE = GaugePressure.of(2, Unit.PSI).pascals();

  private static final double STEP = 0.5;

  /** A factor in use that is so many deviations off a record is another one's; ours. */
  private static final double FAR = 2;

  /** Whether it may be offered to the user. */
  public boolean offered() {
    return !beyond() && Math.abs(factor - before) >= Math.max(NEWS, sigma);
  }

  /** Whether it is so far off that a fault is likelier than a trait. */
  public boolean beyond() {
    return factor < Math.max(Tire.LEAST_HEAT_FACTOR, LEAST * usual)
        || factor > Math.min(Tire.MOST_HEAT_FACTOR, MOST * usual);
  }

  /** Whether it would be a fault, were the other tires not alike. */
  public boolean asOthers() {
    return !beyond() && (factor < LEAST || factor > MOST);
  }

  /**
   * One standard deviation of a tire's rise, as a part of it: less where earlier trips told, unless
   * its heat factor is more than two of it away from what they told.
   */
  public static double riseSpread(Tire tire) {
    HeatRecord known = tire.heatRecord();
    boolean counts =
        known != null
            && Math.abs(tire.heatFactor() - known.factor())
                <= FAR * riseSpread(known) * known.factor();
    return known != null && counts ? riseSpread(known) : WarmUp.RISE_SPREAD;
  }

  /** The same by a record. */
  public static double riseSpread(HeatRecord known) {
    return Math.min(
        WarmUp.RISE_SPREAD, Math.hypot(known.spread() / known.factor(), WarmUp.RISE_SPREAD_KNOWN));
  }

  /** What is kept of it for the rig's next trips; nothing of what is likelier a fault. */
  public Optional<HeatRecord> record() {
    return beyond()
        ? Optional.empty()
        : Optional.of(
            new HeatRecord(
                hundredths(factor), Math.max(HeatRecord.LEAST_SPREAD, hundredths(sigma))));
  }

  private static double hundredths(double number) {
    return Math.rint(number * 100) / 100;
  }

  /** The factors of all tires that have readings for them, in walking order. */
  public static List<HeatFit> of(Forecaster forecaster) {
    List<HeatFit> fits = new ArrayList<>();
    Trip trip = forecaster.trip();
    for (WheelPosition position : trip.rig().positions()) {
      trip.rig()
          .fittedAt(position)
          .flatMap(tire -> fit(forecaster, position, tire))
          .ifPresent(fits::add);
    }
    return fits.stream().map(fit -> fit.among(fits)).toList();
  }

  private HeatFit among(List<HeatFit> all) {
    double[] others =
        all.stream()
            .filter(other -> !other.position.equals(position))
            .mapToDouble(HeatFit::factor)
            .toArray();
    return others.length < LEAST_OTHERS
        ? this
        : new HeatFit(tire, position, before, factor, sigma, readings, Median.of(others));
  }

  private static Optional<HeatFit> fit(Forecaster forecaster, WheelPosition position, Tire tire) {
    HeatRecord earlier = tire.heatRecord();
    double spread = riseSpread(tire);
    double first = earlier == null ? 1 : earlier.factor();
    double prior = earlier == null ? WarmUp.RISE_SPREAD : earlier.factor() * riseSpread(earlier);
    double sureness = 1 / (prior * prior);
    double sum = first * sureness;
    int count = 0;
    for (LogEvent.Reading reading : counting(forecaster.trip(), tire.id())) {
      Trip alone = withoutOtherWarm(forecaster.trip(), reading);
      double now = tire.heatFactor();
      ReadingCheck plain = check(forecaster, alone, position, reading);
      ReadingCheck hotter =
          check(
              forecaster,
              RigEdits.withTire(alone, tire.withHeatFactor(now + STEP)),
              position,
              reading);
      if (plain == null || hotter == null || plain.first()) {
        continue;
      }
      double slope = (hotter.expected() - plain.expected()) / STEP;
      if (!(slope > LEAST_SLOPE)) {
        continue;
      }
      double seen = now + plain.off() / slope;
      double byRise = spread * now * slope;
      double rest = plain.sigma() * plain.sigma() - byRise * byRise;
      double least = 2 * plain.repeatSigma() * plain.repeatSigma();
      double weight = slope * slope / Math.max(rest, least);
      sureness += weight;
      sum += weight * seen;
      count++;
    }
    return count == 0
        ? Optional.empty()
        : Optional.of(
            new HeatFit(
                tire.id(),
                position,
                tire.heatFactor(),
                sum / sureness,
                Math.sqrt(1 / sureness),
                count,
                1));
  }

  /** Warm readings that have a cold one the same day before, nothing set and no wheel changed. */
  private static List<LogEvent.Reading> counting(Trip trip, String tire) {
    List<LogEvent.Reading> counting = new ArrayList<>();
    LocalDate coldOn = null;
    for (LogEvent event : trip.log()) {
      LocalDate day = event.time().time().toLocalDate();
      if (event instanceof LogEvent.Reading reading && reading.tire().equals(tire)) {
        if (reading.state() == ReadingState.COLD) {
          coldOn = day;
        } else if (reading.state() == ReadingState.WARM && day.equals(coldOn)) {
          counting.add(reading);
        }
      } else if ((event instanceof LogEvent.Adjustment set && set.tire().equals(tire))
          || (event instanceof LogEvent.TireChange change
              && (change.on().equals(tire) || change.off().equals(tire)))) {
        coldOn = null;
      }
    }
    return counting;
  }

  /** Else one warm reading would tell what the next is to show. */
  private static Trip withoutOtherWarm(Trip trip, LogEvent.Reading one) {
    return trip.withLog(
        trip.log().stream()
            .filter(
                event ->
                    event.equals(one)
                        || !(event instanceof LogEvent.Reading reading
                            && reading.tire().equals(one.tire())
                            && reading.state() != ReadingState.COLD))
            .toList());
  }

  private static @Nullable ReadingCheck check(
      Forecaster forecaster, Trip trip, WheelPosition position, LogEvent.Reading reading) {
    Track track = forecaster.with(trip).track(position).orElse(null);
    if (track == null) {
      return null;
    }
    for (TireAtStop at : track.stops()) {
      for (ReadingCheck check : at.readings()) {
        if (check.reading().equals(reading)) {
          return check.braked() ? null : check;
        }
      }
    }
    return null;
  }
}
