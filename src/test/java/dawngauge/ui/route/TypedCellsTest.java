package dawngauge.ui.route;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.Air;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Stop;
import dawngauge.trip.StopAir;
import dawngauge.trip.StopClock;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What is typed and pasted into the cells of the grid is what the fields of a stop take. */
class TypedCellsTest {

  private static final int CLAYTON = 3;
  private static final int FLOYDADA = 7;

  private static Trip spring() {
    return new Planner(SettingsFile.defaults(), List.of())
        .store()
        .open(Path.of("demo-data", "spring-fleece-haul.dawngauge"))
        .get();
  }

  private static Outcome<Trip> typed(int row, GridColumns.Kind column, String text) {
    return new TypedCells(spring(), UnitSystem.US).written(List.of(row), column, text);
  }

  private static Stop stop(Trip trip, int row) {
    return trip.route().stops().get(row);
  }

  @Test
  void twoTemperaturesAreLowAndHighOfEachDay() {
    Trip trip = typed(FLOYDADA, GridColumns.Kind.AIR, "20/50").get();
    StopAir air = StopAir.of(trip, stop(trip, FLOYDADA).id());
    List<LocalDate> days = new StopClock(trip, FLOYDADA).days();
    assertThat(days).isNotEmpty();
    for (LocalDate day : days) {
      assertThat(EditorGrid.text(air.low(day))).isEqualTo("20 °F");
      assertThat(EditorGrid.text(air.high(day))).isEqualTo("50 °F");
    }
    assertThat(new TypedCells(trip, UnitSystem.US).text(FLOYDADA, GridColumns.Kind.AIR))
        .isEqualTo("20 °F/50 °F");
  }

  /** A unit behind the second is that of both: 20 °C and 50 °F would be a day of another world. */
  @Test
  void aUnitBehindTheSecondIsThatOfBoth() {
    Trip trip =
        new TypedCells(spring(), UnitSystem.SI)
            .written(List.of(FLOYDADA), GridColumns.Kind.AIR, "20/50 °F")
            .get();
    LocalDate day = new StopClock(trip, FLOYDADA).days().get(0);
    assertThat(EditorGrid.text(StopAir.of(trip, stop(trip, FLOYDADA).id()).low(day)))
        .isEqualTo("20 °F");
  }

  @Test
  void oneTemperatureIsSteadyAndNoneIsNone() {
    Trip trip = typed(FLOYDADA, GridColumns.Kind.AIR, "61").get();
    StopAir air = StopAir.of(trip, stop(trip, FLOYDADA).id());
    assertThat(air.counts()).isEqualTo(StopAir.Kind.STEADY);
    assertThat(EditorGrid.text(air.temperature())).isEqualTo("61 °F");
    Trip none = typed(FLOYDADA, GridColumns.Kind.AIR, "").get();
    assertThat(StopAir.of(none, stop(none, FLOYDADA).id()).entries()).isEmpty();
  }

  @Test
  void whatCannotBeReadIsRefusedWithItsReason() {
    assertThat(typed(FLOYDADA, GridColumns.Kind.AIR, "50/20").problems())
        .extracting(problem -> problem.code())
        .containsExactly(ProblemCode.LOW_ABOVE_HIGH);
    for (String text : List.of("7y", "20/", "/50", "20/50/60", "20/7y")) {
      assertThat(typed(FLOYDADA, GridColumns.Kind.AIR, text).hasValue()).as(text).isFalse();
    }
    assertThat(typed(FLOYDADA, GridColumns.Kind.PLACE, "").hasValue()).isFalse();
    assertThat(typed(FLOYDADA, GridColumns.Kind.HOSE, "20/50").hasValue()).isFalse();
    assertThat(typed(FLOYDADA, GridColumns.Kind.TIME, "25:61").hasValue()).isFalse();
    assertThat(typed(FLOYDADA, GridColumns.Kind.TIRE, "80").problems().get(0).code())
        .isEqualTo(ProblemCode.FORECAST_NOT_TYPED);
  }

  @Test
  void aStayAClockAndANight() {
    Trip stay = typed(CLAYTON, GridColumns.Kind.TIME, "45 min").get();
    assertThat(stop(stay, CLAYTON).stay()).isEqualTo(Duration.ofMinutes(45));
    assertThat(stop(stay, CLAYTON).leave()).isNull();
    var came = Itinerary.of(spring()).get().visits().get(CLAYTON);
    LocalDate day = came.arrive().atZone(came.zone()).toLocalDate();
    // Clayton is reached at 10:35: 11:10 is of that day, 06:00 of the next.
    assertThat(leaves("11:10")).startsWith(day + "T11:10");
    assertThat(leaves("06:00")).startsWith(day.plusDays(1) + "T06:00");
    assertThat(leaves("overnight 11:10")).startsWith(day.plusDays(1) + "T11:10");
    // After fourteen hours at Clayton the rig comes to Dalhart after midnight: that same morning.
    Trip late = typed(CLAYTON, GridColumns.Kind.TIME, "14 h").get();
    TypedCells cells = new TypedCells(late, UnitSystem.US);
    var dalhart = Itinerary.of(late).get().visits().get(CLAYTON + 1);
    LocalDate night = dalhart.arrive().atZone(dalhart.zone()).toLocalDate();
    assertThat(dalhart.arrive().atZone(dalhart.zone()).getHour()).isBetween(0, 3);
    Trip slept =
        cells.written(List.of(CLAYTON + 1), GridColumns.Kind.TIME, "overnight 06:00").get();
    assertThat(leave(slept, CLAYTON + 1)).startsWith(night + "T06:00");
    assertThat(stop(typed(CLAYTON, GridColumns.Kind.TIME, "overnight 06:00").get(), CLAYTON).kind())
        .isEqualTo(Stop.Kind.OVERNIGHT);
  }

  private static String leave(Trip trip, int row) {
    return Objects.requireNonNull(stop(trip, row).leave()).time().toString();
  }

  private static String leaves(String text) {
    return leave(typed(CLAYTON, GridColumns.Kind.TIME, text).get(), CLAYTON);
  }

  @Test
  void theStartTakesItsDeparture() {
    Trip trip = typed(0, GridColumns.Kind.TIME, "05:15").get();
    assertThat(leave(trip, 0)).startsWith("2027-04-06T05:15");
  }

  /** A table of a spreadsheet goes into the columns that it is pasted over, or not at all. */
  @Test
  void aTableIsPastedWholeOrNotAtAll() {
    TypedCells cells = new TypedCells(spring(), UnitSystem.US);
    Trip trip =
        cells
            .pasted(
                new TreeSet<>(List.of(1)),
                GridColumns.Kind.PLACE,
                "Walsenburg\t30/55\tyes\r\nRaton Pass\t28\tup to 100 psi\r\n")
            .get();
    assertThat(stop(trip, 1).place()).isEqualTo("Walsenburg");
    assertThat(stop(trip, 1).air()).isEqualTo(Air.YES);
    assertThat(stop(trip, 2).place()).isEqualTo("Raton Pass");
    assertThat(EditorGrid.text(StopAir.of(trip, stop(trip, 2).id()).temperature()))
        .isEqualTo("28 °F");
    assertThat(EditorGrid.text(stop(trip, 2).air().upTo())).isEqualTo("100 psi");
    Outcome<Trip> refused =
        cells.pasted(new TreeSet<>(List.of(1)), GridColumns.Kind.AIR, "30/55\n7y\n");
    assertThat(refused.hasValue()).isFalse();
    assertThat(refused.problems().get(0).message()).contains("Raton NM").contains("7y");
    assertThat(
            cells
                .pasted(new TreeSet<>(List.of(12)), GridColumns.Kind.AIR, "1\n2\n")
                .problems()
                .get(0)
                .code())
        .isEqualTo(ProblemCode.PASTED_BEYOND);
    assertThat(
            cells
                .pasted(new TreeSet<>(List.of(1)), GridColumns.Kind.AIR, "1\tyes\t80")
                .problems()
                .get(0)
                .message())
        .contains("3 columns")
        .contains("2 of the columns");
  }

  /** An empty cell at the end of a pasted table is a cell too: it clears what it is put on. */
  @Test
  void emptyCellsAtTheEndClear() {
    Trip trip =
        new TypedCells(spring(), UnitSystem.US)
            .pasted(new TreeSet<>(List.of(1)), GridColumns.Kind.PLACE, "Walsenburg\t\n")
            .get();
    assertThat(StopAir.of(trip, stop(trip, 1).id()).entries()).isEmpty();
  }

  /** One cell goes to all taken stops; what is copied from a column can be pasted again. */
  @Test
  void oneCellGoesToAllAndACopyComesBack() {
    TypedCells cells = new TypedCells(spring(), UnitSystem.US);
    TreeSet<Integer> rows = new TreeSet<>(List.of(1, 4, 7));
    Trip trip = cells.pasted(rows, GridColumns.Kind.AIR, "33/44\n").get();
    for (int row : rows) {
      assertThat(new TypedCells(trip, UnitSystem.US).text(row, GridColumns.Kind.AIR))
          .isEqualTo("33 °F/44 °F");
    }
    for (GridColumns.Kind column : List.of(GridColumns.Kind.PLACE, GridColumns.Kind.HOSE)) {
      TreeSet<Integer> all = new TreeSet<>(dawngauge.trip.GroupEdits.all(trip));
      Trip again =
          new TypedCells(trip, UnitSystem.US)
              .pasted(all, column, new TypedCells(trip, UnitSystem.US).copied(all, column))
              .get();
      assertThat(again).isEqualTo(trip);
    }
  }
}
