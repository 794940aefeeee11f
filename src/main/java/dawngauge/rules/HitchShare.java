package dawngauge.rules;

import dawngauge.trip.AxleRef;
import dawngauge.trip.Hitch;
import dawngauge.trip.Rig;
import dawngauge.trip.Vehicle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Which part of a hitch load each axle of the tow vehicle takes, by levers: its front axle and the
 * others as one group, whose axles share alike. The others take the lever λ of the hitch (the way
 * from hitch to front axle over that from their middle to it; 1 where no hitch is described), the
 * front axle 1 − λ. A single axle takes all of it.
 *
 * @param tow the tow vehicle, or null where the rig has none
 * @param lever λ
 */
public record HitchShare(@Nullable Vehicle tow, double lever) {

  /** The share of a rig: the first vehicle tows unless it is a trailer itself. */
  public static HitchShare of(Rig rig) {
    Vehicle first = rig.vehicles().isEmpty() ? null : rig.vehicles().get(0);
    Hitch hitch = rig.hitch();
    return new HitchShare(
        first == null || first.kind() == Vehicle.Kind.TRAILER ? null : first,
        hitch == null ? 1 : hitch.lever());
  }

  /** The part on the front axle; none where there is but one axle. */
  public double front() {
    return alone() ? 0 : 1 - lever;
  }

  /** The part on the axles behind it together. */
  public double behind() {
    return alone() ? 1 : lever;
  }

  private boolean alone() {
    return tow != null && tow.axles().size() == 1;
  }

  /** The axles that take the part behind: all but the front one, or the only one. */
  public List<AxleRef> axlesBehind() {
    List<AxleRef> axles = new ArrayList<>();
    if (tow != null) {
      for (int number = alone() ? 1 : 2; number <= tow.axles().size(); number++) {
        axles.add(new AxleRef(tow.name(), number));
      }
    }
    return axles;
  }

  /** The part of each axle that takes any. */
  public Map<AxleRef, Double> parts() {
    Map<AxleRef, Double> parts = new LinkedHashMap<>();
    List<AxleRef> behind = axlesBehind();
    if (tow != null && front() != 0) {
      parts.put(new AxleRef(tow.name(), 1), front());
    }
    if (behind() != 0) {
      behind.forEach(axle -> parts.put(axle, behind() / behind.size()));
    }
    return parts;
  }
}
