package dawngauge.forecast;

import dawngauge.quantity.Median;
import dawngauge.rules.Quantile;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Air that one tire lost between two rounds of cold readings beyond what every tire loses by
 * itself, and beyond what the other tires of the rig seem to have lost: what all share is the air
 * or the gauge. Pressures in pascal.
 *
 * @param position where the tire stands
 * @param tire its id
 * @param from index of the stop of the first round
 * @param to index of the stop of the last round
 * @param rounds rounds of cold readings of this tire that it rests on
 * @param pascals gauge pressure lost
 * @param sigma one standard deviation of that
 * @param days between both rounds
 * @param compared other tires it was held against
 */
public record TireLoss(
    WheelPosition position,
    String tire,
    int from,
    int to,
    int rounds,
    double pascals,
    double sigma,
    double days,
    int compared) {

  /** So few tires are no common measure. */
  private static final int LEAST_OTHERS = 3;

  /** What all tires share is taken off up to so many deviations of the air. */
  private static final double MOST_COMMON = 2.5;

  /** A median of readings spreads so much more than their mean (normal errors). */
  private static final double MEDIAN_VARIANCE = Math.PI / 2;

  /** Of the trips whose tires are all sound, this part may show a loss; split over the tires. */
  private static final double FALSE_ALARMS = 0.02;

  /** Over so many mornings the same part is split; ours. */
  private static final double MORNINGS = 4;

  private static final double DAY = 86400;

  /** The most it may lose a day, in 19 of 20 cases, in pascal. */
  public double fastPerDay() {
    return (pascals + Quantile.NINETY_WITHIN * sigma) / days;
  }

  /** Loss a day, in pascal. */
  public double perDay() {
    return pascals / days;
  }

  /** The losses that are beyond chance, in walking order. */
  public static List<TireLoss> of(Trip trip, Map<WheelPosition, Track> tracks) {
    Map<WheelPosition, Rounds> all = new LinkedHashMap<>();
    tracks.forEach((position, track) -> all.put(position, new Rounds(trip, track)));
    List<TireLoss> found = new ArrayList<>();
    all.forEach((position, rounds) -> rounds.loss(position, all).ifPresent(found::add));
    return found;
  }

  /** The cold readings of one tire. */
  private static final class Rounds {
    private final Map<Integer, ReadingCheck> cold = new TreeMap<>();

    /** What was lost from the start to each round, as a part of all the air in it. */
    private final Map<Integer, Double> lost = new HashMap<>();

    private final List<Instant> set = new ArrayList<>();

    /** Stops at which a setting is only taken as done: what was lost is not known over them. */
    private final List<Integer> assumed = new ArrayList<>();

    private String tire = "";

    Rounds(Trip trip, Track track) {
      double sum = 0;
      for (TireAtStop at : track.stops()) {
        if (at.setting() != null) {
          assumed.add(at.visit());
        }
        for (ReadingCheck check : at.readings()) {
          if (!check.reading().tire().equals(tire)) {
            tire = check.reading().tire();
            cold.clear();
          }
          sum -= check.first() ? 0 : Math.log(check.fillKnown() / check.fillExpected());
          if (check.reading().state() == ReadingState.COLD) {
            cold.put(at.visit(), check);
            lost.put(at.visit(), sum);
          }
        }
      }
      for (LogEvent event : trip.log()) {
        if (event instanceof LogEvent.Adjustment adjustment && adjustment.tire().equals(tire)) {
          set.add(event.time().instant());
        }
      }
    }

    private boolean setBetween(ReadingCheck first, ReadingCheck last) {
      Instant from = first.reading().time().instant();
      Instant to = last.reading().time().instant();
      return set.stream().anyMatch(time -> !time.isBefore(from) && !time.isAfter(to));
    }

    private boolean knownOver(int from, int to) {
      return cold.containsKey(from)
          && cold.containsKey(to)
          && assumed.stream().noneMatch(visit -> visit >= from && visit < to);
    }

    Optional<TireLoss> loss(WheelPosition position, Map<WheelPosition, Rounds> all) {
      List<Integer> visits = new ArrayList<>(cold.keySet());
      if (visits.size() < 2) {
        return Optional.empty();
      }
      int to = visits.get(visits.size() - 1);
      ReadingCheck last = known(to);
      visits.removeIf(
          visit ->
              !knownOver(visit, to)
                  || setBetween(known(visit), last)
                  || !known(visit).reading().gauge().equals(last.reading().gauge()));
      if (visits.size() < 2 || visits.get(visits.size() - 1) != to) {
        return Optional.empty();
      }
      int from = visits.get(0);
      ReadingCheck first = known(from);
      double absolute = last.reading().pressure().value().pascals() + last.airPressure();
      double own = 2 * Math.pow(last.repeatSigma() / absolute, 2);
      double air = Math.hypot(first.airSigma(), last.airSigma()) / last.tireKelvins();
      double[] others = others(position, from, to, all);
      double common = 0;
      double variance = own;
      if (others.length >= LEAST_OTHERS) {
        double middle = Median.of(others);
        common = Math.max(-MOST_COMMON * air, Math.min(MOST_COMMON * air, middle));
        variance += MEDIAN_VARIANCE * own / others.length;
      } else {
        variance += air * air;
      }
      double part = lostBetween(from, to) - common;
      double sigma = Math.sqrt(variance);
      long count = all.values().stream().filter(rounds -> rounds.cold.size() > 1).count();
      double beyond = Quantile.deviations(1 - FALSE_ALARMS / (count * MORNINGS));
      double days =
          (last.reading().time().instant().toEpochMilli()
                  - first.reading().time().instant().toEpochMilli())
              / 1000.0
              / DAY;
      return part > beyond * sigma && days > 0
          ? Optional.of(
              new TireLoss(
                  position,
                  tire,
                  from,
                  to,
                  visits.size(),
                  Math.expm1(part) * absolute,
                  Math.exp(part) * sigma * absolute,
                  days,
                  others.length))
          : Optional.empty();
    }

    private ReadingCheck known(int visit) {
      ReadingCheck check = cold.get(visit);
      if (check == null) {
        throw new IllegalStateException("no round at stop " + visit);
      }
      return check;
    }

    private double lostBetween(int from, int to) {
      return lost.getOrDefault(to, 0.0) - lost.getOrDefault(from, 0.0);
    }

    private static double[] others(
        WheelPosition position, int from, int to, Map<WheelPosition, Rounds> all) {
      return all.entrySet().stream()
          .filter(entry -> !entry.getKey().equals(position))
          .map(Map.Entry::getValue)
          .filter(other -> other.knownOver(from, to))
          .mapToDouble(other -> other.lostBetween(from, to))
          .toArray();
    }
  }
}
