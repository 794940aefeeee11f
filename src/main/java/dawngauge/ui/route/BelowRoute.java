package dawngauge.ui.route;

import dawngauge.advice.Advice;
import dawngauge.geo.TrackLine;
import dawngauge.problem.Problem;
import dawngauge.ui.common.TripDocument;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import javafx.scene.Node;
import org.jspecify.annotations.Nullable;

/** What is asked below the route, one thing at a time; closed, the grid has the keyboard again. */
public final class BelowRoute {

  private final WhatIfPane whatIf;
  private final PlaceListPane placeList;
  private final PlanPane plan;
  private final TrackPane track;
  private final Consumer<@Nullable Node> place;
  private final Runnable back;

  /**
   * Nothing asked.
   *
   * @param chosen the chosen stop, counted from 0
   * @param beside takes the forecast that is to stand beside the trip's own
   * @param place puts a page below the route, or takes it away
   * @param back gives the keyboard back
   */
  BelowRoute(
      TripDocument document,
      IntSupplier chosen,
      Consumer<@Nullable Advice> beside,
      Consumer<@Nullable Node> place,
      Runnable back) {
    this.place = place;
    this.back = back;
    whatIf = new WhatIfPane(document, beside, this::close);
    whatIf.setVisible(false);
    plan = new PlanPane(document, this::close);
    plan.setVisible(false);
    track = new TrackPane(document, this::close);
    placeList = new PlaceListPane(document, chosen, this::close);
  }

  /** Another plan under another weather or start. */
  public void askWhatIf() {
    show(whatIf);
    whatIf.ask();
  }

  /** Where the tires are to be set. */
  public void askPlan() {
    show(plan);
    plan.ask();
  }

  /** A list of places to be pasted. */
  public void askPlaces() {
    show(placeList);
    placeList.open();
  }

  /** The lines of somebody else's file. */
  public void offerTracks(List<TrackLine> lines, List<Problem> leftOut) {
    show(track);
    track.open(lines, leftOut);
  }

  /** Another stop was chosen. */
  void chose(int row) {
    whatIf.chosen(row);
  }

  private void close() {
    show(null);
    back.run();
  }

  private void show(@Nullable Node page) {
    whatIf.setVisible(page == whatIf);
    plan.setVisible(page == plan);
    place.accept(page);
  }
}
