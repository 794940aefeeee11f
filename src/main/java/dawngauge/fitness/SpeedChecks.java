package dawngauge.fitness;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Speed;
import dawngauge.rules.FittedTire;
import dawngauge.rules.Limits;
import dawngauge.tire.SpeedSymbol;
import dawngauge.tire.TireClass;
import dawngauge.tire.TireSpec;
import dawngauge.tire.TrailerSpeedRule;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The fastest leg against what the tires are made for. */
final class SpeedChecks {

  private static final Authority SYMBOL =
      new Authority(Authority.Kind.STANDARD, "speed symbols, ISO 4000-1, UN R30 and R54");
  private static final Authority TRAILER_RULE =
      new Authority(
          Authority.Kind.PUBLISHED,
          "Tire and Rim Association rule for special trailer tires without a speed symbol, as"
              + " reproduced in the trade");

  /** Meter per second; smaller differences are rounding of units. */
  private static final double ROUNDING = 0.01;

  private SpeedChecks() {}

  static void check(Inspection inspection, GatheredDefects findings) {
    if (!inspection.legsWithoutSpeed().isEmpty()) {
      findings
          .trip()
          .add(
              FindingKind.SPEED_UNKNOWN,
              Severity.KNOW,
              Phrase.of(
                  "speed not known, so not held against the tires: {0}",
                  Words.and(inspection.legsWithoutSpeed())),
              Phrase.of("type each leg's top speed, or when the rig leaves and how it drives"),
              Authority.typed("legs"));
    }
    Inspection.LegSpeed fastest = inspection.fastest().orElse(null);
    for (FittedTire wheel : inspection.wheels()) {
      TireSpec spec = wheel.spec();
      if (spec == null) {
        continue;
      }
      String symbol = spec.speedSymbol();
      if (symbol != null) {
        symbol(wheel, symbol, fastest, findings);
      } else if (spec.classOrFromSize() == TireClass.SPECIAL_TRAILER && fastest != null) {
        trailerTire(inspection, wheel, fastest, findings);
      }
    }
  }

  private static void symbol(
      FittedTire wheel,
      String symbol,
      Inspection.@Nullable LegSpeed fastest,
      GatheredDefects findings) {
    Optional<Speed> top = SpeedSymbol.top(symbol);
    if (top.isEmpty()) {
      findings
          .tire(wheel.position())
          .add(
              FindingKind.SPEED_SYMBOL_UNKNOWN,
              Severity.KNOW,
              Phrase.of(
                  "speed symbol \"{0}\" is not in the table: its speed is not checked", symbol),
              Phrase.of("read it again: the letter behind the load index"),
              SYMBOL);
    } else if (fastest != null
        && fastest.top().metersPerSecond() > top.get().metersPerSecond() + ROUNDING) {
      findings
          .tire(wheel.position())
          .add(
              FindingKind.TOO_FAST,
              Severity.STOP,
              Phrase.of(
                  "speed symbol {0} allows {1}, but {2} is driven at up to {3}{4}: not for this speed",
                  symbol, shown(top.get()), fastest.leg(), shown(fastest.top()), assumed(fastest)),
              Phrase.of("keep to {0} or less on every leg", shown(top.get())),
              SYMBOL);
    }
  }

  private static void trailerTire(
      Inspection inspection,
      FittedTire wheel,
      Inspection.LegSpeed fastest,
      GatheredDefects findings) {
    TrailerSpeedRule.Effect effect = TrailerSpeedRule.at(fastest.top());
    if (!effect.allowed()) {
      findings
          .tire(wheel.position())
          .add(
              FindingKind.TOO_FAST,
              Severity.STOP,
              Phrase.of(
                  "special trailer tire without speed symbol, but {0} is driven at up to {1}{2}, above"
                      + " {3}: not for this speed",
                  fastest.leg(),
                  shown(fastest.top()),
                  assumed(fastest),
                  shown(TrailerSpeedRule.MOST)),
              Phrase.of("keep to {0} or less on every leg", shown(TrailerSpeedRule.FREE)),
              TRAILER_RULE);
    } else if (effect.extraPascals() > 0) {
      GaugePressure extra = new GaugePressure(effect.extraPascals());
      Limits limits = inspection.limits(wheel, fastest.top().metersPerSecond());
      boolean fits = limits.speed() == Limits.SpeedVerdict.RAISED;
      findings
          .tire(wheel.position())
          .add(
              FindingKind.TRAILER_TIRE_SPEED,
              fits ? Severity.KNOW : Severity.MEND,
              Phrase.of(
                  "special trailer tire without speed symbol, and {0} is driven at up to {1}{2}: it"
                      + " needs {3} more for the same load{4}",
                  fastest.leg(),
                  shown(fastest.top()),
                  assumed(fastest),
                  extra,
                  fits ? "" : ", for which there is no room under its limits"),
              fits
                  ? Phrase.of(
                      "set it to at least {0} cold, or keep to {1} or less",
                      new GaugePressure(limits.aim()), shown(TrailerSpeedRule.FREE))
                  : Phrase.of("keep to {0} or less on every leg", shown(TrailerSpeedRule.FREE)),
              TRAILER_RULE);
    }
  }

  /** As people read it: a symbol of 120 km/h is 75 mph, a typed 74 is 74. */
  private static Phrase.Stated shown(Speed speed) {
    return new Phrase.Stated(speed, 0, 0);
  }

  private static String assumed(Inspection.LegSpeed leg) {
    return leg.assumed() ? " (assumed; type the leg's top speed)" : "";
  }
}
