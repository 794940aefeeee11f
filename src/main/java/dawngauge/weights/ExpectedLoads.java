package dawngauge.weights;

import dawngauge.rules.Loads;
import dawngauge.trip.AxleRef;
import dawngauge.trip.DeckLoad;
import dawngauge.trip.Rig;
import dawngauge.trip.Vehicle;
import dawngauge.trip.Worksheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The loads of axles and hitch that the worksheet lets expect: what the rig puts there empty, and
 * by levers what is loaded. What axles and hitch carry together is what all of it weighs.
 */
public final class ExpectedLoads {

  /**
   * How far the middle of a load is from where it was typed, one standard deviation in meter: a
   * foot, as animals stand; inferred.
   */
  public static final double PLACE_SIGMA = 0.3;

  private final Rig rig;
  private final Worksheet sheet;
  private final Coupling coupling;
  private final EmptyWeights empty;
  private final List<String> missing = new ArrayList<>();

  /** Of what is loaded: on the trailer's axles, on the hitch; empty where not known. */
  private Optional<SummedLoad> addedBehind = Optional.of(SummedLoad.NOTHING);

  private Optional<SummedLoad> addedOnHitch = Optional.of(SummedLoad.NOTHING);

  /** Of what is loaded on the tow vehicle: on its axles; empty where not known. */
  private Optional<Map<AxleRef, SummedLoad>> addedOnTow = Optional.of(Map.of());

  private SummedLoad onTrailer = SummedLoad.NOTHING;
  private SummedLoad onTow = SummedLoad.NOTHING;
  private final boolean oneTrailer;

  /** Expected loads of a rig by its worksheet. */
  public ExpectedLoads(Rig rig, Worksheet sheet) {
    this.rig = rig;
    this.sheet = sheet;
    coupling = new Coupling(rig, sheet);
    empty = new EmptyWeights(coupling, sheet);
    int joined = (coupling.tow() == null ? 0 : 1) + (coupling.trailer() == null ? 0 : 1);
    oneTrailer = joined == rig.vehicles().size();
    for (int i = 0; i < sheet.loads().size(); i++) {
      add(sheet.loads().get(i), i);
    }
    findMissing();
  }

  private void add(DeckLoad line, int index) {
    double kilograms = line.kilograms();
    // All head of a line are wrong together: a typical weight is too high or too low for each.
    SummedLoad load =
        SummedLoad.of(kilograms)
            .doubted(
                new Doubt("weight, load " + index), kilograms * Loads.relativeSigma(line.source()));
    Doubt place = new Doubt("place, load " + index);
    double at = line.place().value().meters();
    if (is(coupling.trailer(), line)) {
      onTrailer = onTrailer.plus(load);
      Optional<SummedLoad> behind = coupling.onTrailer(load, at, place, PLACE_SIGMA);
      addedOnHitch = addedOnHitch.flatMap(sum -> behind.map(part -> sum.plus(load.minus(part))));
      addedBehind = addedBehind.flatMap(sum -> behind.map(sum::plus));
    } else if (is(coupling.tow(), line)) {
      onTow = onTow.plus(load);
      Optional<Map<AxleRef, SummedLoad>> parts = coupling.onTow(load, at, place, PLACE_SIGMA);
      addedOnTow = addedOnTow.flatMap(sum -> parts.map(part -> joined(sum, part)));
    }
  }

  private static boolean is(@Nullable Vehicle vehicle, DeckLoad line) {
    return vehicle != null && vehicle.name().equals(line.vehicle());
  }

  private static Map<AxleRef, SummedLoad> joined(
      Map<AxleRef, SummedLoad> one, Map<AxleRef, SummedLoad> other) {
    Map<AxleRef, SummedLoad> all = new LinkedHashMap<>(one);
    other.forEach((axle, load) -> all.merge(axle, load, SummedLoad::plus));
    return all;
  }

  private void findMissing() {
    if (!oneTrailer) {
      missing.add("more than one trailer: expected weights are worked out for one");
      return;
    }
    if (sheet.loads().isEmpty()) {
      missing.add("nothing is loaded: type what stands where");
    }
    for (Vehicle vehicle : rig.vehicles()) {
      List<String> unknown =
          AxleGroup.from(vehicle, 1).axles().stream()
              .filter(axle -> empty.axle(axle).isEmpty())
              .map(AxleRef::words)
              .toList();
      if (!unknown.isEmpty()) {
        missing.add(
            "no empty weight of "
                + String.join(", ", unknown)
                + ": weigh the rig empty and hitched, each axle alone or a trailer's axles together");
      }
    }
    if (empty.hitch().isEmpty()) {
      missing.add(
          "the empty trailer's hitch load is not known: weigh it, or weigh the empty tow vehicle with"
              + " the trailer hitched and without");
    }
    if (addedBehind.isEmpty()) {
      missing.add(
          "how far the trailer's axles are behind the hitch is not known: measure it, to their"
              + " middle");
    }
    if (addedOnTow.isEmpty()) {
      missing.add("the tow vehicle's wheelbase is not known: measure it");
    }
  }

  /** What is missing for a load that is not known, each with the way out. */
  public List<String> missing() {
    return List.copyOf(missing);
  }

  /** Load of an axle; empty where it is not known. */
  public Optional<SummedLoad> axle(AxleRef axle) {
    if (!oneTrailer) {
      return Optional.empty();
    }
    Vehicle trailer = coupling.trailer();
    Optional<SummedLoad> added =
        trailer != null && axle.vehicle().equals(trailer.name())
            ? ofTrailer(axle, trailer)
            : ofTow(axle);
    return empty.axle(axle).flatMap(load -> added.map(load::plus));
  }

  private Optional<SummedLoad> ofTrailer(AxleRef axle, Vehicle trailer) {
    return addedBehind.map(
        load -> AxleGroup.from(trailer, 1).share(load).getOrDefault(axle, SummedLoad.NOTHING));
  }

  private Optional<SummedLoad> ofTow(AxleRef axle) {
    return addedOnHitch.flatMap(
        load ->
            addedOnTow.map(
                parts ->
                    parts
                        .getOrDefault(axle, SummedLoad.NOTHING)
                        .plus(coupling.ofHitch(load).getOrDefault(axle, SummedLoad.NOTHING))));
  }

  /** Load on the hitch; empty where it is not known or there is no trailer. */
  public Optional<SummedLoad> hitch() {
    return oneTrailer && coupling.trailer() != null
        ? empty.hitch().flatMap(load -> addedOnHitch.map(load::plus))
        : Optional.empty();
  }

  /** What a vehicle weighs: a tow vehicle with the hitch load on it, a trailer with its own. */
  public Optional<SummedLoad> weight(Vehicle vehicle) {
    if (!oneTrailer) {
      return Optional.empty();
    } else if (vehicle.equals(coupling.trailer())) {
      return empty.whole(vehicle).map(onTrailer::plus);
    }
    return empty
        .axles(vehicle)
        .flatMap(load -> addedOnHitch.map(added -> load.plus(added).plus(onTow)));
  }

  /** What tow vehicle and trailer weigh together; empty where it is not known or one is missing. */
  public Optional<SummedLoad> combined() {
    Vehicle tow = coupling.tow();
    Vehicle trailer = coupling.trailer();
    if (!oneTrailer || tow == null || trailer == null) {
      return Optional.empty();
    }
    return EmptyWeights.sum(List.of(empty.axles(tow), empty.axles(trailer)))
        .map(load -> load.plus(onTow).plus(onTrailer));
  }
}
