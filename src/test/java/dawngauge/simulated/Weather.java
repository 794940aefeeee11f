package dawngauge.simulated;

import java.util.Random;

/**
 * The weather of one haul: what was forecast at each place, what comes, how warm passes are, the
 * air's pressure, wind and clear nights.
 */
final class Weather {

  /** Mean temperature at sea level at 35° north over the year, in kelvin; inferred. */
  private static final double YEAR_MEAN = 290;

  /** Half the way from January to July, in kelvin; inferred from interior towns. */
  private static final double YEAR_SWING = 12;

  /** Colder by so much a degree of latitude; inferred. */
  private static final double BY_LATITUDE = 0.6;

  /** Colder by so much a meter of height of a place; inferred. */
  private static final double BY_HEIGHT = 0.0055;

  /** Spread of single days about the season, in kelvin, and its memory; inferred. */
  private static final double DAYS = 4;

  private static final double DAYS_MEMORY = 60 * Units.HOUR;

  /** Difference of a day's high and low, in kelvin: mean, spread, least, most; inferred. */
  private static final double RANGE = 13;

  private static final double RANGE_SPREAD = 3.5;
  private static final double RANGE_LEAST = 5;
  private static final double RANGE_MOST = 22;

  /**
   * Fall of temperature with height near the ground, kelvin a meter, about dawn and by day. Yearly
   * means of 3.9 to 5.2 K/km are published for a mountain range (Minder, Mote and Lundquist 2010,
   * Journal of Geophysical Research 115); less at night and more by day, and the spreads, inferred.
   */
  private static final double LAPSE_DAWN = 0.0035;

  private static final double LAPSE_DAY = 0.0065;
  private static final double LAPSE_SPREAD_DAWN = 0.002;
  private static final double LAPSE_SPREAD_DAY = 0.001;

  /** Spread of the pressure at sea level, in pascal, and its memory; inferred (5 to 10 hPa). */
  private static final double BAROMETER = 700;

  private static final double BAROMETER_MEMORY = 48 * Units.HOUR;

  /** U.S. Standard Atmosphere 1976: sea level pressure, g / (R · 0.0065 K/m). */
  private static final double SEA_LEVEL = 101_325;

  private static final double BAROMETRIC_POWER = 9.80665 * 0.0289644 / (8.31432 * 0.0065);
  private static final double STANDARD_LAPSE = 0.0065;

  /** Wind where the rig stands, median in m/s, spread of its logarithm, memory; inferred. */
  private static final double WIND = 1.5;

  private static final double WIND_SPREAD = 0.6;
  private static final double WIND_MEMORY = 6 * Units.HOUR;

  /** By how much a tire sees the sky colder than the air on a clear night, most; inferred. */
  private static final double SKY = 1.5;

  private static final int DAYS_BEFORE = 1;

  private final int days;
  private final double[] elevation;
  private final DayCurve curve;
  private final double[][] low;
  private final double[][] high;
  private final ForecastErrors errors;
  private final double lapseDawn;
  private final double lapseDay;
  private final Memory barometer;
  private final Memory wind;
  private final double[] sky;

  /**
   * Draws it.
   *
   * @param latitude of the region, degrees
   * @param dayOfYear of the first day
   * @param elevation height of each place in meter
   * @param days how many days the haul has
   */
  Weather(Random random, double latitude, int dayOfYear, double[] elevation, int days) {
    this.days = days;
    this.elevation = elevation.clone();
    this.curve = new DayCurve(latitude, dayOfYear);
    double from = -DAYS_BEFORE * Units.DAY;
    double to = (days + 2) * Units.DAY;
    Memory anomaly = new Memory(random, DAYS_MEMORY, from, to, 6 * Units.HOUR);
    int count = days + DAYS_BEFORE + 3;
    low = new double[elevation.length][count];
    high = new double[elevation.length][count];
    double season = YEAR_MEAN - YEAR_SWING * Math.cos(2 * Math.PI * (dayOfYear - 20) / 365);
    double[] range = new double[count];
    for (int day = 0; day < count; day++) {
      double drawn = RANGE + RANGE_SPREAD * random.nextGaussian();
      range[day] = Math.max(RANGE_LEAST, Math.min(RANGE_MOST, drawn));
    }
    for (int place = 0; place < elevation.length; place++) {
      double base = season - BY_LATITUDE * (latitude - 35) - BY_HEIGHT * elevation[place];
      for (int day = 0; day < count; day++) {
        double middle = base + DAYS * anomaly.at((day - DAYS_BEFORE + 0.5) * Units.DAY);
        low[place][day] = middle - range[day] / 2;
        high[place][day] = middle + range[day] / 2;
      }
    }
    errors = new ForecastErrors(random, elevation.length, from, to);
    lapseDawn = LAPSE_DAWN + LAPSE_SPREAD_DAWN * random.nextGaussian();
    lapseDay = LAPSE_DAY + LAPSE_SPREAD_DAY * random.nextGaussian();
    barometer = new Memory(random, BAROMETER_MEMORY, from, to, 3 * Units.HOUR);
    wind = new Memory(random, WIND_MEMORY, from, to, Units.HOUR);
    sky = new double[count];
    for (int day = 0; day < count; day++) {
      sky[day] = SKY * random.nextDouble();
    }
  }

  /** Hours of sunrise and sunset of all days. */
  DayCurve sun() {
    return curve;
  }

  /** How many days the haul has. */
  int days() {
    return days;
  }

  /** Forecast low of a day, counted from 0, in kelvin. */
  double low(int place, int day) {
    return low[place][day + DAYS_BEFORE];
  }

  /** Forecast high of a day. */
  double high(int place, int day) {
    return high[place][day + DAYS_BEFORE];
  }

  /** Day whose sunrise was last. */
  private int since(double seconds) {
    return (int) Math.floor((seconds - curve.rise() * Units.HOUR) / Units.DAY);
  }

  /** Temperature as forecast at a place, in kelvin. */
  double forecast(int place, double seconds) {
    int day = since(seconds);
    double hour = (seconds - day * Units.DAY) / Units.HOUR;
    return curve.at(hour, low(place, day), high(place, day), low(place, day + 1));
  }

  /** 1 at the low of the day, 0 at its high. */
  private double dawn(int place, double seconds) {
    int day = since(seconds);
    double part =
        (high(place, day) - forecast(place, seconds)) / (high(place, day) - low(place, day));
    return Math.max(0, Math.min(1, part));
  }

  /** Temperature as it comes at a place, in kelvin. */
  double air(int place, double seconds) {
    int lead = (int) Math.floor(seconds / Units.DAY);
    return forecast(place, seconds)
        + ForecastErrors.sigma(lead, dawn(place, seconds)) * errors.drawn(place, seconds);
  }

  /**
   * The same on the way between two places.
   *
   * @param part of the way done
   * @param height of the ground there, in meter
   */
  double air(int from, int to, double part, double height, double seconds) {
    double straight = (1 - part) * elevation[from] + part * elevation[to];
    double dawn = dawn(from, seconds);
    double lapse = dawn * lapseDawn + (1 - dawn) * lapseDay;
    return (1 - part) * air(from, seconds) + part * air(to, seconds) - lapse * (height - straight);
  }

  /** Pressure of the air in pascal: hydrostatic, the column as warm as the day is on average. */
  double pressure(int near, double height, double seconds) {
    int day = Math.max(-DAYS_BEFORE, since(seconds));
    double mean = (low(near, day) + high(near, day)) / 2;
    double atSeaLevel = mean + STANDARD_LAPSE * elevation[near];
    double sea = SEA_LEVEL + BAROMETER * barometer.at(seconds);
    return sea * Math.pow(1 - STANDARD_LAPSE * height / atSeaLevel, BAROMETRIC_POWER);
  }

  /** Wind where the rig stands, in m/s. */
  double wind(double seconds) {
    return WIND * Math.exp(WIND_SPREAD * wind.at(seconds));
  }

  /** By how much the surroundings of a standing tire are colder than the air, in kelvin. */
  double sky(double seconds) {
    double hour = Math.floorMod((long) seconds, (long) Units.DAY) / Units.HOUR;
    return hour < curve.rise() || hour > curve.set() ? sky[since(seconds) + DAYS_BEFORE] : 0;
  }
}
