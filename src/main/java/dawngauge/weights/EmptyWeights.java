package dawngauge.weights;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.rules.Loads;
import dawngauge.rules.Weighing;
import dawngauge.trip.AxleRef;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.Vehicle;
import dawngauge.trip.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the rig without a load puts on axles and hitch, hitched. A ticket with the trailer hitched
 * goes before one without it. A trailer weighed unhitched stands on the scale with its jack: what
 * it then weighs is all of it.
 */
final class EmptyWeights {

  private final Coupling coupling;
  private final Worksheet sheet;
  private final List<ScaleTicket> tickets;
  private final Optional<SummedLoad> hitch;

  EmptyWeights(Coupling coupling, Worksheet sheet) {
    this.coupling = coupling;
    this.sheet = sheet;
    this.tickets = sheet.empty().stream().map(this::groupsAlone).toList();
    this.hitch = findHitch();
  }

  /** A platform says something of an axle only where all axles on it share alike. */
  private ScaleTicket groupsAlone(ScaleTicket ticket) {
    return ticket.withPlatforms(
        ticket.platforms().stream()
            .filter(
                platform ->
                    platform.axles().size() == 1
                        || coupling.groups().stream()
                            .anyMatch(group -> group.axles().containsAll(platform.axles())))
            .toList());
  }

  /** The hitch load; nothing where there is no trailer, empty where it is not known. */
  Optional<SummedLoad> hitch() {
    return hitch;
  }

  private Optional<SummedLoad> findHitch() {
    Vehicle trailer = coupling.trailer();
    Entered<Mass> typed = sheet.emptyHitch();
    if (trailer == null) {
      return Optional.of(SummedLoad.NOTHING);
    } else if (typed != null) {
      double kilograms = typed.value().kilograms();
      return Optional.of(
          SummedLoad.of(kilograms)
              .doubted(new Doubt("scale, empty hitch"), Loads.SCALE_SIGMA * kilograms));
    }
    return difference(trailer, false).or(() -> difference(coupling.tow(), true));
  }

  /** Hitched less unhitched, or the other way round. */
  private Optional<SummedLoad> difference(@Nullable Vehicle vehicle, boolean hitchedIsMore) {
    if (vehicle == null) {
      return Optional.empty();
    }
    return scale(vehicle, true)
        .flatMap(
            hitched ->
                scale(vehicle, false)
                    .map(loose -> hitchedIsMore ? hitched.minus(loose) : loose.minus(hitched)));
  }

  /** What all axles of a vehicle put on the scale. */
  private Optional<SummedLoad> scale(Vehicle vehicle, boolean hitched) {
    return sum(
        AxleGroup.from(vehicle, 1).axles().stream().map(axle -> scale(axle, hitched)).toList());
  }

  private Optional<SummedLoad> scale(AxleRef axle, boolean hitched) {
    return Weighing.latestFirst(tickets, axle).stream()
        .filter(weighing -> weighing.hitched() == hitched)
        .findFirst()
        .map(weighing -> load(weighing, axle));
  }

  private static SummedLoad load(Weighing weighing, AxleRef axle) {
    double all = weighing.kilograms() * weighing.together().size();
    Doubt scale = new Doubt("scale, empty ticket " + (weighing.ticket() + 1) + weighing.together());
    SummedLoad whole = SummedLoad.of(all).doubted(scale, Loads.SCALE_SIGMA * all);
    SummedLoad part = new AxleGroup(weighing.together()).share(whole).get(axle);
    return part == null ? whole : part;
  }

  /** The load of an axle; empty where it is not known. */
  Optional<SummedLoad> axle(AxleRef axle) {
    return scale(axle, true).or(() -> unhitched(axle));
  }

  private Optional<SummedLoad> unhitched(AxleRef axle) {
    Vehicle trailer = coupling.trailer();
    if (trailer != null && axle.vehicle().equals(trailer.name())) {
      return scale(trailer, false)
          .flatMap(
              whole ->
                  hitch.map(load -> AxleGroup.from(trailer, 1).share(whole.minus(load)).get(axle)));
    }
    return scale(axle, false)
        .flatMap(
            loose ->
                hitch.map(
                    load -> {
                      Map<AxleRef, SummedLoad> parts = coupling.ofHitch(load);
                      return loose.plus(parts.getOrDefault(axle, SummedLoad.NOTHING));
                    }));
  }

  /** What all axles of a vehicle carry together; empty where one is not known. */
  Optional<SummedLoad> axles(Vehicle vehicle) {
    return sum(AxleGroup.from(vehicle, 1).axles().stream().map(this::axle).toList());
  }

  /** What the trailer weighs, hitch load and all; empty where it is not known. */
  Optional<SummedLoad> whole(Vehicle trailer) {
    return axles(trailer).flatMap(axles -> hitch.map(axles::plus)).or(() -> scale(trailer, false));
  }

  /** The sum; empty where one is. */
  static Optional<SummedLoad> sum(List<Optional<SummedLoad>> parts) {
    List<SummedLoad> known = new ArrayList<>();
    parts.forEach(part -> part.ifPresent(known::add));
    return known.size() == parts.size() && !parts.isEmpty()
        ? Optional.of(known.stream().reduce(SummedLoad.NOTHING, SummedLoad::plus))
        : Optional.empty();
  }
}
