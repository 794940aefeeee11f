package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.StopForecast;
import dawngauge.quantity.Speed;
import dawngauge.rules.Limits;
import dawngauge.tire.TrailerSpeedRule;
import dawngauge.trip.Descents;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Route;
import java.util.ArrayList;
import java.util.List;

/** What to heed on the leg that leaves a stop, apart from air. */
final class LegCautions {

  /** Special trailer tires without a speed symbol at 66 to 75 mph (Tire and Rim Association). */
  static final Phrase.Stated MORE_FOR_SPEED =
      PressureText.pressure(TrailerSpeedRule.EXTRA.pascals());

  private LegCautions() {}

  static List<Phrase> of(StopForecast stop, List<TireAdvice> tires, Route route) {
    Itinerary.Drive ahead = stop.ahead();
    if (ahead == null) {
      return List.of();
    }
    List<Phrase> cautions = new ArrayList<>();
    String how = ahead.topAssumed() ? "assumed" : "typed";
    boolean slower = false;
    for (TireAdvice tire : tires) {
      slower = slower || tire.tire().limits().speed() == Limits.SpeedVerdict.KEEP_TO_65;
    }
    if (slower) {
      cautions.add(
          Phrase.of(
              "{0} or less on this leg: at {1} {2} trailer tires without a speed symbol need {3} more,"
                  + " over their limit (Tire and Rim Association, as reproduced)",
              TrailerSpeedRule.FREE, how, new Speed(ahead.topMetersPerSecond()), MORE_FOR_SPEED));
    }
    if (Descents.onLeg(route, stop.visit().index())) {
      cautions.add(
          Phrase.of("descent of over 5 % for {0} or more: {1}", Descents.LONG, Descents.HEED));
    }
    return cautions;
  }
}
