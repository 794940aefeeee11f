package dawngauge.forecast;

/**
 * The lowest judged pressure of a tire on a leg.
 *
 * @param meters way from the start of the leg
 * @param moment the tire there
 * @param chance that its true pressure is under the floor there; NaN without a floor
 */
public record LegLow(double meters, Moment moment, double chance) {}
