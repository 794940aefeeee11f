package dawngauge.ui.route;

import dawngauge.advice.Mark;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.StopGrid;
import dawngauge.ledger.Verdict;
import dawngauge.ledger.Wording;
import dawngauge.ui.common.MarkShape;
import dawngauge.ui.common.Texts;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/**
 * The trip in one line above the grid: pressing a part dims the stops it does not speak of and goes
 * to the first it does, pressing it again to the next. At the right, which figure the cells show.
 */
final class VerdictBar extends HBox {

  /** Told which rows are spoken of, and which of them to go to. */
  interface Walk {
    void to(Set<Integer> rows, int row);
  }

  private static final double ROOM_FOR_NOTHING = 860;
  private static final double LEAST_TEXT = 90;

  private final Walk walk;
  private final Map<Verdict.Kind, ToggleButton> buttons = new EnumMap<>(Verdict.Kind.class);
  private final ToggleGroup displays = new ToggleGroup();
  private final ToggleButton stopShown = new ToggleButton("Stop");
  private final ToggleButton mapShown = new ToggleButton("Map");
  private List<Verdict.Part> parts = List.of();
  private @Nullable Ledger shown;
  private Verdict.Kind walked = Verdict.Kind.GO;
  private int steps;
  private boolean walking;

  /**
   * An empty line.
   *
   * @param display told which figure is wanted in the cells
   */
  VerdictBar(Walk walk, Consumer<StopGrid.Display> display) {
    super(2);
    this.walk = walk;
    getStyleClass().add("verdict");
    for (Verdict.Kind kind : Verdict.Kind.values()) {
      ToggleButton button = new ToggleButton();
      button
          .getStyleClass()
          .addAll("verdict-part", "verdict-" + kind.name().toLowerCase(Locale.ROOT));
      boolean shrinks = kind == Verdict.Kind.GO || kind == Verdict.Kind.LEAST;
      button.setMinWidth(shrinks ? LEAST_TEXT : USE_PREF_SIZE);
      button.setOnAction(event -> press(kind));
      Texts.tipped(button, () -> tip(kind)); // once: each time would keep the ledger of the time
      button.managedProperty().bind(button.visibleProperty());
      buttons.put(kind, button);
      getChildren().add(button);
    }
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    getChildren().add(gap);
    for (StopGrid.Display each : StopGrid.Display.values()) {
      ToggleButton button =
          small(new ToggleButton(each.word()), "Show in each cell: " + each.word());
      button.setToggleGroup(displays);
      button.setSelected(each == StopGrid.Display.READS);
      button.setOnAction(
          event -> {
            button.setSelected(true); // one of them always is
            display.accept(each);
          });
      getChildren().add(button);
    }
    Region small = new Region();
    small.setMinWidth(6);
    stopShown.managedProperty().bind(stopShown.visibleProperty());
    getChildren()
        .addAll(
            small,
            small(stopShown, "Show or fold away the chosen stop"),
            small(mapShown, "Show or fold away the map"));
  }

  private static ToggleButton small(ToggleButton button, String tip) {
    button.getStyleClass().add("small-toggle");
    button.setMinWidth(USE_PREF_SIZE);
    Texts.tipped(button, () -> new Tooltip(tip));
    return button;
  }

  BooleanProperty stopShown() {
    return stopShown.selectedProperty();
  }

  BooleanProperty mapShown() {
    return mapShown.selectedProperty();
  }

  private ToggleButton button(Verdict.Kind kind) {
    return Objects.requireNonNull(buttons.get(kind));
  }

  /** Whether the stop is shown only when it is asked for. */
  void narrow(boolean asked) {
    stopShown.setVisible(asked);
  }

  /** In little room what counts nothing is left out, then the margin, which a column shows too. */
  private void leaveOut() {
    ToggleButton least = button(Verdict.Kind.LEAST);
    boolean wanted = true;
    for (Verdict.Part part : parts) {
      boolean nothing = part.rows().isEmpty() && part.kind() != Verdict.Kind.GO;
      boolean shows = !nothing || getWidth() > ROOM_FOR_NOTHING;
      if (part.kind() == Verdict.Kind.LEAST) {
        wanted = shows;
      } else {
        button(part.kind()).setVisible(shows);
      }
    }
    double room = getWidth() - snappedLeftInset() - snappedRightInset();
    for (Node child : getChildren()) {
      room -= child.isManaged() && child != least ? child.prefWidth(-1) + getSpacing() : 0;
    }
    boolean fits = room >= Math.min(least.prefWidth(-1), LEAST_TEXT);
    least.setVisible(wanted && fits);
    button(Verdict.Kind.GO).setMinWidth(fits ? USE_PREF_SIZE : LEAST_TEXT);
  }

  /** Shows what is told of a trip; a walk ends. */
  void show(Verdict verdict, Ledger ledger) {
    parts = verdict.parts();
    shown = ledger;
    for (Verdict.Part part : parts) {
      ToggleButton button = button(part.kind());
      boolean marked = !part.rows().isEmpty() && part.mark() != Mark.CLEAR;
      if (!part.text().equals(button.getText())) {
        button.setText(part.text());
        button.setGraphic(marked ? new MarkShape(part.mark()) : null);
      }
      button.setSelected(false);
      button.setTooltip(null);
    }
    walking = false;
    requestLayout();
  }

  /** What is seen depends on what there is room for, so it is found when that is known. */
  @Override
  protected void layoutChildren() {
    leaveOut();
    super.layoutChildren();
  }

  /** It leaves out rather than make the page wider than the window. */
  @Override
  protected double computeMinWidth(double height) {
    return 0;
  }

  private Tooltip tip(Verdict.Kind kind) {
    Ledger ledger = shown;
    return ledger == null || parts.isEmpty() ? new Tooltip() : tip(part(kind), ledger);
  }

  private Verdict.Part part(Verdict.Kind kind) {
    return parts.stream().filter(each -> each.kind() == kind).findFirst().orElseThrow();
  }

  private static Tooltip tip(Verdict.Part part, Ledger ledger) {
    List<String> lines = new ArrayList<>();
    if (part.kind() == Verdict.Kind.GO) {
      lines.addAll(ledger.go());
      lines.addAll(ledger.putRight());
    }
    lines.add(0, part.text());
    if (part.mark() != Mark.CLEAR && !part.rows().isEmpty()) {
      lines.add(
          "At "
              + Wording.list(
                  part.rows().stream().map(row -> ledger.stops().get(row).place()).toList())
              + ".");
    }
    lines.add(
        part.rows().isEmpty() ? "" : "Press: dims the other stops and goes to the next of these.");
    Tooltip tip =
        new Tooltip(String.join("\n", lines.stream().filter(line -> !line.isEmpty()).toList()));
    tip.setWrapText(true);
    tip.setMaxWidth(520);
    return tip;
  }

  private void press(Verdict.Kind kind) {
    Verdict.Part part = part(kind);
    steps = walking && kind == walked ? steps + 1 : 0;
    walked = kind;
    walking = !part.rows().isEmpty();
    buttons.forEach((each, button) -> button.setSelected(walking && each == kind));
    walk.to(new HashSet<>(part.rows()), walking ? part.rows().get(steps % part.rows().size()) : -1);
  }

  /** Ends a walk; whether there was one. */
  boolean rest() {
    boolean was = walking;
    walking = false;
    buttons.values().forEach(button -> button.setSelected(false));
    return was;
  }
}
