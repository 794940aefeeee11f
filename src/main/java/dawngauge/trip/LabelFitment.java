package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.tire.TireClass;
import org.jspecify.annotations.Nullable;

/**
 * One line of the certification label: a tire size and its cold pressure.
 *
 * @param size size text as on the label
 * @param tireClass class of tire, where the label tells
 * @param loadRange load range, where the label tells
 * @param coldPressure recommended cold inflation pressure
 * @param remarks note and extras
 */
public record LabelFitment(
    String size,
    @Nullable TireClass tireClass,
    @Nullable String loadRange,
    Entered<GaugePressure> coldPressure,
    Remarks remarks) {}
