package dawngauge.fitness;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Ratio;
import dawngauge.rules.Loads;
import dawngauge.tire.Capacity;
import dawngauge.trip.AxleRef;
import dawngauge.trip.WheelPosition;
import java.util.Optional;

/** What each tire and wheel carries against what it may, and whether the pressure to set does. */
final class TireLoadChecks {

  private static final Authority MARKED_LOAD = Authority.regulation("49 CFR 393.75(g)");
  private static final Authority PRESSURE_FOR_LOAD = Authority.regulation("49 CFR 393.75(i)(1)");

  private TireLoadChecks() {}

  static void check(Inspection inspection, Findings findings) {
    for (AxleRef ref : inspection.axles()) {
      sides(inspection, ref, findings);
    }
    for (Wheel wheel : inspection.wheels()) {
      Burdens.Burden burden = inspection.burdens().tire(wheel.position()).orElse(null);
      if (burden == null) {
        continue;
      }
      boolean weighed = inspection.burdens().weighed(wheel.position().axle());
      wheelLoad(wheel, burden, weighed, findings);
      Capacity capacity = wheel.capacity();
      if (capacity != null && weighed && !overloaded(wheel, capacity, burden, findings)) {
        pressure(inspection, wheel, capacity, burden, findings);
      }
    }
  }

  private static void sides(Inspection inspection, AxleRef ref, Findings findings) {
    for (WheelPosition position : inspection.rig().positions()) {
      Optional<Double> share = inspection.burdens().sideShare(position);
      if (position.axle().equals(ref)
          && share.isPresent()
          && share.get() > Loads.UNWEIGHED_SIDE_SHARE + 1e-9) {
        findings
            .axle(ref)
            .add(
                Code.UNEVEN_SIDES,
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
      Wheel wheel, Burdens.Burden burden, boolean weighed, Findings findings) {
    Entered<Mass> most = wheel.axle().wheelMaxLoad();
    if (most == null) {
      return;
    }
    double limit = most.value().kilograms() + WeightChecks.ROUNDING;
    boolean surely = burden.likely().kilograms() > limit;
    boolean maybe = weighed && burden.judged().kilograms() > limit;
    if (surely && !weighed) {
      findings
          .tire(wheel.position())
          .add(
              Code.WHEEL_OVERLOADED,
              Severity.MEND,
              Phrase.of(
                  "at the axle's GAWR the wheel would carry {0}, more than its limit of {1}",
                  burden.likely(), most.value()),
              Phrase.of("weigh the rig loaded, and fit wheels rated for the axle"),
              Authority.typed("load marked on the wheel"));
    } else if (surely || maybe) {
      findings
          .tire(wheel.position())
          .add(
              Code.WHEEL_OVERLOADED,
              surely ? Severity.STOP : Severity.MEND,
              Phrase.of(
                  "the wheel carries {0}{1} {2}, more than its limit of {3}",
                  surely ? burden.likely() : burden.judged(),
                  surely ? "" : " if load is shared unevenly",
                  burden.when(),
                  most.value()),
              surely ? Phrase.of("take load off this axle") : weighApart(),
              Authority.typed("load marked on the wheel"));
    }
  }

  /** Whether the tire carries more than it may at any allowed pressure; then says so. */
  private static boolean overloaded(
      Wheel wheel, Capacity capacity, Burdens.Burden burden, Findings findings) {
    double ceiling = wheel.ceilingPascals();
    boolean surely = tooMuch(capacity, burden.likely(), ceiling);
    if (!surely && !tooMuch(capacity, burden.judged(), ceiling)) {
      return false;
    }
    double most = Double.isNaN(ceiling) ? capacity.mostKilograms() : capacity.kilogramsAt(ceiling);
    findings
        .tire(wheel.position())
        .add(
            Code.TIRE_OVERLOADED,
            surely ? Severity.STOP : Severity.MEND,
            Phrase.of(
                "carries {0}{1} {2}, more than {3}",
                surely ? burden.likely() : burden.judged(),
                surely ? "" : " if load is shared unevenly",
                burden.when(),
                Double.isNaN(most)
                    ? "any known figure within its pressure limits"
                    : Phrase.of("the {0} it may at any allowed pressure", new Mass(most))),
            surely ? Phrase.of("take load off this axle") : weighApart(),
            MARKED_LOAD);
    return true;
  }

  private static boolean tooMuch(Capacity capacity, Mass load, double ceiling) {
    double needed = capacity.pascalsFor(load.kilograms() - WeightChecks.ROUNDING);
    return Double.isNaN(needed) || needed > ceiling + Wheel.GRACE;
  }

  private static Phrase weighApart() {
    return Phrase.of("weigh each axle and each side alone, or take load off this axle");
  }

  private static void pressure(
      Inspection inspection,
      Wheel wheel,
      Capacity capacity,
      Burdens.Burden burden,
      Findings findings) {
    Wheel.Aim aim = wheel.aim(true);
    double judged = burden.judged().kilograms();
    if (aim == null || !(judged > 0)) {
      return;
    }
    double ceiling = wheel.ceilingPascals();
    double wanted = capacity.pascalsFor(judged * (1 + inspection.reserve()));
    double needed = least(Double.isNaN(wanted) ? capacity.ratedPascals() : wanted, ceiling);
    double set = least(aim.pressure().pascals(), ceiling);
    Ratio reserve = new Ratio(inspection.reserve());
    if (needed > set + Wheel.GRACE) {
      findings
          .tire(wheel.position())
          .add(
              Code.PRESSURE_BELOW_LOAD,
              Severity.MEND,
              Phrase.of(
                  "carries {0} {1}; with a reserve of {2} that needs {3}, but {5} would be set, {4}",
                  burden.judged(),
                  burden.when(),
                  reserve,
                  new GaugePressure(needed),
                  aim.whose(),
                  aim.pressure()),
              Phrase.of("set it to at least {0} cold", new GaugePressure(needed)),
              PRESSURE_FOR_LOAD);
    }
    double left = capacity.kilogramsAt(Math.max(needed, set)) / judged - 1;
    if (left < inspection.reserve() - WeightChecks.ROUNDING / judged) {
      findings
          .tire(wheel.position())
          .add(
              Code.RESERVE_SMALL,
              Severity.KNOW,
              Phrase.of(
                  "carries {0} {1}; at the most it may be set to, {2}, it keeps a reserve of {3}, less"
                      + " than the {4} wanted",
                  burden.judged(),
                  burden.when(),
                  new GaugePressure(Math.max(needed, set)),
                  new Ratio(left),
                  reserve),
              Phrase.of("go lighter if you can; keep it at that pressure cold"),
              Authority.commonPractice());
    }
  }

  private static double least(double pascals, double ceiling) {
    return Double.isNaN(ceiling) ? pascals : Math.min(pascals, ceiling);
  }
}
