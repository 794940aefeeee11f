package dawngauge.ui.route;

import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.FigureFields;
import dawngauge.ui.common.TripDocument;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * The fields of the chosen stop, its air, and the leg that leaves it. Each finished field is an
 * edit; what is typed and not taken survives choosing another stop.
 */
public final class StopEditor extends VBox {

  private final TripDocument document;

  /** What is typed and not taken at stops that are not shown: by stop and then by field. */
  private final Map<String, Map<String, String>> drafts = new LinkedHashMap<>();

  private List<Runnable> refreshers = List.of();
  private @Nullable EditedStop shown;
  private String form = "";

  /** An editor of a document's stops. */
  public StopEditor(TripDocument document) {
    this.document = document;
    getStyleClass().add("editor");
    document.fileProperty().addListener(change -> drafts.clear());
  }

  /** Shows the fields of a stop; those that are shown already stay. */
  public void show(int stopIndex) {
    Trip trip = document.trip();
    if (stopIndex >= trip.route().stops().size()) {
      leave();
      return;
    }
    Stop stop = trip.route().stops().get(stopIndex);
    String next = stop.id() + "\n" + form(trip, stopIndex);
    if (!next.equals(form)) {
      make(stop, next);
    }
    refreshers.forEach(Runnable::run);
  }

  /** What decides which fields there are: a start has others, and the last stop has no leg. */
  private static String form(Trip trip, int index) {
    Stop stop = trip.route().stops().get(index);
    String ends = (index == 0) + " " + (index < trip.route().legs().size());
    return index > 0 ? ends : ends + (stop.stay() == null);
  }

  private void make(Stop stop, String next) {
    EditedStop before = shown;
    String focused = before != null && before.id().equals(stop.id()) ? focusedField() : null;
    leave();
    form = next;
    EditedStop edited = new EditedStop(document, stop.id());
    shown = edited;
    StopFields place = new StopFields(edited);
    AirFields air = new AirFields(edited);
    LoadsPane loads = new LoadsPane(edited);
    getChildren().setAll(place, air, loads);
    if (edited.hasLeg()) {
      LegFields leg = new LegFields(edited);
      getChildren().add(leg);
      refreshers = List.of(place::refresh, air::refresh, loads::refresh, leg::refresh);
    } else {
      refreshers = List.of(place::refresh, air::refresh, loads::refresh);
    }
    refreshers.forEach(Runnable::run);
    Map<String, String> kept = drafts.remove(stop.id());
    if (kept != null) {
      FigureFields.below(this).forEach(field -> field.restore(kept.get(field.name())));
    }
    if (focused != null) {
      Platform.runLater(() -> focus(focused));
    }
  }

  /** Takes the fields away; their drafts stay. */
  private void leave() {
    EditedStop before = shown;
    if (before != null) {
      keep(before.id());
      FigureFields.below(this).forEach(FigureField::retire);
    }
    getChildren().clear();
    refreshers = List.of();
    shown = null;
    form = "";
  }

  private void keep(String stop) {
    Map<String, String> kept = new LinkedHashMap<>();
    FigureFields.drafts(this).forEach(draft -> kept.put(draft.name(), draft.text()));
    if (kept.isEmpty()) {
      drafts.remove(stop);
    } else {
      drafts.put(stop, kept);
    }
  }

  /**
   * All that is typed and not taken: by the id of the stop the fields' names and texts. Those of
   * stops that are gone are left out.
   */
  public Map<String, Map<String, String>> drafts() {
    EditedStop now = shown;
    if (now != null) {
      keep(now.id());
    }
    Map<String, Map<String, String>> all = new LinkedHashMap<>(drafts);
    all.keySet().removeIf(id -> document.trip().route().stop(id).isEmpty());
    return all;
  }

  /** Takes drafts up again, as after a recovery; see {@link #drafts()}. */
  public void restore(Map<String, Map<String, String>> kept) {
    drafts.putAll(kept);
    EditedStop now = shown;
    Map<String, String> here = now == null ? null : drafts.remove(now.id());
    if (here != null) {
      FigureFields.below(this).forEach(field -> field.restore(here.get(field.name())));
    }
  }

  /** The field that has the keyboard, so that it has it again when the fields are made anew. */
  private @Nullable String focusedField() {
    Node owner = getScene() == null ? null : getScene().getFocusOwner();
    for (FigureField<?> field : FigureFields.below(this)) {
      if (field.field() == owner) {
        return field.name();
      }
    }
    return null;
  }

  private void focus(String name) {
    for (FigureField<?> field : FigureFields.below(this)) {
      if (field.name().equals(name)) {
        field.field().requestFocus();
        break;
      }
    }
  }
}
