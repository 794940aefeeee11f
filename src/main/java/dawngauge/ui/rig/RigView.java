package dawngauge.ui.rig;

import dawngauge.fitness.Defect;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.trip.Axle;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Rig;
import dawngauge.trip.RigParts;
import dawngauge.trip.Spare;
import dawngauge.trip.Trip;
import dawngauge.trip.Vehicle;
import dawngauge.ui.common.DraftKeeper;
import dawngauge.ui.common.PageDrafts;
import dawngauge.ui.common.TripDocument;
import dawngauge.ui.fields.FormFields;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import javafx.application.Platform;
import javafx.beans.property.BooleanProperty;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Bounds;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * The rig as a form: vehicles with axles and tires, kinds of tires, scale weights, gauges; beside
 * each what is found about it before the trip.
 */
public final class RigView extends BorderPane implements DraftKeeper {

  /** A rig of no more axles is seen whole at once; ours. */
  private static final int FEW_AXLES = 2;

  /** What stays visible above and below the field that has the focus, in pixels. */
  private static final double MARGIN = 64;

  private final TripDocument document;
  private final BooleanProperty dark;
  private final Label summary = new Label();
  private final Label told = new Label();
  private final VBox form = new VBox();
  private final VBox scale = new VBox();
  private final ScrollPane scroll = new ScrollPane(form);
  private final EarlierRigPane earlier;
  private final PageDrafts drafts = new PageDrafts("rig", form);
  private Runnable askAnother = () -> {};
  private FormFields fields;
  private FormFields weights;
  private final FindingLinks links = new FindingLinks(this::follow);
  private FindingLists findings;

  /** Keys of what is unfolded. */
  private final Set<String> open = new HashSet<>();

  private String opened = "";
  private @Nullable Rig before;
  private List<Object> shape = List.of();
  private List<Object> scaleShape = List.of();
  private boolean restoring;
  private boolean stale = true;

  /** The rig of a document. */
  public RigView(TripDocument document, BooleanProperty dark) {
    this.dark = dark;
    this.document = document;
    fields = new FormFields(document, this::tell);
    weights = new FormFields(document, this::tell);
    findings = new FindingLists(document.trip().rig());
    told.getStyleClass().add("rig-told");
    told.setWrapText(true);
    told.managedProperty().bind(told.visibleProperty());
    told.setVisible(false);
    summary.getStyleClass().add("summary");
    summary.setWrapText(true);
    form.getStyleClass().add("rig-form");
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add("page-scroll");
    earlier = new EarlierRigPane(document, () -> askAnother.run());
    setTop(new VBox(summary, told, earlier));
    setCenter(scroll);
    document.onLeaving(drafts::drop);
    document.shownProperty().addListener(change -> changed());
    document.unitsProperty().addListener(change -> changed());
    ChangeListener<@Nullable Node> follow = (property, was, is) -> reveal(is);
    sceneProperty()
        .addListener(
            (property, was, is) -> {
              if (was != null) {
                was.focusOwnerProperty().removeListener(follow);
              }
              if (is != null) {
                is.focusOwnerProperty().addListener(follow);
                if (stale) {
                  refresh();
                }
              }
            });
  }

  /** While the page is not seen it waits. */
  private void changed() {
    if (getScene() == null) {
      stale = true;
    } else {
      refresh();
    }
  }

  @Override
  public Map<String, Map<String, String>> drafts() {
    return drafts.all();
  }

  @Override
  public void restore(Map<String, Map<String, String>> kept) {
    drafts.expect(kept);
    changed();
  }

  /**
   * Shows the rig beside that of an earlier trip.
   *
   * @param other the earlier trip
   * @param another asks for another one
   */
  public void compareWith(Plan other, Runnable another) {
    askAnother = another;
    earlier.show(other);
  }

  private void refresh() {
    stale = false;
    told.setVisible(false);
    Trip trip = document.trip();
    String focused = focusedText();
    String grown = grown(trip);
    RigFindings found = new RigFindings(trip.rig(), document.planned().fitness());
    List<Object> shapeNow = shape(trip);
    List<Object> scaleNow = ScaleForm.shape(trip.rig());
    boolean anew = !shapeNow.equals(shape);
    if (anew) {
      shape = shapeNow;
      build(trip);
    }
    boolean laidOut = anew || !scaleNow.equals(scaleShape);
    if (laidOut) {
      scaleShape = scaleNow;
      weights.close();
      weights = new FormFields(document, this::tell);
      scale.getChildren().setAll(new ScaleForm(weights, open));
    }
    findings.show(found, document.units());
    fields.refresh();
    weights.refresh();
    drafts.fill(this::unfold);
    summary.setText(found.summary());
    links.show(found, document.units());
    String wanted = grown.isEmpty() ? focused : grown;
    if (laidOut && !wanted.isEmpty()) {
      restoring = grown.isEmpty(); // it is given back behind the focus that may be on its way
      Platform.runLater(
          () -> {
            scroll.applyCss();
            scroll.layout();
            focus(form, node -> wanted.equals(node.getAccessibleText()));
            restoring = false;
          });
    }
  }

  /** Unfolds what has just been added, and tells the name of its first field; empty if nothing. */
  private String grown(Trip trip) {
    Rig was = before;
    Rig now = trip.rig();
    before = now;
    if (was == null || !opened.equals(trip.name())) {
      opened = trip.name();
      open.clear();
      unfoldFew(now);
      return "";
    }
    return NewPart.of(was, now)
        .map(
            part -> {
              open.add(part.key());
              return part.field();
            })
        .orElse("");
  }

  /** A small rig is seen whole; of a larger one the headings. */
  private void unfoldFew(Rig rig) {
    if (ScaleForm.axles(rig).size() <= FEW_AXLES) {
      for (int i = 0; i < rig.vehicles().size(); i++) {
        for (int axle = 0; axle < rig.vehicles().get(i).axles().size(); axle++) {
          open.add(AxleForm.key(i, axle));
        }
      }
    }
  }

  /** Goes to the field that a finding is about, or to the first of its place. */
  private void follow(Defect defect) {
    String where = defect.where();
    String place = where;
    Rig rig = document.trip().rig();
    for (int i = 0; i < rig.vehicles().size(); i++) {
      Vehicle vehicle = rig.vehicles().get(i);
      for (int axle = 0; axle < vehicle.axles().size(); axle++) {
        String words = new AxleRef(vehicle.name(), axle + 1).words();
        if (where.equals(words) || where.startsWith(words + " ")) {
          unfold(AxleForm.key(i, axle));
          place = words;
        }
      }
    }
    scroll.applyCss();
    scroll.layout();
    String axle = place;
    String label = FindingLinks.label(defect.code());
    boolean found = !label.isEmpty() && focus(form, node -> isField(node, label, where));
    found = found || (!label.isEmpty() && focus(form, node -> isField(node, label, axle)));
    if (!found) {
      focus(form, node -> node instanceof TextField && spoken(node).contains(axle));
    }
  }

  private static boolean isField(Node node, String label, String place) {
    return spoken(node).startsWith(label) && spoken(node).contains(place);
  }

  private void unfold(String key) {
    form.lookupAll(".rig-axle").stream()
        .filter(node -> node instanceof Fold fold && fold.key().equals(key))
        .forEach(node -> ((Fold) node).unfold());
  }

  /** Tells what went with a part, until the next edit. */
  private void tell(List<String> lost) {
    told.setText("With it went " + String.join(", ", lost) + "; undo brings all of it back.");
    told.setVisible(!lost.isEmpty());
  }

  private void build(Trip trip) {
    fields.close();
    fields = new FormFields(document, this::tell);
    Rig rig = trip.rig();
    findings = new FindingLists(rig);
    Node elsewhere = findings.list(() -> RigFindings.ELSEWHERE);
    form.getChildren().setAll(links, elsewhere, additions(), new HitchForm(fields));
    for (int i = 0; i < rig.vehicles().size(); i++) {
      form.getChildren().add(new VehicleForm(fields, findings, open, i));
    }
    List<String> loose = TireRows.loose(trip);
    if (!loose.isEmpty()) {
      TireRows rows = new TireRows(fields, findings);
      for (String id : loose) {
        boolean spare = rig.spares().stream().map(Spare::tire).anyMatch(id::equals);
        String words = spare ? "spare " + id : "tire " + id;
        rows.add(id, spare ? "spare" : "not fitted", () -> words, null);
      }
      VBox onNone = section("Tires on no axle");
      onNone.getChildren().add(rows);
      for (Spare spare : rig.spares()) {
        Label name = new Label("Spare " + spare.tire());
        name.getStyleClass().add("tire-name");
        onNone.getChildren().addAll(name, new SpareForm(fields, spare.tire()));
      }
      form.getChildren().add(onNone);
    }
    VBox kinds =
        section(
            "Kinds of tires",
            fields.adding(
                "+ kind", "Add a kind of tire", () -> RigParts.withNewKind(document.trip())));
    for (int i = 0; i < rig.tireTypes().size(); i++) {
      kinds.getChildren().add(KindForm.fold(fields, open, i, dark));
    }
    VBox gauges =
        section(
            "Gauges",
            fields.adding("+ gauge", "Add a gauge", () -> RigParts.withNewGauge(document.trip())));
    for (int i = 0; i < rig.gauges().size(); i++) {
      gauges.getChildren().add(GaugeForm.fold(fields, open, i));
    }
    Planner planner = document.planner();
    VBox dealer = section("Tire dealer");
    dealer.getChildren().add(DealerCard.fold(fields, open, planner));
    form.getChildren()
        .addAll(kinds, scale, WorksheetForm.fold(fields, open, planner), gauges, dealer);
  }

  private HBox additions() {
    HBox bar = new HBox(6, new Label("Add"));
    for (Vehicle.Kind kind : Vehicle.Kind.values()) {
      bar.getChildren()
          .add(
              fields.adding(
                  "+ " + kind.word(),
                  "Add a " + kind.word() + " to the rig",
                  () -> RigParts.withNewVehicle(document.trip(), kind)));
    }
    bar.getChildren()
        .add(fields.adding("+ spare", "Add a spare", () -> RigParts.withNewSpare(document.trip())));
    bar.setAlignment(Pos.CENTER_LEFT);
    return bar;
  }

  private VBox section(String title, Node... buttons) {
    VBox section = new VBox(fields.headed("rig-heading", () -> title, buttons));
    section.getStyleClass().add("rig-section");
    return section;
  }

  /** What the form is laid out by: other figures and names alone leave it the same. */
  private static List<Object> shape(Trip trip) {
    List<Object> shape = new ArrayList<>(List.of(trip.name(), trip.rig().name()));
    for (var vehicle : trip.rig().vehicles()) {
      shape.add(vehicle.letter());
      for (Axle axle : vehicle.axles()) {
        shape.add(axle.dual());
        shape.add(axle.fitted());
      }
    }
    shape.add(trip.rig().hitch() == null);
    shape.add(trip.rig().tires().stream().map(tire -> tire.id()).toList());
    shape.add(trip.rig().spares().stream().map(Spare::tire).toList());
    shape.add(trip.rig().tireTypes().size());
    shape.add(trip.rig().gauges().size());
    return shape;
  }

  private String focusedText() {
    Node owner = getScene() == null ? null : getScene().getFocusOwner();
    String text = owner == null || !isInside(owner) ? null : owner.getAccessibleText();
    return text == null ? "" : text;
  }

  private boolean isInside(Node node) {
    for (Node at = node; at != null; at = at.getParent()) {
      if (at == form) {
        return true;
      }
    }
    return false;
  }

  /** Gives the focus to the first field that is wanted; whether there is one. */
  private static boolean focus(Node node, Predicate<Node> wanted) {
    if (node.isFocusTraversable() && wanted.test(node)) {
      if (!node.isFocused()) {
        node.requestFocus();
      }
      return true;
    }
    return node.isVisible()
        && node instanceof Parent parent
        && parent.getChildrenUnmodifiable().stream().anyMatch(child -> focus(child, wanted));
  }

  private static String spoken(Node node) {
    String text = node.getAccessibleText();
    return text == null ? "" : text;
  }

  /** Scrolls so that the node with the focus can be seen. */
  private void reveal(@Nullable Node node) {
    if (node == null || restoring || !isInside(node)) {
      return;
    }
    Bounds place = form.sceneToLocal(node.localToScene(node.getBoundsInLocal()));
    double view = scroll.getViewportBounds().getHeight();
    double room = form.getHeight() - view;
    if (room <= 0) {
      return;
    }
    double top = scroll.getVvalue() * room;
    if (place.getMinY() - MARGIN < top) {
      scroll.setVvalue(Math.max(0, place.getMinY() - MARGIN) / room);
    } else if (place.getMaxY() + MARGIN > top + view) {
      scroll.setVvalue(Math.min(room, place.getMaxY() + MARGIN - view) / room);
    }
  }
}
