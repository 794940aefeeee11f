package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Limits;
import dawngauge.forecast.StopForecast;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Unit;
import dawngauge.trip.Itinerary;
import java.util.ArrayList;
import java.util.List;

/** What to heed on the leg that leaves a stop, apart from air. */
final class LegCautions {

  private LegCautions() {}

  static List<Phrase> of(StopForecast stop, List<TireAdvice> tires) {
    Itinerary.Drive ahead = stop.ahead();
    if (ahead == null) {
      return List.of();
    }
    List<Phrase> cautions = new ArrayList<>();
    String how = ahead.topAssumed() ? "assumed" : "typed";
    boolean slower =
        tires.stream().anyMatch(t -> t.tire().limits().speed() == Limits.SpeedVerdict.KEEP_TO_65);
    if (slower) {
      cautions.add(
          Phrase.of(
              "{0} or less on this leg: special trailer tires without a speed symbol would need"
                  + " 10 psi more at the {1} top speed of {2}, above their limit (Tire and Rim"
                  + " Association rule, as reproduced)",
              Speed.of(65, Unit.MILE_PER_HOUR), how, new Speed(ahead.topMetersPerSecond())));
    }
    return cautions;
  }
}
