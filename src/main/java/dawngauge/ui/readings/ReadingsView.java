package dawngauge.ui.readings;

import dawngauge.ui.common.TripDocument;
import java.time.Clock;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;

/** The readings of the trip: a round at a stop, what else was noted, this morning's plan. */
public final class ReadingsView extends BorderPane {

  private final RoundPane round;
  private final LogPane log;
  private final FoundPane found;
  private final MorningPane morning;
  private boolean stale = true;

  /**
   * A view.
   *
   * @param clock the time
   * @param crew knows where the crew is, and the plan as it was this morning
   */
  public ReadingsView(TripDocument document, Clock clock, Crew crew) {
    round = new RoundPane(document, clock);
    log = new LogPane(document, round::time);
    found = new FoundPane(document);
    morning = new MorningPane(document, crew::thisMorning);
    TitledPane compared = section("This morning's plan beside now", morning);
    compared.setExpanded(false);
    VBox page =
        new VBox(
            section("A round with the gauge", round),
            section("Found by the readings", found),
            section("Noted on the way", log),
            compared);
    page.getStyleClass().add("readings");
    ScrollPane scroll = new ScrollPane(page);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("page-scroll");
    setCenter(scroll);
    document.plannedProperty().addListener(change -> changed());
    document.unitsProperty().addListener(change -> changed());
    compared.expandedProperty().addListener(change -> morning.refresh());
    sceneProperty()
        .addListener(
            change -> {
              if (getScene() != null) {
                round.goToCrew();
                if (stale) {
                  refresh();
                }
              }
            });
  }

  private static TitledPane section(String title, Node content) {
    TitledPane section = new TitledPane(title, content);
    section.getStyleClass().add("section");
    section.setAnimated(false);
    return section;
  }

  private void changed() {
    if (getScene() == null) {
      stale = true;
    } else {
      refresh();
    }
  }

  private void refresh() {
    stale = false;
    round.refresh();
    found.refresh();
    log.refresh();
    morning.refresh();
  }
}
