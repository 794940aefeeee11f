package dawngauge.ui.start;

import dawngauge.planner.FirstHaul;
import dawngauge.planner.PlannedTrip;
import dawngauge.planner.Planner;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import dawngauge.ui.common.PlaceOffers;
import dawngauge.ui.common.Tasks;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * The first page: at most a dozen entries at the left, the forecast as it grows with each at the
 * right. The trip goes on in the planner, where everything can be changed.
 */
public final class FirstStartView extends BorderPane {

  private final Planner planner;
  private final ReadOnlyObjectProperty<UnitSystem> units;
  private final LocalDate today;
  private final Consumer<Trip> done;
  private final FirstEntries entries;
  private final FirstForecast forecast = new FirstForecast();
  private final Button goOn = new Button("Go on in the planner");
  private @Nullable PlannedTrip planned;

  /**
   * The page.
   *
   * @param planner the use cases
   * @param units the units shown
   * @param today for the departure that is offered
   * @param done takes the trip
   * @param others what else can be done: each a button
   */
  public FirstStartView(
      Planner planner,
      ReadOnlyObjectProperty<UnitSystem> units,
      LocalDate today,
      Consumer<Trip> done,
      Button... others) {
    this.planner = planner;
    this.units = units;
    this.today = today;
    this.done = done;
    this.entries =
        new FirstEntries(
            units::get,
            FirstHaul.offered(today),
            (text, near) -> planner.places(text, near, PlaceOffers.MOST),
            this::changed);
    getStyleClass().add("first-start");
    Label title = new Label("A first haul");
    title.getStyleClass().add("first-title");
    Label lead =
        new Label(
            "At most a dozen entries for a first forecast; where you have no figure, leave the field"
                + " empty. Tab goes on to the next.");
    lead.setWrapText(true);
    goOn.setDefaultButton(false);
    goOn.setDisable(true);
    goOn.setOnAction(event -> handOver());
    HBox buttons = new HBox(8, goOn);
    buttons.getChildren().addAll(others);
    VBox left = new VBox(8, title, lead, entries, buttons);
    left.getStyleClass().add("first-left");
    VBox.setVgrow(entries, Priority.ALWAYS);
    SplitPane split = new SplitPane(scrolled(left), scrolled(forecast));
    split.setDividerPositions(0.55);
    setCenter(split);
    units.addListener(change -> show());
    show();
  }

  private static ScrollPane scrolled(Node node) {
    ScrollPane scroll = new ScrollPane(node);
    scroll.setFitToWidth(true);
    return scroll;
  }

  private void changed(FirstHaul haul) {
    Tasks.compute(
        () -> planner.first(haul, today).map(planner::plan),
        (Optional<PlannedTrip> next) -> {
          if (haul.equals(entries.haul())) {
            planned = next.orElse(null);
            show();
          }
        });
  }

  private void show() {
    forecast.show(entries.haul(), planned, units.get());
    goOn.setDisable(planned == null);
  }

  private void handOver() {
    PlannedTrip known = planned;
    if (known != null) {
      done.accept(known.trip());
    }
  }
}
