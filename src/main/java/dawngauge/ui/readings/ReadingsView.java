package dawngauge.ui.readings;

import dawngauge.trip.TableHead;
import dawngauge.trip.TableLayout;
import dawngauge.ui.common.DraftKeeper;
import dawngauge.ui.common.Pulses;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The readings of the trip: a round at a stop, what else was noted, this morning's plan. */
public final class ReadingsView extends BorderPane {

  private static final double MOST_LEFT_OUT = 180;

  private final RoundPane round;
  private final LogPane log;
  private final FoundPane found;
  private final MorningPane morning;
  private final BreakdownPane breakdown;
  private final TitledPane flat;
  private final TripDocument document;
  private final VBox page;
  private final ScrollPane scroll;
  private final VBox table = new VBox(4);
  private boolean stale = true;

  /**
   * A view.
   *
   * @param clock the time
   * @param crew knows where the crew is, and the plan as it was this morning
   */
  public ReadingsView(TripDocument document, Clock clock, TripStatusBar crew) {
    this.document = document;
    round = new RoundPane(document, clock);
    log = new LogPane(document, round::time);
    found = new FoundPane(document);
    morning = new MorningPane(document, crew::thisMorning);
    breakdown = new BreakdownPane(document, round::visit);
    flat = section("A tire is flat", breakdown);
    flat.setExpanded(false);
    flat.expandedProperty().addListener(change -> showBreakdown());
    TitledPane compared = section("This morning's plan beside now", morning);
    compared.setExpanded(false);
    page =
        new VBox(
            table,
            section("A round with the gauge", round),
            flat,
            section("Found by the readings", found),
            section("Noted on the way", log),
            compared);
    table.getStyleClass().add("table-place");
    table.managedProperty().bind(table.visibleProperty());
    table.setVisible(false);
    page.getStyleClass().add("readings");
    scroll = new ScrollPane(page);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("page-scroll");
    setCenter(scroll);
    document.shownProperty().addListener(change -> changed());
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

  /** What is half typed of a round. */
  public DraftKeeper drafts() {
    return round;
  }

  private static TitledPane section(String title, Node content) {
    TitledPane section = new TitledPane(title, content);
    section.getStyleClass().add("section");
    section.setAnimated(false);
    return section;
  }

  /**
   * Asks what stands in which column of a table.
   *
   * @param head how it begins
   * @param remembered what was said of such a table before
   * @param taker takes the layout, and it as text to be remembered
   */
  public void askLayout(
      TableHead head, Optional<String> remembered, BiConsumer<TableLayout, String> taker) {
    table
        .getChildren()
        .setAll(new TablePane(document, head, remembered, taker, () -> table.setVisible(false)));
    table.setVisible(true);
  }

  /** Lists the rows of a table that were left out; closes what was asked about it. */
  public void leftOut(String file, List<String> lines) {
    table.getChildren().clear();
    table.setVisible(!lines.isEmpty());
    if (lines.isEmpty()) {
      return;
    }
    Label title = new Label("Left out of " + file);
    title.getStyleClass().add("chosen-stop");
    Button close = new Button("Close");
    close.setAccessibleText("Close the list of what was left out");
    close.getStyleClass().add("small-button");
    close.setOnAction(event -> table.setVisible(false));
    HBox bar = new HBox(12, title, close);
    bar.setAlignment(Pos.CENTER_LEFT);
    VBox rows = new VBox(1);
    for (String line : lines) {
      rows.getChildren().add(Texts.line(line, "left-out"));
    }
    ScrollPane list = new ScrollPane(rows);
    list.setFitToWidth(true);
    list.setMaxHeight(MOST_LEFT_OUT);
    list.getStyleClass().add("page-scroll");
    table.getChildren().setAll(bar, list);
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
    showBreakdown();
  }

  private void showBreakdown() {
    if (flat.isExpanded()) {
      breakdown.refresh();
    }
  }

  /** Shows what to do about a flat tire. */
  public void askBreakdown() {
    flat.setExpanded(true);
    Pulses.after(
        getScene(),
        () -> {
          double over = page.getHeight() - scroll.getViewportBounds().getHeight();
          scroll.setVvalue(over > 0 ? Math.min(1, flat.getBoundsInParent().getMinY() / over) : 0);
          breakdown.choose();
        });
  }
}
