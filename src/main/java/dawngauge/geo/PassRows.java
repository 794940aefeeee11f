package dawngauge.geo;

import java.util.ArrayList;
import java.util.List;

/**
 * The main road passes of the United States, Canada, the Alps and the Pyrenees, as further rows of
 * the gazetteer: general knowledge, each height held against a terrain model.
 */
final class PassRows {

  private static final String WELL_KNOWN = "A";

  private final List<String> divisions;
  private final List<String> rows = new ArrayList<>();
  private final List<Boolean> about = new ArrayList<>();

  /** Reads them; divisions and time zones that are not in the lists yet are added there. */
  PassRows(List<String> divisions, List<String> zones) {
    this.divisions = divisions;
    for (String row : BundledLines.of("passes.tsv")) {
      String[] columns = row.split("\t", -1);
      rows.add(
          String.join(
              "\t",
              columns[0],
              columns[1],
              columns[2],
              columns[3],
              String.valueOf(division(columns[4], columns[5])),
              "0",
              columns[6],
              String.valueOf(indexIn(zones, columns[7]))));
      about.add(!columns[8].equals(WELL_KNOWN));
    }
  }

  private int division(String country, String state) {
    for (int i = 0; i < divisions.size(); i++) {
      String[] columns = divisions.get(i).split("\t", -1);
      String shown = columns[1].isEmpty() ? columns[2] : columns[1];
      if (columns[0].equals(country) && shown.equals(state)) {
        return i;
      }
    }
    return indexIn(divisions, country + "\t\t" + state);
  }

  private static int indexIn(List<String> list, String wanted) {
    int found = list.indexOf(wanted);
    if (found < 0) {
      list.add(wanted);
      return list.size() - 1;
    }
    return found;
  }

  /** In the columns of {@code places.tsv.gz}, nobody living there. */
  List<String> rows() {
    return rows;
  }

  /** Of which of them the height is only known within about 130 m, in their order. */
  List<Boolean> about() {
    return about;
  }
}
