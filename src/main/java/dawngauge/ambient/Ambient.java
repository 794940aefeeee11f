package dawngauge.ambient;

import dawngauge.physics.StandardAtmosphere;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The air along the whole way. At a stop it is that stop's own series; on a leg it is taken between
 * the neighbouring places, linear in the distance, and where the ground is higher than the straight
 * line between them colder by the standard atmosphere's 6.5 K a kilometer, where it is lower
 * warmer. But about dawn cold air lies in valleys: below both places it then gets no warmer.
 */
public final class Ambient {

  /**
   * Added to the spread where a stop without temperature is bridged, in kelvin; ours, no source.
   */
  private static final double BRIDGE_SIGMA = 5;

  private record Station(
      int stop,
      boolean atStop,
      double meters,
      double elevation,
      DawnHours dawn,
      @Nullable AirSeries series) {}

  private final List<Station> stations;

  /** The series of each stop. */
  private final @Nullable AirSeries[] byStop;

  private Ambient(List<Station> stations) {
    this.stations = List.copyOf(stations);
    byStop = new AirSeries[stations.stream().mapToInt(Station::stop).max().orElse(-1) + 1];
    for (Station station : stations) {
      if (station.atStop) {
        byStop[station.stop] = station.series;
      }
    }
  }

  /**
   * Puts the answers of several sources together, the first source that has an answer wins. Stops
   * that nobody answered are reported and unknown.
   */
  public static Outcome<Ambient> of(AmbientNeeds needs, List<AmbientSource> sources) {
    List<Problem> problems = new ArrayList<>();
    Map<AmbientNeeds.Need, AirSeries> answers = new HashMap<>();
    for (AmbientSource source : sources) {
      Outcome<Map<AmbientNeeds.Need, AirSeries>> outcome = source.answer(needs);
      problems.addAll(outcome.problems());
      outcome.value().ifPresent(found -> found.forEach(answers::putIfAbsent));
    }
    List<Station> stations = new ArrayList<>();
    for (AmbientNeeds.Need need : needs.needs()) {
      AirSeries series = answers.get(need);
      if (series != null && Double.isNaN(need.elevationMeters())) {
        series = null;
        problems.add(Problem.of(ProblemCode.NO_ELEVATION, need.place()));
      } else if (series == null && need.required()) {
        problems.add(Problem.of(ProblemCode.NO_AMBIENT, need.place()));
      }
      if (series != null || need.required()) {
        stations.add(
            new Station(
                need.stop(),
                need.isAtStop(),
                need.meters(),
                need.elevationMeters(),
                DawnHours.of(need),
                series));
      }
    }
    return Outcome.of(new Ambient(stations), problems);
  }

  /**
   * The same air under another weather.
   *
   * @param after epoch seconds of the last reading, up to which the air stays as it was
   */
  public Ambient under(WhatIf whatIf, double after) {
    return new Ambient(
        stations.stream()
            .map(
                s ->
                    s.series == null || !whatIf.changes(s.stop)
                        ? s
                        : new Station(
                            s.stop,
                            s.atStop,
                            s.meters,
                            s.elevation,
                            s.dawn,
                            new OtherAir(s.series, whatIf, after)))
            .toList());
  }

  /** The series given for a stop, or null. */
  public @Nullable AirSeries seriesAt(int stop) {
    return stop < byStop.length ? byStop[stop] : null;
  }

  /** Air at a stop where the rig stands. */
  public Air atStop(int stop, double epochSeconds) {
    AirSeries series = seriesAt(stop);
    return series == null ? Air.UNKNOWN : series.at(epochSeconds);
  }

  /**
   * Air on the way.
   *
   * @param meters way from the start of the route
   * @param elevationMeters height of the ground there
   * @param epochSeconds when
   */
  public Air onTheWay(double meters, double elevationMeters, double epochSeconds) {
    Station before = null;
    Station after = null;
    boolean bridged = false;
    boolean here = false;
    for (int i = lastKnownBy(meters); i < stations.size(); i++) {
      Station station = stations.get(i);
      if (station.meters <= meters) {
        bridged = station.series == null;
        before = station.series == null ? before : station;
        here = !bridged && station.meters == meters;
      } else {
        if (station.series != null) {
          after = station;
          break;
        }
        bridged = true;
      }
    }
    AirSeries first = before == null ? null : before.series;
    if (before == null || first == null) {
      return Air.UNKNOWN;
    }
    Air start = first.at(epochSeconds);
    AirSeries second = after == null ? null : after.series;
    if (here) {
      return start;
    }
    if (after == null || second == null) {
      return Air.UNKNOWN;
    }
    double part = (meters - before.meters) / (after.meters - before.meters);
    Air between = start.towards(second.at(epochSeconds), part);
    double straight = before.elevation + part * (after.elevation - before.elevation);
    boolean dawn = (part < 0.5 ? before : after).dawn.contain(epochSeconds);
    double lowest = dawn ? Math.min(before.elevation, after.elevation) : elevationMeters;
    double counted = Math.max(elevationMeters, lowest);
    return new Air(
        between.kelvins() - StandardAtmosphere.LAPSE_RATE * (counted - straight),
        bridged ? Math.hypot(between.sigma(), BRIDGE_SIGMA) : between.sigma(),
        between.coldSide(),
        bridged);
  }

  /** Index of the last known place up to a way; 0 where there is none. */
  private int lastKnownBy(double meters) {
    int low = 0;
    int high = stations.size();
    while (low < high) {
      int middle = (low + high) / 2;
      if (stations.get(middle).meters <= meters) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    int found = low - 1;
    while (found > 0 && stations.get(found).series == null) {
      found--;
    }
    return Math.max(0, found);
  }

  /** Every abrupt change of any series, in epoch seconds. */
  public List<Double> breakpoints() {
    List<Double> all = new ArrayList<>();
    for (Station station : stations) {
      if (station.series != null) {
        all.addAll(station.series.breakpoints());
      }
    }
    return all;
  }
}
