package dawngauge.review;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.ReadingCheck;
import dawngauge.quantity.Median;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
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
 * @param uneven the sides whose cold readings lie further apart than the gauge explains
 */
public record TripReview(
    List<TireReview> tires,
    List<Shared> shared,
    List<GaugePair> gauges,
    List<RecordingError> slips,
    @Nullable GaugeReferenceMismatch reference,
    boolean sharedTakenOff,
    List<SideScatter> uneven) {

  /** So few tires have nothing in common that could be told. */
  static final int LEAST_TIRES = 4;

  /** Where more than one in so many tires lost air, they have nothing in common that is sound. */
  private static final int MOST_LOSING = 3;

  /** What all share is taken off up to so many deviations of the air. */
  private static final double MOST_SHARED = 2.5;

  static final double MEDIAN_VARIANCE = Math.PI / 2;

  /** Two readings of a tire so near in time were of the same air in it. */
  private static final Duration TOGETHER = Duration.ofMinutes(30);

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
    uneven = List.copyOf(uneven);
  }

  /** Reviews the trip of a forecaster, whose known leaks must not be in the forecast already. */
  public static TripReview of(Forecaster forecaster) {
    Trip trip = forecaster.trip();
    Map<WheelPosition, TireRows> all = new LinkedHashMap<>();
    for (WheelPosition position : trip.rig().positions()) {
      forecaster
          .track(position)
          .ifPresent(track -> all.put(position, new TireRows(forecaster, position, track)));
    }
    all.values().removeIf(rows -> rows.readings.isEmpty() && !rows.readBare());
    List<RecordingError> slips =
        RecordingErrors.takeOut(
            all.values().stream()
                .map(
                    rows ->
                        new RecordingErrors.Row(rows.position, rows.cold, rows.lostAt, rows.made))
                .toList());
    for (RecordingError slip : slips) {
      TireRows rows = all.get(slip.position());
      // A last reading that no later one contradicts may be a flat tire after all.
      if (rows != null && slip.kind() != RecordingError.Kind.ALONE && rows.wasReadAfter(slip)) {
        rows.notOfThisTire.add(slip.check());
      }
    }
    GaugeReferenceMismatch reference = GaugeReferenceMismatch.of(trip, rounds(all)).orElse(null);
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
    Map<WheelPosition, ColdRow> cold = cold(all, takenOff ? shared : List.of());
    List<SideScatter> uneven =
        Stream.of(SideScatter.of(true, cold), SideScatter.of(false, cold))
            .filter(SideScatter::beyondGauge)
            .toList();
    return new TripReview(tires, shared, gauges(all), slips, reference, takenOff, uneven);
  }

  private static List<TireReview> tires(Map<WheelPosition, TireRows> all, List<Shared> shared) {
    Map<WheelPosition, ColdRow> cold = cold(all, shared);
    SideScatter left = SideScatter.of(true, cold);
    SideScatter right = SideScatter.of(false, cold);
    long tested = all.values().stream().filter(rows -> rows.cold.size() > 1).count();
    List<TireReview> tires = new ArrayList<>();
    cold.forEach(
        (position, row) -> {
          double wider = (position.slot().isLeft() ? left : right).wider();
          tires.add(known(all, position).review(row.wider(wider), tested));
        });
    return tires;
  }

  private static TireRows known(Map<WheelPosition, TireRows> all, WheelPosition position) {
    return Objects.requireNonNull(all.get(position));
  }

  private static Map<WheelPosition, ColdRow> cold(
      Map<WheelPosition, TireRows> all, List<Shared> shared) {
    Map<WheelPosition, ColdRow> cold = new LinkedHashMap<>();
    all.forEach((position, rows) -> cold.put(position, rows.row(all.size(), shared)));
    return cold;
  }

  /** The rounds that enough tires were read in: what all seem to have lost, and the air around. */
  private static List<GaugeReferenceMismatch.Round> rounds(Map<WheelPosition, TireRows> all) {
    NavigableMap<Integer, List<Double>> lost = new TreeMap<>();
    Map<Integer, ReadingCheck> sample = new HashMap<>();
    for (TireRows rows : all.values()) {
      rows.cold.forEach(
          (visit, check) -> {
            double absolute = check.reading().pressure().value().pascals() + check.airPressure();
            double part = rows.lostAt.getOrDefault(visit, 0.0);
            lost.computeIfAbsent(visit, key -> new ArrayList<>()).add(part * absolute);
            sample.putIfAbsent(visit, check);
          });
    }
    List<GaugeReferenceMismatch.Round> rounds = new ArrayList<>();
    lost.forEach(
        (visit, parts) -> {
          ReadingCheck check = sample.get(visit);
          if (check != null && parts.size() >= LEAST_TIRES) {
            double middle = Median.of(parts.stream().mapToDouble(Double::doubleValue).toArray());
            rounds.add(new GaugeReferenceMismatch.Round(check, middle));
          }
        });
    return rounds;
  }

  /** What the tires have in common at each round; nothing with too few of them. */
  private static List<Shared> shared(Map<WheelPosition, TireRows> all) {
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

  private static List<GaugePair> gauges(Map<WheelPosition, TireRows> all) {
    record Pair(String first, String second) {}
    Map<Pair, List<Double>> offs = new LinkedHashMap<>();
    Map<Pair, Double> repeat = new HashMap<>();
    for (TireRows rows : all.values()) {
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
}
