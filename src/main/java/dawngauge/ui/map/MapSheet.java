package dawngauge.ui.map;

import dawngauge.planner.TileSource;
import java.util.Map;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.property.BooleanProperty;
import javafx.geometry.Point2D;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;

/**
 * The sheet with the map of the route and its buttons. The map itself cannot be told by a screen
 * reader; whatever is done on it can be done in the ledger as well. It is made when it is first
 * shown.
 */
public final class MapSheet extends BorderPane {

  private static final String NOTHING_YET =
      "No stop is on the map yet. Press “Add stops” and then the map, or choose a place from the"
          + " list in a stop's fields.";

  /** Part of the map by which an arrow key goes. */
  private static final double STEP = 0.2;

  private final MapHands hands;
  private final StackPane frame = new StackPane();
  private final Label hint = new Label(NOTHING_YET);
  private final ToggleButton adding = new ToggleButton("Add stops");
  private final ToggleButton online = new ToggleButton("Online map");
  private final ToggleButton wide = new ToggleButton("Wide");
  private MapPicture picture;
  private @Nullable RouteMap map;

  /** A sheet that is not shown yet. */
  public MapSheet(MapHands hands, MapPicture first) {
    this.hands = hands;
    this.picture = first;
    setId("map-sheet");
    getStyleClass().add("map-sheet");
    adding.setAccessibleText("Press on the map to add stops after the chosen one");
    wide.setAccessibleText("Map over the whole page");
    for (ToggleButton button : new ToggleButton[] {adding, online, wide}) {
      button.setMinWidth(USE_PREF_SIZE);
      button.getStyleClass().add("small-toggle");
    }
    online.setAccessibleText("Show a map with roads from the internet; asks first");
    online.selectedProperty().addListener(change -> online());
    adding.selectedProperty().addListener(change -> ask(known -> known.adding(isAdding())));
    FlowPane bar =
        new FlowPane(
            6,
            4,
            button("+", "Nearer", () -> zoom(1)),
            button("−", "Farther", () -> zoom(-1)),
            button("Whole route", "Show all stops", () -> ask(RouteMap::fit)),
            button(
                "Chosen stop",
                "Bring the chosen stop into the middle",
                () -> ask(RouteMap::center)),
            adding,
            online,
            wide);
    bar.getStyleClass().add("bar");
    hint.setWrapText(true);
    hint.getStyleClass().add("map-hint");
    hint.setMouseTransparent(true);
    StackPane.setAlignment(hint, Pos.TOP_LEFT);
    frame.getChildren().add(hint);
    frame.getStyleClass().add("map-frame");
    frame.setFocusTraversable(true);
    frame.setAccessibleText(
        "Map of the route. Arrow keys move it, plus and minus change its scale, Home shows all"
            + " stops. All that is on it stands in the ledger too.");
    frame.setMinSize(0, 0);
    frame.setOnKeyPressed(this::keyed);
    frame.addEventFilter(MouseEvent.MOUSE_PRESSED, event -> frame.requestFocus());
    setTop(bar);
    setCenter(frame);
    setMinSize(0, 150);
    hint();
  }

  private static Button button(String text, String spoken, Runnable action) {
    Button button = new Button(text);
    button.getStyleClass().add("small-button");
    button.setMinWidth(USE_PREF_SIZE);
    button.setAccessibleText(spoken);
    button.setOnAction(event -> action.run());
    return button;
  }

  private interface Wish {
    void of(RouteMap map);
  }

  private void ask(Wish wish) {
    RouteMap known = map;
    if (known != null) {
      wish.of(known);
    }
  }

  private void zoom(int steps) {
    ask(known -> known.zoom(steps));
  }

  private void pan(double right, double down) {
    ask(known -> known.pan(right * STEP, down * STEP));
  }

  private void keyed(KeyEvent event) {
    boolean done = true;
    switch (event.getCode()) {
      case LEFT -> pan(-1, 0);
      case RIGHT -> pan(1, 0);
      case UP -> pan(0, -1);
      case DOWN -> pan(0, 1);
      case PLUS, ADD, EQUALS -> zoom(1);
      case MINUS, SUBTRACT -> zoom(-1);
      case HOME -> ask(RouteMap::fit);
      default -> done = false;
    }
    if (done) {
      event.consume();
    }
  }

  /** Shows the online map, where the user agrees, or the program's own. */
  private void online() {
    Optional<TileSource> source = online.isSelected() ? hands.onlineMap() : Optional.empty();
    if (source.isEmpty()) {
      online.setSelected(false);
    }
    ask(known -> known.online(source));
  }

  /** Shows the program's own map again. */
  public void offline() {
    online.setSelected(false);
  }

  /** Whether a press on the map adds a stop. */
  private boolean isAdding() {
    return adding.isSelected();
  }

  /** Whether the map is wanted over the whole page. */
  public BooleanProperty wideProperty() {
    return wide.selectedProperty();
  }

  /** Shows a route; the part of the earth that is seen stays. */
  public void show(MapPicture next) {
    picture = next;
    hint();
    ask(known -> known.show(next));
  }

  private void hint() {
    hint.setVisible(picture.stops().isEmpty());
  }

  /** Makes the map, once the window has been painted. */
  public void open() {
    Platform.runLater(
        () -> {
          if (map == null) {
            RouteMap made = new SwingRouteMap(hands, picture);
            map = made;
            made.adding(isAdding());
            frame.getChildren().add(0, made.node());
          }
        });
  }

  /** Where the stops were painted last, by index, in the frame's coordinates; empty before. */
  public Optional<Map<Integer, Point2D>> painted() {
    RouteMap known = map;
    return known == null ? Optional.empty() : known.painted();
  }

  /** Ends the map with the window. */
  public void close() {
    ask(RouteMap::close);
    map = null;
  }
}
