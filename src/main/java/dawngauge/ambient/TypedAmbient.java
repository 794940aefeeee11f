package dawngauge.ambient;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Temperature;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Provenance;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The temperatures that stand in the trip itself. Where a stop has several kinds, temperatures by
 * the hour win over one for the stay, and that over the day's low and high; where a forecast by the
 * hour ends, typical days of the same stop go on.
 */
public final class TypedAmbient implements AmbientSource {

  private final Trip trip;

  /** Answers from a trip. */
  public TypedAmbient(Trip trip) {
    this.trip = trip;
  }

  @Override
  public Outcome<Map<AmbientNeeds.Need, AirSeries>> answer(AmbientNeeds needs) {
    Map<AmbientNeeds.Need, AirSeries> answers = new HashMap<>();
    List<Problem> problems = new ArrayList<>();
    for (AmbientNeeds.Need need : needs.needs()) {
      Instant asOf = needs.needs().get(0).from();
      ProfilePoint point = need.point();
      Entered<Temperature> typed = point == null ? null : point.ambient();
      if (typed != null) {
        answers.put(need, new SteadyAir(typed, Provenance.TYPED, Sureness.ofTyped(need, asOf)));
        continue;
      }
      List<AmbientEntry> entries = trip.ambient().stream().filter(e -> isFor(e, need)).toList();
      if (!entries.isEmpty()) {
        Outcome<AirSeries> series = series(need, entries, asOf);
        problems.addAll(series.problems());
        series.value().ifPresent(found -> answers.put(need, found));
      }
    }
    return Outcome.of(answers, problems);
  }

  private static boolean isFor(AmbientEntry entry, AmbientNeeds.Need need) {
    Entered<Distance> along = entry.along();
    return entry.stop().equals(need.stopId())
        && (along == null ? need.isAtStop() : along.value().meters() == need.along());
  }

  private static Outcome<AirSeries> series(
      AmbientNeeds.Need need, List<AmbientEntry> entries, Instant asOf) {
    List<AmbientEntry> days = new ArrayList<>();
    AmbientEntry hourly = null;
    AmbientEntry steady = null;
    for (AmbientEntry entry : entries) {
      if (entry.figure() instanceof AmbientEntry.Hourly && hourly == null) {
        hourly = entry;
      } else if (entry.figure() instanceof AmbientEntry.Steady) {
        steady = entry;
      } else {
        days.add(entry);
      }
    }
    if (hourly != null && hourly.figure() instanceof AmbientEntry.Hourly figure) {
      AirSeries hours = new HourlyAir(figure, hourly.provenance(), Sureness.of(need, hourly, asOf));
      boolean seam =
          hourly.provenance().kind() == Provenance.Kind.FEED
              && !days.isEmpty()
              && days.get(0).provenance().kind() == Provenance.Kind.TYPICAL;
      return seam
          ? LowHighAir.of(need, days, asOf)
              .map(typical -> new BlendedSeries(hours, figure, typical))
          : Outcome.of(hours);
    }
    if (steady != null && steady.figure() instanceof AmbientEntry.Steady figure) {
      return Outcome.of(
          new SteadyAir(
              figure.temperature(), steady.provenance(), Sureness.of(need, steady, asOf)));
    }
    return LowHighAir.of(need, days, asOf);
  }
}
