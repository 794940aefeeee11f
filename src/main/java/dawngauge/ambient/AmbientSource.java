package dawngauge.ambient;

import dawngauge.problem.Outcome;
import java.util.Map;

/**
 * Answers which air is expected where and when: typed figures, a weather service, typical values.
 */
public interface AmbientSource {

  /**
   * Answers what it can. Needs without an answer are simply not in the map; problems say why.
   *
   * @param needs places and spans of time
   */
  Outcome<Map<AmbientNeeds.Need, AirSeries>> answer(AmbientNeeds needs);
}
