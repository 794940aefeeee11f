package dawngauge.forecast;

/**
 * Air added or let out that a forecast takes as done, just before the rig leaves a stop.
 *
 * @param gaugePascals what the gauge shows after it, in pascal
 */
public record Setting(double gaugePascals) {}
