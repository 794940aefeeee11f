package dawngauge.ui;

import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import dawngauge.ui.common.TripDocument;
import javafx.geometry.Pos;
import javafx.scene.control.Tooltip;

/** The name of the trip at the head of the window, which is changed there. */
final class TripName {

  private static final int COLUMNS = 14;

  private TripName() {}

  static FigureField<String> field(TripDocument document) {
    FigureField<String> name =
        new FigureField<>(
            "Trip name", Forms::name, text -> document.edit(document.trip().withName(text)));
    name.getStyleClass().add("trip-name");
    name.field().setPrefColumnCount(COLUMNS);
    name.field().setTooltip(new Tooltip("As on sheet, reminders and calendar"));
    name.setMinWidth(0); // in a narrow window it gives way to the buttons
    name.setAlignment(Pos.CENTER_LEFT);
    document.tripProperty().addListener(change -> name.show(document.trip().name()));
    name.show(document.trip().name());
    return name;
  }
}
