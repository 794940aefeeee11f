package dawngauge.ui.rig;

import dawngauge.field.RigFields;
import dawngauge.trip.Gauge;
import dawngauge.trip.RigEdits;
import dawngauge.trip.RigParts;
import dawngauge.ui.fields.Cells;
import dawngauge.ui.fields.FormFields;
import java.util.Set;
import java.util.function.Supplier;
import javafx.scene.layout.VBox;

/** The fields of one gauge. */
final class GaugeForm extends VBox {

  private final FormFields book;
  private final int index;

  GaugeForm(FormFields book, int index) {
    this.book = book;
    this.index = index;
    getStyleClass().add("rig-part");
    Cells<Gauge> cells =
        new Cells<>(
            book,
            RigFields.GAUGE,
            this::gauge,
            () -> book.rig().gauges(),
            this::owner,
            changed -> RigEdits.withGauge(book.trip(), index, changed));
    getChildren()
        .add(
            FormFields.cells(
                cells.cell(RigFields.GAUGE_NAME),
                cells.cell(RigFields.GAUGE_STEP),
                cells.cell(RigFields.GAUGE_SPAN),
                cells.cell(RigFields.GAUGE_GRADE),
                cells.cell(RigFields.GAUGE_KIND),
                cells.cell(RigFields.GAUGE_LAST_CHECK)));
  }

  /** A gauge under its heading. */
  static Fold fold(FormFields book, Set<String> open, int index) {
    Supplier<Gauge> gauge = () -> book.rig().gauges().get(index);
    return new Fold(
        book,
        open,
        key(index),
        () -> gauge.get().name(),
        () -> summary(gauge.get()),
        () -> new GaugeForm(book, index),
        book.removing(
            "Remove",
            () -> "Remove gauge " + gauge.get().name() + " with what was read by it",
            () -> RigParts.withoutGauge(book.trip(), index)));
  }

  private static String summary(Gauge gauge) {
    return "step "
        + gauge.step().text()
        + " · "
        + gauge.kind().word()
        + (gauge.lastCheck() == null ? "" : " · checked " + gauge.lastCheck());
  }

  /** By which it stays unfolded. */
  static String key(int index) {
    return "gauge " + index;
  }

  private Gauge gauge() {
    return book.rig().gauges().get(index);
  }

  private String owner() {
    return gauge().name();
  }
}
