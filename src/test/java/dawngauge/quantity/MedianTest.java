package dawngauge.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The middle of some numbers. */
class MedianTest {

  @Test
  void theMiddleOneOrTheMeanOfTheMiddleTwo() {
    double[] numbers = {5, -1, 3};
    assertThat(Median.of(numbers)).isEqualTo(3);
    assertThat(numbers).containsExactly(5, -1, 3);
    assertThat(Median.of(new double[] {4, 1, 2, 10})).isEqualTo(3);
    assertThat(Median.of(new double[] {7})).isEqualTo(7);
  }
}
