package dawngauge.review;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.LoadChance;
import dawngauge.forecast.Moment;
import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.Track;
import dawngauge.trip.CrewPlace;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
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

  /** The stretches of a tire, as far as the rig has been driven. */
  static List<RolledUnder> of(Forecaster forecaster, WheelPosition position, Track track) {
    List<Itinerary.Visit> visits = forecaster.itinerary().visits();
    int driven = CrewPlace.open(forecaster.trip(), forecaster.itinerary().visits());
    List<RolledUnder> found = new ArrayList<>();
    RolledUnder open = null;
    for (int leg = 0; leg < driven; leg++) {
      double pascals = under(track.stops(), leg);
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
  private static double under(List<TireAtStop> stops, int leg) {
    TireAtStop at = stops.get(leg);
    double lowest = Double.NaN;
    lowest = lower(lowest, at.leaving(), at.leavingChance());
    if (at.low() != null) {
      lowest = lower(lowest, at.low().moment(), at.low().chance());
    }
    TireAtStop next = stops.get(leg + 1);
    List<ReadingCheck> readings = next.readings();
    if (!readings.isEmpty() && next.setting() == null) {
      Moment read = next.check();
      lowest = lower(lowest, read, LoadChance.of(at.limits(), read));
    }
    return lowest;
  }

  private static double lower(double lowest, @Nullable Moment moment, LoadChance chance) {
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
