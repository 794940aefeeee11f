package dawngauge.ui.route;

import dawngauge.geo.Place;
import dawngauge.quantity.UnitSystem;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Tasks;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.geometry.Side;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;

/**
 * Places offered below a field while a name is typed in it. A place that is taken from the list
 * brings its coordinates, and its height and time zone as estimates.
 */
final class PlaceOffers {

  private static final int SHORTEST = 2;

  private final FigureField<String> field;
  private final UnitSystem units;
  private final Function<String, List<Place>> search;
  private final Consumer<Place> taken;
  private final ContextMenu offers = new ContextMenu();

  /**
   * Offers places for a field.
   *
   * @param field where the name is typed
   * @param units units of the heights in the list
   * @param search finds places
   * @param taken takes a place from the list
   */
  PlaceOffers(
      FigureField<String> field,
      UnitSystem units,
      Function<String, List<Place>> search,
      Consumer<Place> taken) {
    this.field = field;
    this.units = units;
    this.search = search;
    this.taken = taken;
    field.field().textProperty().addListener((property, before, text) -> typed(text));
  }

  private void typed(String text) {
    if (!field.field().isFocused() || text.strip().length() < SHORTEST) {
      offers.hide();
      return;
    }
    Tasks.compute(() -> search.apply(text.strip()), places -> offer(text, places));
  }

  private void offer(String text, List<Place> places) {
    if (!text.equals(field.field().getText()) || !field.field().isFocused()) {
      return;
    }
    offers.getItems().setAll(places.stream().map(this::item).toList());
    if (places.isEmpty()) {
      offers.hide();
    } else if (!offers.isShowing()) {
      offers.show(field.field(), Side.BOTTOM, 0, 0);
    }
  }

  private MenuItem item(Place place) {
    MenuItem item =
        new MenuItem(
            place.label() + " · " + units.format(place.elevation()) + " · " + place.zone().getId());
    item.setMnemonicParsing(false);
    item.setOnAction(
        event -> {
          field.show(place.label());
          taken.accept(place);
        });
    return item;
  }
}
