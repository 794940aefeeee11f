package dawngauge.fitness;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Ratio;
import dawngauge.rules.FittedTire;
import dawngauge.rules.Limits;
import dawngauge.rules.Loads;
import dawngauge.rules.SpareFit;
import dawngauge.tire.Capacity;
import dawngauge.trip.AxleRef;
import dawngauge.trip.WheelPosition;
import java.util.Optional;

/** What each tire and wheel carries against what it may, and whether the pressure to set does. */
final class TireLoadChecks {

  private static final Authority MARKED_LOAD = Authority.regulation("49 CFR 393.75(g)");
  private static final Authority PRESSURE_FOR_LOAD = Authority.regulation("49 CFR 393.75(i)(1)");

  private TireLoadChecks() {}

  static void check(Inspection inspection, GatheredDefects findings) {
    for (AxleRef ref : inspection.axles()) {
      sides(inspection, ref, findings);
    }
    for (FittedTire wheel : inspection.wheels()) {
      PeakLoads.Burden burden = inspection.burdens().tire(wheel.position()).orElse(null);
      if (burden == null) {
        continue;
      }
      wheelLoad(inspection, wheel, burden, findings);
      Limits limits = inspection.limits(wheel);
      if (limits.overloaded()) {
        overloaded(inspection, wheel, limits, burden, findings);
      } else if (wheel.capacity() != null) {
        reserve(inspection, wheel, limits, burden, findings);
      }
    }
  }

  private static void sides(Inspection inspection, AxleRef ref, GatheredDefects findings) {
    for (WheelPosition position : inspection.rig().positions()) {
      Optional<Double> share = inspection.burdens().sideShare(position);
      if (position.axle().equals(ref)
          && share.isPresent()
          && share.get() > Loads.HEAVIEST_SIDE + 1e-9) {
        findings
            .axle(ref)
            .add(
                FindingKind.UNEVEN_SIDES,
                Severity.KNOW,
                Phrase.of(
                    "its {0} side carries {1} of its load: more than 52.5 to 47.5",
                    position.slot().isLeft() ? "left" : "right", new Ratio(share.get())),
                Phrase.of(
                    "shift load to the other side if you can; one pressure for the axle, that of the"
                        + " heavier side"),
                Authority.inferred("52.5 to 47.5 counts as even; common practice, no source"));
        return;
      }
    }
  }

  private static void wheelLoad(
      Inspection inspection, FittedTire wheel, PeakLoads.Burden burden, GatheredDefects findings) {
    Entered<Mass> most = wheel.axle().wheelMaxLoad();
    if (most == null) {
      return;
    }
    double limit = most.value().kilograms() + SpareFit.ROUNDING;
    boolean over = burden.likely().kilograms() > limit;
    if (over || burden.heaviest().kilograms() > limit) {
      findings
          .tire(wheel.position())
          .add(
              FindingKind.WHEEL_OVERLOADED,
              over ? Severity.STOP : Severity.KNOW,
              over
                  ? Phrase.of(
                      "the wheel carries {0} {1}, more than its limit of {2}",
                      burden.likely(), burden.when(), most.value())
                  : Phrase.of(
                      "the wheel may be overloaded: it carries {0} if load is shared evenly, {1} at"
                          + " worst {2}; its limit is {3}",
                      burden.likely(), burden.heaviest(), burden.when(), most.value()),
              over ? lighten(inspection, wheel) : weighApart(),
              Authority.typed("load marked on the wheel"));
    }
  }

  /** The tire carries more than it may at any allowed pressure. */
  private static void overloaded(
      Inspection inspection,
      FittedTire wheel,
      Limits limits,
      PeakLoads.Burden burden,
      GatheredDefects findings) {
    Capacity capacity = wheel.capacity();
    if (capacity == null) {
      return;
    }
    findings
        .tire(wheel.position())
        .add(
            FindingKind.TIRE_OVERLOADED,
            Severity.STOP,
            Phrase.of(
                "carries {0} {1}, more than the {2} it may at any allowed pressure",
                burden.likely(), burden.when(), new Mass(limits.mostKilograms(capacity))),
            lighten(inspection, wheel),
            MARKED_LOAD);
  }

  private static Phrase lighten(Inspection inspection, FittedTire wheel) {
    return inspection.burdens().weighed(wheel.position().axle())
        ? Phrase.of("take load off this axle")
        : Phrase.of("take load off this axle, or weigh each wheel");
  }

  private static Phrase weighApart() {
    return Phrase.of("weigh each axle and each side alone");
  }

  /** What is left over the load at the pressure that is set; advice, no more. */
  private static void reserve(
      Inspection inspection,
      FittedTire wheel,
      Limits limits,
      PeakLoads.Burden burden,
      GatheredDefects findings) {
    double left = limits.marginAt(limits.aim());
    if (!(left < inspection.reserve() - SpareFit.ROUNDING / burden.likely().kilograms())) {
      return;
    }
    GaugePressure aim = new GaugePressure(limits.aim());
    boolean shown = left >= 0 || !Double.isNaN(limits.certified());
    findings
        .tire(wheel.position())
        .add(
            shown ? FindingKind.RESERVE_SMALL : FindingKind.LOAD_NOT_SHOWN,
            shown ? Severity.KNOW : Severity.MEND,
            shown
                ? Phrase.of(
                    "carries {0} {1}; set to {2} that leaves {3} to spare; {4} is common practice",
                    burden.likely(),
                    burden.when(),
                    aim,
                    new Ratio(Math.max(0, left)),
                    new Ratio(inspection.reserve()))
                : Phrase.of(
                    "carries {0} {1}; at the {2} that it is set to this cannot be shown to be carried",
                    burden.likely(), burden.when(), aim),
            shown
                ? Phrase.of("go lighter if you can")
                : Phrase.of("type the maker's load rows, weigh each wheel, or lighten it"),
            shown ? Authority.commonPractice() : PRESSURE_FOR_LOAD);
  }
}
