package dawngauge.ui.rig;

import dawngauge.quantity.QuantityKind;
import dawngauge.trip.Axle;
import dawngauge.trip.AxleRef;
import dawngauge.trip.RigEdits;
import dawngauge.trip.RigParts;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import dawngauge.ui.rig.FieldBook.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** The fields of one axle: its label, its wheels, its tires. */
final class AxleForm extends VBox {

  private static final String LABEL = "certification label";
  private static final String WHEEL = "wheel stamp";

  private final FieldBook book;
  private final int vehicle;
  private final int index;

  AxleForm(FieldBook book, FindingBook findings, int vehicle, int index) {
    this.book = book;
    this.vehicle = vehicle;
    this.index = index;
    getStyleClass().add("rig-axle");
    getChildren()
        .addAll(
            book.headed(
                "rig-subheading",
                () -> ref().words() + (axle().dual() ? ", dual wheels" : ""),
                book.removing(
                    axle().dual() ? "Single wheels" : "Dual wheels",
                    () ->
                        "Give " + ref().words() + (axle().dual() ? " single" : " dual") + " wheels",
                    () -> RigParts.withDual(book.trip(), ref(), !axle().dual())),
                book.removing(
                    "Remove",
                    () -> "Remove " + ref().words() + " with its tires",
                    () -> RigParts.withoutAxle(book.trip(), ref()))),
            FieldBook.cells(cells().toArray(Node[]::new)),
            book.note(this::furtherLines),
            findings.list(this::owner));
    TireRows rows = new TireRows(book, findings);
    for (WheelSlot slot : WheelSlot.of(axle().dual())) {
      String id = axle().fitted().get(slot);
      Supplier<WheelPosition> position = () -> new WheelPosition(ref(), slot);
      rows.add(id, slot.words(), () -> position.get().words(), () -> ref());
    }
    getChildren().add(rows);
  }

  private List<Node> cells() {
    List<Node> cells = new ArrayList<>();
    Words gawr = words("GAWR", LABEL);
    cells.add(
        FieldBook.cell(
            gawr,
            book.positive(
                gawr,
                QuantityKind.MASS,
                () -> axle().gawr(),
                value -> with(draft -> draft.gawr = value))));
    cells.addAll(
        new LabelCells(book, this::owner, () -> axle().label(), label -> with(d -> d.label = label))
            .cells());
    Words wheelPressure = words("Wheel max pressure", WHEEL);
    cells.add(
        FieldBook.cell(
            wheelPressure,
            book.positive(
                wheelPressure,
                QuantityKind.GAUGE_PRESSURE,
                () -> axle().wheelMaxPressure(),
                value -> with(draft -> draft.wheelMaxPressure = value))));
    Words wheelLoad = words("Wheel max load", WHEEL);
    cells.add(
        FieldBook.cell(
            wheelLoad,
            book.positive(
                wheelLoad,
                QuantityKind.MASS,
                () -> axle().wheelMaxLoad(),
                value -> with(draft -> draft.wheelMaxLoad = value))));
    Words valve = words("Valve max pressure", "valve maker's sheet");
    cells.add(
        FieldBook.cell(
            valve,
            book.positive(
                valve,
                QuantityKind.GAUGE_PRESSURE,
                () -> axle().valveMaxPressure(),
                value -> with(draft -> draft.valveMaxPressure = value))));
    Words left = words("Left share of load", "wheel scale, if known");
    cells.add(
        FieldBook.cell(
            left,
            book.field(
                left,
                text -> RigForms.share(book.units(), text),
                () -> FieldBook.text(axle().leftShare()),
                value -> with(draft -> draft.leftShare = value.orElse(null)))));
    return cells;
  }

  private String furtherLines() {
    int more = axle().label().size() - 1;
    return more > 0 ? "The label has " + more + " more tire size(s), kept in the file." : "";
  }

  private Words words(String label, String stands) {
    return new Words(label, stands, this::owner);
  }

  private AxleRef ref() {
    return new AxleRef(book.rig().vehicles().get(vehicle).name(), index + 1);
  }

  private Axle axle() {
    return book.rig().vehicles().get(vehicle).axles().get(index);
  }

  private Trip with(Consumer<AxleDraft> change) {
    AxleDraft draft = new AxleDraft(axle());
    change.accept(draft);
    return RigEdits.withAxle(book.trip(), ref(), draft.axle());
  }

  private String owner() {
    return ref().words();
  }
}
