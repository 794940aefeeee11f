package dawngauge.fitness;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.rules.FittedTire;
import dawngauge.tire.Capacity;
import dawngauge.tire.TireClass;
import dawngauge.tire.TireSpec;
import dawngauge.trip.Axle;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelPosition;
import java.util.List;

/** Ratings of tires against the axle's rating. */
final class RatingChecks {

  /** Kilogram a tire: printed pound tables differ by 1 lb here and there from the load index. */
  private static final double TABLE_ROUNDING = 0.5;

  private RatingChecks() {}

  static void check(Inspection inspection, GatheredDefects findings) {
    emptyPlaces(inspection, findings);
    for (FittedTire wheel : inspection.wheels()) {
      gaps(wheel, findings);
    }
    for (AxleRef ref : inspection.axles()) {
      sum(inspection, ref, findings);
    }
  }

  private static void emptyPlaces(Inspection inspection, GatheredDefects findings) {
    for (WheelPosition position : inspection.rig().positions()) {
      if (inspection.rig().fittedAt(position).isEmpty()) {
        findings
            .tire(position)
            .add(
                FindingKind.NO_TIRE,
                Severity.KNOW,
                Phrase.of("no tire is named here in the file: nothing is checked"),
                Phrase.of("name the tire that is fitted"),
                Authority.typed("fitted tires"));
      }
    }
  }

  private static void gaps(FittedTire wheel, GatheredDefects findings) {
    for (Problem problem : wheel.gaps()) {
      if (problem.code() == ProblemCode.LABEL_POINT_NOT_USED) {
        continue; // the sum of the ratings tells
      }
      boolean unknown = wheel.capacity() == null;
      boolean wrong = problem.code() == ProblemCode.DUAL_LOAD_ABOVE_SINGLE;
      findings
          .tire(wheel.position())
          .add(
              unknown ? FindingKind.RATING_UNKNOWN : FindingKind.RATING_ASSUMED,
              wrong ? Severity.MEND : Severity.KNOW,
              Phrase.of("{0}", problem.text()),
              unknown
                  ? Phrase.of("complete the figures; until then its load is not checked")
                  : Phrase.of("complete the figures"),
              Authority.typed("sidewall of tire \"" + wheel.tire().type() + "\""));
    }
  }

  private static void sum(Inspection inspection, AxleRef ref, GatheredDefects findings) {
    Axle axle = inspection.rig().axle(ref).orElseThrow();
    Entered<Mass> gawr = axle.gawr();
    if (gawr == null) {
      findings
          .axle(ref)
          .add(
              FindingKind.NO_GAWR,
              Severity.KNOW,
              Phrase.of("no axle rating (GAWR): neither tires nor weight are held against it"),
              Phrase.of("read the GAWR off the certification label"),
              Authority.regulation("49 CFR 567.4(g)"));
      return;
    }
    List<FittedTire> wheels = inspection.wheels(ref);
    if (wheels.size() < 2 * axle.tiresPerSide()) {
      return;
    }
    double sum = 0;
    boolean divided = false;
    for (FittedTire wheel : wheels) {
      Capacity capacity = wheel.capacity();
      if (capacity == null) {
        return;
      }
      sum += capacity.ratedKilograms();
      divided |= countsDivided(wheel);
    }
    if (sum + TABLE_ROUNDING * wheels.size() < gawr.value().kilograms()) {
      findings
          .axle(ref)
          .add(
              FindingKind.RATINGS_BELOW_GAWR,
              Severity.MEND,
              Phrase.of(
                  "its tires are rated {0} together{1}, less than the axle's GAWR of {2}",
                  new Mass(sum),
                  (axle.dual() ? " as duals" : "")
                      + (divided
                          ? ", a passenger-car tire counted at its rating divided by 1.10"
                          : ""),
                  gawr.value()),
              Phrase.of("fit tires rated for the axle, on wheels that suit them"),
              Authority.regulation(
                  "49 CFR 571.110 S4.2.2.1, 571.120 S5.1.2" + (divided ? ", S4.2.2.2" : "")));
    }
  }

  private static boolean countsDivided(FittedTire wheel) {
    TireSpec spec = wheel.spec();
    TireClass known = spec == null ? null : spec.classOrFromSize();
    return wheel.vehicle().kind() != Vehicle.Kind.CAR
        && (known == null || known == TireClass.PASSENGER);
  }
}
