package dawngauge.fitness;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Rig;
import dawngauge.trip.Spare;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Gathers findings, makes one of those that say the same of several tires of an axle. */
final class GatheredDefects {

  private static final int AXLES = 1000;
  private static final int SPARES = 1_000_000;
  private static final int TRIP = 2_000_000;

  private record Key(
      int rank,
      String where,
      FindingKind code,
      Severity severity,
      Phrase what,
      Phrase toDo,
      Authority authority) {}

  private final Rig rig;
  private final Map<Key, List<WheelSlot>> found = new LinkedHashMap<>();

  GatheredDefects(Rig rig) {
    this.rig = rig;
  }

  /** Takes findings about a place. */
  @FunctionalInterface
  interface Place {
    /** Adds one. */
    void add(FindingKind code, Severity severity, Phrase what, Phrase toDo, Authority authority);
  }

  /** A tire or its wheel. */
  Place tire(WheelPosition position) {
    AxleRef axle = position.axle();
    return (code, severity, what, toDo, authority) ->
        slots(rank(axle) + 1, axle.words(), code, severity, what, toDo, authority)
            .add(position.slot());
  }

  /** An axle. */
  Place axle(AxleRef axle) {
    return (code, severity, what, toDo, authority) ->
        slots(rank(axle), axle.words(), code, severity, what, toDo, authority);
  }

  /** A vehicle. */
  Place vehicle(Vehicle vehicle) {
    return (code, severity, what, toDo, authority) ->
        slots(rank(vehicle.name()), vehicle.name(), code, severity, what, toDo, authority);
  }

  /** A spare; none keeps the rig from going, so at most it is to be put right. */
  Place spare(Spare spare) {
    int rank = SPARES + rig.spares().indexOf(spare);
    return (code, severity, what, toDo, authority) ->
        slots(
            rank,
            "spare " + spare.tire(),
            code,
            severity.atMost(Severity.MEND),
            what,
            toDo,
            authority);
  }

  /** The trip as a whole. */
  Place trip() {
    return (code, severity, what, toDo, authority) ->
        slots(TRIP, "trip", code, severity, what, toDo, authority);
  }

  private List<WheelSlot> slots(
      int rank,
      String where,
      FindingKind code,
      Severity severity,
      Phrase what,
      Phrase toDo,
      Authority authority) {
    Key key = new Key(rank, where, code, severity, what, toDo, authority);
    return found.computeIfAbsent(key, absent -> new ArrayList<>());
  }

  private int rank(AxleRef axle) {
    return rank(axle.vehicle()) + 2 * axle.number();
  }

  private int rank(String vehicle) {
    return AXLES * rig.vehicles().stream().map(Vehicle::name).toList().indexOf(vehicle);
  }

  /** All of them: worst first, then along the rig. */
  List<Defect> inOrder() {
    Comparator<Map.Entry<Key, List<WheelSlot>>> order =
        Comparator.comparing((Map.Entry<Key, List<WheelSlot>> entry) -> entry.getKey().severity)
            .thenComparing(entry -> entry.getKey().rank)
            .thenComparing(
                entry -> entry.getValue().stream().findFirst().orElse(null),
                Comparator.nullsFirst(Comparator.naturalOrder()));
    return found.entrySet().stream()
        .sorted(order)
        .map(entry -> defect(entry.getKey(), entry.getValue()))
        .toList();
  }

  private static Defect defect(Key key, List<WheelSlot> slots) {
    List<String> words = slots.stream().map(WheelSlot::words).toList();
    String where = key.where + (words.isEmpty() ? "" : " " + Words.and(words));
    return new Defect(key.code, key.severity, where, key.what, key.toDo, key.authority);
  }
}
