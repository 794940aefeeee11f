package dawngauge.tire;

import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;

/**
 * What the certification label vouches for: at its cold pressure the tires it names carry the
 * axle's GAWR (49 CFR 571.120 S5.3.1). Holds only for tires as on the label.
 *
 * @param coldPressure cold pressure on the label
 * @param load the tire's share of the axle's GAWR
 */
public record CertifiedPoint(GaugePressure coldPressure, Mass load) {}
