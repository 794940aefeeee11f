package dawngauge.review;

import dawngauge.trip.LogEvent;

/**
 * The reading by which a tire ran at 80 % or less of its recommended pressure.
 *
 * @param reading the reading
 * @param settled what is behind it as cool as the air, in pascal; as read where that is not known
 */
public record RanLowReading(LogEvent.Reading reading, double settled) {}
