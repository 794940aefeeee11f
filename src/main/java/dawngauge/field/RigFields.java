package dawngauge.field;

import dawngauge.problem.ProblemCode;
import dawngauge.quantity.AirFlow;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Ratio;
import dawngauge.trip.Gauge;
import dawngauge.trip.Hitch;
import dawngauge.trip.Remarks;
import dawngauge.trip.Rig;
import dawngauge.trip.Worksheet;
import java.time.LocalDate;
import java.util.List;

/** What a rig and its gauges have; all other parts hang on it. */
public final class RigFields {

  private static final String FACE = "gauge face";

  /** Name of a gauge. */
  public static final Field<Gauge, String> GAUGE_NAME =
      Field.name(
          "name", "Name", "as readings refer to it", Codec.NAME, Gauge::name, Gauge::withName);

  /** Kind of a gauge. */
  public static final Field<Gauge, Gauge.Kind> GAUGE_KIND =
      Field.required(
          "kind",
          "Measures",
          "maker's sheet; a dial or stick gauge is open to the air",
          Codec.choice(Gauge.Kind.class, Gauge.Kind::word),
          Gauge::kind,
          Gauge::withKind);

  /** Highest mark. */
  public static final Field<Gauge, Entered<GaugePressure>> GAUGE_SPAN =
      Field.optional(
          "span",
          "Span",
          FACE + ", highest mark",
          TireFields.PRESSURE,
          Gauge::span,
          Gauge::withSpan);

  /** Grade. */
  public static final Field<Gauge, Entered<Ratio>> GAUGE_GRADE =
      Field.optional(
          "grade",
          "Grade, part of span",
          FACE + " or its sheet",
          Codec.share(),
          Gauge::grade,
          Gauge::withGrade);

  /** Smallest mark. */
  public static final Field<Gauge, Entered<GaugePressure>> GAUGE_STEP =
      Field.required(
          "step",
          "Step",
          FACE + ", smallest mark",
          TireFields.PRESSURE,
          Gauge::step,
          Gauge::withStep);

  /** When it was last checked. */
  public static final Field<Gauge, LocalDate> GAUGE_LAST_CHECK =
      Field.optional(
          "lastCheck",
          "Last check",
          "day it was held against a better gauge",
          TripCodecs.DATE,
          Gauge::lastCheck,
          Gauge::withLastCheck);

  /** A gauge. */
  public static final Part<Gauge> GAUGE =
      Part.of(
          "gauge",
          "gauge",
          new Gauge("", Gauge.Kind.OPEN, null, null, TireFields.PRESSURE.standIn(), Remarks.NONE),
          Gauge::remarks,
          Gauge::withRemarks,
          List.<Member<Gauge>>of(
              GAUGE_NAME, GAUGE_KIND, GAUGE_SPAN, GAUGE_GRADE, GAUGE_STEP, GAUGE_LAST_CHECK));

  /** Name of the rig. */
  public static final Field<Rig, String> RIG_NAME =
      Field.required(
          "name", "Name of the rig", "as the crew calls it", Codec.TEXT, Rig::name, Rig::withName);

  /** Highest pressure of the crew's own compressor. */
  public static final Field<Rig, Entered<GaugePressure>> COMPRESSOR_TOP =
      Field.optional(
          "compressorTop",
          "Compressor reaches",
          "compressor's sheet; empty if none is aboard",
          Codec.positive(QuantityKind.GAUGE_PRESSURE),
          Rig::compressorTop,
          Rig::withCompressorTop);

  /** Free air that it delivers. */
  public static final Field<Rig, Entered<AirFlow>> COMPRESSOR_FLOW =
      Field.optional(
          "compressorFlow",
          "Compressor flow",
          "compressor's sheet, free air; rest it as its sheet says",
          Codec.positive(QuantityKind.AIR_FLOW),
          Rig::compressorFlow,
          Rig::withCompressorFlow);

  /** At which pressure it delivers that. */
  public static final Field<Rig, Entered<GaugePressure>> COMPRESSOR_FLOW_AT =
      Field.optional(
          "compressorFlowAt",
          "Compressor flow at",
          "compressor's sheet, pressure of that flow; no minutes above it",
          Codec.positive(QuantityKind.GAUGE_PRESSURE),
          Rig::compressorFlowAt,
          Rig::withCompressorFlowAt);

  /** The hitch. */
  public static final OnePart<Rig, Hitch> HITCH =
      new OnePart<>("hitch", "Hitch", WeightFields.HITCH, Rig::hitch, Rig::withHitch);

  /** The weight worksheet. */
  public static final OnePart<Rig, Worksheet> WORKSHEET =
      new OnePart<>(
          "worksheet",
          "Weight worksheet",
          WorksheetFields.WORKSHEET,
          Rig::worksheet,
          Rig::withWorksheet);

  /** The rig. */
  public static final Part<Rig> RIG =
      Part.<Rig>of(
              "rig",
              "rig",
              new Rig(
                  "",
                  List.of(),
                  List.of(),
                  List.of(),
                  List.of(),
                  List.of(),
                  null,
                  null,
                  List.of(),
                  Remarks.NONE),
              Rig::remarks,
              Rig::withRemarks,
              List.<Member<Rig>>of(
                  RIG_NAME,
                  new Parts<>(
                      "vehicles",
                      "Vehicles",
                      VehicleFields.VEHICLE,
                      Rig::vehicles,
                      Rig::withVehicles),
                  new Parts<>(
                      "tireTypes",
                      "Kinds of tires",
                      TireFields.TIRE_TYPE,
                      Rig::tireTypes,
                      Rig::withTireTypes),
                  new Parts<>("tires", "Tires", TireFields.TIRE, Rig::tires, Rig::withTires),
                  new Parts<>("spares", "Spares", TireFields.SPARE, Rig::spares, Rig::withSpares),
                  new Parts<>("gauges", "Gauges", GAUGE, Rig::gauges, Rig::withGauges),
                  COMPRESSOR_TOP,
                  COMPRESSOR_FLOW,
                  COMPRESSOR_FLOW_AT,
                  HITCH,
                  new Parts<>(
                      "tickets",
                      "Scale tickets",
                      WeightFields.TICKET,
                      Rig::tickets,
                      Rig::withTickets),
                  WORKSHEET))
          .checked((rig, sound) -> flowFaults(rig));

  private RigFields() {}

  /** No compressor delivers at a pressure that it does not reach. */
  private static List<Fault> flowFaults(Rig rig) {
    Entered<GaugePressure> top = rig.compressorTop();
    Entered<GaugePressure> at = rig.compressorFlowAt();
    return top != null && at != null && at.value().compareTo(top.value()) > 0
        ? List.of(
            Fault.of(COMPRESSOR_FLOW_AT.key(), ProblemCode.FLOW_ABOVE_REACH, at.text(), top.text()))
        : List.of();
  }

  /** Every kind of part of a rig, itself first, and loads taken on or set down at a stop. */
  public static List<Part<?>> all() {
    return TripFields.with(List.of(RIG, WeightFields.LOAD_CHANGE));
  }
}
