package dawngauge.ui.review;

import dawngauge.advice.Advice;
import dawngauge.ambient.MeasuredAir;
import dawngauge.forecast.ReadingCheck;
import dawngauge.ledger.AccountLines;
import dawngauge.ledger.ReviewPage;
import dawngauge.page.Block;
import dawngauge.planner.Plan;
import dawngauge.review.PressureAccount;
import dawngauge.review.TireReview;
import dawngauge.review.TripReview;
import dawngauge.trip.Trip;
import dawngauge.ui.common.Derived;
import dawngauge.ui.common.PageView;
import dawngauge.ui.common.TripDocument;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Why the tires read as they did: findings, a line a tire, the account of one of them. */
public final class ReviewView extends BorderPane {

  private static final String LATER = "Choose a later reading than the first one.";
  private static final double ROOM_FOR_TIRE = 230;
  private static final double ROOM_FOR_READING = 270;

  private final TripDocument document;
  private final PageView found;
  private final ChoiceBox<String> tire = new ChoiceBox<>();
  private final ChoiceBox<String> first = new ChoiceBox<>();
  private final ChoiceBox<String> last = new ChoiceBox<>();
  private final PageView course;
  private final WaterfallPane waterfall;
  private final PageView account;
  private final Label hint =
      new Label("Weather services tell what stations near the stops measured, a week back.");
  private final VBox accounts = new VBox(8);
  private @Nullable TripReview review;
  private @Nullable Advice sound;
  private List<MeasuredAir> measured = List.of();
  private Trip measuredFor;
  private boolean stale = true;
  private boolean filling;
  private final Derived<Answer> answers = new Derived<>("Telling losses and air apart", this::show);

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
    this.found = new PageView("What was found", dark);
    this.course = new PageView("Readings of the tire", dark);
    this.waterfall = new WaterfallPane(dark);
    this.account = new PageView("Where its pressure went", dark);
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
            heading("Where its pressure went"),
            choice,
            waterfall,
            account);
    accounts.managedProperty().bind(accounts.visibleProperty());
    hint.getStyleClass().add("lesser");
    hint.setWrapText(true);
    hint.managedProperty().bind(hint.visibleProperty());
    VBox page = new VBox(14, answers.said(), found, accounts, new VBox(6, hint, ask));
    page.getStyleClass().add("review");
    ScrollPane scroll = new ScrollPane(page);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("page-scroll");
    setCenter(scroll);
    document.shownProperty().addListener(change -> changed());
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
    answers.ask(
        () -> {
          Plan plan = document.planner().plan(trip);
          return new Answer(trip, plan.review().orElse(null), plan.asSound().orElse(null));
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

  private record Answer(Trip trip, @Nullable TripReview review, @Nullable Advice sound) {}

  private void show(Answer answer) {
    Trip trip = answer.trip();
    review = answer.review();
    sound = answer.sound();
    TripReview known = review;
    hint.setVisible(measured().isEmpty());
    if (known == null) {
      found.show(ReviewPage.nothing(trip));
      accounts.setVisible(false);
      return;
    }
    found.show(ReviewPage.found(trip, known, measured(), document.units()));
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
    course.show(ReviewPage.course(sound, known, document.units()));
    account();
  }

  private void account() {
    TireReview known = tireChosen().orElse(null);
    if (filling || known == null) {
      return;
    }
    int from = first.getSelectionModel().getSelectedIndex();
    int to = last.getSelectionModel().getSelectedIndex();
    if (from < 0 || to <= from || to >= known.all().size()) {
      waterfall.show(null);
      account.show(List.of(new Block.Note(Block.Weight.LESSER, LATER)));
      return;
    }
    List<ReadingCheck> all = known.all();
    AccountLines lines =
        AccountLines.of(
            PressureAccount.of(all.get(from), all.get(to), known.made()), document.units());
    waterfall.show(lines);
    account.show(ReviewPage.account(lines));
  }
}
