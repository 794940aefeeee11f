package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.LegLow;
import dawngauge.forecast.Moment;
import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireAtStop;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Ratio;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where a reading is worth taking, and what it should show. */
final class Rechecks {

  /** Parked so long a tire counts as cold (NHTSA consumer text). */
  private static final long COLD_SECONDS = 3 * 3600;

  /** A reading so many deviations off is worth finding out about. */
  private static final double UNEXPECTED = 2;

  private final Forecaster forecaster;
  private final Thresholds thresholds;
  private final List<LogEvent.Adjustment> adjustments;
  private boolean lookAtNextStop;
  private boolean afterSetting;
  private double reference = Double.NaN;

  Rechecks(Forecaster forecaster, Thresholds thresholds) {
    this.forecaster = forecaster;
    this.thresholds = thresholds;
    this.adjustments = adjustments(forecaster.trip());
  }

  private static List<LogEvent.Adjustment> adjustments(Trip trip) {
    List<LogEvent.Adjustment> all = new ArrayList<>();
    for (LogEvent event : trip.log()) {
      if (event instanceof LogEvent.Adjustment adjustment) {
        all.add(adjustment);
      }
    }
    return all;
  }

  /**
   * What asks for a reading at a stop.
   *
   * @param riskSaid whether the chance of being under the floor is told of already
   */
  List<Reason> at(int visit, List<TireAtStop> track, boolean riskSaid) {
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
        && !(at.cold() ? takenCold(at) : taken)
        && leaving != null) {
      reasons.add(beforeStart(visit, at));
    }
    boolean longEnough = last || stop.stay().toMillis() >= thresholds.shortStopSeconds() * 1000;
    Moment arrival = at.arrival();
    if (visit == 0 || arrival == null || taken || !longEnough) {
      return reasons;
    }
    Entered<GaugePressure> leak = at.fitted().tire().lossPerDay();
    if (leak != null) {
      reasons.add(
          new Reason(
              Mark.RECHECK,
              Phrase.of(
                  "loses about {0} a day: gauge it at every stop, find the leak", leak.value()),
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
    if (last || riskSaid) {
      return reasons;
    }
    LegLow low = at.low();
    if (at.leavingChance() >= thresholds.recheckChance()) {
      reasons.add(chance(at, at.leavingChance()));
    } else if (low != null && low.chance() >= thresholds.recheckChance()) {
      reasons.add(chance(at, low.chance()));
    }
    return reasons;
  }

  /** Keeps what the next stops need to know. */
  void remember(int visit, TireAtStop at, @Nullable SetFigure set, List<Reason> reasons) {
    Itinerary.Visit stop = forecaster.itinerary().visits().get(visit);
    boolean longEnough = stop.stay().toMillis() >= thresholds.shortStopSeconds() * 1000;
    boolean adjusted = adjusted(at, stop);
    boolean looked = longEnough && (at.arrival() != null || !at.readings().isEmpty());
    if (forecaster.itinerary().visits().get(visit).firstStartOfDay() || set != null || adjusted) {
      lookAtNextStop = true;
      afterSetting = set != null || adjusted;
    } else if (looked) {
      lookAtNextStop = false;
    }
    Moment moment = at.check();
    boolean asked = asks(reasons);
    if (set != null) {
      reference = set.settled().pascals();
    } else if (moment != null && (asked || !at.readings().isEmpty() || Double.isNaN(reference))) {
      reference = moment.settled();
    }
  }

  private static boolean asks(List<Reason> reasons) {
    for (Reason reason : reasons) {
      if (reason.mark() == Mark.RECHECK) {
        return true;
      }
    }
    return false;
  }

  private boolean adjusted(TireAtStop at, Itinerary.Visit stop) {
    for (LogEvent.Adjustment adjustment : adjustments) {
      Instant time = adjustment.time().instant();
      if (adjustment.tire().equals(at.fitted().tire().id())
          && !time.isBefore(stop.arrive())
          && !time.isAfter(stop.leave())) {
        return true;
      }
    }
    return false;
  }

  /** Whether the log holds a cold reading from this stop. */
  static boolean takenCold(TireAtStop at) {
    for (ReadingCheck check : at.readings()) {
      if (check.reading().state() == ReadingState.COLD) {
        return true;
      }
    }
    return false;
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
              "gauge it cold before the start, before the sun reaches it; if it reads under its range,"
                  + " find out why"),
          4);
    }
    return new Reason(
        Mark.RECHECK,
        Phrase.of(
            "parked under three hours, so no cold reading is possible here: gauge it before the"
                + " start and compare with its range; next chance of a cold reading {0}",
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
    return Phrase.of("gauge it on arrival, {0}; if it reads under its range, find out why", why);
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
