package dawngauge.field;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Temperature;
import dawngauge.trip.LogEvent;
import dawngauge.trip.LogEvent.Adjustment;
import dawngauge.trip.LogEvent.Arrived;
import dawngauge.trip.LogEvent.Left;
import dawngauge.trip.LogEvent.Note;
import dawngauge.trip.LogEvent.Reading;
import dawngauge.trip.LogEvent.TireChange;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Remarks;
import dawngauge.trip.TypedTime;
import dawngauge.trip.WheelPosition;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;

/** What is noted on the way has: a kind of part for each type of event. */
public final class LogFields {

  /** Zero is a reading too: a flat tire. */
  private static final Codec<Entered<GaugePressure>> SHOWN =
      Codec.figure(QuantityKind.GAUGE_PRESSURE);

  private static final String GAUGE = "gauge";
  private static final TypedTime NEVER = TimeCodecs.TIME.standIn();

  /** Tire that was read. */
  public static final Field<Reading, String> READ_TIRE =
      Field.required("tire", "Tire", "its id", Codec.NAME, Reading::tire, Reading::withTire);

  /** What the gauge showed. */
  public static final Field<Reading, Entered<GaugePressure>> READ_PRESSURE =
      Field.required(
          "pressure", "Pressure", GAUGE, SHOWN, Reading::pressure, Reading::withPressure);

  /** Gauge of a reading. */
  public static final Field<Reading, String> READ_GAUGE =
      Field.required("gauge", "Gauge", "its name", Codec.NAME, Reading::gauge, Reading::withGauge);

  /** How warm the tire was. */
  public static final Field<Reading, ReadingState> READ_STATE =
      Field.required(
          "state",
          "State",
          "as the crew judged it",
          Codec.choice(ReadingState.class, ReadingState::word),
          Reading::state,
          Reading::withState);

  /** Air at a reading. */
  public static final Field<Reading, Entered<Temperature>> READ_AIR =
      Field.optional(
          "air",
          "Air",
          "thermometer beside the tire",
          RouteFields.TEMPERATURE,
          Reading::air,
          Reading::withAir);

  /** Temperature of the tire. */
  public static final Field<Reading, Entered<Temperature>> READ_TIRE_TEMPERATURE =
      Field.optional(
          "tireTemperature",
          "Tire's own temperature",
          "thermometer on the tire, where it is not that of the air",
          RouteFields.TEMPERATURE,
          Reading::tireTemperature,
          Reading::withTireTemperature);

  /** A reading. */
  public static final Part<Reading> READING =
      part(
          "reading",
          "reading",
          new Reading(NEVER, "", SHOWN.standIn(), "", ReadingState.COLD, null, null, Remarks.NONE),
          Reading::withRemarks,
          List.<Member<Reading>>of(
              time(Reading::withTime),
              READ_TIRE,
              READ_PRESSURE,
              READ_GAUGE,
              READ_STATE,
              READ_AIR,
              READ_TIRE_TEMPERATURE));

  /** Air added or let out. */
  public static final Part<Adjustment> ADJUSTMENT =
      part(
          "adjustment",
          "adjustment",
          new Adjustment(NEVER, "", null, SHOWN.standIn(), "", Remarks.NONE),
          Adjustment::withRemarks,
          List.<Member<Adjustment>>of(
              time(Adjustment::withTime),
              Field.required(
                  "tire", "Tire", "its id", Codec.NAME, Adjustment::tire, Adjustment::withTire),
              Field.optional(
                  "from",
                  "From",
                  GAUGE + ", before",
                  SHOWN,
                  Adjustment::from,
                  Adjustment::withFrom),
              Field.required(
                  "to", "To", GAUGE + ", after", SHOWN, Adjustment::to, Adjustment::withTo),
              Field.required(
                  "gauge",
                  "Gauge",
                  "its name",
                  Codec.NAME,
                  Adjustment::gauge,
                  Adjustment::withGauge)));

  /** A wheel changed. */
  public static final Part<TireChange> TIRE_CHANGE =
      part(
          "tire change",
          "tireChange",
          new TireChange(NEVER, TripCodecs.POSITION.standIn(), "", "", Remarks.NONE),
          TireChange::withRemarks,
          List.<Member<TireChange>>of(
              time(TireChange::withTime),
              Field.<TireChange, WheelPosition>required(
                  "position",
                  "Position",
                  "where on the rig",
                  TripCodecs.POSITION,
                  TireChange::position,
                  TireChange::withPosition),
              Field.required(
                  "off", "Off", "id of the tire", Codec.NAME, TireChange::off, TireChange::withOff),
              Field.required(
                  "on", "On", "id of the tire", Codec.NAME, TireChange::on, TireChange::withOn)));

  /** The rig arrived. */
  public static final Part<Arrived> ARRIVED =
      part(
          "arrived",
          "arrivedOrLeft",
          new Arrived(NEVER, "", Remarks.NONE),
          Arrived::withRemarks,
          List.<Member<Arrived>>of(
              time(Arrived::withTime),
              Field.required(
                  "stop", "Stop", "its id", Codec.NAME, Arrived::stop, Arrived::withStop)));

  /** The rig left. */
  public static final Part<Left> LEFT =
      part(
          "left",
          "arrivedOrLeft",
          new Left(NEVER, "", Remarks.NONE),
          Left::withRemarks,
          List.<Member<Left>>of(
              time(Left::withTime),
              Field.required("stop", "Stop", "its id", Codec.NAME, Left::stop, Left::withStop)));

  /** A note. */
  public static final Part<Note> NOTE =
      part(
          "note",
          "notedText",
          new Note(NEVER, "", Remarks.NONE),
          Note::withRemarks,
          List.<Member<Note>>of(
              time(Note::withTime),
              Field.required("text", "Text", "in words", Codec.TEXT, Note::text, Note::withText)));

  /**
   * A type of event.
   *
   * @param <E> the event
   * @param word its name in the file
   * @param event the event
   * @param part what it has
   */
  public record Type<E extends LogEvent>(String word, Class<E> event, Part<E> part) {}

  /** All types of event. */
  public static final List<Type<?>> TYPES =
      List.of(
          new Type<>("reading", Reading.class, READING),
          new Type<>("adjustment", Adjustment.class, ADJUSTMENT),
          new Type<>("tire change", TireChange.class, TIRE_CHANGE),
          new Type<>("arrived", Arrived.class, ARRIVED),
          new Type<>("left", Left.class, LEFT),
          new Type<>("note", Note.class, NOTE));

  /** A type by its word. */
  public static final Codec<Type<?>> TYPE = Codec.choice(TYPES, Type::word);

  private LogFields() {}

  /** The type of an event. */
  public static Type<?> typeOf(LogEvent event) {
    return TYPES.stream().filter(type -> type.event().isInstance(event)).findFirst().orElseThrow();
  }

  private static <E extends LogEvent> Part<E> part(
      String name,
      String schema,
      E blank,
      BiFunction<E, Remarks, E> withRemarks,
      List<Member<E>> members) {
    return Part.of(name, schema, blank, event -> event.remarks(), withRemarks, members);
  }

  private static <E extends LogEvent> Field<E, TypedTime> time(BiFunction<E, TypedTime, E> with) {
    Function<E, TypedTime> get = event -> event.time();
    return Field.required("time", "Time", "clock at the place", TimeCodecs.TIME, get, with);
  }
}
