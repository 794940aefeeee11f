package dawngauge.ui;

import dawngauge.ledger.Glossary;
import dawngauge.ledger.Ledger;
import dawngauge.settings.UserState;
import dawngauge.ui.common.Look;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;

/** Cautions, keys and words, in a window of its own that can stay open beside the planner. */
final class HelpWindow {

  private static final String[][] KEYS = {
    {"Up, Down", "the stop before, the next"},
    {"Shift with Up, Down", "take stops along, to change them together"},
    {"Alt with Up, Down", "move the taken stops"},
    {"Enter", "the fields of the chosen stop"},
    {"Insert, Delete", "a stop after this one, remove the taken stops"},
    {"Tab", "on to the next field; a field is taken on leaving it"},
    {"Alt with Down in a time", "choose its day from a month"},
    {"Escape", "drop what is typed in a field"},
    {"Up, Down on the trace", "go along the way; the figures are explained beside it"},
    {"Ctrl+1, Ctrl+2, Ctrl+3, Ctrl+4", "route, rig, what if, where to set the tires"},
    {"Ctrl+5 or F9, F7, F8", "readings, arrived now, left now"},
    {"F4", "a tire is flat: what to do"},
    {"Ctrl+6", "review"},
    {"Ctrl+G", "a route from a GPX file"},
    {"Ctrl+M", "map; on it arrows move, + and − scale, Home shows all"},
    {"Ctrl+P, Ctrl+Shift+P", "crew sheet, print stops and trace"},
    {"Ctrl+Shift+C", "copy the forecast as text"},
    {"F2, or just type", "type in the cell of time, stop, air or hose"},
    {"Ctrl+C, Ctrl+V", "copy and paste cells, also with a spreadsheet"},
    {"Ctrl+F", "find a stop or a tire"},
    {"Ctrl+E, Ctrl+L", "add a stop at the end, paste a list of places"},
    {"Ctrl+R", "get the temperatures that weather services expect"},
    {"Ctrl+U, Ctrl+D", "other units, light or dark"},
    {"Ctrl+Z, Ctrl+Shift+Z", "undo, redo"},
  };

  private static final UserState.Window SIZE =
      new UserState.Window(Double.NaN, Double.NaN, 560, 620, false);

  private final Stage stage = new Stage();
  private final GridPane words = new GridPane();

  HelpWindow(Stage owner) {
    TextField search = new TextField();
    search.setPromptText("search the words");
    search.setAccessibleText("Search the words");
    search.textProperty().addListener((property, before, text) -> show(text));
    VBox page = new VBox();
    page.getStyleClass().add("help");
    page.getChildren().add(heading("Cautions"));
    Ledger.CAUTIONS.forEach(caution -> page.getChildren().add(wrapped(caution)));
    page.getChildren().add(heading("Keys"));
    GridPane keys = grid();
    for (String[] key : KEYS) {
      row(keys, key[0], key[1]);
    }
    words.getStyleClass().add("help-grid");
    page.getChildren().addAll(keys, heading("Words"), search, words);
    show("");
    ScrollPane scroll = new ScrollPane(page);
    scroll.setFitToWidth(true);
    BorderPane root = new BorderPane(scroll);
    root.getStyleClass().add("planner");
    Scene scene = Opening.of(stage, root, SIZE);
    Look.rule(scene);
    scene.setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.ESCAPE) {
            stage.close();
          }
        });
    stage.initOwner(owner);
    stage.setTitle("Help – Dawngauge");
  }

  void open() {
    stage.show();
    stage.toFront();
  }

  private void show(String text) {
    words.getChildren().clear();
    Glossary.with(text).forEach(entry -> row(words, entry.word(), entry.meaning()));
    if (words.getChildren().isEmpty()) {
      row(words, "", "No word with “" + text + "”.");
    }
  }

  private static GridPane grid() {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("help-grid");
    return grid;
  }

  private static void row(GridPane grid, String word, String meaning) {
    Label name = wrapped(word);
    name.getStyleClass().add("help-word");
    name.setMinWidth(150);
    name.setPrefWidth(150);
    grid.addRow(grid.getRowCount(), name, wrapped(meaning));
  }

  private static Label heading(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("editor-heading");
    return label;
  }

  private static Label wrapped(String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    return label;
  }
}
