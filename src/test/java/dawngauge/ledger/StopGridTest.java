package dawngauge.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TimedFigures;
import dawngauge.advice.TireAdvice;
import dawngauge.ambient.WhatIf;
import dawngauge.ledger.StopGrid.Display;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The grid says what the ledger says. */
class StopGridTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());

  private static Trip demo(String name) {
    return PLANNER.store().open(Path.of("demo-data", name + ".dawngauge")).get();
  }

  private static Ledger ledger(Plan planned, UnitSystem units) {
    return Ledger.of(
        planned.trip(), planned.advice(), planned.problems(), planned.fitness(), units, null);
  }

  /** A grid with a column a tire. */
  private static StopGrid whole(Plan planned, UnitSystem units, Display display) {
    Set<String> axles =
        StopGrid.of(planned.trip(), ledger(planned, units), planned.advice(), display, Set.of())
            .columns()
            .stream()
            .map(TireColumn::axle)
            .collect(Collectors.toSet());
    return StopGrid.of(planned.trip(), ledger(planned, units), planned.advice(), display, axles);
  }

  private static StopGrid grid(String name, Display display) {
    return whole(PLANNER.plan(demo(name)), UnitSystem.US, display);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "spring-fleece-haul",
        "spring-fleece-haul-logged",
        "autumn-stock-haul",
        "gap-haul"
      })
  void everyFigureIsTheOneOfTheLedger(String name) {
    Plan planned = PLANNER.plan(demo(name));
    for (UnitSystem units : UnitSystem.values()) {
      List<StopLine> lines = ledger(planned, units).stops();
      for (Display display : Display.values()) {
        StopGrid grid = whole(planned, units, display);
        assertThat(grid.rows()).isEqualTo(lines.size());
        assertThat(grid.columns()).hasSameSizeAs(planned.trip().rig().positions());
        for (int row = 0; row < grid.rows(); row++) {
          for (int column = 0; column < grid.columns().size(); column++) {
            check(grid, row, column, lines.get(row));
          }
          assertThat(grid.mark(row)).isEqualTo(lines.get(row).mark());
          assertThat(grid.row(row).day()).isEqualTo(lines.get(row).newDay());
        }
      }
    }
  }

  private static void check(StopGrid grid, int row, int column, StopLine line) {
    StopGrid.Cell cell = grid.cell(row, column);
    String tire = grid.columns().get(column).head();
    List<StopLine.TireRow> rows =
        line.rows().stream().filter(r -> List.of(r.tires().split(" ")).contains(tire)).toList();
    assertThat(cell.tire()).isEqualTo(tire);
    if (rows.isEmpty()) { // passed without standing
      assertThat(cell.text()).isIn("", StopGrid.NOT_KNOWN);
      assertThat(cell.framed()).isFalse();
      return;
    }
    StopLine.TireRow figures = rows.get(0);
    assertThat(cell.mark()).isEqualTo(figures.mark());
    String what = line.place() + " " + tire + " " + grid.display();
    if (cell.framed()) {
      assertThat(cell.mark()).isEqualTo(Mark.ADJUST);
      String wanted =
          grid.display() == Display.COLD_HERE
              ? figures.setCold()
              : !figures.setOnArrival().isEmpty()
                  ? figures.setOnArrival()
                  : figures.set() ? figures.checkReads() : figures.setCold();
      assertThat(cell.text()).as(what).isEqualTo(wanted).isNotEmpty();
      return;
    }
    assertThat(cell.read()).isEqualTo(grid.display() == Display.READS && figures.read());
    // What is set is not what is met: then only the figure on arrival tells what is there.
    String on =
        switch (grid.display()) {
          case READS -> figures.arriveReads();
          case COLD_HERE -> figures.arriveSettled();
          case MARGIN -> figures.margin().replace(" %", "");
        };
    String leaving =
        switch (grid.display()) {
          case READS -> figures.checkReads();
          case COLD_HERE -> figures.checkSettled();
          case MARGIN -> "";
        };
    boolean none = on.isEmpty() || on.equals("–");
    boolean less = leaving.isEmpty() || leaving.equals("–") || figures.set();
    assertThat(cell.text()).as(what).isEqualTo(!none ? on : less ? StopGrid.NOT_KNOWN : leaving);
  }

  /** What stands together in the ledger has the same figures to set, each its own. */
  @ParameterizedTest
  @ValueSource(strings = {"spring-fleece-haul", "autumn-stock-haul"})
  void aFigureToSetIsTheTiresOwn(String name) {
    Plan planned = PLANNER.plan(demo(name));
    Advice advice = Objects.requireNonNull(planned.advice());
    StopGrid grid = whole(planned, UnitSystem.US, Display.READS);
    int framed = 0;
    for (StopAdvice stop : advice.stops()) {
      int row = stop.stop().visit().index();
      for (TireAdvice tire : stop.tires()) {
        int column =
            IntStream.range(0, grid.columns().size())
                .filter(
                    i ->
                        grid.columns().get(i).positions().contains(tire.tire().fitted().position()))
                .findFirst()
                .orElseThrow();
        StopGrid.Cell cell = grid.cell(row, column);
        TimedFigures timed = tire.timed();
        if (cell.framed() && timed != null) {
          framed++;
          double shown = Double.parseDouble(cell.text());
          double first =
              (timed.onArrival() == null ? timed.at() : timed.onArrival()).figure().pascals();
          assertThat(shown)
              .isCloseTo(first / 6894.757, org.assertj.core.api.Assertions.within(.06));
        }
      }
    }
    assertThat(framed).isPositive();
  }

  /**
   * Ten degrees colder from the second stop on. t1l at Walsenburg, 81.66 psi settled in air of
   * 270.703 K and 80,683 Pa (see the worked example), settles at (81.66 + 11.70)·265.147/270.703 −
   * 11.70 = 79.74 psi, shown as 80 for 82: what is shown is the difference of what either shows.
   */
  @Test
  void whatAnotherForecastChangesStandsBesideTheFigures() {
    Plan plan = PLANNER.plan(demo("spring-fleece-haul"));
    Advice colder =
        Objects.requireNonNull(
            PLANNER.plan(plan.trip(), WhatIf.shifted(-10 / 1.8, 1, 12)).advice());
    for (Display display : Display.values()) {
      StopGrid plain = grid("spring-fleece-haul", display);
      StopGrid beside = plain.beside(colder);
      assertThat(plain.change(1, 0)).isEmpty();
      int changed = 0;
      for (int row = 0; row < beside.rows(); row++) {
        for (int column = 0; column < beside.columns().size(); column++) {
          assertThat(beside.cell(row, column)).isEqualTo(plain.cell(row, column));
          String change = beside.change(row, column);
          changed += change.isEmpty() ? 0 : 1;
          assertThat(change).matches("|[+−→]\\d+");
          assertThat(beside.cell(row, column).framed() && change.matches("[+−].*")).isFalse();
        }
      }
      assertThat(changed).as(display.word()).isGreaterThan(50);
      assertThat(beside.shown(Display.COLD_HERE).change(1, 6)).isEqualTo("−2");
    }
    StopGrid cold = grid("spring-fleece-haul", Display.COLD_HERE).beside(colder);
    assertThat(cold.spoken(1, 6)).endsWith(", what if: −2");
  }

  /** A figure that is only set once something else is done is not framed, as the card tells it. */
  @Test
  void whatIsSetOnConditionIsThatOfTheCard() {
    int set = 0;
    for (String name :
        List.of("spring-fleece-haul", "spring-fleece-haul-logged", "autumn-stock-haul")) {
      Plan plan = PLANNER.plan(demo(name));
      StopGrid grid = whole(plan, UnitSystem.US, Display.READS);
      for (StopAdvice stop : Objects.requireNonNull(plan.advice()).stops()) {
        int row = stop.stop().visit().index();
        for (TireAdvice tire : stop.tires()) {
          if (tire.timed() != null) {
            assertThat(Cards.condition(tire, UnitSystem.US).isEmpty())
                .isNotEqualTo(grid.line(row).conditional(grid.name(tire)));
            set++;
          }
        }
      }
    }
    assertThat(set).isGreaterThan(5);
  }

  /** The plan as a layer: where it would set a tire, its figure stands below that of the cell. */
  @Test
  void theFiguresOfThePlanStandBelowThoseOfTheForecast() {
    Trip trip = demo("spring-fleece-haul");
    Trip followed = trip.withPlan(trip.plan().following(true));
    Advice byPlan = Objects.requireNonNull(PLANNER.plan(followed).advice());
    StopGrid beside = grid("spring-fleece-haul", Display.READS).beside(byPlan);
    StopGrid alone = whole(PLANNER.plan(followed), UnitSystem.US, Display.READS);
    int set = 0;
    for (int row = 0; row < beside.rows(); row++) {
      for (int column = 0; column < beside.columns().size(); column++) {
        StopGrid.Cell then = alone.cell(row, column);
        if (then.framed() && !then.text().equals(beside.cell(row, column).text())) {
          assertThat(beside.change(row, column)).isEqualTo("→" + then.text());
          assertThat(beside.spoken(row, column)).endsWith("what if: set to " + then.text());
          set++;
        }
      }
    }
    assertThat(set).isPositive();
  }

  @Test
  void whatIsNotKnownIsADotAndNeverAFigure() {
    StopGrid grid = grid("gap-haul", Display.READS);
    for (int column = 0; column < 10; column++) {
      assertThat(grid.cell(2, column).text()).isEqualTo("·"); // no temperature at Raton NM
      assertThat(grid.cell(3, column).text()).isEqualTo("·"); // passed, nothing known either
    }
    assertThat(grid.air(2)).isEqualTo("·");
    assertThat(grid.spoken(2, 0))
        .isEqualTo("Raton NM, pickup axle 1 left, reads not known, not known");
    assertThat(grid.cell(1, 0))
        .as("expected, but not judged on the leg without air")
        .isEqualTo(new StopGrid.Cell("69", Mark.UNKNOWN, false, false, "p1l"));
  }

  @Test
  void withoutATimeEveryCellIsADot() {
    Plan planned = PLANNER.plan(PLANNER.store().starterTrip().get());
    StopGrid grid = whole(planned, UnitSystem.US, Display.READS);
    assertThat(planned.advice()).isNull();
    assertThat(grid.rows()).isEqualTo(2);
    assertThat(grid.columns()).isNotEmpty();
    for (int row = 0; row < 2; row++) {
      assertThat(grid.mark(row)).isEqualTo(Mark.UNKNOWN);
      assertThat(grid.row(row).timed()).isFalse();
      for (int column = 0; column < grid.columns().size(); column++) {
        assertThat(grid.cell(row, column).text()).isEqualTo("·");
        assertThat(grid.spoken(row, column)).endsWith("not known");
        assertThat(grid.tip(row, column)).endsWith("not known");
      }
    }
  }

  /** By hand from the printed forecast of the demo: Dalhart TX, t2r and p2li are set there. */
  @Test
  void aFigureToSetIsFramedAndReadOutWithItsMinute() {
    StopGrid grid = grid("spring-fleece-haul", Display.READS);
    StopGrid cold = grid.shown(Display.COLD_HERE);
    StopGrid margin = grid.shown(Display.MARGIN);
    int t2r = 9;
    StopLine.TireRow row = Objects.requireNonNull(grid.line(4).row("t2r"));
    assertThat(grid.cell(4, t2r).framed()).isTrue();
    assertThat(grid.cell(4, t2r).text()).isEqualTo(row.setOnArrival());
    assertThat(cold.cell(4, t2r).text()).isEqualTo(row.setCold());
    assertThat(margin.cell(4, t2r).framed()).isFalse();
    assertThat(margin.cell(4, t2r).text()).isEqualTo(row.margin().replace(" %", ""));
    assertThat(grid.spoken(4, t2r))
        .isEqualTo(
            "Dalhart TX, trailer axle 2 right, reads "
                + row.arriveRange().replace("–", " to ")
                + ", set "
                + row.setOnArrival()
                + " on arrival");
    assertThat(grid.tip(4, t2r).lines()).hasSize(2);
    assertThat(grid.tip(4, t2r))
        .startsWith("trailer axle 2 right · reads ")
        .contains(row.arriveRange(), "set " + row.setOnArrival(), "\nadjust: ");
    assertThat(grid.cell(0, 0)).isEqualTo(new StopGrid.Cell("60", Mark.CLEAR, false, true, "p1l"));
    assertThat(grid.spoken(0, 0)).isEqualTo("Alamosa CO, pickup axle 1 left, was read 60");
  }

  @Test
  void aStopHasItsClockAirHoseMarginAndLeg() {
    StopGrid grid = grid("spring-fleece-haul", Display.READS);
    assertThat(List.of(grid.clock(0), grid.clock(1), grid.clock(4)))
        .containsExactly("05:45", "07:13", "12:29");
    assertThat(List.of(grid.air(0), grid.air(1), grid.air(3))).containsExactly("15", "28→29", "46");
    assertThat(List.of(grid.hose(0), grid.hose(4)))
        .containsExactly(StopGrid.Hose.NONE, StopGrid.Hose.LIMITED);
    assertThat(grid("autumn-stock-haul", Display.READS).hose(0)).isEqualTo(StopGrid.Hose.OWN);
    assertThat(grid.margin(0)).isEqualTo("+12");
    assertThat(grid.row(0).pass()).isTrue(); // La Veta Pass
    assertThat(grid.row(2).pass()).isFalse();
    assertThat(grid.row(3).passed()).isTrue(); // Clayton NM
    assertThat(grid.row(12).last()).isTrue();
    assertThat(IntStream.range(0, 13).filter(row -> !grid.row(row).day().isEmpty())).hasSize(4);
    assertThat(grid.spoken(0)).startsWith("Stop 1, Alamosa CO, re-check. re-check. Check p2li t2r");
  }

  @Test
  void ofManyTiresAnAxleHasOneColumnWithItsWorstAndUnfolds() {
    Plan planned = PLANNER.plan(demo("autumn-stock-haul"));
    Ledger ledger = ledger(planned, UnitSystem.US);
    StopGrid folded =
        StopGrid.of(planned.trip(), ledger, planned.advice(), Display.READS, Set.of());
    assertThat(folded.columns())
        .extracting(TireColumn::head)
        .containsExactly("p1", "p2", "t1", "t2", "h1", "h2");
    assertThat(folded.columns()).allMatch(TireColumn::folded);
    assertThat(folded.cell(5, 0).tire()).as("it is to be set, the other is clear").isEqualTo("p1r");
    assertThat(folded.cell(5, 0).framed()).isTrue();
    assertThat(folded.cell(0, 2).tire()).as("both clear, lower margin").isEqualTo("t1l");
    StopGrid some =
        StopGrid.of(planned.trip(), ledger, planned.advice(), Display.READS, Set.of("h2"));
    assertThat(some.columns())
        .extracting(TireColumn::head)
        .containsExactly("p1", "p2", "t1", "t2", "h1", "h2lo", "h2li", "h2ri", "h2ro");
    Set<Mark> marks = new HashSet<>();
    StopGrid all = whole(planned, UnitSystem.US, Display.READS);
    for (int row = 0; row < folded.rows(); row++) {
      for (int column = 0; column < folded.columns().size(); column++) {
        TireColumn axle = folded.columns().get(column);
        Mark worst = Mark.CLEAR;
        for (int i = 0; i < all.columns().size(); i++) {
          if (all.columns().get(i).axle().equals(axle.head())) {
            worst = Mark.stronger(worst, all.cell(row, i).mark());
          }
        }
        assertThat(folded.cell(row, column).mark()).isEqualTo(worst);
        marks.add(worst);
      }
    }
    assertThat(marks).contains(Mark.CLEAR, Mark.ADJUST, Mark.RECHECK);
  }

  @Test
  void aLineIsMadeOnce() {
    Ledger ledger = ledger(PLANNER.plan(demo("spring-fleece-haul")), UnitSystem.US);
    assertThat(ledger.stops().get(3)).isSameAs(ledger.stops().get(3));
    assertThat(ledger.stops()).hasSize(13);
  }
}
