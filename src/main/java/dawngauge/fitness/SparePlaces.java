package dawngauge.fitness;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.tire.TireSize;
import dawngauge.tire.TireSpec;
import dawngauge.trip.AxleRef;
import dawngauge.trip.LabelFitment;
import dawngauge.trip.Rig;
import dawngauge.trip.Spare;
import dawngauge.trip.Tire;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Where a spare may have to serve: each such place with the spare's tire as if fitted there. */
final class SparePlaces {
  private SparePlaces() {}

  /** The places of the axles it is meant for, where the file names them, whatever their size. */
  static List<Wheel> named(Inspection inspection, Spare spare, Tire tire) {
    return places(inspection, spare.serves(), tire);
  }

  /**
   * The places that it may serve: on the named axles, or on every axle of single wheels where none
   * is named, as far as its size fits.
   */
  static List<Wheel> of(Inspection inspection, Spare spare, Tire tire) {
    List<AxleRef> axles = new ArrayList<>(spare.serves());
    if (axles.isEmpty()) {
      for (AxleRef ref : inspection.axles()) {
        if (inspection.rig().axle(ref).filter(axle -> !axle.dual()).isPresent()) {
          axles.add(ref);
        }
      }
    }
    return places(inspection, axles, tire).stream()
        .filter(place -> sizeFits(inspection.rig(), place))
        .toList();
  }

  private static List<Wheel> places(Inspection inspection, List<AxleRef> axles, Tire tire) {
    Rig rig = inspection.rig();
    List<Wheel> places = new ArrayList<>();
    for (WheelPosition position : rig.positions()) {
      if (axles.contains(position.axle())) {
        places.add(Wheel.of(rig, position, tire));
      }
    }
    return places;
  }

  /** Whether a spare is of a size that the axle's label names or that is fitted on the axle. */
  static boolean sizeFits(Rig rig, Wheel place) {
    TireSpec spec = place.spec();
    String text = spec == null ? null : spec.size();
    if (text == null) {
      return true; // not known: said beside
    }
    String size = TireSize.plain(text);
    boolean labelled =
        place.axle().label().stream()
            .map(LabelFitment::size)
            .anyMatch(line -> TireSize.plain(line).equals(size));
    return labelled
        || place.axle().fitted().values().stream()
            .flatMap(id -> rig.tire(id).stream())
            .flatMap(tire -> rig.specOf(tire).stream())
            .flatMap(fitted -> Stream.ofNullable(fitted.size()))
            .anyMatch(fitted -> TireSize.plain(fitted).equals(size));
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
