package dawngauge.ui.start;

import dawngauge.explain.Phrase;
import dawngauge.geo.Coordinate;
import dawngauge.geo.Place;
import dawngauge.planner.FirstHaul;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.TypedTime;
import dawngauge.ui.common.DayChooser;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import dawngauge.ui.common.PlaceOffers;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.geometry.Insets;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** The dozen entries of a first haul; each says where its figure is read. */
final class FirstEntries extends GridPane {

  /** Brings the first line of a text to that in a field. */
  private static final Insets BESIDE_FIELD = new Insets(7, 0, 0, 0);

  /** Wide enough for the examples. */
  private static final double FIELD_WIDTH = 196;

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

  private final Supplier<UnitSystem> units;
  private final BiFunction<String, @Nullable Coordinate, List<Place>> search;
  private final Consumer<FirstHaul> changed;
  private final List<Runnable> examples = new ArrayList<>();
  private FirstHaul haul = FirstHaul.EMPTY;
  private @Nullable Place from;
  private @Nullable Place to;
  private @Nullable LocalDateTime departure;
  private @Nullable Entered<Temperature> low;
  private @Nullable Entered<Temperature> high;
  private int axles = 2;
  private boolean dual;
  private @Nullable String size;
  private @Nullable Entered<Mass> maxLoad;
  private @Nullable Entered<GaugePressure> atPressure;
  private @Nullable Entered<GaugePressure> label;
  private @Nullable Entered<Mass> weight;
  private FirstHaul.Weighed weighed = FirstHaul.Weighed.TOGETHER;
  private @Nullable Entered<GaugePressure> reading;

  FirstEntries(
      Supplier<UnitSystem> units,
      LocalDateTime offered,
      BiFunction<String, @Nullable Coordinate, List<Place>> search,
      Consumer<FirstHaul> changed) {
    this.units = units;
    this.search = search;
    this.changed = changed;
    getStyleClass().add("first-entries");
    ColumnConstraints hints = new ColumnConstraints();
    hints.setHgrow(Priority.ALWAYS);
    hints.setMinWidth(112);
    getColumnConstraints()
        .addAll(
            new ColumnConstraints(), new ColumnConstraints(178, FIELD_WIDTH, FIELD_WIDTH), hints);
    heading("The haul");
    place("From", "Type a name; Down and Enter take a place", place -> from = place);
    place("To", "", place -> to = place);
    departure(offered);
    figure(
        QuantityKind.TEMPERATURE,
        "Low of the day",
        Temperature.of(15, Unit.FAHRENHEIT),
        "About sunrise; left empty, typical for the date",
        value -> low = value);
    figure(
        QuantityKind.TEMPERATURE,
        "High of the day",
        Temperature.of(58, Unit.FAHRENHEIT),
        "In the afternoon, wherever you are then",
        value -> high = value);
    heading("The trailer");
    wheels();
    FigureField<String> sizes =
        new FigureField<>(
            "Tire size", Outcome::of, text -> take(() -> size = text.isBlank() ? null : text));
    sizes.field().setPromptText("ST235/80R16");
    row("Tire size", sizes, "Sidewall, the large figures; with its letters ST, LT or P");
    positive(
        QuantityKind.MASS,
        "Load on the sidewall",
        Mass.of(3520, Unit.POUND),
        "Sidewall: MAX LOAD SINGLE, or DUAL for pairs",
        value -> maxLoad = value);
    positive(
        QuantityKind.GAUGE_PRESSURE,
        "at cold pressure",
        GaugePressure.of(80, Unit.PSI),
        "Sidewall: AT … COLD, beside that load",
        value -> atPressure = value);
    positive(
        QuantityKind.GAUGE_PRESSURE,
        "Cold pressure on the label",
        GaugePressure.of(80, Unit.PSI),
        "Certification label, left front of the trailer; not the sidewall",
        value -> label = value);
    positive(
        QuantityKind.MASS,
        "Weight on its axles",
        Mass.of(9800, Unit.POUND),
        "Scale ticket, loaded and hitched",
        value -> weight = value);
    weighed();
    heading("This morning");
    positive(
        QuantityKind.GAUGE_PRESSURE,
        "Cold reading",
        GaugePressure.of(78, Unit.PSI),
        "Parked three hours, before the sun: the lowest tire",
        value -> reading = value);
    showExamples();
  }

  /** A clock time alone is of the day shown: the one typed last, else the one that is offered. */
  private void departure(LocalDateTime offered) {
    FigureField<Optional<TypedTime>> time =
        new FigureField<>(
            "Departure",
            text -> Forms.time(zone(), day(offered)).apply(text),
            value ->
                take(
                    () ->
                        departure =
                            value.map(typed -> typed.time().toLocalDateTime()).orElse(null)));
    time.field()
        .focusedProperty()
        .addListener(
            (property, was, is) -> {
              LocalDateTime taken = departure;
              if (!is && taken != null && time.draft() == null) {
                time.put(TIME.format(taken)); // with its day
              }
            });
    time.field().setPromptText(TIME.format(offered));
    DayChooser.on(time);
    row("Departure", time, "By the clock there, such as 5:00; else tomorrow at six");
  }

  private LocalDate day(LocalDateTime offered) {
    LocalDateTime typed = departure;
    return (typed == null ? offered : typed).toLocalDate();
  }

  /** Shows the examples in the units that are shown. */
  void showExamples() {
    examples.forEach(Runnable::run);
  }

  /** As a person writes it: whole figures, tenths of a bar. */
  private String text(Quantity example) {
    return Phrase.of("{0}", new Phrase.Stated(example, 0, example instanceof GaugePressure ? 1 : 0))
        .in(units.get());
  }

  private ZoneId zone() {
    Place start = from;
    return start == null ? ZoneOffset.UTC : start.zone();
  }

  private void place(String name, String note, Consumer<@Nullable Place> taker) {
    Place[] taken = new Place[1];
    FigureField<String> field =
        new FigureField<>(
            name,
            text -> {
              Place known = taken[0];
              if (text.isEmpty() || (known != null && text.equals(known.label()))) {
                return Outcome.of(text);
              }
              List<Place> found = search.apply(text, around());
              return found.size() == 1 || isExact(found, text)
                  ? Outcome.of(text)
                  : Outcome.failed(Problem.of(ProblemCode.PLACE_NOT_TAKEN, "", text));
            },
            text -> {
              List<Place> found = text.isEmpty() ? List.of() : search.apply(text, around());
              Place known = taken[0];
              boolean same = known != null && text.equals(known.label());
              Place place = same ? known : found.isEmpty() ? null : found.get(0);
              take(() -> taker.accept(place));
            });
    new PlaceOffers(
        field,
        units,
        this::around,
        search,
        place -> {
          taken[0] = place;
          take(() -> taker.accept(place));
        });
    field.field().setPromptText("a town");
    row(name, field, note);
  }

  private static boolean isExact(List<Place> found, String text) {
    return !found.isEmpty() && found.get(0).label().equalsIgnoreCase(text.replace(",", "").strip());
  }

  private @Nullable Coordinate around() {
    Place start = from;
    return start == null ? null : start.coordinate();
  }

  private void weighed() {
    ChoiceBox<String> box = new ChoiceBox<>();
    Map<String, FirstHaul.Weighed> choices = new LinkedHashMap<>();
    for (FirstHaul.Weighed each : FirstHaul.Weighed.values()) {
      choices.put(each.word(), each);
    }
    box.getItems().addAll(choices.keySet());
    box.setValue(weighed.word());
    box.setMaxWidth(Double.MAX_VALUE);
    box.setAccessibleText("What stood on the scale");
    box.setOnAction(event -> take(() -> weighed = choices.getOrDefault(box.getValue(), weighed)));
    row("weighed", box, "The heaviest of several, where each was weighed");
  }

  private void wheels() {
    ChoiceBox<Integer> number = new ChoiceBox<>();
    for (int i = 1; i <= FirstHaul.MOST_AXLES; i++) {
      number.getItems().add(i);
    }
    number.setValue(axles);
    number.setAccessibleText("Axles of the trailer");
    number.setOnAction(event -> take(() -> axles = number.getValue()));
    ChoiceBox<String> pairs = new ChoiceBox<>();
    pairs.getItems().addAll("single wheels", "wheels in pairs");
    pairs.setValue("single wheels");
    pairs.setMinWidth(132);
    pairs.setAccessibleText("Single wheels or pairs");
    pairs.setOnAction(event -> take(() -> dual = pairs.getValue().equals("wheels in pairs")));
    HBox both = new HBox(8, number, pairs);
    row("Axles", both, "Two with single wheels, until you choose");
  }

  private <Q extends Quantity> void figure(
      QuantityKind<Q> kind,
      String name,
      Q example,
      String note,
      Consumer<@Nullable Entered<Q>> taker) {
    FigureField<Optional<Entered<Q>>> field =
        new FigureField<>(
            name,
            text -> Forms.figure(kind, units.get()).apply(text),
            value -> take(() -> taker.accept(value.orElse(null))));
    examples.add(() -> field.field().setPromptText(text(example)));
    row(name, field, note);
  }

  private <Q extends Quantity> void positive(
      QuantityKind<Q> kind,
      String name,
      Q example,
      String note,
      Consumer<@Nullable Entered<Q>> taker) {
    FigureField<Optional<Entered<Q>>> field =
        new FigureField<>(
            name,
            text -> Forms.positive(kind, units.get()).apply(text),
            value -> take(() -> taker.accept(value.orElse(null))));
    examples.add(() -> field.field().setPromptText(text(example)));
    row(name, field, note);
  }

  private void take(Runnable change) {
    change.run();
    haul =
        new FirstHaul(
            from,
            to,
            departure,
            low,
            high,
            axles,
            dual,
            size,
            maxLoad,
            atPressure,
            label,
            weight,
            weighed,
            reading);
    changed.accept(haul);
  }

  FirstHaul haul() {
    return haul;
  }

  private void heading(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("first-heading");
    add(label, 0, getRowCount(), 3, 1);
  }

  private void row(String name, Node field, String note) {
    Label label = new Label(name);
    label.setLabelFor(field);
    label.setMinWidth(USE_PREF_SIZE);
    Label where = new Label(note);
    where.getStyleClass().add("lesser");
    where.setWrapText(true);
    for (Node node : List.of(label, field)) {
      setValignment(node, VPos.TOP);
    }
    setMargin(label, BESIDE_FIELD);
    // An error has the width beside the field, not that of the field.
    VBox beside =
        field instanceof FigureField<?> figure
            ? new VBox(2, figure.message(), where)
            : new VBox(where);
    setValignment(beside, VPos.TOP);
    setMargin(beside, BESIDE_FIELD);
    addRow(getRowCount(), label, field, beside);
  }
}
