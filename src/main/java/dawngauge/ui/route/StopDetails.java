package dawngauge.ui.route;

import dawngauge.advice.Advice;
import dawngauge.explain.Step;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.StopLine;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import dawngauge.ui.common.Pulses;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import java.util.List;
import java.util.NavigableSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** The chosen stop: what to do there, its tires with their explanations, and its fields. */
final class StopDetails extends BorderPane {

  private final TripDocument document;
  private final StepsPane steps = new StepsPane();
  private final TireTable tires = new TireTable(steps);
  private final StopEditor editor;
  private final SeveralStops several;
  private final ToldLines tasks = new ToldLines("tasks");
  private final ToldLines reasons = new ToldLines("tasks");
  private final ToldLines facts = new ToldLines("facts");
  private final Label name = new Label();
  private final TitledPane toDo = section("What to do here", tasks);
  private final TitledPane why = section("Why", reasons);
  private final TitledPane pressures = section("Tires here", new VBox(8, tires, steps));
  private final FigurePane figures;
  private final ReachPane reach;
  private final TitledPane ahead;
  private final TitledPane now;
  private final ScrollPane scroll;
  private @Nullable Ledger ledger;
  private int index;

  /** Whether the fields of another stop are to come. */
  private boolean awaited;

  StopDetails(TripDocument document, RouteView route) {
    this.document = document;
    this.editor = new StopEditor(document);
    this.figures = new FigurePane(document);
    this.now = section("Set a tire here, or what does a reading mean?", figures);
    now.setExpanded(false);
    this.reach = new ReachPane(document);
    this.ahead = section("How far does the air reach?", reach);
    ahead.setExpanded(false);
    ahead.expandedProperty().addListener(change -> showReach());
    pressures.setExpanded(false);
    pressures.expandedProperty().addListener(change -> showTires());
    facts.managedProperty().bind(facts.visibleProperty());
    now.expandedProperty().addListener(change -> showFigures());
    this.several = new SeveralStops(document);
    several.managedProperty().bind(several.visibleProperty());
    editor.managedProperty().bind(editor.visibleProperty());
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
    VBox content = new VBox(facts, toDo, why, editor, several, pressures, now, ahead);
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
    settle();
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
    if (known != null && index < known.stops().size()) {
      facts(known.stops().get(index));
      card(known.stops().get(index));
      reasons(known.stops().get(index));
    }
    facts.show();
    tasks.show();
    reasons.show();
    toDo.setVisible(!together && tasks.any());
    why.setVisible(!together && reasons.any());
    facts.setVisible(!together && any);
    pressures.setVisible(!together);
    showTires();
    now.setVisible(!together && any);
    showFigures();
    ahead.setVisible(!together && index < trip.route().stops().size() - 1);
    showReach();
    editor.setVisible(!together);
    several.setVisible(together);
    if (together) {
      several.show(taken);
    } else {
      fields();
    }
  }

  /**
   * Fields that are shown already follow at once. Those of another stop come a frame later, so that
   * walking from stop to stop does not wait for them; until then they edit the stop before.
   */
  private void fields() {
    Scene scene = getScene();
    if (scene == null || !editor.isOfAnother(index)) {
      editor.show(index);
    } else if (!awaited) {
      awaited = true;
      Pulses.after(scene, this::settle);
    }
  }

  /** Shows the fields that are still to come. */
  private void settle() {
    if (awaited) {
      awaited = false;
      editor.show(index);
    }
  }

  /** When the rig is there, what is there, and the leg ahead. */
  private void facts(StopLine line) {
    String times =
        line.arrive().isEmpty() || line.leave().isEmpty()
            ? line.arrive() + line.leave()
            : line.arrive() + " to " + line.leave();
    facts.add(
        Stream.of(line.kind(), times, line.zone(), line.air(), line.elevation(), line.hose())
            .filter(fact -> !fact.isEmpty())
            .collect(Collectors.joining(" · ")));
    line.loads().forEach(facts::add);
    StopLine.TireRow tight = line.tightest();
    if (tight != null) {
      facts.add(
          "margin "
              + tight.margin()
              + " of "
              + tight.tires()
              + (tight.byEstimate() ? ", by estimate" : ""));
    }
    if (!line.leg().isEmpty()) {
      facts.add("then " + line.leg());
    }
  }

  /** The tires are told in full only where that is asked for: the grid has them all. */
  private void showTires() {
    UnitSystem units = document.units();
    steps.clear(units);
    Advice advice = document.shown().advice();
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
    line.card().todo().forEach(task -> tasks.add(task.mark(), task.text()));
    line.card().watch().forEach(tasks::add);
    if (!line.slightChance()) {
      tasks.add(line.chance());
    }
    line.cautions().forEach(tasks::add);
    if (!line.tasks().isEmpty()) {
      tasks.add(Ledger.CAUTIONS.get(1));
    }
  }

  /** The reasons in full, and what they rest on. */
  private void reasons(StopLine line) {
    line.tasks().forEach(task -> reasons.add(task.mark(), task.told()));
    line.routine().forEach(habit -> reasons.add("Gauge " + habit));
    if (!line.chance().isEmpty() && line.slightChance()) {
      reasons.add(line.chance());
    }
    if (!line.airFrom().isEmpty()) {
      reasons.add("Temperature " + line.airFrom());
    }
  }

  private void showFigures() {
    if (now.isVisible() && now.isExpanded()) {
      figures.show(index);
    }
  }

  private void showReach() {
    if (ahead.isVisible() && ahead.isExpanded()) {
      reach.show(index);
    }
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
          settle();
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
