package dawngauge.ui.route;

import dawngauge.geo.Place;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.UnitSystem;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Tasks;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.geometry.Side;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.VBox;

/**
 * The name of a stop, with places offered while it is typed. A place that is taken from the list
 * brings its coordinates, and its height and time zone as estimates.
 */
final class PlaceField extends VBox {

  private static final int SHORTEST = 2;

  private final FigureField<String> field;
  private final ContextMenu offers = new ContextMenu();
  private boolean filling;

  /**
   * A field.
   *
   * @param name the name now
   * @param units units of the heights in the list
   * @param search finds places
   * @param named takes a typed name
   * @param taken takes a place from the list
   */
  PlaceField(
      String name,
      UnitSystem units,
      Function<String, List<Place>> search,
      Consumer<String> named,
      Consumer<Place> taken) {
    field =
        new FigureField<>(
            "Place",
            typed ->
                typed.isEmpty()
                    ? Outcome.failed(Problem.of(ProblemCode.NOT_A_NAME, "", typed))
                    : Outcome.of(typed),
            named);
    getChildren().add(field);
    filling = true;
    field.show(name);
    filling = false;
    field
        .field()
        .textProperty()
        .addListener(
            (property, before, text) -> {
              if (!filling && field.field().isFocused() && text.strip().length() >= SHORTEST) {
                offer(text, units, search, taken);
              } else {
                offers.hide();
              }
            });
  }

  private void offer(
      String text, UnitSystem units, Function<String, List<Place>> search, Consumer<Place> taken) {
    Tasks.compute(
        () -> search.apply(text.strip()),
        places -> {
          if (!text.equals(field.field().getText()) || !field.field().isFocused()) {
            return;
          }
          offers
              .getItems()
              .setAll(places.stream().map(place -> item(place, units, taken)).toList());
          if (places.isEmpty()) {
            offers.hide();
          } else if (!offers.isShowing()) {
            offers.show(field.field(), Side.BOTTOM, 0, 0);
          }
        });
  }

  private MenuItem item(Place place, UnitSystem units, Consumer<Place> taken) {
    MenuItem item =
        new MenuItem(
            place.label() + " · " + units.format(place.elevation()) + " · " + place.zone().getId());
    item.setMnemonicParsing(false);
    item.setOnAction(
        event -> {
          filling = true;
          field.show(place.label());
          filling = false;
          taken.accept(place);
        });
    return item;
  }
}
