package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Moment;
import dawngauge.forecast.TireAtStop;
import dawngauge.physics.StandardAtmosphere;
import dawngauge.quantity.Ratio;
import dawngauge.rules.Limits;
import dawngauge.trip.Gauge;
import dawngauge.trip.Itinerary;
import org.jspecify.annotations.Nullable;

/** The sentences about air to add or let out. */
final class AirWords {

  private final Forecaster forecaster;
  private final Thresholds thresholds;

  AirWords(Forecaster forecaster, Thresholds thresholds) {
    this.forecaster = forecaster;
    this.thresholds = thresholds;
  }

  /** What to let out, and why. */
  Phrase letOut(SetFigure set, Moment check, Phrase why) {
    return Phrase.of(
        "let out to {0}{1}, only while it is cold, before sun or road warm it: {2}",
        Shown.figure(set.figure()), sealed(set, check), why);
  }

  /** What to add, beside the limit, and why. */
  Phrase added(SetFigure set, Limits limits, Moment check, Phrase why) {
    double ceiling = limits.ceiling();
    Phrase limit =
        Double.isNaN(ceiling)
            ? Phrase.of("limit not known: read sidewall and wheel first")
            : Phrase.of("limit {0}{1}", Shown.pressure(ceiling), set.warm() ? " cold" : "");
    Phrase cut =
        set.cutByHose()
            ? Phrase.of("; the hose here reaches no further")
            : set.cutByCeiling()
                ? Phrase.of(
                    "; {0} would be wanted, its limit cuts it",
                    Shown.beside(set.wanted().pascals(), ceiling))
                : Phrase.of("");
    return set.warm()
        ? Phrase.of(
            "add to {0}{1} as it is now, warm (settles at {2}, {3}; never let air out of a warm"
                + " tire): {4}{5}",
            Shown.figure(set.figure()),
            sealed(set, check),
            Shown.pressure(set.settled().pascals()),
            limit,
            why,
            cut)
        : Phrase.of(
            "add to {0}{1} cold ({2}): {3}{4}",
            Shown.figure(set.figure()), sealed(set, check), limit, why, cut);
  }

  /** What a sealed gauge shows instead of the figure, which is for one open to the air. */
  private Phrase sealed(SetFigure set, Moment check) {
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
            Shown.beside(
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
      Moment check,
      Chances.@Nullable Judged risk,
      boolean below,
      boolean belowMate) {
    Limits limits = at.limits();
    if (risk != null) {
      return Phrase.of(
          "{0} it is expected at {1}, with a {2} chance of being under the {3} that its load needs",
          where(risk), low(risk), new Ratio(risk.chance()), floor(risk));
    }
    Phrase mate =
        belowMate
            ? Phrase.of(
                "more than {0} under its dual mate", Shown.pressure(thresholds.dualApartPascals()))
            : Phrase.of("");
    return below
        ? Phrase.of(
            "{0} is below {1}, {2}{3}{4} (low: heat, worn shoulders)",
            Shown.beside(check.settled(), limits.aim()),
            Shown.pressure(limits.aim()),
            aim(limits),
            belowMate ? ", and " : "",
            mate)
        : mate;
  }

  /** A known leak that may reach the floor. */
  Phrase leak(Chances.Judged worst) {
    return Phrase.of(
        "its leak may bring it under the {0} that its load needs, {1}, before the next air: do not"
            + " roll until the leak is mended, or on a spare",
        floor(worst), where(worst));
  }

  /** Where an aim comes from. */
  static Phrase aim(Limits limits) {
    String words = limits.aimFrom().words();
    return limits.speed() == Limits.SpeedVerdict.RAISED
        ? Phrase.of("{0}, with {1} more for the top speed ahead", words, LegCautions.MORE_FOR_SPEED)
        : Phrase.of("{0}", words);
  }

  /** The pressure expected, told apart from the floor. */
  static Phrase.Stated low(Chances.Judged judged) {
    return Shown.beside(judged.moment().judged(), judged.floor());
  }

  /** The floor, told apart from the pressure expected. */
  static Phrase.Stated floor(Chances.Judged judged) {
    return Shown.beside(judged.floor(), judged.moment().judged());
  }

  /** Where a judged moment lies. */
  String where(Chances.Judged judged) {
    Itinerary itinerary = forecaster.itinerary();
    String from = itinerary.visits().get(judged.visit()).stop().place();
    return judged.onLeg()
        ? "between " + from + " and " + itinerary.visits().get(judged.visit() + 1).stop().place()
        : "leaving " + from;
  }
}
