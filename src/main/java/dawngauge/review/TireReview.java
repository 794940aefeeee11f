package dawngauge.review;

import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireSetting;
import dawngauge.trip.WheelPosition;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One tire after the trip. Pressures in pascal.
 *
 * @param position where it stood
 * @param tire its id
 * @param cold its cold readings with the gauge that read most, in time order
 * @param residuals how far each of those lies from sound: what it lost up to it, less what all
 *     tires seem to have lost
 * @param fit what they tell
 * @param lost pressure lost between the readings of the fit, at the last of them
 * @param lostSigma one standard deviation of that
 * @param perDay loss a day, for a leak
 * @param fastPerDay the most it may be a day, in 19 of 20 cases
 * @param floorBy when it may meet its floor at that rate, or null where it does not lose or no
 *     floor is known
 * @param all every reading of it, in time order
 * @param made every setting of it whose warmth is known
 * @param account from its first cold reading to its last, or null with fewer than two
 * @param letOutWarm air that was let out of it while it was warm
 * @param ranLow the reading by which it ran at or below 80 % of its recommended pressure, or null
 * @param rolledUnder where it rolled with less than its load needs
 */
public record TireReview(
    WheelPosition position,
    String tire,
    List<ReadingCheck> cold,
    List<Double> residuals,
    LossFit fit,
    double lost,
    double lostSigma,
    double perDay,
    double fastPerDay,
    @Nullable Instant floorBy,
    List<ReadingCheck> all,
    List<TireSetting> made,
    @Nullable PressureAccount account,
    List<TireSetting> letOutWarm,
    @Nullable RanLowReading ranLow,
    List<RolledUnder> rolledUnder) {

  /** Copies the lists. */
  public TireReview {
    cold = List.copyOf(cold);
    all = List.copyOf(all);
    made = List.copyOf(made);
    residuals = List.copyOf(residuals);
    letOutWarm = List.copyOf(letOutWarm);
    rolledUnder = List.copyOf(rolledUnder);
  }

  /** Whether its readings tell of a loss. */
  public boolean lostAir() {
    return fit.kind() == LossFit.Kind.LOST
        || fit.kind() == LossFit.Kind.STEADY
        || fit.kind() == LossFit.Kind.ONCE;
  }

  /** Whether nothing at all is wrong with it by its readings. */
  public boolean sound() {
    return fit.kind() == LossFit.Kind.SOUND
        && letOutWarm.isEmpty()
        && ranLow == null
        && rolledUnder.isEmpty();
  }
}
