package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.advice.StopAdvice;
import dawngauge.explain.Terms;
import dawngauge.forecast.ReadingCheck;
import dawngauge.page.Plot;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.review.TireReview;
import dawngauge.trip.Itinerary;
import dawngauge.trip.ReadingState;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What a tire read over the trip beside what a sound one would have read, expected from its first
 * reading and what was set. Figures are in the chosen units.
 *
 * @param plot what a sound tire would have done, with the readings as dots
 * @param dots its readings, in time order
 * @param unit symbol of the unit
 */
public record ReadingsTrace(Plot plot, List<Dot> dots, String unit) {

  /** What lines and dots are. */
  private static final String WHAT =
      "lines: what a sound tire would have read (thin, with its range) and would read "
          + Terms.COLD_HERE
          + " (thick), by its first reading and what was set; dots: what was read, filled if cold;"
          + " dashed "
          + Terms.LOWEST_SAFE
          + "; bracket "
          + Terms.NEVER_OVER
          + "; shaded night; numbers: stops.";

  /**
   * One reading.
   *
   * @param time when
   * @param read what the gauge showed
   * @param expected what it would have shown of a sound tire; NaN where that is not known
   * @param low lower end of the range of that
   * @param high upper end
   * @param cold whether it was read cold
   * @param words when and in which state
   */
  public record Dot(
      Instant time,
      double read,
      double expected,
      double low,
      double high,
      boolean cold,
      String words) {

    /** How far it lies from what was expected. */
    public double off() {
      return read - expected;
    }
  }

  /** Copies the list. */
  public ReadingsTrace {
    dots = List.copyOf(dots);
  }

  /**
   * The trace of one tire.
   *
   * @param sound the trip as it would have gone by the first readings
   */
  public static ReadingsTrace of(Advice sound, TireReview tire, UnitSystem units) {
    Trace trace = Trace.of(sound, tire.position(), units);
    Unit unit = units.unitOf(QuantityKind.GAUGE_PRESSURE);
    List<Dot> dots = new ArrayList<>();
    for (ReadingCheck check : tire.all()) {
      Instant time = check.reading().time().instant();
      ZoneId zone = check.reading().time().time().getZone();
      String when = Wording.shortDay(time, zone) + " " + Wording.clock(time, zone);
      Trace.Point at = at(trace, time);
      dots.add(
          new Dot(
              time,
              new GaugePressure(check.reading().pressure().value().pascals()).in(unit),
              at.reading(),
              at.low(),
              at.high(),
              check.reading().state() == ReadingState.COLD,
              when + ", " + check.reading().state().word()));
    }
    return new ReadingsTrace(plot(sound, trace, dots, unit), dots, unit.symbol());
  }

  private static Plot plot(Advice sound, Trace trace, List<Dot> dots, Unit unit) {
    List<Plot.Named> stops = new ArrayList<>();
    for (StopAdvice stop : sound.stops()) {
      Itinerary.Visit visit = stop.stop().visit();
      Instant time = visit.index() == 0 ? visit.leave() : visit.arrive();
      stops.add(new Plot.Named(time, String.valueOf(visit.index() + 1)));
    }
    return new Plot(
        "in " + unit.symbol() + "; " + WHAT,
        trace.points().stream()
            .map(p -> new Plot.Point(p.time(), p.settled(), p.reading(), p.low(), p.high()))
            .toList(),
        trace.floors().stream()
            .map(floor -> new Plot.Level(floor.from(), floor.to(), floor.pressure()))
            .toList(),
        trace.ceilings().stream()
            .map(ceiling -> new Plot.Tick(ceiling.time(), ceiling.pressure()))
            .toList(),
        dots.stream().map(dot -> new Plot.Dot(dot.time(), dot.read(), dot.cold())).toList(),
        trace.nights().stream()
            .map(night -> new Plot.Span(night.sunset(), night.sunrise()))
            .toList(),
        days(sound),
        stops);
  }

  /** Midnights by the clock of the start, the first before it. */
  private static List<Plot.Named> days(Advice sound) {
    List<StopAdvice> stops = sound.stops();
    Itinerary.Visit first = stops.get(0).stop().visit();
    Instant end = stops.get(stops.size() - 1).stop().visit().leave();
    List<Plot.Named> days = new ArrayList<>();
    LocalDate date = first.leave().atZone(first.zone()).toLocalDate();
    for (Instant midnight = date.atStartOfDay(first.zone()).toInstant();
        midnight.isBefore(end);
        midnight = date.atStartOfDay(first.zone()).toInstant()) {
      days.add(new Plot.Named(midnight, Wording.shortDay(midnight, first.zone())));
      date = date.plusDays(1);
    }
    return days;
  }

  /** A figure as it is shown. */
  public String shown(double figure) {
    return Double.isNaN(figure)
        ? "–"
        : String.format(Locale.ROOT, decimals(), figure == 0 ? 0 : figure);
  }

  /** A difference as it is shown, of the figures as they are shown. */
  public String off(Dot dot) {
    if (Double.isNaN(dot.expected())) {
      return "–";
    }
    double difference =
        Double.parseDouble(shown(dot.read())) - Double.parseDouble(shown(dot.expected()));
    return String.format(Locale.ROOT, "%+" + decimals().substring(1), difference);
  }

  private String decimals() {
    return unit.equals(Unit.PSI.symbol()) ? "%.1f" : "%.2f";
  }

  private static Trace.Point at(Trace trace, Instant time) {
    Trace.Point before = null;
    for (Trace.Point point : trace.points()) {
      if (Double.isNaN(point.settled())) {
        before = null;
        continue;
      }
      if (!point.time().isBefore(time)) {
        return before == null || point.time().equals(time) ? point : between(before, point, time);
      }
      before = point;
    }
    double none = Double.NaN;
    return new Trace.Point(time, none, none, none, none, none, none);
  }

  private static Trace.Point between(Trace.Point a, Trace.Point b, Instant time) {
    double whole = b.time().toEpochMilli() - a.time().toEpochMilli();
    double part = (time.toEpochMilli() - a.time().toEpochMilli()) / whole;
    return new Trace.Point(
        time,
        mix(a.settled(), b.settled(), part),
        mix(a.reading(), b.reading(), part),
        mix(a.low(), b.low(), part),
        mix(a.high(), b.high(), part),
        mix(a.air(), b.air(), part),
        mix(a.elevation(), b.elevation(), part));
  }

  private static double mix(double a, double b, double part) {
    return a + part * (b - a);
  }
}
