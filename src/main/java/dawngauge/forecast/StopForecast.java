package dawngauge.forecast;

import dawngauge.explain.Phrase;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Itinerary.Drive;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One stop of a forecast.
 *
 * @param visit the stop in time
 * @param ahead the drive that leaves it, or null at the last stop
 * @param airOnArrival temperature of the air in kelvin; NaN where unknown
 * @param airOnLeaving the same when leaving
 * @param airGiven what was given for it, in words, or null where it was taken between neighbours
 * @param elevation height of the ground in meter; NaN where unknown
 * @param airAheadKnown whether the air on the whole leg ahead is known; false at the last stop
 * @param firstStartOfDay whether the rig starts from here for the first time that day
 * @param tires the tires, in walking order; only positions with a tire
 */
public record StopForecast(
    Itinerary.Visit visit,
    @Nullable Drive ahead,
    double airOnArrival,
    double airOnLeaving,
    @Nullable Phrase airGiven,
    double elevation,
    boolean airAheadKnown,
    boolean firstStartOfDay,
    List<TireAtStop> tires) {

  /** Copies the list. */
  public StopForecast {
    tires = List.copyOf(tires);
  }
}
