package dawngauge.ui.rig;

import dawngauge.field.WeightFields;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Rig;
import dawngauge.trip.RigEdits;
import dawngauge.trip.Vehicle;
import dawngauge.ui.fields.FormFields;
import dawngauge.ui.fields.FormFields.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** The scale tickets, and a field for each axle that was not weighed. */
final class ScaleForm extends VBox {

  /** What a ticket of the loaded rig is called. */
  static final String TICKET = "ticket";

  private final FormFields book;

  ScaleForm(FormFields book, Set<String> open) {
    this.book = book;
    getStyleClass().add("rig-section");
    getChildren()
        .add(
            book.headed(
                "rig-heading",
                () -> "Scale weights",
                book.adding(
                    "+ ticket", "Add a scale ticket", () -> RigEdits.withNewTicket(book.trip()))));
    List<AxleRef> axles = axles(book.rig());
    TicketForm.Tickets tickets =
        new TicketForm.Tickets(
            TICKET,
            () -> book.rig().tickets(),
            all -> book.trip().withRig(book.rig().withTickets(all)),
            index -> RigEdits.withoutTicket(book.trip(), index),
            () -> axles(book.rig()),
            index ->
                axles(book.rig()).stream()
                    .anyMatch(axle -> RigEdits.ticketOf(book.rig(), axle).orElse(-1) == index));
    for (int i = 0; i < book.rig().tickets().size(); i++) {
      getChildren().add(TicketForm.fold(book, open, tickets, i));
    }
    List<Node> missing = new ArrayList<>();
    for (int i = 0; i < axles.size(); i++) {
      if (RigEdits.ticketOf(book.rig(), axles.get(i)).isEmpty()) {
        missing.add(unweighed(i));
      }
    }
    if (!missing.isEmpty()) {
      getChildren()
          .addAll(
              book.note(
                  () ->
                      "Not weighed, judged at the GAWR; a weight typed here goes on a"
                          + " ticket without date:"),
              FormFields.cells(missing.toArray(Node[]::new)));
    }
  }

  /** What these fields are laid out by: other weights alone leave it the same. */
  static List<Object> shape(Rig rig) {
    List<Object> shape = new ArrayList<>();
    axles(rig).forEach(axle -> shape.add(RigEdits.ticketOf(rig, axle).isPresent()));
    shape.add(rig.tickets().size());
    return shape;
  }

  static List<AxleRef> axles(Rig rig) {
    List<AxleRef> all = new ArrayList<>();
    for (Vehicle vehicle : rig.vehicles()) {
      for (int number = 1; number <= vehicle.axles().size(); number++) {
        all.add(new AxleRef(vehicle.name(), number));
      }
    }
    return all;
  }

  private Node unweighed(int axle) {
    Words words =
        new Words(
            WeightFields.PLATFORM_WEIGHT.label(),
            WeightFields.PLATFORM_WEIGHT.stands(),
            () -> axles(book.rig()).get(axle).words());
    var field =
        book.positive(
            words,
            QuantityKind.MASS,
            () -> null,
            value ->
                value == null
                    ? book.trip()
                    : RigEdits.withAxleWeight(book.trip(), axles(book.rig()).get(axle), value));
    VBox cell = FormFields.cell(words, field);
    cell.getChildren().set(0, book.heading("rig-cell-name", words.owner()));
    return cell;
  }
}
