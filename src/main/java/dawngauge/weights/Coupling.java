package dawngauge.weights;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.rules.HitchShare;
import dawngauge.trip.AxleRef;
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
 * Tow vehicle and trailer as levers. Lengths go from the hitch, back on the trailer and forward on
 * the tow vehicle, in meter.
 *
 * <p>A trailer stands on the hitch and on its axles as one group, at M behind the hitch: of a load
 * at d the axles take d / M, the hitch 1 − d / M. A tow vehicle stands on its front axle and on the
 * others as one group. The part of a hitch load that the others take is the hitch's lever λ, the
 * way from hitch to front axle over the wheelbase B; so their middle is O = (λ − 1) B before the
 * hitch, and of a load at d the front axle takes (d − O) / B.
 */
final class Coupling {

  private final HitchShare share;
  private final @Nullable Vehicle trailer;
  private final double hitchToAxles;
  private final double wheelbase;

  Coupling(Rig rig, Worksheet sheet) {
    share = HitchShare.of(rig);
    trailer =
        rig.vehicles().stream()
            .filter(vehicle -> vehicle.kind() == Vehicle.Kind.TRAILER)
            .findFirst()
            .orElse(null);
    hitchToAxles = meters(sheet.hitchToAxles());
    wheelbase = meters(sheet.wheelbase());
  }

  private static double meters(@Nullable Entered<Distance> length) {
    return length == null || !(length.value().meters() > 0) ? Double.NaN : length.value().meters();
  }

  /** The tow vehicle, if any. */
  @Nullable Vehicle tow() {
    return share.tow();
  }

  /** The trailer behind it, if any. */
  @Nullable Vehicle trailer() {
    return trailer;
  }

  /** The axles that share alike. */
  List<AxleGroup> groups() {
    List<AxleGroup> groups = new ArrayList<>();
    if (tow() != null) {
      groups.add(behind());
    }
    if (trailer != null) {
      groups.add(AxleGroup.from(trailer, 1));
    }
    return groups;
  }

  private AxleGroup behind() {
    return new AxleGroup(share.axlesBehind());
  }

  /** What the tow vehicle's axles take of a hitch load. */
  Map<AxleRef, SummedLoad> ofHitch(SummedLoad load) {
    Vehicle tow = tow();
    return tow == null
        ? Map.of()
        : front(tow, load.times(share.front()), load.times(share.behind()));
  }

  /** A part on the front axle, and one on the others; all on the only one. */
  private Map<AxleRef, SummedLoad> front(Vehicle tow, SummedLoad front, SummedLoad rear) {
    if (tow.axles().size() == 1) {
      return behind().share(front.plus(rear));
    }
    Map<AxleRef, SummedLoad> parts = new LinkedHashMap<>();
    parts.put(new AxleRef(tow.name(), 1), front);
    if (tow.axles().size() > 1) {
      parts.putAll(behind().share(rear));
    }
    return parts;
  }

  /**
   * What the tow vehicle's axles take of a load on it; empty where its wheelbase is not known.
   *
   * @param place from the hitch forward to its middle
   * @param doubt that its middle is elsewhere
   * @param sigma how far, in meter at one standard deviation
   */
  Optional<Map<AxleRef, SummedLoad>> onTow(
      SummedLoad load, double place, Doubt doubt, double sigma) {
    Vehicle tow = tow();
    if (tow == null) {
      return Optional.empty();
    } else if (tow.axles().size() == 1) {
      return Optional.of(behind().share(load));
    } else if (Double.isNaN(wheelbase)) {
      return Optional.empty();
    }
    double others = (share.lever() - 1) * wheelbase;
    double part = (place - others) / wheelbase;
    double moved = load.kilograms() * sigma / wheelbase;
    return Optional.of(
        front(
            tow,
            load.times(part).doubted(doubt, moved),
            load.times(1 - part).doubted(doubt, -moved)));
  }

  /**
   * What the trailer's axles take of a load on it, together; the hitch takes the rest. Empty where
   * it is not known how far behind the hitch they are.
   */
  Optional<SummedLoad> onTrailer(SummedLoad load, double place, Doubt doubt, double sigma) {
    return Double.isNaN(hitchToAxles)
        ? Optional.empty()
        : Optional.of(
            load.times(place / hitchToAxles)
                .doubted(doubt, load.kilograms() * sigma / hitchToAxles));
  }
}
