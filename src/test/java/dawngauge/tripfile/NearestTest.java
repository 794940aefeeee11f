package dawngauge.tripfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The distance's textbook examples, and the slips people make. */
class NearestTest {
  @Test
  void distanceCountsChangesOfOneLetter() {
    assertThat(Nearest.distance("kitten", "sitting")).isEqualTo(3);
    assertThat(Nearest.distance("", "abc")).isEqualTo(3);
    assertThat(Nearest.distance("same", "same")).isZero();
  }

  @Test
  void nearestIsFoundWhateverTheCapitals() {
    List<String> known = List.of("gawr", "wheelMaxPressure", "wheelMaxLoad");
    assertThat(Nearest.of("GAWR", known)).isEqualTo("gawr");
    assertThat(Nearest.of("wheelmaxpresure", known)).isEqualTo("wheelMaxPressure");
  }
}
