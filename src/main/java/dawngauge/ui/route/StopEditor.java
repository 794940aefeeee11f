package dawngauge.ui.route;

import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.ui.common.DraftKeeper;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.FigureFields;
import dawngauge.ui.common.TripDocument;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * The fields of the chosen stop, its air, and the leg that leaves it. Each finished field is an
 * edit; what is typed and not taken survives choosing another stop.
 */
public final class StopEditor extends VBox implements DraftKeeper {

  private final TripDocument document;

  /** What is typed and not taken at stops that are not shown: by stop and then by field. */
  private final Map<String, Map<String, String>> drafts = new LinkedHashMap<>();

  private final EditedStop edited;
  private final StopFields place;
  private final AirFields air;
  private final LoadsPane loads;
  private final LegFields leg;
  private @Nullable String shown;

  /** An editor of a document's stops. */
  public StopEditor(TripDocument document) {
    this.document = document;
    this.edited = new EditedStop(document);
    this.place = new StopFields(edited);
    this.air = new AirFields(edited);
    this.loads = new LoadsPane(edited);
    this.leg = new LegFields(edited);
    getStyleClass().add("editor");
    leg.managedProperty().bind(leg.visibleProperty());
    document.onLeaving(this::drop);
  }

  /** Whether the fields are of another stop than one, and that is still there. */
  boolean isOfAnother(int stopIndex) {
    List<Stop> stops = document.trip().route().stops();
    return edited.index() >= 0
        && stopIndex < stops.size()
        && !stops.get(stopIndex).id().equals(shown);
  }

  /** Shows the fields of a stop; the same ones are of one stop after the other. */
  public void show(int stopIndex) {
    Trip trip = document.trip();
    if (stopIndex >= trip.route().stops().size()) {
      leave();
      getChildren().clear();
      return;
    }
    String next = trip.route().stops().get(stopIndex).id();
    if (!next.equals(shown)) {
      leave();
      edited.become(next);
      air.become();
      loads.become();
      shown = next;
      if (getChildren().isEmpty()) {
        getChildren().setAll(place, air, loads, leg);
      }
    }
    refresh();
    Map<String, String> kept = drafts.remove(next);
    if (kept != null) {
      fill(kept);
    }
  }

  private void refresh() {
    place.refresh();
    air.refresh();
    loads.refresh();
    leg.setVisible(edited.hasLeg());
    if (edited.hasLeg()) {
      leg.refresh();
    }
  }

  /**
   * Keeps what is typed and not taken at the stop that is shown, and takes it out of the fields.
   */
  private void leave() {
    String before = shown;
    if (before != null) {
      keep(before);
      FigureFields.below(this).forEach(FigureField::drop);
    }
    shown = null;
  }

  private void fill(Map<String, String> kept) {
    FigureFields.below(this).forEach(field -> field.restore(kept.get(field.name())));
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

  private void drop() {
    drafts.clear();
    FigureFields.below(this).forEach(FigureField::drop);
  }

  /** By the id of the stop; those of stops that are gone are left out. */
  @Override
  public Map<String, Map<String, String>> drafts() {
    String now = shown;
    if (now != null) {
      keep(now);
    }
    Map<String, Map<String, String>> all = new LinkedHashMap<>(drafts);
    all.keySet().removeIf(id -> document.trip().route().stop(id).isEmpty());
    return all;
  }

  @Override
  public void restore(Map<String, Map<String, String>> kept) {
    drafts.putAll(kept);
    Map<String, String> here = shown == null ? null : drafts.remove(shown);
    if (here != null) {
      fill(here);
    }
  }
}
