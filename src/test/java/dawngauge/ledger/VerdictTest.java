package dawngauge.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.advice.Mark;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The trip in one line, and the stops that each part of it speaks of. */
class VerdictTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());

  private static Trip demo(String name) {
    return PLANNER.store().open(Path.of("demo-data", name + ".dawngauge")).get();
  }

  private static Ledger ledger(Plan planned) {
    return Ledger.of(
        planned.trip(),
        planned.advice(),
        planned.problems(),
        planned.fitness(),
        UnitSystem.US,
        null);
  }

  private static Verdict of(Trip trip) {
    Plan planned = PLANNER.plan(trip);
    return Verdict.of(trip, ledger(planned), planned.advice());
  }

  private static List<String> texts(Verdict verdict) {
    return verdict.parts().stream().map(Verdict.Part::text).toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"spring-fleece-haul", "autumn-stock-haul", "gap-haul"})
  void itCountsTheStopsWhoseTiresHaveTheMark(String name) {
    List<StopLine> stops = ledger(PLANNER.plan(demo(name))).stops();
    for (Verdict.Part part : of(demo(name)).parts()) {
      if (part.kind() != Verdict.Kind.LEAST) {
        int[] rows =
            IntStream.range(0, stops.size())
                .filter(
                    i ->
                        stops.get(i).rows().stream().anyMatch(r -> r.mark() == part.mark())
                            || (stops.get(i).rows().isEmpty()
                                && part.mark() == Mark.UNKNOWN
                                && stops.get(i).mark() == Mark.UNKNOWN))
                .toArray();
        assertThat(part.rows().stream().mapToInt(row -> row)).containsExactly(box(rows));
        if (part.kind() != Verdict.Kind.GO) {
          assertThat(part.text())
              .matches(rows.length == 0 ? "nothing to .*|all known" : rows.length + " .*");
        }
      }
    }
  }

  private static Integer[] box(int[] rows) {
    return IntStream.of(rows).boxed().toArray(Integer[]::new);
  }

  @Test
  void theDemosInOneLine() {
    Verdict spring = of(demo("spring-fleece-haul"));
    assertThat(texts(spring).get(4)).isEqualTo("lowest load margin +12 %, p1l after Alamosa CO");
    assertThat(spring.parts().get(4).rows()).containsExactly(0);
    assertThat(texts(spring).get(1)).isEqualTo("3 to set");
    assertThat(spring.parts().get(1).rows()).containsExactly(4, 9, 10);
    assertThat(texts(spring).get(3)).isEqualTo("all known");
    assertThat(texts(of(demo("autumn-stock-haul"))).get(4))
        .isEqualTo("lowest load margin +5 %, t2r after Golden BC");
    Verdict gap = of(demo("gap-haul"));
    assertThat(texts(gap).get(0)).startsWith("go, as far as it is known");
    assertThat(texts(gap).get(3)).isEqualTo("3 not known");
    assertThat(texts(gap).get(4)).startsWith("lowest known load margin");
  }

  @Test
  void whatIsToBePutRightFirstIsCounted() {
    assertThat(texts(of(demo("spring-fleece-haul"))).get(0)).isEqualTo("go, first put right 5");
  }

  @Test
  void withoutATimeNothingIsGo() {
    Verdict verdict = of(PLANNER.store().starterTrip().get());
    assertThat(texts(verdict).get(0)).startsWith("go or not: not known");
    assertThat(texts(verdict).subList(1, 5))
        .containsExactly(
            "nothing to set", "nothing to check", "2 not known", "load margin not known");
    assertThat(verdict.parts().get(3).rows()).containsExactly(0, 1);
  }

  /** 60 psi is under 80 % of its 80 (29 CFR 1910.177(f)(2)): it must not roll. */
  @Test
  void aTireOnHoldAtTheStartIsNoGo() {
    Trip trip = demo("spring-fleece-haul");
    List<LogEvent> log = trip.log().stream().map(VerdictTest::lowT1).toList();
    Verdict verdict = of(trip.withLog(log));
    assertThat(texts(verdict).get(0)).startsWith("no-go: ").contains(" on hold");
    assertThat(verdict.parts().get(0).rows()).contains(0);
    assertThat(verdict.parts().get(0).mark()).isEqualTo(Mark.HOLD);
  }

  private static LogEvent lowT1(LogEvent event) {
    return event instanceof LogEvent.Reading reading && reading.tire().equals("T1")
        ? new LogEvent.Reading(
            reading.time(),
            reading.tire(),
            Entered.of(QuantityKind.GAUGE_PRESSURE, "60 psi"),
            reading.gauge(),
            reading.state(),
            null,
            null,
            reading.remarks())
        : event;
  }
}
