package dawngauge.forecast;

/**
 * The lowest judged pressure of a tire on a leg.
 *
 * @param meters way from the start of the leg
 * @param moment the tire there
 * @param chance that it does not carry its load there
 */
public record LegLow(double meters, TireSnapshot moment, LoadChance chance) {}
