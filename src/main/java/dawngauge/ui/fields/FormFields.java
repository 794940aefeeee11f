package dawngauge.ui.fields;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Rig;
import dawngauge.trip.RigParts;
import dawngauge.trip.Trip;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import dawngauge.ui.common.TripDocument;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.collections.FXCollections;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/**
 * The fields of one form. They stay while the figures behind them change, so that focus and drafts
 * stay too; once closed, none of them edits any more.
 */
public final class FormFields {

  /**
   * How a field is called.
   *
   * @param label what is typed
   * @param stands where that figure stands, such as "certification label"
   * @param owner what it belongs to, as it is called now
   */
  public record Words(String label, String stands, Supplier<String> owner) {
    public String spoken() {
      return label + " of " + owner.get();
    }
  }

  private final TripDocument document;
  private final Consumer<List<String>> teller;
  private final List<Runnable> refreshers = new ArrayList<>();
  private boolean open = true;
  private boolean filling;

  /**
   * An empty book.
   *
   * @param document the trip
   * @param teller told what went with a part that was taken out, each in words
   */
  public FormFields(TripDocument document, Consumer<List<String>> teller) {
    this.document = document;
    this.teller = teller;
  }

  /** A book for fields that come and go within this one's. */
  public FormFields inner() {
    return new FormFields(document, teller);
  }

  /** Shows the trip as it is now. */
  public void refresh() {
    filling = true;
    refreshers.forEach(Runnable::run);
    filling = false;
  }

  /** Ends all editing by these fields. */
  public void close() {
    open = false;
  }

  /** The trip as it is now. */
  public Trip trip() {
    return document.trip();
  }

  /** Its rig. */
  public Rig rig() {
    return document.trip().rig();
  }

  /** The units that are shown. */
  public UnitSystem units() {
    return document.units();
  }

  /** Has something done at each refresh. */
  public void onRefresh(Runnable refresher) {
    refreshers.add(refresher);
  }

  /** Makes an edit of a finished field. */
  public void edit(Supplier<Trip> next) {
    if (open && !filling) {
      document.edit(next.get());
    }
  }

  /** A field for anything typed. */
  public <T> FigureField<T> field(
      Words words,
      Function<String, Outcome<T>> parser,
      Supplier<String> shown,
      Function<T, Trip> edit) {
    FigureField<T> field =
        new FigureField<>(
            words.label(),
            text ->
                open // a field that leaves the form loses the focus: nothing comes of that
                    ? parser.apply(text)
                    : Outcome.failed(Problem.of(ProblemCode.NOT_A_NAME, "", text)),
            value -> edit(() -> edit.apply(value)));
    field.field().setPrefColumnCount(6);
    field.field().setTooltip(new Tooltip(words.stands()));
    field.field().setAccessibleHelp(words.stands());
    onRefresh(
        () -> {
          field.named(words.spoken());
          field.show(shown.get());
        });
    return field;
  }

  /** A field for a figure above zero that may be missing. */
  public <Q extends Quantity> FigureField<Optional<Entered<Q>>> positive(
      Words words,
      QuantityKind<Q> kind,
      Supplier<@Nullable Entered<Q>> shown,
      Function<@Nullable Entered<Q>, Trip> edit) {
    return field(
        words,
        Forms.positive(kind, units()),
        () -> text(shown.get()),
        value -> edit.apply(value.orElse(null)));
  }

  /** A choice among things that may change with the trip. */
  public <T> ChoiceBox<T> choice(
      Words words,
      Supplier<List<T>> items,
      Supplier<T> chosen,
      Function<T, String> word,
      Function<T, Trip> edit) {
    ChoiceBox<T> box = new ChoiceBox<>();
    box.setMaxWidth(Double.MAX_VALUE);
    box.setTooltip(new Tooltip(words.stands()));
    box.setAccessibleHelp(words.stands());
    box.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(@Nullable T item) {
            return item == null ? "" : word.apply(item);
          }

          @Override
          public T fromString(String text) {
            throw new UnsupportedOperationException("a choice is not typed");
          }
        });
    box.setOnAction(
        event -> {
          T value = box.getValue();
          if (value != null) {
            edit(() -> edit.apply(value));
          }
        });
    onRefresh(
        () -> {
          box.setAccessibleText(words.spoken());
          if (!box.getItems().equals(items.get())) {
            box.setItems(FXCollections.observableArrayList(items.get()));
          }
          box.setValue(chosen.get());
        });
    return box;
  }

  /** A button that adds a part. */
  public Button adding(String text, String spoken, Supplier<Trip> next) {
    return button(text, () -> spoken, () -> edit(next));
  }

  /** A button that takes a part out, or makes another of it, and tells what went with it. */
  public Button removing(String text, Supplier<String> spoken, Supplier<RigParts.Changed> next) {
    return button(
        text,
        spoken,
        () -> {
          if (open && !filling) {
            RigParts.Changed changed = next.get();
            document.edit(changed.trip());
            teller.accept(changed.lost());
          }
        });
  }

  private Button button(String text, Supplier<String> spoken, Runnable action) {
    Button button = new Button(text);
    button.getStyleClass().add("small-button");
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(event -> action.run());
    onRefresh(() -> button.setAccessibleText(spoken.get()));
    return button;
  }

  /** A heading with buttons at its end. */
  public HBox headed(String style, Supplier<String> text, Node... buttons) {
    Label label = heading("", text);
    label.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(label, Priority.ALWAYS);
    HBox row = new HBox(6, label);
    row.getChildren().addAll(buttons);
    row.setAlignment(Pos.CENTER_LEFT);
    row.getStyleClass().add(style);
    return row;
  }

  /** A field with its name above and below it where its figure stands. */
  public static VBox cell(Words words, Node field) {
    Label label = new Label(words.label());
    label.setLabelFor(field);
    label.setWrapText(true);
    Label stands = new Label(words.stands());
    stands.getStyleClass().add("lesser");
    stands.setWrapText(true);
    VBox cell = new VBox(label, field, stands);
    cell.getStyleClass().add("rig-cell");
    return cell;
  }

  /** The same for names, which are longer. */
  public static VBox wideCell(Words words, Node field) {
    VBox cell = cell(words, field);
    cell.getStyleClass().add("rig-wide-cell");
    return cell;
  }

  /** Cells side by side as far as the width goes. */
  public static FlowPane cells(Node... cells) {
    FlowPane pane = new FlowPane(cells);
    pane.setRowValignment(VPos.TOP);
    pane.getStyleClass().add("rig-cells");
    return pane;
  }

  /** A heading that follows the trip. */
  public Label heading(String style, Supplier<String> text) {
    Label label = new Label();
    label.getStyleClass().add(style);
    label.setWrapText(true);
    onRefresh(() -> label.setText(text.get()));
    return label;
  }

  /** A lesser line that follows the trip; gone where it is empty. */
  public Label note(Supplier<String> text) {
    Label label = new Label();
    label.getStyleClass().add("lesser");
    label.setWrapText(true);
    label.managedProperty().bind(label.visibleProperty());
    onRefresh(
        () -> {
          label.setText(text.get());
          label.setVisible(!label.getText().isEmpty());
        });
    return label;
  }

  /** A figure as it was typed, or nothing. */
  public static String text(@Nullable Entered<?> typed) {
    return typed == null ? "" : typed.text();
  }
}
