package dawngauge.ui;

import dawngauge.planner.Plan;
import dawngauge.planner.UserFolder;
import dawngauge.report.CrewSheet;
import dawngauge.report.CsvTable;
import dawngauge.settings.UserState;
import dawngauge.trip.RouteEdits;
import dawngauge.ui.common.TripDocument;
import dawngauge.ui.route.RouteView;
import java.util.function.Supplier;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCombination;

/** The window's menus. */
final class Menus {

  static final String COPY_WRONG = "Copy what went wrong";

  private final PlannerWindow window;
  private final TripDocument document;
  private final RouteView route;
  private final WindowFiles files;
  private final UserFolder userFolder;
  private final KeptRigsMenu rigs;
  private final WeatherActions air;
  private final ExportActions papers;
  private final TrackFiles tracks;

  Menus(
      PlannerWindow window,
      TripDocument document,
      RouteView route,
      WindowFiles files,
      UserFolder userFolder,
      KeptRigsMenu rigs,
      WeatherActions air,
      ExportActions papers,
      TrackFiles tracks) {
    this.tracks = tracks;
    this.papers = papers;
    this.air = air;
    this.window = window;
    this.document = document;
    this.route = route;
    this.files = files;
    this.userFolder = userFolder;
    this.rigs = rigs;
  }

  MenuBar bar() {
    return new MenuBar(file(), edit(), view(), rigs.menu(), road(), air(), paper(), help());
  }

  private Menu file() {
    Menu recent = new Menu("Recent");
    Menu file =
        new Menu(
            "File",
            null,
            item("New", "Shortcut+N", window::startNew),
            item("Start the next trip from this one", "", window::startNext),
            item("Open…", "Shortcut+O", files::open),
            recent,
            new SeparatorMenuItem(),
            item("Save", "Shortcut+S", files::save),
            item("Save as…", "Shortcut+Shift+S", files::saveAs),
            new SeparatorMenuItem(),
            item("Take a route from a GPX file…", "Shortcut+G", tracks::take),
            item("Write the route as GPX…", "", tracks::write),
            new SeparatorMenuItem(),
            item("Quit", "Shortcut+Q", window::quit));
    file.setOnShowing(event -> recent(recent));
    recent(recent);
    return file;
  }

  private void recent(Menu menu) {
    menu.getItems().clear();
    for (String name : userFolder.state().recent()) {
      MenuItem item = item(name, "", () -> files.openRecent(name));
      item.setMnemonicParsing(false);
      menu.getItems().add(item);
    }
    menu.setDisable(menu.getItems().isEmpty());
  }

  private Menu edit() {
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
                "Paste a list of places…",
                "Shortcut+L",
                () -> {
                  window.showRoute();
                  route.below().askPlaces();
                }),
            new SeparatorMenuItem(),
            item(
                "Find a stop or tire…",
                "Shortcut+F",
                () -> {
                  window.showRoute();
                  route.askFind();
                }),
            new SeparatorMenuItem(),
            item("Copy the forecast as text", "Shortcut+Shift+C", () -> copy(route.forecastText())),
            item("Copy the forecast as a table", "", () -> copy(table())),
            new SeparatorMenuItem(),
            item(
                "Reverse the route", "", () -> document.edit(RouteEdits.reverse(document.trip()))));
    edit.setOnShowing(
        event -> {
          undo.setText(UndoKeys.undoing(document));
          redo.setText(UndoKeys.redoing(document));
        });
    return edit;
  }

  private String table() {
    Plan planned = document.planned();
    return CsvTable.tabbed(planned.trip(), planned.advice());
  }

  static void copy(String text) {
    ClipboardContent content = new ClipboardContent();
    content.putString(text);
    Clipboard.getSystemClipboard().setContent(content);
  }

  private Menu view() {
    return new Menu(
        "View",
        null,
        item("Route", "Shortcut+1", window::showRoute),
        item("Rig", "Shortcut+2", window::showRig),
        item("Readings", "Shortcut+5", window::showReadings),
        item("Review", "Shortcut+6", window::showReview),
        item(
            "What if…",
            "Shortcut+3",
            () -> {
              window.showRoute();
              route.below().askWhatIf();
            }),
        item(
            "Where to set the tires",
            "Shortcut+4",
            () -> {
              window.showRoute();
              route.below().askPlan();
            }),
        item(
            "Map",
            "Shortcut+M",
            () -> {
              window.showRoute();
              route.askMap();
            }),
        item(
            "Forecast as text",
            "Shortcut+T",
            () -> {
              window.showRoute();
              route.askText(!route.isText());
            }),
        new SeparatorMenuItem(),
        item("Switch units: psi, °F, mi or bar, °C, km", "Shortcut+U", window::switchUnits),
        item("Switch light and dark", "Shortcut+D", window::switchTheme),
        themes(),
        sizes());
  }

  private Menu road() {
    return new Menu(
        "Road",
        null,
        item("Arrived now", "F7", window::arrivedNow),
        item("Left now", "F8", window::leftNow),
        item("Note readings", "F9", window::showReadings),
        item("A tire is flat", "F4", window::showBreakdown),
        new SeparatorMenuItem(),
        item("Page for the phone…", "", () -> window.phone().write()),
        item("Take in what the phone sent back…", "", () -> window.phone().take()),
        item("Paste what the phone sent back", "", () -> window.phone().paste()),
        new SeparatorMenuItem(),
        item("Take readings from a table (CSV)…", "", window::takeTable));
  }

  private Menu sizes() {
    Menu menu = new Menu("Size");
    ToggleGroup group = new ToggleGroup();
    for (UserState.Size size : UserState.Size.values()) {
      String name = size.percent() == 0 ? "As the system" : size.percent() + " %";
      choice(menu, group, name, size, () -> window.choose(size));
    }
    ticked(menu, () -> userFolder.state().size());
    return menu;
  }

  private static void choice(
      Menu menu, ToggleGroup group, String name, Object value, Runnable chosen) {
    RadioMenuItem item = new RadioMenuItem(name);
    item.setToggleGroup(group);
    item.setUserData(value);
    item.setOnAction(event -> chosen.run());
    menu.getItems().add(item);
  }

  /** Keeps the tick of a menu of choices where it belongs. */
  private static void ticked(Menu menu, Supplier<Object> now) {
    Runnable tick =
        () ->
            menu.getItems()
                .forEach(
                    item ->
                        ((RadioMenuItem) item).setSelected(now.get().equals(item.getUserData())));
    tick.run();
    menu.setOnShowing(event -> tick.run());
  }

  private Menu themes() {
    Menu menu = new Menu("Theme");
    ToggleGroup group = new ToggleGroup();
    for (UserState.Theme theme : UserState.Theme.values()) {
      String name =
          switch (theme) {
            case SYSTEM -> "As the system";
            case LIGHT -> "Light";
            case DARK -> "Dark";
          };
      choice(menu, group, name, theme, () -> window.choose(theme));
    }
    ticked(menu, () -> userFolder.state().theme());
    return menu;
  }

  private Menu air() {
    MenuItem fill = item(WeatherActions.GET, "Shortcut+R", air::fill);
    fill.disableProperty().bind(air.askingProperty());
    MenuItem withdraw =
        item(
            "Withdraw consent",
            "",
            () -> {
              route.offline();
              air.withdraw();
            });
    Menu menu =
        new Menu(
            "Weather",
            null,
            fill,
            item("Typical temperatures for the dates alone", "", air::typical),
            new SeparatorMenuItem(),
            item("What is sent where…", "", air::askAgain),
            withdraw);
    menu.setOnShowing(event -> withdraw.setDisable(!air.agreedToAny()));
    return menu;
  }

  private Menu paper() {
    CrewSheet.Paper letter = CrewSheet.Paper.LETTER;
    CrewSheet.Paper a4 = CrewSheet.Paper.A4;
    return new Menu(
        "Paper",
        null,
        item("Crew sheet, Letter…", "Shortcut+P", () -> sheet(letter, false)),
        item("Crew sheet, Letter, large type…", "", () -> sheet(letter, true)),
        item("Crew sheet, A4…", "", () -> sheet(a4, false)),
        item("Crew sheet, A4, large type…", "", () -> sheet(a4, true)),
        new SeparatorMenuItem(),
        item(
            "Print stops and trace…",
            "Shortcut+Shift+P",
            () -> {
              window.showRoute();
              papers.print(route);
            }),
        item("Reminders as a calendar…", "", papers::calendar),
        new SeparatorMenuItem(),
        item("Review of the trip, Letter…", "", () -> papers.review(letter, window.measured())),
        item("Review of the trip, A4…", "", () -> papers.review(a4, window.measured())),
        new SeparatorMenuItem(),
        item("Dealer's card, Letter…", "", () -> papers.dealerCard(letter)),
        item("Dealer's card, A4…", "", () -> papers.dealerCard(a4)),
        item("Expected weights, Letter…", "", () -> papers.weights(letter)),
        item("Expected weights, A4…", "", () -> papers.weights(a4)));
  }

  private void sheet(CrewSheet.Paper paper, boolean large) {
    papers.sheet(new CrewSheet.Options(paper, large));
  }

  private Menu help() {
    MenuItem wrong = item(COPY_WRONG, "", window::copyWhatWentWrong);
    Menu help =
        new Menu(
            "Help",
            null,
            item("Cautions, keys and words", "F1", window::help),
            wrong,
            item(AboutDialog.TITLE, "", AboutDialog::show));
    help.setOnShowing(
        event -> {
          boolean nothing = userFolder.failures().text().isEmpty();
          wrong.setText(COPY_WRONG + (nothing ? ": nothing did so far" : ""));
          wrong.setDisable(nothing);
        });
    return help;
  }

  private static MenuItem item(String text, String keys, Runnable action) {
    MenuItem item = new MenuItem(text);
    if (!keys.isEmpty()) {
      item.setAccelerator(KeyCombination.keyCombination(keys));
    }
    item.setOnAction(event -> action.run());
    return item;
  }
}
