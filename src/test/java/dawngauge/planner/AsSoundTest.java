package dawngauge.planner;

import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.advice.Advice;
import dawngauge.ledger.ReadingsTrace;
import dawngauge.quantity.UnitSystem;
import dawngauge.review.TireReview;
import dawngauge.settings.SettingsFile;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a tire read beside what a sound one would have read. */
class AsSoundTest {

  /**
   * OpenStax University Physics 2, ideal gas, worked example: 7.00e5 Pa absolute at 18.0 °C is
   * 7.41e5 Pa at 35.0 °C; at 0 °C (common gas law) 7.00e5 · 273.15/291.15 = 6.567e5 Pa. In gauge
   * pressure at sea level: 598.7, 639.6 and 555.4 kPa, which are 5.99, 6.40 and 5.55 bar. The tire
   * read 5.99, 6.20 and 5.35 bar: 0.20 below each time, whatever it read in between.
   */
  @Test
  void theLaterReadingsDoNotBendWhatIsExpected() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(stop("a").steady("18 C").leaves("2027-06-01T06:00Z"))
            .leg("120 mi", "60 mph")
            .stop(stop("b").steady("35 C").stays(Duration.ofHours(22)))
            .leg("120 mi", "60 mph")
            .stop(stop("c").steady("0 C").stays(Duration.ofHours(22)))
            .leg("60 mi", "60 mph")
            .stop(stop("end").steady("18 C"))
            .read("2027-06-01T05:50Z", "T1", "5.99 bar")
            .read("2027-06-01T08:05Z", "T1", "6.5 bar", "hand", ReadingState.WARM)
            .read("2027-06-02T05:50Z", "T1", "6.20 bar")
            .read("2027-06-03T05:50Z", "T1", "5.35 bar")
            .trip();
    Planner planner = new Planner(SettingsFile.defaults(), List.of());
    TireReview tire = planner.plan(trip).review().orElseThrow().tires().get(0);
    Advice sound = planner.plan(trip).asSound().orElse(null);
    if (sound == null) {
      throw new AssertionError("no forecast");
    }
    List<ReadingsTrace.Dot> dots = ReadingsTrace.of(sound, tire, UnitSystem.SI).dots();
    assertThat(dots).hasSize(4);
    assertThat(dots.get(0).off()).isCloseTo(0, within(1e-9));
    assertThat(dots.get(2).expected()).isCloseTo(6.40, within(0.02));
    assertThat(dots.get(3).expected()).isCloseTo(5.55, within(0.02));
    assertThat(dots.get(2).off()).isCloseTo(-0.20, within(0.02));
    assertThat(dots.get(3).off()).isCloseTo(-0.20, within(0.02));
    assertThat(dots.get(1).cold()).isFalse();
    assertThat(dots.get(1).expected()).isGreaterThan(6.40);
  }
}
