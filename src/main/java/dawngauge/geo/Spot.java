package dawngauge.geo;

import dawngauge.quantity.Elevation;
import java.time.ZoneId;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A place to stop at, with what is estimated there.
 *
 * @param name what it is called
 * @param at where it is
 * @param elevation of the ground, an estimate; null where nothing sound can be said
 * @param zone its time zone, an estimate; null where nothing sound can be said
 */
public record Spot(
    String name, Coordinate at, @Nullable Elevation elevation, @Nullable ZoneId zone) {

  /** A place of the gazetteer. */
  public static Spot of(Place place) {
    return new Spot(place.label(), place.coordinate(), place.elevation(), place.zone());
  }

  /** Any point on the earth, with what the places around it let expect. */
  public static Spot of(String name, Coordinate at, Optional<Estimate> estimate) {
    return new Spot(
        name,
        at,
        estimate.map(Estimate::elevation).orElse(null),
        estimate.map(Estimate::zone).orElse(null));
  }
}
