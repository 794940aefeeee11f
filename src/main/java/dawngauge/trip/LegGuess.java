package dawngauge.trip;

import dawngauge.geo.Coordinate;
import dawngauge.geo.GreatCircle;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What can be guessed of a leg from where its ends are. */
final class LegGuess {

  /** Roads are longer than the great circle; about 1.2 times in the U.S. (Ballou 2002). */
  private static final double DETOUR = 1.2;

  /** The same on short ways. */
  private static final double SHORT_DETOUR = 1.3;

  private static final double MILE_METERS = 1609.344;

  private static final double SHORT_WAY_METERS = 100 * MILE_METERS;

  private static final String USUAL_SPEED = "55 mph";

  private LegGuess() {}

  /** A leg as far as it can be guessed; its distance, if any, is an estimate. */
  static Leg between(Stop from, Stop to) {
    Entered<Distance> distance = road(from.coordinate(), to.coordinate());
    return new Leg(
        distance,
        Entered.of(QuantityKind.SPEED, USUAL_SPEED),
        null,
        null,
        List.of(),
        List.of(),
        true,
        Remarks.NONE);
  }

  /** A leg whose ends have changed: its distance is guessed, what was typed beside that stays. */
  static Leg anew(Leg old, Stop from, Stop to) {
    Leg guess = between(from, to);
    return new Leg(
        guess.distance(),
        old.averageSpeed() == null ? guess.averageSpeed() : old.averageSpeed(),
        old.duration(),
        old.topSpeed(),
        List.of(),
        List.of(),
        guess.distanceEstimated(),
        old.remarks());
  }

  private static @Nullable Entered<Distance> road(
      @Nullable Coordinate start, @Nullable Coordinate end) {
    if (start == null || end == null) {
      return null;
    }
    double line = GreatCircle.between(start, end).meters();
    double road = line * (line < SHORT_WAY_METERS ? SHORT_DETOUR : DETOUR);
    // Places on other continents, as while a name is only half typed: no leg is that long.
    return QuantityKind.DISTANCE.holds(road + MILE_METERS)
        ? guessed(new Distance(Math.max(road, MILE_METERS)), Unit.MILE, 1)
        : null;
  }

  /** A figure of ours as somebody would type it, rounded to tenths of the unit. */
  static <Q extends Quantity> Entered<Q> typed(Q value, Unit unit) {
    long rounded = Math.round(value.in(unit) * 10);
    String number =
        rounded % 10 == 0
            ? String.valueOf(rounded / 10)
            : (rounded < 0 ? "-" : "") + Math.abs(rounded) / 10 + "." + Math.abs(rounded) % 10;
    return entered(value, number, unit);
  }

  /** A guess as somebody would type it, rounded to whole steps so that it looks no better. */
  static <Q extends Quantity> Entered<Q> guessed(Q value, Unit unit, int step) {
    return entered(value, String.valueOf(Math.round(value.in(unit) / step) * step), unit);
  }

  private static <Q extends Quantity> Entered<Q> entered(Q value, String number, Unit unit) {
    @SuppressWarnings("unchecked") // a quantity's kind makes quantities of its own type
    QuantityKind<Q> kind = (QuantityKind<Q>) value.kind();
    return Entered.of(kind, number + " " + unit.symbol());
  }
}
