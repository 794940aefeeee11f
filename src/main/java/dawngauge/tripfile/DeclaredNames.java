package dawngauge.tripfile;

import dawngauge.field.Codec;
import dawngauge.field.TripCodecs;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.tire.TireSpec;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Gauge;
import dawngauge.trip.Rig;
import dawngauge.trip.Stop;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.Vehicle;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** All names that a trip gives, each with its place; looks up what refers to them. */
final class DeclaredNames {
  private static final int SHOWN = 8;

  private final Map<String, Set<String>> byKind = new HashMap<>();
  private final Map<String, Integer> axlesOf = new HashMap<>();
  private final FileProblems problems;

  private DeclaredNames(FileProblems problems) {
    this.problems = problems;
  }

  /** Gathers the names; one that stands twice is a problem. */
  static DeclaredNames of(Trip trip, FileProblems problems) {
    DeclaredNames names = new DeclaredNames(problems);
    Rig rig = trip.rig();
    names.gather("vehicle", rig.vehicles(), Vehicle::name, "/rig/vehicles", "/name");
    names.gather("vehicle letter", rig.vehicles(), Vehicle::letter, "/rig/vehicles", "/letter");
    names.gather("tire type", rig.tireTypes(), TireSpec::name, "/rig/tireTypes", "/name");
    names.gather("tire", rig.tires(), Tire::id, "/rig/tires", "/id");
    names.gather("gauge", rig.gauges(), Gauge::name, "/rig/gauges", "/name");
    names.gather("stop", trip.route().stops(), Stop::id, "/route/stops", "/id");
    Set<String> axles = new LinkedHashSet<>();
    for (Vehicle vehicle : rig.vehicles()) {
      names.axlesOf.putIfAbsent(vehicle.name(), vehicle.axles().size());
      for (int number = 1; number <= vehicle.axles().size(); number++) {
        axles.add(TripCodecs.AXLE.text().apply(new AxleRef(vehicle.name(), number)));
      }
    }
    names.byKind.put("axle", axles);
    return names;
  }

  private <T> void gather(
      String kind, List<T> all, Function<T, String> nameOf, String list, String field) {
    Map<String, String> placeOf = new LinkedHashMap<>();
    for (int i = 0; i < all.size(); i++) {
      String name = nameOf.apply(all.get(i));
      String place = list + "/" + i + field;
      String earlier = name.isEmpty() ? null : placeOf.putIfAbsent(name, place);
      if (earlier != null) {
        problems.add(Problem.of(ProblemCode.NAME_TAKEN, place, kind, name, earlier));
      }
    }
    byKind.put(kind, placeOf.keySet());
  }

  /** Reports a reference to a name that nothing has. A name that could not be read is let pass. */
  void require(String kind, String name, String place) {
    Set<String> known = byKind.getOrDefault(kind, Set.of());
    if (!name.isEmpty() && !known.contains(name)) {
      problems.add(
          Problem.of(ProblemCode.NO_SUCH_NAME, place, kind, Codec.shortened(name), list(known)));
    }
  }

  /** Reports an axle that the rig does not have; says whether it has it. */
  boolean requireAxle(AxleRef ref, String place) {
    boolean there = ref.number() <= axlesOf.getOrDefault(ref.vehicle(), 0);
    if (!ref.vehicle().isEmpty() && !there) {
      require("axle", TripCodecs.AXLE.text().apply(ref), place);
    }
    return there;
  }

  private static String list(Set<String> known) {
    List<String> first =
        new ArrayList<>(known.stream().limit(SHOWN).map(Codec::shortened).toList());
    if (known.size() > SHOWN) {
      first.add("and " + (known.size() - SHOWN) + " more");
    }
    return first.isEmpty() ? "none" : String.join(", ", first);
  }
}
