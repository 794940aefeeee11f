package dawngauge.ui.fields;

import dawngauge.field.Codec;
import dawngauge.field.Fault;
import dawngauge.field.Field;
import dawngauge.field.Parts;
import dawngauge.field.Texts;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * Parts of a part as a small table: a row each, and an empty one in which another begins. A new row
 * is taken once all that it must have is typed; until then it stays a draft. Rows copied from a
 * spreadsheet are pasted from the cell with the keyboard on.
 *
 * @param <R> the part
 * @param <E> its own parts
 */
public final class PartsGrid<R, E> extends VBox {

  private static final KeyCombination PASTE =
      new KeyCodeCombination(KeyCode.V, KeyCombination.SHORTCUT_DOWN);

  private static final double CELL_WIDTH = 132;

  /** One column: how a cell is made, and how pasted text changes a row. */
  private record Column<E>(
      String label,
      Function<Cells<E>, Node> cell,
      Paster<E> paster,
      Function<E, @Nullable String> missing) {}

  /** A row with a cell as pasted; the problem where it cannot be. */
  private interface Paster<E> {
    Outcome<E> with(E row, String text);
  }

  private final FormFields book;
  private final Parts<R, E> parts;
  private final Supplier<R> part;
  private final Supplier<String> owner;
  private final Function<R, Trip> edit;
  private final List<Column<E>> columns = new ArrayList<>();
  private final GridPane grid = new GridPane();
  private final Label message = new Label();
  private final List<E> drafts = new ArrayList<>();
  private FormFields rows;
  private int shown = -1;

  /**
   * A table.
   *
   * @param book takes the fields
   * @param parts what is edited
   * @param part the part that has them, as it is now
   * @param owner how that is called now
   * @param edit the trip with another part in its place
   */
  public PartsGrid(
      FormFields book,
      Parts<R, E> parts,
      Supplier<R> part,
      Supplier<String> owner,
      Function<R, Trip> edit) {
    this.book = book;
    this.rows = book.inner();
    this.parts = parts;
    this.part = part;
    this.owner = owner;
    this.edit = edit;
    getStyleClass().add("parts-grid");
    grid.getStyleClass().add("rig-tires");
    message.getStyleClass().add("lesser");
    message.setWrapText(true);
    message.managedProperty().bind(message.visibleProperty());
    message.setVisible(false);
    Label title = new Label(parts.label());
    title.getStyleClass().add("parts-title");
    getChildren().addAll(title, grid, message);
    getProperties().put(Cells.MEMBER, parts);
    grid.addEventFilter(KeyEvent.KEY_PRESSED, this::keyed);
    book.onRefresh(this::refresh);
  }

  /** A column for a field. */
  public <V> PartsGrid<R, E> column(Field<E, V> field) {
    columns.add(
        new Column<>(
            field.label(),
            cells -> cells.editor(field),
            (row, text) -> with(field, row, text),
            row -> missing(field, row)));
    return this;
  }

  /** A column for a choice. */
  public <V> PartsGrid<R, E> column(Field<E, V> field, Supplier<List<V>> options) {
    columns.add(
        new Column<>(
            field.label(),
            cells -> cells.editor(field, options),
            (row, text) -> with(field, row, text),
            row -> missing(field, row)));
    return this;
  }

  /** A column for several values of a set. */
  public <V> PartsGrid<R, E> column(Texts<E, V> texts, Supplier<List<V>> options) {
    columns.add(
        new Column<>(
            texts.label(),
            cells -> cells.editor(texts, options),
            (row, text) -> with(texts, row, text),
            row -> null));
    return this;
  }

  private <V> Outcome<E> with(Field<E, V> field, E row, String text) {
    return Cells.read(book, parts.part(), row, List.of(), field, text)
        .map(value -> field.with().apply(row, value.orElse(null)));
  }

  private static <E, V> Outcome<E> with(Texts<E, V> texts, E row, String text) {
    List<V> values = new ArrayList<>();
    for (String each : text.split(",", -1)) {
      Outcome<V> outcome = texts.codec().parse().apply(each.strip());
      V value = outcome.valueOrNull();
      if (value == null) {
        return Outcome.failed(outcome.problems());
      }
      values.add(value);
    }
    return Outcome.of(texts.with().apply(row, values));
  }

  private static <E, V> @Nullable String missing(Field<E, V> field, E row) {
    boolean typed =
        !field.required()
            || !field.codec().choices().isEmpty()
            || field.codec().json() == Codec.Json.FLAG
            || !field.codec().standIn().equals(field.of(row));
    return typed ? null : field.label().toLowerCase(Locale.ROOT);
  }

  private List<E> list() {
    return parts.get().apply(part.get());
  }

  private void refresh() {
    int wanted = list().size() + drafts.size() + 1;
    if (wanted != shown) {
      shown = wanted;
      build();
    }
    rows.refresh();
  }

  private void build() {
    Node owned = getScene() == null ? null : getScene().getFocusOwner();
    String focused = owned != null && isInside(owned) ? owned.getAccessibleText() : null;
    rows.close();
    rows = book.inner();
    grid.getChildren().clear();
    for (int column = 0; column < columns.size(); column++) {
      Label head = new Label(columns.get(column).label());
      head.getStyleClass().add("lesser");
      head.setWrapText(true);
      head.setPrefWidth(CELL_WIDTH);
      grid.add(head, column, 0);
    }
    for (int row = 0; row < shown; row++) {
      row(row);
    }
    if (focused != null) {
      Platform.runLater(() -> focus(focused));
    }
  }

  private void row(int row) {
    Supplier<String> name = () -> parts.part().name() + " " + (row + 1) + ", " + owner.get();
    Cells<E> cells =
        new Cells<>(
            rows,
            parts.part(),
            () -> at(row),
            List::of,
            name,
            changed ->
                row < list().size()
                    ? with(Cells.replaced(list(), row, changed))
                    : drafted(row, changed));
    for (int column = 0; column < columns.size(); column++) {
      Node node = columns.get(column).cell().apply(cells);
      if (node instanceof Region region) {
        region.setPrefWidth(CELL_WIDTH);
      }
      GridPane.setValignment(node, VPos.TOP);
      grid.add(node, column, row + 1);
    }
    if (row < shown - 1) {
      Button remove = new Button("×");
      remove.getStyleClass().add("small-button");
      remove.setOnAction(event -> rows.edit(() -> without(row)));
      rows.onRefresh(() -> remove.setAccessibleText("Remove " + name.get()));
      grid.add(remove, columns.size(), row + 1);
    }
  }

  private E at(int row) {
    List<E> now = list();
    if (row < now.size()) {
      return now.get(row);
    }
    int draft = row - now.size();
    return draft < drafts.size() ? drafts.get(draft) : parts.part().blank();
  }

  /** Keeps a new row, and takes it with the others as soon as they can be taken. */
  private Trip drafted(int row, E changed) {
    int draft = row - list().size();
    if (draft < drafts.size()) {
      drafts.set(draft, changed);
    } else {
      drafts.add(changed);
    }
    List<E> all = new ArrayList<>(list());
    all.addAll(drafts);
    return taken(all);
  }

  /** Where too few are left to stand alone, they stay as drafts, and the trip has none. */
  private Trip without(int row) {
    List<E> rest = new ArrayList<>(list());
    if (row >= rest.size()) {
      drafts.remove(row - rest.size());
      rest.addAll(drafts);
      return drafts.isEmpty() ? untold() : taken(rest);
    }
    rest.remove(row);
    if (!rest.isEmpty() && !parts.check().apply(rest).isEmpty()) {
      drafts.addAll(0, rest);
      message.setText("Not taken yet: " + wrong(drafts));
      message.setVisible(true);
      return edit.apply(parts.with().apply(part.get(), List.of()));
    }
    return with(rest);
  }

  /** Nothing is told any more; the trip is as it is. */
  private Trip untold() {
    message.setVisible(false);
    Platform.runLater(this::refresh);
    return book.trip();
  }

  /** The trip with these rows, or as it is where something is missing, which is told. */
  private Trip taken(List<E> all) {
    String wrong = wrong(all);
    if (wrong.isEmpty()) {
      drafts.clear();
      message.setVisible(false);
      return with(all);
    }
    message.setText("Not taken yet: " + wrong);
    message.setVisible(true);
    Platform.runLater(this::refresh);
    return book.trip();
  }

  private Trip with(List<E> all) {
    List<Fault> faults = all.isEmpty() ? List.of() : parts.check().apply(all);
    if (!faults.isEmpty()) {
      message.setText("Not taken: " + faults.get(0).problem().message());
      message.setVisible(true);
      return book.trip();
    }
    return edit.apply(parts.with().apply(part.get(), all));
  }

  private String wrong(List<E> all) {
    for (int i = 0; i < all.size(); i++) {
      for (Column<E> column : columns) {
        String missing = column.missing().apply(all.get(i));
        if (missing != null) {
          return "row " + (i + 1) + ", " + missing + " is missing.";
        }
      }
      for (Fault fault : parts.part().faults(all.get(i))) {
        return "row " + (i + 1) + ": " + fault.problem().message();
      }
    }
    return parts.check().apply(all).stream()
        .findFirst()
        .map(fault -> fault.problem().message())
        .orElse("");
  }

  private void keyed(KeyEvent event) {
    if (!PASTE.match(event) || !(event.getTarget() instanceof TextInputControl field)) {
      return;
    }
    String text = Clipboard.getSystemClipboard().getString();
    Node cell = field;
    while (cell != null && cell.getParent() != grid) {
      cell = cell.getParent();
    }
    if (cell != null && text != null && text.strip().matches("(?s).*[\t\n].*")) {
      event.consume();
      paste(text, GridPane.getRowIndex(cell) - 1, GridPane.getColumnIndex(cell));
    }
  }

  /** Puts rows of a spreadsheet from a cell on; all of them or none. */
  private void paste(String text, int row, int column) {
    List<E> all = new ArrayList<>(list());
    all.addAll(drafts);
    List<String> lines = text.strip().lines().filter(line -> !line.isBlank()).toList();
    for (int i = 0; i < lines.size(); i++) {
      String[] texts = lines.get(i).split("\t", -1);
      E each = row + i < all.size() ? all.get(row + i) : parts.part().blank();
      for (int j = 0; j < texts.length && column + j < columns.size(); j++) {
        Column<E> at = columns.get(column + j);
        Outcome<E> outcome = at.paster().with(each, texts[j].strip());
        E next = outcome.valueOrNull();
        if (next == null) {
          refused("row " + (row + i + 1) + ", " + at.label() + ": ", outcome.problems().get(0));
          return;
        }
        each = next;
      }
      if (row + i < all.size()) {
        all.set(row + i, each);
      } else {
        all.add(each);
      }
    }
    drafts.clear();
    int there = list().size();
    if (!wrong(all).isEmpty()) {
      drafts.addAll(all.subList(Math.min(there, all.size()), all.size()));
    }
    rows.edit(() -> taken(all));
  }

  private void refused(String where, Problem problem) {
    message.setText("Nothing pasted: " + where + problem.message());
    message.setVisible(true);
  }

  private boolean isInside(Node node) {
    Node at = node;
    while (at != null && at != grid) {
      at = at.getParent();
    }
    return at != null;
  }

  private void focus(String spoken) {
    grid.lookupAll("*").stream()
        .filter(node -> node.isFocusTraversable() && spoken.equals(node.getAccessibleText()))
        .findFirst()
        .ifPresent(Node::requestFocus);
  }
}
