package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Loads;
import dawngauge.trip.Provenance;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
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

  static String line(Trip trip, @Nullable Advice advice, UnitSystem units) {
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
    double meters = advice.stops().get(advice.stops().size() - 1).stop().visit().meters();
    parts.add(trip.route().stops().size() + " stops");
    parts.add(units.format(new Distance(meters)));
    for (Mark mark : List.of(Mark.HOLD, Mark.ADJUST)) {
      List<String> at = places.getOrDefault(mark, List.of());
      if (!at.isEmpty()) {
        parts.add(mark.word() + " at " + Wording.list(at));
      }
    }
    parts.add(lowestMargin(trip, advice));
    return String.join(" · ", parts.stream().filter(part -> !part.isEmpty()).toList());
  }

  private static String lowestMargin(Trip trip, Advice advice) {
    double lowest = Double.NaN;
    String where = "";
    for (StopAdvice stop : advice.stops()) {
      for (TireAdvice tire : stop.tires()) {
        double margin = tire.tire().worstMargin();
        if (!Double.isNaN(margin)
            && stop.stop().ahead() != null
            && (Double.isNaN(lowest) || margin < lowest)) {
          lowest = margin;
          where =
              trip.rig().shortForm(tire.tire().fitted().position())
                  + " after "
                  + stop.stop().visit().stop().place();
        }
      }
    }
    return Double.isNaN(lowest)
        ? ""
        : "lowest load margin " + Wording.signedPercent(lowest) + ", " + where;
  }

  static List<String> basis(Trip trip, @Nullable Advice advice, UnitSystem units) {
    List<String> lines = new ArrayList<>();
    lines.add(air(trip));
    if (advice == null) {
      return lines;
    }
    boolean estimated = false;
    boolean rows = false;
    boolean weighed = true;
    for (StopAdvice stop : advice.stops()) {
      for (TireAdvice tire : stop.tires()) {
        estimated = estimated || tire.tire().limits().estimated();
        rows = rows || !tire.tire().limits().estimated();
        Loads.Source source = tire.tire().limits().load().axle().source();
        weighed = weighed && source != Loads.Source.GAWR && source != Loads.Source.UNKNOWN;
      }
    }
    lines.add(
        "Loads: "
            + (weighed ? "from scale tickets" : "partly or wholly at GAWR, not weighed")
            + ". Capacity: "
            + (estimated && rows
                ? "makers' rows where typed, else estimated by the most cautious published form (e)"
                : estimated
                    ? "estimated by the most cautious published form (e)"
                    : "makers' rows as typed")
            + ".");
    lines.add(
        "Warm readings: our own model, inferred from few published figures; expect them within"
            + " their band in 9 of 10 cases if its spreads hold. Floor kept with "
            + units.format(new Ratio(advice.forecast().options().confidence()))
            + " confidence at each judged point. Each adjustment above is taken as done in what"
            + " follows it.");
    return lines;
  }

  private static String air(Trip trip) {
    Map<Provenance.Kind, Integer> counts = new EnumMap<>(Provenance.Kind.class);
    for (AmbientEntry entry : trip.ambient()) {
      counts.merge(entry.provenance().kind(), 1, Integer::sum);
    }
    List<String> parts = new ArrayList<>();
    counts.forEach((kind, count) -> parts.add(count + " " + kind.word()));
    return "Air temperatures: "
        + (parts.isEmpty() ? "none given" : Wording.list(parts) + " entries")
        + ".";
  }
}
