package dawngauge.advice;

import dawngauge.forecast.LoadChance;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.rules.Carrying;
import dawngauge.rules.WholeTrip;
import dawngauge.trip.Itinerary;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The chance that some tire has too little for its load somewhere on a trip, what is asked to be
 * set taken as done.
 *
 * @param chance 0 to 1; at least that where some tires are not known
 * @param notKnown tires of which it is not known at some stop or leg
 */
public record TripChance(double chance, int notKnown) {

  private record TireDay(String tire, long day) {}

  /** Of an advice; computed when asked for. */
  public static TripChance of(Advice advice) {
    Map<TireDay, WholeTrip.Moment> likeliest = new HashMap<>();
    Set<String> unknown = new HashSet<>();
    List<StopAdvice> stops = advice.stops();
    for (StopAdvice stop : stops.subList(0, Math.max(0, stops.size() - 1))) {
      Itinerary.Visit visit = stop.stop().visit();
      for (TireAdvice tire : stop.tires()) {
        TireAtStop at = tire.tire();
        String name = at.fitted().position().words();
        boolean here = add(visit, name, at, at.leaving(), at.leavingChance(), likeliest);
        boolean ahead =
            at.low() != null
                && add(visit, name, at, at.low().moment(), at.low().chance(), likeliest);
        if ((!here && !ahead && !visit.passes()) || tire.aheadUnknown()) {
          unknown.add(name);
        }
      }
    }
    return new TripChance(WholeTrip.chance(List.copyOf(likeliest.values())), unknown.size());
  }

  private static boolean add(
      Itinerary.Visit visit,
      String tire,
      TireAtStop at,
      @Nullable TireSnapshot moment,
      LoadChance chance,
      Map<TireDay, WholeTrip.Moment> likeliest) {
    Carrying carrying = at.limits().carrying();
    if (moment == null || carrying == null || Double.isNaN(chance.underFloor())) {
      return false;
    }
    Instant time = Instant.ofEpochSecond((long) moment.seconds());
    long day = time.atZone(visit.zone()).toLocalDate().toEpochDay();
    double under = chance.asCertified() ? 0 : chance.underFloor();
    WholeTrip.Moment now =
        new WholeTrip.Moment(
            tire,
            day,
            under,
            Math.hypot(moment.limitSigma(), carrying.needSigma()),
            moment.gaugeSigma(),
            moment.airReadSigma(),
            moment.airNowSigma());
    likeliest.merge(
        new TireDay(tire, day), now, (one, other) -> other.chance() > one.chance() ? other : one);
    return true;
  }
}
