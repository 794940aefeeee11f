package dawngauge.fitness;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Ratio;
import dawngauge.rules.FittedTire;
import dawngauge.rules.GaugeErrors;
import dawngauge.rules.Limits;
import dawngauge.rules.RanLow;
import dawngauge.rules.SettingBand;
import dawngauge.rules.SpareFit;
import dawngauge.trip.Gauge;
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

  private static final Authority GAUGED = Authority.typed("cold readings");

  private final Inspection inspection;
  private final GatheredDefects findings;

  private ReadingChecks(Inspection inspection, GatheredDefects findings) {
    this.inspection = inspection;
    this.findings = findings;
  }

  static void check(Inspection inspection, GatheredDefects findings, boolean fitted) {
    ReadingChecks checks = new ReadingChecks(inspection, findings);
    for (FittedTire wheel : fitted ? inspection.wheels() : List.<FittedTire>of()) {
      checks.fitted(wheel);
    }
    for (Spare spare : inspection.rig().spares()) {
      inspection.rig().tire(spare.tire()).ifPresent(tire -> checks.spare(spare, tire));
    }
  }

  private void fitted(FittedTire wheel) {
    LogEvent.Reading reading = inspection.latestCold(wheel.tire()).orElse(null);
    GatheredDefects.Place place = findings.tire(wheel.position());
    if (reading != null && judged(reading, place)) {
      Limits limits = inspection.limits(wheel);
      high(
          reading,
          limits.ceiling(),
          SettingBand.letOutAbove(limits, wheel, GaugeErrors.of(gauge(reading))),
          place);
      low(reading, List.of(limits), limits.reference(), place);
    }
  }

  private void spare(Spare spare, Tire tire) {
    GatheredDefects.Place place = findings.spare(spare);
    LogEvent.Reading reading = inspection.latestCold(tire).orElse(null);
    if (reading == null) {
      place.add(
          FindingKind.SPARE_NOT_GAUGED,
          Severity.KNOW,
          Phrase.of("no cold reading: its pressure is not known"),
          Phrase.of("gauge it before leaving, and log the reading"),
          Authority.commonPractice());
    } else if (judged(reading, place)) {
      List<SpareFit> places = SparePlaces.of(inspection, spare);
      GaugeErrors errors = GaugeErrors.of(gauge(reading));
      double ceiling = SparePlaces.ceilingPascals(inspection.rig(), spare, tire);
      List<Limits> limits = places.stream().map(SpareFit::place).map(inspection::limits).toList();
      double reference = limits.stream().mapToDouble(Limits::reference).max().orElse(Double.NaN);
      high(reading, ceiling, ceiling + errors.deadBand(ceiling), place);
      low(reading, limits, reference, place);
    }
  }

  /** Whether a reading can be judged as it stands; says so if not. */
  private boolean judged(LogEvent.Reading reading, GatheredDefects.Place place) {
    Gauge gauge = gauge(reading);
    if (gauge == null || gauge.kind() == Gauge.Kind.OPEN) {
      return true;
    }
    place.add(
        FindingKind.READING_NOT_JUDGED,
        Severity.KNOW,
        Phrase.of(
            "its last cold reading is by gauge \"{0}\", which subtracts sea level and reads low on"
                + " high ground: not judged here",
            reading.gauge()),
        Phrase.of("read it with a gauge that is open to the air"),
        GAUGED);
    return false;
  }

  private void high(
      LogEvent.Reading reading, double ceiling, double most, GatheredDefects.Place place) {
    GaugePressure pressure = reading.pressure().value();
    if (pressure.pascals() > most) {
      place.add(
          FindingKind.READING_HIGH,
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
      List<Limits> limits,
      double reference,
      GatheredDefects.Place place) {
    GaugePressure pressure = reading.pressure().value();
    GaugeErrors errors = GaugeErrors.of(gauge(reading));
    RanLow ranLow = RanLow.of(pressure.pascals(), errors.sigma(), reference);
    double under = 0;
    for (Limits each : limits) {
      under = Math.max(under, each.tooLittle(pressure.pascals(), errors));
    }
    if (ranLow != RanLow.NO) {
      boolean likely = ranLow == RanLow.LIKELY;
      place.add(
          FindingKind.READING_LOW,
          likely ? Severity.STOP : Severity.MEND,
          Phrase.of(
              likely
                  ? "read {0} cold, 80 % or less of {1}"
                  : "read {0} cold, which may be 80 % or less of {1}",
              pressure,
              new GaugePressure(reference)),
          likely
              ? Phrase.of(
                  "if it may have rolled so, do not just add air and go: it may be damaged inside;"
                      + " have it inspected by a qualified technician; if it only stood, find out why"
                      + " it is low")
              : Phrase.of("gauge it again, with another gauge, before it rolls"),
          Authority.regulation("29 CFR 1910.177(f)(2)"));
    } else if (under > inspection.allowed()) {
      place.add(
          FindingKind.READING_LOW,
          Severity.MEND,
          Phrase.of(
              "read {0} cold: {1} chance that its load needs more", pressure, new Ratio(under)),
          Phrase.of("add air before it rolls, and find out why it is low"),
          Authority.regulation("49 CFR 393.75(i)(1)"));
    }
  }

  private @Nullable Gauge gauge(LogEvent.Reading reading) {
    return inspection.rig().gauge(reading.gauge()).orElse(null);
  }
}
