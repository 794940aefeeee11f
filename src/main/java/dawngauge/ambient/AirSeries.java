package dawngauge.ambient;

import dawngauge.explain.Phrase;
import dawngauge.trip.Provenance;
import java.util.List;

/** Expected air temperature at one place as a function of time. Times are epoch seconds. */
public interface AirSeries {

  /** Expected temperature in kelvin. */
  double kelvinsAt(double epochSeconds);

  /** Its uncertainty, one standard deviation in kelvin. */
  double sigmaAt(double epochSeconds);

  /**
   * How much further the cold side reaches, in kelvin, zero or more: forecast minima are known to
   * lie above what comes.
   */
  double coldSideAt(double epochSeconds);

  /** All that is expected at a moment. */
  default Air at(double epochSeconds) {
    return new Air(kelvinsAt(epochSeconds), sigmaAt(epochSeconds), coldSideAt(epochSeconds), false);
  }

  /** Times at which the temperature changes its course abruptly, in epoch seconds, rising. */
  List<Double> breakpoints();

  /** Where it came from. */
  Provenance provenance();

  /** What was given, in words: "typed: low 15 °F, high 58 °F on 13 April". */
  Phrase given();
}
