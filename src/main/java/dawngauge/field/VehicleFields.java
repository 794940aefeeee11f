package dawngauge.field;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Ratio;
import dawngauge.tire.TireClass;
import dawngauge.trip.Axle;
import dawngauge.trip.LabelFitment;
import dawngauge.trip.Remarks;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelSlot;
import java.util.List;
import java.util.Map;

/** What vehicles, axles and the lines of their label have. */
public final class VehicleFields {

  private static final String LABEL = "certification label";
  private static final String WHEEL = "wheel stamp";

  /** Size on the label. */
  public static final Field<LabelFitment, String> LABEL_SIZE =
      Field.required(
          "size", "Tire size", LABEL, Codec.TEXT, LabelFitment::size, LabelFitment::withSize);

  /** Class on the label. */
  public static final Field<LabelFitment, TireClass> LABEL_CLASS =
      Field.optional(
          "class",
          "Class",
          LABEL,
          TireFields.TIRE_CLASS,
          LabelFitment::tireClass,
          LabelFitment::withTireClass);

  /** Load range on the label. */
  public static final Field<LabelFitment, String> LABEL_LOAD_RANGE =
      Field.optional(
          "loadRange",
          "Load range",
          LABEL,
          Codec.TEXT,
          LabelFitment::loadRange,
          LabelFitment::withLoadRange);

  /** Cold pressure on the label. */
  public static final Field<LabelFitment, Entered<GaugePressure>> LABEL_PRESSURE =
      Field.required(
          "coldPressure",
          "Cold pressure",
          LABEL,
          TireFields.PRESSURE,
          LabelFitment::coldPressure,
          LabelFitment::withColdPressure);

  /** A line of the label. */
  public static final Part<LabelFitment> LABEL_LINE =
      Part.of(
          "label line",
          "labelLine",
          new LabelFitment("", null, null, TireFields.PRESSURE.standIn(), Remarks.NONE),
          LabelFitment::remarks,
          LabelFitment::withRemarks,
          List.<Member<LabelFitment>>of(LABEL_SIZE, LABEL_CLASS, LABEL_LOAD_RANGE, LABEL_PRESSURE));

  /** Whether an axle has pairs of wheels. */
  public static final Field<Axle, Boolean> DUAL =
      Field.required(
          "dual", "Dual wheels", "seen on the axle", Codec.FLAG, Axle::dual, Axle::withDual);

  /** Gross axle weight rating. */
  public static final Field<Axle, Entered<Mass>> GAWR =
      Field.optional("gawr", "GAWR", LABEL, TireFields.LOAD, Axle::gawr, Axle::withGawr);

  /** Lines of the label. */
  public static final Parts<Axle, LabelFitment> LABEL_LINES =
      new Parts<>("label", "Label", LABEL_LINE, Axle::label, Axle::withLabel);

  /** Highest pressure of the wheels. */
  public static final Field<Axle, Entered<GaugePressure>> WHEEL_MAX_PRESSURE =
      Field.optional(
          "wheelMaxPressure",
          "Wheel max pressure",
          WHEEL,
          TireFields.PRESSURE,
          Axle::wheelMaxPressure,
          Axle::withWheelMaxPressure);

  /** Highest load of a wheel. */
  public static final Field<Axle, Entered<Mass>> WHEEL_MAX_LOAD =
      Field.optional(
          "wheelMaxLoad",
          "Wheel max load",
          WHEEL,
          TireFields.LOAD,
          Axle::wheelMaxLoad,
          Axle::withWheelMaxLoad);

  /** Highest pressure of the valves. */
  public static final Field<Axle, Entered<GaugePressure>> VALVE_MAX_PRESSURE =
      Field.optional(
          "valveMaxPressure",
          "Valve max pressure",
          "valve maker's sheet",
          TireFields.PRESSURE,
          Axle::valveMaxPressure,
          Axle::withValveMaxPressure);

  /** Part of the load on the left. */
  public static final Field<Axle, Entered<Ratio>> LEFT_SHARE =
      Field.optional(
          "leftShare",
          "Left share of load",
          "wheel scale, if known",
          Codec.share(),
          Axle::leftShare,
          Axle::withLeftShare);

  /** Own target. */
  public static final Field<Axle, Entered<GaugePressure>> TARGET =
      Field.optional(
          "target",
          "Own target, cold",
          "tire maker's table for the weighed load",
          TireFields.PRESSURE,
          Axle::target,
          Axle::withTarget);

  /** Tires by place. */
  public static final Pairs<Axle, WheelSlot, String> FITTED =
      new Pairs<>(
          "tires",
          "Tires",
          TripCodecs.SLOT,
          Codec.NAME,
          Axle::fitted,
          axle -> List.of(WheelSlot.values()),
          Axle::withFitted);

  /** An axle. */
  public static final Part<Axle> AXLE =
      Part.of(
          "axle",
          "axleOfVehicle",
          new Axle(false, null, List.of(), null, null, null, null, null, Map.of(), Remarks.NONE),
          Axle::remarks,
          Axle::withRemarks,
          List.<Member<Axle>>of(
              DUAL,
              GAWR,
              LABEL_LINES,
              WHEEL_MAX_PRESSURE,
              WHEEL_MAX_LOAD,
              VALVE_MAX_PRESSURE,
              LEFT_SHARE,
              TARGET,
              FITTED));

  /** Name of a vehicle. */
  public static final Field<Vehicle, String> VEHICLE_NAME =
      Field.name(
          "name",
          "Name",
          "as positions are named after it",
          Codec.NAME,
          Vehicle::name,
          Vehicle::withName);

  /** Letter of a vehicle. */
  public static final Field<Vehicle, String> VEHICLE_LETTER =
      Field.name(
          "letter",
          "Letter",
          "short forms begin with it, as t in t2r",
          Codec.LETTER,
          Vehicle::letter,
          Vehicle::withLetter);

  /** Kind of a vehicle. */
  public static final Field<Vehicle, Vehicle.Kind> VEHICLE_KIND =
      Field.required(
          "kind",
          "Kind",
          LABEL,
          Codec.choice(Vehicle.Kind.class, Vehicle.Kind::word),
          Vehicle::kind,
          Vehicle::withKind);

  /** Gross vehicle weight rating. */
  public static final Field<Vehicle, Entered<Mass>> GVWR =
      Field.optional("gvwr", "GVWR", LABEL, TireFields.LOAD, Vehicle::gvwr, Vehicle::withGvwr);

  /** A vehicle. */
  public static final Part<Vehicle> VEHICLE =
      Part.of(
          "vehicle",
          "vehicle",
          new Vehicle("", "", Vehicle.Kind.CAR, null, List.of(), Remarks.NONE),
          Vehicle::remarks,
          Vehicle::withRemarks,
          List.<Member<Vehicle>>of(
              VEHICLE_NAME,
              VEHICLE_LETTER,
              VEHICLE_KIND,
              GVWR,
              new Parts<>("axles", "Axles", AXLE, Vehicle::axles, Vehicle::withAxles)));

  private VehicleFields() {}
}
