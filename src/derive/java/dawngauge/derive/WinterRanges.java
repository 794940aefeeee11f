package dawngauge.derive;

import dawngauge.geo.Coordinate;
import dawngauge.geo.GreatCircle;
import java.util.ArrayList;
import java.util.List;

/**
 * Corrects rows of typical air whose winter days swing by far too little: about Fargo and Detroit
 * Lakes, where the table gives 2 to 4 K in January between fields of 10 K, and in Wisconsin with
 * the west of Upper Michigan, 4 to 7 K between fields of 8 to 11 K, while its summers and its means
 * are sound. Published normals of 1991 to 2020 say 10.1 K at Fargo, 10 at Eau Claire, 9.4 at Duluth
 * (from memory). Left as they are, lows there would be up to 4 K too warm. From November to March
 * the range is raised to what the rows around the field say, by inverse squares of distance; means
 * stay.
 */
final class WinterRanges {

  private record Field(Coordinate middle, double meters) {
    boolean holds(NormalRow row, double further) {
      return GreatCircle.between(middle, row.coordinate()).meters() < meters + further;
    }
  }

  private static final List<Field> FIELDS =
      List.of(
          new Field(new Coordinate(46.85, -96.2), 110_000),
          new Field(new Coordinate(45.2, -90.6), 280_000));

  /** From so far around a field, in meter, ranges are taken. */
  private static final double AROUND = 100_000;

  /** November to March, counted from 0. */
  private static final int[] WINTER = {10, 11, 0, 1, 2};

  private WinterRanges() {}

  static List<NormalRow> applied(List<NormalRow> rows) {
    List<NormalRow> sound =
        rows.stream().filter(row -> FIELDS.stream().noneMatch(f -> f.holds(row, 0))).toList();
    List<List<NormalRow>> around =
        FIELDS.stream()
            .map(f -> sound.stream().filter(row -> f.holds(row, AROUND)).toList())
            .toList();
    List<NormalRow> all = new ArrayList<>();
    for (NormalRow row : rows) {
      NormalRow now = row;
      for (int i = 0; i < FIELDS.size(); i++) {
        if (FIELDS.get(i).holds(row, 0)) {
          now = corrected(now, around.get(i));
          break;
        }
      }
      all.add(now);
    }
    return all;
  }

  private static NormalRow corrected(NormalRow row, List<NormalRow> around) {
    NormalRow now = row;
    for (int month : WINTER) {
      double sum = 0;
      double weights = 0;
      for (NormalRow other : around) {
        double kilometers =
            GreatCircle.between(row.coordinate(), other.coordinate()).meters() / 1000;
        double weight = 1 / (kilometers * kilometers);
        sum += weight * other.range(month);
        weights += weight;
      }
      long half = Math.round((sum / weights - row.range(month)) / 2);
      now = half > 0 ? now.widened(month, (int) half) : now;
    }
    return now;
  }
}
