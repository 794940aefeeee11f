package dawngauge.fitness;

import dawngauge.quantity.GaugePressure;
import dawngauge.trip.Trip;
import java.util.List;

/**
 * Checks a rig against its labels, the published rules and the trip that it is to make. It looks at
 * the tires as fitted at the start. A pure function of the trip: ages are judged on its dates.
 */
public final class FitnessCheck {

  /**
   * What the user chose.
   *
   * @param reserve part by which a tire is to carry more than its load, 0.1 for 10 %
   * @param confidence one-sided, with which its pressure is to carry its load, 0.9 for 90 %
   * @param dualsApart cold difference of dual mates that is to be set right
   */
  public record Options(double reserve, double confidence, GaugePressure dualsApart) {
    /** Refuses what is no reserve. */
    public Options {
      if (!(reserve >= 0 && reserve <= 1)) {
        throw new IllegalArgumentException("reserve " + reserve + " is not within 0 and 1");
      }
      if (!(confidence > 0 && confidence < 1)) {
        throw new IllegalArgumentException("confidence " + confidence + " is not between 0 and 1");
      }
    }
  }

  private FitnessCheck() {}

  /** All findings, worst first, then as one walks along the rig, spares last. */
  public static List<Defect> of(Trip trip, Options options) {
    return of(trip, options, true);
  }

  /**
   * The same, readings of fitted tires counted or not: where there is a forecast, it judges them.
   */
  public static List<Defect> of(Trip trip, Options options, boolean fittedReadings) {
    Inspection inspection = new Inspection(trip, options);
    GatheredDefects findings = new GatheredDefects(trip.rig());
    RatingChecks.check(inspection, findings);
    WeightChecks.check(inspection, findings);
    TireLoadChecks.check(inspection, findings);
    AgeChecks.check(inspection, findings);
    TreadChecks.check(inspection, findings);
    SpeedChecks.check(inspection, findings);
    AxleMatchChecks.check(inspection, findings);
    PressureChecks.check(inspection, findings);
    ReadingChecks.check(inspection, findings, fittedReadings);
    DualReadingChecks.check(inspection, findings, fittedReadings);
    SpareChecks.check(inspection, findings);
    return findings.inOrder();
  }
}
