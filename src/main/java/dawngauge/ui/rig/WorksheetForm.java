package dawngauge.ui.rig;

import dawngauge.field.RigFields;
import dawngauge.field.WorksheetFields;
import dawngauge.ledger.WorksheetPage;
import dawngauge.planner.Planner;
import dawngauge.trip.RigParts;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.Trip;
import dawngauge.trip.Vehicle;
import dawngauge.trip.Worksheet;
import dawngauge.ui.common.PageView;
import dawngauge.ui.fields.Cells;
import dawngauge.ui.fields.FormFields;
import dawngauge.ui.fields.PartsGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** The weight worksheet: empty weights, what is loaded where, and what comes of it. */
final class WorksheetForm extends VBox {

  private static final String EMPTY_TICKET = "empty ticket";

  private final FormFields book;
  private final Set<String> open;
  private final VBox empty = new VBox();
  private final TicketForm.Tickets tickets;
  private FormFields emptyFields;
  private int shown = -1;

  private WorksheetForm(FormFields book, Set<String> open, Planner planner) {
    this.book = book;
    this.open = open;
    this.emptyFields = book.inner();
    this.tickets =
        new TicketForm.Tickets(
            EMPTY_TICKET,
            () -> sheet(book).empty(),
            all -> with(sheet(book).withEmpty(all)),
            this::withoutTicket,
            () -> ScaleForm.axles(book.rig()),
            index -> true);
    getStyleClass().add("rig-part");
    Cells<Worksheet> cells =
        new Cells<>(
            book,
            WorksheetFields.WORKSHEET,
            () -> sheet(book),
            List::of,
            () -> "the worksheet",
            this::with);
    PageView result = new PageView("Expected weights");
    book.onRefresh(
        () ->
            result.show(
                WorksheetPage.blocks(
                    book.trip(), planner.plan(book.trip()).expectedWeights(), book.units())));
    getChildren()
        .addAll(
            book.headed(
                "rig-subheading",
                () -> "The empty rig",
                book.adding(
                    "+ empty ticket",
                    "Add a scale ticket of the empty rig",
                    () -> with(sheet(book).withNewTicket()))),
            empty,
            FormFields.cells(
                cells.cell(WorksheetFields.EMPTY_HITCH),
                cells.cell(WorksheetFields.HITCH_TO_AXLES),
                cells.cell(WorksheetFields.WHEELBASE),
                cells.cell(WorksheetFields.HITCH_RATING),
                cells.cell(WorksheetFields.COMBINED_RATING)),
            new PartsGrid<>(
                    book,
                    WorksheetFields.LOADS,
                    () -> sheet(book),
                    () -> "the worksheet",
                    this::with)
                .column(WorksheetFields.LOAD_WHAT)
                .column(WorksheetFields.LOAD_HEAD)
                .column(WorksheetFields.LOAD_WEIGHT)
                .column(WorksheetFields.LOAD_SOURCE)
                .column(
                    WorksheetFields.LOAD_VEHICLE,
                    () -> book.rig().vehicles().stream().map(Vehicle::name).toList())
                .column(WorksheetFields.LOAD_PLACE),
            result);
    book.onRefresh(this::refresh);
  }

  /** The worksheet under its heading. */
  static Fold fold(FormFields book, Set<String> open, Planner planner) {
    return new Fold(
        book,
        open,
        "worksheet",
        () -> "Expected weights",
        () ->
            book.rig().worksheet() == null
                ? "from empty weights and what is loaded where, before the scale"
                : WorksheetPage.summary(planner.plan(book.trip()).expectedWeights()),
        () -> new WorksheetForm(book, open, planner));
  }

  private static Worksheet sheet(FormFields book) {
    return Objects.requireNonNullElse(book.rig().worksheet(), Worksheet.BLANK);
  }

  /** One with nothing in it is none. */
  private Trip with(Worksheet changed) {
    Worksheet next = changed.equals(Worksheet.BLANK) ? null : changed;
    return book.trip().withRig(RigFields.WORKSHEET.with().apply(book.rig(), next));
  }

  private RigParts.Changed withoutTicket(int index) {
    List<ScaleTicket> rest = new ArrayList<>(sheet(book).empty());
    ScaleTicket gone = rest.remove(index);
    int weights = gone.platforms().size() + gone.wheels().size();
    return new RigParts.Changed(
        with(sheet(book).withEmpty(rest)),
        weights == 0
            ? List.of()
            : List.of(weights + (weights == 1 ? " empty weight" : " empty weights")));
  }

  /** Lays the tickets out anew where one came or went; a new one is unfolded and gets the focus. */
  private void refresh() {
    int wanted = sheet(book).empty().size();
    if (wanted != shown) {
      boolean grown = shown >= 0 && wanted == shown + 1;
      shown = wanted;
      emptyFields.close();
      emptyFields = book.inner();
      empty.getChildren().clear();
      if (grown) {
        open.add(TicketForm.key(EMPTY_TICKET, wanted - 1));
      }
      for (int i = 0; i < wanted; i++) {
        empty.getChildren().add(TicketForm.fold(emptyFields, open, tickets, i));
      }
      if (grown) {
        Node last = empty.getChildren().get(wanted - 1);
        Platform.runLater(
            () ->
                last.lookupAll(".text-field").stream()
                    .filter(node -> node instanceof TextField)
                    .findFirst()
                    .ifPresent(Node::requestFocus));
      }
    }
    emptyFields.refresh();
  }
}
