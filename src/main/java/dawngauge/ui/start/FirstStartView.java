package dawngauge.ui.start;

import dawngauge.planner.FirstHaul;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.FigureFields;
import dawngauge.ui.common.PlaceOffers;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.Texts;
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
import javafx.scene.layout.FlowPane;
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
  private final Label refusal = new Label();
  private @Nullable Plan planned;

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
            (text, near) -> planner.places().search(text, near, PlaceOffers.MOST),
            this::changed);
    getStyleClass().add("first-start");
    Label title = new Label("A first haul");
    title.getStyleClass().add("first-title");
    Label lead =
        new Label(
            "A dozen entries for a first forecast; leave empty what you do not know. Tab goes on.");
    lead.setWrapText(true);
    goOn.setDefaultButton(false);
    goOn.setDisable(true);
    goOn.setOnAction(event -> handOver());
    goOn.setMinWidth(USE_PREF_SIZE);
    FlowPane buttons = new FlowPane(8, 8, goOn);
    buttons.getChildren().addAll(others);
    refusal.getStyleClass().add("field-error");
    refusal.setWrapText(true);
    refusal.managedProperty().bind(refusal.visibleProperty());
    refusal.setVisible(false);
    VBox left = new VBox(8, title, lead, entries, refusal, buttons);
    left.getStyleClass().add("first-left");
    VBox.setVgrow(entries, Priority.ALWAYS);
    SplitPane split = new SplitPane(scrolled(left), scrolled(forecast));
    split.setDividerPositions(0.62);
    setCenter(split);
    units.addListener(
        change -> {
          entries.showExamples();
          show();
        });
    show();
  }

  private static ScrollPane scrolled(Node node) {
    ScrollPane scroll = new ScrollPane(node);
    scroll.setFitToWidth(true);
    return scroll;
  }

  private void changed(FirstHaul haul) {
    Tasks.compute(
        () -> planner.first(haul, today).map(trip -> planner.plan(trip).computed()),
        (Optional<Plan> next) -> {
          if (haul.equals(entries.haul())) {
            planned = next.orElse(null);
            show();
          }
        },
        wrong -> {
          if (haul.equals(entries.haul())) {
            planned = null;
            show();
            refusal.setText(Texts.fault("The first forecast", wrong));
            refusal.setVisible(true);
          }
        });
  }

  private void show() {
    if (FigureFields.drafts(entries).isEmpty()) {
      refusal.setVisible(false);
    }
    forecast.show(entries.haul(), planned, units.get());
    goOn.setDisable(planned == null);
  }

  /**
   * Hands the trip over with all that is typed. A refused entry is not left behind: its field gets
   * the keyboard, and it is told.
   */
  private void handOver() {
    FigureField<?> refused = null;
    for (FigureField<?> field : FigureFields.below(entries)) {
      if (!field.finish() && refused == null) {
        refused = field;
      }
    }
    refusal.setVisible(refused != null);
    if (refused != null) {
      refusal.setText(
          refused.name()
              + ": \u201c"
              + Texts.shortened(String.valueOf(refused.draft()))
              + "\u201d cannot be taken. Correct it, or drop it with Escape, and go on then.");
      refused.field().requestFocus();
      return;
    }
    planner.first(entries.haul(), today).ifPresent(done);
  }
}
