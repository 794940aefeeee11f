package dawngauge.ui.route;

import dawngauge.advice.Advice;
import dawngauge.explain.Step;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.StopLine;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import dawngauge.ui.common.TaskLine;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import java.util.List;
import java.util.NavigableSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** The chosen stop: what to do there, its tires with their explanations, and its fields. */
final class StopSide extends BorderPane {

  private final TripDocument document;
  private final StepsPane steps = new StepsPane();
  private final TireTable tires = new TireTable(steps);
  private final StopEditor editor;
  private final SeveralStops several;
  private final VBox tasks = new VBox();
  private final VBox reasons = new VBox();
  private final VBox facts = new VBox();
  private final Label name = new Label();
  private final TitledPane toDo = section("What to do here", tasks);
  private final TitledPane why = section("Why", reasons);
  private final TitledPane pressures = section("Tires here", new VBox(8, tires, steps));
  private final FigurePane figures;
  private final TitledPane now;
  private final ScrollPane scroll;
  private @Nullable Ledger ledger;
  private int index;

  StopSide(TripDocument document, RouteView route) {
    this.document = document;
    this.editor = new StopEditor(document);
    this.figures = new FigurePane(document);
    this.now = section("Set a tire here, or what does a reading mean?", figures);
    now.setExpanded(false);
    pressures.setExpanded(false);
    pressures.expandedProperty().addListener(change -> showTires());
    facts.getStyleClass().add("facts");
    facts.managedProperty().bind(facts.visibleProperty());
    now.expandedProperty().addListener(change -> showFigures());
    this.several = new SeveralStops(document);
    several.managedProperty().bind(several.visibleProperty());
    editor.managedProperty().bind(editor.visibleProperty());
    tasks.getStyleClass().add("tasks");
    reasons.getStyleClass().add("tasks");
    why.setExpanded(false);
    name.getStyleClass().add("chosen-stop");
    name.setMinWidth(60);
    name.setMaxWidth(Double.MAX_VALUE);
    HBox buttons =
        new HBox(
            4,
            button("+ stop", "Insert a stop after the chosen one", route::insert),
            button("Up", "Move the chosen stop up", () -> route.shift(-1)),
            button("Down", "Move the chosen stop down", () -> route.shift(1)),
            button("Duplicate", "Duplicate the chosen stop", route::duplicate),
            button("Remove", "Remove the chosen stop", route::remove));
    VBox bar = new VBox(3, name, buttons);
    bar.getStyleClass().add("bar");
    VBox content = new VBox(facts, toDo, why, editor, several, pressures, now);
    content.getStyleClass().add("side");
    scroll = new ScrollPane(content);
    scroll.setFitToWidth(true);
    scroll
        .viewportBoundsProperty()
        .addListener((property, before, now) -> tires.fit(now.getWidth()));
    setTop(bar);
    setCenter(scroll);
    setMinWidth(300);
  }

  private static TitledPane section(String title, Node content) {
    TitledPane section = new TitledPane(title, content);
    section.getStyleClass().add("section");
    section.setAnimated(false);
    section.managedProperty().bind(section.visibleProperty());
    return section;
  }

  private static Button button(String text, String spoken, Runnable action) {
    Button button = new Button(text);
    button.getStyleClass().add("small-button");
    button.setMinWidth(USE_PREF_SIZE);
    button.setAccessibleText(spoken);
    button.setOnAction(event -> action.run());
    return button;
  }

  /** The fields of the chosen stop. */
  StopEditor editor() {
    return editor;
  }

  /** Takes what the ledger says. */
  void ledger(Ledger shown) {
    ledger = shown;
  }

  /**
   * Shows a stop.
   *
   * @param stop the stop, counted from 0
   * @param taken the stops that are taken together; with more than one their common fields stand in
   *     the place of the one stop's
   */
  void show(int stop, NavigableSet<Integer> taken) {
    index = stop;
    boolean together = taken.size() > 1;
    Trip trip = document.trip();
    boolean any = index < trip.route().stops().size();
    name.setText(
        together
            ? taken.size() + " stops"
            : any ? Texts.shortened(trip.route().stops().get(index).place()) : "No stop");
    Ledger known = ledger;
    tasks.getChildren().clear();
    reasons.getChildren().clear();
    facts.getChildren().clear();
    if (known != null && index < known.stops().size()) {
      facts(known.stops().get(index));
      card(known.stops().get(index));
      reasons(known.stops().get(index));
    }
    toDo.setVisible(!together && !tasks.getChildren().isEmpty());
    why.setVisible(!together && !reasons.getChildren().isEmpty());
    facts.setVisible(!together && any);
    pressures.setVisible(!together);
    showTires();
    now.setVisible(!together && any);
    showFigures();
    editor.setVisible(!together);
    several.setVisible(together);
    if (together) {
      several.show(taken);
    } else {
      editor.show(index);
    }
  }

  /** When the rig is there, what is there, and the leg ahead. */
  private void facts(StopLine line) {
    String times =
        line.arrive().isEmpty() || line.leave().isEmpty()
            ? line.arrive() + line.leave()
            : line.arrive() + " to " + line.leave();
    List<Node> shown = facts.getChildren();
    shown.add(
        caution(
            Stream.of(line.kind(), times, line.zone(), line.air(), line.elevation(), line.hose())
                .filter(fact -> !fact.isEmpty())
                .collect(Collectors.joining(" · "))));
    line.loads().forEach(load -> shown.add(caution(load)));
    StopLine.TireRow tight = line.tightest();
    if (tight != null) {
      shown.add(
          caution(
              "margin "
                  + tight.margin()
                  + " of "
                  + tight.tires()
                  + (tight.byEstimate() ? ", by estimate" : "")));
    }
    if (!line.leg().isEmpty()) {
      shown.add(caution("then " + line.leg()));
    }
  }

  /** The tires are told in full only where that is asked for: the grid has them all. */
  private void showTires() {
    UnitSystem units = document.units();
    steps.clear(units);
    Advice advice = document.planned().advice();
    if (!pressures.isVisible() || !pressures.isExpanded()) {
      return;
    }
    if (advice != null && index < advice.stops().size()) {
      tires.show(document.trip(), advice.stops().get(index), units);
    } else {
      tires.clear();
    }
  }

  /** What to do and what to watch, in whole. */
  private void card(StopLine line) {
    List<Node> shown = tasks.getChildren();
    line.card().todo().forEach(task -> shown.add(TaskLine.whole(task)));
    line.card().watch().forEach(watched -> shown.add(caution(watched)));
    if (!line.slightChance()) {
      shown.add(caution(line.chance()));
    }
    line.cautions().forEach(caution -> shown.add(caution(caution)));
    if (!line.tasks().isEmpty()) {
      shown.add(caution(Ledger.CAUTIONS.get(1)));
    }
  }

  /** The reasons in full, and what they rest on. */
  private void reasons(StopLine line) {
    List<Node> shown = reasons.getChildren();
    line.tasks().forEach(task -> shown.add(TaskLine.whole(task)));
    line.routine().forEach(habit -> shown.add(caution("Gauge " + habit)));
    if (!line.chance().isEmpty() && line.slightChance()) {
      shown.add(caution(line.chance()));
    }
    if (!line.airFrom().isEmpty()) {
      shown.add(caution("Temperature " + line.airFrom()));
    }
  }

  private void showFigures() {
    if (now.isVisible() && now.isExpanded()) {
      figures.show(index);
    }
  }

  private static Label caution(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("lesser");
    label.setWrapText(true);
    return label;
  }

  /** Tells how a figure came about. */
  void explain(String heading, List<Step> list) {
    pressures.setExpanded(true);
    steps.explain(heading, list);
    Platform.runLater(() -> reveal(steps));
  }

  /** Goes to the first field of the stop. */
  void edit() {
    Platform.runLater(
        () -> {
          Node fields = several.isVisible() ? several : editor;
          reveal(fields);
          Node first = fields.lookup(".text-field");
          if (first != null) {
            first.requestFocus();
          }
        });
  }

  private void reveal(Node node) {
    double over =
        scroll.getContent().getLayoutBounds().getHeight() - scroll.getViewportBounds().getHeight();
    if (over <= 0) {
      return;
    }
    var bounds = scroll.getContent().sceneToLocal(node.localToScene(node.getBoundsInLocal()));
    double from = over * scroll.getVvalue();
    boolean seen =
        bounds.getMinY() >= from
            && bounds.getMaxY() <= from + scroll.getViewportBounds().getHeight();
    if (!seen) {
      scroll.setVvalue(Math.min(1, bounds.getMinY() / over));
    }
  }
}
