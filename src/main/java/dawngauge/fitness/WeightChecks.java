package dawngauge.fitness;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.rules.Loads;
import dawngauge.rules.SpareFit;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Hitch;
import dawngauge.trip.Vehicle;

/** Weights of axles and vehicles against their ratings. */
final class WeightChecks {

  /** Kilogram by which figures rounded in different units may differ. */
  static final double ROUNDING = SpareFit.ROUNDING;

  /** From this part of its GAWR on an axle counts as full; ours. */
  private static final double NEARLY_FULL = 0.95;

  private static final Authority LABEL =
      Authority.regulation("ratings on the certification label, 49 CFR 567.4(g)");

  private WeightChecks() {}

  static void check(Inspection inspection, GatheredDefects findings) {
    for (AxleRef ref : inspection.axles()) {
      if (inspection.burdens().weighed(ref)) {
        axle(inspection, ref, findings);
      } else {
        notWeighed(inspection, ref, findings);
      }
    }
    for (Vehicle vehicle : inspection.rig().vehicles()) {
      vehicle(inspection, vehicle, findings);
    }
  }

  private static void notWeighed(Inspection inspection, AxleRef ref, GatheredDefects findings) {
    boolean rated = inspection.burdens().basis(ref) == Loads.Basis.NOT_WEIGHED;
    boolean trailer =
        inspection
            .rig()
            .vehicle(ref.vehicle())
            .filter(vehicle -> vehicle.kind() == Vehicle.Kind.TRAILER)
            .isPresent();
    findings
        .axle(ref)
        .add(
            FindingKind.NOT_WEIGHED,
            Severity.KNOW,
            rated
                ? Phrase.of(
                    "no scale weight: its load is taken as 79 % of its GAWR, give or take 11, if no"
                        + " axle is over its GAWR")
                : Phrase.of("neither a scale weight nor a GAWR: its load is not checked"),
            trailer
                ? Phrase.of(
                    "weigh the rig loaded and hitched; a trailer is weighed empty and loaded")
                : Phrase.of("weigh the rig loaded and hitched"),
            Authority.commonPractice());
  }

  private static void axle(Inspection inspection, AxleRef ref, GatheredDefects findings) {
    Entered<Mass> gawr = inspection.rig().axle(ref).orElseThrow().gawr();
    PeakLoads.Burden burden = inspection.burdens().axle(ref).orElseThrow();
    if (gawr == null) {
      return;
    }
    double most = gawr.value().kilograms() + ROUNDING;
    if (burden.likely().kilograms() > most) {
      findings
          .axle(ref)
          .add(
              FindingKind.AXLE_OVER_GAWR,
              Severity.STOP,
              Phrase.of(
                  "carries {0} {1}, more than its GAWR of {2}",
                  burden.likely(), burden.when(), gawr.value()),
              Phrase.of("take load off this axle"),
              LABEL);
    } else if (burden.heaviest().kilograms() > most) {
      findings
          .axle(ref)
          .add(
              FindingKind.GROUP_NEAR_GAWR,
              Severity.KNOW,
              Phrase.of(
                  "was weighed together with another axle; at an equal share it carries {0} {1}, but"
                      + " 10 % more would be {2}, above its GAWR of {3}",
                  burden.likely(), burden.when(), burden.heaviest(), gawr.value()),
              Phrase.of("weigh each axle alone"),
              Authority.inferred("axles weighed together may share 10 % unequally"));
    } else if (burden.likely().kilograms() > NEARLY_FULL * gawr.value().kilograms()) {
      findings
          .axle(ref)
          .add(
              FindingKind.NOTHING_TO_SPARE,
              Severity.KNOW,
              Phrase.of(
                  "carries {0} {1}, within 5 % of its GAWR of {2}: nothing to spare",
                  burden.likely(), burden.when(), gawr.value()),
              Phrase.of("weigh each wheel, and load no more on it"),
              Authority.inferred("within 5 % of the rating counts as full"));
    }
  }

  private static void vehicle(Inspection inspection, Vehicle vehicle, GatheredDefects findings) {
    Entered<Mass> gvwr = vehicle.gvwr();
    if (gvwr == null) {
      findings
          .vehicle(vehicle)
          .add(
              FindingKind.NO_GVWR,
              Severity.KNOW,
              Phrase.of("no vehicle rating (GVWR): its weight is not held against it"),
              Phrase.of("read the GVWR off the certification label"),
              LABEL);
      return;
    }
    PeakLoads.Burden burden = inspection.burdens().vehicle(vehicle).orElse(null);
    if (burden == null) {
      return; // its axles say that they were not weighed
    }
    boolean trailer = vehicle.kind() == Vehicle.Kind.TRAILER;
    boolean whole = inspection.burdens().wholeWeightKnown(vehicle);
    if (burden.likely().kilograms() > gvwr.value().kilograms() + ROUNDING) {
      findings
          .vehicle(vehicle)
          .add(
              FindingKind.VEHICLE_OVER_GVWR,
              Severity.STOP,
              Phrase.of(
                  "weighs {0} {1}{2}, more than its GVWR of {3}",
                  burden.likely(),
                  burden.when(),
                  !trailer ? "" : whole ? ", hitch load included" : " on its axles alone",
                  gvwr.value()),
              Phrase.of("take load off"),
              LABEL);
    } else if (!whole) {
      findings
          .vehicle(vehicle)
          .add(
              FindingKind.HITCH_LOAD_UNKNOWN,
              Severity.KNOW,
              Phrase.of(
                  "its axles carry {0} {1}, but it was weighed hitched and the hitch load is not known:"
                      + " its GVWR of {2} is not checked",
                  burden.likely(), burden.when(), gvwr.value()),
              Phrase.of(
                  "weigh the hitch load; a trailer ball carries about {0} of the trailer, a"
                      + " gooseneck {1}",
                  Hitch.Kind.BUMPER.usual(), Hitch.Kind.GOOSENECK.usual()),
              Authority.commonPractice());
    }
  }
}
