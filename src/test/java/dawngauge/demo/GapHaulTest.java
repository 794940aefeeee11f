package dawngauge.demo;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.advice.Mark;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import org.junit.jupiter.api.Test;

/** What "not known" looks like: no temperature at one stop, and none on the legs by it. */
class GapHaulTest {

  static final String FILE = "gap-haul.dawngauge";

  private static final Demo DEMO = Demo.file(FILE);

  @Test
  void airNotKnownAtOneStop() {
    StopAdvice stop = DEMO.stop("raton");
    assertThat(stop.stop().airOnArrival()).isNaN();
    assertThat(stop.mark()).isEqualTo(Mark.UNKNOWN);
    assertThat(stop.tires()).extracting(TireAdvice::mark).containsOnly(Mark.UNKNOWN);
  }

  @Test
  void whatCanBeKnownIsKnownBeforeAndAfter() {
    assertThat(DEMO.stop("alamosa").mark()).isEqualTo(Mark.RECHECK);
    assertThat(DEMO.stop("dalhart").mark()).isEqualTo(Mark.ADJUST);
    assertThat(DEMO.stop("walsenburg").tires())
        .allMatch(tire -> tire.tire().leaving() != null)
        .allMatch(TireAdvice::aheadUnknown);
  }
}
