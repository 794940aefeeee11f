package dawngauge.fitness;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.tire.Capacity;
import dawngauge.trip.LabelFitment;
import dawngauge.trip.Rig;
import dawngauge.trip.Spare;
import dawngauge.trip.Tire;
import dawngauge.trip.Vehicle;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** Whether each spare can serve where it may have to. */
final class SpareChecks {

  private final Inspection inspection;
  private final Spare spare;
  private final Tire tire;
  private final Findings.Place place;

  private SpareChecks(Inspection inspection, Spare spare, Tire tire, Findings.Place place) {
    this.inspection = inspection;
    this.spare = spare;
    this.tire = tire;
    this.place = place;
  }

  static void check(Inspection inspection, Findings findings) {
    Rig rig = inspection.rig();
    Set<String> served = new HashSet<>();
    for (Spare spare : rig.spares()) {
      Tire tire = rig.tire(spare.tire()).orElse(null);
      if (tire != null) {
        List<Wheel> places = SparePlaces.of(inspection, spare, tire);
        places.forEach(wheel -> served.add(wheel.vehicle().name()));
        new SpareChecks(inspection, spare, tire, findings.spare(spare)).check(places);
      }
    }
    for (Vehicle vehicle : rig.vehicles()) {
      if (!served.contains(vehicle.name())) {
        findings
            .vehicle(vehicle)
            .add(
                Code.NO_SPARE,
                Severity.KNOW,
                Phrase.of("no spare in the file that fits it"),
                Phrase.of("carry one that fits, or note the one aboard"),
                Authority.commonPractice());
      }
    }
  }

  private void check(List<Wheel> places) {
    size(places);
    wheelMarks();
    if (places.isEmpty()) {
      return;
    }
    ratingGaps(places);
    load(places);
    pressure(places);
  }

  private void size(List<Wheel> places) {
    List<Wheel> misfits =
        SparePlaces.named(inspection, spare, tire).stream()
            .filter(wheel -> !SparePlaces.sizeFits(inspection.rig(), wheel))
            .toList();
    if (inspection.rig().specOf(tire).filter(spec -> spec.size() == null).isPresent()) {
      place.add(
          Code.SPARE_SIZE,
          Severity.KNOW,
          Phrase.of("its size is not known: whether it fits is not checked"),
          Phrase.of("type the size on its sidewall"),
          Authority.typed("sidewall of tire \"" + tire.type() + "\""));
    } else if (!misfits.isEmpty()) {
      place.add(
          Code.SPARE_SIZE,
          Severity.MEND,
          Phrase.of(
              "{0} is of another size than {1} takes", misfits.get(0).sizeWords(), axles(misfits)),
          Phrase.of("carry a spare of the right size"),
          Authority.regulation("49 CFR 570.62"));
    } else if (places.isEmpty()) {
      place.add(
          Code.SPARE_SIZE,
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
          Code.SPARE_WHEEL_UNKNOWN,
          Severity.KNOW,
          Phrase.of("what its wheel may carry, and at which pressure, is not known"),
          Phrase.of("read load and pressure off the wheel"),
          Authority.typed("spare wheel"));
    }
  }

  private void ratingGaps(List<Wheel> places) {
    for (Wheel wheel : places) {
      for (Problem problem : wheel.gaps()) {
        if (problem.code() != ProblemCode.LABEL_POINT_NOT_USED) {
          place.add(
              wheel.capacity() == null ? Code.RATING_UNKNOWN : Code.RATING_ASSUMED,
              Severity.KNOW,
              Phrase.of("{0}", problem.text()),
              Phrase.of("complete the figures"),
              Authority.typed("sidewall of tire \"" + tire.type() + "\""));
        }
      }
    }
  }

  private void load(List<Wheel> places) {
    List<Wheel> tooWeak = places.stream().filter(this::overloaded).toList();
    if (!tooWeak.isEmpty()) {
      double most = tooWeak.stream().mapToDouble(this::mostKilograms).min().orElseThrow();
      double load = tooWeak.stream().mapToDouble(this::loadKilograms).max().orElseThrow();
      place.add(
          Code.SPARE_LOAD,
          Severity.MEND,
          Phrase.of(
              "tire and wheel may carry {0}; up to {2} is asked for on {1}",
              new Mass(most), axles(tooWeak), new Mass(load)),
          Phrase.of("carry a spare rated for it, or do not count on it there"),
          Authority.regulation("49 CFR 393.75(g)"));
    }
  }

  private boolean overloaded(Wheel wheel) {
    return loadKilograms(wheel) > mostKilograms(wheel) + WeightChecks.ROUNDING;
  }

  /** What a place asks for: its load where weighed, else its share of the axle's rating. */
  private double loadKilograms(Wheel wheel) {
    boolean weighed = inspection.burdens().weighed(wheel.position().axle());
    return inspection
        .burdens()
        .tire(wheel.position())
        .map(burden -> (weighed ? burden.judged() : burden.likely()).kilograms())
        .orElse(Double.NaN);
  }

  /** What tire and wheel may carry at a place within their pressure limits; NaN if not known. */
  private double mostKilograms(Wheel wheel) {
    Capacity capacity = wheel.capacity();
    double ceiling = SparePlaces.ceilingPascals(inspection.rig(), spare, tire);
    double most =
        capacity == null
            ? Double.NaN
            : Double.isNaN(ceiling) ? capacity.mostKilograms() : capacity.kilogramsAt(ceiling);
    Entered<Mass> rim = spare.wheelMaxLoad();
    if (rim == null) {
      return most;
    }
    double rimMost = rim.value().kilograms();
    return Double.isNaN(most) ? rimMost : Math.min(most, rimMost);
  }

  private void pressure(List<Wheel> places) {
    double ceiling = SparePlaces.ceilingPascals(inspection.rig(), spare, tire);
    List<Wheel> over = places.stream().filter(asksMoreThan(ceiling)).toList();
    if (!over.isEmpty()) {
      double asked = over.stream().mapToDouble(wheel -> labelPascals(wheel)).max().orElseThrow();
      place.add(
          Code.SPARE_PRESSURE,
          Severity.MEND,
          Phrase.of(
              "tire and wheel may take {0}; up to {2} is asked for by the label of {1}",
              new GaugePressure(ceiling), axles(over), new GaugePressure(asked)),
          Phrase.of(
              "carry a spare that may take it; never fill this one above {0}",
              new GaugePressure(ceiling)),
          Authority.typed("limits on the spare's sidewall and wheel"));
    }
  }

  private static Predicate<Wheel> asksMoreThan(double ceiling) {
    return wheel -> labelPascals(wheel) > ceiling + Wheel.GRACE;
  }

  private static double labelPascals(Wheel wheel) {
    LabelFitment label = wheel.label();
    return label == null ? Double.NaN : label.coldPressure().value().pascals();
  }

  private static String axles(List<Wheel> wheels) {
    return Words.and(
        wheels.stream().map(wheel -> wheel.position().axle().words()).distinct().toList());
  }
}
