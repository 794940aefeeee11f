package dawngauge.tire;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.explain.Step;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import java.util.ArrayList;
import java.util.List;

/**
 * Explains the figures of a capacity in steps.
 *
 * @param capacity whose figures
 * @param rating its rated pair
 * @param exponent of its class
 */
record CapacitySteps(Capacity capacity, Rating rating, LoadExponent exponent) {

  private static final Authority MARKED_LIMIT =
      Authority.regulation("49 CFR 393.75(g): load not above the sidewall marking");

  /** Smaller differences, relative, are rounding. */
  private static final double NOTICEABLE = 1e-6;

  List<Step> at(GaugePressure pressure) {
    List<Step> steps = new ArrayList<>(rating.steps());
    double kilograms = capacity.kilogramsAt(pressure.pascals());
    double likely = capacity.likelyKilogramsAt(pressure.pascals());
    if (likely > kilograms * (1 + NOTICEABLE)) {
      steps.add(
          new Step(
              Phrase.of("likely load at {0}", pressure), new Mass(likely), exponent.authority()));
    }
    steps.add(
        new Step(
            Phrase.of("load at {0}, {1}", pressure, ruleAt(pressure.pascals()).words),
            new Mass(kilograms),
            ruleAt(pressure.pascals()).authority));
    return steps;
  }

  List<Step> forLoad(Mass load) {
    List<Step> steps = new ArrayList<>(rating.steps());
    double pascals = capacity.pascalsFor(load.kilograms());
    if (Double.isNaN(pascals)) {
      steps.add(
          new Step(
              Phrase.of("{0} is more than the tire may carry at any pressure; at most", load),
              new Mass(capacity.mostKilograms()),
              MARKED_LIMIT));
      return steps;
    }
    double likely = capacity.likelyPascalsFor(load.kilograms());
    if (likely < pascals * (1 - NOTICEABLE)) {
      steps.add(
          new Step(
              Phrase.of("likely pressure for {0}", load),
              new GaugePressure(likely),
              exponent.authority()));
    }
    Rule rule = ruleAt(pascals);
    steps.add(
        new Step(
            Phrase.of("lowest pressure for {0}, {1}", load, rule.words),
            new GaugePressure(pascals),
            rule.authority));
    return steps;
  }

  private Rule ruleAt(double pascals) {
    return switch (capacity.basis()) {
      case ROWS -> Rule.ROWS;
      case LABEL -> pascals >= capacity.ratedPascals() ? Rule.RATED : Rule.LABEL;
      case SIDEWALL -> pascals >= capacity.ratedPascals() ? Rule.RATED : Rule.STRAIGHT_LINE;
    };
  }

  /** What a figure rests on. */
  private enum Rule {
    ROWS("by the maker's rows", Authority.typed("maker's load and inflation rows")),
    RATED("the rated load and no more", MARKED_LIMIT),
    LABEL(
        "straight between nothing, the certification label's point and the rated pair",
        Authority.regulation(
            "49 CFR 571.120 S5.3.1, 571.110 S4.3.4(c): size and cold pressure fit the GAWR")),
    STRAIGHT_LINE("estimated with caution", LoadExponent.STRAIGHT_LINE);

    private final String words;

    @SuppressWarnings("ImmutableEnumChecker") // a record of an enum and a text, never changed
    private final Authority authority;

    Rule(String words, Authority authority) {
      this.words = words;
      this.authority = authority;
    }
  }
}
