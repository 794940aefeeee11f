package dawngauge.ui.rig;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.LabelFitment;
import dawngauge.trip.Remarks;
import dawngauge.trip.Trip;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.rig.FieldBook.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.Node;
import org.jspecify.annotations.Nullable;

/**
 * The first line of an axle's certification label. It begins when both size and cold pressure are
 * typed, and is gone when the pressure is emptied.
 */
final class LabelCells {

  private final FieldBook book;
  private final Supplier<List<LabelFitment>> label;
  private final Function<List<LabelFitment>, Trip> edit;
  private final Words size;
  private final Words cold;
  private final Words range;
  private final Words tireClass;
  private final List<FigureField<?>> pair = new ArrayList<>();

  LabelCells(
      FieldBook book,
      Supplier<String> owner,
      Supplier<List<LabelFitment>> label,
      Function<List<LabelFitment>, Trip> edit) {
    this.book = book;
    this.label = label;
    this.edit = edit;
    size = new Words("Label tire size", "certification label", owner);
    range = new Words("Label load range", "certification label", owner);
    tireClass = new Words("Label tire class", "certification label", owner);
    cold = new Words("Label cold pressure", "certification label", owner);
  }

  List<Node> cells() {
    FigureField<String> sizeField =
        book.field(
            size, this::sizeFrom, () -> line().map(LabelFitment::size).orElse(""), this::withSize);
    FigureField<Optional<Entered<GaugePressure>>> coldField =
        book.field(
            cold,
            this::coldFrom,
            () -> line().map(l -> l.coldPressure().text()).orElse(""),
            value -> withCold(value.orElse(null)));
    pair.add(sizeField);
    pair.add(coldField);
    FigureField<Optional<String>> rangeField =
        book.text(
            range,
            () -> line().map(LabelFitment::loadRange).orElse(null),
            value -> changed(l -> l.withLoadRange(value)));
    Node classBox =
        book.choice(
            tireClass,
            () -> KindForm.CLASSES,
            () -> line().map(LabelFitment::tireClass),
            KindForm::word,
            value -> changed(l -> l.withTireClass(value.orElse(null))));
    book.onRefresh(
        () -> {
          rangeField.setDisable(line().isEmpty());
          classBox.setDisable(line().isEmpty());
        });
    return List.of(
        FieldBook.cell(size, sizeField),
        FieldBook.cell(cold, coldField),
        FieldBook.cell(range, rangeField),
        FieldBook.cell(tireClass, classBox));
  }

  private Outcome<String> sizeFrom(String text) {
    if (text.isEmpty()) {
      return missing(size);
    }
    return line().isPresent() || typedCold() != null ? Outcome.of(text) : missing(cold);
  }

  private Outcome<Optional<Entered<GaugePressure>>> coldFrom(String text) {
    boolean alone = line().isEmpty() && !text.isEmpty() && typedSize().isEmpty();
    return alone
        ? missing(size)
        : RigForms.positive(QuantityKind.GAUGE_PRESSURE, book.units(), text);
  }

  private static <T> Outcome<T> missing(Words other) {
    return Outcome.failed(
        Problem.of(ProblemCode.MISSING_FIELD, "", other.label(), "it as on the label"));
  }

  private String typedSize() {
    return pair.get(0).field().getText().strip();
  }

  private @Nullable Entered<GaugePressure> typedCold() {
    Optional<Entered<GaugePressure>> typed =
        RigForms.positive(
                QuantityKind.GAUGE_PRESSURE, book.units(), pair.get(1).field().getText().strip())
            .valueOrNull();
    return typed == null ? null : typed.orElse(null);
  }

  private Trip withSize(String text) {
    Entered<GaugePressure> pressure = typedCold();
    return line().isEmpty() && pressure != null
        ? begun(text, pressure)
        : changed(l -> l.withSize(text));
  }

  private Trip withCold(@Nullable Entered<GaugePressure> pressure) {
    if (pressure == null) {
      List<LabelFitment> lines = label.get();
      return edit.apply(lines.isEmpty() ? lines : lines.subList(1, lines.size()));
    }
    return line().isEmpty()
        ? begun(typedSize(), pressure)
        : changed(l -> l.withColdPressure(pressure));
  }

  private Trip begun(String text, Entered<GaugePressure> pressure) {
    return edit.apply(List.of(new LabelFitment(text, null, null, pressure, Remarks.NONE)));
  }

  private Trip changed(Function<LabelFitment, LabelFitment> change) {
    List<LabelFitment> lines = new ArrayList<>(label.get());
    if (!lines.isEmpty()) {
      lines.set(0, change.apply(lines.get(0)));
    }
    return edit.apply(lines);
  }

  private Optional<LabelFitment> line() {
    return label.get().stream().findFirst();
  }
}
