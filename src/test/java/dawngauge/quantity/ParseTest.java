package dawngauge.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.math.BigDecimal;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How figures are read: every spelling of every unit, and what is refused, with the reason. */
class ParseTest {

  @ParameterizedTest
  @MethodSource("dawngauge.quantity.Kinds#pairs")
  void everySpellingWithAndWithoutGap(Kinds.Pair pair) {
    for (String spelling : pair.unit().spellings()) {
      for (String text :
          new String[] {"3 " + spelling, "3" + spelling, "\t3.0  " + spelling + "\n"}) {
        Outcome<? extends Entered<?>> outcome = pair.kind().parse(text);
        assertThat(outcome.problems()).as(text).isEmpty();
        assertThat(outcome.get().value()).isEqualTo(Kinds.of(pair, 3));
        assertThat(outcome.get().text()).isEqualTo(text);
      }
    }
  }

  /** Spellings that files out there may hold; one that goes makes them unreadable. */
  @Test
  void spellingsThatFilesHold() {
    Map<QuantityKind<?>, String> spellings =
        Map.of(
            QuantityKind.GAUGE_PRESSURE, "psi kPa kpa bar",
            QuantityKind.TEMPERATURE, "°F F degF °C C degC",
            QuantityKind.TEMPERATURE_DIFFERENCE, "°F °C",
            QuantityKind.ELEVATION, "ft m",
            QuantityKind.DISTANCE, "mi km ft m",
            QuantityKind.SPEED, "mph km/h",
            QuantityKind.MASS, "lb lbs kg",
            QuantityKind.TREAD_DEPTH, "/32in mm",
            QuantityKind.AIR_FLOW, "cfm CFM L/min l/min",
            QuantityKind.RATIO, "%");
    spellings.forEach(
        (kind, units) -> {
          for (String unit : units.split(" ", -1)) {
            String text = "3 " + unit.replace("/32in", "/32 in");
            assertThat(kind.parse(text).hasValue()).as(kind + " from " + text).isTrue();
          }
        });
  }

  @ParameterizedTest
  @MethodSource("dawngauge.quantity.Kinds#all")
  void theExampleOfEachKindIsRead(QuantityKind<?> kind) {
    assertThat(kind.parse(kind.example()).hasValue()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"-40 °F", "−40 °F", "-40 °C", "-4e1 °C", "-0.4E+2 °C", "-400e-1 °C"})
  void minusAndPowers(String text) {
    // −40 is the same on both scales.
    Temperature read = QuantityKind.TEMPERATURE.parse(text).get().value();
    assertThat(UnitSystem.US.format(read)).isEqualTo("-40 °F");
    assertThat(UnitSystem.SI.format(read)).isEqualTo("-40 °C");
  }

  @Test
  void typedTextIsKept() {
    for (String text : new String[] {"80 psi", "5.50 bar", " 552kPa ", "+080.0 psi"}) {
      Entered<GaugePressure> read = QuantityKind.GAUGE_PRESSURE.parse(text).get();
      assertThat(read.text()).isEqualTo(text);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "100",
        "1e999",
        "psi",
        "eighty psi",
        "NaN psi",
        "Infinity psi",
        "-∞ psi",
        "1,000 psi",
        "5,5 bar",
        "1'000 psi",
        "8 0 psi",
        ".5 bar",
        "5. bar",
        "--5 psi",
        "8-0 psi",
        "80 -psi",
        "80 65 psi",
        "８０ psi"
      })
  void noNumberWithUnit(String text) {
    Problem problem = refused(QuantityKind.GAUGE_PRESSURE, text);
    assertThat(problem.code()).isEqualTo(ProblemCode.NOT_A_QUANTITY);
    assertThat(problem.text())
        .contains("\"" + text + "\"", "gauge pressure", "a number and a unit", "\"80 psi\"");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"80 lb", "80 PSI", "80 psi psi", "80 psig", "80 %", "80e psi", "0x50 psi"})
  void unitThatIsNotOfTheKind(String text) {
    Problem problem = refused(QuantityKind.GAUGE_PRESSURE, text);
    assertThat(problem.code()).isEqualTo(ProblemCode.UNKNOWN_UNIT);
    assertThat(problem.text()).contains("\"" + text + "\"", "gauge pressure", "psi, kPa, bar");
  }

  @ParameterizedTest
  @CsvSource({
    "204 psi, 0 psi, 203.05 psi",
    "-1 psi, 0 psi, 203.05 psi",
    "1e999 psi, 0 psi, 203.05 psi",
    "-1e999 bar, 0 bar, 14 bar",
    "80000 kPa, 0 kPa, 1400 kPa",
  })
  void outOfRangeNamesValueAndLimits(String text, String least, String most) {
    Problem problem = refused(QuantityKind.GAUGE_PRESSURE, text);
    assertThat(problem.text())
        .isEqualTo(
            text + " is outside " + least + " to " + most + "; check the figure and its unit");
  }

  /** What the problem names as limits is still taken, a hundredth beyond is not. */
  @ParameterizedTest
  @MethodSource("dawngauge.quantity.Kinds#pairs")
  void theNamedLimitsAreTheLimits(Kinds.Pair pair) {
    Problem problem = refused(pair.kind(), "1e300" + pair.unit().symbol());
    assertThat(problem.code()).isEqualTo(ProblemCode.OUT_OF_RANGE);
    for (int limit = 1; limit <= 2; limit++) {
      String named = problem.arguments().get(limit);
      assertThat(pair.kind().parse(named).problems()).as(named).isEmpty();
      BigDecimal number = new BigDecimal(named.substring(0, named.length() - unitLength(pair)));
      BigDecimal beyond = number.add(new BigDecimal(limit == 1 ? "-0.01" : "0.01"));
      String text = beyond.toPlainString() + pair.unit().symbol();
      assertThat(refused(pair.kind(), text).code()).isEqualTo(ProblemCode.OUT_OF_RANGE);
    }
  }

  /** A text of a megabyte is read once from front to back and quoted in short. */
  @Test
  void hugeTexts() {
    int size = 1_000_000;
    for (String text :
        new String[] {
          "5 a" + " ".repeat(size) + "b",
          " ".repeat(size) + "x",
          "5" + " ".repeat(size),
          "5 " + "psi ".repeat(size),
          "9".repeat(size),
          "9".repeat(size) + " psi",
          "1e" + "9".repeat(size) + " psi",
          "0." + "0".repeat(size) + "1 kg"
        }) {
      Problem problem = refused(QuantityKind.GAUGE_PRESSURE, text);
      assertThat(problem.message()).hasSizeLessThan(250);
    }
    String manyZeros = "80." + "0".repeat(size) + " psi";
    assertThat(QuantityKind.GAUGE_PRESSURE.parse(manyZeros).get().value())
        .isEqualTo(GaugePressure.of(80, Unit.PSI));
  }

  @Test
  void figuresInCodeFailAtOnce() {
    assertThat(Entered.of(QuantityKind.MASS, "3520 lb").value())
        .isEqualTo(Mass.of(3520, Unit.POUND));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Entered.of(QuantityKind.MASS, "3,520 lb"))
        .withMessageContaining("\"3,520 lb\" is not a weight");
  }

  private static int unitLength(Kinds.Pair pair) {
    return pair.unit().behind("").length();
  }

  private static Problem refused(QuantityKind<?> kind, String text) {
    Outcome<? extends Entered<?>> outcome = kind.parse(text);
    assertThat(outcome.hasValue()).as(kind + " from a text of " + text.length()).isFalse();
    assertThat(outcome.problems()).hasSize(1);
    return outcome.problems().get(0);
  }
}
