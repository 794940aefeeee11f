package dawngauge.ui.common;

import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import org.jspecify.annotations.Nullable;

/**
 * The trip in the window: what it is, what follows from it, how it came to be so, and the file it
 * belongs to. One undo step is one finished edit; undoing to the saved state is not dirty.
 */
public final class TripDocument {

  private static final int MOST_STEPS = 500;

  private final Planner planner;
  private final ReadOnlyObjectWrapper<Trip> trip;
  private final ReadOnlyObjectWrapper<Plan> shown;
  private final ObjectProperty<UnitSystem> units = new SimpleObjectProperty<>(UnitSystem.US);
  private final ReadOnlyObjectWrapper<Optional<Path>> file =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyBooleanWrapper dirty = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyBooleanWrapper undoable = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyBooleanWrapper redoable = new ReadOnlyBooleanWrapper(false);
  private final Deque<Trip> before = new ArrayDeque<>();
  private final Deque<Trip> after = new ArrayDeque<>();
  private final List<Runnable> leaving = new ArrayList<>();
  private @Nullable Trip saved;

  /** What follows from the trip as it is; computed when it is also what is shown. */
  private Plan plan;

  private Optional<Derived<Plan>> beside = Optional.empty();
  private Consumer<List<Problem>> refusals = told -> {};

  /** Fingerprint of the file when it was read or written last. */
  private Optional<String> onDisk = Optional.empty();

  /** A document that holds a trip without a file. */
  public TripDocument(Planner planner, Trip trip) {
    this(planner, planner.plan(trip), Optional.empty());
  }

  /**
   * A document of a trip whose plan may be under way on another thread.
   *
   * @param path its file, if it has one
   */
  public TripDocument(Planner planner, Plan plan, Optional<Path> path) {
    this.planner = planner;
    this.plan = plan.computed();
    this.trip = new ReadOnlyObjectWrapper<>(plan.trip());
    this.shown = new ReadOnlyObjectWrapper<>(plan);
    this.saved = plan.trip();
    this.file.set(path);
    this.onDisk = path.flatMap(planner.store()::fingerprint);
  }

  /** The use cases. */
  public Planner planner() {
    return planner;
  }

  /**
   * Forecasts beside the window from now on, where an edit changes values of the route alone: the
   * trip is changed at once, its figures follow. Every other edit still waits for them.
   *
   * @return says that it is worked on, or what went wrong
   */
  public Node forecastBeside() {
    Derived<Plan> work = new Derived<>("Forecasting", this::take, this::none);
    work.said().getStyleClass().add("notice-line");
    beside = Optional.of(work);
    return work.said();
  }

  /** The trip as it is. */
  public ReadOnlyObjectProperty<Trip> tripProperty() {
    return trip.getReadOnlyProperty();
  }

  /** The trip as it is. */
  public Trip trip() {
    return trip.get();
  }

  /** What follows from the trip as it is; who asks it for something may have to wait. */
  public Plan planned() {
    return plan;
  }

  /** The plan that is shown, computed: for a moment after an edit still the one before it. */
  public ReadOnlyObjectProperty<Plan> shownProperty() {
    return shown.getReadOnlyProperty();
  }

  /** The plan that is shown, computed: for a moment after an edit still the one before it. */
  public Plan shown() {
    return shown.get();
  }

  /** Waits for the figures of the trip as it is, and has them shown. */
  public void settle() {
    if (shown() != plan) {
      beside.ifPresent(Derived::drop);
      take(plan);
    }
  }

  /** The units shown. */
  public ObjectProperty<UnitSystem> unitsProperty() {
    return units;
  }

  /** The units shown. */
  public UnitSystem units() {
    return units.get();
  }

  /** The file the trip belongs to, if it has one. */
  public ReadOnlyObjectProperty<Optional<Path>> fileProperty() {
    return file.getReadOnlyProperty();
  }

  /** Whether something was changed since it was saved. */
  public ReadOnlyBooleanProperty dirtyProperty() {
    return dirty.getReadOnlyProperty();
  }

  /** Whether there is a step to undo. */
  public ReadOnlyBooleanProperty undoableProperty() {
    return undoable.getReadOnlyProperty();
  }

  /** Whether there is a step to do again. */
  public ReadOnlyBooleanProperty redoableProperty() {
    return redoable.getReadOnlyProperty();
  }

  /** A finished edit: the trip as it is now. The same trip again is no edit. */
  public void edit(Trip next) {
    if (next.equals(trip())) {
      return;
    }
    List<Problem> refused = planner.store().refused(trip(), next);
    if (!refused.isEmpty()) {
      refusals.accept(refused);
      return;
    }
    before.push(trip());
    if (before.size() > MOST_STEPS) {
      before.removeLast();
    }
    after.clear();
    show(next);
  }

  /** Tells somebody why an edit was not taken. */
  public void onRefused(Consumer<List<Problem>> told) {
    refusals = told;
  }

  /** The trip before the last edit, if there is one to take back. */
  public Optional<Trip> beforeEdit() {
    return Optional.ofNullable(before.peek());
  }

  /** The trip as it was before the last undo, if there is one to do again. */
  public Optional<Trip> beforeUndo() {
    return Optional.ofNullable(after.peek());
  }

  /** Whether a trip of this document is still there: shown, or come by on the way to what is. */
  public boolean holds(Trip one) {
    return trip().equals(one) || before.contains(one);
  }

  /** Takes the last edit back. */
  public void undo() {
    if (!before.isEmpty()) {
      after.push(trip());
      show(before.pop());
    }
  }

  /** Does an edit again that was taken back. */
  public void redo() {
    if (!after.isEmpty()) {
      before.push(trip());
      show(after.pop());
    }
  }

  /** Has something done just before another trip takes the place of this one. */
  public void onLeaving(Runnable task) {
    leaving.add(task);
  }

  /** Starts anew with another trip. */
  public void replace(Trip trip, Optional<Path> path) {
    replace(trip, path, path.flatMap(planner.store()::fingerprint));
  }

  private void replace(Trip trip, Optional<Path> path, Optional<String> fingerprint) {
    leaving.forEach(Runnable::run);
    before.clear();
    after.clear();
    saved = trip;
    onDisk = fingerprint;
    file.set(path);
    show(trip);
  }

  /** Goes on with what was not saved before a crash: it is not saved yet. */
  public void recover(Trip trip, Optional<Path> path) {
    replace(trip, path);
    saved = null;
    dirty.set(true);
  }

  /** Whether the file holds something else than when it was read or written last. */
  public boolean changedOnDisk() {
    Optional<String> now = file.get().flatMap(planner.store()::fingerprint);
    return now.isPresent() && !now.equals(onDisk);
  }

  /** Takes what is on disk as known; the trip stays as it is, and is not saved. */
  public void keepMine() {
    onDisk = file.get().flatMap(planner.store()::fingerprint);
    saved = null;
    dirty.set(true);
  }

  /**
   * A file that was read.
   *
   * @param path where it is
   * @param trip what it says, or why it cannot be read
   * @param fingerprint of the file as it was when the reading began
   */
  public record Opened(Path path, Outcome<Trip> trip, Optional<String> fingerprint) {}

  /** Reads a file; may take long and is done on any thread. */
  public Opened read(Path path) {
    Optional<String> fingerprint = planner.store().fingerprint(path);
    return new Opened(path, planner.store().open(path), fingerprint);
  }

  /** Starts anew with a file; stays as it is, and says why, where it could not be read. */
  public List<Problem> open(Opened opened) {
    opened
        .trip()
        .value()
        .ifPresent(trip -> replace(trip, Optional.of(opened.path()), opened.fingerprint()));
    return opened.trip().hasValue() ? List.of() : opened.trip().problems();
  }

  /** Saves; what kept it from being saved, empty if that worked. */
  public List<Problem> save(Path path) {
    List<Problem> problems = planner.store().save(trip(), path);
    if (problems.isEmpty()) {
      saved = trip();
      onDisk = planner.store().fingerprint(path);
      file.set(Optional.of(path));
      dirty.set(false);
    }
    return problems;
  }

  private void show(Trip next) {
    Plan made = planner.plan(next);
    boolean later = beside.isPresent() && SameRows.of(shown().trip(), next);
    if (!later) {
      made.computed();
    }
    plan = made;
    trip.set(next);
    dirty.set(!next.equals(saved));
    undoable.set(!before.isEmpty());
    redoable.set(!after.isEmpty());
    if (later) {
      beside.orElseThrow().ask(made::computed);
    } else {
      beside.ifPresent(Derived::drop);
      take(made);
    }
  }

  /** Shows a plan, unless another edit has made it old. */
  private void take(Plan made) {
    if (made == plan) {
      shown.set(made.computed());
    }
  }

  /** Where there is no forecast of the trip, no older one stands for it. */
  private void none(String why) {
    if (shown() != plan) {
      plan = planner.unplanned(trip(), why);
      take(plan);
    }
  }
}
