package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.forecast.TireAtStop;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.UnitSystem;
import dawngauge.rules.Loads;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Leg;
import dawngauge.trip.Provenance;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The lines above and below a ledger. */
final class Summary {

  private Summary() {}

  static String days(Advice advice) {
    Itinerary.Visit first = advice.stops().get(0).stop().visit();
    Itinerary.Visit last = advice.stops().get(advice.stops().size() - 1).stop().visit();
    String from = Wording.shortDay(first.leave(), first.zone());
    String to = Wording.shortDay(last.arrive(), last.zone());
    String year = String.valueOf(last.arrive().atZone(last.zone()).getYear());
    return from.equals(to) ? from + " " + year : from + " to " + to + " " + year;
  }

  static String line(
      Trip trip, @Nullable Advice advice, UnitSystem units, @Nullable WheelPosition only) {
    if (advice == null) {
      return "No time on the way is known, so nothing is forecast.";
    }
    Map<Mark, List<String>> places = new EnumMap<>(Mark.class);
    for (StopAdvice stop : advice.stops()) {
      places
          .computeIfAbsent(stop.mark(), key -> new ArrayList<>())
          .add(stop.stop().visit().stop().place());
    }
    List<String> parts = new ArrayList<>();
    parts.add(trip.route().stops().size() + " stops");
    parts.add(distance(trip, units));
    for (Mark mark : List.of(Mark.HOLD, Mark.ADJUST, Mark.UNKNOWN)) {
      List<String> at = places.getOrDefault(mark, List.of());
      if (!at.isEmpty()) {
        parts.add(mark.word() + " at " + Wording.list(at));
      }
    }
    int untimed = trip.route().stops().size() - advice.stops().size();
    if (untimed > 0) {
      parts.add("no time known at the last " + (untimed == 1 ? "stop" : untimed + " stops"));
    }
    parts.add(lowest(trip, advice).map(Lowest::text).orElse(""));
    if (only != null) {
      parts.add("all this of the whole rig; below only " + trip.rig().shortForm(only));
    }
    return String.join(" · ", parts.stream().filter(part -> !part.isEmpty()).toList());
  }

  /** Length of the route; what is known of it where a leg's length is missing. */
  private static String distance(Trip trip, UnitSystem units) {
    double meters = 0;
    boolean whole = true;
    for (Leg leg : trip.route().legs()) {
      if (leg.distance() == null) {
        whole = false;
      } else {
        meters += leg.distance().value().meters();
      }
    }
    if (!whole && meters == 0) {
      return "distance not known";
    }
    return (whole ? "" : "at least ") + units.format(new Distance(meters));
  }

  /**
   * The lowest load margin on the way.
   *
   * @param stop the stop after which it is, counted from 0
   * @param position of the tire
   * @param text margin, tire and place
   */
  record Lowest(int stop, WheelPosition position, String text) {}

  /** The lowest load margin on the way; empty where none is known. */
  static Optional<Lowest> lowest(Trip trip, Advice advice) {
    boolean allKnown = advice.stops().size() == trip.route().stops().size();
    double lowest = Double.NaN;
    int where = 0;
    WheelPosition whose = null;
    for (StopAdvice stop : advice.stops()) {
      for (TireAdvice tire : stop.tires()) {
        double margin = tire.tire().worstMargin();
        allKnown &= stop.stop().ahead() == null || !Double.isNaN(margin);
        if (!Double.isNaN(margin)
            && stop.stop().ahead() != null
            && (Double.isNaN(lowest) || margin < lowest)) {
          lowest = margin;
          where = stop.stop().visit().index();
          whose = tire.tire().fitted().position();
        }
      }
    }
    return whose == null
        ? Optional.empty()
        : Optional.of(
            new Lowest(
                where,
                whose,
                (allKnown ? "lowest load margin " : "lowest known load margin ")
                    + Wording.signedPercent(lowest)
                    + ", "
                    + trip.rig().shortForm(whose)
                    + " after "
                    + trip.route().stops().get(where).place()));
  }

  static List<String> basis(Trip trip, @Nullable Advice advice, UnitSystem units) {
    List<String> lines = new ArrayList<>();
    lines.add(air(trip));
    if (advice == null) {
      return lines;
    }
    Set<String> loads = new LinkedHashSet<>();
    Set<String> capacities = new LinkedHashSet<>();
    for (StopAdvice stop : advice.stops()) {
      for (TireAdvice tire : stop.tires()) {
        loads.add(load(tire.tire().limits().load().axle().basis()));
        capacities.add(capacity(tire.tire()));
      }
    }
    if (!loads.isEmpty()) {
      lines.add(
          "Loads: "
              + Wording.list(List.copyOf(loads))
              + ". Capacity: "
              + Wording.list(List.copyOf(capacities))
              + ".");
    }
    lines.add(
        "Warm readings: our own model, inferred from few published figures; expect them within"
            + " their band in 9 of 10 cases if its spreads hold. Load carried with "
            + units.format(new Ratio(advice.forecast().options().confidence()))
            + " confidence at each judged point. Each adjustment above is taken as done in what"
            + " follows it.");
    return lines;
  }

  private static String load(Loads.Basis basis) {
    if (basis.weighed()) {
      return "from scale tickets";
    }
    return basis == Loads.Basis.NOT_WEIGHED
        ? "79 % of GAWR, give or take 11, where not weighed"
        : "not known where neither weighed nor rated";
  }

  private static String capacity(TireAtStop tire) {
    if (tire.fitted().capacity() == null) {
      return "not known where the sidewall's figures are missing";
    }
    return tire.limits().estimated()
        ? "by estimate, the most cautious published form (e)"
        : "by makers' rows as typed";
  }

  private static String air(Trip trip) {
    Map<Provenance.Kind, Integer> counts = new EnumMap<>(Provenance.Kind.class);
    for (AmbientEntry entry : trip.ambient()) {
      counts.merge(entry.provenance().kind(), 1, Integer::sum);
    }
    List<String> parts = new ArrayList<>();
    counts.forEach((kind, count) -> parts.add(count + " " + kind.word()));
    String entries = trip.ambient().size() == 1 ? " entry" : " entries";
    return "Air temperatures: "
        + (parts.isEmpty() ? "none given" : Wording.list(parts) + entries)
        + ".";
  }
}
