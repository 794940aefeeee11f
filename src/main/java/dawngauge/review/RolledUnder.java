package dawngauge.review;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.LoadChance;
import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.forecast.Track;
import dawngauge.trip.CrewPlace;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Legs one after another on which a tire rolled, likelier than not, with less than its load needs.
 *
 * @param from when it set off
 * @param to when it arrived
 * @param meters way between; NaN where a leg's length is not known
 * @param pascals lowest pressure it is known to have rolled with, as cool as the air
 * @param foreseen the chance that the forecast of that morning told, by what had been read until
 *     then; NaN where it told none
 */
public record RolledUnder(
    Instant from, Instant to, double meters, double pascals, double foreseen) {

  private static final double LIKELIER_THAN_NOT = 0.5;

  /**
   * The stretches of a tire, as far as the rig has been driven.
   *
   * @param slips readings that tell nothing of it; what is known by one of them does not count
   */
  static List<RolledUnder> of(
      Forecaster forecaster, WheelPosition position, Track track, Set<ReadingCheck> slips) {
    List<Itinerary.Visit> visits = forecaster.itinerary().visits();
    int driven = CrewPlace.open(forecaster.trip(), forecaster.itinerary().visits());
    List<RolledUnder> found = new ArrayList<>();
    RolledUnder open = null;
    for (int leg = 0; leg < driven; leg++) {
      double pascals = under(forecaster, track, leg, slips);
      if (Double.isNaN(pascals)) {
        open = null;
        continue;
      }
      double meters = forecaster.itinerary().drives().get(leg).meters();
      double length = meters > 0 ? meters : Double.NaN;
      Instant to = visits.get(leg + 1).arrive();
      if (open == null) {
        double foreseen = foreseen(forecaster, position, leg);
        open = new RolledUnder(visits.get(leg).leave(), to, length, pascals, foreseen);
        found.add(open);
      } else {
        open =
            new RolledUnder(
                open.from,
                to,
                open.meters + length,
                Math.min(open.pascals, pascals),
                open.foreseen);
        found.set(found.size() - 1, open);
      }
    }
    return found;
  }

  /**
   * The lowest pressure of a leg if it was too little for the load: when leaving, on the way, or by
   * what was read of it where it arrived. NaN if not.
   */
  private static double under(
      Forecaster forecaster, Track track, int leg, Set<ReadingCheck> slips) {
    TireAtStop at = track.stops().get(leg);
    double lowest = Double.NaN;
    if (!rests(at.leaving(), slips)) {
      lowest = lower(lowest, at.leaving(), at.leavingChance());
    }
    if (at.low() != null && !rests(at.low().moment(), slips)) {
      lowest = lower(lowest, at.low().moment(), at.low().chance());
    }
    TireSnapshot came = asItCame(forecaster, track, leg + 1);
    return rests(came, slips) ? lowest : lower(lowest, came, LoadChance.of(at.limits(), came));
  }

  /** Whether what is known of a tire is known by one of some readings. */
  private static boolean rests(@Nullable TireSnapshot moment, Set<ReadingCheck> readings) {
    return moment != null
        && readings.stream()
            .map(check -> check.reading().time().instant().toEpochMilli() / 1000.0)
            .anyMatch(time -> time == moment.origin().seconds());
  }

  /**
   * The tire on arriving by what was first read of it at a stop; null where nothing was, or only
   * after it was set or changed there.
   */
  private static @Nullable TireSnapshot asItCame(Forecaster forecaster, Track track, int visit) {
    TireAtStop at = track.stops().get(visit);
    String tire = track.stops().get(visit - 1).fitted().tire().id();
    if (at.readings().isEmpty() || !at.readings().get(0).reading().tire().equals(tire)) {
      return null;
    }
    Instant read = at.readings().get(0).reading().time().instant();
    Instant arrive = forecaster.itinerary().visits().get(visit).arrive();
    if (wasSet(forecaster.trip(), tire, arrive, read)) {
      return null;
    }
    double seconds = read.toEpochMilli() / 1000.0;
    for (TireSnapshot moment : track.stay(visit)) {
      if (moment.seconds() >= seconds) {
        TireSnapshot arrival = at.arrival();
        return arrival == null ? moment : moment.inAirOf(arrival);
      }
    }
    return null;
  }

  /** Whether a tire was set from one time to another, both counted. */
  private static boolean wasSet(Trip trip, String tire, Instant from, Instant to) {
    return trip.log().stream()
        .filter(event -> event instanceof LogEvent.Adjustment set && set.tire().equals(tire))
        .map(event -> event.time().instant())
        .anyMatch(time -> !time.isBefore(from) && !time.isAfter(to));
  }

  private static double lower(double lowest, @Nullable TireSnapshot moment, LoadChance chance) {
    if (moment == null || !chance.tooLikely(LIKELIER_THAN_NOT)) {
      return lowest;
    }
    return Double.isNaN(lowest) ? moment.judged() : Math.min(lowest, moment.judged());
  }

  private static double foreseen(Forecaster forecaster, WheelPosition position, int leg) {
    Instant leave = forecaster.itinerary().visits().get(leg).leave();
    Trip trip = forecaster.trip();
    List<LogEvent> before =
        trip.log().stream().filter(event -> !event.time().instant().isAfter(leave)).toList();
    return forecaster
        .with(trip.withLog(before))
        .track(position)
        .map(track -> track.stops().get(leg))
        .map(
            at ->
                at.low() == null
                    ? at.leavingChance().underFloor()
                    : Math.max(at.leavingChance().underFloor(), at.low().chance().underFloor()))
        .orElse(Double.NaN);
  }
}
