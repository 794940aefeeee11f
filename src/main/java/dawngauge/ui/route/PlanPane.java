package dawngauge.ui.route;

import dawngauge.advice.Adjustment;
import dawngauge.ledger.PlanLines;
import dawngauge.ledger.PlanPage;
import dawngauge.ledger.TireNames;
import dawngauge.page.Block;
import dawngauge.problem.Outcome;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.PlanChoices;
import dawngauge.trip.Trip;
import dawngauge.ui.common.Derived;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import dawngauge.ui.common.PageView;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * The adjustment plan: where the tires are set and to what, whether it is followed, what is wanted
 * at each stop, and other habits beside it. Every choice is an edit of the trip.
 */
final class PlanPane extends BorderPane {

  private static final List<String> WISHES = List.of("as the plan says", "set here", "not here");

  private static final double FIGURE_WIDTH = 92;

  private final TripDocument document;
  private final CheckBox follow = new CheckBox("Follow this plan");
  private final PageView head = new PageView("The plan");
  private final GridPane stops = new GridPane();
  private final PageView foot = new PageView("The plan beside other habits");
  private final Derived<Answer> plan =
      new Derived<>("Looking for the fewest stops to set tires at", this::show);

  PlanPane(TripDocument document, Runnable close) {
    this.document = document;
    getStyleClass().add("plan-pane");
    Button back = new Button("Close");
    back.getStyleClass().add("small-button");
    back.setOnAction(event -> close.run());
    Label title = new Label("Where to set the tires");
    title.getStyleClass().add("chosen-stop");
    title.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(title, Priority.ALWAYS);
    HBox bar = new HBox(10, title, follow, back);
    bar.getStyleClass().add("bar");
    follow.setAccessibleText("Follow this plan: adjust stands where it sets a tire");
    follow.setOnAction(event -> choose(document.trip().plan().following(follow.isSelected())));
    stops.getStyleClass().add("plan-stops");
    VBox content = new VBox(6, plan.said(), head, stops, foot);
    content.getStyleClass().add("plan-content");
    ScrollPane scroll = new ScrollPane(content);
    scroll.setFitToWidth(true);
    setTop(bar);
    setCenter(scroll);
    document.shownProperty().addListener(change -> showIfSeen());
    document.unitsProperty().addListener(change -> showIfSeen());
    visibleProperty().addListener(change -> showIfSeen());
    managedProperty().bind(visibleProperty());
  }

  /** Puts the keyboard on the first choice. */
  void ask() {
    refresh();
    follow.requestFocus();
  }

  private void showIfSeen() {
    if (isVisible()) {
      refresh();
    }
  }

  /** What the control of this page that has the keyboard is for; empty where none has. */
  private String held() {
    Node owner = getScene() == null ? null : getScene().getFocusOwner();
    for (Node node = owner; node != null; node = node.getParent()) {
      if (node == stops && owner != null) {
        return String.valueOf(owner.getAccessibleText());
      }
    }
    return "";
  }

  /** The page was made anew: the same control gets the keyboard again. */
  private void giveBack(String held) {
    if (!held.isEmpty()) {
      for (Node node : stops.getChildren()) {
        Node control = node instanceof FigureField<?> figure ? figure.field() : node;
        if (held.equals(control.getAccessibleText())) {
          control.requestFocus();
        }
      }
    }
  }

  private void choose(PlanChoices choices) {
    document.edit(document.trip().withPlan(choices));
  }

  private record Answer(Trip trip, Outcome<Adjustment> adjustment) {}

  private void refresh() {
    Trip trip = document.trip();
    follow.setSelected(trip.plan().followed());
    plan.ask(() -> new Answer(trip, document.planner().plan(trip).adjustment()));
  }

  private void show(Answer answer) {
    String held = held();
    show(answer.trip(), answer.adjustment());
    giveBack(held);
  }

  private void show(Trip trip, Outcome<Adjustment> adjustment) {
    follow.setSelected(trip.plan().followed());
    follow.setDisable(!adjustment.hasValue());
    stops.getChildren().clear();
    if (!adjustment.hasValue()) {
      head.show(
          List.of(
              new Block.Note(
                  Block.Weight.MAIN, "No time on the way is known, so nothing can be planned."),
              new Block.Note(Block.Weight.PLAIN, adjustment.problems().get(0).text())));
      foot.show(List.of());
      return;
    }
    PlanLines lines = PlanLines.of(trip, adjustment.get(), document.units());
    head.show(PlanPage.head(trip, lines));
    foot.show(PlanPage.foot(trip, lines));
    int row = 0;
    TireNames names = TireNames.of(trip.rig());
    Set<String> told = new HashSet<>();
    for (PlanLines.PlanStop stop : lines.stops()) {
      row = stop(stop, row, text -> names.text(text, told));
    }
  }

  private int stop(PlanLines.PlanStop stop, int row, UnaryOperator<String> spelled) {
    String id = document.trip().route().stops().get(stop.visit()).id();
    Label place = new Label(Texts.shortened(stop.title()));
    place.setMinWidth(90);
    place.getStyleClass().add(stop.planned() ? "plan-used" : "plan-unused");
    Label when = new Label(stop.when());
    when.setMinWidth(USE_PREF_SIZE);
    stops.add(new VBox(place, when), 0, row);
    Node wish = wish(id, stop.title());
    GridPane.setValignment(wish, VPos.TOP);
    stops.add(wish, 1, row);
    int next = row;
    for (PlanLines.Line line : stop.lines()) {
      if (!line.positions().isEmpty()) {
        stops.add(figure(id, line, stop.title()), 2, next);
      }
      boolean sets = !line.positions().isEmpty();
      VBox text = new VBox(label(spelled.apply(line.text()), sets ? "plan-line" : "lesser"));
      if (!line.why().isEmpty()) {
        text.getChildren().add(PageView.why(line.why()));
      }
      GridPane.setHgrow(text, Priority.ALWAYS);
      stops.add(text, sets ? 3 : 2, next++, sets ? 1 : 2, 1);
    }
    for (String text : stop.beneath()) {
      stops.add(label(text, "lesser"), 2, next++, 2, 1);
    }
    return Math.max(next, row + 1);
  }

  private static Label label(String text, String styleClass) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMinWidth(160);
    label.getStyleClass().add(styleClass);
    return label;
  }

  private Node wish(String id, String title) {
    ChoiceBox<String> box = new ChoiceBox<>();
    box.getItems().addAll(WISHES);
    PlanChoices choices = document.trip().plan();
    box.getSelectionModel()
        .select(choices.at(id).map(wish -> WISHES.indexOf(wish.kind().word())).orElse(0));
    box.setAccessibleText("What is wanted at " + title);
    box.setMinWidth(USE_PREF_SIZE);
    box.setOnAction(
        event -> {
          PlanChoices.Kind kind =
              switch (box.getSelectionModel().getSelectedIndex()) {
                case 1 -> PlanChoices.Kind.HERE;
                case 2 -> PlanChoices.Kind.NOT_HERE;
                default -> null;
              };
          choose(document.trip().plan().with(id, kind));
        });
    return box;
  }

  /** The figure of some tires; emptied it is the plan's again. */
  private Node figure(String id, PlanLines.Line line, String title) {
    FigureField<Optional<Entered<GaugePressure>>> field =
        new FigureField<>(
            "Figure for " + line.tires() + " at " + title,
            Forms.positive(QuantityKind.GAUGE_PRESSURE, document.units()),
            figure -> {
              PlanChoices choices = document.trip().plan();
              for (var position : line.positions()) {
                choices = choices.withFigure(id, position, figure.orElse(null));
              }
              choose(choices);
            });
    field.field().setPrefColumnCount(6);
    field.setMinWidth(FIGURE_WIDTH);
    field.put(line.figure());
    return field;
  }
}
