package dawngauge.advice;

/**
 * From which differences on a mark is given; ours, no source, unless said otherwise.
 *
 * @param recheckPascals change of settled pressure since the last reading that asks for another
 * @param recheckPart the same as a part of that reading; the larger of both counts
 * @param dualApartPascals cold difference of dual mates that is to be set right (common practice,
 *     no source)
 * @param planUnderAim part of its aim by which a plan lets a tire start a day under it
 * @param shortStopSeconds a stop shorter than this is no place to take a reading
 */
public record Thresholds(
    double recheckPascals,
    double recheckPart,
    double dualApartPascals,
    double planUnderAim,
    double shortStopSeconds) {}
