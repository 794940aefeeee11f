package dawngauge.ui.route;

import dawngauge.geo.Coordinate;
import dawngauge.problem.Outcome;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Leg;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.StopClock;
import dawngauge.trip.Trip;
import dawngauge.ui.common.TripDocument;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * The stop of a document whose fields are shown, named by its id so that they edit it wherever it
 * stands by now. Its fields ask only while it is there.
 */
final class EditedStop {

  private final TripDocument document;
  private String id = "";
  private @Nullable Trip clockOf;
  private @Nullable StopClock clock;

  EditedStop(TripDocument document) {
    this.document = document;
  }

  /** Is another stop from now on. */
  void become(String other) {
    id = other;
    clock = null;
  }

  TripDocument document() {
    return document;
  }

  Trip trip() {
    return document.trip();
  }

  UnitSystem units() {
    return document.units();
  }

  String id() {
    return id;
  }

  /** Its place in the order, or -1 where it is gone. */
  int index() {
    List<Stop> stops = trip().route().stops();
    for (int i = 0; i < stops.size(); i++) {
      if (stops.get(i).id().equals(id)) {
        return i;
      }
    }
    return -1;
  }

  Stop stop() {
    return trip().route().stops().get(index());
  }

  boolean hasLeg() {
    int index = index();
    return index >= 0 && index < trip().route().legs().size();
  }

  /** The leg that leaves it. */
  Leg leg() {
    return trip().route().legs().get(index());
  }

  /** The stop that its leg leads to. */
  Stop next() {
    return trip().route().stops().get(index() + 1);
  }

  /** Its clock, made anew for each trip. */
  StopClock clock() {
    StopClock known = clock;
    Trip trip = trip();
    if (known == null || !trip.equals(clockOf)) {
      known = new StopClock(trip, index());
      clock = known;
      clockOf = trip;
    }
    return known;
  }

  /** The nearest place on the route before this one, else behind it, or null. */
  @Nullable Coordinate near() {
    List<Stop> stops = trip().route().stops();
    int index = index();
    for (int i = index - 1; i >= 0; i--) {
      if (stops.get(i).coordinate() != null) {
        return stops.get(i).coordinate();
      }
    }
    for (int i = Math.max(0, index + 1); i < stops.size(); i++) {
      if (stops.get(i).coordinate() != null) {
        return stops.get(i).coordinate();
      }
    }
    return null;
  }

  void edit(UnaryOperator<Stop> change) {
    int at = index();
    if (at >= 0) {
      document.edit(RouteEdits.withStop(trip(), at, change.apply(stop())));
    }
  }

  void editLeg(UnaryOperator<Leg> change) {
    if (hasLeg()) {
      document.edit(RouteEdits.withLeg(trip(), index(), change.apply(leg())));
    }
  }

  /** Reads a text, and then changes the leg by it; either may be refused. */
  <T> Function<String, Outcome<Trip>> legBy(
      Function<String, Outcome<T>> reader, Function<T, Outcome<Leg>> change) {
    return text ->
        then(reader.apply(text), change).map(leg -> RouteEdits.withLeg(trip(), index(), leg));
  }

  /** What follows from what was read, if anything was. */
  static <T, U> Outcome<U> then(Outcome<T> read, Function<T, Outcome<U>> next) {
    T value = read.valueOrNull();
    return value == null ? Outcome.failed(read.problems()) : next.apply(value);
  }
}
