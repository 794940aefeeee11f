package dawngauge.ui.route;

import dawngauge.geo.Coordinate;
import dawngauge.geo.PlaceList;
import dawngauge.geo.Spot;
import dawngauge.problem.Outcome;
import dawngauge.trip.RouteOfPlaces;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntSupplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TextArea;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * A list of places, typed or pasted at the left, what was understood of it at the right; it is put
 * into the route, or made the route, as one edit.
 */
public final class PlaceListPane extends BorderPane {

  private static final List<String> EXAMPLES =
      List.of(
          "What is understood of each line is shown here. Lines may look so:",
          "Alamosa CO",
          "Raton, New Mexico @ 45 min, hose",
          "36.06, -102.51 @ overnight 06:00",
          "Old mill = 35.22, -101.83 @ overnight, 9 h");

  private static final String NO_ARRIVAL =
      "When a night ends is known once the departure is typed: type that first, or write how long"
          + " the night is, such as \"overnight, 9 h\".";

  private final TripDocument document;
  private final IntSupplier chosen;
  private final Runnable done;
  private final TextArea text = new TextArea();
  private final VBox understood = new VBox();
  private final Label state = new Label();
  private final Button add = new Button();
  private final Button replace = new Button("Make this the route");

  /** The user's choices among places of one name, by what was typed. */
  private final Map<String, Spot> choices = new HashMap<>();

  private @Nullable PlaceList list;

  /**
   * A pane without a list.
   *
   * @param document where the places go
   * @param chosen tells the chosen stop, counted from 0, after which they are added
   * @param done told when the pane is no longer wanted
   */
  public PlaceListPane(TripDocument document, IntSupplier chosen, Runnable done) {
    this.document = document;
    this.chosen = chosen;
    this.done = done;
    getStyleClass().add("place-list");
    text.setPromptText("Type or paste places here, one a line");
    text.setAccessibleText("List of places, one a line");
    text.textProperty().addListener(change -> read());
    understood.getStyleClass().add("edited-rows");
    ScrollPane scroll = new ScrollPane(understood);
    scroll.setFitToWidth(true);
    SplitPane split = new SplitPane(text, scroll);
    split.setDividerPositions(0.36);
    Label title = new Label("A list of places");
    title.getStyleClass().add("chosen-stop");
    HBox head = new HBox(title);
    head.getStyleClass().add("bar");
    setTop(head);
    setCenter(split);
    setBottom(buttons());
    document.shownProperty().addListener(change -> refresh());
    document.unitsProperty().addListener(change -> refresh());
    refresh();
  }

  private HBox buttons() {
    Button close = new Button("Close");
    close.setOnAction(event -> done.run());
    close.setCancelButton(true);
    add.setOnAction(event -> put(false));
    replace.setOnAction(event -> put(true));
    for (Button button : List.of(close, add, replace)) {
      button.setMinWidth(USE_PREF_SIZE);
    }
    state.getStyleClass().add("lesser");
    state.setWrapText(true);
    state.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(state, Priority.ALWAYS);
    HBox bar = new HBox(8, state, close, replace, add);
    bar.getStyleClass().add("bar");
    return bar;
  }

  /** Shows the pane as the route is now, ready to be typed into. */
  public void open() {
    refresh();
    read();
    // Before the first layout the text is no part of the window and cannot get the keyboard.
    applyCss();
    layout();
    text.requestFocus();
  }

  private int after() {
    return Math.min(chosen.getAsInt() + 1, document.trip().route().stops().size());
  }

  private void read() {
    String typed = text.getText();
    Coordinate near = near();
    Map<String, Spot> known = Map.copyOf(choices);
    Tasks.compute(
        () -> document.planner().places().list(typed, near, known),
        outcome -> {
          if (typed.equals(text.getText()) && known.equals(choices)) {
            take(outcome);
          }
        },
        wrong -> {
          if (typed.equals(text.getText())) {
            list = null;
            refresh();
            understood.getChildren().clear();
            state.setText(Texts.fault("Reading the list", wrong));
          }
        });
  }

  /** The nearest place of the route at or before the chosen stop, or null. */
  private @Nullable Coordinate near() {
    List<Stop> stops = document.trip().route().stops();
    for (int i = after() - 1; i >= 0; i--) {
      if (stops.get(i).coordinate() != null) {
        return stops.get(i).coordinate();
      }
    }
    return null;
  }

  private void take(Outcome<PlaceList> outcome) {
    list = outcome.valueOrNull();
    refresh();
    if (list == null) {
      understood.getChildren().setAll(PlaceListRow.said(outcome.problems().get(0)));
      state.setText("");
    }
  }

  /** What the trip would be. */
  private Trip next(PlaceList places, boolean whole) {
    List<RouteOfPlaces.Wanted> wanted = wanted(places);
    return whole
        ? RouteOfPlaces.replace(document.trip(), wanted)
        : RouteOfPlaces.insert(document.trip(), after(), wanted);
  }

  private static List<RouteOfPlaces.Wanted> wanted(PlaceList places) {
    return places.lines().stream()
        .filter(line -> line.taken() != null)
        .map(line -> new RouteOfPlaces.Wanted(spot(line), line.stay()))
        .toList();
  }

  private boolean canPut(@Nullable PlaceList places, boolean whole) {
    return places != null
        && places.isUsable()
        && RouteOfPlaces.nightsEnd(next(places, whole), whole ? 0 : after(), wanted(places));
  }

  private static Spot spot(PlaceList.Line line) {
    Spot taken = line.taken();
    if (taken == null) {
      throw new IllegalStateException("line " + line.number() + " has no place");
    }
    return taken;
  }

  private void refresh() {
    List<Stop> stops = document.trip().route().stops();
    int after = after();
    add.setText(after == 0 ? "Add to the route" : "Add after stop " + after);
    PlaceList places = list;
    add.setDisable(!canPut(places, false));
    replace.setDisable(!canPut(places, true));
    boolean open = places != null && places.isUsable() && add.isDisabled() && replace.isDisabled();
    state.setText(places == null ? "" : open ? NO_ARRIVAL : words(places, stops.isEmpty()));
    understood.getChildren().clear();
    if (places == null || places.lines().isEmpty()) {
      EXAMPLES.forEach(line -> understood.getChildren().add(PlaceListRow.quiet(line)));
      return;
    }
    Trip preview = next(places, stops.isEmpty());
    int at = stops.isEmpty() ? 0 : after;
    for (PlaceList.Line line : places.lines()) {
      Stop stop = line.taken() == null ? null : preview.route().stops().get(at);
      var leg = stop == null || at == 0 ? null : preview.route().legs().get(at - 1);
      understood.getChildren().add(new PlaceListRow(line, stop, leg, this::choose));
      at += stop == null ? 0 : 1;
    }
  }

  private static String words(PlaceList places, boolean empty) {
    int all = places.lines().size();
    long left = places.lines().stream().filter(line -> !line.isUsable()).count();
    if (left > 0) {
      return left + " of " + all + " lines cannot be used yet: correct or remove them.";
    }
    return all == 0
        ? ""
        : Texts.shortened(
            all
                + (all == 1 ? " place" : " places")
                + ". Elevations and distances are estimates"
                + (empty ? "." : "; making this the route removes the stops that are there."));
  }

  private void choose(PlaceList.Line line, Spot spot) {
    choices.put(line.place(), spot);
    read();
  }

  private void put(boolean whole) {
    PlaceList places = list;
    if (places != null && places.isUsable()) {
      Trip trip = next(places, whole);
      text.clear();
      choices.clear();
      list = null;
      document.edit(document.planner().temperatures().withoutGaps(trip));
      done.run();
    }
  }
}
