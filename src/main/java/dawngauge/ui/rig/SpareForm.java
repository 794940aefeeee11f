package dawngauge.ui.rig;

import dawngauge.field.TireFields;
import dawngauge.trip.Spare;
import dawngauge.trip.Trip;
import dawngauge.ui.fields.Cells;
import dawngauge.ui.fields.FormFields;
import java.util.List;
import javafx.scene.layout.FlowPane;

/** What a spare is meant for and what its wheel may take. */
final class SpareForm extends FlowPane {

  private final FormFields book;
  private final String id;

  SpareForm(FormFields book, String id) {
    this.book = book;
    this.id = id;
    getStyleClass().add("rig-cells");
    Cells<Spare> cells =
        new Cells<>(book, TireFields.SPARE, this::spare, List::of, () -> "spare " + id, this::with);
    getChildren()
        .addAll(
            cells.cell(TireFields.SERVES, () -> ScaleForm.axles(book.rig())),
            cells.cell(TireFields.SPARE_WHEEL_PRESSURE),
            cells.cell(TireFields.SPARE_WHEEL_LOAD));
  }

  private Spare spare() {
    return book.rig().spares().stream()
        .filter(spare -> spare.tire().equals(id))
        .findFirst()
        .orElse(TireFields.SPARE.blank());
  }

  private Trip with(Spare changed) {
    return book.trip()
        .withRig(
            book.rig()
                .withSpares(
                    book.rig().spares().stream()
                        .map(spare -> spare.tire().equals(id) ? changed : spare)
                        .toList()));
  }
}
