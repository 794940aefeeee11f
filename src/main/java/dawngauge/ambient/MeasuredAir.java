package dawngauge.ambient;

import dawngauge.geo.Coordinate;
import dawngauge.physics.StandardAtmosphere;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * The air that was measured near a stop, beside the air that was expected there.
 *
 * @param stop index of the stop
 * @param place its name
 * @param time when the rig left
 * @param zone whose clock is shown there
 * @param expectedKelvins what the trip expected; NaN if not known
 * @param measuredKelvins what was measured, at the height of the stop; NaN if nothing was
 * @param source who measured it; empty if nothing was
 * @param problems what could not be asked or answered
 */
public record MeasuredAir(
    int stop,
    String place,
    Instant time,
    ZoneId zone,
    double expectedKelvins,
    double measuredKelvins,
    String source,
    List<Problem> problems) {

  /** A measurement farther away in time says nothing of the air then; ours, no source. */
  private static final Duration NEAR = Duration.ofHours(2);

  /** Copies the list. */
  public MeasuredAir {
    problems = List.copyOf(problems);
  }

  /**
   * Asks for the air at each stop that the rig has left.
   *
   * @param service asks what was measured near one place
   * @param now stops left later are not asked for
   * @param progress told before each question
   */
  public static List<MeasuredAir> of(
      Trip trip,
      Itinerary itinerary,
      Function<WeatherQuery, Outcome<WeatherAnswer>> service,
      Instant now,
      WeatherFill.Progress progress) {
    Ambient expected =
        Ambient.of(AmbientNeeds.of(trip, itinerary), List.of(new TypedAmbient(trip))).get();
    List<Itinerary.Visit> left =
        itinerary.visits().stream()
            .filter(visit -> !visit.leave().isAfter(now) && visit.stop().coordinate() != null)
            .toList();
    List<MeasuredAir> all = new ArrayList<>();
    for (Itinerary.Visit visit : left) {
      if (!progress.next(all.size(), left.size(), visit.stop().place())) {
        break;
      }
      double kelvins = expected.atStop(visit.index(), seconds(visit.leave())).kelvins();
      all.add(at(visit, kelvins, service));
    }
    return all;
  }

  private static MeasuredAir at(
      Itinerary.Visit visit,
      double expected,
      Function<WeatherQuery, Outcome<WeatherAnswer>> service) {
    Coordinate place = visit.stop().coordinate();
    var elevation = visit.stop().elevation();
    double ground = elevation == null ? Double.NaN : elevation.value().meters();
    if (place == null) {
      throw new IllegalArgumentException(visit.stop().id() + " has no place");
    }
    Instant time = visit.leave();
    Outcome<WeatherAnswer> outcome =
        service.apply(new WeatherQuery(place, ground, time.minus(NEAR), time.plus(NEAR)));
    WeatherAnswer answer = outcome.valueOrNull();
    double measured = answer == null ? Double.NaN : between(answer.temperatures(), time);
    if (answer != null && !Double.isNaN(ground) && !Double.isNaN(answer.elevationMeters())) {
      measured -= StandardAtmosphere.LAPSE_RATE * (ground - answer.elevationMeters());
    }
    return new MeasuredAir(
        visit.index(),
        visit.stop().place(),
        time,
        visit.zone(),
        expected,
        measured,
        answer == null || Double.isNaN(measured) ? "" : answer.service(),
        outcome.problems());
  }

  /** The temperature at a time by the measurements around it; NaN where none is near. */
  private static double between(List<WeatherAnswer.At> all, Instant time) {
    WeatherAnswer.At before = null;
    for (WeatherAnswer.At at : all) {
      if (!at.time().isBefore(time)) {
        boolean near = Duration.between(time, at.time()).compareTo(NEAR) <= 0;
        if (before == null || !isNear(before, time)) {
          return near ? at.kelvins() : Double.NaN;
        } else if (!near) {
          return before.kelvins();
        }
        double length = seconds(at.time()) - seconds(before.time());
        double part = (seconds(time) - seconds(before.time())) / length;
        return before.kelvins() + part * (at.kelvins() - before.kelvins());
      }
      before = at;
    }
    return before != null && isNear(before, time) ? before.kelvins() : Double.NaN;
  }

  private static boolean isNear(WeatherAnswer.At before, Instant time) {
    return Duration.between(before.time(), time).compareTo(NEAR) <= 0;
  }

  private static double seconds(Instant time) {
    return time.toEpochMilli() / 1000.0;
  }
}
