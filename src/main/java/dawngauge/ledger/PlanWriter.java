package dawngauge.ledger;

import dawngauge.advice.AdjustmentPlan;
import dawngauge.advice.SetFigure;
import dawngauge.explain.Phrase;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes what a plan sets. */
final class PlanWriter {

  private final Trip trip;
  private final Itinerary itinerary;
  private final UnitSystem units;

  PlanWriter(Trip trip, Itinerary itinerary, UnitSystem units) {
    this.trip = trip;
    this.itinerary = itinerary;
    this.units = units;
  }

  /** A stop that the plan uses. */
  PlanPage.PlanStop stop(AdjustmentPlan.Planned planned) {
    record Key(String figure, String text) {}
    ZoneId zone = itinerary.visits().get(planned.visit()).zone();
    Map<Key, List<WheelPosition>> same = new LinkedHashMap<>();
    planned
        .settings()
        .forEach(
            (position, setting) -> {
              String figure = Phrase.of("{0}", Wording.figure(setting.set().figure())).in(units);
              same.computeIfAbsent(new Key(figure, text(setting, zone)), key -> new ArrayList<>())
                  .add(position);
            });
    List<PlanPage.Line> lines = new ArrayList<>();
    same.forEach(
        (key, positions) ->
            lines.add(
                new PlanPage.Line(
                    List.copyOf(positions),
                    String.join(" ", positions.stream().map(this::name).toList()),
                    key.figure,
                    key.text)));
    if (lines.isEmpty()) {
      String text = "nothing is to be set here; gauge the tires all the same";
      lines.add(new PlanPage.Line(List.of(), "", "", text));
    }
    return shown(planned.visit(), true, lines);
  }

  /** A stop that it does not use. */
  PlanPage.PlanStop unused(int visit) {
    Itinerary.Visit stop = itinerary.visits().get(visit);
    boolean hose = stop.stop().air().available() || trip.rig().compressorTop() != null;
    String text =
        hose
            ? stop.firstStartOfDay()
                ? "air could be added, or let out while the tires are cold"
                : "air could be added"
            : "no air here; it could only be let out, while the tires are cold";
    return shown(visit, false, List.of(new PlanPage.Line(List.of(), "", "", text)));
  }

  private PlanPage.PlanStop shown(int index, boolean planned, List<PlanPage.Line> lines) {
    Itinerary.Visit visit = itinerary.visits().get(index);
    String when =
        Wording.shortDay(visit.leave(), visit.zone())
            + ", "
            + (visit.firstStartOfDay() ? "before the start at " : "until ")
            + Wording.clock(visit.leave(), visit.zone())
            + " "
            + Wording.zone(visit.leave(), visit.zone());
    String title = (index + 1) + ". " + visit.stop().place();
    return new PlanPage.PlanStop(index, planned, title, when, lines);
  }

  private String text(AdjustmentPlan.PlannedSetting setting, ZoneId zone) {
    SetFigure set = setting.set();
    SetFigure onArrival = setting.timed().onArrival();
    Instant minute = Instant.ofEpochSecond(Math.round(setting.timed().seconds()));
    Phrase figure =
        set.warm()
            ? Phrase.of(
                "add to {0}{1} at {2}, {3} cold ({4} expected before); never let air out of it warm",
                onArrival == null
                    ? Phrase.of("")
                    : Phrase.of("{0} on arrival, ", Wording.figure(onArrival.figure())),
                Wording.figure(set.figure()),
                Wording.clock(minute, zone),
                Wording.figure(setting.timed().cold().figure()),
                Wording.shown(setting.now()))
            : set.adds()
                ? Phrase.of(
                    "add to {0} cold ({1} expected before)",
                    Wording.figure(set.figure()), Wording.shown(setting.now()))
                : Phrase.of(
                    "let out to {0}, only while it is cold ({1} expected before)",
                    Wording.figure(set.figure()), Wording.shown(setting.now()));
    Phrase limit =
        Double.isNaN(setting.ceiling())
            ? Phrase.of("its limit is not known: read sidewall and wheel first")
            : Phrase.of(
                set.cutByCeiling() ? "its limit of {0} allows no more" : "limit {0} cold",
                Wording.shown(setting.ceiling()));
    Phrase next =
        setting.nextStart() < 0
            ? Phrase.of("")
            : Phrase.of(
                "; next day's start at {0} about {1}",
                itinerary.visits().get(setting.nextStart()).stop().place(),
                Wording.shown(setting.atNextStart()));
    return Phrase.of(
            "{0}; {1}{2}{3}",
            figure, limit, set.cutByHose() ? "; the hose reaches no further" : "", next)
        .in(units);
  }

  /** Limits that cannot be kept, tires with the same text together. */
  List<String> clashes(AdjustmentPlan plan) {
    Map<String, List<String>> same = new LinkedHashMap<>();
    for (AdjustmentPlan.Clash clash : plan.clashes()) {
      same.computeIfAbsent(clash.text().in(units), key -> new ArrayList<>())
          .add(name(clash.position()));
    }
    List<String> lines = new ArrayList<>();
    same.forEach((text, tires) -> lines.add(String.join(" ", tires) + ": " + text));
    return lines;
  }

  private String name(WheelPosition position) {
    return trip.rig().shortForm(position);
  }
}
