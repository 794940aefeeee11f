package dawngauge.geo;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.shredzone.commons.suncalc.SunTimes;

/**
 * When the sun rises and sets: the moments its upper edge is on a level horizon, refraction
 * included, as in almanacs.
 */
public final class Daylight {

  private static final Duration HALF_DAY = Duration.ofHours(12);
  private static final double DAY_SECONDS = 86_400;
  private static final double SECONDS_PER_DEGREE = DAY_SECONDS / 360;

  /** A trip asks for the same few dozen at every edit, and each costs a tenth of a millisecond. */
  private static final int REMEMBERED = 2048;

  private static final Map<Day, Optional<Sun>> KNOWN = new ConcurrentHashMap<>();

  private Daylight() {}

  private record Day(LocalDate date, ZoneId zone, Coordinate place) {}

  /**
   * The sun of one day.
   *
   * @param sunrise before noon by local mean time
   * @param sunset after it; in the far north or with a wide time zone it may be past midnight
   */
  public record Sun(Instant sunrise, Instant sunset) {

    /** Refuses a sun that sets before it rises. */
    public Sun {
      if (!sunrise.isBefore(sunset)) {
        throw new IllegalArgumentException("sunset " + sunset + " is not after " + sunrise);
      }
    }
  }

  /**
   * Sunrise and sunset around the noon of a date.
   *
   * @param date the local date; its sun is that of the noon by local mean time nearest to 12
   *     o'clock
   * @param zone the zone of the date
   * @param place where (The horizon is taken as level: land around a road is mostly as high as the
   *     road.)
   * @return empty where the sun does not both rise and set within the 12 h on each side of noon:
   *     polar day, polar night and the days of change between
   */
  public static Optional<Sun> on(LocalDate date, ZoneId zone, Coordinate place) {
    if (KNOWN.size() >= REMEMBERED) {
      KNOWN.clear();
    }
    return KNOWN.computeIfAbsent(new Day(date, zone, place), Daylight::compute);
  }

  private static Optional<Sun> compute(Day day) {
    Coordinate place = day.place();
    Instant noon = meanNoon(day.date(), day.zone(), place);
    Instant sunrise =
        instant(from(noon.minus(HALF_DAY), place).limit(HALF_DAY).execute().getRise());
    Instant sunset = instant(from(noon, place).limit(HALF_DAY).execute().getSet());
    return sunrise == null || sunset == null
        ? Optional.empty()
        : Optional.of(new Sun(sunrise, sunset));
  }

  /** Noon of local mean time (up to 17 min off the sun's own) nearest to the zone's noon. */
  private static Instant meanNoon(LocalDate date, ZoneId zone, Coordinate place) {
    Instant civilNoon = date.atTime(LocalTime.NOON).atZone(zone).toInstant();
    double sunClockSeconds = civilNoon.getEpochSecond() + place.longitude() * SECONDS_PER_DEGREE;
    double late = Math.IEEEremainder(sunClockSeconds - HALF_DAY.toSeconds(), DAY_SECONDS);
    return civilNoon.minusSeconds(Math.round(late));
  }

  private static SunTimes.Parameters from(Instant start, Coordinate place) {
    return SunTimes.compute().on(start).at(place.latitude(), place.longitude()).elevation(0);
  }

  private static @Nullable Instant instant(@Nullable ZonedDateTime time) {
    return time == null ? null : time.toInstant();
  }
}
