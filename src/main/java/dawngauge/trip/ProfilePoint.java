package dawngauge.trip;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Temperature;
import io.soabase.recordbuilder.core.RecordBuilder;
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
@RecordBuilder
public record ProfilePoint(
    @Nullable String name,
    Entered<Distance> distance,
    Entered<Elevation> elevation,
    @Nullable Entered<Temperature> ambient,
    Remarks remarks)
    implements ProfilePointBuilder.With {}
