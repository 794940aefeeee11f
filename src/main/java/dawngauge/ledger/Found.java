package dawngauge.ledger;

import dawngauge.geo.FoldedText;
import java.util.ArrayList;
import java.util.List;

/**
 * Stops and tires that are looked for by a part of their name, without regard to capitals and
 * accents.
 *
 * @param stops rows of the stops, counted from 0
 * @param tires columns of the tires, counted from 0
 */
public record Found(List<Integer> stops, List<Integer> tires) {

  /** Copies the lists. */
  public Found {
    stops = List.copyOf(stops);
    tires = List.copyOf(tires);
  }

  /** What is found in a grid; nothing where nothing is looked for. */
  public static Found in(StopGrid grid, String text) {
    String wanted = FoldedText.of(text);
    List<Integer> stops = new ArrayList<>();
    List<Integer> tires = new ArrayList<>();
    for (int i = 0; i < grid.rows() && !wanted.isEmpty(); i++) {
      String kind = FoldedText.of(grid.line(i).kind());
      if (FoldedText.of(grid.place(i)).contains(wanted) || kind.equals(wanted)) {
        stops.add(i);
      }
    }
    for (int i = 0; i < grid.columns().size() && !wanted.isEmpty(); i++) {
      TireColumn column = grid.columns().get(i);
      boolean named =
          FoldedText.of(column.head()).startsWith(wanted)
              || column.tires().stream().anyMatch(tire -> FoldedText.of(tire).equals(wanted));
      if (named || FoldedText.of(column.words()).contains(wanted)) {
        tires.add(i);
      }
    }
    return new Found(stops, tires);
  }

  /** How many there are. */
  public int count() {
    return stops.size() + tires.size();
  }

  /** In a few words. */
  public String words() {
    return count() == 0 ? "nothing found" : "stops " + stops.size() + ", tires " + tires.size();
  }
}
