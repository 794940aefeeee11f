package dawngauge.weights;

import dawngauge.rules.Loads;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Vehicle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Axles that share a load alike, as those of a trailer and the rear ones of a tow vehicle do where
 * they are equalized (common practice, no source). How far from alike is one doubt for each.
 *
 * @param axles front to rear
 */
record AxleGroup(List<AxleRef> axles) {

  AxleGroup {
    axles = List.copyOf(axles);
  }

  /** The axles of a vehicle from a number on, 1 first. */
  static AxleGroup from(Vehicle vehicle, int first) {
    List<AxleRef> axles = new ArrayList<>();
    for (int number = first; number <= vehicle.axles().size(); number++) {
      axles.add(new AxleRef(vehicle.name(), number));
    }
    return new AxleGroup(axles);
  }

  /**
   * What each axle takes of a load. The parts are the whole together: their doubts cancel there.
   */
  Map<AxleRef, SummedLoad> share(SummedLoad whole) {
    int count = axles.size();
    Map<AxleRef, SummedLoad> parts = new LinkedHashMap<>();
    // Each part is to have a standard deviation of GROUP_SIGMA: that of u_i − mean(u) is √(1 −
    // 1/n).
    double each = whole.kilograms() / count;
    double scale = count == 1 ? 0 : Loads.GROUP_SIGMA * each / Math.sqrt(1 - 1.0 / count);
    for (AxleRef axle : axles) {
      SummedLoad part = whole.times(1.0 / count);
      if (count > 1) {
        for (AxleRef other : axles) {
          part = part.doubted(split(other), scale * ((other.equals(axle) ? 1 : 0) - 1.0 / count));
        }
      }
      parts.put(axle, part);
    }
    return parts;
  }

  private static Doubt split(AxleRef axle) {
    return new Doubt("share of " + axle.words());
  }
}
