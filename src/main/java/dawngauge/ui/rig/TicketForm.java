package dawngauge.ui.rig;

import dawngauge.field.WeightFields;
import dawngauge.trip.AxleRef;
import dawngauge.trip.RigParts;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.Trip;
import dawngauge.ui.fields.Cells;
import dawngauge.ui.fields.FormFields;
import dawngauge.ui.fields.PartsGrid;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.scene.layout.VBox;

/** The fields of one scale ticket, as it is printed: platforms, and wheel scales. */
final class TicketForm extends VBox {

  /**
   * A list of tickets.
   *
   * @param word what one of them is called
   * @param all as they are now
   * @param with the trip with others
   * @param without the trip without the one at an index
   * @param axles all that can be weighed
   * @param counts whether the one at an index speaks for any axle
   */
  record Tickets(
      String word,
      Supplier<List<ScaleTicket>> all,
      Function<List<ScaleTicket>, Trip> with,
      IntFunction<RigParts.Changed> without,
      Supplier<List<AxleRef>> axles,
      IntPredicate counts) {}

  private final Tickets tickets;
  private final int index;

  TicketForm(FormFields book, Tickets tickets, int index) {
    this.tickets = tickets;
    this.index = index;
    getStyleClass().add("rig-part");
    Cells<ScaleTicket> cells =
        new Cells<>(
            book, WeightFields.TICKET, this::ticket, List::of, this::owner, this::withTicket);
    getChildren()
        .addAll(
            book.note(() -> counts() ? "" : "A later ticket speaks for its axles."),
            FormFields.cells(
                cells.cell(WeightFields.TICKET_DATE),
                cells.wideCell(WeightFields.ABOARD),
                cells.cell(WeightFields.HITCHED)),
            new PartsGrid<>(
                    book, WeightFields.PLATFORMS, this::ticket, this::owner, this::withTicket)
                .column(WeightFields.PLATFORM_AXLES, tickets.axles())
                .column(WeightFields.PLATFORM_WEIGHT),
            new PartsGrid<>(book, WeightFields.WHEELS, this::ticket, this::owner, this::withTicket)
                .column(WeightFields.WHEEL_AXLE, tickets.axles())
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
  static Fold fold(FormFields book, Set<String> open, Tickets tickets, int index) {
    return new Fold(
        book,
        open,
        key(tickets.word(), index),
        () -> head(tickets.word(), tickets.all().get().get(index)),
        () -> summary(tickets.all().get().get(index)),
        () -> new TicketForm(book, tickets, index),
        book.removing(
            "Remove",
            () -> "Remove " + tickets.word() + " " + (index + 1),
            () -> tickets.without().apply(index)));
  }

  private static String head(String word, ScaleTicket ticket) {
    LocalDate date = ticket.date();
    String aboard = ticket.aboard();
    return word.substring(0, 1).toUpperCase(Locale.ROOT)
        + word.substring(1)
        + (date == null ? " without date" : " of " + date)
        + (aboard == null ? "" : ", aboard: " + aboard);
  }

  /** By which it stays unfolded. */
  static String key(String word, int index) {
    return word + " " + index;
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

  private boolean counts() {
    boolean nothing = ticket().platforms().isEmpty() && ticket().wheels().isEmpty();
    return nothing || tickets.counts().test(index);
  }

  private ScaleTicket ticket() {
    return tickets.all().get().get(index);
  }

  private Trip withTicket(ScaleTicket changed) {
    return tickets.with().apply(Cells.replaced(tickets.all().get(), index, changed));
  }

  private String owner() {
    return tickets.word() + " " + (index + 1);
  }
}
