package dawngauge.ui.route;

import dawngauge.field.Codec;
import dawngauge.field.Fault;
import dawngauge.field.Member;
import dawngauge.field.WeightFields;
import dawngauge.field.WorksheetFields;
import dawngauge.problem.Outcome;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Ratio;
import dawngauge.trip.AxleRef;
import dawngauge.trip.DeckPlace;
import dawngauge.trip.LoadChange;
import dawngauge.trip.Rig;
import dawngauge.trip.Trip;
import dawngauge.trip.Vehicle;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.fields.Cells;
import dawngauge.ui.fields.FormFields;
import dawngauge.ui.fields.FormFields.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * One load taken on or set down at a stop: what it is, its weight, and which axle takes which part
 * of it. Parts stay drafts until they are 100 % together.
 */
final class LoadForm extends VBox {

  private final FormFields book;
  private final Supplier<@Nullable LoadChange> there;
  private final Function<LoadChange, Trip> edit;
  private final Supplier<String> name;
  private final Label message = new Label();
  private LoadChange draft = WeightFields.LOAD_CHANGE.blank();
  private @Nullable LoadChange known;

  /**
   * A form.
   *
   * @param book takes the fields
   * @param there the load in the trip; null where it is a new one
   * @param name how it is called
   * @param edit the trip with another load in its place
   * @param remove takes it out
   */
  LoadForm(
      FormFields book,
      Supplier<@Nullable LoadChange> there,
      Supplier<String> name,
      Function<LoadChange, Trip> edit,
      Node remove) {
    this.book = book;
    this.there = there;
    this.name = name;
    this.edit = edit;
    getStyleClass().add("load-form");
    message.getStyleClass().add("lesser");
    message.setWrapText(true);
    message.managedProperty().bind(message.visibleProperty());
    message.setVisible(false);
    book.onRefresh(this::refresh);
    Cells<LoadChange> cells =
        new Cells<>(book, WeightFields.LOAD_CHANGE, () -> draft, List::of, name, this::drafted);
    getChildren()
        .addAll(
            book.headed("load-head", name, remove),
            FormFields.cells(
                cells.wideCell(WeightFields.LOAD_WHAT),
                cells.cell(WeightFields.LOAD_WEIGHT),
                cells.cell(WeightFields.LOAD_SOURCE),
                cells.cell(WeightFields.LOAD_OFFERED)),
            shares(),
            deck(),
            message);
  }

  private void refresh() {
    LoadChange now = there.get();
    if (now != null && !now.equals(known)) {
      known = now;
      draft = now;
      message.setVisible(false);
    }
  }

  private VBox shares() {
    List<Node> nodes = new ArrayList<>();
    for (AxleRef axle : axles(book.rig())) {
      nodes.add(
          share(
              new Words(axle.words(), "part of it", name),
              WeightFields.LOAD_AXLES,
              WeightFields.LOAD_AXLES.values(),
              () -> draft.axles().get(axle),
              share -> withShare(axle, share)));
    }
    var hitch = WeightFields.LOAD_HITCH;
    nodes.add(
        share(
            new Words(hitch.label(), hitch.stands(), name),
            hitch,
            hitch.codec(),
            () -> draft.hitch(),
            share -> draft.withHitch(share)));
    HBox evenly = new HBox(6, new Label("Evenly on"));
    for (Vehicle vehicle : book.rig().vehicles()) {
      List<AxleRef> all = axles(vehicle);
      if (!all.isEmpty()) {
        evenly
            .getChildren()
            .add(
                book.adding(
                    vehicle.name(),
                    "Put " + name.get() + " evenly on the axles of the " + vehicle.name(),
                    () -> drafted(draft.withAxles(DeckPlace.evenly(all)).withHitch(null))));
      }
    }
    return new VBox(4, evenly, FormFields.cells(nodes.toArray(Node[]::new)));
  }

  /** A part of the weight by itself: whether all are 100 % together is judged of the draft. */
  private Node share(
      Words words,
      Member<LoadChange> member,
      Codec<Entered<Ratio>> codec,
      Supplier<@Nullable Entered<Ratio>> shown,
      Function<@Nullable Entered<Ratio>, LoadChange> with) {
    FigureField<Optional<Entered<Ratio>>> field =
        book.field(
            words,
            text ->
                text.isEmpty()
                    ? Outcome.of(Optional.empty())
                    : codec.typed().apply(book.units(), text).map(Optional::of),
            () -> FormFields.text(shown.get()),
            value -> drafted(with.apply(value.orElse(null))));
    field.getProperties().put(Cells.MEMBER, member);
    return FormFields.cell(words, field);
  }

  private LoadChange withShare(AxleRef axle, @Nullable Entered<Ratio> share) {
    Map<AxleRef, Entered<Ratio>> shares = new HashMap<>(draft.axles());
    if (share == null) {
      shares.remove(axle);
    } else {
      shares.put(axle, share);
    }
    return draft.withAxles(shares);
  }

  /** By its place on a trailer's deck, from two lengths. */
  private VBox deck() {
    VBox all = new VBox(4);
    for (Vehicle vehicle : book.rig().vehicles()) {
      if (vehicle.kind() == Vehicle.Kind.TRAILER && !vehicle.axles().isEmpty()) {
        FigureField<Optional<Entered<Distance>>> load = length("Hitch to load", vehicle);
        FigureField<Optional<Entered<Distance>>> middle = length("Hitch to axles' middle", vehicle);
        Button take =
            book.adding(
                "Take the parts",
                "Take the parts by its place on the deck of the " + vehicle.name(),
                () -> byPlace(vehicle, load, middle));
        Label title = new Label("By its place on the " + vehicle.name() + "'s deck, by levers");
        title.getStyleClass().add("lesser");
        all.getChildren()
            .addAll(
                title,
                FormFields.cells(
                    FormFields.cell(words("Hitch to load", vehicle), load),
                    FormFields.cell(words("Hitch to axles' middle", vehicle), middle),
                    take));
      }
    }
    return all;
  }

  private Words words(String label, Vehicle vehicle) {
    return new Words(label, "measured on the deck", () -> name.get() + ", " + vehicle.name());
  }

  /** A length for this sum alone; the trip keeps what comes of it. */
  private FigureField<Optional<Entered<Distance>>> length(String label, Vehicle vehicle) {
    FigureField<Optional<Entered<Distance>>> field =
        new FigureField<>(label, this::lengthOf, value -> {});
    field.named(words(label, vehicle).spoken());
    field.field().setPrefColumnCount(6);
    return field;
  }

  private Outcome<Optional<Entered<Distance>>> lengthOf(String text) {
    return text.isEmpty()
        ? Outcome.of(Optional.empty())
        : WorksheetFields.LENGTH.typed().apply(book.units(), text).map(Optional::of);
  }

  private Trip byPlace(
      Vehicle vehicle,
      FigureField<Optional<Entered<Distance>>> load,
      FigureField<Optional<Entered<Distance>>> middle) {
    Distance from = length(load);
    Distance to = length(middle);
    if (from == null || to == null) {
      return tell("Type both lengths, such as 12 ft and 16 ft.");
    }
    return new DeckPlace(from, to)
        .shares(axles(vehicle))
        .map(shares -> drafted(draft.withAxles(shares.axles()).withHitch(shares.hitch())))
        .orElseGet(
            () ->
                tell(
                    "It stands behind the middle of the axles and lifts the hitch: parts from 0 to"
                        + " 100 % cannot tell that. Weigh the rig with it."));
  }

  private @Nullable Distance length(FigureField<Optional<Entered<Distance>>> field) {
    Optional<Entered<Distance>> typed = lengthOf(field.typed()).valueOrNull();
    return typed == null ? null : typed.map(Entered::value).orElse(null);
  }

  private Trip tell(String text) {
    message.setText(text);
    message.setVisible(true);
    return book.trip();
  }

  /** Keeps a change, and takes it as soon as the load is whole. */
  private Trip drafted(LoadChange changed) {
    draft = changed;
    List<String> missing = new ArrayList<>();
    if (changed.what().isEmpty()) {
      missing.add("what it is");
    }
    if (changed.weight().text().isEmpty()) {
      missing.add("its weight");
    }
    List<Fault> faults = WeightFields.LOAD_CHANGE.faults(changed);
    if (changed.axles().isEmpty() && changed.hitch() == null) {
      missing.add("which axles take it");
    } else if (missing.isEmpty() && !faults.isEmpty()) {
      Platform.runLater(book::refresh);
      return tell("Not taken yet: " + faults.get(0).problem().message());
    }
    if (!missing.isEmpty()) {
      Platform.runLater(book::refresh);
      return tell("Not taken yet, missing: " + String.join(", ", missing) + ".");
    }
    message.setVisible(false);
    return edit.apply(changed);
  }

  static List<AxleRef> axles(Rig rig) {
    return rig.vehicles().stream().flatMap(vehicle -> axles(vehicle).stream()).toList();
  }

  private static List<AxleRef> axles(Vehicle vehicle) {
    List<AxleRef> all = new ArrayList<>();
    for (int number = 1; number <= vehicle.axles().size(); number++) {
      all.add(new AxleRef(vehicle.name(), number));
    }
    return all;
  }
}
