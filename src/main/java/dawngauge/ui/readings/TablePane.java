package dawngauge.ui.readings;

import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Gauge;
import dawngauge.trip.TableHead;
import dawngauge.trip.TableLayout;
import dawngauge.trip.TableLayout.Column;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** Asks once what stands in which column of a table of readings. */
public final class TablePane extends VBox {

  private static final String NOT_READ = "not read";
  private static final String OF = "pressure of ";

  private static final Pattern TIME = Pattern.compile("\\d{4}-\\d\\d-\\d\\d[T ]\\d\\d:\\d\\d.*");

  private final TripDocument document;
  private final TableHead head;
  private final List<ChoiceBox<String>> roles = new ArrayList<>();
  private final ChoiceBox<String> pressure = new ChoiceBox<>();
  private final ChoiceBox<String> gauge = new ChoiceBox<>();
  private final FigureField<Optional<ZoneId>> zone;
  private final CheckBox recorder = new CheckBox("from a recorder: many rows a minute");
  private final Button take = new Button("Take the readings");
  private Optional<ZoneId> zoneChosen;

  /**
   * A pane.
   *
   * @param head how the table begins
   * @param remembered what was said of such a table before, as {@link #written}
   * @param taker takes the layout, and it as text to be remembered
   * @param close closes the pane
   */
  public TablePane(
      TripDocument document,
      TableHead head,
      Optional<String> remembered,
      BiConsumer<TableLayout, String> taker,
      Runnable close) {
    this.document = document;
    this.head = head;
    Trip trip = document.trip();
    zoneChosen =
        trip.route().stops().stream().findFirst().flatMap(s -> Optional.ofNullable(s.zone()));
    zone = new FigureField<>("Zone of its clock", Forms::zone, value -> zoneChosen = value);
    zone.put(zoneChosen.map(ZoneId::getId).orElse(""));
    zone.field().setPromptText("America/Denver");
    zone.field().setPrefColumnCount(14);
    for (Unit unit : List.of(Unit.PSI, Unit.BAR, Unit.KILOPASCAL)) {
      pressure.getItems().add(unit.symbol());
    }
    pressure.setAccessibleText("Unit of its pressures");
    trip.rig().gauges().forEach(each -> gauge.getItems().add(each.name()));
    gauge.setAccessibleText("Gauge or recorder that read");
    if (!gauge.getItems().isEmpty()) {
      gauge.setValue(
          trip.rig().gauges().stream()
              .filter(each -> each.kind() == Gauge.Kind.SEA_LEVEL_SUBTRACTED)
              .findFirst()
              .map(Gauge::name)
              .orElse(gauge.getItems().get(0)));
    }
    GridPane grid = columns(trip);
    Label title = new Label("What stands in which column?");
    title.getStyleClass().add("chosen-stop");
    Label hint =
        new Label(
            "Time and pressures are needed, and either a column that names the tire or one column a"
                + " tire. Of a recorder only what it showed within ten minutes after an arrival and"
                + " twenty before a cold departure is taken, one median a tire. A recorder that"
                + " shows absolute pressure less that at sea level belongs to a gauge of that kind.");
    hint.getStyleClass().add("lesser");
    hint.setWrapText(true);
    hint.setMinHeight(USE_PREF_SIZE);
    Button back = new Button("Close");
    back.setOnAction(event -> close.run());
    take.setOnAction(event -> chosen().ifPresent(layout -> taker.accept(layout, written())));
    FlowPane asked =
        new FlowPane(
            8,
            6,
            new Label("pressures in"),
            pressure,
            new Label("clock of"),
            zone,
            new Label("read by"),
            gauge,
            recorder,
            take,
            back);
    asked.getStyleClass().add("asked");
    getStyleClass().add("table-pane");
    setSpacing(8);
    getChildren().addAll(title, hint, grid, asked);
    guess();
    remembered.ifPresent(this::restore);
    roles.forEach(role -> role.setOnAction(event -> judge()));
    judge();
  }

  private GridPane columns(Trip trip) {
    List<String> choices = new ArrayList<>(List.of(NOT_READ));
    for (Column column : Column.values()) {
      choices.add(column.word());
    }
    for (WheelPosition position : trip.rig().positions()) {
      choices.add(OF + trip.rig().shortForm(position));
    }
    GridPane grid = new GridPane();
    grid.getStyleClass().add("compared");
    String[] heads = {"column", "begins with", "is"};
    for (int i = 0; i < heads.length; i++) {
      Label label = new Label(heads[i]);
      label.getStyleClass().add("table-head");
      grid.add(label, i, 0);
    }
    for (int i = 0; i < head.columns().size(); i++) {
      ChoiceBox<String> role = new ChoiceBox<>();
      role.getItems().setAll(choices);
      role.setValue(NOT_READ);
      role.setAccessibleText("What column " + head.columns().get(i) + " is");
      roles.add(role);
      List<String> first = new ArrayList<>();
      for (List<String> row : head.sample()) {
        if (i < row.size()) {
          first.add(row.get(i));
        }
      }
      grid.addRow(
          i + 1,
          Texts.line(head.columns().get(i), "tire-name"),
          Texts.line(String.join(" · ", first), "lesser"),
          role);
    }
    return grid;
  }

  /** What the columns are by their names. */
  private void guess() {
    pressure.setValue((document.units() == UnitSystem.US ? Unit.PSI : Unit.BAR).symbol());
    int tires = 0;
    for (int i = 0; i < roles.size(); i++) {
      String name = head.columns().get(i).toLowerCase(Locale.ROOT);
      String tire = tireOf(name);
      if (isTime(i) || name.contains("time") || name.contains("stamp")) {
        roles.get(i).setValue(Column.TIME.word());
      } else if (!tire.isEmpty()) {
        roles.get(i).setValue(OF + tire);
        tires++;
      } else if (name.contains("tire") || name.contains("wheel") || name.contains("position")) {
        roles.get(i).setValue(Column.TIRE.word());
      } else if (name.contains("press") || name.contains("psi") || name.contains("kpa")) {
        roles.get(i).setValue(Column.PRESSURE.word());
      }
      for (String unit : pressure.getItems()) {
        if (name.contains(unit.toLowerCase(Locale.ROOT))) {
          pressure.setValue(unit);
        }
      }
    }
    recorder.setSelected(tires > 0);
  }

  private boolean isTime(int column) {
    return head.sample().stream()
        .anyMatch(row -> column < row.size() && TIME.matcher(row.get(column)).matches());
  }

  /** The tire whose column it is by its name; empty where it is none. */
  private String tireOf(String name) {
    Trip trip = document.trip();
    for (WheelPosition position : trip.rig().positions()) {
      String shortForm = trip.rig().shortForm(position);
      if (name.equals(shortForm)
          || name.equals(position.words().toLowerCase(Locale.ROOT))
          || name.startsWith(shortForm + " ")) {
        return shortForm;
      }
    }
    return "";
  }

  private void judge() {
    take.setDisable(chosen().isEmpty());
  }

  private Optional<TableLayout> chosen() {
    Map<Column, Integer> columns = new EnumMap<>(Column.class);
    Map<Integer, String> tires = new HashMap<>();
    Trip trip = document.trip();
    for (int i = 0; i < roles.size(); i++) {
      String role = String.valueOf(roles.get(i).getValue());
      for (Column column : Column.values()) {
        if (column.word().equals(role)) {
          columns.putIfAbsent(column, i);
        }
      }
      for (WheelPosition position : trip.rig().positions()) {
        int index = i;
        if (role.equals(OF + trip.rig().shortForm(position))) {
          trip.rig().fittedAt(position).ifPresent(tire -> tires.put(index, tire.id()));
        }
      }
    }
    boolean whole =
        columns.containsKey(Column.TIME)
            && gauge.getValue() != null
            && (!tires.isEmpty()
                || (columns.containsKey(Column.TIRE) && columns.containsKey(Column.PRESSURE)));
    Unit unit = Unit.PSI;
    for (Unit each : List.of(Unit.PSI, Unit.BAR, Unit.KILOPASCAL)) {
      unit = each.symbol().equals(pressure.getValue()) ? each : unit;
    }
    return whole
        ? Optional.of(
            new TableLayout(
                columns,
                tires,
                zoneChosen.orElse(ZoneOffset.UTC),
                unit,
                document.units() == UnitSystem.US ? Unit.FAHRENHEIT : Unit.CELSIUS,
                gauge.getValue(),
                recorder.isSelected()))
        : Optional.empty();
  }

  /** What is chosen, one line a choice. */
  private String written() {
    List<String> lines = new ArrayList<>();
    roles.forEach(role -> lines.add(String.valueOf(role.getValue())));
    lines.add(String.valueOf(pressure.getValue()));
    lines.add(zoneChosen.map(ZoneId::getId).orElse(""));
    lines.add(String.valueOf(gauge.getValue()));
    lines.add(String.valueOf(recorder.isSelected()));
    return String.join("\n", lines);
  }

  private void restore(String text) {
    List<String> lines = text.lines().toList();
    if (lines.size() != roles.size() + 4) {
      return;
    }
    for (int i = 0; i < roles.size(); i++) {
      choose(roles.get(i), lines.get(i));
    }
    choose(pressure, lines.get(roles.size()));
    String zoneText = lines.get(roles.size() + 1);
    Forms.zone(zoneText)
        .value()
        .ifPresent(
            value -> {
              zoneChosen = value;
              zone.put(zoneText);
            });
    choose(gauge, lines.get(roles.size() + 2));
    recorder.setSelected(Boolean.parseBoolean(lines.get(roles.size() + 3)));
  }

  private static void choose(ChoiceBox<String> box, String value) {
    if (box.getItems().contains(value)) {
      box.setValue(value);
    }
  }
}
