package dawngauge.ui.route;

import dawngauge.ledger.Ledger;
import dawngauge.ledger.StopLine;
import dawngauge.ui.common.Texts;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The ledger on paper: a heading a day, a row a stop with what to do there, a row a leg. */
final class PrintedRows extends VBox {

  private final List<Region> stopRows = new ArrayList<>();

  PrintedRows(Ledger ledger) {
    getStyleClass().add("ledger");
    for (StopLine stop : ledger.stops()) {
      if (!stop.newDay().isEmpty()) {
        Label day = new Label(stop.newDay());
        day.getStyleClass().add("day-heading");
        day.setMaxWidth(Double.MAX_VALUE);
        getChildren().add(day);
      }
      Region row = new StopRow(stop);
      stopRows.add(row);
      getChildren().add(row);
      if (!stop.leg().isEmpty()) {
        getChildren().add(legRow(stop));
      }
    }
  }

  /** The rows of the stops, in order, for drawing beside them. */
  List<Region> stopRows() {
    return List.copyOf(stopRows);
  }

  private static Region legRow(StopLine stop) {
    Label text = Texts.twoLines(stop.leg());
    text.getStyleClass().add("leg");
    VBox lines = new VBox(text);
    lines.getStyleClass().add("leg-row");
    for (String caution : stop.cautions()) {
      Label line = Texts.twoLines(caution);
      line.getStyleClass().add("leg-caution");
      lines.getChildren().add(line);
    }
    return lines;
  }
}
