package dawngauge.ui.route;

import dawngauge.advice.Mark;
import dawngauge.ledger.Card;
import dawngauge.ledger.StopLine;
import dawngauge.ui.common.MarkShape;
import dawngauge.ui.common.TaskLine;
import dawngauge.ui.common.Texts;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;

/**
 * The row of one stop: its clock, place and facts, what the tightest tire reads and its margin, the
 * strongest mark, and below it what is to be done, each thing in two lines at the most.
 */
final class StopRow extends GridPane {

  /** Columns of the ledger, in order, as the heading above it names them. */
  enum Column {
    CLOCK(54, ""),
    PLACE(0, "stop"),
    READS(88, "arrive → leave"),
    MARGIN(48, "margin"),
    MARK(92, "mark");

    private final double width;
    private final String heading;

    Column(double width, String heading) {
      this.width = width;
      this.heading = heading;
    }

    String heading() {
      return heading;
    }
  }

  StopRow(StopLine stop) {
    getStyleClass().add("stop-row");
    setUserData(!stop.newDay().isEmpty());
    setAccessibleRole(AccessibleRole.BUTTON);
    setAccessibleText(spoken(stop));
    columns(this);
    RowConstraints top = new RowConstraints();
    top.setValignment(VPos.TOP);
    getRowConstraints().addAll(top, top, top);
    add(clock(stop.arrive().isEmpty() ? stop.leave() : stop.arrive()), 0, 0);
    Label place = Texts.twoLines(stop.place());
    place.getStyleClass().add("place");
    add(place, 1, 0);
    StopLine.TireRow tight = stop.tightest();
    if (tight != null) {
      add(figure(reads(stop, tight)), 2, 0);
      add(figure(tight.margin()), 3, 0);
      Label who =
          Texts.line("of " + tight.tires() + (tight.byEstimate() ? ", by estimate" : ""), "lesser");
      setHalignment(who, HPos.LEFT);
      add(who, 3, 1, 2, 1);
    }
    add(markOf(stop.mark()), 4, 0);
    add(leaving(stop), 0, 1);
    add(facts(stop), 1, 1, tight == null ? 4 : 2, 1);
    VBox tasks = tasks(stop);
    if (!tasks.getChildren().isEmpty()) {
      add(tasks, 1, 2, 4, 1);
    }
  }

  /** Gives a grid the ledger's columns. */
  static void columns(GridPane grid) {
    for (Column column : Column.values()) {
      ColumnConstraints made =
          column.width > 0
              ? new ColumnConstraints(column.width, column.width, column.width)
              : new ColumnConstraints(110, 200, Double.MAX_VALUE);
      if (column.width == 0) {
        made.setHgrow(Priority.ALWAYS);
      }
      boolean right = column == Column.READS || column == Column.MARGIN || column == Column.CLOCK;
      made.setHalignment(right ? HPos.RIGHT : HPos.LEFT);
      grid.getColumnConstraints().add(made);
    }
  }

  private static String reads(StopLine stop, StopLine.TireRow tight) {
    if (stop.number() == 1) {
      return tight.checkReads();
    }
    boolean once = stop.leg().isEmpty() || tight.arriveReads().equals(tight.checkReads());
    return once ? tight.arriveReads() : tight.arriveReads() + " → " + tight.checkReads();
  }

  private static String spoken(StopLine stop) {
    StringBuilder text = new StringBuilder();
    text.append("Stop ").append(stop.number()).append(", ").append(stop.place());
    text.append(", ").append(stop.mark().word());
    for (Card.Line line : stop.card().todo()) {
      text.append(". ").append(line.mark().word()).append(". ").append(line.text());
    }
    stop.card().watch().forEach(line -> text.append(". ").append(line));
    if (!stop.slightChance()) {
      text.append(". ").append(stop.chance());
    }
    return text.toString();
  }

  private static Label clock(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("clock");
    label.setMinWidth(USE_PREF_SIZE);
    return label;
  }

  /** The second clock, and the letters of the zone where they are new. */
  private static VBox leaving(StopLine stop) {
    VBox box = new VBox();
    box.setAlignment(Pos.TOP_RIGHT);
    if (!stop.arrive().isEmpty() && !stop.leave().isEmpty()) {
      box.getChildren().add(clock(stop.leave()));
    }
    if (!stop.zone().isEmpty()) {
      Label zone = new Label(stop.zone());
      zone.getStyleClass().add("lesser");
      zone.setWrapText(true);
      box.getChildren().add(zone);
    }
    return box;
  }

  private static VBox facts(StopLine stop) {
    Label facts =
        new Label(
            Stream.of(stop.kind(), stop.air(), stop.elevation(), stop.hose())
                .filter(fact -> !fact.isEmpty())
                .collect(Collectors.joining(" · ")));
    VBox box = new VBox(facts);
    for (String load : stop.loads()) {
      box.getChildren().add(new Label(load));
    }
    box.getChildren()
        .forEach(
            line -> {
              line.getStyleClass().add("lesser");
              ((Label) line).setWrapText(true);
            });
    return box;
  }

  private static Label figure(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("figure");
    label.setMinWidth(USE_PREF_SIZE);
    return label;
  }

  private static HBox markOf(Mark mark) {
    Label word = new Label(mark.word());
    word.getStyleClass().addAll("mark-word", "mark-word-" + mark.name().toLowerCase(Locale.ROOT));
    word.setMinWidth(USE_PREF_SIZE);
    HBox box = new HBox(6, new MarkShape(mark), word);
    box.setAlignment(Pos.TOP_LEFT);
    return box;
  }

  private static VBox tasks(StopLine stop) {
    VBox box = new VBox();
    box.getStyleClass().add("tasks");
    box.getChildren().addAll(TaskLine.few(stop.card()));
    stop.card().watch().forEach(line -> box.getChildren().add(lesser(line)));
    if (!stop.slightChance()) {
      box.getChildren().add(lesser(stop.chance()));
    }
    return box;
  }

  private static Label lesser(String text) {
    Label label = Texts.twoLines(text);
    label.getStyleClass().add("lesser");
    return label;
  }
}
