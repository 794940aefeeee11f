package dawngauge.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Every kind of quantity, and every pair of kind and unit, for tests that look at all of them. */
final class Kinds {
  /** A kind and one of its units. */
  record Pair(QuantityKind<?> kind, Unit unit) {}

  static final List<QuantityKind<?>> ALL =
      List.of(
          QuantityKind.PRESSURE,
          QuantityKind.GAUGE_PRESSURE,
          QuantityKind.TEMPERATURE,
          QuantityKind.TEMPERATURE_DIFFERENCE,
          QuantityKind.ELEVATION,
          QuantityKind.DISTANCE,
          QuantityKind.SPEED,
          QuantityKind.MASS,
          QuantityKind.TREAD_DEPTH,
          QuantityKind.AIR_FLOW,
          QuantityKind.RATIO);

  private Kinds() {}

  static Stream<QuantityKind<?>> all() {
    return ALL.stream();
  }

  static Stream<Pair> pairs() {
    List<Pair> pairs = new ArrayList<>();
    for (QuantityKind<?> kind : ALL) {
      kind.units().forEach(unit -> pairs.add(new Pair(kind, unit)));
    }
    return pairs.stream();
  }

  /** The quantity behind a number in a unit. */
  static Quantity of(Pair pair, double number) {
    return pair.kind().ofSi(pair.unit().toSi(number, pair.kind()));
  }
}
