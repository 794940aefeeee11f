package dawngauge.ui.readings;

import dawngauge.ledger.CrewLine;
import dawngauge.ledger.Wording;
import dawngauge.planner.Plan;
import dawngauge.trip.CrewPlace;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEdits;
import dawngauge.trip.Trip;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Where the crew is, what is next, what changed; one press notes an arrival or a departure. */
public final class TripStatusBar extends HBox {

  private final TripDocument document;
  private final Clock clock;
  private final Consumer<String> teller;
  private final Label where = new Label();
  private final Label changed = new Label();
  private final Button arrived = new Button("Arrived now");
  private final Button left = new Button("Left now");
  private @Nullable Trip morningOf;
  private @Nullable Plan morning;

  /** Why there is no plan of this morning; empty where nothing went wrong. */
  private String failure = "";

  /**
   * A bar.
   *
   * @param clock the time
   * @param teller is told why something cannot be noted
   */
  public TripStatusBar(TripDocument document, Clock clock, Consumer<String> teller) {
    this.document = document;
    this.clock = clock;
    this.teller = teller;
    where.getStyleClass().add("crew-where");
    where.setWrapText(true);
    changed.getStyleClass().add("crew-changed");
    changed.setWrapText(true);
    changed.managedProperty().bind(changed.visibleProperty());
    VBox words = new VBox(1, where, changed);
    HBox.setHgrow(words, Priority.ALWAYS);
    arrived.setOnAction(event -> arrivedNow());
    left.setOnAction(event -> leftNow());
    for (Button button : new Button[] {arrived, left}) {
      button.getStyleClass().add("small-button");
      button.setMinWidth(USE_PREF_SIZE);
    }
    setSpacing(8);
    setAlignment(Pos.CENTER_LEFT);
    getStyleClass().add("crew");
    getChildren().addAll(words, arrived, left);
    managedProperty().bind(visibleProperty());
    document.shownProperty().addListener(change -> refresh());
    document.unitsProperty().addListener(change -> refresh());
    refresh();
  }

  private Optional<Itinerary> itinerary() {
    return Itinerary.of(document.trip()).value();
  }

  /** Whether the trip is under way: something was noted on it, or it is about its time. */
  public boolean underWay() {
    return itinerary()
        .filter(
            known ->
                CrewPlace.of(document.trip(), known).noted()
                    || CrewPlace.mayBe(known, clock.instant()))
        .isPresent();
  }

  private void refresh() {
    Plan planned = document.planned();
    Itinerary known = itinerary().orElse(null);
    boolean possible = known != null && planned.advice() != null;
    arrived.setDisable(!possible);
    left.setDisable(!possible);
    if (known == null || planned.advice() == null) {
      where.setText(
          "Where the crew is shows as soon as "
              + (known == null ? "the departure is typed." : "there is a forecast."));
      changed.setVisible(false);
      return;
    }
    CrewPlace place = CrewPlace.of(document.trip(), known);
    arrived.setDisable(place.there() && place.visit() == known.visits().size() - 1);
    left.setDisable(!place.there() || place.visit() == known.visits().size() - 1);
    Trip asPlanned = document.planner().plan(document.trip()).thisMorning();
    if (asPlanned.equals(document.trip())) {
      morningOf = asPlanned; // nothing was noted since: the plan is at hand
      morning = planned;
      failure = "";
    } else if (!asPlanned.equals(morningOf)) {
      morningOf = asPlanned;
      morning = null;
      failure = "";
      Tasks.compute(
          () -> document.planner().plan(asPlanned).computed(),
          plan -> {
            if (asPlanned.equals(morningOf)) {
              morning = plan;
              tell();
            }
          },
          wrong -> {
            if (asPlanned.equals(morningOf)) {
              failure = Texts.fault("Planning this morning anew, to compare with it,", wrong);
              tell();
            }
          });
    }
    tell();
  }

  private void tell() {
    Plan planned = document.planned();
    Itinerary known = itinerary().orElse(null);
    if (known == null || planned.advice() == null) {
      return;
    }
    Plan before = morning;
    CrewLine line =
        CrewLine.of(
            CrewPlace.of(document.trip(), known),
            planned.advice(),
            before == null ? null : before.advice(),
            document.units());
    where.setText(line.where() + (line.next().isEmpty() ? "" : " · " + line.next()));
    changed.setText(failure.isEmpty() ? line.changed() : failure);
    changed.setVisible(!changed.getText().isEmpty());
  }

  /** The plan as it was this morning, once it is computed. */
  Optional<Plan> thisMorning() {
    return Optional.ofNullable(morning);
  }

  /** Notes that the rig arrives at the next stop now. */
  public void arrivedNow() {
    now(
        (known, place, time) -> {
          Itinerary.Visit visit = known.visits().get(place.next(known.visits()));
          return LogEdits.arrived(
              document.trip(), visit.stop().id(), LogEdits.at(time, visit.zone()));
        });
  }

  /** Notes that the rig leaves the stop where it stands now. */
  public void leftNow() {
    now(
        (known, place, time) -> {
          Itinerary.Visit visit = known.visits().get(place.visit());
          return place.there()
              ? LogEdits.left(document.trip(), visit.stop().id(), LogEdits.at(time, visit.zone()))
              : document.trip();
        });
  }

  /** What an arrival or a departure makes of the trip. */
  private interface Noting {
    Trip at(Itinerary known, CrewPlace place, Instant time);
  }

  private void now(Noting noting) {
    Itinerary known = itinerary().orElse(null);
    if (known == null || known.visits().size() < 2) {
      teller.accept("Type the departure and the way to the next stop first.");
      return;
    }
    Instant time = clock.instant();
    if (!CrewPlace.mayBe(known, time)) {
      Itinerary.Visit first = known.visits().get(0);
      teller.accept(
          "It is "
              + Wording.day(time, first.zone())
              + " now, and this trip starts on "
              + Wording.day(first.leave(), first.zone())
              + ". Correct its departure, or note the time in the log below by hand.");
      return;
    }
    document.edit(noting.at(known, CrewPlace.of(document.trip(), known), time));
  }
}
