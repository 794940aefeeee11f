package dawngauge.ui.route;

import dawngauge.advice.Advice;
import dawngauge.geo.Coordinate;
import dawngauge.ledger.ForecastPage;
import dawngauge.ledger.GoLines;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.StopGrid;
import dawngauge.ledger.TireColumn;
import dawngauge.ledger.Trace;
import dawngauge.ledger.Verdict;
import dawngauge.planner.Plan;
import dawngauge.planner.TileSource;
import dawngauge.report.PageText;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import dawngauge.ui.common.FirstField;
import dawngauge.ui.common.Palette;
import dawngauge.ui.common.TripDocument;
import dawngauge.ui.map.MapSheet;
import java.util.HashSet;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.beans.property.BooleanProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * The route at a glance: stops and tires as a grid with the trace of one tire, and beside it the
 * chosen stop with what to do there and its fields. In a narrow window the stop comes when it is
 * asked for. The map takes the place of trace and stop.
 */
public final class RouteView extends BorderPane implements FirstField.Named {

  /** Lower than this the key below the grid is left out. */
  private static final double ROOM_FOR_KEY = 420;

  private final TripDocument document;
  private final BooleanProperty dark;
  private final StopActions actions;
  private final StopDetails side;
  private final TracePane trace;
  private final StopGridPane grid;
  private final FindBar find;
  private final GridKey key = new GridKey();
  private final VerdictBar verdict = new VerdictBar(this::walk, this::display);
  private final BorderPane left = new BorderPane();
  private final RouteSpace space;
  private final RouteMap mapHands;
  private final MapSheet map;
  private final Label go = new Label();
  private final MissingPane missing = new MissingPane();
  private final TextArea text = new TextArea();
  private final BelowRoute below;
  private final Set<String> unfolded = new HashSet<>(); // axles
  private StopGrid shown;
  private @Nullable WheelPosition position;

  /** The tire with least margin, once it was looked for. */
  private @Nullable WheelPosition tightest;

  private @Nullable Advice other;
  private Supplier<Optional<TileSource>> onlineMap = Optional::empty;
  private int chosen;

  /** The route of a document. */
  public RouteView(TripDocument document, BooleanProperty dark) {
    this.document = document;
    this.dark = dark;
    this.actions = new StopActions(document, row -> chosen = row);
    this.side = new StopDetails(document, this);
    this.trace = new TracePane(this::explain);
    this.shown = made(StopGrid.Display.READS);
    this.grid = new StopGridPane(shown, new RouteHands(document, actions, this), trace);
    this.find = new FindBar(grid, this::endFind);
    this.mapHands = new RouteMap(document, grid::choose, this::insertAt, () -> onlineMap.get());
    this.map = new MapSheet(mapHands, mapHands.picture(0, dark.get()));
    this.space = new RouteSpace(left, side, map);
    this.below =
        new BelowRoute(document, () -> chosen, this::beside, this::setBottom, grid::requestFocus);
    go.getStyleClass().add("go-lines");
    go.setWrapText(true);
    go.managedProperty().bind(go.visibleProperty());
    key.managedProperty().bind(key.visibleProperty());
    key.visibleProperty().bind(left.heightProperty().greaterThan(ROOM_FOR_KEY));
    text.setEditable(false);
    text.getStyleClass().add("forecast-text");
    text.setAccessibleText("The forecast as text");
    left.setTop(find);
    left.setCenter(grid);
    left.setBottom(key);
    left.getStyleClass().add("page");
    setTop(new VBox(verdict, go, missing));
    setCenter(space);
    verdict.stopShown().addListener(change -> arrange());
    verdict.mapShown().addListener(change -> arrange());
    map.wideProperty().addListener(change -> arrange());
    widthProperty().addListener(change -> arrange());
    addEventHandler(KeyEvent.KEY_PRESSED, this::escaped);
    document.shownProperty().addListener(change -> refresh());
    document.unitsProperty().addListener(change -> refresh());
    dark.addListener(change -> color());
    color();
    refresh();
  }

  /** Escape takes away what came last: the stop in a narrow window, the text, the dimming. */
  private void escaped(KeyEvent event) {
    if (event.getCode() != KeyCode.ESCAPE) {
      return;
    }
    if (space.narrow() && verdict.stopShown().get()) {
      verdict.stopShown().set(false);
      grid.requestFocus();
      event.consume();
    } else if (left.getCenter() == text) {
      askText(false);
      event.consume();
    } else if (verdict.rest()) {
      grid.brighten(Set.of());
      event.consume();
    }
  }

  /** Shows grid, stop and map as they are wanted and as there is room. */
  private void arrange() {
    boolean mapped = verdict.mapShown().get();
    boolean wasMapped = map.getScene() != null;
    space.arrange(getWidth(), verdict.stopShown().get(), mapped, map.wideProperty().get());
    verdict.narrow(space.narrow() && !mapped);
    grid.showTrace(!mapped);
    if (mapped && !wasMapped) {
      map.show(mapHands.picture(chosen, dark.get()));
      map.open();
    }
    grid.reveal();
  }

  /** Shows the forecast as text, in the place of the grid, or the grid again. */
  public void askText(boolean wanted) {
    if (wanted) {
      text.setText(forecastText());
      text.positionCaret(0);
    }
    left.setCenter(wanted ? text : grid);
    (wanted ? text : grid).requestFocus();
  }

  @Override
  public Node firstField() {
    return isText() ? text : grid;
  }

  /** Looks for stops and tires. */
  public void askFind() {
    if (isText()) {
      askText(false);
    }
    verdict.rest();
    find.open(() -> shown);
  }

  private void endFind() {
    grid.brighten(Set.of());
    grid.requestFocus();
  }

  /** The forecast as text, with its reasons. */
  public String forecastText() {
    document.settle();
    return PageText.of(ForecastPage.of(shown.ledger()), true);
  }

  /** Whether the forecast is shown as text. */
  public boolean isText() {
    return left.getCenter() == text;
  }

  private void explain(String heading, List<dawngauge.explain.Step> steps) {
    verdict.stopShown().set(true);
    side.explain(heading, steps);
  }

  private void walk(Set<Integer> rows, int row) {
    grid.brighten(rows);
    if (row >= 0) {
      grid.choose(row);
    }
  }

  private void display(StopGrid.Display display) {
    Set<Integer> bright = grid.brightRows();
    shown = shown.shown(display);
    grid.show(shown, chosen, traced(shown));
    grid.brighten(bright);
  }

  /** The column of the tire whose trace is shown; -1 where nothing is known. */
  private int traced(StopGrid next) {
    WheelPosition wanted = wanted().orElse(null);
    for (int i = 0; i < next.columns().size() && wanted != null; i++) {
      if (next.columns().get(i).positions().contains(wanted)) {
        return i;
      }
    }
    return -1;
  }

  /** The tire whose trace is shown: the one that was asked for, else the one with least margin. */
  private Optional<WheelPosition> wanted() {
    Advice advice = document.shown().advice();
    if (advice == null || advice.tracks().isEmpty()) {
      return Optional.empty();
    }
    WheelPosition asked = position;
    if (asked != null && advice.tracks().containsKey(asked)) {
      return Optional.of(asked);
    }
    WheelPosition known = tightest;
    if (known == null) {
      known = Trace.tightest(advice);
      tightest = known;
    }
    return Optional.of(known);
  }

  /** Shows the trace of a column. */
  void trace(TireColumn column) {
    Advice advice = document.shown().advice();
    if (advice != null) {
      position = Trace.tightest(advice, column.positions()).orElse(null);
      showTrace();
    }
  }

  private void showTrace() {
    Advice advice = document.shown().advice();
    WheelPosition wanted = wanted().orElse(null);
    if (advice == null || wanted == null) {
      trace.clear();
      return;
    }
    String name = document.trip().rig().shortForm(wanted);
    trace.show(Trace.of(advice, wanted, document.units()), advice, document.units(), name);
    grid.trace(traced(shown));
  }

  /** Gives the tires of an axle a column each, or one together. */
  void unfold(String axle, boolean each) {
    if (each ? unfolded.add(axle) : unfolded.remove(axle)) {
      refresh();
    }
  }

  /**
   * Stops, what to do there and trace on paper.
   *
   * @param width what can be printed on, points
   * @param height of the same
   */
  public LedgerPrint printed(double width, double height) {
    document.settle();
    return new LedgerPrint(
        document.shown(), document.units(), wanted().orElse(null), width, height);
  }

  /** Shows or folds away the map. */
  public void askMap() {
    verdict.mapShown().set(!verdict.mapShown().get());
  }

  /** Ends what paints beside the window's own thread. */
  public void end() {
    map.close();
  }

  /** Who is asked for an online map, and asks the user first. */
  public void onOnlineMap(Supplier<Optional<TileSource>> asked) {
    onlineMap = asked;
  }

  /** Shows the program's own map. */
  public void offline() {
    map.offline();
  }

  /** Puts a stop behind the chosen one, at a place on the map. */
  public void insertAt(Coordinate at) {
    actions.insertAt(chosen, at);
    grid.reveal();
  }

  /** What is asked below the route. */
  public BelowRoute below() {
    return below;
  }

  /** The fields of the chosen stop; they keep what is half typed at the others. */
  public StopEditor fields() {
    return side.editor();
  }

  /** Chooses a stop, as if it had been pressed. */
  public void choose(int row) {
    grid.choose(row);
  }

  /** A row was chosen. */
  void chose(int row) {
    chosen = row;
    below.chose(row);
    showSide();
    showMap();
  }

  /** Shows the fields of the chosen stop. */
  void open() {
    verdict.stopShown().set(true);
    side.edit();
  }

  /** Puts a stop behind one and shows its fields. */
  void insertAfter(int index) {
    actions.insertAfter(index);
    grid.reveal();
    Platform.runLater(this::open);
  }

  /** Puts a stop behind the chosen one. */
  void insert() {
    insertAfter(chosen);
  }

  /** Puts stops together before another. */
  void move(NavigableSet<Integer> rows, int before) {
    if (actions.move(rows, before)) {
      grid.reveal();
    }
  }

  /** Adds a stop behind the last one. */
  public void append() {
    insertAfter(document.trip().route().stops().size() - 1);
  }

  /** Puts a copy of the taken stops behind them. */
  void duplicate() {
    actions.duplicate(taken());
  }

  /** Moves the taken stops up or down. */
  void shift(int by) {
    actions.shift(taken(), by);
    grid.reveal();
  }

  /** Removes the taken stops. */
  void remove() {
    actions.remove(taken());
  }

  /** What is taken now; it changes while the stops do. */
  private NavigableSet<Integer> taken() {
    return new TreeSet<>(grid.taken());
  }

  private void color() {
    Palette palette = dark.get() ? Palette.DARK : Palette.LIGHT;
    grid.color(palette);
    trace.color(palette);
    key.color(palette);
    showMap();
  }

  /** The grid of the trip as it is now. */
  private StopGrid made(StopGrid.Display display) {
    Plan planned = document.shown();
    Trip trip = planned.trip();
    Advice advice = planned.advice();
    Ledger ledger =
        Ledger.of(trip, advice, planned.problems(), planned.fitness(), document.units(), null);
    StopGrid plain = StopGrid.of(trip, ledger, advice, display, unfolded);
    Advice beside = other;
    return beside != null && beside.stops().size() == trip.route().stops().size()
        ? plain.beside(beside)
        : plain;
  }

  /** Shows what another forecast would change in the cells; null for none. */
  private void beside(@Nullable Advice changed) {
    if (other != null || changed != null) {
      other = changed;
      Set<Integer> bright = grid.brightRows();
      shown = made(shown.display());
      grid.show(shown, chosen, traced(shown));
      grid.brighten(bright);
    }
  }

  private void refresh() {
    tightest = null;
    shown = made(shown.display());
    Ledger ledger = shown.ledger();
    verdict.show(Verdict.of(document.shown().trip(), ledger, document.shown().advice()), ledger);
    List<String> against = GoLines.against(ledger.go());
    go.setText(String.join("\n", GoLines.few(against)));
    go.setVisible(!against.isEmpty());
    missing.show(ledger.problems());
    chosen = Math.max(0, Math.min(chosen, shown.rows() - 1));
    grid.show(shown, chosen, traced(shown));
    showTrace();
    side.ledger(ledger);
    if (isText()) {
      askText(true);
    }
    showSide();
    showMap();
  }

  private void showMap() {
    if (verdict.mapShown().get()) {
      map.show(mapHands.picture(chosen, dark.get()));
    }
  }

  private void showSide() {
    side.show(chosen, grid.taken());
  }
}
