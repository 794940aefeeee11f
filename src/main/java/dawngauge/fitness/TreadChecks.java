package dawngauge.fitness;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.quantity.Entered;
import dawngauge.quantity.TreadDepth;
import dawngauge.quantity.Unit;
import dawngauge.rules.FittedTire;
import dawngauge.rules.SpareFit;
import dawngauge.trip.Spare;
import dawngauge.trip.Tire;
import java.util.Arrays;
import java.util.List;

/** Tread, and what was seen on the tires. */
final class TreadChecks {

  /** 49 CFR 393.75(b): front wheels of trucks. */
  static final TreadDepth STEERING = TreadDepth.of(4, Unit.THIRTY_SECOND_INCH);

  /** 49 CFR 393.75(c): all other wheels. */
  static final TreadDepth OTHERS = TreadDepth.of(2, Unit.THIRTY_SECOND_INCH);

  /** What trailer tires are run down to; common practice, no source. */
  static final TreadDepth TRAILER_PRACTICE = TreadDepth.of(4, Unit.THIRTY_SECOND_INCH);

  /** Meter; smaller differences are rounding of units. */
  private static final double ROUNDING = 1e-9;

  private TreadChecks() {}

  static void check(Inspection inspection, GatheredDefects findings) {
    for (FittedTire wheel : inspection.wheels()) {
      tire(wheel.tire(), wheel.steers(), wheel.onTrailer(), findings.tire(wheel.position()));
    }
    for (Spare spare : inspection.rig().spares()) {
      Tire tire = inspection.rig().tire(spare.tire()).orElse(null);
      if (tire != null) {
        List<FittedTire> places =
            SparePlaces.of(inspection, spare).stream().map(SpareFit::place).toList();
        tire(
            tire,
            places.stream().anyMatch(FittedTire::steers),
            places.stream().anyMatch(FittedTire::onTrailer),
            findings.spare(spare));
      }
    }
  }

  private static void tire(
      Tire tire, boolean steers, boolean trailer, GatheredDefects.Place place) {
    List<String> seen =
        Arrays.stream(Tire.Damage.values())
            .filter(damage -> tire.damage().contains(damage) && !damage.isRepair())
            .map(Tire.Damage::word)
            .toList();
    if (!seen.isEmpty()) {
      place.add(
          FindingKind.DAMAGE,
          Severity.STOP,
          Phrase.of("seen on it: {0}", Words.and(seen)),
          Phrase.of("take it off; have it inspected by a qualified technician"),
          Authority.regulation("49 CFR 393.75(a)"));
    }
    // A plug and a patch inside, in the tread only: so NHTSA's Tire Safety brochure, from memory.
    for (Tire.Damage repair : Tire.Damage.values()) {
      if (repair.isRepair() && tire.damage().contains(repair)) {
        place.add(
            FindingKind.POOR_REPAIR,
            Severity.MEND,
            Phrase.of("{0}: no lasting repair", repair.word()),
            Phrase.of(
                "have it patched inside by a qualified technician, in the tread only, or replace it"),
            Authority.commonPractice());
      }
    }
    Entered<TreadDepth> tread = tire.tread();
    if (tread == null) {
      place.add(
          FindingKind.NO_TREAD,
          Severity.KNOW,
          Phrase.of("no tread depth: wear is not checked"),
          Phrase.of("measure the shallowest groove"),
          Authority.regulation("49 CFR 393.75(b), (c)"));
      return;
    }
    TreadDepth legal = steers ? STEERING : OTHERS;
    if (under(tread.value(), legal)) {
      place.add(
          FindingKind.TREAD_BELOW_LEGAL,
          Severity.STOP,
          Phrase.of("tread {0}, under the legal limit of {1}", shown(tread.value()), legal),
          Phrase.of("replace it"),
          Authority.regulation(steers ? "49 CFR 393.75(b)" : "49 CFR 393.75(c)"));
    } else if (trailer && under(tread.value(), TRAILER_PRACTICE)) {
      place.add(
          FindingKind.TREAD_LOW,
          Severity.MEND,
          Phrase.of(
              "tread {0}, under the {1} at which trailer tires are replaced",
              shown(tread.value()), TRAILER_PRACTICE),
          Phrase.of("replace it; the law allows down to {0}", OTHERS),
          Authority.commonPractice());
    }
  }

  private static boolean under(TreadDepth tread, TreadDepth limit) {
    return tread.meters() < limit.meters() - ROUNDING;
  }

  /** With a decimal where whole 32nds would round it onto a limit. */
  private static Object shown(TreadDepth tread) {
    double parts = tread.in(Unit.THIRTY_SECOND_INCH);
    return Math.abs(parts - Math.rint(parts)) < 0.05 ? tread : new Phrase.Stated(tread, 1, 1);
  }
}
