package dawngauge.ui.start;

import dawngauge.ledger.Ledger;
import dawngauge.ledger.StopLine;
import dawngauge.planner.FirstHaul;
import dawngauge.planner.Plan;
import dawngauge.quantity.UnitSystem;
import dawngauge.ui.common.MarkShape;
import dawngauge.ui.common.TaskLine;
import dawngauge.ui.common.Texts;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * The first forecast as it grows with each entry: what is missing, what comes out, what is assumed.
 */
final class FirstForecast extends VBox {

  FirstForecast() {
    getStyleClass().add("first-forecast");
  }

  void show(FirstHaul haul, @Nullable Plan planned, UnitSystem units) {
    getChildren().clear();
    list("Still needed for a forecast", haul.missing());
    if (planned != null) {
      Ledger ledger =
          Ledger.of(
              planned.trip(), planned.advice(), planned.problems(), planned.fitness(), units, null);
      heading("First forecast");
      add(ledger.summary(), "first-summary");
      for (StopLine stop : ledger.stops()) {
        stop(stop, ledger.stops().size());
      }
      add(Ledger.CAUTIONS.get(1), "caution-line");
      list("Would make it better", haul.better());
      list("Assumed on the safe side; fill in later under Route and Rig", haul.assumed(units));
      list("Missing or assumed in the forecast", ledger.problems());
    }
  }

  private void stop(StopLine stop, int stops) {
    Label name = Texts.line(stop.place(), "place");
    Label word = new Label(stop.mark().word());
    word.getStyleClass()
        .addAll("mark-word", "mark-word-" + stop.mark().name().toLowerCase(Locale.ROOT));
    HBox mark = new HBox(6, new MarkShape(stop.mark()), word);
    GridPane line = new GridPane();
    line.setHgap(14);
    line.addRow(0, name, mark);
    getChildren().add(line);
    StopLine.TireRow tight = stop.tightest();
    if (tight != null) {
      boolean first = stop.number() == 1;
      String clock = first ? "leaving " + stop.leave() : "arriving " + stop.arrive();
      String reads = first ? tight.checkReads() : tight.arriveReads();
      String cold =
          first || tight.arriveSettled().isEmpty() ? "" : ", cold " + tight.arriveSettled();
      String margin =
          stop.number() == stops || Double.isNaN(tight.lowestMargin())
              ? ""
              : ", load margin " + tight.margin();
      add(
          clock + ", " + stop.air() + ": " + tight.tires() + " reads " + reads + cold + margin,
          "lesser");
    } else {
      add(stop.air(), "lesser");
    }
    getChildren().addAll(TaskLine.few(stop.card()));
    stop.card().watch().forEach(watched -> add(watched, "lesser"));
    if (!stop.slightChance()) {
      add(stop.chance(), "lesser");
    }
  }

  private void list(String title, List<String> lines) {
    if (!lines.isEmpty()) {
      heading(title);
      lines.forEach(line -> add(line, "first-line"));
    }
  }

  private void heading(String text) {
    add(text, "editor-heading");
  }

  private void add(String text, String style) {
    Label label = new Label(text);
    label.getStyleClass().add(style);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    getChildren().add(label);
  }
}
