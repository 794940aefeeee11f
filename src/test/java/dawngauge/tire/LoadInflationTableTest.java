package dawngauge.tire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of a maker's table: in order, from first to last. All figures are invented. */
class LoadInflationTableTest {

  private static Tires tire() {
    return Tires.named("t").size("ST225/75R15").rated("2500 lb", "65 psi");
  }

  @ParameterizedTest
  @CsvSource({
    "55 psi, 2100 lb, 1900 lb",
    "55 psi, 2000 lb, 1800 lb",
    "55 psi, 2000 lb,",
    "50.1 psi, 2000 lb, 1800 lb"
  })
  void aRowMayFollow(String pressure, String single, String dual) {
    LoadInflationTable rows =
        tire().row("50 psi", "2000 lb", "1800 lb").row(pressure, single, dual).spec().rows();
    assertThat(rows).isNotNull();
  }

  @ParameterizedTest
  @CsvSource({
    "50 psi, 2100 lb, 1900 lb",
    "49 psi, 2100 lb, 1900 lb",
    "55 psi, 1999 lb, 1900 lb",
    "55 psi, 2100 lb, 1799 lb"
  })
  void aRowThatFallsIsRefusedByItsNumber(String pressure, String single, String dual) {
    Tires falling = tire().row("50 psi", "2000 lb", "1800 lb").row(pressure, single, dual);
    assertThatThrownBy(falling::spec).hasMessageContaining("row 2 falls");
  }

  @Test
  void oneRowIsNoTable() {
    Tires one = tire().row("50 psi", "2000 lb", null);
    assertThatThrownBy(one::spec).hasMessageContaining("at least two rows");
    assertThat(new LoadInflationTable(two()).rows()).hasSize(2);
  }

  private static List<LoadInflationTable.Row> two() {
    LoadInflationTable rows =
        tire().row("50 psi", "2000 lb", null).row("65 psi", "2500 lb", null).spec().rows();
    assertThat(rows).isNotNull();
    return rows == null ? List.of() : rows.rows();
  }

  /** A hundredth below the rated pressure is rounding; more is told. */
  @ParameterizedTest
  @CsvSource({"65 psi, false", "64.5 psi, false", "63 psi, true"})
  void rowsThatEndEarlyAreTold(String last, boolean told) {
    TireSpec spec = tire().row("50 psi", "2000 lb", null).row(last, "2500 lb", null).spec();
    assertThat(Capacity.of(spec, new Fitment(false, true), null).problems())
        .extracting(Problem::code)
        .isEqualTo(told ? List.of(ProblemCode.ROWS_END_EARLY) : List.of());
  }

  /** Where a load stands in two rows the lower pressure carries it. */
  @Test
  void theLowestPressureOfAFlatPartCarries() {
    TireSpec spec =
        tire()
            .row("50 psi", "2000 lb", null)
            .row("60 psi", "2000 lb", null)
            .row("65 psi", "2500 lb", null)
            .spec();
    Capacity capacity = Capacity.of(spec, new Fitment(false, true), null).get();
    double pascals = capacity.pascalsFor(Mass.of(2000, Unit.POUND).kilograms());
    assertThat(new GaugePressure(pascals).in(Unit.PSI)).isEqualTo(50, within(1e-6));
  }

  @Test
  void theSidewallsLimitIsTheMaximumAsTypedElseTheRatedPressure() {
    GaugePressure rated = GaugePressure.of(65, Unit.PSI);
    assertThat(tire().spec().sidewallLimit()).isEqualTo(rated);
    assertThat(Tires.named("t").size("ST225/75R15").spec().sidewallLimit()).isNull();
  }
}
