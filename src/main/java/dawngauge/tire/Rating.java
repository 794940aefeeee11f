package dawngauge.tire;

import dawngauge.explain.Authority;
import dawngauge.explain.Explained;
import dawngauge.explain.Phrase;
import dawngauge.explain.Step;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The rated pair of a tire as it is fitted: dual figure where dual, reduced where the rule for
 * passenger-car tires asks for it.
 *
 * @param load most the tire may carry as fitted
 * @param pressure cold pressure at which that load holds
 * @param divisor what all loads of the tire are divided by: 1.10 or 1
 * @param steps how the pair came about
 */
record Rating(Mass load, GaugePressure pressure, double divisor, List<Step> steps) {

  /** Passenger-car tire on a multipurpose vehicle, truck, bus or trailer. */
  private static final double PASSENGER_DIVISOR = 1.10;

  /** Dual per tire over single, as printed rows of light truck tires give. */
  private static final double LIGHT_TRUCK_DUAL = 0.91;

  /** Forgives a dual and a single load that were rounded in different tables. */
  private static final double TABLE_ROUNDING = 1.01;

  Rating {
    steps = List.copyOf(steps);
  }

  static Outcome<Rating> of(TireSpec spec, Fitment fitment) {
    List<Problem> problems = new ArrayList<>();
    GaugePressure pressure = positive(spec.ratedPressure());
    if (pressure == null) {
      problems.add(Problem.of(ProblemCode.RATED_PRESSURE_MISSING, "", spec.name()));
    }
    Explained<Mass> load = fitment.dual() ? dual(spec, pressure, problems) : single(spec, problems);
    if (pressure == null || load == null) {
      return Outcome.failed(problems);
    }
    List<Step> steps = new ArrayList<>();
    steps.add(
        new Step(
            Phrase.of("cold pressure at which the rated load holds"), pressure, sidewall(spec)));
    steps.addAll(load.steps());
    double divisor = divisor(spec, fitment, problems);
    Mass reduced = new Mass(load.value().kilograms() / divisor);
    if (divisor > 1) {
      steps.add(
          new Step(
              Phrase.of("passenger-car tire on a truck or trailer: rating divided by 1.10"),
              reduced,
              Authority.regulation("49 CFR 571.110 S4.2.2.2, 571.120 S5.1.2")));
    }
    return Outcome.of(new Rating(reduced, pressure, divisor, steps), problems);
  }

  private static double divisor(TireSpec spec, Fitment fitment, List<Problem> problems) {
    TireClass tireClass = spec.classOrFromSize();
    if (!fitment.multipurposeOrTrailer()
        || (tireClass != null && tireClass != TireClass.PASSENGER)) {
      return 1;
    }
    if (tireClass == null) {
      problems.add(Problem.of(ProblemCode.TIRE_CLASS_UNKNOWN, "", spec.name()));
    }
    return PASSENGER_DIVISOR;
  }

  private static @Nullable Explained<Mass> single(TireSpec spec, List<Problem> problems) {
    Explained<Mass> found =
        typedOrIndex(spec, "single", spec.ratedLoadSingle(), spec.loadIndexSingle());
    if (found == null) {
      problems.add(Problem.of(ProblemCode.RATED_LOAD_MISSING, "", spec.name()));
    }
    return found;
  }

  private static @Nullable Explained<Mass> dual(
      TireSpec spec, @Nullable GaugePressure pressure, List<Problem> problems) {
    Explained<Mass> single =
        typedOrIndex(spec, "single", spec.ratedLoadSingle(), spec.loadIndexSingle());
    Explained<Mass> found = typedOrIndex(spec, "dual", spec.ratedLoadDual(), spec.loadIndexDual());
    if (found == null) {
      found = dualRow(spec, pressure);
    }
    if (found != null) {
      if (single == null
          || found.value().kilograms() <= single.value().kilograms() * TABLE_ROUNDING) {
        return found;
      }
      problems.add(
          Problem.of(
              ProblemCode.DUAL_LOAD_ABOVE_SINGLE,
              "",
              spec.name(),
              BothSystems.both(found.value()),
              BothSystems.both(single.value())));
      return null;
    }
    if (spec.classOrFromSize() != TireClass.LIGHT_TRUCK) {
      problems.add(Problem.of(ProblemCode.DUAL_LOAD_MISSING, "", spec.name()));
      return null;
    }
    if (single == null) {
      problems.add(Problem.of(ProblemCode.RATED_LOAD_MISSING, "", spec.name()));
      return null;
    }
    Mass estimate = single.value().times(LIGHT_TRUCK_DUAL);
    problems.add(
        Problem.of(ProblemCode.DUAL_LOAD_ESTIMATED, "", spec.name(), BothSystems.both(estimate)));
    return then(
        single,
        new Step(
            Phrase.of("no dual figure: estimated as 0.91 of the single load"),
            estimate,
            Authority.inferred("what printed rows of light truck tires give")),
        estimate);
  }

  private static @Nullable Explained<Mass> dualRow(
      TireSpec spec, @Nullable GaugePressure pressure) {
    LoadInflationTable rows = spec.rows();
    if (rows == null || pressure == null) {
      return null;
    }
    LoadCurve curve = LoadCurve.ofRows(rows, true, 1, Double.MAX_VALUE);
    double kilograms = curve == null ? Double.NaN : curve.kilogramsAt(pressure.pascals());
    return kilograms > 0
        ? explained(
            new Mass(kilograms),
            Phrase.of("dual load by the maker's rows at {0}", pressure),
            Authority.typed("maker's rows of tire \"" + spec.name() + "\""))
        : null;
  }

  private static @Nullable Explained<Mass> typedOrIndex(
      TireSpec spec, String fitting, @Nullable Entered<Mass> typed, @Nullable Integer index) {
    Mass load = positive(typed);
    if (load != null) {
      return explained(load, Phrase.of("rated load, " + fitting), sidewall(spec));
    } else if (index == null) {
      return null;
    }
    return LoadIndex.mass(index)
        .map(
            mass ->
                explained(
                    mass,
                    Phrase.of("rated load, " + fitting + ", by load index {0}", index),
                    LoadIndex.authority(index)))
        .orElse(null);
  }

  private static Authority sidewall(TireSpec spec) {
    return Authority.typed("sidewall of tire \"" + spec.name() + "\"");
  }

  private static Explained<Mass> explained(Mass value, Phrase what, Authority authority) {
    return new Explained<>(value, List.of(new Step(what, value, authority)));
  }

  private static Explained<Mass> then(Explained<Mass> before, Step step, Mass value) {
    List<Step> steps = new ArrayList<>(before.steps());
    steps.add(step);
    return new Explained<>(value, steps);
  }

  private static <Q extends Quantity> @Nullable Q positive(@Nullable Entered<Q> typed) {
    return typed != null && typed.value().si() > 0 ? typed.value() : null;
  }
}
