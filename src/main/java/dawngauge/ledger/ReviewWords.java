package dawngauge.ledger;

import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.UnitSystem;
import dawngauge.review.TireReview;
import dawngauge.rules.Quantile;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.time.ZoneId;

/**
 * Names, figures and times as a review tells them.
 *
 * @param trip the trip
 * @param units the units shown
 */
record ReviewWords(Trip trip, UnitSystem units) {

  String name(TireReview tire) {
    return trip.rig().shortForm(tire.position());
  }

  /** A difference or pressure, to a tenth of a psi or a hundredth of a bar. */
  String shown(double pascals) {
    return units.format(new GaugePressure(pascals), units == UnitSystem.US ? 1 : 2);
  }

  /** " ± 1.2 psi", within which 9 of 10 lie. */
  String within(double sigma) {
    return "± " + shown(Quantile.NINETY_WITHIN * sigma);
  }

  static String when(LogEvent event) {
    return when(event.time().instant(), event.time().time().getZone());
  }

  static String when(Instant instant, ZoneId zone) {
    return Wording.shortDay(instant, zone) + " " + Wording.clock(instant, zone);
  }
}
