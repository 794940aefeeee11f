package dawngauge.ledger;

import dawngauge.advice.AdjustmentPlan;
import dawngauge.advice.SetFigure;
import dawngauge.explain.Phrase;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
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
  PlanLines.PlanStop stop(AdjustmentPlan.Planned planned) {
    record Key(String verb, String figure, String text) {}
    ZoneId zone = itinerary.visits().get(planned.visit()).zone();
    Map<Key, Map<String, List<WheelPosition>>> same = new LinkedHashMap<>();
    Map<String, List<String>> limits = new LinkedHashMap<>();
    planned
        .settings()
        .forEach(
            (position, setting) -> {
              SetFigure set = setting.set();
              String figure = Phrase.of("{0}", Wording.figure(set.figure())).in(units);
              String text =
                  new SetWords(units).figures(setting.timed(), zone).in(units)
                      + SetWords.beware(set, setting.ceiling());
              Key key = new Key(SetWords.verb(set), figure, text);
              same.computeIfAbsent(key, made -> new LinkedHashMap<>())
                  .computeIfAbsent(why(setting), made -> new ArrayList<>())
                  .add(position);
              if (!Double.isNaN(setting.ceiling())) {
                limits
                    .computeIfAbsent(limit(setting), made -> new ArrayList<>())
                    .add(name(position));
              }
            });
    List<PlanLines.Line> lines = new ArrayList<>();
    same.forEach(
        (key, reasons) -> {
          List<WheelPosition> positions =
              planned.settings().keySet().stream()
                  .filter(
                      position -> reasons.values().stream().anyMatch(of -> of.contains(position)))
                  .toList();
          List<String> why = new ArrayList<>();
          reasons.forEach((reason, of) -> why.add(names(of) + ": " + reason));
          String tires = names(positions);
          lines.add(
              new PlanLines.Line(
                  positions, tires, key.figure, key.verb + tires + " to " + key.text, why));
        });
    if (lines.isEmpty()) {
      String text = "nothing is to be set here; gauge the tires all the same";
      lines.add(new PlanLines.Line(List.of(), "", "", text, List.of()));
    }
    return shown(
        planned.visit(),
        true,
        lines,
        limits(limits),
        CompressorWords.stop(planned.settings().values()));
  }

  private String names(List<WheelPosition> positions) {
    return String.join(" ", positions.stream().map(this::name).toList());
  }

  private static String limits(Map<String, List<String>> limits) {
    if (limits.isEmpty()) {
      return "";
    }
    List<String> parts = new ArrayList<>();
    limits.forEach((limit, tires) -> parts.add(String.join(" ", tires) + " " + limit));
    return "Never over, cold: " + String.join("; ", parts);
  }

  /** A stop that it does not use. */
  PlanLines.PlanStop unused(int visit) {
    Itinerary.Visit stop = itinerary.visits().get(visit);
    boolean hose = stop.stop().air().available() || trip.rig().compressorTop() != null;
    String text =
        hose
            ? stop.firstStartOfDay()
                ? "air could be added, or let out while the tires are cold"
                : "air could be added"
            : "no air here; it could only be let out, while the tires are cold";
    return shown(
        visit, false, List.of(new PlanLines.Line(List.of(), "", "", text, List.of())), "", "");
  }

  private PlanLines.PlanStop shown(
      int index, boolean planned, List<PlanLines.Line> lines, String limits, String minutes) {
    Itinerary.Visit visit = itinerary.visits().get(index);
    String when =
        Wording.shortDay(visit.leave(), visit.zone())
            + ", "
            + (visit.firstStartOfDay() ? "before the start at " : "until ")
            + Wording.clock(visit.leave(), visit.zone())
            + " "
            + Wording.zone(visit.leave(), visit.zone());
    String title = (index + 1) + ". " + visit.stop().place();
    return new PlanLines.PlanStop(index, planned, title, when, lines, limits, minutes);
  }

  /** What is expected before and after, and what kept the figure so. */
  private String why(AdjustmentPlan.PlannedSetting setting) {
    StringBuilder why = new StringBuilder(shown(setting.now()) + " expected before");
    if (setting.set().cutByCeiling() && !Double.isNaN(setting.ceiling())) {
      why.append("; its limit of ").append(limit(setting)).append(" allows no more");
    }
    if (setting.nextStart() >= 0) {
      why.append("; about ")
          .append(shown(setting.atNextStart()))
          .append(" at the next day's start, ")
          .append(itinerary.visits().get(setting.nextStart()).stop().place());
    }
    return why.toString();
  }

  /** To the step of figures that are set, so that none of those seems to be over it. */
  private String limit(AdjustmentPlan.PlannedSetting setting) {
    return Phrase.of("{0}", Wording.figure(new GaugePressure(setting.ceiling()))).in(units);
  }

  private String shown(double pascals) {
    return Phrase.of("{0}", Wording.shown(pascals)).in(units);
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
