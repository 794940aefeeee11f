package dawngauge.advice;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.fitness.Defect;
import dawngauge.fitness.FindingKind;
import dawngauge.fitness.Severity;
import dawngauge.trip.CrewPlace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Whether the rig may go, as one list: what is wrong with the rig, and what air and readings say of
 * it where it stands now. A hold further on reads "go as far as", of a tire that may roll here.
 */
public final class GoNoGo {

  private static final Authority FORECAST =
      Authority.inferred("forecast of its pressure against its load, docs/method.md");

  private GoNoGo() {}

  /**
   * The list, worst first.
   *
   * @param fitness what is wrong with the rig, readings of fitted tires left out
   * @param advice what the forecast says
   */
  public static List<Defect> of(List<Defect> fitness, Advice advice) {
    List<Defect> all = new ArrayList<>(fitness);
    List<StopAdvice> stops = advice.stops();
    int now =
        CrewPlace.open(
            advice.forecast().trip(), stops.stream().map(stop -> stop.stop().visit()).toList());
    for (int at = now; at < stops.size(); at++) {
      for (TireAdvice tire : stops.get(at).tires()) {
        for (Reason reason : tire.reasons()) {
          if (at == now && !reason.ofTheRig()) {
            here(tire, reason, all);
          }
        }
      }
      if (at > now && holdsAhead(stops.get(at), all)) {
        break;
      }
    }
    all.sort(Comparator.comparing(Defect::severity));
    return List.copyOf(all);
  }

  private static void here(TireAdvice tire, Reason reason, List<Defect> all) {
    String where = tire.tire().fitted().position().words();
    if (reason.mark() == Mark.HOLD) {
      all.add(
          new Defect(
              FindingKind.HOLD_HERE,
              Severity.STOP,
              where,
              reason.text(),
              Phrase.of("it does not roll until that is done"),
              FORECAST));
    } else if (reason.mark() == Mark.ADJUST) {
      all.add(
          new Defect(
              FindingKind.SET_HERE,
              Severity.MEND,
              where,
              reason.text(),
              Phrase.of("set it before it rolls"),
              FORECAST));
    } else if (reason.mark() == Mark.RECHECK && reason.rank() == 0) {
      all.add(
          new Defect(
              FindingKind.LOOK_HERE,
              Severity.MEND,
              where,
              reason.text(),
              Phrase.of("see to it before it rolls"),
              FORECAST));
    }
  }

  /** Whether a tire is on hold at a stop for more than what is wrong with the rig already. */
  private static boolean holdsAhead(StopAdvice stop, List<Defect> all) {
    Set<String> held =
        all.stream()
            .filter(defect -> defect.code() == FindingKind.HOLD_HERE)
            .map(Defect::where)
            .collect(Collectors.toSet());
    boolean some = false;
    for (TireAdvice tire : stop.tires()) {
      if (held.contains(tire.tire().fitted().position().words())) {
        continue;
      }
      for (Reason reason : tire.reasons()) {
        if (reason.mark() == Mark.HOLD && !reason.ofTheRig()) {
          some = true;
          all.add(
              new Defect(
                  FindingKind.HOLD_AHEAD,
                  Severity.MEND,
                  tire.tire().fitted().position().words(),
                  Phrase.of(
                      "go as far as {0}: {1}", stop.stop().visit().stop().place(), reason.text()),
                  Phrase.of("find air before, or plan to mend it there"),
                  FORECAST));
        }
      }
    }
    return some;
  }
}
