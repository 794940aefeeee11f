package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.trip.Itinerary;
import dawngauge.trip.ReadingState;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The gauging that is good habit for the whole rig: every cold morning, at the first stop of a day,
 * after a great change of temperature or height. One line a stop, no mark of a single tire.
 */
final class Routine {

  private final Forecaster forecaster;
  private final Thresholds thresholds;
  private final Map<WheelPosition, Double> reference = new HashMap<>();
  private boolean firstStop;

  Routine(Forecaster forecaster, Thresholds thresholds) {
    this.forecaster = forecaster;
    this.thresholds = thresholds;
  }

  /** What is to be gauged at a stop, stop after stop. */
  List<Habit> at(int visit, List<TireAdvice> tires) {
    Itinerary.Visit stop = forecaster.itinerary().visits().get(visit);
    boolean last = visit == forecaster.itinerary().visits().size() - 1;
    List<Habit> lines = new ArrayList<>();
    boolean onArrival =
        visit > 0
            && !stop.passes()
            && (last || stop.staysFor(thresholds.shortStopSeconds()))
            && tires.stream().anyMatch(tire -> unread(tire.tire()));
    if (onArrival && (firstStop || muchChanged(tires))) {
      lines.add(
          new Habit(
              Phrase.of("all on arrival"),
              Phrase.of(
                  "all tires on arrival, {0}; if one reads under its range, look for a leak",
                  firstStop
                      ? "first stop of the day"
                      : "much has changed since the last reading")));
      tires.forEach(tire -> keep(tire, tire.tire().arrival()));
    }
    firstStop = firstStop && !onArrival;
    if (stop.firstStartOfDay() && !last) {
      firstStop = true;
      if (tires.stream().anyMatch(Routine::toGaugeBeforeStart)) {
        lines.add(beforeStart(visit, tires));
      }
      tires.forEach(tire -> keep(tire, tire.tire().check()));
    }
    return lines;
  }

  private void keep(TireAdvice tire, @Nullable TireSnapshot moment) {
    if (moment != null) {
      reference.put(tire.tire().fitted().position(), moment.settled());
    }
  }

  private static boolean unread(TireAtStop at) {
    return at.arrival() != null && at.readings().isEmpty();
  }

  private static boolean toGaugeBeforeStart(TireAdvice tire) {
    TireAtStop at = tire.tire();
    boolean done = at.cold() ? tire.readingTaken() : !at.readings().isEmpty();
    return at.check() != null && !done;
  }

  private boolean muchChanged(List<TireAdvice> tires) {
    for (TireAdvice tire : tires) {
      TireSnapshot arrival = tire.tire().arrival();
      Double before = reference.get(tire.tire().fitted().position());
      if (arrival != null && before != null) {
        double asked = Math.max(thresholds.recheckPascals(), thresholds.recheckPart() * before);
        if (Math.abs(arrival.settled() - before) > asked) {
          return true;
        }
      }
    }
    return false;
  }

  private Habit beforeStart(int visit, List<TireAdvice> tires) {
    boolean cold = tires.stream().allMatch(tire -> tire.tire().cold());
    return cold
        ? new Habit(
            Phrase.of("all cold, before the sun reaches them"),
            Phrase.of(
                "all tires cold before the start, before the sun reaches them; if one reads under"
                    + " its range, look for a leak"))
        : new Habit(
            Phrase.of("all before the start, warm"),
            Phrase.of(
                "all tires before the start, compared with their range: parked under three hours, so"
                    + " no cold reading is possible here; next chance of one {0}",
                nextCold(visit)));
  }

  private String nextCold(int visit) {
    List<Itinerary.Visit> visits = forecaster.itinerary().visits();
    for (int i = visit + 1; i < visits.size(); i++) {
      if (visits.get(i).stay().compareTo(ReadingState.COLD_AFTER) >= 0) {
        return "at " + visits.get(i).stop().place();
      }
    }
    return "after the trip, parked three hours";
  }
}
