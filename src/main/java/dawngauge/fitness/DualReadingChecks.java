package dawngauge.fitness;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.quantity.GaugePressure;
import dawngauge.rules.DualMates;
import dawngauge.rules.FittedTire;
import dawngauge.rules.LimitFinder;
import dawngauge.trip.LogEvent;
import java.time.Duration;

/** The latest cold readings of dual mates against one another. */
final class DualReadingChecks {

  /** Readings of mates are compared if not further apart in time; ours, no source. */
  private static final Duration SAME_ROUND = Duration.ofHours(3);

  private DualReadingChecks() {}

  /**
   * Checks the pairs.
   *
   * @param alone whether to tell of a tire that carries for its mate, which a forecast tells too
   */
  static void check(Inspection inspection, GatheredDefects findings, boolean alone) {
    for (FittedTire wheel : inspection.wheels()) {
      LogEvent.Reading mine = inspection.latestCold(wheel.tire()).orElse(null);
      LogEvent.Reading other =
          inspection.mate(wheel).map(FittedTire::tire).flatMap(inspection::latestCold).orElse(null);
      if (mine != null && other != null && comparable(mine, other)) {
        lower(inspection, mine, other, alone, findings.tire(wheel.position()));
      }
    }
  }

  /** Same gauge, same round, so that neither weather nor gauge explains a difference. */
  private static boolean comparable(LogEvent.Reading mine, LogEvent.Reading other) {
    Duration apart = Duration.between(mine.time().instant(), other.time().instant()).abs();
    return mine.gauge().equals(other.gauge()) && apart.compareTo(SAME_ROUND) <= 0;
  }

  /** Tells of a reading that is too far under the mate's. */
  private static void lower(
      Inspection inspection,
      LogEvent.Reading mine,
      LogEvent.Reading other,
      boolean tellAlone,
      GatheredDefects.Place place) {
    GaugePressure apart = inspection.dualsApart();
    double low = mine.pressure().value().pascals();
    double high = other.pressure().value().pascals();
    boolean alone = DualMates.carriesAlone(high, low);
    if (alone && !tellAlone) {
      return;
    }
    if (alone || high - low > apart.pascals() + LimitFinder.GRACE) {
      place.add(
          FindingKind.DUAL_PRESSURES,
          alone ? Severity.STOP : Severity.MEND,
          Phrase.of(
              "read {0} cold, its dual mate {1}: {2}",
              mine.pressure().value(),
              other.pressure().value(),
              alone
                  ? "more than 20 % under it; if it rolled so, the mate carried both loads"
                  : "they do not share the load alike"),
          alone
              ? Phrase.of("have both inspected")
              : Phrase.of("set both alike while cold, to within {0}", apart),
          Authority.commonPractice());
    }
  }
}
