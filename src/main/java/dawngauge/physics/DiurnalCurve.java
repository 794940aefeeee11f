package dawngauge.physics;

/**
 * Air temperature through the day from its low and high: a truncated sine from shortly before
 * sunrise to sunset, then a decay towards the next morning's low.
 *
 * <p>Source: Parton and Logan 1981, "A model for diurnal variation in soil and air temperature",
 * Agricultural Meteorology 23: 205–216, with their coefficients for air at 150 cm. Their night does
 * not quite reach the low and steps down to it (by 11 % of the fall since sunset). Kimball and
 * Bellamy 1986, "Generation of diurnal solar radiation, temperature, and humidity patterns", Energy
 * in Agriculture 5: 185–197 (from memory), join the night to the next morning's low by an asymptote
 * under it, which cools the evening too. Here the night ends at the next morning's low as well, but
 * the step is taken off with the square of the time since sunset (inferred): the evening stays near
 * the curve that was fitted to measurements.
 */
public final class DiurnalCurve {

  private static final double HOUR = 3600;

  /** a: how long after the middle of the day the high comes, counted as in the paper; 1.86 h. */
  private static final double LAG_OF_HIGH = 1.86 * HOUR;

  /** b: decay during the night, without unit. */
  private static final double NIGHT_DECAY = 2.20;

  /** c: how long after sunrise the low comes; before it, −0.17 h. */
  private static final double LAG_OF_LOW = -0.17 * HOUR;

  /**
   * Shortest day from sunrise to sunset that has a curve, seconds (3.38 h): on a shorter one the
   * high would come after sunset.
   */
  public static final double SHORTEST_DAY_SECONDS = 2 * (LAG_OF_HIGH + LAG_OF_LOW);

  private DiurnalCurve() {}

  /**
   * One day at one place. Seconds are counted on one time line for all days; where it starts is the
   * caller's choice.
   *
   * @param sunriseSeconds when the sun rises
   * @param sunsetSeconds when it sets, later the same day
   * @param lowKelvins the morning's low
   * @param highKelvins the afternoon's high, not below the low
   */
  public record Day(
      double sunriseSeconds, double sunsetSeconds, double lowKelvins, double highKelvins) {

    /** Refuses a day without enough night or day, and a high below the low. */
    public Day {
      Require.finite(sunriseSeconds, "sunriseSeconds");
      double length = Require.finite(sunsetSeconds, "sunsetSeconds") - sunriseSeconds;
      if (!(length >= SHORTEST_DAY_SECONDS && length < 24 * HOUR)) {
        throw new IllegalArgumentException(
            "a day of " + length + " s from sunrise to sunset has no diurnal curve");
      }
      Require.positive(lowKelvins, "lowKelvins");
      if (Require.finite(highKelvins, "highKelvins") < lowKelvins) {
        throw new IllegalArgumentException(
            "the day's high " + highKelvins + " K is below its low " + lowKelvins + " K");
      }
    }

    /** When the low comes: shortly before sunrise. */
    public double timeOfLow() {
      return sunriseSeconds + LAG_OF_LOW;
    }

    /** When the high comes: in the afternoon. */
    public double timeOfHigh() {
      return timeOfLow() + (sunsetSeconds - sunriseSeconds) / 2 + LAG_OF_HIGH;
    }

    /** By day, from the time of the low to sunset: Tn + (Tx − Tn)·sin(π(t − BB)/(Y + 2a)). */
    private double byDay(double seconds) {
      double period = sunsetSeconds - sunriseSeconds + 2 * LAG_OF_HIGH;
      return lowKelvins
          + (highKelvins - lowKelvins) * Math.sin(Math.PI * (seconds - timeOfLow()) / period);
    }

    /** By night, from this day's sunset to the time of the next day's low. */
    private double byNight(double seconds, Day next) {
      double sinceSunset = seconds - sunsetSeconds;
      double toLow = next.timeOfLow() - sunsetSeconds;
      double night = next.sunriseSeconds - sunsetSeconds;
      double part = sinceSunset / toLow;
      double left =
          Math.exp(-NIGHT_DECAY * sinceSunset / night)
              - Math.exp(-NIGHT_DECAY * toLow / night) * part * part;
      return next.lowKelvins + (byDay(sunsetSeconds) - next.lowKelvins) * left;
    }
  }

  /**
   * The air's temperature at a moment, from three days in a row. The night belongs half to each:
   * from one day's temperature at sunset it goes down to the next day's low.
   *
   * @param seconds the moment, from the time of the low of {@code before} to the sunset of {@code
   *     after}
   * @param before the day before
   * @param day the day in question
   * @param after the day after
   * @return kelvin; never above a day's high by day, and exactly its low at the time of the low
   * @throws IllegalArgumentException if the moment is outside the three days, or the days are not
   *     in order with a night between them
   */
  public static double temperatureAt(double seconds, Day before, Day day, Day after) {
    if (!(before.sunsetSeconds < day.timeOfLow() && day.sunsetSeconds < after.timeOfLow())) {
      throw new IllegalArgumentException("the days are not in order with a night between them");
    }
    if (!(seconds >= before.timeOfLow() && seconds <= after.sunsetSeconds)) {
      throw new IllegalArgumentException("the moment " + seconds + " s is outside the three days");
    }
    if (seconds <= before.sunsetSeconds) {
      return before.byDay(seconds);
    }
    if (seconds < day.timeOfLow()) {
      return before.byNight(seconds, day);
    }
    if (seconds <= day.sunsetSeconds) {
      return day.byDay(seconds);
    }
    return seconds < after.timeOfLow() ? day.byNight(seconds, after) : after.byDay(seconds);
  }
}
