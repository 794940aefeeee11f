package dawngauge.ui;

import dawngauge.ledger.Credits;
import dawngauge.ledger.Glossary;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.ProgramVersion;
import javafx.geometry.Insets;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** Version, license, caution and credits, in a dialog. */
final class AboutDialog {

  static final String TITLE = "About Dawngauge";

  private static final String LICENSE =
      "Under the Apache License 2.0, without warranty of any kind: apache.org/licenses/LICENSE-2.0.";

  private static final double SPACING = 8;

  private AboutDialog() {}

  static void show() {
    VBox page = new VBox(SPACING);
    page.setPadding(new Insets(SPACING));
    add(
        page,
        "Dawngauge "
            + ProgramVersion.NUMBER
            + " forecasts tire pressure and load margin along a haul.");
    add(page, LICENSE);
    add(page, Ledger.CAUTIONS.get(0));
    heading(page, "Data");
    for (Glossary.Entry data : Credits.data()) {
      add(page, data.word() + ": " + data.meaning());
    }
    heading(page, "Libraries");
    for (Credits.Library library : Credits.libraries()) {
      add(page, library.name() + ": " + library.license());
    }
    ScrollPane scroll = new ScrollPane(page);
    scroll.setFitToWidth(true);
    scroll.setPrefViewportHeight(420);
    Alert alert = new Alert(Alert.AlertType.INFORMATION, "", ButtonType.CLOSE);
    alert.setTitle(TITLE);
    alert.setHeaderText(TITLE);
    alert.getDialogPane().setContent(scroll);
    alert.getDialogPane().setPrefWidth(560);
    alert.setResizable(true);
    alert.show();
  }

  private static void heading(VBox page, String text) {
    add(page, text).setStyle("-fx-font-weight: bold;");
  }

  private static Label add(VBox page, String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    page.getChildren().add(label);
    return label;
  }
}
