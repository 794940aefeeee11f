package dawngauge.fitness;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.rules.FittedTire;
import dawngauge.rules.LimitFinder;
import dawngauge.trip.LogEvent;
import java.time.Duration;

/** The latest cold readings of dual mates against one another. */
final class DualReadingChecks {

  /** Dual mates so far apart are set alike; common practice, no source. */
  private static final GaugePressure MATES_APART = GaugePressure.of(5, Unit.PSI);

  /** A mate so much under the other leaves it the load of both; common practice, no source. */
  private static final double MATE_LOW = 0.8;

  /** Readings of mates are compared if not further apart in time; ours, no source. */
  private static final Duration SAME_ROUND = Duration.ofHours(3);

  private DualReadingChecks() {}

  /**
   * Checks the pairs.
   *
   * @param alone whether to tell of a tire that carries for its mate, which a forecast tells too
   */
  static void check(Inspection inspection, Findings findings, boolean alone) {
    for (FittedTire wheel : inspection.wheels()) {
      LogEvent.Reading mine = inspection.latestCold(wheel.tire()).orElse(null);
      LogEvent.Reading other =
          inspection.mate(wheel).map(FittedTire::tire).flatMap(inspection::latestCold).orElse(null);
      if (mine != null && other != null && comparable(mine, other)) {
        lower(mine, other, alone, findings.tire(wheel.position()));
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
      LogEvent.Reading mine, LogEvent.Reading other, boolean tellAlone, Findings.Place place) {
    double low = mine.pressure().value().pascals();
    double high = other.pressure().value().pascals();
    boolean alone = low < MATE_LOW * high;
    if (alone && !tellAlone) {
      return;
    }
    if (alone || high - low > MATES_APART.pascals() + LimitFinder.GRACE) {
      place.add(
          Code.DUAL_PRESSURES,
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
              : Phrase.of("set both alike while cold, to within {0}", MATES_APART),
          Authority.commonPractice());
    }
  }
}
