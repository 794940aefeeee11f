package dawngauge.fitness;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.rules.SpareFit;
import dawngauge.tire.TireSpec;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Rig;
import dawngauge.trip.Spare;
import dawngauge.trip.Tire;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where a spare may have to serve: each such place with the spare's tire as if fitted there. */
final class SparePlaces {
  private SparePlaces() {}

  /** The places of the axles it is meant for, where the file names them, whatever their size. */
  static List<SpareFit> named(Inspection inspection, Spare spare) {
    return places(inspection, spare, spare.serves());
  }

  /**
   * The places that it may serve: on the named axles, or on every axle of single wheels where none
   * is named, as far as its size fits.
   */
  static List<SpareFit> of(Inspection inspection, Spare spare) {
    List<AxleRef> axles = new ArrayList<>(spare.serves());
    if (axles.isEmpty()) {
      for (AxleRef ref : inspection.axles()) {
        if (inspection.rig().axle(ref).filter(axle -> !axle.dual()).isPresent()) {
          axles.add(ref);
        }
      }
    }
    return places(inspection, spare, axles).stream()
        .filter(fit -> fit.sizeFits(inspection.rig()))
        .toList();
  }

  private static List<SpareFit> places(Inspection inspection, Spare spare, List<AxleRef> axles) {
    Rig rig = inspection.rig();
    return rig.positions().stream()
        .filter(position -> axles.contains(position.axle()))
        .map(position -> SpareFit.of(rig, spare, position))
        .flatMap(Optional::stream)
        .toList();
  }

  /** Highest cold pressure that a spare's tire and wheel may take, in pascal; NaN if not known. */
  static double ceilingPascals(Rig rig, Spare spare, Tire tire) {
    GaugePressure sidewall = rig.specOf(tire).map(TireSpec::sidewallLimit).orElse(null);
    Entered<GaugePressure> rim = spare.wheelMaxPressure();
    if (sidewall == null) {
      return rim == null ? Double.NaN : rim.value().pascals();
    }
    return rim == null ? sidewall.pascals() : GaugePressure.min(sidewall, rim.value()).pascals();
  }
}
