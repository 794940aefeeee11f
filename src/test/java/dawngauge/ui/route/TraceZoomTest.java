package dawngauge.ui.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The seen part of an axis stays within it, and what is pointed at stays where it is. */
class TraceZoomTest {

  private static final TraceAxis AXIS = new TraceAxis(50, 90, 10, 170, 10);

  @Test
  void whatIsPointedAtStays() {
    Random random = new Random(22);
    TraceZoom zoom = TraceZoom.WHOLE;
    for (int i = 0; i < 300; i++) {
      double at = random.nextDouble();
      TraceZoom next = zoom.stretched(random.nextBoolean() ? 1.25 : 0.8, at);
      assertThat(next.factor()).isBetween(1.0, 8.0);
      assertThat(next.from()).isBetween(0.0, 1 - 1 / next.factor() + 1e-12);
      double before = zoom.from() + at / zoom.factor();
      double after = next.from() + at / next.factor();
      if (next.factor() > zoom.factor()) {
        assertThat(after).isCloseTo(before, within(1e-12));
      }
      zoom = next.panned(random.nextDouble() - 0.5);
    }
  }

  @Test
  void thePartSeenHasFinerFiguresAllOfThemWithin() {
    TraceAxis seen = AXIS.seen(new TraceZoom(4, 0.5), 1);
    assertThat(seen.low()).isEqualTo(70);
    assertThat(seen.high()).isEqualTo(80);
    assertThat(seen.step()).isEqualTo(2.5);
    assertThat(seen.lines()).containsExactly(70, 72.5, 75, 77.5, 80);
    assertThat(seen.x(70)).isEqualTo(10);
    assertThat(seen.x(80)).isEqualTo(170);
    assertThat(TraceAxis.number(72.5, seen.step())).isEqualTo("72.5");
    assertThat(TraceAxis.number(4.15, 0.05)).isEqualTo("4.15");
    assertThat(TraceAxis.number(4.5, 0.5)).isEqualTo("4.5");
    assertThat(TraceAxis.number(80, 10)).isEqualTo("80");
  }

  @Test
  void theWholeAxisIsAsBefore() {
    TraceAxis whole = AXIS.seen(TraceZoom.WHOLE, 10);
    assertThat(whole).isEqualTo(AXIS);
    assertThat(Arrays.stream(whole.lines()).boxed()).containsExactly(50.0, 60.0, 70.0, 80.0, 90.0);
  }
}
