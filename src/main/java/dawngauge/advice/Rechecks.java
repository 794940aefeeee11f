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

  /** Two-sided 90 %. */
  private static final double NINETY = 1.6449;

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
    Moment leaving = at.beforeSetting();
    if (!last && forecaster.firstStartOfDay(visit) && !takenCold(at) && leaving != null) {
      reasons.add(beforeStart(at, leaving));
    }
    boolean longEnough = last || stop.stay().toMillis() >= thresholds.shortStopSeconds() * 1000;
    Moment arrival = at.arrival();
    if (visit == 0 || arrival == null || taken || !longEnough) {
      return reasons;
    }
    if (at.fitted().tire().lossPerDay() != null) {
      reasons.add(new Reason(Mark.RECHECK, expected("losing air", arrival), 1));
    } else if (lookAtNextStop) {
      reasons.add(
          new Reason(
              Mark.RECHECK,
              expected(
                  afterSetting ? "first stop after air was set" : "first stop of the day", arrival),
              2));
    } else if (farFromReference(arrival)) {
      reasons.add(
          new Reason(Mark.RECHECK, expected("much changed since the last reading", arrival), 3));
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
    if (forecaster.firstStartOfDay(visit) || set || adjusted) {
      lookAtNextStop = true;
      afterSetting = set || adjusted;
    } else if (longEnough) {
      lookAtNextStop = false;
    }
    Moment moment = at.beforeSetting();
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

  private static Reason beforeStart(TireAtStop at, Moment leaving) {
    if (!at.cold()) {
      return new Reason(
          Mark.RECHECK,
          Phrase.of(
              "parked under three hours, no cold reading possible: {0}",
              expected("before the start", leaving)),
          4);
    }
    return new Reason(Mark.RECHECK, expected("cold, before the start", leaving), 4);
  }

  private static Phrase expected(String when, Moment moment) {
    double middle = Double.isNaN(moment.reading()) ? moment.settled() : moment.reading();
    double sigma = Double.isNaN(moment.reading()) ? moment.settledSigma() : moment.readingSigma();
    double low = middle - NINETY * sigma;
    return Phrase.of(
        "{0}: expect {1} to {2}; under {1} find out why",
        when, Shown.pressure(low), Shown.pressure(middle + NINETY * sigma));
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
