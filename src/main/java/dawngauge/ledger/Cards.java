package dawngauge.ledger;

import dawngauge.advice.Mark;
import dawngauge.advice.OfferAdvice;
import dawngauge.advice.Reason;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TimedFigures;
import dawngauge.advice.TireAdvice;
import dawngauge.explain.Phrase;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Gauge;
import dawngauge.trip.Trip;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Makes the card of a stop. */
final class Cards {

  private final Trip trip;
  private final UnitSystem units;

  Cards(Trip trip, UnitSystem units) {
    this.trip = trip;
    this.units = units;
  }

  /**
   * The card of a stop.
   *
   * @param tires those that are shown
   */
  Card of(StopAdvice stop, List<TireAdvice> tires) {
    List<Card.Line> todo = new ArrayList<>();
    for (OfferAdvice offer : stop.offers()) {
      if (offer.mark() == Mark.HOLD) {
        todo.add(new Card.Line(Mark.HOLD, "", "Do not take " + offer.offer().what(), false));
      }
    }
    said(tires, Mark.HOLD, "Hold ", todo);
    set(stop.stop().visit().zone(), tires, todo);
    said(tires, Mark.RECHECK, "Check ", todo);
    List<String> watch = new ArrayList<>();
    stop.routine().forEach(habit -> watch.add("Gauge " + habit.todo().in(units)));
    List<Card.Line> calm = new ArrayList<>();
    said(tires.stream().filter(t -> t.mark() != Mark.HOLD).toList(), Mark.CLEAR, "", calm);
    calm.forEach(line -> watch.add(line.text()));
    return new Card(todo, watch);
  }

  /** What is asked for tires in words, those of which the same is asked together. */
  private void said(List<TireAdvice> tires, Mark mark, String verb, List<Card.Line> lines) {
    Map<String, List<String>> same = new LinkedHashMap<>();
    for (TireAdvice tire : tires) {
      for (Reason reason : tire.reasons()) {
        String text = reason.mark() == mark ? reason.todo().in(units) : "";
        if (!text.isEmpty()) {
          List<String> names = same.computeIfAbsent(text, key -> new ArrayList<>());
          String name = name(tire);
          if (!names.contains(name)) {
            names.add(name);
          }
        }
      }
    }
    List<String> all = tires.stream().map(this::name).toList();
    same.forEach(
        (text, names) -> {
          String who = Wording.who(names, all);
          lines.add(new Card.Line(mark, who, verb + who + ": " + text, false));
        });
  }

  /** What one tire is set to; nothing where it is not. */
  List<Card.Line> sets(ZoneId zone, TireAdvice tire) {
    List<Card.Line> lines = new ArrayList<>();
    set(zone, List.of(tire), lines);
    return lines;
  }

  /** What is set, tires with the same figures together. */
  private void set(ZoneId zone, List<TireAdvice> tires, List<Card.Line> lines) {
    record Figures(String before, String after, boolean onlyCold) {}
    Map<Figures, List<String>> same = new LinkedHashMap<>();
    for (TireAdvice tire : tires) {
      TimedFigures timed = tire.timed();
      if (timed != null) {
        Figures figures =
            new Figures(
                verb(tire, timed), figures(tire, timed, zone).in(units), !timed.at().warm());
        same.computeIfAbsent(figures, key -> new ArrayList<>()).add(name(tire));
      }
    }
    List<String> all = tires.stream().map(this::name).toList();
    same.forEach(
        (figures, names) -> {
          String who = Wording.who(names, all);
          lines.add(
              new Card.Line(
                  Mark.ADJUST, who, figures.before + who + figures.after, figures.onlyCold));
        });
  }

  private String verb(TireAdvice tire, TimedFigures timed) {
    String first = condition(tire, units);
    return first.isEmpty()
        ? SetWords.verb(timed.at())
        : first + (timed.at().adds() ? ", add: " : ", let out: ");
  }

  /** What else is to be done before a tire is set, in words; empty where nothing is. */
  static String condition(TireAdvice tire, UnitSystem units) {
    return tire.reasons().stream()
        .filter(reason -> reason.mark() == Mark.ADJUST)
        .map(reason -> reason.todo().in(units))
        .filter(first -> !first.isEmpty())
        .findFirst()
        .orElse("");
  }

  /** " to 85 psi on arrival (82 at 13:14, 80 cold)". */
  private Phrase figures(TireAdvice tire, TimedFigures timed, ZoneId zone) {
    String beware = SetWords.beware(timed.at(), tire.tire().limits().ceiling());
    return Phrase.of(
        " to {0}{1}",
        new SetWords(units).figures(timed, zone),
        beware + (sealed(tire) ? "; by an open gauge" : ""));
  }

  private boolean sealed(TireAdvice tire) {
    String gauge = tire.tire().check() == null ? "" : tire.tire().check().origin().gauge();
    return trip.rig()
        .gauge(gauge)
        .filter(found -> found.kind() == Gauge.Kind.SEA_LEVEL_SUBTRACTED)
        .isPresent();
  }

  private String name(TireAdvice tire) {
    return trip.rig().shortForm(tire.tire().fitted().position());
  }
}
