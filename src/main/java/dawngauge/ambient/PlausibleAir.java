package dawngauge.ambient;

import dawngauge.physics.StandardAtmosphere;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Median;
import dawngauge.quantity.QuantityKind;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether an answer can be the air of a place: its height is one of land and near the ground's, no
 * figure is hotter than was ever measured at such a height, and the middle of its figures is not
 * farther from a typical day than weather goes. Figures in another unit than the answer says are
 * found by that. All limits are ours unless said otherwise.
 */
public final class PlausibleAir {

  /** A cell of a few kilometers and the road in it lie no farther apart than this, in meter. */
  private static final double HEIGHT_APART = 1500;

  /** 56.7 °C, Death Valley 1913, the highest that the WMO lists (World Weather Extremes, 2025). */
  private static final double HOTTEST = 273.15 + 56.7;

  private static final double COLDEST = 273.15 - 90;

  /**
   * The middle of a day or more lies no farther above a typical day's mean than this, in kelvin; of
   * a typical day that is rough, half as far again. Fahrenheit taken for Celsius lies 24 above at a
   * typical −10 °C, 32 at 0 °C and 40 at 10 °C.
   */
  private static final double WARMER = 15;

  /** Outbreaks of winter air go farther down: 25 to 30 K were met on the plains. */
  private static final double COLDER = 35;

  private PlausibleAir() {}

  /**
   * Why an answer is not used; empty where nothing speaks against it.
   *
   * @param query what was asked
   * @param answer what came
   */
  public static Optional<Problem> doubt(WeatherQuery query, WeatherAnswer answer) {
    double ground = query.elevationMeters();
    double cell = answer.elevationMeters();
    boolean both = !Double.isNaN(ground) && !Double.isNaN(cell);
    boolean apart = both && Math.abs(cell - ground) > HEIGHT_APART;
    if (apart || (!Double.isNaN(cell) && !QuantityKind.ELEVATION.holds(cell))) {
      return Optional.of(
          Problem.of(
              ProblemCode.FEED_WRONG_HEIGHT,
              "",
              answer.service(),
              whole(cell),
              Double.isNaN(ground) ? "a height not known" : whole(ground) + " m"));
    }
    double height = Double.isNaN(ground) ? cell : ground;
    double higher = both ? ground - cell : 0;
    return doubt(query, answer, height, higher);
  }

  private static Optional<Problem> doubt(
      WeatherQuery query, WeatherAnswer answer, double height, double higher) {
    double[] kelvins =
        answer.temperatures().stream()
            .mapToDouble(at -> at.kelvins() - StandardAtmosphere.LAPSE_RATE * higher)
            .toArray();
    double hottest =
        HOTTEST - StandardAtmosphere.LAPSE_RATE * (Double.isNaN(height) ? 0 : Math.max(0, height));
    for (double figure : kelvins) {
      if (!(figure >= COLDEST && figure <= hottest)) {
        return Optional.of(
            refused(answer, figure, "from " + celsius(COLDEST) + " to " + celsius(hottest)));
      }
    }
    TypicalDays typical =
        Double.isNaN(height) ? null : TypicalTemperatures.at(query.place(), height).orElse(null);
    if (typical == null) {
      return Optional.empty();
    }
    double[] departures = new double[kelvins.length];
    for (int i = 0; i < kelvins.length; i++) {
      departures[i] = kelvins[i] - mean(typical, answer.temperatures().get(i));
    }
    double middle = Median.of(departures);
    double warmer = WARMER * (TypicalTemperatures.isRough(typical.provenance()) ? 1.5 : 1);
    if (middle <= warmer && middle >= -COLDER) {
      return Optional.empty();
    }
    int half = answer.temperatures().size() / 2;
    return Optional.of(
        refused(
            answer,
            Median.of(kelvins),
            "about " + celsius(mean(typical, answer.temperatures().get(half)))));
  }

  private static double mean(TypicalDays typical, WeatherAnswer.At at) {
    TypicalDays.LowHigh day =
        typical.at(TypicalTemperatures.month(at.time().atZone(ZoneOffset.UTC).toLocalDate()));
    return (day.low() + day.high()) / 2;
  }

  private static Problem refused(WeatherAnswer answer, double kelvins, String typical) {
    return Problem.of(
        ProblemCode.FEED_IMPLAUSIBLE, "", answer.service(), celsius(kelvins), typical);
  }

  private static String celsius(double kelvins) {
    return String.format(Locale.ROOT, "%.0f °C", kelvins - 273.15);
  }

  private static String whole(double meters) {
    return String.format(Locale.ROOT, "%.0f", meters);
  }
}
