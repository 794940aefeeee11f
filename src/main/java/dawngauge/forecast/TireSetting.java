package dawngauge.forecast;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.trip.LogEvent;
import org.jspecify.annotations.Nullable;

/**
 * Air added or let out, with what the tire was like then.
 *
 * @param adjustment as noted
 * @param after the tire after it
 * @param fillExpected fill expected before it, in pascal per kelvin; NaN where not known
 */
public record TireSetting(LogEvent.Adjustment adjustment, FillOrigin after, double fillExpected) {

  /** Whether the gauge was read before it. */
  public boolean wasRead() {
    return adjustment.from() != null;
  }

  /** Fill added, negative where let out: by the gauge before, else by what was expected. */
  public double fillAdded() {
    Entered<GaugePressure> from = before();
    return from == null
        ? after.fill() - fillExpected
        : (adjustment.to().value().pascals() - from.value().pascals()) / after.tireKelvins();
  }

  private @Nullable Entered<GaugePressure> before() {
    return adjustment.from();
  }
}
