package dawngauge.ambient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import org.junit.jupiter.api.Test;

/**
 * The published errors up to six days (ASA Data Expo 2018: 5.14 and 5.96 °F the minimum, 3.54 and
 * 6.72 °F the maximum of leads 0 and 6), then on to the spread of single days.
 */
class LeadErrorTest {
  private static final double FAHRENHEIT = 5.0 / 9;

  @Test
  void upToSixDaysItIsThePublishedError() {
    LeadError error = new LeadError(() -> 8);
    assertThat(error.of(0, true)).isCloseTo(5.14 * FAHRENHEIT, within(1e-12));
    assertThat(error.of(0, false)).isCloseTo(3.54 * FAHRENHEIT, within(1e-12));
    assertThat(error.of(6, true)).isCloseTo(5.96 * FAHRENHEIT, within(1e-12));
    assertThat(error.of(6, false)).isCloseTo(6.72 * FAHRENHEIT, within(1e-12));
  }

  /** By hand: 6.72 °F are 3.733 K; 3.733 + 2/4·(8 − 3.733) = 5.867 K at eight days. */
  @Test
  void thenItRisesToTheSpreadOfSingleDays() {
    LeadError error = new LeadError(() -> 8);
    assertThat(error.of(8, false)).isCloseTo(5.867, within(0.001));
    assertThat(error.of(10, false)).isEqualTo(8);
    assertThat(error.of(29, true)).isEqualTo(8);
  }

  /** Where days differ little from what is typical, the last published error stays. */
  @Test
  void itNeverGetsLess() {
    for (double spread : new double[] {1, 3.5, 5, 9}) {
      LeadError error = new LeadError(() -> spread);
      for (long days = 6; days < 40; days++) {
        for (boolean minimum : new boolean[] {true, false}) {
          assertThat(error.of(days + 1, minimum)).isGreaterThanOrEqualTo(error.of(days, minimum));
        }
        assertThat(error.of(days + 4, true)).isGreaterThanOrEqualTo(spread);
      }
    }
  }

  @Test
  void aDayBeginsWhenItWasGiven() {
    LeadError error = new LeadError(() -> 8);
    Instant given = Instant.parse("2027-03-01T12:00:00Z");
    double day = given.getEpochSecond() + 86_400;
    assertThat(error.at(day - 1, given, true)).isEqualTo(error.of(0, true));
    assertThat(error.at(day, given, true)).isEqualTo(error.of(1, true));
    assertThat(error.at(day - 900_000, given, true)).isEqualTo(error.of(0, true));
  }
}
