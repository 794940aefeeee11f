package dawngauge.ui.rig;

import dawngauge.quantity.QuantityKind;
import dawngauge.trip.RigEdits;
import dawngauge.trip.RigParts;
import dawngauge.trip.Vehicle;
import dawngauge.ui.common.FigureField;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/** The fields of one vehicle and of its axles. */
final class VehicleForm extends VBox {

  private final FieldBook book;
  private final int index;

  VehicleForm(FieldBook book, FindingBook findings, int index) {
    this.book = book;
    this.index = index;
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
      getChildren().add(new AxleForm(book, findings, index, axle));
    }
  }

  private Button add(boolean dual) {
    return book.adding(
        dual ? "+ dual axle" : "+ axle",
        "Add an axle with " + (dual ? "dual" : "single") + " wheels to the " + vehicle().name(),
        () -> RigParts.withNewAxle(book.trip(), index, dual));
  }

  private Node fields(Supplier<String> owner) {
    FieldBook.Words name = new FieldBook.Words("Name", "as the crew calls it", owner);
    FigureField<String> nameField =
        book.field(
            name,
            text -> RigForms.name("vehicle", others(), text),
            owner,
            value -> RigEdits.withVehicle(book.trip(), index, vehicle().withName(value)));
    FieldBook.Words gvwr = new FieldBook.Words("GVWR", "certification label", owner);
    var gvwrField =
        book.positive(
            gvwr,
            QuantityKind.MASS,
            () -> vehicle().gvwr(),
            value -> RigEdits.withVehicle(book.trip(), index, vehicle().withGvwr(value)));
    return FieldBook.cells(FieldBook.wideCell(name, nameField), FieldBook.cell(gvwr, gvwrField));
  }

  private List<String> others() {
    List<Vehicle> all = book.rig().vehicles();
    return IntStream.range(0, all.size())
        .filter(i -> i != index)
        .mapToObj(i -> all.get(i).name())
        .toList();
  }

  private Vehicle vehicle() {
    return book.rig().vehicles().get(index);
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
