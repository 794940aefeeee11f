package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Why a tire is to be gauged that others beside it need not be. */
final class Rechecks {

  private final Forecaster forecaster;
  private final Thresholds thresholds;
  private final List<LogEvent.Adjustment> adjustments;
  private boolean afterSetting;

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

  /** What asks for a reading of this tire at a stop. */
  List<Reason> at(int visit, List<TireAtStop> track) {
    TireAtStop at = track.get(visit);
    List<Reason> reasons = new ArrayList<>();
    for (ReadingCheck check : at.readings()) {
      unexpected(check, reasons);
    }
    boolean last = visit == track.size() - 1;
    TireSnapshot arrival = at.arrival();
    if (visit == 0 || arrival == null || !at.readings().isEmpty() || !longEnough(visit, last)) {
      return reasons;
    }
    Entered<GaugePressure> leak = at.fitted().tire().lossPerDay();
    if (leak != null) {
      reasons.add(
          new Reason(
              Mark.RECHECK,
              Phrase.of("find its leak"),
              Phrase.of(
                  "loses about {0} a day: gauge it at every stop, find the leak", leak.value()),
              1));
    }
    if (afterSetting) {
      reasons.add(
          new Reason(
              Mark.RECHECK,
              Phrase.of("air was set, gauge on arrival"),
              Phrase.of(
                  "gauge it on arrival, first stop after air was set; if it reads under its range,"
                      + " find out why"),
              2));
    }
    return reasons;
  }

  /** Keeps what the next stop needs to know. */
  void remember(int visit, TireAtStop at, @Nullable SetFigure set) {
    Itinerary.Visit stop = forecaster.itinerary().visits().get(visit);
    boolean looked = longEnough(visit, false) && (at.arrival() != null || !at.readings().isEmpty());
    if (set != null || adjusted(at, stop)) {
      afterSetting = true;
    } else if (looked) {
      afterSetting = false;
    }
  }

  private boolean longEnough(int visit, boolean last) {
    Itinerary.Visit stop = forecaster.itinerary().visits().get(visit);
    return last || stop.staysFor(thresholds.shortStopSeconds());
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

  private static void unexpected(ReadingCheck check, List<Reason> reasons) {
    if (!check.unexpected()) {
      return;
    }
    double off = check.reading().pressure().value().pascals() - check.expected();
    reasons.add(
        new Reason(
            Mark.RECHECK,
            Phrase.of(
                "read {0} {1} than expected: find out why before it rolls",
                PressureText.pressure(Math.abs(off)), off < 0 ? "less" : "more"),
            Phrase.of(
                "read {0}, {1} {2} than expected: find out why before it rolls on",
                check.reading().pressure().value(),
                PressureText.pressure(Math.abs(off)),
                off < 0 ? "less" : "more"),
            0));
  }
}
