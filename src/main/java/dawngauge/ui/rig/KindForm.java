package dawngauge.ui.rig;

import dawngauge.field.Field;
import dawngauge.field.TireFields;
import dawngauge.tire.LoadInflationTable;
import dawngauge.tire.TireSpec;
import dawngauge.trip.RigEdits;
import dawngauge.trip.RigParts;
import dawngauge.trip.Trip;
import dawngauge.ui.fields.Cells;
import dawngauge.ui.fields.FormFields;
import dawngauge.ui.fields.PartsGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.beans.property.BooleanProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/** The fields of one kind of tire: what its sidewall says, and its maker's table. */
final class KindForm extends VBox {

  private final FormFields book;
  private final int index;

  KindForm(FormFields book, int index, BooleanProperty dark) {
    this.book = book;
    this.index = index;
    getStyleClass().add("rig-part");
    Cells<TireSpec> cells =
        new Cells<>(
            book,
            TireFields.TIRE_TYPE,
            this::spec,
            () -> book.rig().tireTypes(),
            this::owner,
            this::with);
    PartsGrid<TireSpec, ?> rows =
        new PartsGrid<>(book, TireFields.ROWS, this::spec, this::owner, this::with)
            .column(TireFields.ROW_PRESSURE)
            .column(TireFields.ROW_SINGLE)
            .column(TireFields.ROW_DUAL);
    KindPlot plot = new KindPlot(dark);
    book.onRefresh(() -> plot.show(spec(), book.units()));
    getChildren()
        .addAll(
            FormFields.cells(
                TireFields.TIRE_TYPE.fields().stream()
                    .<Node>map(field -> cell(cells, field))
                    .toArray(Node[]::new)),
            FormFields.cells(rows, plot));
  }

  private static <V> Node cell(Cells<TireSpec> cells, Field<TireSpec, V> field) {
    return cells.cell(field);
  }

  /** A kind of tire under its heading. */
  static Fold fold(FormFields book, Set<String> open, int index, BooleanProperty dark) {
    Supplier<TireSpec> spec = () -> book.rig().tireTypes().get(index);
    return new Fold(
        book,
        open,
        key(index),
        () -> spec.get().name(),
        () -> summary(spec.get()),
        () -> new KindForm(book, index, dark),
        remove(book, index));
  }

  /** By which it stays unfolded. */
  static String key(int index) {
    return "kind " + index;
  }

  private static String summary(TireSpec spec) {
    List<String> parts = new ArrayList<>();
    Stream.of(TireFields.SIZE, TireFields.LOAD_RANGE)
        .map(field -> field.text(spec))
        .filter(text -> !text.isEmpty())
        .forEach(parts::add);
    LoadInflationTable rows = spec.rows();
    if (rows != null) {
      parts.add(rows.rows().size() + " rows of the maker's table");
    }
    return String.join(" · ", parts);
  }

  private static Button remove(FormFields book, int index) {
    Button button =
        book.removing(
            "Remove",
            () -> "Remove kind of tire " + book.rig().tireTypes().get(index).name(),
            () -> RigParts.withoutKind(book.trip(), index));
    book.onRefresh(
        () -> {
          boolean can = RigParts.canRemoveKind(book.rig(), index);
          button.setDisable(!can);
          button.setText(can ? "Remove" : "in use");
        });
    return button;
  }

  private TireSpec spec() {
    List<TireSpec> all = book.rig().tireTypes();
    return all.get(index);
  }

  private Trip with(TireSpec changed) {
    return RigEdits.withTireType(book.trip(), index, changed);
  }

  private String owner() {
    return spec().name();
  }
}
