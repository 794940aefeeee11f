package dawngauge.tripfile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.field.LogFields;
import dawngauge.field.TimeCodecs;
import dawngauge.trip.LogEvent;
import dawngauge.trip.TypedTime;

/** What was noted on the way, as JSON: its type, and what an event of that type has. */
final class LogJson {
  private static final String TYPE = "type";

  private LogJson() {}

  static LogEvent read(FieldReader in) {
    LogFields.Type<?> type = in.requiredOrNull(TYPE, LogFields.TYPE);
    if (type != null) {
      return PartJson.read(in, type.part());
    }
    TypedTime time = in.required("time", TimeCodecs.TIME);
    in.skipRest();
    return new LogEvent.Note(time, "", in.remarks());
  }

  static ObjectNode write(LogEvent event) {
    return write(LogFields.typeOf(event), event);
  }

  private static <E extends LogEvent> ObjectNode write(LogFields.Type<E> type, LogEvent event) {
    FieldWriter out = new FieldWriter().put(TYPE, LogFields.TYPE, type);
    return PartJson.write(out, type.part(), type.event().cast(event));
  }
}
