package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.forecast.Track;
import dawngauge.geo.Coordinate;
import dawngauge.geo.Daylight;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.UnitSystem;
import dawngauge.rules.Quantile;
import dawngauge.trip.Itinerary;
import dawngauge.trip.WheelPosition;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * One tire along the way as lines to draw, without a toolkit. Figures are in the chosen units.
 *
 * @param position whose figures they are
 * @param points in time order; where air is set two points share a time
 * @param floors floor of each leg
 * @param ceilings where the ceiling is judged: at each cold start of a day
 * @param nights from sunset to sunrise
 */
public record Trace(
    WheelPosition position,
    List<Point> points,
    List<Floor> floors,
    List<Ceiling> ceilings,
    List<Night> nights) {

  /** Known moments further apart than this, in seconds, have an unknown stretch between them. */
  private static final double LONGEST_PIECE = 601;

  /**
   * The tire at one time.
   *
   * @param time when
   * @param settled settled pressure
   * @param reading what the gauge reads; NaN where the tire's warmth is not known
   * @param low lower end of the range of readings; NaN likewise
   * @param high upper end
   * @param air temperature of the air
   * @param elevation height of the ground
   */
  public record Point(
      Instant time,
      double settled,
      double reading,
      double low,
      double high,
      double air,
      double elevation) {}

  /**
   * The floor on a leg.
   *
   * @param from leaving
   * @param to arriving
   * @param pressure floor
   */
  public record Floor(Instant from, Instant to, double pressure) {}

  /**
   * Where the ceiling is judged.
   *
   * @param time when
   * @param pressure ceiling
   */
  public record Ceiling(Instant time, double pressure) {}

  /**
   * A night.
   *
   * @param sunset when it begins
   * @param sunrise when it ends
   */
  public record Night(Instant sunset, Instant sunrise) {}

  /** Copies the lists. */
  public Trace {
    points = List.copyOf(points);
    floors = List.copyOf(floors);
    ceilings = List.copyOf(ceilings);
    nights = List.copyOf(nights);
  }

  /** The trace of the tire at a position; empty lines where none is fitted. */
  public static Trace of(Advice advice, WheelPosition position, UnitSystem units) {
    Track track = advice.tracks().get(position);
    List<Point> points = new ArrayList<>();
    if (track != null) {
      TireSnapshot before = null;
      for (TireSnapshot moment : track.course()) {
        if (before != null && moment.seconds() - before.seconds() > LONGEST_PIECE) {
          points.add(gap(before));
        }
        points.add(point(moment, units));
        before = moment;
      }
    }
    List<Floor> floors = new ArrayList<>();
    List<Ceiling> ceilings = new ArrayList<>();
    List<Night> nights = new ArrayList<>();
    for (int i = 0; i < advice.stops().size(); i++) {
      StopAdvice stop = advice.stops().get(i);
      Itinerary.Visit visit = stop.stop().visit();
      nights(visit, nights);
      for (TireAdvice tire : stop.tires()) {
        TireAtStop at = tire.tire();
        if (!at.fitted().position().equals(position)) {
          continue;
        }
        if (i + 1 < advice.stops().size() && !Double.isNaN(at.limits().floor())) {
          Instant to = advice.stops().get(i + 1).stop().visit().arrive();
          floors.add(new Floor(visit.leave(), to, pressure(at.limits().floor(), units)));
        }
        TireSnapshot check = at.check();
        if (check != null
            && visit.firstStartOfDay()
            && at.cold()
            && !Double.isNaN(at.limits().ceiling())) {
          ceilings.add(
              new Ceiling(instant(check.seconds()), pressure(at.limits().ceiling(), units)));
        }
      }
    }
    return new Trace(position, points, floors, ceilings, nights);
  }

  /**
   * The tire with the lowest load margin anywhere on the way; the first one where none is known.
   */
  public static WheelPosition tightest(Advice advice) {
    return tightest(advice, position -> true)
        .orElseThrow(() -> new IllegalArgumentException("a rig without tires has no trace"));
  }

  /** The same of some tires; empty where the rig has none of them. */
  public static Optional<WheelPosition> tightest(Advice advice, Collection<WheelPosition> some) {
    return tightest(advice, some::contains);
  }

  private static Optional<WheelPosition> tightest(Advice advice, Predicate<WheelPosition> some) {
    WheelPosition tightest = null;
    double lowest = Double.POSITIVE_INFINITY;
    for (StopAdvice stop : advice.stops()) {
      for (TireAdvice tire : stop.tires()) {
        double margin = tire.tire().worstMargin();
        boolean asked = some.test(tire.tire().fitted().position());
        if (asked && (tightest == null || margin < lowest)) {
          tightest = tire.tire().fitted().position();
          lowest = Double.isNaN(margin) ? lowest : margin;
        }
      }
    }
    return Optional.ofNullable(tightest);
  }

  /** Breaks the lines where nothing is known for a while. */
  private static Point gap(TireSnapshot before) {
    double none = Double.NaN;
    return new Point(instant(before.seconds()), none, none, none, none, none, none);
  }

  private static Point point(TireSnapshot moment, UnitSystem units) {
    double spread = Quantile.NINETY_WITHIN * moment.readingSigma();
    return new Point(
        instant(moment.seconds()),
        pressure(moment.settled(), units),
        pressure(moment.reading(), units),
        pressure(moment.reading() - spread, units),
        pressure(moment.reading() + spread, units),
        shown(new Temperature(moment.airKelvins()), units),
        shown(new Elevation(moment.elevation()), units));
  }

  private static double pressure(double pascals, UnitSystem units) {
    return Double.isNaN(pascals) ? Double.NaN : shown(new GaugePressure(pascals), units);
  }

  private static double shown(Quantity quantity, UnitSystem units) {
    return quantity.in(units.unitOf(quantity.kind()));
  }

  private static Instant instant(double epochSeconds) {
    return Instant.ofEpochMilli(Math.round(epochSeconds * 1000));
  }

  private static void nights(Itinerary.Visit visit, List<Night> nights) {
    Coordinate place = visit.stop().coordinate();
    if (place == null) {
      return;
    }
    LocalDate last = visit.leave().atZone(visit.zone()).toLocalDate();
    for (LocalDate date = visit.arrive().atZone(visit.zone()).toLocalDate().minusDays(1);
        !date.isAfter(last);
        date = date.plusDays(1)) {
      var evening = Daylight.on(date, visit.zone(), place);
      var morning = Daylight.on(date.plusDays(1), visit.zone(), place);
      if (evening.isPresent() && morning.isPresent()) {
        Night night = new Night(evening.get().sunset(), morning.get().sunrise());
        boolean touches =
            night.sunset().isBefore(visit.leave().plusSeconds(1))
                && night.sunrise().isAfter(visit.arrive().minusSeconds(1));
        boolean known = nights.stream().anyMatch(other -> overlap(other, night));
        if (touches && !known) {
          nights.add(night);
        }
      }
    }
  }

  private static boolean overlap(Night a, Night b) {
    return a.sunset().isBefore(b.sunrise()) && b.sunset().isBefore(a.sunrise());
  }
}
