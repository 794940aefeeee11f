package dawngauge.ui.rig;

import dawngauge.quantity.QuantityKind;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Rig;
import dawngauge.trip.RigEdits;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.Vehicle;
import dawngauge.ui.rig.FieldBook.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.VBox;

/** The scale weights that count, and a field for each axle that was not weighed. */
final class ScaleForm extends VBox {

  private static final String AND = " and ";

  private final FieldBook book;

  ScaleForm(FieldBook book) {
    this.book = book;
    getStyleClass().add("rig-section");
    getChildren().add(book.heading("rig-heading", () -> "Scale weights"));
    List<AxleRef> axles = axles(book.rig());
    TreeSet<Integer> counting = new TreeSet<>();
    axles.forEach(axle -> RigEdits.ticketOf(book.rig(), axle).ifPresent(counting::add));
    counting.forEach(this::ticket);
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
              FieldBook.cells(missing.toArray(Node[]::new)));
    }
  }

  /** What these fields are laid out by: other weights alone leave it the same. */
  static List<Object> shape(Rig rig) {
    List<Object> shape = new ArrayList<>();
    axles(rig).forEach(axle -> shape.add(RigEdits.ticketOf(rig, axle)));
    rig.tickets().forEach(ticket -> shape.add(ticket.platforms().size()));
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

  private void ticket(int index) {
    List<Node> cells = new ArrayList<>();
    for (int i = 0; i < ticket(book.rig(), index).platforms().size(); i++) {
      cells.add(platform(index, i));
    }
    CheckBox hitched = new CheckBox("Trailer hitched when weighed");
    hitched.setOnAction(
        event -> book.edit(() -> RigEdits.withHitched(book.trip(), index, hitched.isSelected())));
    book.onRefresh(
        () -> {
          hitched.setAccessibleText("Trailer hitched when weighed, " + head(index));
          hitched.setSelected(ticket(book.rig(), index).hitched());
        });
    getChildren()
        .addAll(
            book.heading("rig-subheading", () -> head(index)),
            FieldBook.cells(cells.toArray(Node[]::new)),
            book.note(() -> wheels(index)),
            hitched);
  }

  private Node platform(int index, int platform) {
    Words words = new Words("Weight", "scale ticket", () -> owners(index, platform));
    var field =
        book.positive(
            words,
            QuantityKind.MASS,
            () -> ticket(book.rig(), index).platforms().get(platform).weight(),
            value -> RigEdits.withPlatform(book.trip(), index, platform, value));
    return named(words, field);
  }

  private Node unweighed(int axle) {
    Words words = new Words("Weight", "scale ticket", () -> axles(book.rig()).get(axle).words());
    var field =
        book.positive(
            words,
            QuantityKind.MASS,
            () -> null,
            value ->
                value == null
                    ? book.trip()
                    : RigEdits.withAxleWeight(book.trip(), axles(book.rig()).get(axle), value));
    return named(words, field);
  }

  /** A cell under the name of what was weighed. */
  private Node named(Words words, Node field) {
    boolean group = words.owner().get().contains(AND);
    VBox cell = group ? FieldBook.wideCell(words, field) : FieldBook.cell(words, field);
    cell.getChildren().set(0, book.heading("rig-cell-name", words.owner()));
    return cell;
  }

  private String owners(int index, int platform) {
    return ticket(book.rig(), index).platforms().get(platform).axles().stream()
        .map(AxleRef::words)
        .collect(Collectors.joining(AND));
  }

  private String head(int index) {
    ScaleTicket ticket = ticket(book.rig(), index);
    LocalDate date = ticket.date();
    String aboard = ticket.aboard();
    return "Ticket "
        + (date == null ? "without date" : "of " + date)
        + (aboard == null ? "" : ", aboard: " + aboard);
  }

  private String wheels(int index) {
    String text =
        ticket(book.rig(), index).wheels().stream()
            .map(
                wheel ->
                    wheel.axle().words()
                        + (wheel.left() ? " left " : " right ")
                        + wheel.weight().text())
            .collect(Collectors.joining(", "));
    return text.isEmpty() ? "" : "Wheel scale, which counts before the above: " + text + ".";
  }

  private static ScaleTicket ticket(Rig rig, int index) {
    return rig.tickets().get(index);
  }
}
