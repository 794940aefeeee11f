package dawngauge.ui.rig;

import dawngauge.field.TireFields;
import dawngauge.ledger.Wording;
import dawngauge.quantity.QuantityKind;
import dawngauge.tire.TireSpec;
import dawngauge.trip.AxleRef;
import dawngauge.trip.DawnReadings;
import dawngauge.trip.RigEdits;
import dawngauge.trip.RigParts;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import dawngauge.ui.fields.Cells;
import dawngauge.ui.fields.FormFields;
import dawngauge.ui.fields.FormFields.Words;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.Supplier;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Tires as rows of one table, with what is found about each below it. */
final class TireRows extends GridPane {

  private static final int COLUMNS = 9;
  private static final double PLACE_WIDTH = 84;
  private static final double FIGURE_WIDTH = 82;

  private final FormFields book;
  private final FindingLists findings;
  private int nextRow = 1;

  TireRows(FormFields book, FindingLists findings) {
    this.book = book;
    this.findings = findings;
    getStyleClass().add("rig-tires");
    getColumnConstraints().addAll(fixed(PLACE_WIDTH), growing());
    for (int i = 0; i < 6; i++) {
      getColumnConstraints().add(fixed(FIGURE_WIDTH));
    }
    getColumnConstraints().add(new ColumnConstraints());
    addRow(
        0,
        head("Tire", "place"),
        head(TireFields.TIRE_KIND.label(), "sidewall"),
        head(TireFields.DATE_CODE.label(), "sidewall"),
        head(TireFields.TREAD.label(), "gauge, bars, coin"),
        head(TireFields.DAMAGE.label(), "seen"),
        head(TireFields.LOSS_PER_DAY.label(), "known leak"),
        head(TireFields.HEAT_FACTOR.label(), "readings"),
        head("Dawn reading", "gauge, tire cold"));
  }

  private static ColumnConstraints fixed(double width) {
    ColumnConstraints column = new ColumnConstraints(width);
    column.setMinWidth(width);
    return column;
  }

  private static ColumnConstraints growing() {
    ColumnConstraints column = new ColumnConstraints();
    column.setHgrow(Priority.ALWAYS);
    column.setMinWidth(110);
    column.setPrefWidth(220);
    column.setMaxWidth(380);
    return column;
  }

  private static Node head(String name, String stands) {
    Label label = new Label(name);
    label.setWrapText(true);
    Label where = new Label(stands);
    where.getStyleClass().add("lesser");
    where.setWrapText(true);
    return new VBox(label, where);
  }

  /**
   * Adds a tire.
   *
   * @param id its id, or null where none is named
   * @param place where it is, in few words
   * @param where the same as findings name it
   * @param axle its axle, or null for one that is fitted nowhere
   */
  void add(
      @Nullable String id, String place, Supplier<String> where, @Nullable Supplier<AxleRef> axle) {
    int row = nextRow;
    nextRow += 2;
    Label name = new Label(place);
    name.getStyleClass().add("tire-name");
    name.setWrapText(true);
    Label idLabel = new Label(id == null ? "none named" : id);
    idLabel.getStyleClass().add("lesser");
    add(new VBox(name, idLabel), 0, row);
    if (id != null && book.rig().tire(id).isPresent()) {
      fields(row, id, where, axle);
    }
    add(findings.list(where), 1, row + 1, COLUMNS - 1, 1);
    getChildren().forEach(node -> setValignment(node, VPos.TOP));
  }

  private void fields(
      int row, String id, Supplier<String> where, @Nullable Supplier<AxleRef> axle) {
    Cells<Tire> cells =
        new Cells<>(
            book,
            TireFields.TIRE,
            () -> tire(id),
            List::of,
            where,
            changed -> RigEdits.withTire(book.trip(), changed));
    List<Node> nodes =
        List.of(
            cells.editor(
                TireFields.TIRE_KIND,
                () -> book.rig().tireTypes().stream().map(TireSpec::name).toList()),
            cells.editor(TireFields.DATE_CODE),
            cells.editor(TireFields.TREAD),
            cells.editor(TireFields.DAMAGE, () -> List.of(Tire.Damage.values())),
            cells.editor(TireFields.LOSS_PER_DAY),
            new VBox(4, cells.editor(TireFields.HEAT_FACTOR), record(cells, id)),
            dawn(id, where),
            axle != null
                ? copy(id, where, axle)
                : book.removing(
                    "Remove",
                    () -> "Remove " + where.get(),
                    () -> RigParts.withoutLooseTire(book.trip(), id)));
    for (int i = 0; i < nodes.size(); i++) {
      add(nodes.get(i), i + 1, row);
    }
  }

  /** What earlier trips told of its warmth, below its heat factor; seen where there is any. */
  private Node record(Cells<Tire> cells, String id) {
    Node record = cells.editor(TireFields.HEAT_RECORD);
    record.managedProperty().bind(record.visibleProperty());
    if (record instanceof FigureField<?> field) {
      field.field().setStyle("-fx-font-size: 11px; -fx-padding: 6 3 6 3;");
    }
    book.onRefresh(
        () -> {
          Tire tire = tire(id);
          record.setVisible(tire != null && tire.heatRecord() != null);
        });
    return record;
  }

  private Node dawn(String id, Supplier<String> where) {
    var field =
        book.field(
            new Words("Dawn reading", "gauge face, tire cold, before leaving", where),
            text -> Forms.figure(QuantityKind.GAUGE_PRESSURE, book.units()).apply(text),
            () -> DawnReadings.of(book.trip(), id).map(r -> r.pressure().text()).orElse(""),
            value -> DawnReadings.with(book.trip(), id, value.orElse(null)));
    book.onRefresh(() -> field.setDisable(!DawnReadings.canNote(book.trip())));
    return new VBox(field, book.note(() -> DawnReadings.said(book.trip(), id)));
  }

  /** Copies to other tires what tires of one purchase share. */
  private MenuButton copy(String id, Supplier<String> where, Supplier<AxleRef> axle) {
    MenuButton button = new MenuButton("Copy to");
    button.setMinWidth(USE_PREF_SIZE);
    String what =
        "Copy "
            + Wording.list(
                TireFields.OF_ONE_PURCHASE.stream()
                    .map(field -> field.label().toLowerCase(Locale.ROOT))
                    .toList());
    button.setTooltip(new Tooltip(what));
    book.onRefresh(() -> button.setAccessibleText(what + " of " + where.get()));
    button
        .getItems()
        .addAll(
            copying("all tires of this axle", id, ref -> ref.equals(axle.get())),
            copying(
                "all tires of this vehicle", id, ref -> ref.vehicle().equals(axle.get().vehicle())),
            copying("all tires of the rig", id, ref -> true));
    return button;
  }

  private MenuItem copying(String to, String id, Predicate<AxleRef> wanted) {
    MenuItem item = new MenuItem(to);
    item.setOnAction(
        event ->
            book.edit(
                () ->
                    RigEdits.withTiresOf(
                        book.trip(), wanted, other -> TireFields.ofOnePurchase(tire(id), other))));
    return item;
  }

  private Tire tire(String id) {
    return book.rig().tire(id).orElseThrow();
  }

  /** The tires that are on no axle, spares or not. */
  static List<String> loose(Trip trip) {
    List<String> fitted =
        trip.rig().vehicles().stream()
            .flatMap(vehicle -> vehicle.axles().stream())
            .flatMap(axle -> axle.fitted().values().stream())
            .toList();
    return trip.rig().tires().stream().map(Tire::id).filter(id -> !fitted.contains(id)).toList();
  }
}
