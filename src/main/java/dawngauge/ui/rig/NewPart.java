package dawngauge.ui.rig;

import dawngauge.field.RigFields;
import dawngauge.field.TireFields;
import dawngauge.field.VehicleFields;
import dawngauge.field.WeightFields;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Rig;
import dawngauge.trip.Vehicle;
import java.util.Optional;

/**
 * A part that has just been added to a rig.
 *
 * @param key by which it stays unfolded
 * @param field its first field, as that is spoken
 */
record NewPart(String key, String field) {

  /** What one rig has that the other had not; empty where that is not just one part. */
  static Optional<NewPart> of(Rig was, Rig now) {
    if (now.vehicles().size() == was.vehicles().size() + 1) {
      return now.vehicles().stream()
          .filter(vehicle -> was.vehicle(vehicle.name()).isEmpty())
          .map(
              vehicle ->
                  new NewPart("", VehicleFields.VEHICLE_NAME.label() + " of " + vehicle.name()))
          .findFirst();
    }
    for (int i = 0; i < Math.min(was.vehicles().size(), now.vehicles().size()); i++) {
      Vehicle vehicle = now.vehicles().get(i);
      int last = vehicle.axles().size();
      if (last == was.vehicles().get(i).axles().size() + 1) {
        String axle = new AxleRef(vehicle.name(), last).words();
        return part(AxleForm.key(i, last - 1), VehicleFields.GAWR.label() + " of " + axle);
      }
    }
    if (now.tireTypes().size() == was.tireTypes().size() + 1) {
      int last = now.tireTypes().size() - 1;
      String name = now.tireTypes().get(last).name();
      return part(KindForm.key(last), TireFields.KIND_NAME.label() + " of " + name);
    }
    if (now.gauges().size() == was.gauges().size() + 1) {
      int last = now.gauges().size() - 1;
      String name = now.gauges().get(last).name();
      return part(GaugeForm.key(last), RigFields.GAUGE_NAME.label() + " of " + name);
    }
    if (now.tickets().size() == was.tickets().size() + 1) {
      int last = now.tickets().size();
      return part(
          TicketForm.key(ScaleForm.TICKET, last - 1),
          WeightFields.TICKET_DATE.label() + " of ticket " + last);
    }
    return Optional.empty();
  }

  private static Optional<NewPart> part(String key, String field) {
    return Optional.of(new NewPart(key, field));
  }
}
