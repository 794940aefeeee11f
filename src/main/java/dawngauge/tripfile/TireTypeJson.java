package dawngauge.tripfile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.tire.Construction;
import dawngauge.tire.LoadIndex;
import dawngauge.tire.LoadInflationTable;
import dawngauge.tire.LoadInflationTable.Row;
import dawngauge.tire.TireSpec;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Kinds of tire with their load and inflation rows as JSON. */
final class TireTypeJson {
  private static final Form<Construction> CONSTRUCTION =
      Form.choice(Construction.class, Construction::word);

  /** Load indices end at 279 (ISO 4000-1, load index table; from memory). */
  private TireTypeJson() {}

  static TireSpec read(FieldReader in) {
    Entered<GaugePressure> rated = in.optional("ratedPressure", RigJson.PRESSURE);
    Entered<GaugePressure> max = in.optional("maxColdPressure", RigJson.PRESSURE);
    if (rated != null && max != null && max.value().compareTo(rated.value()) < 0) {
      in.report(
          ProblemCode.BELOW_RATED_PRESSURE, in.at("maxColdPressure"), max.text(), rated.text());
    }
    return new TireSpec(
        in.required("name", Form.NAME),
        in.optional("size", Form.TEXT),
        in.optional("class", RigJson.TIRE_CLASS),
        in.optional("construction", CONSTRUCTION),
        in.optional("loadRange", Form.TEXT),
        in.integer("loadIndexSingle", LoadIndex.LEAST, LoadIndex.MOST),
        in.integer("loadIndexDual", LoadIndex.LEAST, LoadIndex.MOST),
        in.optional("speedSymbol", Form.TEXT),
        in.optional("ratedLoadSingle", RigJson.MASS),
        in.optional("ratedLoadDual", RigJson.MASS),
        rated,
        max,
        readRows(in));
  }

  static ObjectNode write(TireSpec spec) {
    LoadInflationTable table = spec.rows();
    return new FieldWriter()
        .put("name", Form.NAME, spec.name())
        .put("size", Form.TEXT, spec.size())
        .put("class", RigJson.TIRE_CLASS, spec.tireClass())
        .put("construction", CONSTRUCTION, spec.construction())
        .put("loadRange", Form.TEXT, spec.loadRange())
        .integer("loadIndexSingle", spec.loadIndexSingle())
        .integer("loadIndexDual", spec.loadIndexDual())
        .put("speedSymbol", Form.TEXT, spec.speedSymbol())
        .put("ratedLoadSingle", RigJson.MASS, spec.ratedLoadSingle())
        .put("ratedLoadDual", RigJson.MASS, spec.ratedLoadDual())
        .put("ratedPressure", RigJson.PRESSURE, spec.ratedPressure())
        .put("maxColdPressure", RigJson.PRESSURE, spec.maxColdPressure())
        .objects("rows", table == null ? List.of() : table.rows(), TireTypeJson::writeRow)
        .node();
  }

  /** The table, or null where there is none or its rows are not in order. */
  private static @Nullable LoadInflationTable readRows(FieldReader in) {
    List<Row> rows = in.objects("rows", TireTypeJson::readRow);
    if (!in.has("rows")) {
      return null;
    }
    boolean sound = rows.size() >= 2;
    if (!sound) {
      in.report(ProblemCode.TOO_FEW_ROWS, in.at("rows"), "" + rows.size());
    }
    for (int i = 1; i < rows.size(); i++) {
      Row row = rows.get(i);
      Row before = rows.get(i - 1);
      if (!LoadInflationTable.rises(before, row)) {
        sound = false;
        if (isRead(before) && isRead(row)) {
          in.report(ProblemCode.ROW_FALLS, in.at("rows") + "/" + i, words(row), words(before));
        }
      }
    }
    return sound ? new LoadInflationTable(rows) : null;
  }

  private static Row readRow(FieldReader in) {
    return new Row(
        in.required("pressure", RigJson.PRESSURE),
        in.required("single", RigJson.MASS),
        in.optional("dual", RigJson.MASS));
  }

  private static ObjectNode writeRow(Row row) {
    return new FieldWriter()
        .put("pressure", RigJson.PRESSURE, row.pressure())
        .put("single", RigJson.MASS, row.single())
        .put("dual", RigJson.MASS, row.dual())
        .node();
  }

  private static boolean isRead(Row row) {
    return !row.pressure().text().isEmpty() && !row.single().text().isEmpty();
  }

  private static String words(Row row) {
    Entered<Mass> dual = row.dual();
    String single = row.pressure().text() + ": " + row.single().text();
    return dual == null ? single : single + " (dual " + dual.text() + ")";
  }
}
