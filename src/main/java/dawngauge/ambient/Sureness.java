package dawngauge.ambient;

import dawngauge.quantity.Entered;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Provenance;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How sure temperatures are that were given for moments of a place: by how long before they were
 * given, about dawn as a day's minimum, else as its maximum; a typed spread takes the place of
 * that.
 */
final class Sureness {

  /**
   * One standard deviation of a temperature that was measured, in kelvin: the instrument's error,
   * and how far the tires' own place may differ from where it stood; ours, no source.
   */
  static final double MEASURED = 2;

  private final LeadError error;
  private final DawnHours dawn;
  private final Instant given;

  /** Spread in kelvin that was typed, or of what was measured; else NaN. */
  private final double known;

  private final boolean measured;

  private Sureness(LeadError error, DawnHours dawn, Instant given, double known, boolean measured) {
    this.error = error;
    this.dawn = dawn;
    this.given = given;
    this.known = known;
    this.measured = measured;
  }

  /** Of a temperature typed without a time, taken as given at the beginning of the trip. */
  static Sureness ofTyped(AmbientNeeds.Need need, Instant asOf) {
    return new Sureness(LeadError.of(need), DawnHours.of(need), asOf, Double.NaN, false);
  }

  /** Of an entry of a trip; of one without a time, as if given at the beginning of the trip. */
  static Sureness of(AmbientNeeds.Need need, AmbientEntry entry, Instant asOf) {
    Instant issued = entry.provenance().issued();
    Double known = known(entry);
    return new Sureness(
        LeadError.of(need),
        DawnHours.of(need),
        issued == null ? asOf : issued,
        known == null ? Double.NaN : known,
        isMeasured(entry));
  }

  /** Spread of an entry in kelvin where it does not go by lead; else null. */
  static @Nullable Double known(AmbientEntry entry) {
    Entered<TemperatureDifference> typed = entry.uncertainty();
    if (typed != null) {
      return typed.value().kelvins();
    }
    return isMeasured(entry) ? (Double) MEASURED : null;
  }

  /** Whether an entry tells what came, not what was expected. */
  static boolean isMeasured(AmbientEntry entry) {
    return entry.provenance().kind() == Provenance.Kind.MEASURED;
  }

  /** One standard deviation in kelvin. */
  double sigmaAt(double epochSeconds) {
    return Double.isNaN(known) ? error.at(epochSeconds, given, dawn.contain(epochSeconds)) : known;
  }

  /** How much further the cold side reaches, in kelvin. */
  double coldSideAt(double epochSeconds) {
    return !measured && dawn.contain(epochSeconds) ? ForecastError.MINIMUM_COLD_SIDE : 0;
  }
}
