package dawngauge.tire;

/**
 * How a tire is fitted.
 *
 * @param dual one of a dual pair
 * @param multipurposeOrTrailer on a multipurpose vehicle, truck, bus or trailer, not on a passenger
 *     car: there a passenger-car tire counts at its rating divided by 1.10
 */
public record Fitment(boolean dual, boolean multipurposeOrTrailer) {}
