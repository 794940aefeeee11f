package dawngauge.planner;

import dawngauge.ambient.AirChange;
import dawngauge.ambient.MeasuredAir;
import dawngauge.ambient.WeatherFill;
import dawngauge.ambient.WeatherService;
import dawngauge.problem.Outcome;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.util.List;

/** Gets the temperatures along a trip and tells what became of them. */
public final class Temperatures {

  /** Changes of the air below this, in kelvin, are no news: half the error of a forecast day. */
  private static final double LEAST_CHANGE = 2;

  Temperatures() {}

  /**
   * Asks a weather service for the air along a trip and fills it in; see {@link WeatherFill}. A
   * trip without times, or with nothing to ask for, comes back as it is.
   */
  public WeatherFill.Result ask(Trip trip, WeatherService service, WeatherFill.Progress progress) {
    Outcome<Itinerary> itinerary = Itinerary.of(trip);
    service.begin();
    return itinerary.hasValue()
        ? WeatherFill.fill(trip, itinerary.get(), service::forecast, progress)
        : new WeatherFill.Result(trip, List.of(), itinerary.problems(), 0, 0);
  }

  /** Fills a trip with typical temperatures alone, where a service cannot or may not be asked. */
  public WeatherFill.Result typical(Trip trip) {
    Outcome<Itinerary> itinerary = Itinerary.of(trip);
    return itinerary.hasValue()
        ? WeatherFill.typical(trip, itinerary.get())
        : new WeatherFill.Result(trip, List.of(), itinerary.problems(), 0, 0);
  }

  /** A trip with typical air at the stops that have none, such as those just pasted. */
  public Trip withoutGaps(Trip trip) {
    return Itinerary.of(trip)
        .value()
        .map(itinerary -> WeatherFill.gaps(trip, itinerary))
        .orElse(trip);
  }

  /** The air that was measured at the stops that the rig has left; none without known times. */
  public List<MeasuredAir> measured(
      Trip trip, WeatherService service, Instant now, WeatherFill.Progress progress) {
    service.begin();
    return Itinerary.of(trip)
        .value()
        .map(itinerary -> MeasuredAir.of(trip, itinerary, service::observed, now, progress))
        .orElse(List.of());
  }

  /** Stops whose air changed by 2 K or more since a weather service was asked before. */
  public List<AirChange> changes(Trip trip) {
    return Itinerary.of(trip)
        .value()
        .map(itinerary -> AirChange.since(trip, itinerary, LEAST_CHANGE))
        .orElse(List.of());
  }
}
