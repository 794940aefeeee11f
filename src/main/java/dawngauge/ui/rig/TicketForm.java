package dawngauge.ui.rig;

import dawngauge.field.WeightFields;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Rig;
import dawngauge.trip.RigEdits;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.Trip;
import dawngauge.ui.fields.Cells;
import dawngauge.ui.fields.FieldBook;
import dawngauge.ui.fields.PartsGrid;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.scene.layout.VBox;

/** The fields of one scale ticket, as it is printed: platforms, and wheel scales. */
final class TicketForm extends VBox {

  private final FieldBook book;
  private final int index;

  TicketForm(FieldBook book, int index, Supplier<List<AxleRef>> axles) {
    this.book = book;
    this.index = index;
    getStyleClass().add("rig-part");
    Cells<ScaleTicket> cells =
        new Cells<>(
            book, WeightFields.TICKET, this::ticket, List::of, this::owner, this::withTicket);
    getChildren()
        .addAll(
            book.note(() -> counts(axles.get()) ? "" : "A later ticket speaks for its axles."),
            FieldBook.cells(
                cells.cell(WeightFields.TICKET_DATE),
                cells.wideCell(WeightFields.ABOARD),
                cells.cell(WeightFields.HITCHED)),
            new PartsGrid<>(
                    book, WeightFields.PLATFORMS, this::ticket, this::owner, this::withTicket)
                .column(WeightFields.PLATFORM_AXLES, axles)
                .column(WeightFields.PLATFORM_WEIGHT),
            new PartsGrid<>(book, WeightFields.WHEELS, this::ticket, this::owner, this::withTicket)
                .column(WeightFields.WHEEL_AXLE, axles)
                .column(WeightFields.WHEEL_SIDE)
                .column(WeightFields.WHEEL_LOAD),
            book.note(
                () ->
                    ticket().wheels().isEmpty()
                        ? ""
                        : "Where wheel scales stood under both sides of an axle, they count before"
                            + " the platforms."));
  }

  /** A ticket under its heading. */
  static Fold fold(FieldBook book, Set<String> open, int index, Supplier<List<AxleRef>> axles) {
    return new Fold(
        book,
        open,
        key(index),
        () -> head(book.rig().tickets().get(index)),
        () -> summary(book.rig().tickets().get(index)),
        () -> new TicketForm(book, index, axles),
        book.removing(
            "Remove",
            () -> "Remove ticket " + (index + 1),
            () -> RigEdits.withoutTicket(book.trip(), index)));
  }

  private static String head(ScaleTicket ticket) {
    LocalDate date = ticket.date();
    String aboard = ticket.aboard();
    return "Ticket "
        + (date == null ? "without date" : "of " + date)
        + (aboard == null ? "" : ", aboard: " + aboard);
  }

  /** By which it stays unfolded. */
  static String key(int index) {
    return "ticket " + index;
  }

  private static String summary(ScaleTicket ticket) {
    List<String> parts = new ArrayList<>();
    for (ScaleTicket.Platform platform : ticket.platforms()) {
      parts.add(
          platform.axles().stream().map(AxleRef::words).collect(Collectors.joining(" and "))
              + " "
              + platform.weight().text());
    }
    if (!ticket.wheels().isEmpty()) {
      parts.add(ticket.wheels().size() + " wheel scales");
    }
    return String.join(" · ", parts);
  }

  private boolean counts(List<AxleRef> axles) {
    Rig rig = book.rig();
    boolean nothing = ticket().platforms().isEmpty() && ticket().wheels().isEmpty();
    return nothing
        || axles.stream().anyMatch(axle -> RigEdits.ticketOf(rig, axle).orElse(-1) == index);
  }

  private ScaleTicket ticket() {
    return book.rig().tickets().get(index);
  }

  private Trip withTicket(ScaleTicket changed) {
    List<ScaleTicket> all = new ArrayList<>(book.rig().tickets());
    all.set(index, changed);
    return book.trip().withRig(book.rig().withTickets(all));
  }

  private String owner() {
    return "ticket " + (index + 1);
  }
}
