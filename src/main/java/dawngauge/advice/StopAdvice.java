package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.StopForecast;
import java.util.List;

/**
 * What to do at one stop.
 *
 * @param stop the stop
 * @param tires in walking order
 * @param routine gauging that is good habit here, for the whole rig
 * @param offers loads that are only offered here, each judged when it is first asked for
 * @param legCautions what to heed on the leg ahead
 * @param mark the strongest mark of its tires
 */
public record StopAdvice(
    StopForecast stop,
    List<TireAdvice> tires,
    List<Habit> routine,
    List<OfferAdvice> offers,
    List<Phrase> legCautions,
    Mark mark) {

  /** Copies the lists but the offers, which are judged late. */
  public StopAdvice {
    tires = List.copyOf(tires);
    routine = List.copyOf(routine);
    legCautions = List.copyOf(legCautions);
  }

  /** What is to be done at a stop. */
  StopAdvice(
      StopForecast stop,
      List<TireAdvice> tires,
      List<Habit> routine,
      List<OfferAdvice> offers,
      List<Phrase> legCautions) {
    this(
        stop,
        tires,
        routine,
        offers,
        legCautions,
        tires.stream().map(TireAdvice::mark).reduce(Mark.CLEAR, Mark::stronger));
  }
}
