package dawngauge.ui.route;

import dawngauge.advice.Mark;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.explain.Step;
import dawngauge.explain.Terms;
import dawngauge.forecast.Explanation;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.ledger.Wording;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.rules.Quantile;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import dawngauge.ui.common.MarkShape;
import dawngauge.ui.common.Texts;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.HPos;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;

/**
 * All tires at the chosen stop. Every figure explains itself: by pointing at it, and in full below
 * when it is pressed or focused and Enter is struck.
 */
final class TireTable extends VBox {

  private static final int SETTLED = 3;

  /** What there is room for. */
  private enum Room {
    /** Every column, with its range. */
    ALL(484, 600),
    /** The range on arrival, which is compared with the gauge; cold here is told by the grid. */
    ARRIVAL(360, 425),
    /** No ranges and no figures cold here: they are told on asking. */
    LITTLE(0, 0);

    private final double us;
    private final double si;

    Room(double us, double si) {
      this.us = us;
      this.si = si;
    }

    static Room in(double width, UnitSystem units) {
      for (Room room : values()) {
        if (width >= (units == UnitSystem.US ? room.us : room.si)) {
          return room;
        }
      }
      return LITTLE;
    }
  }

  private static final int COLUMNS = 10;

  private final GridPane grid = new GridPane();

  /** What is laid out now: the figures of other advice for the same tires go into it. */
  private List<Object> laidOut = List.of();

  private final Map<Integer, Figure> figures = new HashMap<>();
  private final Map<Integer, Mark> marks = new HashMap<>();
  private final Label note = new Label();
  private final StepsPane steps;
  private UnitSystem units = UnitSystem.US;
  private @Nullable Trip trip;
  private @Nullable StopAdvice stop;
  private Room room = Room.ALL;
  private double available = Double.MAX_VALUE;

  /** An empty table whose figures are explained in a pane. */
  TireTable(StepsPane steps) {
    this.steps = steps;
    getStyleClass().add("tire-table");
    grid.getStyleClass().add("tire-grid");
    note.getStyleClass().add("lesser");
    note.setWrapText(true);
    getChildren().addAll(grid, note);
  }

  /** Shows the tires at a stop. */
  void show(Trip trip, StopAdvice stop, UnitSystem shown) {
    units = shown;
    this.trip = trip;
    this.stop = stop;
    room = Room.in(available, units);
    grid.pseudoClassStateChanged(Styles.TIGHT, room != Room.ALL);
    List<Object> layout = new ArrayList<>(List.of(room, units));
    for (TireAdvice advice : stop.tires()) {
      layout.add(advice.tire().fitted().position());
      layout.add(trip.rig().shortForm(advice.tire().fitted().position()));
    }
    if (!layout.equals(laidOut)) {
      layOut(trip, stop);
      laidOut = layout;
    }
    int row = 1;
    for (TireAdvice advice : stop.tires()) {
      figures(advice, row++);
    }
  }

  /** Heads, names of the tires, and room for the rest. */
  private void layOut(Trip trip, StopAdvice stop) {
    grid.getChildren().clear();
    figures.clear();
    marks.clear();
    note.setText(
        "Pressures in "
            + units.unitOf(QuantityKind.GAUGE_PRESSURE).symbol()
            + (room == Room.LITTLE ? "" : "; 9 of 10 readings lie in the range behind ±")
            + ".");
    String[] heads = {
      "tire",
      "arrive",
      "leave",
      Terms.COLD_HERE,
      Terms.LOWEST_AHEAD,
      Terms.LOWEST_SAFE,
      Terms.SET_COLD_TO,
      Terms.NEVER_OVER,
      "margin",
      ""
    };
    for (int i = 0; i < heads.length; i++) {
      if (room != Room.ALL && i == SETTLED) {
        continue;
      }
      Label head = new Label(heads[i].replaceFirst(" ", "\n"));
      head.getStyleClass().add("table-head");
      head.setMinWidth(USE_PREF_SIZE);
      head.setTextAlignment(TextAlignment.RIGHT);
      GridPane.setHalignment(head, i == 0 ? HPos.LEFT : HPos.RIGHT);
      GridPane.setValignment(head, VPos.BOTTOM);
      grid.add(head, i, 0);
    }
    int row = 1;
    for (TireAdvice advice : stop.tires()) {
      WheelPosition position = advice.tire().fitted().position();
      Label name = new Label(trip.rig().shortForm(position));
      name.setMinWidth(USE_PREF_SIZE);
      name.getStyleClass().add("tire-name");
      Texts.tipped(name, () -> new Tooltip(position.words()));
      grid.add(name, 0, row++);
    }
  }

  /** Leaves out what a width has no room for. */
  void fit(double width) {
    available = width;
    Trip shown = trip;
    StopAdvice at = stop;
    if (Room.in(width, units) != room && shown != null && at != null) {
      show(shown, at, units);
    }
  }

  /** Shows nothing, as where no time is known. */
  void clear() {
    stop = null;
    laidOut = List.of();
    grid.getChildren().clear();
    figures.clear();
    marks.clear();
    note.setText("Shown as soon as the times and temperatures of the way are known.");
  }

  private void figures(TireAdvice advice, int row) {
    TireAtStop at = advice.tire();
    TireSnapshot arrival = at.arrival();
    TireSnapshot check = at.check();
    TireSnapshot leaving = at.leaving();
    String who = at.fitted().position().words();
    figure(
        1, row, reading(arrival, room != Room.LITTLE), who + ", arriving", () -> stepsTo(arrival));
    figure(
        2, row, reading(check, room == Room.ALL), who + ", before leaving", () -> stepsTo(check));
    if (room == Room.ALL) {
      figure(
          SETTLED,
          row,
          settled(leaving),
          who + ", " + Terms.COLD_HERE + " when leaving",
          () -> stepsTo(leaving));
    }
    TireSnapshot low = at.low() == null ? null : at.low().moment();
    figure(
        4,
        row,
        low == null ? "–" : Wording.pressure(low.judged(), units),
        who + ", " + Terms.LOWEST_AHEAD,
        () -> low == null ? List.of() : Explanation.ofMargin(at, low));
    figure(
        5,
        row,
        floor(at.limits().floor()),
        who + ", " + Terms.LOWEST_SAFE,
        () -> Explanation.ofLimits(at));
    figure(
        6,
        row,
        pressure(at.limits().aim()),
        who + ", " + Terms.SET_COLD_TO,
        () -> Explanation.ofLimits(at));
    figure(
        7,
        row,
        pressure(at.limits().ceiling()),
        who + ", " + Terms.NEVER_OVER,
        () -> Explanation.ofLimits(at));
    TireSnapshot judged = low != null && at.lowMargin() < at.margin() ? low : leaving;
    figure(
        8,
        row,
        Wording.signedPercent(at.worstMargin()),
        who + ", load margin until the next stop",
        () -> judged == null ? List.of() : Explanation.ofMargin(at, judged));
    if (marks.get(row) != advice.mark()) {
      marks.put(row, advice.mark());
      mark(advice.mark(), row);
    }
  }

  private void mark(Mark shown, int row) {
    grid.getChildren()
        .removeIf(
            node ->
                node instanceof HBox && Integer.valueOf(row).equals(GridPane.getRowIndex(node)));
    HBox mark = new HBox(5, new MarkShape(shown));
    if (room == Room.ALL) {
      Label word = new Label(shown.word());
      word.setMinWidth(USE_PREF_SIZE);
      mark.getChildren().add(word);
    }
    mark.setAccessibleText(shown.word());
    mark.setAlignment(Pos.CENTER_LEFT);
    mark.setPadding(new Insets(0, 0, 0, 4));
    grid.add(mark, COLUMNS - 1, row);
  }

  private static List<Step> stepsTo(@Nullable TireSnapshot moment) {
    return moment == null ? List.of() : Explanation.ofReading(moment);
  }

  private String reading(@Nullable TireSnapshot moment, boolean withRange) {
    if (moment == null || Double.isNaN(moment.reading())) {
      return "–";
    }
    if (!withRange) {
      return Wording.pressure(moment.reading(), units);
    }
    double spread = Quantile.NINETY_WITHIN * moment.readingSigma();
    return Wording.pressure(moment.reading(), units) + " ±" + Wording.pressure(spread, units);
  }

  private String settled(@Nullable TireSnapshot moment) {
    return moment == null ? "–" : Wording.pressure(moment.settled(), units);
  }

  private String floor(double pascals) {
    return Double.isNaN(pascals) ? "–" : Wording.floor(pascals, units);
  }

  private String pressure(double pascals) {
    return Double.isNaN(pascals) ? "–" : Wording.pressure(pascals, units);
  }

  /** Makes the steps of a figure when they are asked for. */
  private interface Maker {
    List<Step> make();
  }

  /** One figure of the table, which tells how it came about. */
  private final class Figure extends Button {
    private String what = "";
    private Maker maker = List::of;

    Figure() {
      getStyleClass().add("figure-button");
      setMinWidth(USE_PREF_SIZE);
      Texts.tipped(
          this,
          () -> {
            Tooltip tip = new Tooltip(what);
            tip.setOnShowing(event -> tip.setText(what + "\n" + steps.written(maker.make())));
            return tip;
          });
      setOnAction(event -> steps.explain(what + ": " + getText(), maker.make()));
    }

    void show(String text, String meaning, Maker made) {
      what = meaning;
      maker = made;
      if (!text.equals(getText())) {
        setText(text);
      }
      setAccessibleText(what + ": " + text);
    }
  }

  private void figure(int column, int row, String text, String what, Maker maker) {
    Figure known = figures.get(cell(column, row));
    if (known == null) {
      known = new Figure();
      figures.put(cell(column, row), known);
      GridPane.setHalignment(known, HPos.RIGHT);
      grid.add(known, column, row);
    }
    known.show(text, what, maker);
  }

  private static int cell(int column, int row) {
    return row * COLUMNS + column;
  }
}
