package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.advice.OfferAdvice;
import dawngauge.advice.Reason;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.ambient.TypicalTemperatures;
import dawngauge.explain.Terms;
import dawngauge.forecast.LegLow;
import dawngauge.forecast.LoadChance;
import dawngauge.forecast.StopForecast;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Mass;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Air;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LoadChange;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Provenance;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Makes the lines of the stops. */
final class StopLines {

  /** Lower chances are not told apart. */
  private static final double LEAST_CHANCE = 0.01;

  private static final String CHANCE = "chance of too little air before the next stop: ";

  /** A stop at which no tire has a chance of it that is told. */
  static final String NO_CHANCE = CHANCE + "under 1 %";

  private final Trip trip;
  private final Advice advice;
  private final UnitSystem units;
  private final @Nullable WheelPosition only;
  private final TireRows rows;

  StopLines(Trip trip, Advice advice, UnitSystem units, @Nullable WheelPosition only) {
    this.trip = trip;
    this.advice = advice;
    this.units = units;
    this.only = only;
    this.rows = new TireRows(trip, units);
  }

  StopLine of(StopAdvice stop) {
    StopForecast forecast = stop.stop();
    Itinerary.Visit visit = forecast.visit();
    boolean first = visit.index() == 0;
    boolean last = forecast.ahead() == null;
    List<TireAdvice> tires =
        stop.tires().stream()
            .filter(t -> only == null || t.tire().fitted().position().equals(only))
            .toList();
    return new StopLine(
        true,
        newDay(visit),
        visit.index() + 1,
        arrive(visit),
        (last && !moreStops(visit)) || visit.passes() ? "" : leave(visit),
        zone(visit),
        visit.stop().place(),
        visit.stop().kind().word(),
        Double.isNaN(forecast.elevation())
            ? "elevation not known"
            : units.format(new Elevation(forecast.elevation())),
        air(forecast) + origin(visit),
        forecast.airGiven() == null ? "" : forecast.airGiven().in(units),
        hose(visit.stop().air()),
        tires.stream().map(TireAdvice::mark).reduce(Mark.CLEAR, Mark::stronger),
        rows(forecast, tires),
        visit.passes() || last ? "" : chance(tires),
        new Cards(trip, units).of(stop, tires),
        tasks(stop, tires),
        visit.passes() || first ? "" : rows.beside(tires),
        stop.routine().stream().map(habit -> habit.text().in(units)).toList(),
        loads(stop),
        leg(forecast),
        stop.legCautions().stream().map(caution -> caution.in(units)).toList());
  }

  /** The figures of all tires at a stop. */
  List<StopLine.TireRow> rows(StopAdvice stop) {
    return rows(stop.stop(), stop.tires());
  }

  private List<StopLine.TireRow> rows(StopForecast forecast, List<TireAdvice> tires) {
    return forecast.visit().passes() ? List.of() : rows.of(tires, forecast.ahead() == null);
  }

  /** The clock on arrival; empty at the start. */
  static String arrive(Itinerary.Visit visit) {
    return visit.index() == 0 ? "" : Wording.clock(visit.arrive(), visit.zone());
  }

  /** The likeliest tire to have too little for its load before the next stop. */
  private String chance(List<TireAdvice> tires) {
    double highest = -1;
    String whose = "";
    int unknown = 0;
    for (TireAdvice tire : tires) {
      if (tire.aheadUnknown()) {
        unknown++;
        continue;
      }
      LegLow low = tire.tire().low();
      double chance = -1;
      for (LoadChance here :
          low == null
              ? List.of(tire.tire().leavingChance())
              : List.of(tire.tire().leavingChance(), low.chance())) {
        chance = here.asCertified() ? Math.max(0, chance) : Math.max(here.underFloor(), chance);
      }
      unknown += chance >= 0 ? 0 : 1;
      if (chance > highest) {
        highest = chance;
        whose = trip.rig().shortForm(tire.tire().fitted().position());
      }
    }
    String missing = unknown == 0 ? "" : "; not known for " + unknown;
    return tires.isEmpty()
        ? ""
        : CHANCE
            + (highest < 0
                ? "not known"
                : highest < LEAST_CHANCE
                    ? "under 1 %"
                    : "at most " + units.format(new Ratio(highest)) + ", " + whose)
            + (highest < 0 ? "" : missing);
  }

  private boolean moreStops(Itinerary.Visit visit) {
    return visit.index() + 1 < trip.route().stops().size();
  }

  /** The clock on leaving, "09:20+1" where that is on the next day. */
  static String leave(Itinerary.Visit visit) {
    long days =
        visit.index() == 0 ? 0 : Wording.daysBetween(visit.arrive(), visit.leave(), visit.zone());
    return Wording.clock(visit.leave(), visit.zone()) + (days == 0 ? "" : "+" + days);
  }

  private String newDay(Itinerary.Visit visit) {
    return newDay(advice, visit.index());
  }

  /** Heading of the day of a stop, where it is the first of one; else empty. */
  static String newDay(Advice advice, int index) {
    String day = day(advice.stops().get(index).stop().visit());
    return index > 0 && day.equals(day(advice.stops().get(index - 1).stop().visit())) ? "" : day;
  }

  /** A stop stands under the day on which the rig arrives; the first under that of its start. */
  private static String day(Itinerary.Visit visit) {
    return Wording.day(visit.index() == 0 ? visit.leave() : visit.arrive(), visit.zone());
  }

  /** Also where the clocks change while the rig stands. */
  String zone(Itinerary.Visit visit) {
    String leaving = Wording.zone(visit.leave(), visit.zone());
    if (visit.index() == 0) {
      return leaving;
    }
    String arriving = Wording.zone(visit.arrive(), visit.zone());
    if (!arriving.equals(leaving)) {
      return arriving + ", leaving " + leaving;
    }
    Itinerary.Visit before = advice.stops().get(visit.index() - 1).stop().visit();
    return leaving.equals(Wording.zone(before.leave(), before.zone())) ? "" : leaving;
  }

  /** Where the air came from, unless it was typed. */
  private String origin(Itinerary.Visit visit) {
    List<String> kinds =
        trip.ambient().stream()
            .filter(entry -> entry.isAtStop() && entry.stop().equals(visit.stop().id()))
            .map(AmbientEntry::provenance)
            .filter(provenance -> provenance.kind() != Provenance.Kind.TYPED)
            .sorted(Comparator.comparing(Provenance::kind))
            .map(StopLines::word)
            .distinct()
            .toList();
    return kinds.isEmpty() ? "" : " (" + String.join(", then ", kinds) + ")";
  }

  private static String word(Provenance provenance) {
    String kind = provenance.kind().word();
    return TypicalTemperatures.isRough(provenance) ? kind + ", rough" : kind;
  }

  private String air(StopForecast forecast) {
    String arriving = temperature(forecast.airOnArrival());
    String leaving = temperature(forecast.airOnLeaving());
    boolean once = forecast.visit().index() == 0 || forecast.visit().passes();
    if (once || arriving.equals(leaving)) {
      return leaving.isEmpty() ? "temperature not known" : leaving;
    } else if (arriving.isEmpty() || leaving.isEmpty()) {
      return (arriving.isEmpty() ? "not known" : arriving)
          + " → "
          + (leaving.isEmpty() ? "not known" : leaving);
    }
    return units.number(new Temperature(forecast.airOnArrival())) + " → " + leaving;
  }

  /** The same without unit, "31→45", a dot for what is not known. */
  static String briefAir(StopForecast forecast, UnitSystem units) {
    String arriving = brief(forecast.airOnArrival(), units);
    String leaving = brief(forecast.airOnLeaving(), units);
    boolean once = forecast.visit().index() == 0 || forecast.visit().passes();
    return once || arriving.equals(leaving) ? leaving : arriving + "→" + leaving;
  }

  private static String brief(double kelvins, UnitSystem units) {
    return Double.isNaN(kelvins) ? StopGrid.NOT_KNOWN : units.number(new Temperature(kelvins));
  }

  private String temperature(double kelvins) {
    return Double.isNaN(kelvins) ? "" : units.format(new Temperature(kelvins));
  }

  /** Never the bare word air, which stands for its temperature here too. */
  private String hose(Air air) {
    if (!air.available()) {
      return trip.rig().compressorTop() == null ? "no hose" : "own compressor only";
    }
    return air.upTo() == null
        ? "hose"
        : "hose up to "
            + Wording.pressure(air.upTo().value().pascals(), units)
            + " "
            + units.unitOf(QuantityKind.GAUGE_PRESSURE).symbol();
  }

  private List<StopLine.Task> tasks(StopAdvice stop, List<TireAdvice> tires) {
    record Key(Mark mark, String text) {}
    Map<Key, List<String>> same = new LinkedHashMap<>();
    for (Mark mark : List.of(Mark.HOLD, Mark.ADJUST, Mark.RECHECK, Mark.CLEAR)) {
      for (TireAdvice tire : tires) {
        for (Reason reason : tire.reasons()) {
          boolean calmed = mark == Mark.CLEAR && tire.mark() == Mark.HOLD;
          if (reason.mark() == mark && !calmed) {
            same.computeIfAbsent(new Key(mark, reason.text().in(units)), key -> new ArrayList<>())
                .add(trip.rig().shortForm(tire.tire().fitted().position()));
          }
        }
      }
    }
    List<StopLine.Task> tasks = new ArrayList<>();
    for (OfferAdvice offer : stop.offers()) {
      if (offer.mark() == Mark.HOLD) {
        tasks.add(holdIfTaken(offer));
      }
    }
    List<String> all = names(tires);
    same.forEach(
        (key, names) -> tasks.add(new StopLine.Task(key.mark, Wording.who(names, all), key.text)));
    return tasks;
  }

  private List<String> names(List<TireAdvice> tires) {
    return tires.stream()
        .map(tire -> trip.rig().shortForm(tire.tire().fitted().position()))
        .toList();
  }

  private List<String> loads(StopAdvice stop) {
    List<String> lines = new ArrayList<>();
    for (LoadChange change : stop.stop().visit().stop().loadChanges()) {
      if (!change.offered()) {
        boolean on = change.weight().value().kilograms() >= 0;
        Mass amount = new Mass(Math.abs(change.weight().value().kilograms()));
        lines.add(
            (on ? "takes on " : "sets down ")
                + change.what()
                + ", "
                + units.format(amount)
                + " "
                + change.source().word());
      }
    }
    for (OfferAdvice offer : stop.offers()) {
      if (offer.mark() == Mark.CLEAR) {
        List<TireAdvice> held =
            stop.tires().stream().filter(tire -> tire.mark() == Mark.HOLD).toList();
        lines.add(
            Terms.POSSIBLE_PICKUP
                + " of "
                + offered(offer)
                + (held.isEmpty()
                    ? ": could be taken, no rating is passed"
                    : ": not judged while " + String.join(" ", names(held)) + " must not roll"));
      }
    }
    return lines;
  }

  private String offered(OfferAdvice offer) {
    return offer.offer().what()
        + ", "
        + units.format(offer.offer().weight().value())
        + " "
        + offer.offer().source().word();
  }

  private StopLine.Task holdIfTaken(OfferAdvice offer) {
    Mass most = offer.most();
    String lighter =
        most == null || most.kilograms() < 1
            ? "none of it can be taken"
            : "at most " + roundedDown(most) + " can be taken";
    return new StopLine.Task(
        Mark.HOLD,
        Terms.POSSIBLE_PICKUP + " of " + offered(offer) + ", if taken",
        offer.reasons().get(0).text().in(units) + "; " + lighter);
  }

  /** A figure shown as allowed must be allowed. */
  private String roundedDown(Mass most) {
    Unit unit = units.unitOf(QuantityKind.MASS);
    return units.format(Mass.of(Math.floor(most.in(unit)), unit));
  }

  /** The top speed, unless it is the one that is assumed where none is typed. */
  private String top(Itinerary.Drive drive) {
    double top = drive.topMetersPerSecond();
    boolean usual = drive.topAssumed() && top <= Itinerary.LEAST_ASSUMED_TOP.si();
    return usual
        ? ""
        : ", top " + units.number(new Speed(top)) + (drive.topAssumed() ? " assumed" : "");
  }

  private String leg(StopForecast forecast) {
    Itinerary.Visit visit = forecast.visit();
    if (!moreStops(visit)) {
      return "";
    }
    List<String> parts = new ArrayList<>();
    Itinerary.Drive drive = forecast.ahead();
    if (drive == null) {
      parts.add("when it gets there is not known: nothing is forecast from here on");
      return String.join(" · ", parts);
    }
    if (drive.lengthKnown()) {
      parts.add(units.format(new Distance(drive.meters())));
    }
    parts.add(Wording.span(Duration.ofMillis(Math.round(drive.seconds() * 1000))));
    if (drive.metersPerSecond() > 0) {
      parts.add(units.format(new Speed(drive.metersPerSecond())) + top(drive));
    }
    for (ProfilePoint point : drive.leg().profile()) {
      parts.add(
          (point.name() == null ? "a point at " : point.name() + " ")
              + units.format(point.elevation().value()));
    }
    if (!forecast.airAheadKnown()) {
      parts.add("no temperature: leg not checked");
    }
    return String.join(" · ", parts);
  }
}
