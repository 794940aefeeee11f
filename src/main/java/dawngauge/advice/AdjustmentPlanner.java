package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Setting;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.forecast.Track;
import dawngauge.rules.OwnCompressor;
import dawngauge.trip.CrewPlace;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Makes adjustment plans. Among the smallest sets of stops that keep every tire within its limits
 * it takes the one with the largest worst margin, in whole percent, then the fewest settings of
 * tires, then the earliest. Where none does, a limit is given up where it cannot be kept: the aim
 * before the ceiling, the ceiling before the floor, and no figure above the ceiling is ever set.
 */
public final class AdjustmentPlanner {

  /** Smallest sets compared in full; ours. */
  private static final int MOST_COMPARED = 100;

  private final Forecaster forecaster;
  private final Thresholds thresholds;
  private final PlanWishes wishes;
  private final int first;
  private final List<Track> tracks = new ArrayList<>();
  private final List<TireConstraints> ways = new ArrayList<>();
  private final List<AdjustmentPlan.LeftOut> leftOut = new ArrayList<>();
  private final Map<Unkept, List<Integer>> unkept = new LinkedHashMap<>();

  /** A limit that was given up for a tire at some stops. */
  private record Unkept(WheelPosition position, AdjustmentPlan.Limit limit) {}

  /** What one set of stops comes to. */
  private record Candidate(
      List<Integer> stops, List<Map<Integer, Integer>> figures, double margin, int settings) {}

  /**
   * Plans the rest of a trip.
   *
   * @param forecaster the trip
   * @param thresholds how far a tire may start under its aim
   * @param wishes what the crew wants
   */
  public AdjustmentPlanner(Forecaster forecaster, Thresholds thresholds, PlanWishes wishes) {
    this.forecaster = forecaster;
    this.thresholds = thresholds;
    this.wishes = wishes;
    this.first = CrewPlace.open(forecaster.trip(), forecaster.itinerary().visits());
  }

  /** The plan. */
  public AdjustmentPlan plan() {
    collect();
    List<Integer> all =
        possibleStops().stream().filter(at -> !wishes.forbidden().contains(at)).toList();
    List<TireConstraints> tires = new ArrayList<>();
    for (TireConstraints way : ways) {
      tires.add(relaxed(way, all));
    }
    boolean[] usable = new boolean[count()];
    for (int stop : all) {
      usable[stop] = true;
    }
    TreeSet<Integer> pinned = new TreeSet<>();
    for (int stop : all) {
      if (wishes.pinned().contains(stop)) {
        pinned.add(stop);
      }
    }
    StopSearch.Result result = StopSearch.search(tires, pinned, usable);
    List<List<Integer>> sets = result.sets().isEmpty() ? List.of(all) : result.sets();
    Candidate best = null;
    for (List<Integer> set : sets.subList(0, Math.min(sets.size(), MOST_COMPARED))) {
      Candidate candidate = candidate(tires, set);
      best = best == null || better(candidate, best) ? candidate : best;
    }
    return finished(best == null ? candidate(tires, all) : best, tires, result);
  }

  private int count() {
    return forecaster.itinerary().visits().size();
  }

  /** Follows each tire that can be planned. */
  private void collect() {
    ConstraintReader reader = new ConstraintReader(forecaster, thresholds);
    for (WheelPosition position : forecaster.trip().rig().positions()) {
      Track track = forecaster.track(position).orElse(null);
      if (track == null) {
        continue;
      }
      int known = first;
      while (known < count() && track.stops().get(known).check() == null) {
        known++;
      }
      Phrase why = unfit(position, track, Math.min(known, count() - 1));
      if (why == null && known >= count()) {
        why = Phrase.of("nothing is known of its air");
      }
      if (why != null) {
        leftOut.add(new AdjustmentPlan.LeftOut(position, why));
      } else {
        tracks.add(track);
        ways.add(reader.of(track, known));
      }
    }
  }

  /**
   * Why a tire is not to be run whatever air there is, so that a figure to set is no way out; null
   * where it is not so.
   */
  private @Nullable Phrase unfit(WheelPosition position, Track track, int known) {
    HoldRules rules = new HoldRules(forecaster);
    String tire = track.stops().get(known).fitted().tire().id();
    List<TireAtStop> mate =
        forecaster
            .track(new WheelPosition(position.axle(), position.slot().mate()))
            .map(Track::stops)
            .orElse(List.of());
    for (int visit = 0; visit <= known; visit++) {
      if (track.stops().get(visit).fitted().tire().id().equals(tire)) {
        for (Reason reason : rules.at(visit, track.stops(), mate)) {
          if (HoldRules.ofTheTire(reason)) {
            return Phrase.of("on hold, not only for want of air: {0}", reason.text());
          }
        }
      }
    }
    return null;
  }

  /** Stops at which some tire can be set. */
  private List<Integer> possibleStops() {
    List<Integer> stops = new ArrayList<>();
    for (int at = first; at < count(); at++) {
      boolean acts = false;
      for (TireConstraints way : ways) {
        acts |= way.stop(at).acts();
      }
      if (acts) {
        stops.add(at);
      }
    }
    return stops;
  }

  /** Gives up, one by one, what cannot be kept even with a hose at every stop that may be used. */
  private TireConstraints relaxed(TireConstraints way, List<Integer> all) {
    TireConstraints tire = way;
    int at = tire.failsAt(all);
    while (at < count()) {
      if (tire.enoughAt(all, at)) {
        tire = tire.withoutMost(at);
        giveUp(tire, AdjustmentPlan.Limit.CEILING, at);
      } else if (tire.asked().asksAim(at)) {
        tire = tire.asking(tire.asked().withoutAim(at));
        giveUp(tire, AdjustmentPlan.Limit.AIM, at);
      } else {
        tire = tire.asking(tire.asked().atMost(at, tire.mostAt(all, at)));
        giveUp(tire, AdjustmentPlan.Limit.FLOOR, at);
      }
      at = tire.failsAt(all);
    }
    return tire;
  }

  private void giveUp(TireConstraints tire, AdjustmentPlan.Limit limit, int at) {
    unkept.computeIfAbsent(new Unkept(tire.position(), limit), key -> new ArrayList<>()).add(at);
  }

  /** What no pressure carries, each thing once. */
  private static void overloads(
      WheelPosition position, List<TireAtStop> stops, List<AdjustmentPlan.Clash> clashes) {
    Set<Phrase> told = new HashSet<>();
    for (TireAtStop at : stops) {
      for (Reason reason : HoldRules.overloadOnly(at)) {
        if (reason.mark() == Mark.HOLD && told.add(reason.text())) {
          clashes.add(
              new AdjustmentPlan.Clash(
                  position, AdjustmentPlan.Limit.LOAD, at.visit(), reason.text()));
        }
      }
    }
  }

  private static List<TireAtStop> stopsOf(
      Map<WheelPosition, Track> tracks, WheelPosition position) {
    Track track = tracks.get(position);
    return track == null ? List.of() : track.stops();
  }

  private Candidate candidate(List<TireConstraints> tires, List<Integer> set) {
    List<Map<Integer, Integer>> figures = new ArrayList<>();
    double margin = Double.POSITIVE_INFINITY;
    int settings = 0;
    for (int i = 0; i < tires.size(); i++) {
      TireConstraints tire = tires.get(i);
      Map<Integer, Integer> wished = wished(tire);
      Map<Integer, Integer> chosen = FigureChoice.of(tire, set, wished);
      chosen = chosen == null ? FigureChoice.of(tire, set, Map.of()) : chosen;
      chosen = chosen == null ? Map.of() : chosen;
      figures.add(chosen);
      settings += chosen.size();
      for (TireAtStop at : openPart(set(tracks.get(i), tire, chosen).stops())) {
        double worst = at.worstMargin();
        margin = worst < margin ? worst : margin;
      }
    }
    return new Candidate(set, figures, margin, settings);
  }

  private List<TireAtStop> openPart(List<TireAtStop> stops) {
    return stops.subList(first, Math.max(first, stops.size() - 1));
  }

  /** What was chosen by hand for a tire, in steps of its gauge. */
  private Map<Integer, Integer> wished(TireConstraints tire) {
    Map<Integer, Integer> wished = new TreeMap<>();
    wishes
        .figures()
        .forEach(
            (at, byTire) -> {
              Double figure = byTire.get(tire.position());
              if (figure != null && at >= tire.first()) {
                wished.put(at, (int) Math.rint(figure / tire.step()));
              }
            });
    return wished;
  }

  private static Track set(Track track, TireConstraints tire, Map<Integer, Integer> figures) {
    Track set = track;
    for (Map.Entry<Integer, Integer> figure : figures.entrySet()) {
      set = set.with(figure.getKey(), new Setting(figure.getValue() * tire.step()));
    }
    return set;
  }

  private static boolean better(Candidate a, Candidate b) {
    double marginA = Math.floor(a.margin() * 100);
    double marginB = Math.floor(b.margin() * 100);
    if (marginA != marginB) {
      return marginA > marginB;
    }
    return a.settings() != b.settings()
        ? a.settings() < b.settings()
        : earlier(a.stops(), b.stops());
  }

  private static boolean earlier(List<Integer> a, List<Integer> b) {
    for (int i = 0; i < a.size() && i < b.size(); i++) {
      if (!a.get(i).equals(b.get(i))) {
        return a.get(i) < b.get(i);
      }
    }
    return false;
  }

  private AdjustmentPlan finished(
      Candidate best, List<TireConstraints> tires, StopSearch.Result result) {
    Map<Integer, Map<WheelPosition, AdjustmentPlan.PlannedSetting>> settings = new TreeMap<>();
    Map<WheelPosition, Track> done = new LinkedHashMap<>();
    for (int stop : best.stops()) {
      settings.put(stop, new LinkedHashMap<>());
    }
    for (int i = 0; i < tires.size(); i++) {
      TireConstraints tire = tires.get(i);
      Track track = set(tracks.get(i), tire, best.figures().get(i));
      done.put(tire.position(), track);
      for (int at : best.figures().get(i).keySet()) {
        AdjustmentPlan.PlannedSetting set = setting(track.stops(), at);
        if (set != null) {
          settings.computeIfAbsent(at, key -> new LinkedHashMap<>()).put(tire.position(), set);
        }
      }
    }
    List<AdjustmentPlan.Planned> stops = new ArrayList<>();
    settings.forEach((at, figures) -> stops.add(new AdjustmentPlan.Planned(at, figures)));
    PlanWords words = new PlanWords(forecaster, thresholds, wishes, first);
    List<AdjustmentPlan.Clash> clashes = new ArrayList<>();
    done.forEach((position, track) -> overloads(position, openPart(track.stops()), clashes));
    unkept.forEach(
        (limit, visits) -> {
          List<TireAtStop> track = stopsOf(done, limit.position());
          words.clash(limit.position(), limit.limit(), visits, track).ifPresent(clashes::add);
        });
    done.forEach((position, track) -> words.stillLacking(position, track.stops(), clashes));
    for (int i = 0; i < tires.size(); i++) {
      Map<Integer, Integer> figures = best.figures().get(i);
      TireConstraints tire = tires.get(i);
      wished(tire)
          .forEach(
              (at, steps) -> {
                if (!steps.equals(figures.get(at)) && best.stops().contains(at)) {
                  clashes.add(words.refused(tire.position(), at, steps * tire.step()));
                }
              });
    }
    Phrase why = words.why(best.stops().size(), result, tires);
    boolean proven = result.proven() && !result.sets().isEmpty();
    double margin = Double.isInfinite(best.margin()) ? Double.NaN : best.margin();
    return new AdjustmentPlan(first, possibleStops(), stops, clashes, leftOut, why, proven, margin);
  }

  private AdjustmentPlan.@Nullable PlannedSetting setting(List<TireAtStop> track, int at) {
    TireAtStop there = track.get(at);
    TireSnapshot check = there.check();
    Setting done = there.setting();
    if (check == null || done == null) {
      return null;
    }
    int next = at + 1;
    while (next < count() - 1 && !forecaster.itinerary().visits().get(next).firstStartOfDay()) {
      next++;
    }
    TireSnapshot dawn = next < count() - 1 ? track.get(next).check() : null;
    TimedFigures timed =
        new FigureRule(forecaster, new Lookahead(forecaster))
            .chosen(there, check, done.gaugePascals());
    double now = SetFigure.now(check);
    return new AdjustmentPlan.PlannedSetting(
        timed,
        now,
        there.limits().ceiling(),
        there.limits().aim(),
        dawn == null ? -1 : next,
        dawn == null ? Double.NaN : SetFigure.now(dawn),
        OwnCompressor.secondsToRaise(
            forecaster.trip().rig(),
            there.fitted().spec(),
            now,
            timed.at().figure().pascals(),
            check.airPressure()));
  }
}
