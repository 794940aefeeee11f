package dawngauge.fitness;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.rules.FittedTire;
import dawngauge.rules.LimitFinder;
import dawngauge.tire.TireSpec;
import dawngauge.trip.AxleRef;
import dawngauge.trip.LabelFitment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The certification label and a chosen target against the tires and what they sit on. */
final class PressureChecks {

  private static final Authority LABEL = Authority.regulation("49 CFR 571.120 S5.3.1");

  private PressureChecks() {}

  static void check(Inspection inspection, GatheredDefects findings) {
    for (AxleRef ref : inspection.axles()) {
      if (inspection.rig().axle(ref).orElseThrow().label().isEmpty()) {
        findings
            .axle(ref)
            .add(
                FindingKind.NO_LABEL,
                Severity.KNOW,
                Phrase.of("no tire size and cold pressure from the certification label"),
                Phrase.of("read them off the label or placard"),
                Authority.regulation("49 CFR 567.4(g)"));
      }
    }
    for (FittedTire wheel : inspection.wheels()) {
      label(wheel, findings);
      Entered<GaugePressure> target = wheel.axle().target();
      if (target != null) {
        target(inspection, wheel, target.value(), findings);
      }
    }
  }

  private static void label(FittedTire wheel, GatheredDefects findings) {
    LabelFitment label = wheel.label();
    if (label == null) {
      return;
    }
    GaugePressure pressure = label.coldPressure().value();
    above(wheel, pressure)
        .ifPresent(
            lowest ->
                aboveLimit(
                    wheel,
                    Phrase.of("{0}", label.above(lowest.pressure(), "").text()),
                    lowest,
                    findings));
    TireSpec spec = wheel.spec();
    if (wheel.labelSpeaks() || spec == null) {
      return;
    }
    findings
        .tire(wheel.position())
        .add(
            FindingKind.LABEL_OF_OTHER_TIRE,
            Severity.KNOW,
            Phrase.of(
                "the label does not speak for this tire: it gives {0} for {1}, fitted is {2}",
                pressure,
                kind(label.size(), label.loadRange()),
                kind(wheel.sizeWords(), spec.loadRange())),
            Phrase.of("have a tire technician confirm pressure and wheel for this tire"),
            LABEL);
    if (wheel.rimMayBeForOtherTire()) {
      findings
          .tire(wheel.position())
          .add(
              FindingKind.RIM_LIMIT_UNKNOWN,
              Severity.MEND,
              Phrase.of(
                  "the label is of another tire, and the limit of {0} is not known, which may be made for"
                      + " the label's tire only, so no more than {1}",
                  rimUnknown(wheel), pressure),
              Phrase.of("read the limits off wheel and valve, or ask a tire technician"),
              Authority.inferred(
                  "without its marking a wheel counts as made for the label's tire"));
    }
  }

  private static String kind(String size, @Nullable String range) {
    return range == null ? size : size + " load range " + range;
  }

  private static String rimUnknown(FittedTire wheel) {
    List<String> unknown = new ArrayList<>();
    if (wheel.axle().wheelMaxPressure() == null) {
      unknown.add("the wheel");
    }
    if (wheel.axle().valveMaxPressure() == null) {
      unknown.add("the valve");
    }
    return Words.and(unknown);
  }

  /** The lowest limit, where a pressure is above it. */
  private static Optional<FittedTire.PressureLimit> above(
      FittedTire wheel, GaugePressure pressure) {
    return wheel
        .lowestLimit()
        .filter(lowest -> pressure.pascals() > lowest.pressure().pascals() + LimitFinder.GRACE);
  }

  private static void aboveLimit(
      FittedTire wheel, Phrase what, FittedTire.PressureLimit lowest, GatheredDefects findings) {
    findings
        .tire(wheel.position())
        .add(
            FindingKind.PRESSURE_ABOVE_LIMIT,
            Severity.MEND,
            what,
            Phrase.of(
                "never set more than {0} of {1}; fit tire, wheel and valve that may take what the axle"
                    + " needs",
                lowest.whose(), lowest.pressure()),
            Authority.typed("limits on sidewall, wheel and valve"));
  }

  private static void target(
      Inspection inspection, FittedTire wheel, GaugePressure target, GatheredDefects findings) {
    above(wheel, target)
        .ifPresent(
            lowest ->
                aboveLimit(
                    wheel,
                    Phrase.of(
                        "the target you chose, {0}, is above {1} of {2}",
                        target, lowest.whose(), lowest.pressure()),
                    lowest,
                    findings));
    LimitFinder.TargetFault fault = inspection.targetFault(wheel);
    if (fault != null) {
      findings
          .tire(wheel.position())
          .add(
              FindingKind.TARGET_NOT_USED,
              Severity.MEND,
              Phrase.of("the target of {0} is not used: {1}", target, fault.words()),
              Phrase.of("set what the label says, or supply what is missing"),
              Authority.inferred(
                  "a target counts only with maker's rows, a scale weight of wheel or axle, and the"
                      + " reserve"));
    }
  }
}
