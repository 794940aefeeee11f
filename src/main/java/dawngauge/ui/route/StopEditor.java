package dawngauge.ui.route;

import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.ui.common.DraftKeeper;
import dawngauge.ui.common.StopDrafts;
import dawngauge.ui.common.TripDocument;
import java.util.List;
import java.util.Map;
import javafx.scene.layout.VBox;

/**
 * The fields of the chosen stop, its air, and the leg that leaves it. Each finished field is an
 * edit; what is typed and not taken survives choosing another stop.
 */
public final class StopEditor extends VBox implements DraftKeeper {

  private final TripDocument document;
  private final StopDrafts drafts = new StopDrafts("", this);

  private final EditedStop edited;
  private final StopFields place;
  private final AirFields air;
  private final LoadsPane loads;
  private final LegFields leg;

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
    document.onLeaving(drafts::drop);
  }

  /** Whether the fields are of another stop than one, and that is still there. */
  boolean isOfAnother(int stopIndex) {
    List<Stop> stops = document.trip().route().stops();
    return edited.index() >= 0
        && stopIndex < stops.size()
        && !stops.get(stopIndex).id().equals(drafts.shown());
  }

  /** Shows the fields of a stop; the same ones are of one stop after the other. */
  public void show(int stopIndex) {
    Trip trip = document.trip();
    if (stopIndex >= trip.route().stops().size()) {
      drafts.leave();
      getChildren().clear();
      return;
    }
    String next = trip.route().stops().get(stopIndex).id();
    if (!next.equals(drafts.shown())) {
      drafts.leave();
      edited.become(next);
      air.become();
      loads.become();
      if (getChildren().isEmpty()) {
        getChildren().setAll(place, air, loads, leg);
      }
    }
    refresh();
    drafts.become(next);
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

  /** By the id of the stop. */
  @Override
  public Map<String, Map<String, String>> drafts() {
    return drafts.all(document.trip());
  }

  @Override
  public void restore(Map<String, Map<String, String>> kept) {
    drafts.restore(document.trip(), kept);
  }
}
