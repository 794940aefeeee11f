package dawngauge.ui.review;

import dawngauge.advice.Advice;
import dawngauge.ambient.MeasuredAir;
import dawngauge.forecast.ReadingCheck;
import dawngauge.ledger.AccountLines;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.ReadingsTrace;
import dawngauge.ledger.ReviewLines;
import dawngauge.ledger.WeatherSummary;
import dawngauge.review.PressureAccount;
import dawngauge.review.TireReview;
import dawngauge.review.TripReview;
import dawngauge.trip.Trip;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.TripDocument;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Why the tires read as they did: findings, a line a tire, the account of one of them. */
public final class ReviewView extends BorderPane {

  private static final double ROOM_FOR_TIRE = 230;
  private static final double ROOM_FOR_READING = 270;

  private final TripDocument document;
  private final Label headline = new Label();
  private final VBox findings = new VBox(6);
  private final VBox next = new VBox(4);
  private final GridPane tires = new GridPane();
  private final ChoiceBox<String> tire = new ChoiceBox<>();
  private final ChoiceBox<String> first = new ChoiceBox<>();
  private final ChoiceBox<String> last = new ChoiceBox<>();
  private final CoursePane course;
  private final GridPane readings = new GridPane();
  private final WaterfallPane waterfall;
  private final GridPane table = new GridPane();
  private final VBox air = new VBox(4);
  private final VBox notes = new VBox(2);
  private final VBox accounts = new VBox(8);
  private @Nullable TripReview review;
  private @Nullable Advice sound;
  private List<MeasuredAir> measured = List.of();
  private Trip measuredFor;
  private boolean stale = true;
  private boolean filling;
  private int asked;

  /**
   * A view.
   *
   * @param dark whether the window is dark
   * @param asking asks what was measured and hands it on
   */
  public ReviewView(
      TripDocument document,
      ObservableBooleanValue dark,
      Consumer<Consumer<List<MeasuredAir>>> asking) {
    this.document = document;
    this.measuredFor = document.trip();
    Button ask = new Button("Ask what was measured…");
    ask.setOnAction(event -> asking.accept(this::take));
    this.waterfall = new WaterfallPane(dark);
    this.course = new CoursePane(dark);
    readings.getStyleClass().add("compared");
    headline.getStyleClass().add("review-headline");
    headline.setWrapText(true);
    headline.setMinHeight(USE_PREF_SIZE);
    tires.getStyleClass().add("compared");
    table.getStyleClass().add("compared");
    tire.setAccessibleText("Tire of the account");
    first.setAccessibleText("Earlier reading of the account");
    last.setAccessibleText("Later reading of the account");
    tire.setMinWidth(ROOM_FOR_TIRE);
    first.setMinWidth(ROOM_FOR_READING);
    last.setMinWidth(ROOM_FOR_READING);
    tire.setOnAction(event -> chosen());
    first.setOnAction(event -> account());
    last.setOnAction(event -> account());
    FlowPane whose = new FlowPane(8, 6, new Label("tire"), tire);
    whose.getStyleClass().add("asked");
    FlowPane choice = new FlowPane(8, 6, new Label("from"), first, new Label("to"), last);
    choice.getStyleClass().add("asked");
    accounts
        .getChildren()
        .addAll(
            heading("What it read, and what a sound tire would have read"),
            whose,
            course,
            plain(ReadingsTrace.WHAT, "lesser"),
            readings,
            heading("Where its pressure went"),
            choice,
            waterfall,
            table,
            notes);
    accounts.managedProperty().bind(accounts.visibleProperty());
    VBox todo = new VBox(6, heading("Before the next haul"), next);
    todo.managedProperty().bind(todo.visibleProperty());
    todo.visibleProperty().bind(Bindings.isNotEmpty(next.getChildren()));
    VBox page =
        new VBox(
            14,
            headline,
            findings,
            todo,
            heading("Tire by tire"),
            tires,
            accounts,
            new VBox(6, heading("Temperatures that were measured"), air, ask));
    page.getStyleClass().add("review");
    ScrollPane scroll = new ScrollPane(page);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("page-scroll");
    setCenter(scroll);
    document.plannedProperty().addListener(change -> changed());
    document.unitsProperty().addListener(change -> changed());
    sceneProperty()
        .addListener(
            change -> {
              if (getScene() != null && stale) {
                refresh();
              }
            });
  }

  private static Label heading(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("rig-heading");
    label.setMaxWidth(Double.MAX_VALUE);
    return label;
  }

  private void changed() {
    if (getScene() == null) {
      stale = true;
    } else {
      refresh();
    }
  }

  private void refresh() {
    stale = false;
    Trip trip = document.trip();
    int question = ++asked;
    Tasks.compute(
        () ->
            new Answer(
                document.planner().review(trip).orElse(null),
                document.planner().asSound(trip).orElse(null)),
        answer -> {
          if (question == asked) {
            show(trip, answer);
          }
        });
  }

  private void take(List<MeasuredAir> found) {
    measured = found;
    measuredFor = document.trip();
    changed();
  }

  /** What was measured at the stops of the trip shown; none after the route changed. */
  public List<MeasuredAir> measured() {
    return document.trip().route().equals(measuredFor.route()) ? measured : List.of();
  }

  private record Answer(@Nullable TripReview review, @Nullable Advice sound) {}

  private void show(Trip trip, Answer answer) {
    review = answer.review();
    sound = answer.sound();
    findings.getChildren().clear();
    next.getChildren().clear();
    tires.getChildren().clear();
    TripReview known = review;
    if (known == null) {
      headline.setText("There is nothing to review as long as no time on the way is known.");
      accounts.setVisible(false);
      return;
    }
    ReviewLines lines = ReviewLines.of(trip, known, measured(), document.units());
    headline.setText(lines.headline());
    air.getChildren().clear();
    List<String> summary = WeatherSummary.of(measured(), document.units()).lines();
    (measured().isEmpty()
            ? List.of("Weather services tell what stations near the stops measured, a week back.")
            : summary)
        .forEach(text -> air.getChildren().add(plain(text, "figure-line")));
    lines.findings().forEach(text -> findings.getChildren().add(plain(text, "figure-line")));
    lines.next().forEach(text -> next.getChildren().add(plain(text, "figure-line")));
    if (!lines.next().isEmpty()) {
      next.getChildren().add(plain(Ledger.CAUTIONS.get(0), "lesser"));
      next.getChildren().add(plain(Ledger.CAUTIONS.get(2), "lesser"));
    }
    heads(tires, "position", "tire", "cold readings", "off, last cold", "found");
    int row = 1;
    for (ReviewLines.TireLine line : lines.tires()) {
      tires.addRow(
          row++,
          plain(line.name(), "tire-name"),
          plain(line.tire(), "lesser"),
          plain(String.valueOf(line.rounds()), "figure-line"),
          plain(line.off(), "figure-line"),
          plain(line.found(), "figure-line"));
    }
    filling = true;
    List<String> names = new ArrayList<>();
    int worst = 0;
    for (TireReview each : known.tires()) {
      names.add(each.position().words());
      if (!each.sound() && known.tires().get(worst).sound()) {
        worst = names.size() - 1;
      }
    }
    String before = tire.getValue();
    tire.getItems().setAll(names);
    if (!names.isEmpty()) {
      tire.getSelectionModel().select(names.contains(before) ? names.indexOf(before) : worst);
    }
    filling = false;
    chosen();
  }

  private Optional<TireReview> tireChosen() {
    TripReview known = review;
    int index = tire.getSelectionModel().getSelectedIndex();
    return known == null || index < 0 || index >= known.tires().size()
        ? Optional.empty()
        : Optional.of(known.tires().get(index));
  }

  private void chosen() {
    if (filling) {
      return;
    }
    TireReview known = tireChosen().orElse(null);
    accounts.setVisible(known != null && known.all().size() > 1);
    if (known == null) {
      return;
    }
    filling = true;
    List<String> words = known.all().stream().map(AccountLines::words).toList();
    first.getItems().setAll(words);
    last.getItems().setAll(words);
    PressureAccount usual = known.account();
    if (!words.isEmpty()) {
      first
          .getSelectionModel()
          .select(usual == null ? 0 : Math.max(0, known.all().indexOf(usual.first())));
      last.getSelectionModel()
          .select(
              usual == null ? words.size() - 1 : Math.max(0, known.all().indexOf(usual.last())));
    }
    filling = false;
    course(known);
    account();
  }

  private void course(TireReview known) {
    Advice asSound = sound;
    readings.getChildren().clear();
    ReadingsTrace trace =
        asSound == null ? null : ReadingsTrace.of(asSound, known, document.units());
    course.show(trace);
    if (trace == null) {
      return;
    }
    heads(readings, "read", trace.unit(), "if sound", "9 of 10 within", "off");
    int row = 1;
    for (ReadingsTrace.Dot dot : trace.dots()) {
      readings.addRow(
          row++,
          plain(dot.words(), "figure-line"),
          plain(trace.shown(dot.read()), "figure-line"),
          plain(trace.shown(dot.expected()), "figure-line"),
          plain(trace.shown(dot.low()) + " to " + trace.shown(dot.high()), "figure-line"),
          plain(trace.off(dot), "figure-line"));
    }
  }

  private static void heads(GridPane grid, String... heads) {
    for (int i = 0; i < heads.length; i++) {
      Label head = new Label(heads[i]);
      head.getStyleClass().add("table-head");
      head.setMinWidth(USE_PREF_SIZE);
      grid.add(head, i, 0);
    }
  }

  private void account() {
    TireReview known = tireChosen().orElse(null);
    if (filling || known == null) {
      return;
    }
    int from = first.getSelectionModel().getSelectedIndex();
    int to = last.getSelectionModel().getSelectedIndex();
    table.getChildren().clear();
    notes.getChildren().clear();
    if (from < 0 || to <= from || to >= known.all().size()) {
      waterfall.show(null);
      notes.getChildren().add(plain("Choose a later reading than the first one.", "lesser"));
      return;
    }
    List<ReadingCheck> all = known.all();
    AccountLines lines =
        AccountLines.of(
            PressureAccount.of(all.get(from), all.get(to), known.made()), document.units());
    waterfall.show(lines);
    int row = 0;
    for (AccountLines.Part part : lines.parts()) {
      table.addRow(
          row++,
          plain(part.words(), "figure-line"),
          plain(part.text() + " " + lines.unit(), "figure-line"));
    }
    lines.notes().forEach(note -> notes.getChildren().add(plain(note, "lesser")));
  }

  private static Label plain(String text, String styleClass) {
    Label label = new Label(text);
    label.getStyleClass().add(styleClass);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }
}
