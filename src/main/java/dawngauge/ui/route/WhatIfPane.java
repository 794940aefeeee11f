package dawngauge.ui.route;

import dawngauge.advice.Advice;
import dawngauge.ambient.WhatIf;
import dawngauge.ledger.Comparison;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import dawngauge.ui.common.ComparedTable;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import dawngauge.ui.common.TaskLine;
import dawngauge.ui.common.TripDocument;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * What if it came colder or warmer, the start were earlier or later, or the plan of where to set
 * the tires were followed: another forecast stop by stop beside the one as it is. The trip is left
 * alone.
 */
final class WhatIfPane extends BorderPane {

  /** No weather is this far off its forecast, in kelvin; ours. */
  private static final double MOST_KELVINS = 30;

  private static final String COLDER = "colder by";
  private static final String WARMER = "warmer by";

  /** Part of the window left to the table: what changes stands in the grid above too. */
  private static final double ROOM = 0.18;

  private static final String COLD_EDGE = "cold edge of the range";
  private static final String WARM_EDGE = "warm edge of the range";
  private static final String SAME = "as expected";
  private static final String AS_IT_IS = "as it is";
  private static final String FOLLOWED = "followed";
  private static final String NOT_FOLLOWED = "not followed";

  private final TripDocument document;
  private final ChoiceBox<String> air = choice("Air", SAME, COLDER, WARMER, COLD_EDGE, WARM_EDGE);
  private final ChoiceBox<String> part =
      choice(
          "Part of the route", "on the whole way", "from the chosen stop on", "at the chosen stop");
  private final ChoiceBox<String> start = choice("Start", "on time", "later by", "earlier by");
  private final ChoiceBox<String> plan =
      choice("Plan of where to set the tires", AS_IT_IS, FOLLOWED, NOT_FOLLOWED);
  private final FigureField<Optional<Entered<TemperatureDifference>>> degrees;
  private final FigureField<Optional<Duration>> span;
  private final Consumer<@Nullable Advice> beside;
  private final Label summary = new Label();
  private final ComparedTable table =
      new ComparedTable("what if", task -> Optional.of(TaskLine.whole(task)));
  private Optional<Entered<TemperatureDifference>> by = Optional.empty();
  private Optional<Duration> later = Optional.empty();
  private int chosen;

  /**
   * Nothing asked.
   *
   * @param beside takes the other forecast, to be shown beside the trip's; none where none is asked
   */
  WhatIfPane(TripDocument document, Consumer<@Nullable Advice> beside, Runnable close) {
    this.document = document;
    this.beside = beside;
    getStyleClass().add("what-if");
    degrees = new FigureField<>("Degrees", this::difference, value -> taken(() -> by = value));
    span = new FigureField<>("Hours", Forms::span, value -> taken(() -> later = value));
    degrees.field().setPrefColumnCount(6);
    span.field().setPrefColumnCount(7);
    degrees.exampled(document, "10 °F", "5 °C");
    span.field().setPromptText("2 h 30 min");
    part.managedProperty().bind(part.visibleProperty());
    degrees.managedProperty().bind(degrees.visibleProperty());
    span.managedProperty().bind(span.visibleProperty());
    summary.getStyleClass().add("summary");
    summary.setWrapText(true);
    Button back = new Button("Close");
    back.getStyleClass().add("small-button");
    back.setOnAction(event -> close.run());
    Label title = new Label("What if");
    title.getStyleClass().add("chosen-stop");
    title.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(title, Priority.ALWAYS);
    HBox bar = new HBox(6, title, back);
    bar.getStyleClass().add("bar");
    FlowPane asked =
        new FlowPane(
            8,
            6,
            new Label("the air is"),
            air,
            degrees,
            part,
            new Label("and we start"),
            start,
            span,
            new Label("and the plan is"),
            plan);
    asked.getStyleClass().add("asked");
    setTop(new VBox(bar, asked, summary));
    ScrollPane scroll = new ScrollPane(table);
    scroll.setFitToWidth(true);
    sceneProperty()
        .addListener(
            (property, before, scene) -> {
              scroll.prefViewportHeightProperty().unbind();
              if (scene != null) {
                scroll.prefViewportHeightProperty().bind(scene.heightProperty().multiply(ROOM));
              }
            });
    setCenter(scroll);
    air.setOnAction(event -> show());
    part.setOnAction(event -> show());
    start.setOnAction(event -> show());
    plan.setOnAction(event -> show());
    document.shownProperty().addListener(change -> showIfSeen());
    document.unitsProperty().addListener(change -> showIfSeen());
    visibleProperty().addListener(change -> showIfSeen());
    managedProperty().bind(visibleProperty());
  }

  private static ChoiceBox<String> choice(String name, String... choices) {
    ChoiceBox<String> box = new ChoiceBox<>();
    box.getItems().addAll(choices);
    box.getSelectionModel().select(0);
    box.setAccessibleText(name);
    return box;
  }

  /** A difference above zero; a bare number is in the units shown. */
  private Outcome<Optional<Entered<TemperatureDifference>>> difference(String text) {
    Outcome<Optional<Entered<TemperatureDifference>>> outcome =
        Forms.positive(QuantityKind.TEMPERATURE_DIFFERENCE, document.units()).apply(text);
    return outcome.value().map(this::bounded).orElse(outcome);
  }

  private Outcome<Optional<Entered<TemperatureDifference>>> bounded(
      Optional<Entered<TemperatureDifference>> value) {
    boolean wild = value.isPresent() && value.get().value().kelvins() > MOST_KELVINS;
    return wild
        ? Outcome.failed(
            Problem.of(
                ProblemCode.OUT_OF_RANGE,
                "",
                value.get().text(),
                "0",
                document.units().format(new TemperatureDifference(MOST_KELVINS))))
        : Outcome.of(value);
  }

  private void taken(Runnable change) {
    change.run();
    show();
  }

  /** Puts the keyboard on the first question. */
  void ask() {
    show();
    air.requestFocus();
  }

  /** Tells which stop is chosen. */
  void chosen(int stop) {
    chosen = stop;
    showIfSeen();
  }

  private void showIfSeen() {
    if (isVisible()) {
      show();
    } else {
      beside.accept(null);
    }
  }

  private WhatIf asked() {
    int last = Math.max(chosen, document.trip().route().stops().size() - 1);
    int from = part.getSelectionModel().getSelectedIndex() == 0 ? 0 : chosen;
    int to = part.getSelectionModel().getSelectedIndex() == 2 ? chosen : last;
    double kelvins = by.map(entered -> entered.value().kelvins()).orElse(0.0);
    String wanted = String.valueOf(air.getValue());
    WhatIf weather =
        switch (wanted) {
          case COLDER -> WhatIf.shifted(-kelvins, from, to);
          case WARMER -> WhatIf.shifted(kelvins, from, to);
          case COLD_EDGE -> WhatIf.coldSnap().over(from, to);
          case WARM_EDGE -> WhatIf.heat().over(from, to);
          default -> WhatIf.NOTHING;
        };
    int sense = start.getSelectionModel().getSelectedIndex();
    Duration moved = later.orElse(Duration.ZERO);
    return weather.starting(sense == 0 ? Duration.ZERO : sense == 1 ? moved : moved.negated());
  }

  private Trip withPlan(Trip trip) {
    String how = String.valueOf(plan.getValue());
    return how.equals(AS_IT_IS) ? trip : trip.withPlan(trip.plan().following(how.equals(FOLLOWED)));
  }

  private void show() {
    String wanted = String.valueOf(air.getValue());
    degrees.setVisible(wanted.equals(COLDER) || wanted.equals(WARMER));
    part.setVisible(!wanted.equals(SAME));
    span.setVisible(start.getSelectionModel().getSelectedIndex() > 0);
    WhatIf whatIf = asked();
    UnitSystem units = document.units();
    table.getChildren().clear();
    Trip trip = withPlan(document.trip());
    if (whatIf.isNothing() && trip.equals(document.trip())) {
      summary.setText(
          "Choose another weather, another start, or whether the plan is followed; the trip is left"
              + " as it is.");
      beside.accept(null);
      return;
    }
    Advice other = document.planner().plan(trip, whatIf).advice();
    Comparison comparison =
        Comparison.of(document.trip(), document.planned().advice(), other, units);
    summary.setText(comparison.summary());
    table.show(comparison);
    beside.accept(other);
  }
}
