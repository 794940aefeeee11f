package dawngauge.ui.rig;

import dawngauge.field.VehicleFields;
import dawngauge.trip.RigEdits;
import dawngauge.trip.RigParts;
import dawngauge.trip.Vehicle;
import dawngauge.ui.common.PageDrafts;
import dawngauge.ui.fields.Cells;
import dawngauge.ui.fields.FormFields;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/** The fields of one vehicle and of its axles. */
final class VehicleForm extends VBox {

  private final FormFields book;
  private final int index;

  VehicleForm(FormFields book, FindingLists findings, Set<String> open, int index) {
    this.book = book;
    this.index = index;
    PageDrafts.mark(this, "vehicle " + index);
    getStyleClass().add("rig-section");
    Supplier<String> owner = () -> vehicle().name();
    getChildren()
        .addAll(
            book.headed(
                "rig-heading",
                () -> capital(vehicle().name()),
                add(false),
                add(true),
                book.removing(
                    "Remove",
                    () -> "Remove " + vehicle().name() + " with its axles",
                    () -> RigParts.withoutVehicle(book.trip(), index))),
            fields(owner),
            findings.list(owner));
    for (int axle = 0; axle < vehicle().axles().size(); axle++) {
      getChildren().add(AxleForm.fold(book, findings, open, index, axle));
    }
  }

  private Button add(boolean dual) {
    return book.adding(
        dual ? "+ dual axle" : "+ axle",
        "Add an axle with " + (dual ? "dual" : "single") + " wheels to the " + vehicle().name(),
        () -> RigParts.withNewAxle(book.trip(), index, dual));
  }

  private Node fields(Supplier<String> owner) {
    Cells<Vehicle> cells =
        new Cells<>(
            book,
            VehicleFields.VEHICLE,
            this::vehicle,
            () -> book.rig().vehicles(),
            owner,
            changed -> RigEdits.withVehicle(book.trip(), index, changed));
    return FormFields.cells(
        cells.cell(VehicleFields.VEHICLE_NAME),
        cells.cell(VehicleFields.VEHICLE_LETTER),
        cells.cell(VehicleFields.VEHICLE_KIND),
        cells.cell(VehicleFields.GVWR));
  }

  private Vehicle vehicle() {
    return book.rig().vehicles().get(index);
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
