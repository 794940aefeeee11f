package dawngauge.ui;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import dawngauge.ledger.Ledger;
import dawngauge.planner.Planner;
import dawngauge.problem.Problem;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.RouteEdits;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.TripDocument;
import dawngauge.ui.rig.RigView;
import dawngauge.ui.route.RouteView;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.application.Application;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Scene;
import javafx.scene.control.Alert;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.Toggle;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.stage.Stage;

/** The planner's one window. */
public final class PlannerWindow {

  private static final double WIDTH = 1280;
  private static final double HEIGHT = 820;

  private final Stage stage;
  private final Planner planner;
  private final TripDocument document;
  private final RouteView route;
  private final RigView rig;
  private final BorderPane root;
  private final ToggleGroup places = new ToggleGroup();
  private final ToggleButton routeButton = place("Route");
  private final ToggleButton rigButton = place("Rig");
  private final BooleanProperty dark = new SimpleBooleanProperty(false);
  private final Label notice = new Label();

  /**
   * Fills a stage with the planner.
   *
   * @param stage the stage
   * @param planner the use cases
   * @param document the trip to show
   */
  public PlannerWindow(Stage stage, Planner planner, TripDocument document) {
    this.stage = stage;
    this.planner = planner;
    this.document = document;
    this.route = new RouteView(document, dark);
    this.rig = new RigView(document, planner);
    this.root = new BorderPane(route);
    places.selectedToggleProperty().addListener(change -> showPlace());
    places.selectToggle(routeButton);
    notice.getStyleClass().add("notice");
    notice.setWrapText(true);
    notice.managedProperty().bind(notice.visibleProperty());
    notice.setVisible(false);
    Label caution = new Label(Ledger.CAUTIONS.get(0) + " " + Ledger.CAUTIONS.get(1));
    caution.getStyleClass().add("caution");
    caution.setWrapText(true);
    root.setTop(new VBox(menus(), head(), notice));
    root.setBottom(caution);
    Scene scene = new Scene(root, WIDTH, HEIGHT);
    var styles = PlannerWindow.class.getResource("planner.css");
    if (styles != null) {
      scene.getStylesheets().add(styles.toExternalForm());
    }
    root.getStyleClass().add("planner");
    Tasks.compute(() -> planner.places("a", null, 1), places -> {});
    dark.addListener(change -> theme(root));
    theme(root);
    scene.setOnDragOver(PlannerWindow::acceptFiles);
    scene.setOnDragDropped(this::dropped);
    stage
        .titleProperty()
        .bind(
            Bindings.createStringBinding(
                this::title,
                document.plannedProperty(),
                document.dirtyProperty(),
                document.fileProperty()));
    stage.setMinWidth(760);
    stage.setMinHeight(480);
    stage.setScene(scene);
    stage.setOnCloseRequest(
        event -> {
          if (!mayLeave()) {
            event.consume();
          }
        });
  }

  private String title() {
    String name = document.fileProperty().get().map(PlannerWindow::name).orElse("not saved");
    return (document.dirtyProperty().get() ? "• " : "")
        + document.trip().name()
        + " ("
        + name
        + ") – Dawngauge";
  }

  private static String name(Path path) {
    Path last = path.getFileName();
    return last == null ? path.toString() : last.toString();
  }

  private void theme(BorderPane root) {
    Application.setUserAgentStylesheet(
        (dark.get() ? new PrimerDark() : new PrimerLight()).getUserAgentStylesheet());
    root.getStyleClass().removeAll("light", "dark");
    root.getStyleClass().add(dark.get() ? "dark" : "light");
  }

  private ToggleButton place(String name) {
    ToggleButton button = new ToggleButton(name);
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setToggleGroup(places);
    return button;
  }

  /** Shows the place whose button is pressed; one of them always is. */
  private void showPlace() {
    Toggle pressed = places.getSelectedToggle();
    if (pressed == null) {
      places.selectToggle(root.getCenter() == rig ? rigButton : routeButton);
    } else {
      root.setCenter(pressed == rigButton ? rig : route);
    }
  }

  private HBox head() {
    Label name = new Label();
    name.getStyleClass().add("trip-name");
    name.textProperty()
        .bind(
            Bindings.createStringBinding(() -> document.trip().name(), document.plannedProperty()));
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    Button undo = button("Undo", document::undo);
    undo.disableProperty().bind(document.undoableProperty().not());
    Button redo = button("Redo", document::redo);
    redo.disableProperty().bind(document.redoableProperty().not());
    Button units = button("", this::switchUnits);
    units
        .textProperty()
        .bind(
            Bindings.createStringBinding(
                () ->
                    document.units() == UnitSystem.US
                        ? "psi, °F, mi → bar, °C, km"
                        : "bar, °C, km → psi, °F, mi",
                document.unitsProperty()));
    Button theme = button("", () -> dark.set(!dark.get()));
    theme
        .textProperty()
        .bind(Bindings.createStringBinding(() -> dark.get() ? "Light" : "Dark", dark));
    HBox head = new HBox(8, name, routeButton, rigButton, gap, undo, redo, units, theme);
    head.getStyleClass().add("head");
    return head;
  }

  private static Button button(String text, Runnable action) {
    Button button = new Button(text);
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(event -> action.run());
    return button;
  }

  private void switchUnits() {
    document.unitsProperty().set(document.units() == UnitSystem.US ? UnitSystem.SI : UnitSystem.US);
  }

  private MenuBar menus() {
    Menu file =
        new Menu(
            "File",
            null,
            item("New from starter", "Shortcut+N", this::startNew),
            item("Open…", "Shortcut+O", this::open),
            new SeparatorMenuItem(),
            item("Save", "Shortcut+S", this::save),
            item("Save as…", "Shortcut+Shift+S", this::saveAs),
            new SeparatorMenuItem(),
            item("Quit", "Shortcut+Q", this::quit));
    MenuItem undo = item("Undo", "Shortcut+Z", document::undo);
    undo.disableProperty().bind(document.undoableProperty().not());
    MenuItem redo = item("Redo", "Shortcut+Shift+Z", document::redo);
    redo.disableProperty().bind(document.redoableProperty().not());
    Menu edit =
        new Menu(
            "Edit",
            null,
            undo,
            redo,
            new SeparatorMenuItem(),
            item("Add a stop at the end", "Shortcut+E", route::append),
            item(
                "Reverse the route", "", () -> document.edit(RouteEdits.reverse(document.trip()))));
    Menu view =
        new Menu(
            "View",
            null,
            item("Route", "Shortcut+1", () -> places.selectToggle(routeButton)),
            item("Rig", "Shortcut+2", () -> places.selectToggle(rigButton)),
            item("What if…", "Shortcut+3", this::askWhatIf),
            new SeparatorMenuItem(),
            item("Switch units", "Shortcut+U", this::switchUnits),
            item("Switch light and dark", "Shortcut+D", () -> dark.set(!dark.get())));
    Menu help =
        new Menu(
            "Help",
            null,
            item("Cautions", "F1", this::cautions),
            item("About Dawngauge", "", this::about));
    return new MenuBar(file, edit, view, help);
  }

  private void askWhatIf() {
    places.selectToggle(routeButton);
    route.askWhatIf(true);
  }

  private static MenuItem item(String text, String keys, Runnable action) {
    MenuItem item = new MenuItem(text);
    if (!keys.isEmpty()) {
      item.setAccelerator(KeyCombination.keyCombination(keys));
    }
    item.setOnAction(event -> action.run());
    return item;
  }

  private void startNew() {
    if (mayLeave()) {
      planner.starterTrip().value().ifPresent(trip -> document.replace(trip, Optional.empty()));
    }
  }

  private void open() {
    File chosen = chooser("Open a trip").showOpenDialog(stage);
    if (chosen != null && mayLeave()) {
      open(chosen.toPath());
    }
  }

  /** Opens a file in the place of the trip; where it cannot be read, says why. */
  void open(Path path) {
    tell(document.open(path, false), path);
  }

  private boolean save() {
    Optional<Path> path = document.fileProperty().get();
    return path.isPresent() ? saveTo(path.get()) : saveAs();
  }

  private boolean saveAs() {
    FileChooser chooser = chooser("Save the trip");
    chooser.setInitialFileName("trip.dawngauge");
    File chosen = chooser.showSaveDialog(stage);
    return chosen != null && saveTo(chosen.toPath());
  }

  /** Saves; says what keeps it from being saved, or from being opened again. */
  boolean saveTo(Path path) {
    List<Problem> problems = document.save(path);
    tell(problems, path);
    return problems.isEmpty();
  }

  private static FileChooser chooser(String title) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(title);
    chooser
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter("Dawngauge trips", "*.dawngauge"));
    return chooser;
  }

  private void quit() {
    if (mayLeave()) {
      stage.close();
    }
  }

  /** Asks before unsaved edits are lost. */
  private boolean mayLeave() {
    if (!document.dirtyProperty().get()) {
      return true;
    }
    ButtonType save = new ButtonType("Save", ButtonBar.ButtonData.YES);
    ButtonType drop = new ButtonType("Do not save", ButtonBar.ButtonData.NO);
    Alert alert =
        new Alert(
            Alert.AlertType.CONFIRMATION,
            "“" + document.trip().name() + "” has edits that are not saved.",
            save,
            drop,
            ButtonType.CANCEL);
    alert.initOwner(stage);
    alert.setHeaderText(null);
    ButtonType answer = alert.showAndWait().orElse(ButtonType.CANCEL);
    return answer == drop || (answer == save && save());
  }

  private void tell(List<Problem> problems, Path path) {
    notice.setVisible(!problems.isEmpty());
    notice.setText(
        problems.isEmpty()
            ? ""
            : name(path)
                + ": "
                + String.join("\n", problems.stream().map(Problem::message).toList()));
  }

  private void cautions() {
    inform("Cautions", String.join("\n\n", Ledger.CAUTIONS));
  }

  private void about() {
    inform(
        "About Dawngauge",
        "Dawngauge 0.1.0 forecasts tire pressure and load margin along a haul.\n\n"
            + "Places: GeoNames, CC BY 4.0, geonames.org.\n\n"
            + "Built on OpenJFX (GPL v2 with Classpath Exception), AtlantaFX (MIT), Jackson and"
            + " picocli and Hipparchus and commons-suncalc (Apache 2.0).\n\n"
            + Ledger.CAUTIONS.get(0));
  }

  private void inform(String title, String text) {
    Alert alert = new Alert(Alert.AlertType.INFORMATION, text, ButtonType.CLOSE);
    alert.initOwner(stage);
    alert.setTitle(title);
    alert.setHeaderText(title);
    alert.getDialogPane().setPrefWidth(560);
    alert.show();
  }

  private static void acceptFiles(DragEvent event) {
    if (event.getDragboard().hasFiles()) {
      event.acceptTransferModes(TransferMode.COPY);
    }
    event.consume();
  }

  private void dropped(DragEvent event) {
    List<File> files = event.getDragboard().getFiles();
    boolean one = files.size() == 1;
    if (one && mayLeave()) {
      open(files.get(0).toPath());
    }
    event.setDropCompleted(one);
    event.consume();
  }
}
