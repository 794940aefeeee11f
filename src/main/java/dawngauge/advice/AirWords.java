package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.physics.StandardAtmosphere;
import dawngauge.quantity.Ratio;
import dawngauge.rules.Limits;
import dawngauge.trip.Gauge;
import dawngauge.trip.Itinerary;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The sentences about air to add or let out. */
final class AirWords {

  /** Smaller chances, and those nearer to certainty, are not told apart. */
  private static final double LEAST_CHANCE = 0.01;

  private final Forecaster forecaster;

  AirWords(Forecaster forecaster) {
    this.forecaster = forecaster;
  }

  /** What to let out, and why. */
  Phrase letOut(SetFigure set, TireSnapshot check, Phrase why) {
    return Phrase.of(
        "let out to {0}{1}, only while it is cold, before sun or road warm it: {2}",
        PressureText.figure(set.figure()), sealed(set, check), why);
  }

  /** What to add, by the minute, beside the limit, and why. */
  Phrase added(TimedFigures timed, TireAtStop at, TireSnapshot check, Phrase why) {
    SetFigure set = timed.at();
    double ceiling = at.limits().ceiling();
    Phrase limit =
        Double.isNaN(ceiling)
            ? Phrase.of("limit not known: read sidewall and wheel first")
            : Phrase.of("limit {0}{1}", PressureText.pressure(ceiling), set.warm() ? " cold" : "");
    Phrase cut =
        set.cutByHose()
            ? Phrase.of("; the hose here reaches no further")
            : set.cutByCeiling()
                ? Phrase.of(
                    "; {0} would be wanted, its limit cuts it",
                    PressureText.beside(set.wanted().pascals(), ceiling))
                : Phrase.of("");
    if (!set.warm()) {
      return Phrase.of(
          "add to {0}{1} cold ({2}): {3}{4}",
          PressureText.figure(set.figure()), sealed(set, check), limit, why, cut);
    }
    SetFigure onArrival = timed.onArrival();
    Phrase arriving =
        onArrival == null
            ? Phrase.of("")
            : Phrase.of("{0} on arrival, ", PressureText.figure(onArrival.figure()));
    return Phrase.of(
        "add to {0}{1} at {2}{3}, {4} cold ({5}; never let air out of a warm tire): {6}{7}",
        arriving,
        PressureText.figure(set.figure()),
        clock(at.visit(), timed.seconds()),
        sealed(set, check),
        PressureText.figure(timed.cold().figure()),
        limit,
        why,
        cut);
  }

  /** What the clock of a stop shows. */
  private String clock(int visit, double seconds) {
    return Instant.ofEpochSecond(Math.round(seconds / 60) * 60)
        .atZone(forecaster.itinerary().visits().get(visit).zone())
        .format(DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT));
  }

  /** What a sealed gauge shows instead of the figure, which is for one open to the air. */
  private Phrase sealed(SetFigure set, TireSnapshot check) {
    String name = check.origin().gauge();
    boolean sealed =
        forecaster
            .trip()
            .rig()
            .gauge(name)
            .filter(gauge -> gauge.kind() == Gauge.Kind.SEA_LEVEL_SUBTRACTED)
            .isPresent();
    return sealed
        ? Phrase.of(
            " ({0} on {1}, which is sealed)",
            PressureText.beside(
                set.figure().pascals()
                    + check.airPressure()
                    - StandardAtmosphere.SEA_LEVEL_PRESSURE,
                set.figure().pascals()),
            name)
        : Phrase.of("");
  }

  /** Why air is wanted: the risk ahead, else the aim, else the mate. */
  Phrase why(
      TireAtStop at,
      TireSnapshot check,
      Lookahead.@Nullable Judged risk,
      boolean below,
      Phrase mate) {
    Limits limits = at.limits();
    if (risk != null) {
      return Phrase.of("before it rolls, else {0} {1}", where(risk), state(risk));
    }
    boolean both = below && !mate.template().isEmpty();
    return below
        ? Phrase.of(
            "{0} is below {1}, {2}{3}{4} (low: heat, worn shoulders)",
            PressureText.beside(check.settled(), limits.aim()),
            PressureText.pressure(limits.aim()),
            aim(limits),
            both ? ", and " : "",
            mate)
        : mate;
  }

  /**
   * What is expected at a moment at which a tire is not to roll, and what is the matter with it.
   */
  Phrase state(Lookahead.Judged bad) {
    double expected = bad.moment().judged();
    return bad.expectedLow()
        ? Phrase.of(
            "{0} cold expected, at or under 80 % of {1}",
            PressureText.pressure(expected), PressureText.pressure(bad.limits().reference()))
        : Phrase.of(
            "{0} cold expected, {1} chance that its load needs more",
            PressureText.pressure(expected), chance(bad.chance().underFloor()));
  }

  /** A chance in words that do not claim more than it can. */
  static Phrase chance(double chance) {
    if (chance < LEAST_CHANCE) {
      return Phrase.of("under {0}", new Ratio(LEAST_CHANCE));
    } else if (chance > 1 - LEAST_CHANCE) {
      return Phrase.of("over {0}", new Ratio(1 - LEAST_CHANCE));
    }
    return Phrase.of("{0}", new Ratio(chance));
  }

  /** Where an aim comes from. */
  static Phrase aim(Limits limits) {
    String words = limits.aimFrom().words();
    return limits.speed() == Limits.SpeedVerdict.RAISED
        ? Phrase.of("{0}, with {1} more for the top speed ahead", words, LegCautions.MORE_FOR_SPEED)
        : Phrase.of("{0}", words);
  }

  /** Where a judged moment lies. */
  String where(Lookahead.Judged judged) {
    Itinerary itinerary = forecaster.itinerary();
    String from = itinerary.visits().get(judged.visit()).stop().place();
    return judged.onLeg()
        ? "between " + from + " and " + itinerary.visits().get(judged.visit() + 1).stop().place()
        : "leaving " + from;
  }
}
