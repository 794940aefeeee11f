package dawngauge.ui.readings;

import dawngauge.forecast.HeatFit;
import dawngauge.forecast.TireLoss;
import dawngauge.ledger.Comparison;
import dawngauge.ledger.FoundLines;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.RigEdits;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.ui.common.Derived;
import dawngauge.ui.common.TripDocument;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * What the readings tell of single tires: one that goes down, one that warms up more or less than
 * modelled. Offered, never taken by itself; taking it is one step that can be undone.
 */
final class FoundPane extends VBox {

  private final TripDocument document;
  private final VBox list = new VBox(6);
  private final Derived<List<Found>> answers = new Derived<>("Looking for leaks", this::show);

  FoundPane(TripDocument document) {
    this.document = document;
    setSpacing(6);
    getChildren().addAll(answers.said(), list);
  }

  /**
   * Something that was found.
   *
   * @param text in words
   * @param offer what the button says; empty where nothing is offered
   * @param next the trip with it
   */
  private record Found(String text, String offer, Trip next) {}

  /** Looks at the trip as it is now. */
  void refresh() {
    Trip trip = document.trip();
    Plan now = document.planned();
    Planner planner = document.planner();
    answers.ask(
        () -> {
          List<Found> found = new ArrayList<>();
          Plan plan = planner.plan(trip);
          for (TireLoss loss : plan.losses()) {
            found.add(lost(trip, loss));
          }
          List<String> asModelled = new ArrayList<>();
          for (HeatFit fit : plan.heatFits()) {
            if (fit.offered() || fit.beyond()) {
              found.add(heat(planner, trip, now, fit));
            } else {
              asModelled.add(trip.rig().shortForm(fit.position()));
            }
          }
          String kept = FoundLines.kept(trip);
          if (!kept.isEmpty()) {
            found.add(new Found(kept, "Forget it", RigEdits.withoutHeatRecords(trip)));
          }
          if (!asModelled.isEmpty()) {
            found.add(
                new Found(
                    "As warm as modelled, by what warm readings there are: "
                        + String.join(", ", asModelled)
                        + ".",
                    "",
                    trip));
          }
          return found;
        });
  }

  private Found lost(Trip trip, TireLoss loss) {
    Tire tire = trip.rig().tire(loss.tire()).orElseThrow();
    String perDay = document.units().format(new GaugePressure(loss.perDay()), 1);
    Entered<GaugePressure> entered = Entered.of(QuantityKind.GAUGE_PRESSURE, perDay);
    boolean known = tire.lossPerDay() != null;
    return new Found(
        FoundLines.of(trip, loss, document.units()),
        known ? "" : "Forecast with " + perDay + " a day",
        known ? trip : RigEdits.withTire(trip, tire.withLossPerDay(entered)));
  }

  private Found heat(Planner planner, Trip trip, Plan now, HeatFit fit) {
    Tire tire = trip.rig().tire(fit.tire()).orElseThrow();
    double rounded = Math.rint(fit.factor() * 100) / 100;
    Trip next = RigEdits.withTire(trip, tire.withHeatFactor(rounded));
    String change =
        fit.offered()
            ? Comparison.of(trip, now.advice(), planner.plan(next).advice(), document.units())
                .summary()
            : "";
    return new Found(
        FoundLines.of(trip, fit, change),
        fit.offered() ? "Use " + FoundLines.factor(rounded) : "",
        next);
  }

  private void show(List<Found> found) {
    list.getChildren().clear();
    if (found.isEmpty()) {
      Label none =
          new Label(
              "Nothing yet. Two rounds of cold readings with one gauge show a tire that goes down;"
                  + " a warm reading after a cold one of the same day shows how much it warms up.");
      none.setWrapText(true);
      none.getStyleClass().add("lesser");
      list.getChildren().add(none);
    }
    for (Found each : found) {
      Label text = new Label(each.text());
      text.setWrapText(true);
      text.setMinHeight(USE_PREF_SIZE);
      text.setMaxWidth(Double.MAX_VALUE);
      text.getStyleClass().add("figure-line");
      HBox.setHgrow(text, Priority.ALWAYS);
      HBox line = new HBox(10, text);
      line.setAlignment(Pos.CENTER_LEFT);
      if (!each.offer().isEmpty()) {
        Button use = new Button(each.offer());
        use.getStyleClass().add("small-button");
        use.setMinWidth(USE_PREF_SIZE);
        use.setAccessibleText(each.offer() + ": " + each.text());
        use.setOnAction(event -> document.edit(each.next()));
        line.getChildren().add(use);
      }
      list.getChildren().add(line);
    }
  }
}
