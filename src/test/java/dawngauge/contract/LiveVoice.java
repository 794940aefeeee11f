package dawngauge.contract;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.advice.TireAdvice;
import dawngauge.forecast.ReadingCheck;
import dawngauge.quantity.UnitSystem;
import java.util.LinkedHashMap;
import java.util.Map;

/** What the page of readings answers to a reading while it is typed, tire by tire. */
final class LiveVoice implements Voice {

  @Override
  public String name() {
    return "live check";
  }

  @Override
  public Map<Place, Saying> of(Grid.Haul haul) {
    Map<Place, Saying> said = new LinkedHashMap<>();
    Advice advice = Page.PLANNER.plan(haul.trip()).advice();
    for (int stop = 0; advice != null && stop < advice.stops().size(); stop++) {
      for (ReadingCheck check : Page.PLANNER.plan(haul.trip()).checks(stop)) {
        for (TireAdvice tire : advice.stops().get(stop).tires()) {
          if (tire.tire().fitted().tire().id().equals(check.reading().tire())) {
            boolean low =
                tire.reasons().stream()
                    .anyMatch(reason -> Words.ranLow(reason.text().in(UnitSystem.US)));
            String name = haul.trip().rig().shortForm(tire.tire().fitted().position());
            said.put(
                new Place(name, stop),
                Saying.NOTHING.with(Field.HOLD, tire.mark() == Mark.HOLD).with(Field.RAN_LOW, low));
          }
        }
      }
    }
    return said;
  }
}
