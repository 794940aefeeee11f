package dawngauge.report;

import dawngauge.advice.Advice;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.Unit;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The forecast as comma-separated values (RFC 4180): one row a tire and stop, figures in SI and
 * U.S. units side by side, empty where not known.
 */
public final class CsvTable {

  private static final List<String> FIRST =
      List.of(
          "stop",
          "place",
          "kind",
          "arrive",
          "leave",
          "airOnArrival_celsius",
          "airOnArrival_fahrenheit",
          "airOnLeaving_celsius",
          "airOnLeaving_fahrenheit",
          "tire",
          "position",
          "tireId",
          "mark",
          "byEstimate",
          "loadBasis",
          "capacityBasis",
          "firm");

  private CsvTable() {}

  /**
   * The table.
   *
   * @param trip the trip
   * @param advice what was computed, or null where no time is known: header only
   * @param only the one position to write, or null for all
   */
  public static String of(Trip trip, @Nullable Advice advice, @Nullable WheelPosition only) {
    StringBuilder out = new StringBuilder();
    rows(trip, advice, only)
        .forEach(cells -> row(out, cells.stream().map(SheetCells::safe).toList()));
    return out.toString();
  }

  /** The same for programs, each text as it is; a spreadsheet may run what a name says. */
  public static String raw(Trip trip, @Nullable Advice advice, @Nullable WheelPosition only) {
    StringBuilder out = new StringBuilder();
    rows(trip, advice, only).forEach(cells -> row(out, cells));
    return out.toString();
  }

  /** The same for the clipboard: cells parted by tabs, which no cell holds. */
  public static String tabbed(Trip trip, @Nullable Advice advice) {
    StringBuilder out = new StringBuilder();
    for (List<String> cells : rows(trip, advice, null)) {
      out.append(
              String.join(
                  "\t",
                  cells.stream()
                      .map(cell -> SheetCells.safe(cell.replaceAll("\\s", " ")))
                      .toList()))
          .append('\n');
    }
    return out.toString();
  }

  private static List<List<String>> rows(
      Trip trip, @Nullable Advice advice, @Nullable WheelPosition only) {
    List<List<String>> rows = new ArrayList<>();
    List<String> header = new ArrayList<>(FIRST);
    for (String figure : FIGURES) {
      for (String unit : BothUnits.unitsOf(BothUnits.kindOf(figure)).keySet()) {
        header.add(figure + "_" + unit);
      }
    }
    rows.add(header);
    if (advice != null) {
      for (StopAdvice stop : advice.stops()) {
        for (TireAdvice tire : stop.tires()) {
          if (only == null || tire.tire().fitted().position().equals(only)) {
            rows.add(cells(trip, stop, tire));
          }
        }
      }
    }
    return rows;
  }

  /** Names of the figures, in order. */
  static final List<String> FIGURES =
      List.of(
          "arriveReads",
          "arriveReadsSigma",
          "arriveSettled",
          "leaveReads",
          "leaveReadsSigma",
          "leaveSettled",
          "setCold",
          "setOnArrival",
          "setAt",
          "lowestAhead",
          "floor",
          "aim",
          "ceiling",
          "publishedBuildUp",
          "load",
          "margin",
          "chanceUnderFloor",
          "chanceNotShown");

  private static List<String> cells(Trip trip, StopAdvice stop, TireAdvice tire) {
    Itinerary.Visit visit = stop.stop().visit();
    WheelPosition position = tire.tire().fitted().position();
    List<String> cells = new ArrayList<>();
    cells.add(String.valueOf(visit.index() + 1));
    cells.add(visit.stop().place());
    cells.add(visit.stop().kind().word());
    cells.add(Times.of(visit.arrive(), visit.zone()));
    cells.add(Times.of(visit.leave(), visit.zone()));
    for (double kelvins : List.of(stop.stop().airOnArrival(), stop.stop().airOnLeaving())) {
      for (Unit unit : List.of(Unit.CELSIUS, Unit.FAHRENHEIT)) {
        cells.add(
            Double.isNaN(kelvins)
                ? ""
                : BothUnits.number(new Temperature(kelvins), unit).toPlainString());
      }
    }
    cells.add(trip.rig().shortForm(position));
    cells.add(position.words());
    cells.add(tire.tire().fitted().tire().id());
    cells.add(tire.mark().word());
    cells.add(String.valueOf(tire.tire().limits().estimated()));
    for (String words : TireFigures.words(tire.tire()).values()) {
      cells.add(words == null ? "" : words);
    }
    cells.add(String.valueOf(TireFigures.firm(tire)));
    Map<String, @Nullable Quantity> figures = TireFigures.of(tire);
    for (String figure : FIGURES) {
      Quantity quantity = figures.get(figure);
      for (Unit unit : BothUnits.unitsOf(BothUnits.kindOf(figure)).values()) {
        cells.add(quantity == null ? "" : BothUnits.number(quantity, unit).toPlainString());
      }
    }
    return cells;
  }

  private static void row(StringBuilder out, List<String> cells) {
    for (int i = 0; i < cells.size(); i++) {
      out.append(i == 0 ? "" : ",").append(quoted(cells.get(i)));
    }
    out.append("\r\n");
  }

  private static String quoted(String cell) {
    boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? cell : "\"" + cell.replace("\"", "\"\"") + "\"";
  }
}
