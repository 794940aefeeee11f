package dawngauge.settings;

import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Ratio;

/**
 * What a user or packager may choose.
 *
 * @param confidence one-sided, per tire and judged point, with which a tire is to carry its load
 * @param reserve part of the load that a target of the user's own must leave to spare
 * @param recheckChange change of settled pressure that asks for a reading
 * @param recheckChangePart the same as a part of the last reading
 * @param dualsApart cold difference of dual mates that is set right
 * @param planUnderAim part of its aim by which a plan lets a tire start a day under it
 * @param shortStopMinutes stops shorter than this are no place to take readings
 */
public record Settings(
    Ratio confidence,
    Ratio reserve,
    GaugePressure recheckChange,
    Ratio recheckChangePart,
    GaugePressure dualsApart,
    Ratio planUnderAim,
    int shortStopMinutes) {}
