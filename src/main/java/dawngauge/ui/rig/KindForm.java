package dawngauge.ui.rig;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.QuantityKind;
import dawngauge.tire.Construction;
import dawngauge.tire.LoadInflationTable;
import dawngauge.tire.TireClass;
import dawngauge.tire.TireSpec;
import dawngauge.trip.RigEdits;
import dawngauge.trip.RigParts;
import dawngauge.trip.Trip;
import dawngauge.ui.rig.FieldBook.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** The fields of one kind of tire: what its sidewall says. */
final class KindForm extends VBox {

  /** The classes of tires, and none typed. */
  static final List<Optional<TireClass>> CLASSES =
      Stream.concat(
              Stream.of(Optional.<TireClass>empty()),
              Arrays.stream(TireClass.values()).map(Optional::of))
          .toList();

  private static final String SIDEWALL = "sidewall";

  private final FieldBook book;
  private final int index;

  KindForm(FieldBook book, int index) {
    this.book = book;
    this.index = index;
    getStyleClass().add("rig-axle");
    getChildren()
        .addAll(
            book.headed("rig-subheading", this::owner, remove()),
            FieldBook.cells(cells().toArray(Node[]::new)),
            book.note(this::alsoInFile));
  }

  private Button remove() {
    Button button =
        book.removing(
            "Remove",
            () -> "Remove kind of tire " + owner(),
            () -> RigParts.withoutKind(book.trip(), index));
    book.onRefresh(
        () -> {
          boolean can = RigParts.canRemoveKind(book.rig(), index);
          button.setDisable(!can);
          button.setText(can ? "Remove" : "in use");
        });
    return button;
  }

  static String word(Optional<TireClass> tireClass) {
    return tireClass.map(TireClass::word).orElse("not typed");
  }

  private List<Node> cells() {
    List<Node> cells = new ArrayList<>();
    Words name = words("Name", "as the tires refer to it");
    cells.add(
        FieldBook.wideCell(
            name,
            book.field(
                name,
                text -> RigForms.name("tire type", others(), text),
                this::owner,
                value -> with(draft -> draft.name = value))));
    cells.add(text("Size", TireSpec::size, (draft, value) -> draft.size = value));
    Words tireClass = words("Class", SIDEWALL);
    cells.add(
        FieldBook.cell(
            tireClass,
            book.choice(
                tireClass,
                () -> CLASSES,
                () -> Optional.ofNullable(spec().tireClass()),
                KindForm::word,
                value -> with(draft -> draft.tireClass = value.orElse(null)))));
    cells.add(text("Load range", TireSpec::loadRange, (draft, value) -> draft.loadRange = value));
    cells.add(
        load(
            "Rated load, single",
            TireSpec::ratedLoadSingle,
            (draft, value) -> draft.ratedLoadSingle = value));
    cells.add(
        load(
            "Rated load, dual",
            TireSpec::ratedLoadDual,
            (draft, value) -> draft.ratedLoadDual = value));
    cells.add(
        pressure(
            "Rated pressure",
            TireSpec::ratedPressure,
            (draft, value) -> draft.ratedPressure = value));
    cells.add(
        pressure(
            "Max cold pressure",
            TireSpec::maxColdPressure,
            (draft, value) -> draft.maxColdPressure = value));
    cells.add(
        text("Speed symbol", TireSpec::speedSymbol, (draft, value) -> draft.speedSymbol = value));
    return cells;
  }

  private Node text(
      String label,
      Function<TireSpec, @Nullable String> shown,
      BiConsumer<KindDraft, @Nullable String> change) {
    Words words = words(label, SIDEWALL);
    return FieldBook.cell(
        words,
        book.text(
            words, () -> shown.apply(spec()), value -> with(draft -> change.accept(draft, value))));
  }

  private Node load(
      String label,
      Function<TireSpec, @Nullable Entered<Mass>> shown,
      BiConsumer<KindDraft, @Nullable Entered<Mass>> change) {
    Words words = words(label, SIDEWALL);
    return FieldBook.cell(
        words,
        book.positive(
            words,
            QuantityKind.MASS,
            () -> shown.apply(spec()),
            value -> with(draft -> change.accept(draft, value))));
  }

  /** A pressure; the highest cold one may not be below the rated one. */
  private Node pressure(
      String label,
      Function<TireSpec, @Nullable Entered<GaugePressure>> shown,
      BiConsumer<KindDraft, @Nullable Entered<GaugePressure>> change) {
    Words words = words(label, SIDEWALL);
    return FieldBook.cell(
        words,
        book.field(
            words,
            text -> inOrder(text, change),
            () -> FieldBook.text(shown.apply(spec())),
            value -> with(draft -> change.accept(draft, value.orElse(null)))));
  }

  private Outcome<Optional<Entered<GaugePressure>>> inOrder(
      String text, BiConsumer<KindDraft, @Nullable Entered<GaugePressure>> change) {
    Outcome<Optional<Entered<GaugePressure>>> outcome =
        RigForms.positive(QuantityKind.GAUGE_PRESSURE, book.units(), text);
    Optional<Entered<GaugePressure>> value = outcome.valueOrNull();
    if (value == null) {
      return outcome;
    }
    KindDraft draft = new KindDraft(spec());
    change.accept(draft, value.orElse(null));
    Entered<GaugePressure> rated = draft.ratedPressure;
    Entered<GaugePressure> most = draft.maxColdPressure;
    return rated != null && most != null && most.value().compareTo(rated.value()) < 0
        ? Outcome.failed(
            Problem.of(ProblemCode.BELOW_RATED_PRESSURE, "", most.text(), rated.text()))
        : outcome;
  }

  private String alsoInFile() {
    List<String> parts = new ArrayList<>();
    Construction construction = spec().construction();
    if (construction != null) {
      parts.add(construction.word());
    }
    if (spec().loadIndexSingle() != null) {
      parts.add("load index " + spec().loadIndexSingle());
    }
    if (spec().loadIndexDual() != null) {
      parts.add("dual load index " + spec().loadIndexDual());
    }
    LoadInflationTable rows = spec().rows();
    if (rows != null) {
      parts.add(rows.rows().size() + " rows of the maker's table");
    }
    return parts.isEmpty()
        ? ""
        : "Also in the file, and counted: " + String.join(", ", parts) + ".";
  }

  private List<String> others() {
    List<TireSpec> all = book.rig().tireTypes();
    return IntStream.range(0, all.size())
        .filter(i -> i != index)
        .mapToObj(i -> all.get(i).name())
        .toList();
  }

  private Words words(String label, String stands) {
    return new Words(label, stands, this::owner);
  }

  private TireSpec spec() {
    return book.rig().tireTypes().get(index);
  }

  private Trip with(Consumer<KindDraft> change) {
    KindDraft draft = new KindDraft(spec());
    change.accept(draft);
    return RigEdits.withTireType(book.trip(), index, draft.spec());
  }

  private String owner() {
    return spec().name();
  }
}
