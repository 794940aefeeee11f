package dawngauge.tripfile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.field.AmbientFields;
import dawngauge.field.Field;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.AmbientEntry;
import java.util.List;

/** Expected air temperatures as JSON. */
final class AmbientJson {
  private static final List<Field<AmbientEntry, ?>> DAY =
      List.of(AmbientFields.DATE, AmbientFields.LOW, AmbientFields.HIGH);

  private AmbientJson() {}

  /** Reads an entry; that it has one figure, and a day all three, only the file can tell. */
  static AmbientEntry read(FieldReader in) {
    boolean day = DAY.stream().anyMatch(field -> in.has(field.key()));
    int figures =
        (in.has(AmbientFields.STEADY.key()) ? 1 : 0)
            + (in.has(AmbientFields.HOURS.key()) ? 1 : 0)
            + (day ? 1 : 0);
    if (figures != 1) {
      in.report(ProblemCode.NOT_ONE_FIGURE, in.place(), figures == 0 ? "none" : "" + figures);
    } else if (day) {
      DAY.forEach(field -> in.require(field.key(), field.codec()));
    }
    return PartJson.read(in, AmbientFields.ENTRY);
  }

  static ObjectNode write(AmbientEntry entry) {
    return PartJson.write(AmbientFields.ENTRY, entry);
  }
}
