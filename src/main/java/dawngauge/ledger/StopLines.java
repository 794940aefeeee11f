package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.advice.OfferAdvice;
import dawngauge.advice.Reason;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.forecast.Limits;
import dawngauge.forecast.Moment;
import dawngauge.forecast.Setting;
import dawngauge.forecast.StopForecast;
import dawngauge.forecast.TireAtStop;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Air;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LoadChange;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Makes the lines of the stops. */
final class StopLines {

  private static final String NONE = "–";

  /** Two-sided 90 %. */
  private static final double NINETY = 1.6449;

  private static final double WHOLE_PSI = GaugePressure.of(1, Unit.PSI).pascals();

  private final Trip trip;
  private final Advice advice;
  private final UnitSystem units;
  private final @Nullable WheelPosition only;

  StopLines(Trip trip, Advice advice, UnitSystem units, @Nullable WheelPosition only) {
    this.trip = trip;
    this.advice = advice;
    this.units = units;
    this.only = only;
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
        newDay(visit),
        visit.index() + 1,
        first ? "" : Wording.clock(visit.arrive(), visit.zone()),
        last || visit.passes() ? "" : Wording.clock(visit.leave(), visit.zone()),
        zone(visit),
        visit.stop().place(),
        visit.stop().kind().word(),
        Double.isNaN(forecast.elevation())
            ? "elevation not known"
            : units.format(new Elevation(forecast.elevation())),
        air(forecast),
        forecast.airGiven() == null ? "" : forecast.airGiven().in(units),
        hose(visit.stop().air()),
        tires.stream().map(TireAdvice::mark).reduce(Mark.CLEAR, Mark::stronger),
        visit.passes() ? List.of() : rows(tires),
        tasks(stop, tires),
        loads(stop),
        last ? "" : leg(forecast),
        stop.legCautions().stream().map(caution -> caution.in(units)).toList());
  }

  private String newDay(Itinerary.Visit visit) {
    String day = day(visit);
    int index = visit.index();
    return index > 0 && day.equals(day(advice.stops().get(index - 1).stop().visit())) ? "" : day;
  }

  /** A stop stands under the day on which the rig arrives; the first under that of its start. */
  private static String day(Itinerary.Visit visit) {
    return Wording.day(visit.index() == 0 ? visit.leave() : visit.arrive(), visit.zone());
  }

  private String zone(Itinerary.Visit visit) {
    String zone = Wording.zone(visit.leave(), visit.zone());
    if (visit.index() == 0) {
      return zone;
    }
    Itinerary.Visit before = advice.stops().get(visit.index() - 1).stop().visit();
    return zone.equals(Wording.zone(before.leave(), before.zone())) ? "" : zone;
  }

  private String air(StopForecast forecast) {
    if (Double.isNaN(forecast.airOnArrival())) {
      return "air not known";
    }
    String arrival = units.number(new Temperature(forecast.airOnArrival()));
    String leaving = units.format(new Temperature(forecast.airOnLeaving()));
    boolean once = forecast.visit().index() == 0 || forecast.visit().passes();
    return once || leaving.startsWith(arrival + " ") ? leaving : arrival + " → " + leaving;
  }

  private String hose(Air air) {
    if (!air.available()) {
      return trip.rig().compressorTop() == null ? "no air" : "own compressor only";
    }
    return air.upTo() == null ? "air" : "air up to " + air.upTo().text();
  }

  /** Tires whose figures agree to half a psi stand together, under those of the lowest margin. */
  private List<StopLine.TireRow> rows(List<TireAdvice> tires) {
    List<List<TireAdvice>> groups = new ArrayList<>();
    for (TireAdvice tire : tires) {
      groups.stream()
          .filter(group -> alike(group.get(0), tire))
          .findFirst()
          .ifPresentOrElse(group -> group.add(tire), () -> groups.add(newGroup(tire)));
    }
    return groups.stream().map(this::row).toList();
  }

  private static List<TireAdvice> newGroup(TireAdvice first) {
    List<TireAdvice> group = new ArrayList<>();
    group.add(first);
    return group;
  }

  private static boolean alike(TireAdvice a, TireAdvice b) {
    TireAtStop one = a.tire();
    TireAtStop other = b.tire();
    return a.mark() == b.mark()
        && one.readings().isEmpty() == other.readings().isEmpty()
        && (one.setting() == null) == (other.setting() == null)
        && one.limits().estimated() == other.limits().estimated()
        && close(one.limits().floor(), other.limits().floor())
        && close(one.limits().aim(), other.limits().aim())
        && close(one.limits().ceiling(), other.limits().ceiling())
        && close(one.arrival(), other.arrival())
        && close(one.check(), other.check())
        && close(one.leaving(), other.leaving());
  }

  private static boolean close(@Nullable Moment a, @Nullable Moment b) {
    if (a == null || b == null) {
      return a == null && b == null;
    }
    return close(a.reading(), b.reading())
        && close(a.settled(), b.settled())
        && close(a.readingSigma(), b.readingSigma());
  }

  private static boolean close(double a, double b) {
    return Double.isNaN(a) ? Double.isNaN(b) : Math.abs(a - b) < WHOLE_PSI / 2;
  }

  private StopLine.TireRow row(List<TireAdvice> group) {
    TireAdvice lowest = group.get(0);
    List<String> names = new ArrayList<>();
    for (TireAdvice tire : group) {
      names.add(trip.rig().shortForm(tire.tire().fitted().position()));
      if (tire.tire().worstMargin() < lowest.tire().worstMargin()) {
        lowest = tire;
      }
    }
    return row(lowest, String.join(" ", names));
  }

  private StopLine.TireRow row(TireAdvice advised, String names) {
    TireAtStop at = advised.tire();
    Moment arrival = at.arrival();
    Moment check = at.check();
    Moment leaving = at.leaving();
    Limits limits = at.limits();
    boolean read = !at.readings().isEmpty();
    Setting set = at.setting();
    double shown =
        read
            ? at.readings().get(at.readings().size() - 1).reading().pressure().value().pascals()
            : arrival == null ? Double.NaN : arrival.reading();
    return new StopLine.TireRow(
        names,
        read,
        pressure(shown),
        read || arrival == null ? "" : range(arrival),
        read || arrival == null ? NONE : pressure(arrival.settled()),
        set != null
            ? pressure(set.gaugePascals())
            : check == null ? NONE : pressure(check.reading()),
        set != null || read || check == null ? "" : range(check),
        leaving == null ? NONE : pressure(leaving.settled()),
        at.low() == null ? NONE : pressure(at.low().moment().judged()),
        Double.isNaN(limits.floor()) ? NONE : Wording.floor(limits.floor(), units),
        pressure(limits.aim()),
        pressure(limits.ceiling()),
        Wording.signedPercent(at.worstMargin()),
        at.worstMargin(),
        limits.estimated() && !Double.isNaN(at.worstMargin()),
        advised.mark());
  }

  private String range(Moment moment) {
    if (Double.isNaN(moment.reading())) {
      return "";
    }
    double spread = NINETY * moment.readingSigma();
    return pressure(moment.reading() - spread) + "–" + pressure(moment.reading() + spread);
  }

  private String pressure(double pascals) {
    return Double.isNaN(pascals) ? NONE : Wording.pressure(pascals, units);
  }

  private List<StopLine.Task> tasks(StopAdvice stop, List<TireAdvice> tires) {
    record Key(Mark mark, String text) {}
    Map<Key, List<String>> same = new LinkedHashMap<>();
    for (Mark mark : List.of(Mark.HOLD, Mark.ADJUST, Mark.RECHECK, Mark.CLEAR)) {
      for (TireAdvice tire : tires) {
        for (Reason reason : tire.reasons()) {
          if (reason.mark() == mark) {
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
    List<String> all =
        tires.stream().map(tire -> trip.rig().shortForm(tire.tire().fitted().position())).toList();
    same.forEach((key, names) -> tasks.add(new StopLine.Task(key.mark, who(names, all), key.text)));
    return tasks;
  }

  /** "all tires", "all but t2r", or the tires themselves. */
  private static String who(List<String> names, List<String> all) {
    if (names.size() == all.size() && all.size() > 1) {
      return "all tires";
    } else if (names.size() > 3 && names.size() * 2 > all.size()) {
      return "all but "
          + String.join(" ", all.stream().filter(name -> !names.contains(name)).toList());
    }
    return String.join(" ", names);
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
        lines.add(offered(offer) + ": could be taken, no rating is passed");
      }
    }
    return lines;
  }

  private String offered(OfferAdvice offer) {
    return "offered: "
        + offer.offer().what()
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
            : "at most " + units.format(new Mass(Math.floor(most.kilograms()))) + " can be taken";
    return new StopLine.Task(
        Mark.HOLD,
        "if taken",
        offered(offer) + ": " + offer.reasons().get(0).text().in(units) + "; " + lighter);
  }

  private String leg(StopForecast forecast) {
    Itinerary.Drive drive = forecast.ahead();
    if (drive == null) {
      return "";
    }
    List<String> parts = new ArrayList<>();
    if (drive.meters() > 0) {
      parts.add(units.format(new Distance(drive.meters())));
    }
    parts.add(Wording.span(Duration.ofMillis(Math.round(drive.seconds() * 1000))));
    if (drive.metersPerSecond() > 0) {
      parts.add("average " + units.format(new Speed(drive.metersPerSecond())));
      parts.add(
          "top "
              + units.format(new Speed(drive.topMetersPerSecond()))
              + (drive.topAssumed() ? " assumed" : ""));
    }
    for (ProfilePoint point : drive.leg().profile()) {
      parts.add(
          (point.name() == null ? "a point at " : point.name() + " ")
              + units.format(point.elevation().value()));
    }
    Stop next = advice.stops().get(forecast.visit().index() + 1).stop().visit().stop();
    parts.add("to " + next.place());
    if (!forecast.airAheadKnown()) {
      parts.add("air on the way not known, floor judged only where it is");
    }
    return String.join(" · ", parts);
  }
}
