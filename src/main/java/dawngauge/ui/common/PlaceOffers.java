package dawngauge.ui.common;

import dawngauge.geo.Coordinate;
import dawngauge.geo.GreatCircle;
import dawngauge.geo.Place;
import dawngauge.quantity.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.geometry.Bounds;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.VBox;
import javafx.stage.Popup;
import org.jspecify.annotations.Nullable;

/**
 * Places offered below a field while a name is typed in it. Down and Up choose one, Enter or a
 * click takes it, Escape closes the list; Enter without a choice keeps what was typed. A place that
 * is taken brings its coordinates, and its height and time zone as estimates.
 */
public final class PlaceOffers {

  /** So many are offered at the most. */
  public static final int MOST = 8;

  private static final int SHORTEST = 2;
  private static final double ROW = 26;
  private static final double WIDTH = 460;

  private final FigureField<String> field;
  private final Supplier<UnitSystem> units;
  private final Supplier<@Nullable Coordinate> near;
  private final BiFunction<String, @Nullable Coordinate, List<Place>> search;
  private final Consumer<Place> taken;
  private final ListView<Place> list = new ListView<>();
  private final Popup popup = new Popup();

  /**
   * Offers places for a field.
   *
   * @param field where the name is typed
   * @param units units of the heights and distances in the list
   * @param near where the route is, as far as that is known
   * @param search finds places by a text, near ones first
   * @param taken takes a place from the list
   */
  public PlaceOffers(
      FigureField<String> field,
      Supplier<UnitSystem> units,
      Supplier<@Nullable Coordinate> near,
      BiFunction<String, @Nullable Coordinate, List<Place>> search,
      Consumer<Place> taken) {
    this.field = field;
    this.units = units;
    this.near = near;
    this.search = search;
    this.taken = taken;
    TextField text = field.field();
    text.setAccessibleHelp("Places are offered while you type: Down chooses one, Enter takes it");
    list.setCellFactory(view -> new Cell());
    list.setFixedCellSize(ROW);
    list.setPrefWidth(WIDTH);
    list.setFocusTraversable(false);
    list.addEventHandler(MouseEvent.MOUSE_CLICKED, event -> take());
    Label keys = new Label("Down and Enter take a place; Enter alone keeps the name as typed");
    keys.setStyle("-fx-padding: 2 8 4 8; -fx-font-size: 11.5px;");
    VBox box = new VBox(list, keys);
    box.setStyle(
        "-fx-background-color: -color-bg-default; -fx-border-color: -color-border-default;");
    popup.getContent().add(box);
    popup.setAutoHide(true);
    popup.setHideOnEscape(false);
    text.textProperty().addListener((property, before, now) -> typed(now));
    text.focusedProperty()
        .addListener(
            (property, was, is) -> {
              if (!is) {
                popup.hide();
              }
            });
    text.addEventFilter(KeyEvent.KEY_PRESSED, this::keyed);
  }

  private void typed(String text) {
    if (!field.field().isFocused() || text.strip().length() < SHORTEST || field.draft() == null) {
      popup.hide();
      return;
    }
    Coordinate around = near.get();
    Tasks.compute(
        () -> search.apply(text.strip(), around),
        places -> offer(text, places),
        wrong -> {
          list.setPlaceholder(new Label(Texts.fault("Looking for places", wrong)));
          offer(text, List.of());
        });
  }

  private void offer(String text, List<Place> places) {
    TextField under = field.field();
    if (!text.equals(under.getText()) || !under.isFocused()) {
      return;
    }
    list.getItems().setAll(places);
    list.getSelectionModel().clearSelection();
    list.setPrefHeight(places.size() * ROW + 4);
    if (places.isEmpty()) {
      popup.hide();
    } else if (!popup.isShowing()) {
      Bounds bounds = under.localToScreen(under.getBoundsInLocal());
      popup.show(under, bounds.getMinX(), bounds.getMaxY());
    }
  }

  private void keyed(KeyEvent event) {
    if (!popup.isShowing()) {
      return;
    }
    boolean done = true;
    switch (event.getCode()) {
      case DOWN -> list.getSelectionModel().selectNext();
      case UP -> list.getSelectionModel().selectPrevious();
      case ESCAPE -> popup.hide();
      case ENTER -> done = take();
      default -> done = false;
    }
    if (done) {
      event.consume();
    }
  }

  /** Takes the chosen place; whether there was one. */
  private boolean take() {
    Place place = list.getSelectionModel().getSelectedItem();
    popup.hide();
    if (place != null) {
      field.put(place.label());
      taken.accept(place);
    }
    return place != null;
  }

  private final class Cell extends ListCell<Place> {
    @Override
    protected void updateItem(@Nullable Place place, boolean empty) {
      super.updateItem(place, empty);
      setText(empty || place == null ? "" : words(place));
    }
  }

  private String words(Place place) {
    Coordinate around = near.get();
    String away =
        around == null
            ? ""
            : " · " + units.get().format(GreatCircle.between(around, place.coordinate())) + " away";
    String height = units.get().format(place.elevation());
    return place.labelWithCountry()
        + " · "
        + switch (place.kind()) {
          case TOWN -> height + String.format(Locale.ENGLISH, " · %,d people", place.population());
          case PASS -> height + " · pass";
          case PASS_ABOUT -> "about " + height + " · pass";
        }
        + away;
  }
}
