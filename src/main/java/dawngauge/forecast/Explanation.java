package dawngauge.forecast;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.explain.Step;
import dawngauge.explain.Terms;
import dawngauge.physics.GasLaw;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Pressure;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.rules.Limits;
import dawngauge.rules.Loads;
import dawngauge.rules.Quantile;
import dawngauge.tire.Capacity;
import java.util.ArrayList;
import java.util.List;

/** How the numbers of one tire at one stop came about, step by step. */
public final class Explanation {

  /** Loads closer than this, relative, are shown as one. */
  private static final double SAME_LOAD = 1e-3;

  private Explanation() {}

  /** From the reading or setting that the fill is known from to what the gauge reads now. */
  public static List<Step> ofReading(TireSnapshot moment) {
    FillOrigin origin = moment.origin();
    List<Step> steps = new ArrayList<>();
    steps.add(start(origin));
    steps.add(
        new Step(
            Phrase.of("the air in it, shown as pressure at 68 °F, sea level"),
            new GaugePressure(GasLaw.atReference(origin.fill())),
            Authority.GAS_LAW));
    double cooled = GasLaw.gauge(origin.fill(), moment.airKelvins(), origin.airPressure());
    steps.add(
        new Step(
            Phrase.of(
                "as cool as the air here, {0} instead of {1} in the tire then",
                new Temperature(moment.airKelvins()), new Temperature(origin.tireKelvins())),
            new GaugePressure(cooled),
            Authority.GAS_LAW));
    double raised = GasLaw.gauge(origin.fill(), moment.airKelvins(), moment.airPressure());
    steps.add(
        new Step(
            Phrase.of(
                "at {0} instead of {1}: the air around presses with {2} instead of {3}",
                new Elevation(moment.elevation()),
                new Elevation(origin.elevation()),
                new Pressure(moment.airPressure()),
                new Pressure(origin.airPressure())),
            new GaugePressure(raised),
            new Authority(Authority.Kind.STANDARD, "U.S. Standard Atmosphere 1976")));
    steps.add(
        new Step(
            Phrase.of(
                "air lost since, {0}: this is what it has cold here",
                new GaugePressure(raised - moment.settled())),
            new GaugePressure(moment.settled()),
            new Authority(
                Authority.Kind.PUBLISHED,
                "permeation, Tire Science and Technology 13(1) 1985, or the leak typed")));
    RuleOfThumb thumb = RuleOfThumb.of(moment);
    steps.add(
        new Step(
            Phrase.of(
                "beside it the rule of thumb, 1 to 2 psi for each 10 °F of the air: {0} to {1}, never"
                    + " used here",
                new GaugePressure(thumb.low()), new GaugePressure(thumb.high())),
            new GaugePressure(moment.settled()),
            Authority.commonPractice()));
    if (!Double.isNaN(moment.reading())) {
      steps.add(
          new Step(
              warmth(moment),
              new GaugePressure(moment.reading()),
              Authority.inferred("lumped heat balance, see docs/method.md")));
      steps.add(
          new Step(
              Phrase.of(
                  "9 of 10 readings with the same gauge lie between {0} and {1}",
                  new GaugePressure(
                      moment.reading() - Quantile.NINETY_WITHIN * moment.readingSigma()),
                  new GaugePressure(
                      moment.reading() + Quantile.NINETY_WITHIN * moment.readingSigma())),
              new GaugePressure(Quantile.NINETY_WITHIN * moment.readingSigma()),
              Authority.inferred("linear propagation of the spreads in docs/accuracy.md")));
    }
    return steps;
  }

  private static Phrase warmth(TireSnapshot moment) {
    double over = moment.tireKelvins() - moment.airKelvins();
    return over >= 0
        ? Phrase.of("the tire is {0} warmer than the air", new TemperatureDifference(over))
        : Phrase.of(
            "the tire is {0} cooler than the air, it lags the warming day",
            new TemperatureDifference(-over));
  }

  private static Step start(FillOrigin origin) {
    Phrase what =
        switch (origin.kind()) {
          case READING ->
              Phrase.of(
                  "read with {0}, air {1}, at {2}",
                  origin.gauge(),
                  new Temperature(origin.airKelvins()),
                  new Elevation(origin.elevation()));
          case ADJUSTMENT ->
              Phrase.of(
                  "set with {0}, air {1}, at {2}",
                  origin.gauge(),
                  new Temperature(origin.airKelvins()),
                  new Elevation(origin.elevation()));
          case ASSUMED ->
              Phrase.of(
                  "taken as set there by this plan, air {0}, at {1}",
                  new Temperature(origin.airKelvins()), new Elevation(origin.elevation()));
        };
    Authority authority =
        origin.kind() == FillOrigin.Kind.ASSUMED
            ? Authority.inferred("each adjustment asked for is taken as done")
            : Authority.typed("log");
    return new Step(what, new GaugePressure(origin.gaugePascals()), authority);
  }

  /** Floor, aim and ceiling. */
  public static List<Step> ofLimits(TireAtStop at) {
    List<Step> steps = new ArrayList<>();
    Limits limits = at.limits();
    Loads.TireLoad load = limits.load();
    if (!Double.isNaN(load.kilograms())) {
      steps.addAll(ofLoad(at, load));
      Capacity capacity = at.fitted().capacity();
      if (capacity != null) {
        steps.addAll(capacity.stepsFor(new Mass(load.kilograms())));
      }
    }
    if (!Double.isNaN(limits.floor())) {
      steps.add(
          new Step(
              Phrase.of(
                  limits.speed() == Limits.SpeedVerdict.RAISED
                      ? "{0} pressure for its likely load (10 psi more for this top speed)"
                      : "{0} pressure for its likely load",
                  Terms.LOWEST_SAFE),
              new GaugePressure(limits.floor()),
              Authority.regulation("49 CFR 393.75(i)(1)")));
    }
    if (!Double.isNaN(limits.aim())) {
      steps.add(
          new Step(
              Phrase.of("{0}: {1}", Terms.SET_COLD_TO, limits.aimFrom().words()),
              new GaugePressure(limits.aim()),
              Authority.typed("label, sidewall, scale")));
    }
    if (!Double.isNaN(limits.ceiling())) {
      steps.add(
          new Step(
              Phrase.of(
                  "{0}: least of the tire's, wheel's and valve's highest cold pressure",
                  Terms.NEVER_OVER),
              new GaugePressure(limits.ceiling()),
              Authority.typed("sidewall, wheel, valve")));
    }
    return steps;
  }

  private static List<Step> ofLoad(TireAtStop at, Loads.TireLoad load) {
    List<Step> steps = new ArrayList<>();
    int perSide = at.fitted().axle().tiresPerSide();
    Authority authority = Authority.typed(load.axle().basis().words());
    double even = load.axle().kilograms() * load.side() / perSide;
    steps.add(
        new Step(
            Phrase.of(
                "{0} of {1} on this side ({2}), {3} a side",
                new Phrase.Stated(new Ratio(load.side()), 1, 1),
                new Mass(load.axle().kilograms()),
                load.sideKnown() ? "weighed or typed" : "not weighed, taken as even",
                perSide == 1 ? "one tire" : "two tires"),
            new Mass(even),
            authority));
    if (Math.abs(load.kilograms() - even) > SAME_LOAD * even) {
      steps.add(
          new Step(
              Phrase.of("what it has now beside its dual mate or a flat tire"),
              new Mass(load.kilograms()),
              Authority.inferred("dual mates share in the ratio of what they have cold")));
    }
    if (load.heaviest() > load.kilograms() * (1 + SAME_LOAD)) {
      steps.add(
          new Step(
              Phrase.of("the heaviest that the weighing leaves open"),
              new Mass(load.heaviest()),
              authority));
    }
    return steps;
  }

  /** Load margin at a judged pressure. */
  public static List<Step> ofMargin(TireAtStop at, TireSnapshot moment) {
    List<Step> steps = new ArrayList<>();
    Capacity capacity = at.fitted().capacity();
    double load = at.limits().load().kilograms();
    if (capacity == null || !(load > 0)) {
      return steps;
    }
    steps.add(
        new Step(
            Phrase.of(
                "judged pressure: warmth above the air is not credited, a tire still colder than"
                    + " the air counts as cold as it is"),
            new GaugePressure(moment.judged()),
            Authority.inferred("docs/method.md")));
    steps.addAll(capacity.stepsAt(new GaugePressure(Math.max(0, moment.judged()))));
    double margin = at.marginAt(moment.judged());
    if (!Double.isNaN(margin)) {
      steps.add(
          new Step(
              Phrase.of("margin over the load of {0}", new Mass(load)),
              new Ratio(margin),
              Authority.inferred(
                  !capacity.fromRows()
                      ? "by estimate: type the maker's rows for better"
                      : "by the maker's rows")));
      double likely = capacity.likelyKilogramsAt(moment.judged()) / load - 1;
      if (!capacity.fromRows() && likely > margin + 1e-9) {
        steps.add(
            new Step(
                Phrase.of("likely margin by the exponent of the tire's class, never set air by it"),
                new Ratio(likely),
                new Authority(
                    Authority.Kind.INFERRED,
                    "exponents that reproduce printed load/inflation rows")));
      }
    }
    return steps;
  }
}
