package dawngauge.ui;

import dawngauge.ambient.MeasuredAir;
import dawngauge.ledger.Ledger;
import dawngauge.planner.Planner;
import dawngauge.planner.UserFolder;
import dawngauge.planner.WeatherAccess;
import dawngauge.problem.Problem;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.UserState;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.FirstField;
import dawngauge.ui.common.Look;
import dawngauge.ui.common.Pulses;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import dawngauge.ui.readings.ReadingsView;
import dawngauge.ui.readings.TripStatusBar;
import dawngauge.ui.review.ReviewView;
import dawngauge.ui.rig.RigView;
import dawngauge.ui.route.LedgerPrint;
import dawngauge.ui.route.RouteView;
import dawngauge.ui.start.FirstStartView;
import java.io.File;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import org.jspecify.annotations.Nullable;

/** The planner's one window. */
public final class PlannerWindow {

  private final Stage stage;
  private final Planner planner;
  private final UserFolder userFolder;
  private final TripDocument document;
  private final WindowFiles files;
  private final TrackFiles tracks;
  private final ExportActions papers;
  private final WeatherActions air;
  private final NoticeBar notices = new NoticeBar();
  private final RouteView route;
  private final RigView rig;
  private final ReviewView review;
  private final ReadingsView readings;
  private final EarlierTrips earlier;
  private final TableFiles tables;
  private final PhoneFiles phone;
  private final BorderPane root;
  private final PageSwitch pages;
  private final TripStatusBar crew;
  private final BooleanProperty dark = new SimpleBooleanProperty(false);
  private final boolean systemDark;
  private @Nullable HelpWindow help;

  /** What was measured at the stops left, as far as it was asked for. */
  List<MeasuredAir> measured() {
    return review.measured();
  }

  /**
   * Fills a stage with the planner.
   *
   * @param stage the stage
   * @param planner the use cases
   * @param userFolder what is kept in the user's own folder
   * @param weather the way to the weather services
   * @param document the trip to show
   * @param asker asks the user about files
   * @param systemDark whether the system's windows are dark
   */
  public PlannerWindow(
      Stage stage,
      Planner planner,
      UserFolder userFolder,
      WeatherAccess weather,
      TripDocument document,
      FileAsker asker,
      boolean systemDark) {
    this.stage = stage;
    this.planner = planner;
    this.userFolder = userFolder;
    this.document = document;
    this.systemDark = systemDark;
    Tasks.keepFailures(userFolder.failures()::keep);
    document.unitsProperty().set(userFolder.state().units());
    document.onRefused(
        refused ->
            notices.tellHere(
                "edit", String.join("\n", refused.stream().map(Problem::text).toList())));
    this.air = new WeatherActions(document, weather, asker, notices);
    this.route = new RouteView(document, dark);
    this.rig = new RigView(document, dark);
    this.crew =
        new TripStatusBar(document, userFolder.clock(), text -> notices.tellHere("crew", text));
    this.readings = new ReadingsView(document, userFolder.clock(), crew);
    this.review = new ReviewView(document, dark, air::measured);
    this.root = new BorderPane(route);
    this.pages = new PageSwitch(root, route, rig, readings, review, this::showCrew);
    this.files =
        new WindowFiles(
            document,
            userFolder,
            asker,
            notices,
            route,
            List.of(rig, readings.drafts()),
            () -> root);
    route.onOnlineMap(air::onlineMap);
    this.papers = new ExportActions(document, weather, asker, notices);
    this.tracks = new TrackFiles(document, route, asker, notices, this::showRoute);
    this.earlier = new EarlierTrips(document, userFolder, asker, notices, rig, this::showRig);
    this.tables =
        new TableFiles(document, userFolder, asker, notices, readings, this::showReadings);
    this.phone = new PhoneFiles(document, weather, asker, notices, readings, this::showReadings);
    KeptRigsMenu rigs = new KeptRigsMenu(document, userFolder, asker, notices, earlier);
    root.centerProperty().addListener((center, before, page) -> notices.turnTo(page));
    pages.choose(userFolder.state().place());
    Label caution = new Label(Ledger.AT_THE_VALVE);
    caution.getStyleClass().add("caution");
    caution.setMaxWidth(Double.MAX_VALUE);
    caution.setMinWidth(0);
    Texts.tipped(caution, PlannerWindow::cautions);
    root.setTop(
        new VBox(
            new Menus(this, document, route, files, userFolder, rigs, air, papers, tracks).bar(),
            head(),
            crew,
            notices,
            document.forecastBeside()));
    root.setBottom(caution);
    Scene scene = Opening.of(stage, root, userFolder.state().window());
    Look.rule(scene);
    root.getStyleClass().add("planner");
    // Reads the places before they are asked for; who asks is told what goes wrong then.
    Tasks.compute(() -> planner.places().search("a", null, 1), places -> {}, wrong -> {});
    dark.addListener(change -> Look.show(dark.get()));
    dark.set(userFolder.state().theme().dark(systemDark));
    Look.show(dark.get());
    UndoKeys.install(scene, document);
    scene.addEventFilter(KeyEvent.KEY_TYPED, typed -> files.typed());
    scene.setOnDragOver(PlannerWindow::acceptFiles);
    scene.setOnDragDropped(this::dropped);
    stage
        .titleProperty()
        .bind(
            Bindings.createStringBinding(
                this::title,
                document.tripProperty(),
                document.dirtyProperty(),
                document.fileProperty()));
    stage.setMinWidth(Math.min(UserState.Window.LEAST_WIDTH, stage.getMaxWidth()));
    stage.setMinHeight(Math.min(UserState.Window.LEAST_HEIGHT, stage.getMaxHeight()));
    document
        .unitsProperty()
        .addListener((p, was, now) -> userFolder.remember(s -> s.withUnits(now)));
    document.shownProperty().addListener(change -> showAgain());
    stage.focusedProperty().addListener(change -> lookAround());
    stage.setOnCloseRequest(
        event -> {
          if (!files.mayLeave()) {
            event.consume();
          } else {
            ended();
          }
        });
    stage.addEventHandler(WindowEvent.WINDOW_HIDDEN, hidden -> papers.end());
    Pulses.after(scene, this::greet);
    Runnable first = () -> FirstField.focus(root.getCenter());
    if (stage.isShowing()) {
      Platform.runLater(first);
    } else {
      stage.addEventHandler(WindowEvent.WINDOW_SHOWN, shown -> Platform.runLater(first));
    }
  }

  private void greet() {
    papers.watch();
    files.offerUnsaved();
    if (!userFolder.state().cautionsSeen()) {
      notices.tell("cautions", String.join("\n", Ledger.CAUTIONS));
      userFolder.remember(UserState::withCautionsSeen);
    }
  }

  /** Tells of what was thrown and caught by nobody. */
  void tellFault(Throwable wrong) {
    notices.tell(
        "fault",
        Texts.fault("Something", wrong)
            + " What is shown may be old: save, and open the trip anew. \u201c"
            + Menus.COPY_WRONG
            + "\u201d in the Help menu has it for a report.");
  }

  /** Copies what went wrong. */
  void copyWhatWentWrong() {
    Menus.copy(userFolder.failures().text());
    notices.tell(
        "fault",
        "What went wrong is in the clipboard: times, kinds of error and places in the code. It holds"
            + " nothing of your trips, no place and no contact.");
  }

  private void lookAround() {
    if (stage.isFocused()) {
      files.lookAtDisk();
    }
  }

  private void ended() {
    route.end();
    papers.end();
    files.end();
    boolean whole = stage.isMaximized();
    UserState.Window now =
        new UserState.Window(
            stage.getX(),
            stage.getY(),
            stage.getScene().getWidth(),
            stage.getScene().getHeight(),
            whole);
    UserState.Window before = userFolder.state().window();
    userFolder.remember(
        state ->
            state
                .withWindow(
                    whole
                        ? new UserState.Window(
                            before.x(), before.y(), before.width(), before.height(), true)
                        : now)
                .withPlace(pages.shown()));
  }

  private String title() {
    String name = document.fileProperty().get().map(WindowFiles::nameOf).orElse("not saved");
    return (document.dirtyProperty().get() ? "• " : "")
        + Texts.shortened(document.trip().name())
        + " ("
        + name
        + ") – Dawngauge";
  }

  private void showCrew() {
    crew.setVisible(
        pages.isChosen(PageSwitch.READINGS)
            || (pages.isChosen(PageSwitch.ROUTE) && crew.underWay()));
  }

  /** Shows the route. */
  void showRoute() {
    pages.choose(PageSwitch.ROUTE);
  }

  /** Ledger and trace on paper of a size in points. */
  LedgerPrint printed(double width, double height) {
    return route.printed(width, height);
  }

  /** Shows the rig. */
  void showRig() {
    pages.choose(PageSwitch.RIG);
  }

  /** Shows the readings. */
  void showReadings() {
    pages.choose(PageSwitch.READINGS);
  }

  /** Shows what to do about a flat tire. */
  void showBreakdown() {
    showReadings();
    readings.askBreakdown();
  }

  /** Shows why the tires read as they did. */
  void showReview() {
    pages.choose(PageSwitch.REVIEW);
  }

  /** Asks for a table of readings. */
  void takeTable() {
    tables.take();
  }

  /** The page for the phone, written and taken in again. */
  PhoneFiles phone() {
    return phone;
  }

  /** Notes an arrival at the next stop now. */
  void arrivedNow() {
    crew.arrivedNow();
  }

  /** Notes that the rig leaves now. */
  void leftNow() {
    crew.leftNow();
  }

  private HBox head() {
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    Button undo = button("Undo", document::undo);
    undo.disableProperty().bind(document.undoableProperty().not());
    Texts.tipped(undo, () -> new Tooltip(UndoKeys.undoing(document)));
    document.tripProperty().addListener(change -> undo.setTooltip(null));
    Button redo = button("Redo", document::redo);
    redo.disableProperty().bind(document.redoableProperty().not());
    Button fill = button(WeatherActions.GET, air::fill);
    fill.disableProperty().bind(air.askingProperty());
    FigureField<String> name = TripName.field(document);
    name.disableProperty().bind(pages.closed()); // on the first page it is of none
    HBox head = new HBox(8, name);
    head.getChildren().addAll(pages.buttons());
    head.getChildren().addAll(gap, fill, undo, redo);
    head.getStyleClass().add("head");
    return head;
  }

  /** All cautions: the line at the foot has the shortest form. */
  private static Tooltip cautions() {
    Tooltip tip = new Tooltip(String.join("\n", Ledger.CAUTIONS));
    tip.setWrapText(true);
    tip.setMaxWidth(640);
    return tip;
  }

  private static Button button(String text, Runnable action) {
    Button button = new Button(text);
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(event -> action.run());
    return button;
  }

  /** Shows the other units. */
  void switchUnits() {
    document.unitsProperty().set(document.units() == UnitSystem.US ? UnitSystem.SI : UnitSystem.US);
  }

  /** Shows the other theme, from now on. */
  void switchTheme() {
    choose(dark.get() ? UserState.Theme.LIGHT : UserState.Theme.DARK);
  }

  /** Shows everything in another size, from the next start on. */
  void choose(UserState.Size size) {
    userFolder.remember(state -> state.withSize(size));
    notices.tell("size", "Everything is shown in this size from the next start of Dawngauge on.");
  }

  /** Shows a theme from now on. */
  void choose(UserState.Theme theme) {
    userFolder.remember(state -> state.withTheme(theme));
    dark.set(theme.dark(systemDark));
  }

  /** Starts a new trip on the first page, after asking about the one before. */
  void startNew() {
    if (files.mayLeave()) {
      showFirst();
    }
  }

  /** Goes on with the next trip of this rig; what the review found goes along. */
  void startNext() {
    if (files.mayLeave()) {
      document.recover(earlier.next(), Optional.empty());
      showRoute();
      notices.tell(
          "next",
          "The rig came along with its gauges, heat factors and the leaks that its readings told of."
              + " Name the trip, type departure and stops; weigh it, look at the tires, and read them"
              + " cold before the start.");
    }
  }

  /** Shows the first page; the trip stays until that one's is taken. */
  void showFirst() {
    FirstStartView first =
        new FirstStartView(
            planner,
            document.unitsProperty(),
            LocalDate.now(userFolder.clock()),
            trip -> {
              document.recover(trip, Optional.empty());
              showAgain();
            },
            button("Open a trip…", files::open),
            button("An empty starter instead", this::starter));
    pages.close(first);
  }

  private void starter() {
    planner
        .store()
        .starterTrip()
        .value()
        .ifPresent(
            trip -> {
              document.replace(trip, Optional.empty());
              showAgain();
            });
  }

  /** Leaves the first page. */
  private void showAgain() {
    pages.open();
    showCrew();
  }

  /** Opens a file in the place of the trip; where it cannot be read, says why. */
  void open(Path path) {
    files.open(path);
  }

  /** Says what reading the trip's file told that its saving hangs on. */
  void tell(List<Problem> problems) {
    files.tellVersion(problems);
  }

  /** Saves; says what keeps it from being saved, or from being opened again. */
  boolean saveTo(Path path) {
    return files.saveTo(path);
  }

  /** Ends, after asking about what is not saved. */
  void quit() {
    if (files.mayLeave()) {
      ended();
      stage.close();
    }
  }

  /** Opens cautions, keys and words. */
  void help() {
    HelpWindow window = help;
    if (window == null) {
      window = new HelpWindow(stage);
      help = window;
    }
    window.open();
  }

  private static void acceptFiles(DragEvent event) {
    if (event.getDragboard().hasFiles()) {
      event.acceptTransferModes(TransferMode.COPY);
    }
    event.consume();
  }

  private void dropped(DragEvent event) {
    event.setDropCompleted(dropped(event.getDragboard().getFiles()));
    event.consume();
  }

  /** Opens what was dropped on the window; one file at a time. */
  boolean dropped(List<File> dropped) {
    if (dropped.size() != 1) {
      notices.tell("drop", "Drop one trip file at a time; these were " + dropped.size() + ".");
      return false;
    }
    Path file = dropped.get(0).toPath();
    if (TrackFiles.takes(file)) {
      tracks.take(file);
    } else if (TableFiles.takes(file)) {
      tables.take(file);
    } else if (PhoneFiles.takes(file)) {
      phone.take(file);
    } else if (files.mayLeave()) {
      open(file);
    }
    return true;
  }
}
