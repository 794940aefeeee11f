package dawngauge.advice;

import org.jspecify.annotations.Nullable;

/**
 * The figure to set by the minute at which the crew stands at the tire. What counts is the air that
 * is filled in; the gauge shows it at the tire's warmth of that minute, so that one filling has
 * many figures.
 *
 * @param onArrival what the gauge is to show as warm as the tire arrives; null where it does not
 *     arrive warm, its warmth is not known, or air is let out, which is done cold
 * @param at what it is to show at the planned minute
 * @param seconds the planned minute, epoch seconds
 * @param cold what it is to show once the tire is as cool as the air
 */
public record TimedFigures(
    @Nullable SetFigure onArrival, SetFigure at, double seconds, SetFigure cold) {}
