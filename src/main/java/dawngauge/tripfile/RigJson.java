package dawngauge.tripfile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.QuantityKind;
import dawngauge.tire.TireClass;
import dawngauge.trip.Axle;
import dawngauge.trip.Gauge;
import dawngauge.trip.Hitch;
import dawngauge.trip.LabelFitment;
import dawngauge.trip.Rig;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelSlot;
import java.util.List;

/** Rig, vehicles, axles, gauges and hitch as JSON. */
final class RigJson {
  static final Form<Entered<Mass>> MASS = Form.positive(QuantityKind.MASS);
  static final Form<Entered<GaugePressure>> PRESSURE = Form.positive(QuantityKind.GAUGE_PRESSURE);
  static final Form<TireClass> TIRE_CLASS = Form.choice(TireClass.class, TireClass::word);

  private static final Form<Vehicle.Kind> VEHICLE_KIND =
      Form.choice(Vehicle.Kind.class, Vehicle.Kind::word);
  private static final Form<Gauge.Kind> GAUGE_KIND =
      Form.choice(Gauge.Kind.class, Gauge.Kind::word);
  private static final Form<Hitch.Kind> HITCH_KIND =
      Form.choice(Hitch.Kind.class, Hitch.Kind::word);

  private RigJson() {}

  static Rig read(FieldReader in) {
    return new Rig(
        in.required("name", Form.TEXT),
        in.objects("vehicles", RigJson::readVehicle),
        in.objects("tireTypes", TireTypeJson::read),
        in.objects("tires", TireJson::read),
        in.objects("spares", TireJson::readSpare),
        in.objects("gauges", RigJson::readGauge),
        in.optional("compressorTop", PRESSURE),
        in.object("hitch", RigJson::readHitch),
        in.objects("tickets", TicketJson::read),
        in.remarks());
  }

  static ObjectNode write(Rig rig) {
    return new FieldWriter()
        .put("name", Form.TEXT, rig.name())
        .objects("vehicles", rig.vehicles(), RigJson::writeVehicle)
        .objects("tireTypes", rig.tireTypes(), TireTypeJson::write)
        .objects("tires", rig.tires(), TireJson::write)
        .objects("spares", rig.spares(), TireJson::writeSpare)
        .objects("gauges", rig.gauges(), RigJson::writeGauge)
        .put("compressorTop", PRESSURE, rig.compressorTop())
        .object("hitch", rig.hitch(), RigJson::writeHitch)
        .objects("tickets", rig.tickets(), TicketJson::write)
        .with(rig.remarks());
  }

  private static Vehicle readVehicle(FieldReader in) {
    return new Vehicle(
        in.required("name", Form.NAME),
        in.required("letter", Form.LETTER),
        in.required("kind", VEHICLE_KIND),
        in.optional("gvwr", MASS),
        in.objects("axles", RigJson::readAxle),
        in.remarks());
  }

  private static ObjectNode writeVehicle(Vehicle vehicle) {
    return new FieldWriter()
        .put("name", Form.NAME, vehicle.name())
        .put("letter", Form.LETTER, vehicle.letter())
        .put("kind", VEHICLE_KIND, vehicle.kind())
        .put("gvwr", MASS, vehicle.gvwr())
        .objects("axles", vehicle.axles(), RigJson::writeAxle)
        .with(vehicle.remarks());
  }

  private static Axle readAxle(FieldReader in) {
    return new Axle(
        in.requiredFlag("dual"),
        in.optional("gawr", MASS),
        in.objects("label", RigJson::readLabel),
        in.optional("wheelMaxPressure", PRESSURE),
        in.optional("wheelMaxLoad", MASS),
        in.optional("valveMaxPressure", PRESSURE),
        in.optional("leftShare", Form.share()),
        in.optional("target", PRESSURE),
        in.map("tires", RigForms.SLOT_FORM, Form.NAME),
        in.remarks());
  }

  private static ObjectNode writeAxle(Axle axle) {
    return new FieldWriter()
        .flag("dual", axle.dual())
        .put("gawr", MASS, axle.gawr())
        .objects("label", axle.label(), RigJson::writeLabel)
        .put("wheelMaxPressure", PRESSURE, axle.wheelMaxPressure())
        .put("wheelMaxLoad", MASS, axle.wheelMaxLoad())
        .put("valveMaxPressure", PRESSURE, axle.valveMaxPressure())
        .put("leftShare", Form.share(), axle.leftShare())
        .put("target", PRESSURE, axle.target())
        .map("tires", List.of(WheelSlot.values()), axle.fitted(), RigForms.SLOT_FORM, Form.NAME)
        .with(axle.remarks());
  }

  private static LabelFitment readLabel(FieldReader in) {
    return new LabelFitment(
        in.required("size", Form.TEXT),
        in.optional("class", TIRE_CLASS),
        in.optional("loadRange", Form.TEXT),
        in.required("coldPressure", PRESSURE),
        in.remarks());
  }

  private static ObjectNode writeLabel(LabelFitment label) {
    return new FieldWriter()
        .put("size", Form.TEXT, label.size())
        .put("class", TIRE_CLASS, label.tireClass())
        .put("loadRange", Form.TEXT, label.loadRange())
        .put("coldPressure", PRESSURE, label.coldPressure())
        .with(label.remarks());
  }

  private static Gauge readGauge(FieldReader in) {
    return new Gauge(
        in.required("name", Form.NAME),
        in.required("kind", GAUGE_KIND),
        in.optional("span", PRESSURE),
        in.optional("grade", Form.share()),
        in.required("step", PRESSURE),
        in.remarks());
  }

  private static ObjectNode writeGauge(Gauge gauge) {
    return new FieldWriter()
        .put("name", Form.NAME, gauge.name())
        .put("kind", GAUGE_KIND, gauge.kind())
        .put("span", PRESSURE, gauge.span())
        .put("grade", Form.share(), gauge.grade())
        .put("step", PRESSURE, gauge.step())
        .with(gauge.remarks());
  }

  /** The lever is 1 where it is not typed: the rear axle takes just the hitch load. */
  private static Hitch readHitch(FieldReader in) {
    Double lever = in.number("lever", 0, 3);
    return new Hitch(
        in.required("kind", HITCH_KIND),
        in.optional("load", MASS),
        in.flag("weighed"),
        lever == null ? 1 : lever,
        in.remarks());
  }

  private static ObjectNode writeHitch(Hitch hitch) {
    return new FieldWriter()
        .put("kind", HITCH_KIND, hitch.kind())
        .put("load", MASS, hitch.load())
        .flag("weighed", hitch.weighed())
        .number("lever", hitch.lever())
        .with(hitch.remarks());
  }
}
