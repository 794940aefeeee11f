package dawngauge.trip;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/**
 * A point along a leg, such as a pass.
 *
 * @param name what it is called, or null
 * @param distance from the start of the leg
 * @param elevation height of the ground
 * @param ambient air expected there when the rig passes, or null
 * @param remarks note and extras
 */
public record ProfilePoint(
    @Nullable String name,
    Entered<Distance> distance,
    Entered<Elevation> elevation,
    @Nullable Entered<Temperature> ambient,
    Remarks remarks) {

  /** The same under another name. */
  public ProfilePoint withName(@Nullable String other) {
    return new ProfilePoint(other, distance, elevation, ambient, remarks);
  }

  /** The same elsewhere on the leg. */
  public ProfilePoint withDistance(Entered<Distance> other) {
    return new ProfilePoint(name, other, elevation, ambient, remarks);
  }

  /** The same at another height. */
  public ProfilePoint withElevation(Entered<Elevation> other) {
    return new ProfilePoint(name, distance, other, ambient, remarks);
  }

  /** The same with other air. */
  public ProfilePoint withAmbient(@Nullable Entered<Temperature> other) {
    return new ProfilePoint(name, distance, elevation, other, remarks);
  }
}
