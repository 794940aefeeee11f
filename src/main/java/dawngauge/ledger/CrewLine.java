package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.advice.StopAdvice;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.CrewPlace;
import dawngauge.trip.Itinerary;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where the crew is, what is next and what has changed, in words.
 *
 * @param where where it is
 * @param next what comes next; empty at the end
 * @param changed what differs from this morning's plan; empty where nothing does
 */
public record CrewLine(String where, String next, String changed) {

  /** Changes of the air below this, in kelvin, are no news: half the error of a forecast day. */
  private static final double LEAST_CHANGE = 2;

  /** Later or earlier by less than this is on time; ours. */
  private static final Duration ON_TIME = Duration.ofMinutes(5);

  private static final int MOST_PLACES = 2;

  /**
   * Tells.
   *
   * @param place where the crew is
   * @param now what follows from the trip
   * @param morning what followed from it this morning, or null where that is not known
   */
  public static CrewLine of(
      CrewPlace place, Advice now, @Nullable Advice morning, UnitSystem units) {
    List<Itinerary.Visit> visits = now.stops().stream().map(stop -> stop.stop().visit()).toList();
    Itinerary.Visit at = visits.get(place.visit());
    boolean last = place.visit() == visits.size() - 1;
    Itinerary.Visit next = last ? at : visits.get(place.next(visits));
    String where;
    if (!place.there()) {
      where =
          last
              ? "Left " + at.stop().place() + " at " + clock(place.since(), at)
              : "On the way to " + next.stop().place() + " since " + clock(place.since(), at);
    } else {
      where =
          "At "
              + at.stop().place()
              + (place.noted() ? " since " + clock(place.since(), at) : ", not left yet");
    }
    String ahead = "";
    if (!last) {
      ahead =
          (place.there() ? "to leave " + clock(at.leave(), at) + "; next " : "there ")
              + (place.there() ? next.stop().place() + " " : "")
              + "about "
              + clock(next.arrive(), next);
    }
    return new CrewLine(where, ahead, morning == null ? "" : changed(place, now, morning, units));
  }

  private static String clock(Instant instant, Itinerary.Visit visit) {
    return Wording.clock(instant, visit.zone());
  }

  private static String changed(CrewPlace place, Advice now, Advice morning, UnitSystem units) {
    List<String> told = new ArrayList<>();
    int first = place.visit() + 1;
    int count = Math.min(now.stops().size(), morning.stops().size());
    if (first < count) {
      Instant planned = morning.stops().get(first).stop().visit().arrive();
      Instant expected = now.stops().get(first).stop().visit().arrive();
      Duration late = Duration.between(planned, expected);
      if (late.abs().compareTo(ON_TIME) >= 0) {
        told.add(
            Wording.span(late.abs())
                + (late.isNegative() ? " earlier" : " later")
                + " than this morning's plan");
      }
    }
    int places = 0;
    for (int i = first; i < count && places < MOST_PLACES; i++) {
      StopAdvice was = morning.stops().get(i);
      StopAdvice is = now.stops().get(i);
      double warmer = is.stop().airOnArrival() - was.stop().airOnArrival();
      String name = is.stop().visit().stop().place();
      if (was.mark() != is.mark()) {
        told.add(name + " now " + is.mark().word() + " (was " + was.mark().word() + ")");
        places++;
      } else if (Math.abs(warmer) >= LEAST_CHANGE) {
        told.add(
            name
                + " now "
                + units.format(new TemperatureDifference(Math.abs(warmer)))
                + (warmer < 0 ? " colder" : " warmer"));
        places++;
      }
    }
    return String.join("; ", told);
  }
}
