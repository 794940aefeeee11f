package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Moment;
import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireAtStop;
import dawngauge.quantity.Ratio;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import java.util.ArrayList;
import java.util.List;

/** Where a reading is worth taking, and what it should show. */
final class Rechecks {

  /** Parked so long a tire counts as cold (NHTSA consumer text). */
  private static final long COLD_SECONDS = 3 * 3600;

  /** A reading so many deviations off is worth finding out about. */
  private static final double UNEXPECTED = 2;

  private final Forecaster forecaster;
  private final Thresholds thresholds;
  private boolean lookAtNextStop;
  private boolean afterSetting;
  private double reference = Double.NaN;

  Rechecks(Forecaster forecaster, Thresholds thresholds) {
    this.forecaster = forecaster;
    this.thresholds = thresholds;
  }

  List<Reason> at(int visit, List<TireAtStop> track) {
    TireAtStop at = track.get(visit);
    List<Reason> reasons = new ArrayList<>();
    Itinerary.Visit stop = forecaster.itinerary().visits().get(visit);
    boolean last = visit == track.size() - 1;
    for (ReadingCheck check : at.readings()) {
      unexpected(check, reasons);
    }
    boolean taken = !at.readings().isEmpty();
    Moment leaving = at.check();
    if (!last
        && forecaster.itinerary().visits().get(visit).firstStartOfDay()
        && !takenCold(at)
        && leaving != null) {
      reasons.add(beforeStart(visit, at));
    }
    boolean longEnough = last || stop.stay().toMillis() >= thresholds.shortStopSeconds() * 1000;
    Moment arrival = at.arrival();
    if (visit == 0 || arrival == null || taken || !longEnough) {
      return reasons;
    }
    if (at.fitted().tire().lossPerDay() != null) {
      reasons.add(
          new Reason(
              Mark.RECHECK,
              Phrase.of(
                  "loses about {0} a day: gauge it at every stop, find the leak",
                  at.fitted().tire().lossPerDay().value()),
              1));
    }
    if (lookAtNextStop) {
      reasons.add(
          new Reason(
              Mark.RECHECK,
              onArrival(afterSetting ? "first stop after air was set" : "first stop of the day"),
              2));
    } else if (farFromReference(arrival)) {
      reasons.add(
          new Reason(Mark.RECHECK, onArrival("much has changed since the last reading"), 3));
    }
    if (!last && at.leavingChance() >= thresholds.recheckChance()) {
      reasons.add(chance(at, at.leavingChance()));
    } else if (!last && at.low() != null && at.low().chance() >= thresholds.recheckChance()) {
      reasons.add(chance(at, at.low().chance()));
    }
    return reasons;
  }

  /** Keeps what the next stops need to know. */
  void remember(int visit, TireAtStop at, boolean set, List<Reason> reasons) {
    Itinerary.Visit stop = forecaster.itinerary().visits().get(visit);
    boolean longEnough = stop.stay().toMillis() >= thresholds.shortStopSeconds() * 1000;
    boolean adjusted =
        forecaster.trip().log().stream()
            .anyMatch(
                event ->
                    event instanceof LogEvent.Adjustment a
                        && a.tire().equals(at.fitted().tire().id())
                        && !a.time().instant().isBefore(stop.arrive())
                        && !a.time().instant().isAfter(stop.leave()));
    if (forecaster.itinerary().visits().get(visit).firstStartOfDay() || set || adjusted) {
      lookAtNextStop = true;
      afterSetting = set || adjusted;
    } else if (longEnough) {
      lookAtNextStop = false;
    }
    Moment moment = at.check();
    boolean asked = reasons.stream().anyMatch(reason -> reason.mark() == Mark.RECHECK);
    if (moment != null && (asked || set || !at.readings().isEmpty() || Double.isNaN(reference))) {
      reference = moment.settled();
    }
  }

  private static boolean takenCold(TireAtStop at) {
    return at.readings().stream().anyMatch(check -> check.reading().state() == ReadingState.COLD);
  }

  private boolean farFromReference(Moment arrival) {
    double asked = Math.max(thresholds.recheckPascals(), thresholds.recheckPart() * reference);
    return Math.abs(arrival.settled() - reference) > asked;
  }

  private static void unexpected(ReadingCheck check, List<Reason> reasons) {
    if (Math.abs(check.deviations()) <= UNEXPECTED) {
      return;
    }
    double off = check.reading().pressure().value().pascals() - check.expected();
    reasons.add(
        new Reason(
            Mark.RECHECK,
            Phrase.of(
                "read {0}, {1} {2} than expected: find out why before it rolls on",
                check.reading().pressure().value(),
                Shown.pressure(Math.abs(off)),
                off < 0 ? "less" : "more"),
            0));
  }

  private Reason beforeStart(int visit, TireAtStop at) {
    if (at.cold()) {
      return new Reason(
          Mark.RECHECK,
          Phrase.of(
              "gauge cold before the start, before sun reaches it; under the range find out why"),
          4);
    }
    return new Reason(
        Mark.RECHECK,
        Phrase.of(
            "parked under three hours, so no cold reading is possible: gauge before the start and"
                + " compare with the range; next cold reading {0}",
            nextCold(visit)),
        4);
  }

  private String nextCold(int visit) {
    List<Itinerary.Visit> visits = forecaster.itinerary().visits();
    for (int i = visit + 1; i < visits.size(); i++) {
      if (visits.get(i).stay().toSeconds() >= COLD_SECONDS) {
        return "at " + visits.get(i).stop().place();
      }
    }
    return "after the trip, parked three hours";
  }

  private static Phrase onArrival(String why) {
    return Phrase.of("gauge on arrival, {0}; under the range find out why", why);
  }

  private static Reason chance(TireAtStop at, double chance) {
    return new Reason(
        Mark.RECHECK,
        Phrase.of(
            "{0} chance of being under the {1} its load needs before the next stop",
            new Ratio(chance), Shown.pressure(at.limits().floor())),
        2);
  }
}
