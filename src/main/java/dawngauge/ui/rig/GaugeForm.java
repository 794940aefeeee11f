package dawngauge.ui.rig;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Ratio;
import dawngauge.trip.Gauge;
import dawngauge.trip.RigEdits;
import dawngauge.trip.RigParts;
import dawngauge.trip.Trip;
import dawngauge.ui.rig.FieldBook.Words;
import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** The fields of one gauge. */
final class GaugeForm extends VBox {

  private final FieldBook book;
  private final int index;

  GaugeForm(FieldBook book, int index) {
    this.book = book;
    this.index = index;
    getStyleClass().add("rig-axle");
    Words name = new Words("Name", "as readings refer to it", this::owner);
    Words step = new Words("Step", "gauge face, smallest mark", this::owner);
    Words span = new Words("Span", "gauge face, highest mark", this::owner);
    Words grade = new Words("Grade, part of span", "gauge face or its sheet", this::owner);
    getChildren()
        .addAll(
            book.headed(
                "rig-subheading",
                this::owner,
                book.removing(
                    "Remove",
                    () -> "Remove gauge " + owner() + " with what was read by it",
                    () -> RigParts.withoutGauge(book.trip(), index))),
            FieldBook.cells(
                FieldBook.wideCell(
                    name,
                    book.field(
                        name,
                        text -> RigForms.name("gauge", others(), text),
                        this::owner,
                        value -> with(value, gauge().span(), gauge().grade(), gauge().step()))),
                FieldBook.cell(
                    step,
                    book.field(
                        step,
                        text ->
                            RigForms.required(
                                RigForms.positive(QuantityKind.GAUGE_PRESSURE, book.units(), text),
                                "step",
                                "such as 1 psi"),
                        () -> gauge().step().text(),
                        value -> with(owner(), gauge().span(), gauge().grade(), value))),
                FieldBook.cell(
                    span,
                    book.positive(
                        span,
                        QuantityKind.GAUGE_PRESSURE,
                        () -> gauge().span(),
                        value -> with(owner(), value, gauge().grade(), gauge().step()))),
                FieldBook.cell(
                    grade,
                    book.field(
                        grade,
                        text -> RigForms.share(book.units(), text),
                        () -> FieldBook.text(gauge().grade()),
                        value ->
                            with(owner(), gauge().span(), value.orElse(null), gauge().step())))),
            book.note(() -> "Measures: " + gauge().kind().word() + "."));
  }

  private List<String> others() {
    List<Gauge> all = book.rig().gauges();
    return IntStream.range(0, all.size())
        .filter(i -> i != index)
        .mapToObj(i -> all.get(i).name())
        .toList();
  }

  private Gauge gauge() {
    return book.rig().gauges().get(index);
  }

  private Trip with(
      String name,
      @Nullable Entered<GaugePressure> span,
      @Nullable Entered<Ratio> grade,
      Entered<GaugePressure> step) {
    Gauge changed = new Gauge(name, gauge().kind(), span, grade, step, gauge().remarks());
    return RigEdits.withGauge(book.trip(), index, changed);
  }

  private String owner() {
    return gauge().name();
  }
}
