package dawngauge.ui.route;

import dawngauge.trip.LoadChange;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.ui.fields.FormFields;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Animals, water, feed taken on or set down at a stop. */
final class LoadsPane extends VBox {

  private final EditedStop stop;
  private final VBox rows = new VBox();
  private final Button add = new Button("+ load");
  private FormFields book;
  private boolean adding;
  private List<Object> shape = List.of();

  LoadsPane(EditedStop stop) {
    this.stop = stop;
    this.book = new FormFields(stop.document(), lost -> {});
    getStyleClass().add("loads");
    add.getStyleClass().add("small-button");
    add.setAccessibleText("Add a load taken on or set down here");
    add.setOnAction(
        event -> {
          adding = true;
          refresh();
        });
    Label head = new Label("Loaded or unloaded here");
    head.getStyleClass().add("editor-heading");
    getChildren().addAll(head, rows, add);
  }

  /** Forgets the load that was begun: the stop is another one now. */
  void become() {
    adding = false;
    shape = List.of();
  }

  /** Shows the loads as they are now. */
  void refresh() {
    Trip trip = stop.document().trip();
    List<Object> now =
        List.of(stop.stop().loadChanges().size(), adding, LoadForm.axles(trip.rig()));
    if (!now.equals(shape)) {
      shape = now;
      build();
    }
    book.refresh();
  }

  private void build() {
    book.close();
    book = new FormFields(stop.document(), lost -> {});
    rows.getChildren().clear();
    int loads = stop.stop().loadChanges().size();
    for (int i = 0; i < loads; i++) {
      int index = i;
      rows.getChildren()
          .add(
              form(
                  () -> at(index),
                  "load " + (i + 1),
                  changed -> with(index, changed),
                  book.adding("Remove", "Remove load " + (i + 1), () -> with(index, null))));
    }
    if (adding) {
      Button drop = new Button("Drop");
      drop.getStyleClass().add("small-button");
      drop.setOnAction(
          event -> {
            adding = false;
            refresh();
          });
      rows.getChildren()
          .add(
              form(
                  () -> null,
                  "load " + (loads + 1),
                  changed -> {
                    adding = false;
                    return with(loads, changed);
                  },
                  drop));
    }
    add.setVisible(!adding);
    add.setManaged(!adding);
  }

  private LoadForm form(
      Supplier<@Nullable LoadChange> there,
      String name,
      Function<LoadChange, Trip> edit,
      Button remove) {
    return new LoadForm(book, there, () -> name, edit, remove);
  }

  private @Nullable LoadChange at(int index) {
    List<LoadChange> all = stop.stop().loadChanges();
    return index < all.size() ? all.get(index) : null;
  }

  /** The trip with another load at an index, or without the one that is there. */
  private Trip with(int index, @Nullable LoadChange changed) {
    Stop now = stop.stop();
    List<LoadChange> all = new ArrayList<>(now.loadChanges());
    if (changed == null) {
      all.remove(index);
    } else if (index < all.size()) {
      all.set(index, changed);
    } else {
      all.add(changed);
    }
    return RouteEdits.withStop(stop.document().trip(), stop.index(), now.withLoadChanges(all));
  }
}
