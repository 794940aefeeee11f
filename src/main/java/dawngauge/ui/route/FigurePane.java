package dawngauge.ui.route;

import dawngauge.advice.FigureNow;
import dawngauge.ledger.FigurePage;
import dawngauge.page.Block;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import dawngauge.ui.common.PageView;
import dawngauge.ui.common.TripDocument;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/**
 * What one tire is to be set to at the chosen stop, cold and warm, and what a reading means as a
 * cold one. A calculator: nothing of it goes into the trip.
 */
final class FigurePane extends VBox {

  private static final String NOTHING = "Nothing is known of this tire here.";
  private static final double WIDE = 190;

  private final TripDocument document;
  private final ChoiceBox<String> tire = new ChoiceBox<>();
  private final ChoiceBox<String> state = new ChoiceBox<>();
  private final FigureField<Optional<Entered<GaugePressure>>> reading;
  private final PageView lines = new PageView("What to set the tire to");
  private Optional<Entered<GaugePressure>> read = Optional.empty();
  private int stop;
  private boolean filling;

  FigurePane(TripDocument document) {
    this.document = document;
    setSpacing(6);
    reading =
        new FigureField<>(
            "Reading to be explained",
            text -> Forms.positive(QuantityKind.GAUGE_PRESSURE, document.units()).apply(text),
            value -> {
              read = value;
              tell();
            });
    reading.field().setPrefColumnCount(7);
    reading.exampled(document, "84 psi", "5.8 bar");
    tire.setAccessibleText("Tire");
    tire.setMinWidth(WIDE);
    state.setMinWidth(WIDE * 0.75);
    state.setAccessibleText("How the tire is");
    for (ReadingState each : ReadingState.values()) {
      state.getItems().add(each.word());
    }
    state.getSelectionModel().select(ReadingState.WARM.word());
    tire.setOnAction(event -> tell());
    state.setOnAction(event -> tell());
    FlowPane asked =
        new FlowPane(8, 6, new Label("tire"), tire, new Label("reads"), reading, state);
    asked.getStyleClass().add("asked");
    getChildren().addAll(asked, lines);
  }

  /** Shows a stop. */
  void show(int index) {
    stop = index;
    Trip trip = document.trip();
    List<String> names = new ArrayList<>();
    trip.rig().positions().forEach(position -> names.add(position.words()));
    if (!tire.getItems().equals(names)) {
      filling = true;
      String chosen = tire.getValue();
      tire.getItems().setAll(names);
      tire.getSelectionModel().select(names.contains(chosen) ? names.indexOf(chosen) : 0);
      filling = false;
    }
    tell();
  }

  private void tell() {
    int index = tire.getSelectionModel().getSelectedIndex();
    List<WheelPosition> positions = document.trip().rig().positions();
    if (filling || index < 0 || index >= positions.size()) {
      lines.show(List.of());
      return;
    }
    Trip trip = document.trip();
    FigureNow figures = document.planned().figureNow(stop, positions.get(index)).orElse(null);
    if (figures == null) {
      lines.show(List.of(new Block.Note(Block.Weight.PLAIN, NOTHING)));
      return;
    }
    GaugePressure reading = read.map(Entered::value).orElse(null);
    FigurePage.Asked asked = new FigurePage.Asked(reading, chosenState(), null);
    lines.show(FigurePage.beside(trip, figures, asked, document.units()));
  }

  private ReadingState chosenState() {
    for (ReadingState each : ReadingState.values()) {
      if (each.word().equals(state.getValue())) {
        return each;
      }
    }
    return ReadingState.WARM;
  }
}
