package dawngauge.ui.route;

import dawngauge.geo.PlaceList;
import dawngauge.geo.Spot;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Leg;
import dawngauge.trip.Stop;
import dawngauge.ui.common.Forms;
import dawngauge.ui.common.Texts;
import java.util.function.BiConsumer;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/** What was understood of one line of a list of places, and what is to be done about it. */
final class PlaceListRow extends VBox {

  /**
   * A row.
   *
   * @param line the line
   * @param stop the stop that is made of it, or null
   * @param leg the leg that leads there, or null
   * @param choice told which of several places is meant
   */
  PlaceListRow(
      PlaceList.Line line,
      @Nullable Stop stop,
      @Nullable Leg leg,
      BiConsumer<PlaceList.Line, Spot> choice) {
    getStyleClass().add("edited-row");
    Label head = Texts.line(line.number() + "   " + heading(line, stop), "place-line");
    getChildren().add(head);
    if (stop != null) {
      getChildren().add(quiet(facts(stop, leg)));
    }
    if (line.candidates().size() > 1) {
      getChildren().add(choices(line, choice));
    }
    line.problems().forEach(problem -> getChildren().add(said(problem)));
  }

  private static String heading(PlaceList.Line line, @Nullable Stop stop) {
    return stop == null ? line.place() : stop.place();
  }

  private static String facts(Stop stop, @Nullable Leg leg) {
    var elevation = stop.elevation();
    var zone = stop.zone();
    var stay = stop.stay();
    StringBuilder facts = new StringBuilder();
    facts.append(elevation == null ? "elevation not known" : "about " + elevation.text());
    facts.append(zone == null ? "" : " · " + zone.getId());
    var leave = stop.leave();
    facts.append(stop.kind() == Stop.Kind.OVERNIGHT ? " · overnight" : "");
    facts.append(stay == null ? "" : " · stay " + Forms.text(stay));
    facts.append(leave == null ? "" : " · leaves " + Forms.text(leave));
    facts.append(stop.air().available() ? " · hose" : "");
    var distance = leg == null ? null : leg.distance();
    return facts
        .append(distance == null ? "" : " · about " + distance.text() + " of road")
        .toString();
  }

  private static ChoiceBox<Spot> choices(
      PlaceList.Line line, BiConsumer<PlaceList.Line, Spot> choice) {
    ChoiceBox<Spot> box = new ChoiceBox<>();
    box.setAccessibleText("Which " + line.place());
    box.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(@Nullable Spot spot) {
            return spot == null ? "" : spot.name();
          }

          @Override
          public Spot fromString(String text) {
            throw new UnsupportedOperationException("a choice is not typed");
          }
        });
    box.getItems().setAll(line.candidates());
    box.setValue(line.taken());
    box.setOnAction(event -> choice.accept(line, box.getValue()));
    return box;
  }

  /** A problem in a line of its own. */
  static Label said(Problem problem) {
    boolean error = problem.code().severity() == ProblemCode.Severity.ERROR;
    Label label = new Label(problem.text());
    label.getStyleClass().add(error ? "field-error" : "field-note");
    label.setWrapText(true);
    return label;
  }

  /** A lesser line. */
  static Label quiet(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("lesser");
    label.setWrapText(true);
    return label;
  }
}
