package dawngauge.review;

import dawngauge.forecast.BareReading;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Moment;
import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSetting;
import dawngauge.forecast.Track;
import dawngauge.quantity.Median;
import dawngauge.rules.Quantile;
import dawngauge.rules.RanLow;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Why the tires of a trip read as they did. What a tire lost from reading to reading beyond what it
 * loses by itself is followed over the trip; what all tires share is the air or the gauge and is
 * taken off; the rest is held against the gauge's repeatability.
 *
 * @param tires every tire that was read, in walking order
 * @param shared what all tires seem to have lost, round by round
 * @param gauges gauges held against each other
 * @param slips readings that were noted wrongly, left out of all the rest
 * @param reference a gauge that seems to measure against something else than the file says, or null
 * @param sharedTakenOff whether what all share was taken off what each lost: not where many lost
 */
public record TripReview(
    List<TireReview> tires,
    List<Shared> shared,
    List<GaugePair> gauges,
    List<Slip> slips,
    @Nullable WrongReference reference,
    boolean sharedTakenOff) {

  /** So few tires have nothing in common that could be told. */
  private static final int LEAST_TIRES = 4;

  /** Where more than one in so many tires lost air, they have nothing in common that is sound. */
  private static final int MOST_LOSING = 3;

  /** What all share is taken off up to so many deviations of the air. */
  private static final double MOST_SHARED = 2.5;

  private static final double MEDIAN_VARIANCE = Math.PI / 2;

  /**
   * Of the trips whose tires are all sound, this part may show a loss by the gauge alone: a third
   * of the 2 % that are allowed, since tires that cool more or less quickly add their share.
   */
  private static final double FALSE_ALARMS = 0.007;

  /** Warmer than the air by this, in kelvin, a tire is warm; ours. */
  private static final double WARM = 2;

  /** Two readings of a tire so near in time were of the same air in it. */
  private static final Duration TOGETHER = Duration.ofMinutes(30);

  private static final double DAY = 86400;

  /**
   * A round of cold readings that all tires share something of.
   *
   * @param time of its first reading
   * @param visit index of its stop
   * @param pascals how much less than expected the tires read in the middle, since the first round
   * @param sigma one standard deviation of that by the gauge alone
   * @param kelvins how much colder than expected the air would have been for it
   */
  public record Shared(Instant time, int visit, double pascals, double sigma, double kelvins) {

    /** Whether it is more than the gauge alone makes. */
    public boolean isSomething() {
      return Math.abs(pascals) > 3 * sigma;
    }
  }

  /**
   * Two gauges that read the same tires.
   *
   * @param first name of one
   * @param second name of the other
   * @param pascals how much more the second shows
   * @param sigma one standard deviation of that
   * @param pairs readings it rests on
   */
  public record GaugePair(String first, String second, double pascals, double sigma, int pairs) {

    /** Whether they differ beyond chance. */
    public boolean differ() {
      return pairs > 2 && Math.abs(pascals) > 3 * sigma;
    }
  }

  /** Copies the lists. */
  public TripReview {
    tires = List.copyOf(tires);
    shared = List.copyOf(shared);
    gauges = List.copyOf(gauges);
    slips = List.copyOf(slips);
  }

  /** Reviews the trip of a forecaster, whose known leaks must not be in the forecast already. */
  public static TripReview of(Forecaster forecaster) {
    Trip trip = forecaster.trip();
    Map<WheelPosition, Rows> all = new LinkedHashMap<>();
    for (WheelPosition position : trip.rig().positions()) {
      forecaster
          .track(position)
          .ifPresent(track -> all.put(position, new Rows(forecaster, position, track)));
    }
    all.values().removeIf(rows -> rows.readings.isEmpty() && !rows.readBare());
    List<Slip> slips =
        Slips.takeOut(
            all.values().stream()
                .map(rows -> new Slips.Row(rows.position, rows.cold, rows.lostAt, rows.made))
                .toList());
    for (Slip slip : slips) {
      Rows rows = all.get(slip.position());
      // A last reading that no later one contradicts may be a flat tire after all.
      if (rows != null && slip.kind() != Slip.Kind.ALONE && rows.wasReadAfter(slip)) {
        rows.notOfThisTire.add(slip.check());
      }
    }
    WrongReference reference = WrongReference.of(trip, rounds(all)).orElse(null);
    if (reference != null) {
      all.values().forEach(rows -> rows.correct(reference));
    }
    List<Shared> shared = shared(all);
    List<TireReview> tires = tires(all, shared);
    long losing = tires.stream().filter(TireReview::lostAir).count();
    boolean takenOff = losing * MOST_LOSING <= tires.size();
    if (!takenOff) {
      // So many that the middle of all may be one of them: nothing is taken off, ranges widen.
      tires = tires(all, List.of());
    }
    return new TripReview(tires, shared, gauges(all), slips, reference, takenOff);
  }

  private static List<TireReview> tires(Map<WheelPosition, Rows> all, List<Shared> shared) {
    List<TireReview> tires = new ArrayList<>();
    all.values().forEach(rows -> tires.add(rows.review(all, shared)));
    return tires;
  }

  /** The rounds that enough tires were read in: what all seem to have lost, and the air around. */
  private static List<WrongReference.Round> rounds(Map<WheelPosition, Rows> all) {
    NavigableMap<Integer, List<Double>> lost = new TreeMap<>();
    Map<Integer, ReadingCheck> sample = new HashMap<>();
    for (Rows rows : all.values()) {
      rows.cold.forEach(
          (visit, check) -> {
            double absolute = check.reading().pressure().value().pascals() + check.airPressure();
            double part = rows.lostAt.getOrDefault(visit, 0.0);
            lost.computeIfAbsent(visit, key -> new ArrayList<>()).add(part * absolute);
            sample.putIfAbsent(visit, check);
          });
    }
    List<WrongReference.Round> rounds = new ArrayList<>();
    lost.forEach(
        (visit, parts) -> {
          ReadingCheck check = sample.get(visit);
          if (check != null && parts.size() >= LEAST_TIRES) {
            double middle = Median.of(parts.stream().mapToDouble(Double::doubleValue).toArray());
            rounds.add(new WrongReference.Round(check, middle));
          }
        });
    return rounds;
  }

  /** What the tires have in common at each round; nothing with too few of them. */
  private static List<Shared> shared(Map<WheelPosition, Rows> all) {
    NavigableMap<Integer, List<Double>> lost = new TreeMap<>();
    Map<Integer, ReadingCheck> sample = new HashMap<>();
    all.values()
        .forEach(
            rows ->
                rows.lostAt.forEach(
                    (visit, part) -> {
                      lost.computeIfAbsent(visit, key -> new ArrayList<>()).add(part);
                      sample.putIfAbsent(visit, rows.cold.get(visit));
                    }));
    List<Shared> shared = new ArrayList<>();
    lost.forEach(
        (visit, parts) -> {
          ReadingCheck check = sample.get(visit);
          if (parts.size() < LEAST_TIRES || check == null) {
            return;
          }
          double absolute = check.reading().pressure().value().pascals() + check.airPressure();
          double air = Math.hypot(check.airSigma(), check.airSigma()) / check.airKelvins();
          double middle = Median.of(parts.stream().mapToDouble(Double::doubleValue).toArray());
          double part = Math.max(-MOST_SHARED * air, Math.min(MOST_SHARED * air, middle));
          shared.add(
              new Shared(
                  check.reading().time().instant(),
                  visit,
                  part * absolute,
                  Math.sqrt(2 * MEDIAN_VARIANCE / parts.size()) * check.repeatSigma(),
                  part * check.airKelvins()));
        });
    return shared;
  }

  private static List<GaugePair> gauges(Map<WheelPosition, Rows> all) {
    record Pair(String first, String second) {}
    Map<Pair, List<Double>> offs = new LinkedHashMap<>();
    Map<Pair, Double> repeat = new HashMap<>();
    for (Rows rows : all.values()) {
      for (int i = 1; i < rows.readings.size(); i++) {
        ReadingCheck before = rows.readings.get(i - 1);
        ReadingCheck check = rows.readings.get(i);
        Duration between =
            Duration.between(before.reading().time().instant(), check.reading().time().instant());
        if (check.first()
            || between.compareTo(TOGETHER) > 0
            || before.reading().state() != check.reading().state()
            || !before.reading().tire().equals(check.reading().tire())
            || before.reading().gauge().equals(check.reading().gauge())) {
          continue;
        }
        boolean inOrder = before.reading().gauge().compareTo(check.reading().gauge()) < 0;
        Pair pair =
            inOrder
                ? new Pair(before.reading().gauge(), check.reading().gauge())
                : new Pair(check.reading().gauge(), before.reading().gauge());
        double more = (check.fillRead() - before.fillRead()) * check.tireKelvins();
        offs.computeIfAbsent(pair, key -> new ArrayList<>()).add(inOrder ? more : -more);
        repeat.put(pair, Math.hypot(before.repeatSigma(), check.repeatSigma()));
      }
    }
    List<GaugePair> pairs = new ArrayList<>();
    offs.forEach(
        (pair, numbers) -> {
          double sum = 0;
          for (double number : numbers) {
            sum += number;
          }
          pairs.add(
              new GaugePair(
                  pair.first,
                  pair.second,
                  sum / numbers.size(),
                  repeat.getOrDefault(pair, Double.NaN) / Math.sqrt(numbers.size()),
                  numbers.size()));
        });
    return pairs;
  }

  /** What was read of the tire that stood last at a position. */
  private static final class Rows {
    private final Forecaster forecaster;
    private final WheelPosition position;
    private final Track track;
    private final List<ReadingCheck> readings = new ArrayList<>();
    private final List<TireSetting> made;
    private final NavigableMap<Integer, ReadingCheck> cold = new TreeMap<>();

    /** Part of its air lost from the first reading to each round, permeation taken off. */
    private final Map<Integer, Double> lostAt = new TreeMap<>();

    /** Readings that say nothing of it: of another tire, or in another unit. */
    private final Set<ReadingCheck> notOfThisTire = new HashSet<>();

    private String tire = "";

    Rows(Forecaster forecaster, WheelPosition position, Track track) {
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
    private boolean readBare() {
      return track.stops().stream().anyMatch(at -> !at.bare().isEmpty());
    }

    private boolean wasReadAfter(Slip slip) {
      Instant time = slip.check().reading().time().instant();
      return cold.values().stream()
          .anyMatch(check -> check.reading().time().instant().isAfter(time));
    }

    /** Reads every cold figure as by a gauge of the other kind. */
    void correct(WrongReference reference) {
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

    TireReview review(Map<WheelPosition, Rows> all, List<Shared> shared) {
      List<ReadingCheck> rounds = new ArrayList<>(cold.values());
      int count = rounds.size();
      double[] days = new double[count];
      double[] lost = new double[count];
      int i = 0;
      for (Map.Entry<Integer, ReadingCheck> entry : cold.entrySet()) {
        ReadingCheck check = entry.getValue();
        days[i] =
            (check.reading().time().instant().toEpochMilli()
                    - rounds.get(0).reading().time().instant().toEpochMilli())
                / 1000.0
                / DAY;
        double absolute = check.reading().pressure().value().pascals() + check.airPressure();
        double common = 0;
        for (Shared each : shared) {
          common = each.visit() == entry.getKey() ? each.pascals() / absolute : common;
        }
        lost[i] = lostAt.getOrDefault(entry.getKey(), 0.0) - common;
        i++;
      }
      double each = Double.NaN;
      double absolute = Double.NaN;
      if (count > 0) {
        ReadingCheck last = rounds.get(count - 1);
        absolute = last.reading().pressure().value().pascals() + last.airPressure();
        double air = shared.size() < 2 ? last.airSigma() / last.airKelvins() : 0;
        // The tire itself is in the median: its own error is taken off with it by a part.
        double median =
            shared.size() < 2 ? 0 : (MEDIAN_VARIANCE - 2) / Math.max(LEAST_TIRES, all.size());
        each = Math.hypot(last.repeatSigma() / absolute * Math.sqrt(1 + median), air);
      }
      long tested = all.values().stream().filter(rows -> rows.cold.size() > 1).count();
      double beyond =
          tested == 0
              ? Double.POSITIVE_INFINITY
              : Quantile.deviations(1 - FALSE_ALARMS / (tested * 2.0 * Math.max(1, count - 1)));
      LossFit fit = LossFit.of(days, lost, each, beyond);
      List<Double> residuals = new ArrayList<>();
      for (double number : lost) {
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
          made.stream().filter(Rows::isLetOutWarm).toList(),
          ranLow(),
          RolledUnder.of(forecaster, position, track));
    }

    private static boolean isLetOutWarm(TireSetting setting) {
      return setting.fillAdded() < 0
          && setting.after().tireKelvins() > setting.after().airKelvins() + WARM;
    }

    /** When it may meet its floor at a rate, from what is known of it last. */
    private @Nullable Instant floorBy(double perDay) {
      List<TireAtStop> stops = track.stops();
      for (int visit = stops.size() - 1; visit >= 0; visit--) {
        Moment moment = stops.get(visit).leaving();
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
}
