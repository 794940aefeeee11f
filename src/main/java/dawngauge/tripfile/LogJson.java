package dawngauge.tripfile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.field.Codec;
import dawngauge.field.RouteFields;
import dawngauge.field.TimeCodecs;
import dawngauge.field.TripCodecs;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.TypedTime;

/** What was noted on the way, as JSON. */
final class LogJson {
  /** Zero is a reading too: a flat tire. */
  private static final Codec<Entered<GaugePressure>> PRESSURE =
      Codec.figure(QuantityKind.GAUGE_PRESSURE);

  private static final Codec<ReadingState> STATE =
      Codec.choice(ReadingState.class, ReadingState::word);
  private static final Codec<Type> TYPE = Codec.choice(Type.class, type -> type.word);

  private enum Type {
    READING("reading"),
    ADJUSTMENT("adjustment"),
    TIRE_CHANGE("tire change"),
    ARRIVED("arrived"),
    LEFT("left"),
    NOTE("note");

    private final String word;

    Type(String word) {
      this.word = word;
    }
  }

  private LogJson() {}

  static LogEvent read(FieldReader in) {
    Type type = in.requiredOrNull("type", TYPE);
    TypedTime time = in.required("time", TimeCodecs.TIME);
    if (type == null) {
      in.skipRest();
      return new LogEvent.Note(time, "", in.remarks());
    }
    return switch (type) {
      case READING ->
          new LogEvent.Reading(
              time,
              in.required("tire", Codec.NAME),
              in.required("pressure", PRESSURE),
              in.required("gauge", Codec.NAME),
              in.required("state", STATE),
              in.optional("air", RouteFields.TEMPERATURE),
              in.optional("tireTemperature", RouteFields.TEMPERATURE),
              in.remarks());
      case ADJUSTMENT ->
          new LogEvent.Adjustment(
              time,
              in.required("tire", Codec.NAME),
              in.optional("from", PRESSURE),
              in.required("to", PRESSURE),
              in.required("gauge", Codec.NAME),
              in.remarks());
      case TIRE_CHANGE ->
          new LogEvent.TireChange(
              time,
              in.required("position", TripCodecs.POSITION),
              in.required("off", Codec.NAME),
              in.required("on", Codec.NAME),
              in.remarks());
      case ARRIVED -> new LogEvent.Arrived(time, in.required("stop", Codec.NAME), in.remarks());
      case LEFT -> new LogEvent.Left(time, in.required("stop", Codec.NAME), in.remarks());
      case NOTE -> new LogEvent.Note(time, in.required("text", Codec.TEXT), in.remarks());
    };
  }

  static ObjectNode write(LogEvent event) {
    FieldWriter out =
        new FieldWriter()
            .put("type", TYPE, typeOf(event))
            .put("time", TimeCodecs.TIME, event.time());
    if (event instanceof LogEvent.Reading reading) {
      out.put("tire", Codec.NAME, reading.tire())
          .put("pressure", PRESSURE, reading.pressure())
          .put("gauge", Codec.NAME, reading.gauge())
          .put("state", STATE, reading.state())
          .put("air", RouteFields.TEMPERATURE, reading.air())
          .put("tireTemperature", RouteFields.TEMPERATURE, reading.tireTemperature());
    } else if (event instanceof LogEvent.Adjustment adjustment) {
      out.put("tire", Codec.NAME, adjustment.tire())
          .put("from", PRESSURE, adjustment.from())
          .put("to", PRESSURE, adjustment.to())
          .put("gauge", Codec.NAME, adjustment.gauge());
    } else if (event instanceof LogEvent.TireChange change) {
      out.put("position", TripCodecs.POSITION, change.position())
          .put("off", Codec.NAME, change.off())
          .put("on", Codec.NAME, change.on());
    } else if (event instanceof LogEvent.Arrived arrived) {
      out.put("stop", Codec.NAME, arrived.stop());
    } else if (event instanceof LogEvent.Left left) {
      out.put("stop", Codec.NAME, left.stop());
    } else if (event instanceof LogEvent.Note note) {
      out.put("text", Codec.TEXT, note.text());
    }
    return out.with(event.remarks());
  }

  private static Type typeOf(LogEvent event) {
    if (event instanceof LogEvent.Reading) {
      return Type.READING;
    } else if (event instanceof LogEvent.Adjustment) {
      return Type.ADJUSTMENT;
    } else if (event instanceof LogEvent.TireChange) {
      return Type.TIRE_CHANGE;
    } else if (event instanceof LogEvent.Arrived) {
      return Type.ARRIVED;
    }
    return event instanceof LogEvent.Left ? Type.LEFT : Type.NOTE;
  }
}
