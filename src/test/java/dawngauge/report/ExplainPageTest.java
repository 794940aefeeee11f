package dawngauge.report;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.advice.Advice;
import dawngauge.advice.StopAdvice;
import dawngauge.ledger.ExplainPage;
import dawngauge.ledger.Ledger;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The steps behind the figures, as printed. */
class ExplainPageTest {
  @Test
  void everyTireAtEveryStopIsExplainedWithin100ColumnsWithTheCautions() {
    int explained = 0;
    for (Map.Entry<String, Trip> each : Plans.all().entrySet()) {
      Trip trip = each.getValue();
      Advice advice = Plans.plan(trip).advice();
      if (advice == null) {
        continue;
      }
      for (StopAdvice stop : advice.stops()) {
        for (WheelPosition position : trip.rig().positions()) {
          UnitSystem units = explained % 2 == 0 ? UnitSystem.US : UnitSystem.SI;
          String text =
              PageText.of(ExplainPage.of(trip, stop, position, explained % 3 == 0, units), true);
          assertThat(text.lines()).allMatch(line -> PlainText.length(line) <= 100);
          assertThat(text.replaceAll("\\s+", " "))
              .as(each.getKey())
              .contains(trip.rig().shortForm(position))
              .contains("Mark: ")
              .contains(Ledger.CAUTIONS.get(0));
          explained++;
        }
      }
    }
    assertThat(explained).isGreaterThan(1000);
  }
}
