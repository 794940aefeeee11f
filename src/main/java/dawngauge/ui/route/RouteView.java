package dawngauge.ui.route;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.geo.Coordinate;
import dawngauge.geo.Spot;
import dawngauge.geo.TrackLine;
import dawngauge.ledger.GoLines;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.Trace;
import dawngauge.planner.PlannedTrip;
import dawngauge.planner.TileSource;
import dawngauge.problem.Problem;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.Air;
import dawngauge.trip.GroupEdits;
import dawngauge.trip.Remarks;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.StopEdits;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import dawngauge.ui.common.Palette;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import dawngauge.ui.map.MapHands;
import dawngauge.ui.map.MapPicture;
import dawngauge.ui.map.MapSheet;
import dawngauge.ui.map.MapStop;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.beans.property.BooleanProperty;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * The route: ledger and trace, and beside them the chosen stop with what to do there, its tires and
 * fields. Where the window is too narrow for all three, trace or stop gives way.
 */
public final class RouteView extends BorderPane implements LedgerPane.Hands, MapHands {

  /** Narrower than this only one of trace and stop stands beside the ledger. */
  private static final double ROOM_FOR_BOTH = 1180;

  /** Narrower than this only one of ledger and stop or map is seen. */
  private static final double ROOM_FOR_TWO = 780;

  private static final double LEDGER_MIN = 474;

  private final TripDocument document;
  private final BooleanProperty dark;
  private final LedgerPane ledger = new LedgerPane(this);
  private final LedgerHead head = new LedgerHead();
  private final StopSide side;
  private final TracePane trace;
  private final ScrollPane scroll;
  private final SplitPane split = new SplitPane();
  private final SplitPane column = new SplitPane();
  private final MapSheet map;
  private final BorderPane left = new BorderPane();
  private final VBox top = new VBox();
  private final Label summary = new Label();
  private final Label go = new Label();
  private final MissingPane missing = new MissingPane();
  private final WhatIfPane whatIf;
  private final PlaceListPane placeList;
  private final PlanPane plan;
  private final TrackPane track;
  private @Nullable WheelPosition position;
  private Supplier<Optional<TileSource>> onlineMap = Optional::empty;
  private int chosen;

  /** The route of a document. */
  public RouteView(TripDocument document, BooleanProperty dark) {
    this.document = document;
    this.dark = dark;
    this.side = new StopSide(document, this);
    this.trace = new TracePane(side::explain);
    this.map = new MapSheet(this, picture());
    this.whatIf = new WhatIfPane(document, () -> askWhatIf(false));
    whatIf.setVisible(false);
    this.track = new TrackPane(document, () -> showBelow(null));
    this.plan = new PlanPane(document, () -> askPlan(false));
    plan.setVisible(false);
    this.placeList = new PlaceListPane(document, () -> chosen, () -> askPlaces(false));
    summary.getStyleClass().add("summary");
    summary.setWrapText(true);
    go.getStyleClass().add("go-lines");
    go.setWrapText(true);
    go.managedProperty().bind(go.visibleProperty());
    top.getChildren().addAll(summary, go, missing);
    setTop(top);
    HBox page = new HBox(ledger, trace);
    HBox.setHgrow(ledger, Priority.ALWAYS);
    HBox.setHgrow(trace, Priority.SOMETIMES);
    ledger.setMinWidth(LEDGER_MIN);
    ledger.setPrefWidth(LEDGER_MIN);
    page.getStyleClass().add("page");
    scroll = new ScrollPane(page);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("page-scroll");
    left.setCenter(scroll);
    left.setTop(head);
    column.setOrientation(Orientation.VERTICAL);
    column.setMinWidth(300);
    column.getItems().add(side);
    split.getItems().addAll(left, column);
    split.setDividerPositions(0.6);
    setCenter(split);
    head.follow(ledger, trace);
    trace.visibleProperty().bind(head.traceShown());
    trace.managedProperty().bind(head.traceShown());
    head.traceShown().addListener(change -> arrange(true));
    head.stopShown().addListener(change -> arrange(false));
    head.mapShown().addListener(change -> arrange(false));
    map.wideProperty().addListener(change -> arrange(false));
    widthProperty().addListener(change -> arrange(true));
    head.onPosition(
        wanted -> {
          position = wanted;
          refresh();
        });
    ledger.layoutBoundsProperty().addListener(change -> Platform.runLater(this::look));
    scroll.vvalueProperty().addListener(change -> look());
    scroll.viewportBoundsProperty().addListener(change -> look());
    document.plannedProperty().addListener(change -> refresh());
    document.unitsProperty().addListener(change -> refresh());
    dark.addListener(change -> refresh());
    refresh();
  }

  /** Shows trace and stop as they are wanted and as there is room. */
  private void arrange(boolean traceLast) {
    if (getWidth() > 0) {
      head.room(getWidth() >= ROOM_FOR_BOTH, traceLast);
    }
    boolean mapped = head.mapShown().get();
    boolean wide = mapped && map.wideProperty().get();
    boolean wasMapped = column.getItems().contains(map);
    List<Node> inColumn = new ArrayList<>();
    if (head.stopShown().get() && !wide) {
      inColumn.add(side);
    }
    if (mapped) {
      inColumn.add(map);
    }
    boolean narrow = getWidth() > 0 && getWidth() < ROOM_FOR_TWO;
    lend(narrow);
    List<Node> inPage = new ArrayList<>();
    if (!wide && (!narrow || inColumn.isEmpty())) {
      inPage.add(left);
    }
    if (!inColumn.isEmpty()) {
      inPage.add(column);
    }
    fill(column, inColumn, 0.5);
    fill(split, inPage, head.traceShown().get() ? 0.6 : 0.52);
    if (mapped && !wasMapped) {
      map.show(picture());
      map.open();
    }
    Platform.runLater(this::look);
  }

  /** Puts the buttons that show and fold away above all, where the ledger itself may go. */
  private void lend(boolean away) {
    HBox buttons = head.buttons();
    if (away && !top.getChildren().contains(buttons)) {
      top.getChildren().add(head.lend(true));
    } else if (!away && top.getChildren().remove(buttons)) {
      head.lend(false);
    }
  }

  /** Puts into a pane what it is to hold; what is there already is not touched. */
  private static void fill(SplitPane pane, List<Node> wanted, double divider) {
    if (!pane.getItems().equals(wanted)) {
      pane.getItems().retainAll(wanted);
      for (int i = 0; i < wanted.size(); i++) {
        if (!pane.getItems().contains(wanted.get(i))) {
          pane.getItems().add(i, wanted.get(i));
        }
      }
      pane.setDividerPositions(divider);
      // Laid out anew, it would go by what its contents would like to have.
      Platform.runLater(() -> pane.setDividerPositions(divider));
    }
  }

  /** Tells the trace which part of the page is seen. */
  private void look() {
    trace.see(seenFrom(), scroll.getViewportBounds().getHeight());
  }

  private double seenFrom() {
    double over = scroll.getContent().getLayoutBounds().getHeight() - viewport();
    return Math.max(0, over) * scroll.getVvalue();
  }

  private double viewport() {
    return scroll.getViewportBounds().getHeight();
  }

  /** Scrolls so far that the chosen row is seen whole. */
  private void reveal() {
    List<Region> rows = ledger.stopRows();
    double over = scroll.getContent().getLayoutBounds().getHeight() - viewport();
    if (chosen >= rows.size() || over <= 0) {
      return;
    }
    var bounds = rows.get(chosen).getBoundsInParent();
    double from = seenFrom();
    if (bounds.getMinY() < from) {
      scroll.setVvalue(bounds.getMinY() / over);
    } else if (bounds.getMaxY() > from + viewport()) {
      scroll.setVvalue(Math.min(bounds.getMinY(), bounds.getMaxY() - viewport()) / over);
    }
  }

  /**
   * Ledger and trace on paper, as they are shown.
   *
   * @param width what can be printed on, points
   * @param height of the same
   */
  public LedgerPrint printed(double width, double height) {
    Advice advice = document.planned().advice();
    boolean known = advice != null && !advice.tracks().isEmpty();
    WheelPosition wanted = position;
    if (advice != null && known && (wanted == null || !advice.tracks().containsKey(wanted))) {
      wanted = Trace.tightest(advice);
    }
    return new LedgerPrint(
        document.planned(),
        document.units(),
        known && head.traceShown().get() ? wanted : null,
        width,
        height);
  }

  /** Shows or folds away the map. */
  public void askMap() {
    head.mapShown().set(!head.mapShown().get());
  }

  /** Ends what paints beside the window's own thread. */
  public void end() {
    map.close();
  }

  private MapPicture picture() {
    PlannedTrip planned = document.planned();
    Advice advice = planned.advice();
    List<Stop> stops = planned.trip().route().stops();
    List<MapStop> shown = new ArrayList<>();
    for (int i = 0; i < stops.size(); i++) {
      Coordinate at = stops.get(i).coordinate();
      if (at != null) {
        boolean known = advice != null && i < advice.stops().size();
        Mark mark = known && advice != null ? advice.stops().get(i).mark() : Mark.UNKNOWN;
        shown.add(new MapStop(i, Texts.shortened(stops.get(i).place()), at, mark));
      }
    }
    return new MapPicture(
        shown, chosen, document.units().unitOf(QuantityKind.DISTANCE), dark.get());
  }

  @Override
  public void chooseOnMap(int stop) {
    ledger.choose(stop);
  }

  @Override
  public void moveOnMap(int stop, Coordinate to) {
    Trip trip = document.trip();
    if (stop < trip.route().stops().size()) {
      document.edit(document.planner().movedTo(trip, stop, to));
    }
  }

  @Override
  public Optional<TileSource> onlineMap() {
    return onlineMap.get();
  }

  /** Who is asked for an online map, and asks the user first. */
  public void onOnlineMap(Supplier<Optional<TileSource>> asked) {
    onlineMap = asked;
  }

  /** Shows the program's own map. */
  public void offline() {
    map.offline();
  }

  @Override
  public void addOnMap(Coordinate at) {
    Trip trip = document.trip();
    Spot spot = document.planner().spotAt(at);
    insert(StopEdits.at(newStop(trip, spot.name()), spot));
  }

  /** Shows or folds away another plan under another weather or start. */
  public void askWhatIf(boolean shown) {
    plan.setVisible(false);
    whatIf.setVisible(shown);
    setBottom(shown ? whatIf : null);
    if (shown) {
      whatIf.ask();
    }
  }

  /** Offers the lines of somebody else's file. */
  public void offerTracks(List<TrackLine> lines, List<Problem> leftOut) {
    showBelow(track);
    track.open(lines, leftOut);
  }

  private void showBelow(@Nullable Node page) {
    askWhatIf(false);
    setBottom(page);
    if (page == null) {
      ledger.requestFocus();
    }
  }

  /** Shows or folds away where the tires are to be set. */
  public void askPlan(boolean shown) {
    askWhatIf(false);
    plan.setVisible(shown);
    setBottom(shown ? plan : null);
    if (shown) {
      plan.ask();
    } else {
      ledger.requestFocus();
    }
  }

  /** Shows or folds away the page where a list of places is pasted. */
  public void askPlaces(boolean shown) {
    askWhatIf(false);
    setBottom(shown ? placeList : null);
    if (shown) {
      placeList.open();
    } else {
      ledger.requestFocus();
    }
  }

  @Override
  public void choose(int row, NavigableSet<Integer> taken) {
    chosen = row;
    whatIf.chosen(row);
    showSide();
    reveal();
    showMap();
  }

  @Override
  public void open() {
    head.stopShown().set(true);
    side.edit();
  }

  @Override
  public void insertAfter(int index) {
    Trip trip = document.trip();
    chosen = index;
    insert(newStop(trip, "New stop"));
    Platform.runLater(this::open);
  }

  /** Puts a stop after the chosen one and chooses it. */
  private void insert(Stop stop) {
    Trip trip = document.trip();
    boolean none = trip.route().stops().isEmpty();
    chosen = none ? 0 : chosen + 1;
    Trip grown = RouteEdits.insert(trip, chosen, stop);
    document.edit(stop.coordinate() == null ? grown : document.planner().withoutGaps(grown));
    Platform.runLater(this::reveal);
  }

  private static Stop newStop(Trip trip, String place) {
    return new Stop(
        RouteEdits.freeId(trip, place.toLowerCase(Locale.ROOT)),
        place,
        Stop.Kind.REST,
        null,
        null,
        null,
        Duration.ofMinutes(20),
        null,
        null,
        Air.NONE,
        List.of(),
        Remarks.NONE);
  }

  @Override
  public void move(NavigableSet<Integer> rows, int before) {
    Trip moved = GroupEdits.move(document.trip(), rows, before);
    if (!moved.equals(document.trip())) {
      chosen = Math.max(0, before - rows.headSet(before).size());
      document.edit(moved);
      Platform.runLater(this::reveal);
    }
  }

  @Override
  public void remove(NavigableSet<Integer> rows) {
    Trip rest = GroupEdits.remove(document.trip(), rows);
    chosen = Math.max(0, Math.min(rows.first(), rest.route().stops().size() - 1));
    document.edit(rest);
  }

  /** Adds a stop behind the last one. */
  public void append() {
    insertAfter(document.trip().route().stops().size() - 1);
  }

  /** Puts a copy of the chosen stop behind it. */
  void duplicate() {
    if (!document.trip().route().stops().isEmpty()) {
      NavigableSet<Integer> rows = ledger.taken();
      chosen = rows.last() + 1;
      document.edit(GroupEdits.duplicate(document.trip(), rows));
    }
  }

  /** Moves the taken stops up or down. */
  void shift(int by) {
    NavigableSet<Integer> rows = ledger.taken();
    if (!rows.isEmpty()) {
      move(rows, by < 0 ? rows.first() - 1 : rows.last() + 2);
    }
  }

  /** Removes the taken stops. */
  void remove() {
    if (!ledger.taken().isEmpty()) {
      remove(ledger.taken());
    }
  }

  private void refresh() {
    PlannedTrip planned = document.planned();
    Trip trip = planned.trip();
    Advice advice = planned.advice();
    Ledger shown =
        Ledger.of(trip, advice, planned.problems(), planned.fitness(), document.units(), null);
    summary.setText(shown.summary());
    go.setText(String.join("\n", GoLines.few(shown.go())));
    go.setVisible(!shown.go().isEmpty());
    missing.show(shown.problems());
    chosen = Math.max(0, Math.min(chosen, shown.stops().size() - 1));
    ledger.show(shown, chosen);
    side.ledger(shown);
    List<WheelPosition> positions = trip.rig().positions();
    boolean known = advice != null && !advice.tracks().isEmpty();
    head.known(known);
    Palette palette = dark.get() ? Palette.DARK : Palette.LIGHT;
    head.color(palette);
    if (known && advice != null) {
      WheelPosition wanted =
          position != null && advice.tracks().containsKey(position)
              ? position
              : Trace.tightest(advice);
      head.positions(positions, wanted);
      trace.show(
          Trace.of(advice, wanted, document.units()),
          advice,
          document.units(),
          palette,
          ledger.stopRows());
      Platform.runLater(this::look);
    }
    showSide();
    showMap();
  }

  private void showMap() {
    if (head.mapShown().get()) {
      map.show(picture());
    }
  }

  private void showSide() {
    side.show(chosen, ledger.taken());
  }
}
