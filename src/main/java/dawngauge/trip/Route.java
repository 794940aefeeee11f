package dawngauge.trip;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The way: stops, and the legs between them.
 *
 * @param stops in order; the first is where the rig starts
 * @param legs one fewer than stops (none without stops); leg i leads from stop i to stop i + 1
 */
public record Route(List<Stop> stops, List<Leg> legs) {

  /** Copies the lists and checks their lengths. */
  public Route {
    stops = List.copyOf(stops);
    legs = List.copyOf(legs);
    if (legs.size() != Math.max(0, stops.size() - 1)) {
      throw new IllegalArgumentException(
          stops.size() + " stops need one leg between each two, not " + legs.size());
    }
  }

  /** No way at all: the rig stands where it would start. */
  public static Route standing() {
    Stop start = Stop.named("start", "the start", Stop.Kind.START);
    return new Route(List.of(start), List.of());
  }

  /** The stop with an id. */
  public Optional<Stop> stop(String id) {
    return stops.stream().filter(stop -> stop.id().equals(id)).findFirst();
  }

  /** The last date typed for a stop; empty where there is none. */
  public Optional<LocalDate> lastDate() {
    return stops.stream()
        .flatMap(
            stop ->
                Stream.of(Optional.ofNullable(stop.arrive()), Optional.ofNullable(stop.leave())))
        .flatMap(Optional::stream)
        .map((TypedTime time) -> time.time().toLocalDate())
        .max(Comparator.naturalOrder());
  }

  /** The id of the stop to which the leg from another one leads. */
  public Optional<String> after(String id) {
    for (int i = 0; i + 1 < stops.size(); i++) {
      if (stops.get(i).id().equals(id)) {
        return Optional.of(stops.get(i + 1).id());
      }
    }
    return Optional.empty();
  }
}
