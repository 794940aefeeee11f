package dawngauge.fitness;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.tire.Capacity;
import dawngauge.trip.Gauge;
import dawngauge.trip.LabelFitment;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Spare;
import dawngauge.trip.Tire;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The latest cold reading of each tire against its limits, as read: weather and height are not
 * counted in.
 */
final class ReadingChecks {

  /** 29 CFR 1910.177(f)(2): run at 80 % or less of the recommended pressure. */
  private static final double RAN_LOW = 0.8;

  /** Grace where the gauge's step is not known: half a psi. */
  private static final GaugePressure GRACE = GaugePressure.of(0.5, Unit.PSI);

  private static final Authority GAUGED = Authority.typed("cold readings");

  private final Inspection inspection;
  private final Findings findings;

  private ReadingChecks(Inspection inspection, Findings findings) {
    this.inspection = inspection;
    this.findings = findings;
  }

  static void check(Inspection inspection, Findings findings) {
    ReadingChecks checks = new ReadingChecks(inspection, findings);
    for (Wheel wheel : inspection.wheels()) {
      checks.fitted(wheel);
    }
    for (Spare spare : inspection.rig().spares()) {
      inspection.rig().tire(spare.tire()).ifPresent(tire -> checks.spare(spare, tire));
    }
  }

  private void fitted(Wheel wheel) {
    LogEvent.Reading reading = inspection.latestCold(wheel.tire()).orElse(null);
    Findings.Place place = findings.tire(wheel.position());
    if (reading != null && judged(reading, place)) {
      double ceiling = wheel.ceilingPascals();
      high(reading, ceiling, place);
      low(reading, floor(wheel), recommended(wheel), ceiling, place);
    }
  }

  private void spare(Spare spare, Tire tire) {
    Findings.Place place = findings.spare(spare);
    LogEvent.Reading reading = inspection.latestCold(tire).orElse(null);
    if (reading == null) {
      place.add(
          Code.SPARE_NOT_GAUGED,
          Severity.KNOW,
          Phrase.of("no cold reading: its pressure is not known"),
          Phrase.of("gauge it before leaving, and log the reading"),
          Authority.commonPractice());
    } else if (judged(reading, place)) {
      List<Wheel> places = SparePlaces.of(inspection, spare, tire);
      double ceiling = SparePlaces.ceilingPascals(inspection.rig(), spare, tire);
      double floor =
          places.stream().mapToDouble(this::floor).filter(p -> p > 0).max().orElse(Double.NaN);
      double recommended =
          places.stream()
              .mapToDouble(ReadingChecks::recommended)
              .filter(p -> p > 0)
              .max()
              .orElse(Double.NaN);
      high(reading, ceiling, place);
      low(reading, floor, recommended, ceiling, place);
    }
  }

  /** Lowest pressure for the load on the trip; NaN where that is not known. */
  private double floor(Wheel wheel) {
    Capacity capacity = wheel.capacity();
    return capacity == null || !inspection.burdens().weighed(wheel.position().axle())
        ? Double.NaN
        : inspection
            .burdens()
            .tire(wheel.position())
            .map(burden -> capacity.pascalsFor(burden.judged().kilograms()))
            .orElse(Double.NaN);
  }

  private static double recommended(Wheel wheel) {
    LabelFitment label = wheel.label();
    return label == null ? Double.NaN : label.coldPressure().value().pascals();
  }

  /** Whether a reading can be judged as it stands; says so if not. */
  private boolean judged(LogEvent.Reading reading, Findings.Place place) {
    Gauge gauge = gauge(reading);
    if (gauge == null || gauge.kind() == Gauge.Kind.OPEN) {
      return true;
    }
    place.add(
        Code.READING_NOT_JUDGED,
        Severity.KNOW,
        Phrase.of(
            "its last cold reading is by gauge \"{0}\", which subtracts sea level and reads low on"
                + " high ground: not judged here",
            reading.gauge()),
        Phrase.of("read it with a gauge that is open to the air"),
        GAUGED);
    return false;
  }

  private void high(LogEvent.Reading reading, double ceiling, Findings.Place place) {
    GaugePressure pressure = reading.pressure().value();
    if (pressure.pascals() > ceiling + grace(reading)) {
      place.add(
          Code.READING_HIGH,
          Severity.MEND,
          Phrase.of(
              "read {0} cold, above the {1} that tire, wheel and valve may take",
              pressure, new GaugePressure(ceiling)),
          Phrase.of("let air out while it is cold, never when warm"),
          GAUGED);
    }
  }

  private void low(
      LogEvent.Reading reading,
      double floor,
      double recommended,
      double ceiling,
      Findings.Place place) {
    GaugePressure pressure = reading.pressure().value();
    if (pressure.pascals() <= RAN_LOW * recommended + Wheel.GRACE) {
      place.add(
          Code.READING_LOW,
          Severity.STOP,
          Phrase.of(
              "read {0} cold, 80 % or less of the {1} on the label",
              pressure, new GaugePressure(recommended)),
          Phrase.of(
              "if it may have rolled so, do not just add air and go: it may be damaged inside; have"
                  + " it inspected by a qualified technician; if it only stood, find out why it is"
                  + " low"),
          Authority.regulation("29 CFR 1910.177(f)(2)"));
    } else if (pressure.pascals() < floor - grace(reading) && !(floor > ceiling + Wheel.GRACE)) {
      place.add(
          Code.READING_LOW,
          Severity.MEND,
          Phrase.of(
              "read {0} cold, less than the {1} that its load needs",
              pressure, new GaugePressure(floor)),
          Phrase.of("add air before it rolls, and find out why it is low"),
          Authority.regulation("49 CFR 393.75(i)(1)"));
    }
  }

  private @Nullable Gauge gauge(LogEvent.Reading reading) {
    return inspection.rig().gauge(reading.gauge()).orElse(null);
  }

  /** Half a step of the gauge. */
  private double grace(LogEvent.Reading reading) {
    Gauge gauge = gauge(reading);
    return gauge == null ? GRACE.pascals() : gauge.step().value().pascals() / 2;
  }
}
