package dawngauge.ui.route;

import dawngauge.ledger.Wording;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.trip.AirEdits;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Provenance;
import dawngauge.trip.StopAir;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import dawngauge.ui.common.Texts;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.control.CheckBox;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * The air at a stop, given once, as low and high of each day, or by the hour. Another way that is
 * looked at changes nothing until a figure is typed there.
 */
final class AirFields extends VBox {

  private final EditedStop stop;
  private final EditorGrid head = new EditorGrid();
  private final EditorGrid steady = new EditorGrid();
  private final DayRows days;
  private final HourRows hours;
  private final EditorGrid foot = new EditorGrid();
  private final Map<StopAir.Kind, RadioButton> ways = new EnumMap<>(StopAir.Kind.class);
  private StopAir.@Nullable Kind wanted;

  AirFields(EditedStop stop) {
    this.stop = stop;
    this.days = new DayRows(stop);
    this.hours = new HourRows(stop);
    getStyleClass().add("edited-rows");
    head.heading(() -> "Air temperature here");
    head.wide(choice());
    head.wideNote(this::whatCounts);
    steady.field(
        () -> "Steady",
        new FigureField<>(
            "Steady",
            text -> Forms.figure(QuantityKind.TEMPERATURE, stop.units()).apply(text),
            value ->
                stop.document()
                    .edit(AirEdits.withSteady(stop.trip(), stop.id(), value.orElse(null)))),
        () -> EditorGrid.text(air().temperature()));
    uncertainty();
    measured();
    foot.wideNote(this::origin);
    getChildren().addAll(head, steady, days, hours, foot);
    getChildren().forEach(part -> part.managedProperty().bind(part.visibleProperty()));
  }

  private FlowPane choice() {
    ToggleGroup group = new ToggleGroup();
    FlowPane pane = new FlowPane(12, 4);
    for (StopAir.Kind kind : StopAir.Kind.values()) {
      RadioButton way = new RadioButton(kind.words());
      way.setToggleGroup(group);
      way.setAccessibleText("Air given: " + kind.words());
      way.setOnAction(
          event -> {
            wanted = kind;
            refresh();
          });
      ways.put(kind, way);
      pane.getChildren().add(way);
    }
    return pane;
  }

  private void uncertainty() {
    FigureField<Optional<Entered<TemperatureDifference>>> field =
        new FigureField<>(
            "Uncertainty of the air",
            text ->
                Forms.positive(QuantityKind.TEMPERATURE_DIFFERENCE, stop.units())
                    .apply(text.startsWith("±") ? text.substring(1).strip() : text),
            value ->
                stop.document()
                    .edit(AirEdits.withUncertainty(stop.trip(), stop.id(), value.orElse(null))));
    foot.field(() -> "Uncertainty ±", field, () -> EditorGrid.text(spread()));
    foot.onRefresh(
        () -> {
          field.field().setDisable(air().counts() == null);
          field.field().setPromptText(spreads().size() > 1 ? "differs by day" : "assumed (1 σ)");
        });
  }

  /** What came is surer than what was expected, however long before. */
  private void measured() {
    CheckBox box = new CheckBox("measured here, not expected");
    box.setAccessibleText("Measured here, not expected");
    box.setOnAction(
        event ->
            stop.document().edit(AirEdits.withMeasured(stop.trip(), stop.id(), box.isSelected())));
    foot.wide(box);
    foot.onRefresh(
        () -> {
          box.setSelected(air().measured());
          box.setDisable(!air().byHand());
        });
  }

  private List<Entered<TemperatureDifference>> spreads() {
    StopAir.Kind counts = air().counts();
    return counts == null
        ? List.of()
        : air().of(counts).stream()
            .map(AmbientEntry::uncertainty)
            .filter(Objects::nonNull)
            .distinct()
            .toList();
  }

  private @Nullable Entered<TemperatureDifference> spread() {
    List<Entered<TemperatureDifference>> all = spreads();
    return all.size() == 1 ? all.get(0) : null;
  }

  private StopAir air() {
    return StopAir.of(stop.trip(), stop.id());
  }

  /** The way that is looked at: what was chosen, else what counts, else what can be typed. */
  private StopAir.Kind shown() {
    StopAir.Kind counts = air().counts();
    if (wanted != null) {
      return wanted;
    } else if (counts != null) {
      return counts;
    }
    boolean curve = stop.stop().coordinate() != null && !stop.clock().days().isEmpty();
    return curve ? StopAir.Kind.LOW_HIGH : StopAir.Kind.STEADY;
  }

  /** Forgets what was looked at: the stop is another one now. */
  void become() {
    wanted = null;
    days.become();
  }

  void refresh() {
    StopAir.Kind shown = shown();
    Objects.requireNonNull(ways.get(shown)).setSelected(true);
    steady.setVisible(shown == StopAir.Kind.STEADY);
    days.setVisible(shown == StopAir.Kind.LOW_HIGH);
    hours.setVisible(shown == StopAir.Kind.HOURLY);
    head.refresh();
    steady.refresh();
    days.refresh();
    hours.refresh();
    foot.refresh();
  }

  private String whatCounts() {
    StopAir air = air();
    StopAir.Kind counts = air.counts();
    if (counts == null) {
      return "";
    } else if (counts != shown()) {
      return "What is given as “"
          + counts.words()
          + "” counts and is kept until a figure is typed here, which then takes its place.";
    }
    if (air.continues()) {
      return "Where the forecast by the hour ends, typical days go on.";
    }
    String others =
        air.entries().stream()
            .map(entry -> StopAir.Kind.of(entry.figure()))
            .filter(kind -> kind != counts)
            .distinct()
            .map(StopAir.Kind::words)
            .collect(Collectors.joining(" and "));
    return others.isEmpty() ? "" : "This counts; what is given as “" + others + "” does not.";
  }

  private String origin() {
    StopAir.Kind counts = air().counts();
    if (counts == null) {
      return "";
    }
    ZoneId zone = stop.clock().zone();
    return air().of(counts).stream()
        .map(entry -> words(entry.provenance(), zone))
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private static String words(Provenance origin, ZoneId zone) {
    String kind =
        switch (origin.kind()) {
          case TYPED -> "Typed";
          case MEASURED -> "Measured here";
          case FEED -> "From a weather service";
          case TYPICAL -> "Typical for place and date, no forecast";
        };
    String source = origin.source() == null ? "" : ": " + Texts.shortened(origin.source());
    var issued = origin.issued();
    return kind
        + source
        + (issued == null
            ? ""
            : ", issued "
                + Wording.shortDay(issued, zone)
                + " "
                + Wording.clock(issued, zone)
                + " "
                + Wording.zone(issued, zone));
  }
}
