package dawngauge.review;

import dawngauge.forecast.BareReading;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSetting;
import dawngauge.forecast.TireSnapshot;
import dawngauge.forecast.Track;
import dawngauge.rules.Quantile;
import dawngauge.rules.RanLow;
import dawngauge.trip.ReadingState;
import dawngauge.trip.WheelPosition;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What was read of the tire that stood last at a position. */
final class TireRows {

  /**
   * Of the trips whose tires are all sound, this part may show a loss by the gauge alone: a fifth
   * of the 2 % that are allowed, since tires that cool more or less quickly add their share, and
   * sun that was noted as cold adds most.
   */
  private static final double FALSE_ALARMS = 0.004;

  /** Warmer than the air by this, in kelvin, a tire is warm; ours. */
  private static final double WARM = 2;

  private static final double DAY = 86400;

  private final Forecaster forecaster;
  final WheelPosition position;
  private final Track track;
  final List<ReadingCheck> readings = new ArrayList<>();
  final List<TireSetting> made;
  final NavigableMap<Integer, ReadingCheck> cold = new TreeMap<>();

  /** Part of its air lost from the first reading to each round, permeation taken off. */
  final Map<Integer, Double> lostAt = new TreeMap<>();

  /** Readings that say nothing of it: of another tire, or in another unit. */
  final Set<ReadingCheck> notOfThisTire = new HashSet<>();

  private String tire = "";

  TireRows(Forecaster forecaster, WheelPosition position, Track track) {
    this.forecaster = forecaster;
    this.position = position;
    this.track = track;
    this.made = track.made();
    String gauge = mostUsed(track.readings());
    double sum = 0;
    for (ReadingCheck check : track.readings()) {
      if (!check.reading().tire().equals(tire)) {
        tire = check.reading().tire();
        readings.clear();
        cold.clear();
        lostAt.clear();
        sum = 0;
      }
      readings.add(check);
      sum -= check.first() ? 0 : Math.log(check.fillKnown() / check.fillExpected());
      boolean counts =
          check.reading().state() == ReadingState.COLD && check.reading().gauge().equals(gauge);
      int visit = visitOf(check);
      if (counts && visit >= 0) {
        cold.put(visit, check);
        lostAt.put(visit, sum);
      }
    }
    double start = lostAt.isEmpty() ? 0 : lostAt.values().iterator().next();
    lostAt.replaceAll((visit, lost) -> lost - start);
  }

  /** Whether it was read where the air was not known. */
  boolean readBare() {
    return track.stops().stream().anyMatch(at -> !at.bare().isEmpty());
  }

  boolean wasReadAfter(RecordingError slip) {
    Instant time = slip.check().reading().time().instant();
    return cold.values().stream().anyMatch(check -> check.reading().time().instant().isAfter(time));
  }

  /** Reads every cold figure as by a gauge of the other kind. */
  void correct(GaugeReferenceMismatch reference) {
    cold.forEach(
        (visit, check) -> {
          double absolute = check.reading().pressure().value().pascals() + check.airPressure();
          lostAt.computeIfPresent(
              visit, (at, lost) -> lost - reference.shownLess(check) / absolute);
        });
  }

  private static String mostUsed(List<ReadingCheck> readings) {
    Map<String, Integer> count = new TreeMap<>();
    readings.forEach(check -> count.merge(check.reading().gauge(), 1, Integer::sum));
    return count.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElse("");
  }

  private int visitOf(ReadingCheck check) {
    for (TireAtStop at : track.stops()) {
      if (at.readings().stream().anyMatch(other -> other.reading().equals(check.reading()))) {
        return at.visit();
      }
    }
    return -1;
  }

  /** Its cold readings, without what all tires share. */
  ColdRow row(int tires, List<TripReview.Shared> shared) {
    int count = cold.size();
    double[] days = new double[count];
    double[] lost = new double[count];
    double each = Double.NaN;
    double absolute = Double.NaN;
    Instant start = null;
    int i = 0;
    for (Map.Entry<Integer, ReadingCheck> entry : cold.entrySet()) {
      ReadingCheck check = entry.getValue();
      Instant time = check.reading().time().instant();
      start = start == null ? time : start;
      days[i] = Duration.between(start, time).toMillis() / 1000.0 / DAY;
      absolute = check.reading().pressure().value().pascals() + check.airPressure();
      double common = 0;
      for (TripReview.Shared one : shared) {
        common = one.visit() == entry.getKey() ? one.pascals() / absolute : common;
      }
      lost[i] = lostAt.getOrDefault(entry.getKey(), 0.0) - common;
      double air = shared.size() < 2 ? check.airSigma() / check.airKelvins() : 0;
      // The tire itself is in the median: its own error is taken off with it by a part.
      double median =
          shared.size() < 2
              ? 0
              : (TripReview.MEDIAN_VARIANCE - 2) / Math.max(TripReview.LEAST_TIRES, tires);
      each = Math.hypot(check.repeatSigma() / absolute * Math.sqrt(1 + median), air);
      i++;
    }
    return new ColdRow(days, lost, each, absolute);
  }

  TireReview review(ColdRow row, long tested) {
    List<ReadingCheck> rounds = List.copyOf(cold.values());
    int count = rounds.size();
    double absolute = row.absolute;
    double beyond =
        tested == 0
            ? Double.POSITIVE_INFINITY
            : Quantile.deviations(1 - FALSE_ALARMS / (tested * 2.0 * Math.max(1, count - 1)));
    LossFit fit = LossFit.of(row.days, row.lost, row.each, beyond);
    List<Double> residuals = new ArrayList<>();
    for (double number : row.lost) {
      residuals.add(-Math.expm1(number) * absolute);
    }
    boolean losing = fit.kind() != LossFit.Kind.SOUND && fit.kind() != LossFit.Kind.TOO_FEW;
    double perDay = losing ? fit.perDay() * absolute : 0;
    double fast =
        losing ? (fit.perDay() + Quantile.NINETY_WITHIN * fit.perDaySigma()) * absolute : 0;
    return new TireReview(
        position,
        tire,
        rounds,
        residuals,
        fit,
        Math.expm1(fit.part()) * absolute,
        Math.exp(fit.part()) * fit.sigma() * absolute,
        perDay,
        fast,
        losing && fit.kind() != LossFit.Kind.ONCE ? floorBy(fast) : null,
        readings,
        made,
        count < 2 ? null : PressureAccount.of(rounds.get(0), rounds.get(count - 1), made),
        made.stream().filter(TireRows::isLetOutWarm).toList(),
        ranLow(),
        RolledUnder.of(forecaster, position, track, notOfThisTire));
  }

  private static boolean isLetOutWarm(TireSetting setting) {
    return setting.fillAdded() < 0
        && setting.after().tireKelvins() > setting.after().airKelvins() + WARM;
  }

  /** When it may meet its floor at a rate, from what is known of it last. */
  private @Nullable Instant floorBy(double perDay) {
    List<TireAtStop> stops = track.stops();
    for (int visit = stops.size() - 1; visit >= 0; visit--) {
      TireSnapshot moment = stops.get(visit).leaving();
      double floor = stops.get(visit).limits().floor();
      if (moment != null && !Double.isNaN(floor) && perDay > 0) {
        double left = (moment.judged() - floor) / perDay;
        double since = (moment.seconds() - moment.origin().seconds()) / DAY;
        double days = Math.max(0, left - since) * DAY;
        return Instant.ofEpochSecond((long) (moment.seconds() + days));
      }
    }
    return null;
  }

  /** The first reading by which it ran low, by the rule that the forecast goes by too. */
  private @Nullable RanLowReading ranLow() {
    for (TireAtStop at : track.stops()) {
      double reference = at.limits().reference();
      for (ReadingCheck check : at.readings()) {
        if (check.rolledSinceSound()
            && !notOfThisTire.contains(check)
            && check.ranLow(reference) == RanLow.LIKELY) {
          return new RanLowReading(check.reading(), check.coldEquivalent());
        }
      }
      for (BareReading bare : at.bare()) {
        if (bare.rolledSinceSound() && bare.ranLow(reference) == RanLow.LIKELY) {
          return new RanLowReading(bare.reading(), bare.pascals());
        }
      }
    }
    return null;
  }
}
