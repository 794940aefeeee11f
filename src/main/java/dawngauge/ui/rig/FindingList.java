package dawngauge.ui.rig;

import dawngauge.fitness.Defect;
import dawngauge.quantity.UnitSystem;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What is found at one place of the rig: how bad, what, what to do about it, on whose word. */
final class FindingList extends VBox {

  FindingList() {
    getStyleClass().add("findings");
    managedProperty().bind(visibleProperty());
    setVisible(false);
  }

  void show(List<Defect> defects, String place, UnitSystem units) {
    getChildren().clear();
    setVisible(!defects.isEmpty());
    for (Defect defect : defects) {
      Label what =
          line(
              sentence(defect, place, units),
              "finding-" + defect.severity().name().toLowerCase(Locale.ROOT));
      Label rest = line(defect.toDo().in(units) + " (" + defect.authority().text() + ")", "lesser");
      getChildren().add(new VBox(what, rest));
    }
  }

  private static String sentence(Defect defect, String place, UnitSystem units) {
    String part =
        defect.where().startsWith(place + " ")
            ? defect.where().substring(place.length() + 1)
            : defect.where().equals(place) ? "" : defect.where();
    return defect.severity().word()
        + " – "
        + (part.isEmpty() ? "" : part + ": ")
        + defect.what().in(units);
  }

  private static Label line(String text, String style) {
    Label label = new Label(text);
    label.getStyleClass().add(style);
    label.setWrapText(true);
    return label;
  }
}
