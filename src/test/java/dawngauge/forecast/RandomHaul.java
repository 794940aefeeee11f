package dawngauge.forecast;

import static dawngauge.testdata.StopBuilder.stop;

import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.StopBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * A haul drawn by lot, to be changed in one thing and forecast again.
 *
 * @param start when it leaves
 * @param places stops; the first is left at the start
 * @param legs between them
 * @param psi cold reading before the start
 * @param axlePounds load of the axle
 * @param loss air lost a day, or null for permeation
 * @param us whether it is typed in U.S. units
 */
record RandomHaul(
    Instant start,
    List<Place> places,
    List<Way> legs,
    double psi,
    double axlePounds,
    @Nullable String loss,
    boolean us) {

  /** A stop; a stay of 0 is a place passed. Air that swings is typed for two hours. */
  record Place(
      String id, double celsius, double swing, double meters, long minutes, boolean known) {

    Place warmer(double kelvins) {
      return new Place(id, celsius + kelvins, swing, meters, minutes, known);
    }

    Place higher(double more) {
      return new Place(id, celsius, swing, meters + more, minutes, known);
    }

    Place unknown() {
      return new Place(id, celsius, swing, meters, minutes, false);
    }
  }

  /** A leg. */
  record Way(double miles, double mph) {}

  RandomHaul {
    places = List.copyOf(places);
    legs = List.copyOf(legs);
  }

  static RandomHaul drawn(Random random) {
    int stops = 3 + random.nextInt(5);
    List<Place> places = new ArrayList<>();
    List<Way> legs = new ArrayList<>();
    for (int i = 0; i < stops; i++) {
      places.add(
          new Place(
              "stop " + i,
              -25 + 60 * random.nextDouble(),
              random.nextBoolean() ? 0 : 10 * random.nextDouble(),
              -50 + 3000 * random.nextDouble(),
              1 + random.nextInt(600),
              true));
      legs.add(new Way(5 + 250 * random.nextDouble(), 35 + 35 * random.nextDouble()));
    }
    legs.remove(stops - 1);
    Instant start = Instant.parse("2027-05-01T00:00:00Z").plusSeconds(random.nextInt(86_400));
    double psi = 70 + 15 * random.nextDouble();
    return new RandomHaul(
        start, places, legs, psi, 3500 + 2000 * random.nextDouble(), "0 psi", false);
  }

  RandomHaul with(int index, Place place) {
    List<Place> changed = new ArrayList<>(places);
    changed.set(index, place);
    return new RandomHaul(start, changed, legs, psi, axlePounds, loss, us);
  }

  RandomHaul heavier(double factor) {
    return new RandomHaul(start, places, legs, psi, axlePounds * factor, loss, us);
  }

  RandomHaul shifted(Duration time) {
    return new RandomHaul(start.plus(time), places, legs, psi, axlePounds, loss, us);
  }

  RandomHaul losing(@Nullable String aDay) {
    return new RandomHaul(start, places, legs, psi, axlePounds, aDay, us);
  }

  RandomHaul inUsUnits() {
    return new RandomHaul(start, places, legs, psi, axlePounds, loss, true);
  }

  /** A place passed on a leg, at the leg's own height, with no air of its own. */
  RandomHaul passing(int leg, double part) {
    Place from = places.get(leg);
    Place to = places.get(leg + 1);
    Way way = legs.get(leg);
    List<Place> more = new ArrayList<>(places);
    more.add(
        leg + 1,
        new Place(
            "passed " + from.id + part,
            0,
            0,
            from.meters + part * (to.meters - from.meters),
            0,
            false));
    List<Way> cut = new ArrayList<>(legs);
    cut.set(leg, new Way(way.miles * part, way.mph));
    cut.add(leg + 1, new Way(way.miles * (1 - part), way.mph));
    return new RandomHaul(start, more, cut, psi, axlePounds, loss, us);
  }

  Trip trip() {
    RigBuilder rig =
        RigBuilder.trailer()
            .losing(loss)
            .weighed(us ? text(axlePounds, "lb") : text(axlePounds * 0.45359237, "kg"));
    Trips trips = Trips.of(rig);
    for (int i = 0; i < places.size(); i++) {
      if (i > 0) {
        Way way = legs.get(i - 1);
        trips.leg(
            us ? text(way.miles, "mi") : text(way.miles * 1.609344, "km"),
            us ? text(way.mph, "mph") : text(way.mph * 1.609344, "km/h"));
      }
      trips.stop(stopOf(places.get(i), i == 0));
    }
    String reading = us ? text(psi, "psi") : text(psi * 6.894757293168361, "kPa");
    return trips.readAll(start.minusSeconds(600).toString(), reading).trip();
  }

  private StopBuilder stopOf(Place place, boolean first) {
    StopBuilder stop = stop(place.id);
    stop.elevation(us ? text(place.meters / 0.3048, "ft") : text(place.meters, "m"));
    if (first) {
      stop.leaves(start.toString());
    } else {
      stop.stays(Duration.ofMinutes(place.minutes));
    }
    if (place.known && place.swing == 0) {
      stop.steady(temperature(place.celsius));
    } else if (place.known) {
      stop.hour(start.toString(), temperature(place.celsius));
      stop.hour(
          start.plus(Duration.ofHours(7)).toString(), temperature(place.celsius + place.swing));
    }
    return stop;
  }

  private String temperature(double celsius) {
    return us ? text(celsius * 9 / 5 + 32, "°F") : text(celsius, "°C");
  }

  private static String text(double number, String unit) {
    return String.format(Locale.ROOT, "%.12f %s", number, unit);
  }
}
