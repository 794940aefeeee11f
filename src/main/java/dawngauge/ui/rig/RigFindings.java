package dawngauge.ui.rig;

import dawngauge.fitness.Defect;
import dawngauge.ledger.FitnessPage;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Rig;
import dawngauge.trip.Spare;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Findings by the place of the rig they are about; none is lost. */
final class RigFindings {

  /** Place of findings about the trip, or about nothing the rig has. */
  static final String ELSEWHERE = "";

  private final List<Defect> all;
  private final Map<String, List<Defect>> byPlace = new HashMap<>();

  RigFindings(Rig rig, List<Defect> defects) {
    all = List.copyOf(defects);
    Set<String> places = new LinkedHashSet<>();
    Set<String> axles = new LinkedHashSet<>();
    for (Vehicle vehicle : rig.vehicles()) {
      places.add(vehicle.name());
      for (int number = 1; number <= vehicle.axles().size(); number++) {
        axles.add(new AxleRef(vehicle.name(), number).words());
      }
    }
    places.addAll(axles);
    rig.positions().stream().map(WheelPosition::words).forEach(places::add);
    rig.spares().stream().map(RigFindings::place).forEach(places::add);
    for (Defect defect : all) {
      byPlace
          .computeIfAbsent(place(defect.where(), places, axles), absent -> new ArrayList<>())
          .add(defect);
    }
  }

  /** The place of a spare. */
  static String place(Spare spare) {
    return "spare " + spare.tire();
  }

  /** One place; what concerns several tires of an axle is the axle's. */
  private static String place(String where, Set<String> places, Set<String> axles) {
    if (places.contains(where)) {
      return where;
    }
    return axles.stream()
        .filter(axle -> where.startsWith(axle + " "))
        .findFirst()
        .orElse(ELSEWHERE);
  }

  /** What is found at a place. */
  List<Defect> at(String place) {
    return byPlace.getOrDefault(place, List.of());
  }

  /** All of them, worst first. */
  List<Defect> all() {
    return all;
  }

  /** How many of each severity, worst first. */
  String summary() {
    return (all.isEmpty() ? "" : "Is the rig fit to go? ") + FitnessPage.summary(all);
  }

  /** How many of each severity there are at an axle and its tires; empty for none. */
  String countAt(String axle) {
    List<Defect> there =
        all.stream()
            .filter(defect -> defect.where().equals(axle) || defect.where().startsWith(axle + " "))
            .toList();
    return there.isEmpty() ? "" : FitnessPage.summary(there);
  }
}
