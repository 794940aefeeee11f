package dawngauge.ledger;

import dawngauge.trip.AxleRef;
import dawngauge.trip.Rig;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A column of the grid: a tire, or where there are many the tires of an axle together.
 *
 * @param head short form: "t2r", or of an axle "t2"
 * @param axle short form of its axle
 * @param words as people say it
 * @param positions whose figures it can show
 * @param tires the same as short forms
 * @param folded whether it stands for several tires, of which it shows the one that is worst off
 */
public record TireColumn(
    String head,
    String axle,
    String words,
    List<WheelPosition> positions,
    List<String> tires,
    boolean folded) {

  /** More tires than these have a column an axle. */
  public static final int MOST_TIRES = 10;

  /** Name of its vehicle. */
  public String vehicle() {
    return positions.get(0).axle().vehicle();
  }

  /** Copies the lists. */
  public TireColumn {
    positions = List.copyOf(positions);
    tires = List.copyOf(tires);
  }

  /**
   * The columns of a rig, in walking order.
   *
   * @param unfolded axles, by their short form, whose tires have a column each all the same
   */
  static List<TireColumn> all(Rig rig, Set<String> unfolded) {
    List<WheelPosition> positions =
        rig.positions().stream().filter(position -> rig.fittedAt(position).isPresent()).toList();
    Map<AxleRef, List<WheelPosition>> axles = new LinkedHashMap<>();
    for (WheelPosition position : positions) {
      axles.computeIfAbsent(position.axle(), key -> new ArrayList<>()).add(position);
    }
    boolean many = positions.size() > MOST_TIRES;
    List<TireColumn> columns = new ArrayList<>();
    axles.forEach(
        (axle, tires) -> {
          List<String> names = tires.stream().map(rig::shortForm).toList();
          String head = common(names);
          if (many && tires.size() > 1 && !unfolded.contains(head)) {
            columns.add(
                new TireColumn(head, head, axle.words() + ", the worst", tires, names, true));
          } else {
            for (int i = 0; i < tires.size(); i++) {
              columns.add(
                  new TireColumn(
                      names.get(i),
                      head,
                      tires.get(i).words(),
                      List.of(tires.get(i)),
                      List.of(names.get(i)),
                      false));
            }
          }
        });
    return List.copyOf(columns);
  }

  /** What short forms begin with: that of their axle. */
  private static String common(List<String> names) {
    String common = names.get(0);
    for (String name : names) {
      while (!name.startsWith(common)) {
        common = common.substring(0, common.length() - 1);
      }
    }
    return common;
  }
}
