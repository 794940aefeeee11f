package dawngauge.fitness;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.rules.FittedTire;
import dawngauge.rules.SpareFit;
import dawngauge.trip.Rig;
import dawngauge.trip.Spare;
import dawngauge.trip.Tire;
import dawngauge.trip.Vehicle;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Whether each spare can serve where it may have to. */
final class SpareChecks {

  private final Inspection inspection;
  private final Spare spare;
  private final Tire tire;
  private final GatheredDefects.Place place;

  private SpareChecks(Inspection inspection, Spare spare, Tire tire, GatheredDefects.Place place) {
    this.inspection = inspection;
    this.spare = spare;
    this.tire = tire;
    this.place = place;
  }

  static void check(Inspection inspection, GatheredDefects findings) {
    Rig rig = inspection.rig();
    Set<String> served = new HashSet<>();
    for (Spare spare : rig.spares()) {
      Tire tire = rig.tire(spare.tire()).orElse(null);
      if (tire != null) {
        List<SpareFit> places = SparePlaces.of(inspection, spare);
        places.forEach(fit -> served.add(fit.place().vehicle().name()));
        new SpareChecks(inspection, spare, tire, findings.spare(spare)).check(places);
      }
    }
    for (Vehicle vehicle : rig.vehicles()) {
      if (!served.contains(vehicle.name())) {
        findings
            .vehicle(vehicle)
            .add(
                FindingKind.NO_SPARE,
                Severity.KNOW,
                Phrase.of("no spare in the file that fits it"),
                Phrase.of("carry one that fits, or note the one aboard"),
                Authority.commonPractice());
      }
    }
  }

  private void check(List<SpareFit> places) {
    size(places);
    wheelMarks();
    if (places.isEmpty()) {
      return;
    }
    ratingGaps(places);
    load(places);
    pressure(places);
  }

  private void size(List<SpareFit> places) {
    List<SpareFit> misfits =
        SparePlaces.named(inspection, spare).stream()
            .filter(fit -> !fit.sizeFits(inspection.rig()))
            .toList();
    if (inspection.rig().specOf(tire).filter(spec -> spec.size() == null).isPresent()) {
      place.add(
          FindingKind.SPARE_SIZE,
          Severity.KNOW,
          Phrase.of("its size is not known: whether it fits is not checked"),
          Phrase.of("type the size on its sidewall"),
          Authority.typed("sidewall of tire \"" + tire.type() + "\""));
    } else if (!misfits.isEmpty()) {
      place.add(
          FindingKind.SPARE_SIZE,
          Severity.MEND,
          Phrase.of(
              "{0} is of another size than {1} takes",
              misfits.get(0).place().sizeWords(), axles(misfits)),
          Phrase.of("carry a spare of the right size"),
          Authority.regulation("49 CFR 570.62"));
    } else if (places.isEmpty()) {
      place.add(
          FindingKind.SPARE_SIZE,
          Severity.MEND,
          Phrase.of(
              "its size fits no axle of single wheels, and none is named that it is meant for"),
          Phrase.of("carry a spare of the right size, or name the axles it is meant for"),
          Authority.regulation("49 CFR 570.62"));
    }
  }

  private void wheelMarks() {
    if (spare.wheelMaxPressure() == null || spare.wheelMaxLoad() == null) {
      place.add(
          FindingKind.SPARE_WHEEL_UNKNOWN,
          Severity.KNOW,
          Phrase.of("what its wheel may carry, and at which pressure, is not known"),
          Phrase.of("read load and pressure off the wheel"),
          Authority.typed("spare wheel"));
    }
  }

  private void ratingGaps(List<SpareFit> places) {
    for (SpareFit fit : places) {
      FittedTire wheel = fit.place();
      for (Problem problem : wheel.gaps()) {
        if (problem.code() != ProblemCode.LABEL_POINT_NOT_USED) {
          place.add(
              wheel.capacity() == null ? FindingKind.RATING_UNKNOWN : FindingKind.RATING_ASSUMED,
              Severity.KNOW,
              Phrase.of("{0}", problem.text()),
              Phrase.of("complete the figures"),
              Authority.typed("sidewall of tire \"" + tire.type() + "\""));
        }
      }
    }
  }

  private void load(List<SpareFit> places) {
    List<SpareFit> tooWeak = places.stream().filter(this::overloaded).toList();
    if (!tooWeak.isEmpty()) {
      double most = tooWeak.stream().mapToDouble(SpareFit::mostKilograms).min().orElseThrow();
      double load = tooWeak.stream().mapToDouble(this::loadKilograms).max().orElseThrow();
      place.add(
          FindingKind.SPARE_LOAD,
          Severity.MEND,
          Phrase.of(
              "tire and wheel may carry {0}; up to {2} is asked for on {1}",
              new Mass(most), axles(tooWeak), new Mass(load)),
          Phrase.of("carry a spare rated for it, or do not count on it there"),
          Authority.regulation("49 CFR 393.75(g)"));
    }
  }

  private boolean overloaded(SpareFit fit) {
    return loadKilograms(fit) > fit.mostKilograms() + SpareFit.ROUNDING;
  }

  /**
   * What a place asks for: its likely load, or its share of the axle's rating where not weighed.
   */
  private double loadKilograms(SpareFit fit) {
    return inspection.burdens().weighed(fit.place().position().axle())
        ? inspection.burdens().heaviest(fit.place().position()).kilograms()
        : fit.place().gawrShare();
  }

  private void pressure(List<SpareFit> places) {
    List<SpareFit> over = places.stream().filter(fit -> !fit.takesTheLabel()).toList();
    if (!over.isEmpty()) {
      GaugePressure ceiling = new GaugePressure(over.get(0).ceilingPascals());
      double asked =
          over.stream().mapToDouble(fit -> fit.place().labelPascals()).max().orElseThrow();
      place.add(
          FindingKind.SPARE_PRESSURE,
          Severity.MEND,
          Phrase.of(
              "tire and wheel may take {0}; up to {2} is asked for by the label of {1}",
              ceiling, axles(over), new GaugePressure(asked)),
          Phrase.of("carry a spare that may take it; never fill this one above {0}", ceiling),
          Authority.typed("limits on the spare's sidewall and wheel"));
    }
  }

  private static String axles(List<SpareFit> fits) {
    return Words.and(
        fits.stream().map(fit -> fit.place().position().axle().words()).distinct().toList());
  }
}
