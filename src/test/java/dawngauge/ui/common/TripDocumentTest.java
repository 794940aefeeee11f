package dawngauge.ui.common;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.Planner;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
import dawngauge.testdata.Forecasts;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Undo, saving and opening, without a window. */
class TripDocumentTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());
  private static final Trip DEMO =
      PLANNER.store().open(Path.of("demo-data", "spring-fleece-haul.dawngauge")).get();
  private static final Trip SHORTER = RouteEdits.remove(DEMO, 12);
  private static final Trip REVERSED = RouteEdits.reverse(DEMO);

  private final TripDocument document = new TripDocument(PLANNER, DEMO);

  @Test
  void undoAndRedoWalkThroughTheEdits() {
    document.edit(SHORTER);
    document.edit(REVERSED);
    assertThat(document.trip()).isEqualTo(REVERSED);
    document.undo();
    assertThat(document.trip()).isEqualTo(SHORTER);
    document.undo();
    assertThat(document.trip()).isEqualTo(DEMO);
    assertThat(document.undoableProperty().get()).isFalse();
    document.undo();
    assertThat(document.trip()).isEqualTo(DEMO);
    document.redo();
    document.redo();
    assertThat(document.trip()).isEqualTo(REVERSED);
    assertThat(document.redoableProperty().get()).isFalse();
    document.redo();
    assertThat(document.trip()).isEqualTo(REVERSED);
  }

  @Test
  void anEditAfterUndoEndsTheWayForward() {
    document.edit(SHORTER);
    document.undo();
    document.edit(REVERSED);
    assertThat(document.redoableProperty().get()).isFalse();
    document.undo();
    assertThat(document.trip()).isEqualTo(DEMO);
  }

  @Test
  void anEditWithATextThatIsTooLongIsRefusedAndTold() {
    List<Problem> told = new ArrayList<>();
    document.onRefused(told::addAll);
    Stop start = DEMO.route().stops().get(0);
    document.edit(RouteEdits.withStop(DEMO, 0, start.withPlace("x".repeat(201))));
    assertThat(told).extracting(Problem::code).containsExactly(ProblemCode.TEXT_NOT_TAKEN);
    assertThat(document.trip()).isEqualTo(DEMO);
    assertThat(document.undoableProperty().get()).isFalse();
    document.edit(RouteEdits.withStop(DEMO, 0, start.withPlace("x".repeat(200))));
    assertThat(document.undoableProperty().get()).isTrue();
  }

  @Test
  void theSameTripIsNoEdit() {
    document.edit(DEMO);
    assertThat(document.undoableProperty().get()).isFalse();
    assertThat(document.dirtyProperty().get()).isFalse();
  }

  @Test
  void undoneToTheSavedStateItIsNotDirty(@TempDir Path folder) {
    document.edit(SHORTER);
    assertThat(document.dirtyProperty().get()).isTrue();
    document.undo();
    assertThat(document.dirtyProperty().get()).isFalse();
    document.redo();
    assertThat(document.save(folder.resolve("trip.dawngauge"))).isEmpty();
    assertThat(document.dirtyProperty().get()).isFalse();
    document.undo();
    assertThat(document.dirtyProperty().get()).isTrue();
  }

  @Test
  void whatFollowsFromTheTripFollowsEachEdit() {
    int stops = DEMO.route().stops().size();
    assertThat(Forecasts.known(document.planned().advice()).stops()).hasSize(stops);
    document.edit(SHORTER);
    assertThat(document.planned().trip()).isEqualTo(SHORTER);
    assertThat(Forecasts.known(document.planned().advice()).stops()).hasSize(stops - 1);
    document.edit(REVERSED); // without a departure
    assertThat(document.planned().advice() == null).isTrue();
    document.undo();
    assertThat(Forecasts.known(document.planned().advice()).stops()).hasSize(stops - 1);
  }

  @Test
  void savedItIsReadBackTheSame(@TempDir Path folder) {
    Path file = folder.resolve("trip.dawngauge");
    document.edit(SHORTER);
    document.save(file);
    assertThat(document.fileProperty().get()).contains(file);
    TripDocument other = new TripDocument(PLANNER, DEMO);
    assertThat(other.open(other.read(file))).isEmpty();
    assertThat(other.trip()).isEqualTo(SHORTER);
    assertThat(other.fileProperty().get()).contains(file);
  }

  @Test
  void aFileThatCannotBeReadOrWrittenLeavesTheDocumentAsItIs(@TempDir Path folder)
      throws IOException {
    Path broken = Files.writeString(folder.resolve("broken.dawngauge"), "{\"format\": 1,");
    document.edit(SHORTER);
    assertThat(document.open(document.read(broken))).isNotEmpty();
    assertThat(document.open(document.read(folder.resolve("none.dawngauge")))).isNotEmpty();
    assertThat(document.save(folder.resolve("no/such/folder/trip.dawngauge"))).isNotEmpty();
    assertThat(document.trip()).isEqualTo(SHORTER);
    assertThat(document.dirtyProperty().get()).isTrue();
    assertThat(document.fileProperty().get()).isEmpty();
    assertThat(document.undoableProperty().get()).isTrue();
  }

  @Test
  void anotherTripStartsAnew() {
    document.edit(SHORTER);
    document.replace(REVERSED, Optional.empty());
    assertThat(document.undoableProperty().get()).isFalse();
    assertThat(document.dirtyProperty().get()).isFalse();
  }

  @Test
  void unitsAreNoPartOfTheTrip() {
    document.unitsProperty().set(UnitSystem.SI);
    assertThat(document.trip()).isEqualTo(DEMO);
    assertThat(document.dirtyProperty().get()).isFalse();
  }
}
