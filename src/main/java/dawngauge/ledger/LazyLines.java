package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;
import org.jspecify.annotations.Nullable;

/**
 * The lines of the stops. Each is made when it is first asked for: of a long trip a window shows a
 * few. Two threads that ask at once make the same line twice, which does no harm.
 */
final class LazyLines extends AbstractList<StopLine> implements RandomAccess {

  private final List<Stop> stops;
  private final @Nullable Advice advice;
  private final @Nullable StopLines maker;
  private final @Nullable StopLine[] made;

  private LazyLines(List<Stop> stops, @Nullable Advice advice, @Nullable StopLines maker) {
    this.stops = stops;
    this.advice = advice;
    this.maker = maker;
    this.made = new StopLine[stops.size()];
  }

  static List<StopLine> of(
      Trip trip, @Nullable Advice advice, UnitSystem units, @Nullable WheelPosition only) {
    return new LazyLines(
        trip.route().stops(),
        advice,
        advice == null ? null : new StopLines(trip, advice, units, only));
  }

  @Override
  public StopLine get(int index) {
    StopLine line = made[index];
    if (line == null) {
      line =
          advice != null && maker != null && index < advice.stops().size()
              ? maker.of(advice.stops().get(index))
              : StopLine.untimed(index + 1, stops.get(index));
      made[index] = line;
    }
    return line;
  }

  @Override
  public int size() {
    return made.length;
  }
}
