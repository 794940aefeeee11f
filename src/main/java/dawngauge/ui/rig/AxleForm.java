package dawngauge.ui.rig;

import dawngauge.field.VehicleFields;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.trip.Axle;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Rig;
import dawngauge.trip.RigEdits;
import dawngauge.trip.RigParts;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import dawngauge.ui.fields.Cells;
import dawngauge.ui.fields.FormFields;
import dawngauge.ui.fields.PartsGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import javafx.scene.layout.VBox;

/** The fields of one axle: its label, its wheels, its tires. */
final class AxleForm extends VBox {

  private final FormFields book;
  private final int vehicle;
  private final int index;

  AxleForm(FormFields book, FindingLists findings, int vehicle, int index) {
    this.book = book;
    this.vehicle = vehicle;
    this.index = index;
    getStyleClass().add("rig-part");
    Cells<Axle> cells =
        new Cells<>(
            book, VehicleFields.AXLE, this::axle, List::of, this::owner, changed -> with(changed));
    PartsGrid<Axle, ?> label =
        new PartsGrid<>(book, VehicleFields.LABEL_LINES, this::axle, this::owner, this::with)
            .column(VehicleFields.LABEL_SIZE)
            .column(VehicleFields.LABEL_PRESSURE)
            .column(VehicleFields.LABEL_LOAD_RANGE)
            .column(VehicleFields.LABEL_CLASS);
    getChildren()
        .addAll(
            label,
            FormFields.cells(
                cells.cell(VehicleFields.GAWR),
                cells.cell(VehicleFields.TARGET),
                cells.cell(VehicleFields.WHEEL_MAX_PRESSURE),
                cells.cell(VehicleFields.WHEEL_MAX_LOAD),
                cells.cell(VehicleFields.VALVE_MAX_PRESSURE),
                cells.cell(VehicleFields.LEFT_SHARE)),
            findings.list(this::owner));
    TireRows rows = new TireRows(book, findings);
    for (WheelSlot slot : WheelSlot.of(axle().dual())) {
      String id = axle().fitted().get(slot);
      Supplier<WheelPosition> position = () -> new WheelPosition(ref(), slot);
      rows.add(id, slot.words(), () -> position.get().words(), () -> ref());
    }
    getChildren().add(rows);
  }

  /** An axle under its heading. */
  static Fold fold(
      FormFields book, FindingLists findings, Set<String> open, int vehicle, int index) {
    Supplier<AxleRef> ref = () -> ref(book, vehicle, index);
    Supplier<Axle> axle = () -> axle(book, vehicle, index);
    return new Fold(
        book,
        open,
        key(vehicle, index),
        () -> ref.get().words() + (axle.get().dual() ? ", dual wheels" : ""),
        () -> summary(book.rig(), axle.get(), findings.countAt(ref.get().words())),
        () -> new AxleForm(book, findings, vehicle, index),
        book.removing(
            axle.get().dual() ? "Single wheels" : "Dual wheels",
            () ->
                "Give " + ref.get().words() + (axle.get().dual() ? " single" : " dual") + " wheels",
            () -> RigParts.withDual(book.trip(), ref.get(), !axle.get().dual())),
        book.removing(
            "Remove",
            () -> "Remove " + ref.get().words() + " with its tires",
            () -> RigParts.withoutAxle(book.trip(), ref.get())));
  }

  /** By which an axle stays unfolded. */
  static String key(int vehicle, int index) {
    return "axle " + vehicle + "." + index;
  }

  private static String summary(Rig rig, Axle axle, String found) {
    List<String> parts = new ArrayList<>();
    axle.label().stream()
        .findFirst()
        .ifPresent(line -> parts.add("label " + line.coldPressure().text()));
    Entered<Mass> gawr = axle.gawr();
    if (gawr != null) {
      parts.add(VehicleFields.GAWR.label() + " " + gawr.text());
    }
    axle.fitted().values().stream()
        .flatMap(id -> rig.tire(id).stream())
        .map(Tire::type)
        .distinct()
        .forEach(parts::add);
    if (!found.isEmpty()) {
      parts.add(found);
    }
    return String.join(" · ", parts);
  }

  private static AxleRef ref(FormFields book, int vehicle, int index) {
    return new AxleRef(book.rig().vehicles().get(vehicle).name(), index + 1);
  }

  private static Axle axle(FormFields book, int vehicle, int index) {
    return book.rig().vehicles().get(vehicle).axles().get(index);
  }

  private AxleRef ref() {
    return ref(book, vehicle, index);
  }

  private Axle axle() {
    return axle(book, vehicle, index);
  }

  private Trip with(Axle changed) {
    return RigEdits.withAxle(book.trip(), ref(), changed);
  }

  private String owner() {
    return ref().words();
  }
}
