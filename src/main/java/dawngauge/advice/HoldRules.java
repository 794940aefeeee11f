package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Moment;
import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireAtStop;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.Speed;
import dawngauge.quantity.TreadDepth;
import dawngauge.quantity.Unit;
import dawngauge.rules.Limits;
import dawngauge.rules.Loads;
import dawngauge.tire.Capacity;
import dawngauge.tire.SpeedSymbol;
import dawngauge.tire.TireSpec;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Tire;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelSlot;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What makes a tire not roll whatever air there is. */
final class HoldRules {

  /** 29 CFR 1910.177(f)(2): run at 80 % or less of the recommended pressure. */
  private static final double RAN_LOW = 0.8;

  /** A dual mate so much under the other leaves it the load of both; common practice, no source. */
  private static final double MATE_LOW = 0.8;

  /** One-sided 90 %. */
  private static final double NINETY = 1.2816;

  /** Rank of a hold by the state of the tire itself. */
  private static final int OF_THE_TIRE = 0;

  /** Forgives weights rounded to whole pounds. */
  private static final double HALF_KILOGRAM = 0.5;

  /** The same, relative, for ratings rounded to whole units. */
  private static final double ROUNDED = 0.001;

  /** Special trailer tires without a symbol (Tire and Rim Association, as reproduced). */
  private static final Speed TRAILER_TOP = Speed.of(85, Unit.MILE_PER_HOUR);

  /** A reading so many deviations off is not explained by the weather. */
  private static final double UNEXPLAINED = 2;

  private static final Tire.Damage[] NO_DAMAGE = {};

  private final Forecaster forecaster;

  HoldRules(Forecaster forecaster) {
    this.forecaster = forecaster;
  }

  List<Reason> at(int visit, List<TireAtStop> track, List<TireAtStop> mate) {
    TireAtStop at = track.get(visit);
    List<Reason> reasons = new ArrayList<>();
    boolean last = visit == forecaster.itinerary().visits().size() - 1;
    unfit(at, reasons);
    if (!last) {
      overload(at, reasons);
      tooFast(visit, track, reasons);
    }
    mateLow(visit, at, mate, reasons);
    for (ReadingCheck check : at.readings()) {
      ranLow(at, check, reasons);
    }
    return reasons;
  }

  /** Whether a reason is that the tire itself is not to be run, so that air alone is no way out. */
  static boolean ofTheTire(Reason reason) {
    return reason.mark() == Mark.HOLD && reason.rank() == OF_THE_TIRE;
  }

  /** Only what a load can do. */
  static List<Reason> overloadOnly(TireAtStop at) {
    List<Reason> reasons = new ArrayList<>();
    overload(at, reasons);
    return reasons;
  }

  private static void unfit(TireAtStop at, List<Reason> reasons) {
    Set<Tire.Damage> damages = at.fitted().tire().damage();
    for (Tire.Damage damage : damages.isEmpty() ? NO_DAMAGE : Tire.Damage.values()) {
      if (damages.contains(damage)) {
        reasons.add(
            hold(
                Phrase.of("{0}: not to be run (49 CFR 393.75(a)); fit the spare", damage.word()),
                OF_THE_TIRE));
      }
    }
    Entered<TreadDepth> tread = at.fitted().tire().tread();
    if (tread == null) {
      return;
    }
    boolean steer =
        at.fitted().vehicle().kind() == Vehicle.Kind.TRUCK
            && at.fitted().position().axle().number() == 1;
    TreadDepth least = TreadDepth.of(steer ? 4 : 2, Unit.THIRTY_SECOND_INCH);
    if (tread.value().meters() < least.meters() - 1e-9) {
      reasons.add(
          hold(
              Phrase.of(
                  "tread {0}, the least allowed here is {1} (49 CFR 393.75(b), (c)): fit the spare",
                  tread.value(), least),
              OF_THE_TIRE));
    }
  }

  private static void overload(TireAtStop at, List<Reason> reasons) {
    Limits limits = at.limits();
    Loads.AxleLoad axle = limits.load().axle();
    Entered<Mass> gawr = at.fitted().axle().gawr();
    if (gawr != null && axle.likelyKilograms() > gawr.value().kilograms() + HALF_KILOGRAM) {
      reasons.add(
          hold(
              Phrase.of(
                  "{0} carries {1}, over its GAWR of {2}: lighten it",
                  at.fitted().position().axle().words(),
                  new Mass(axle.likelyKilograms()),
                  gawr.value()),
              1));
    }
    Entered<Mass> wheel = at.fitted().axle().wheelMaxLoad();
    double load = limits.load().kilograms();
    if (wheel != null && load > wheel.value().kilograms() + HALF_KILOGRAM) {
      reasons.add(
          tooMuch(
              at,
              wheel.value().kilograms(),
              Phrase.of(
                  "its wheel carries {0}, over its rating of {1}", new Mass(load), wheel.value())));
    }
    Capacity capacity = at.fitted().capacity();
    if (limits.overloaded() && capacity != null) {
      double ceiling = limits.ceiling();
      double most =
          Double.isNaN(ceiling) ? capacity.mostKilograms() : capacity.kilogramsAt(ceiling);
      reasons.add(
          tooMuch(
              at,
              most,
              Double.isNaN(most)
                  ? Phrase.of(
                      "it carries {0}, and for its limit of {1} there is no figure of what it may",
                      new Mass(load), Shown.pressure(ceiling))
                  : Phrase.of(
                      "it carries {0}, more than the {1} it may at any allowed pressure",
                      new Mass(load), new Mass(most))));
    }
  }

  /**
   * Too much for a tire or wheel. Where the axle was not weighed, and only the assumed uneven sides
   * bring it over, a scale is asked for instead: 49 CFR 571.120 S5.1.2 lets tires just sum up to
   * the GAWR.
   */
  private static Reason tooMuch(TireAtStop at, double most, Phrase what) {
    String axle = at.fitted().position().axle().words();
    boolean bySides =
        at.limits().load().axle().source() == Loads.Source.GAWR
            && at.fitted().gawrShare() <= most * (1 + ROUNDED);
    return bySides
        ? new Reason(
            Mark.RECHECK,
            Phrase.of(
                "{0} is not weighed; at its full GAWR with uneven sides {1}: weigh it"
                    + " before you rely on this",
                axle, what),
            1)
        : hold(Phrase.of("{0}: lighten {1}", what, axle), 1);
  }

  /** Judges every leg until the rig stands again. */
  private void tooFast(int visit, List<TireAtStop> track, List<Reason> reasons) {
    int leg = visit;
    do {
      TireAtStop at = track.get(leg);
      if (at.limits().speed() == Limits.SpeedVerdict.TOO_FAST) {
        var drive = forecaster.itinerary().drives().get(leg);
        reasons.add(
            hold(
                Phrase.of(
                    "hold for this speed: {0} top speed ({1}) is above the {2} that this tire is made"
                        + " for: keep below it",
                    new Speed(drive.topMetersPerSecond()),
                    drive.topAssumed() ? "assumed" : "typed",
                    fastest(at)),
                2));
        return;
      }
      leg++;
    } while (leg < track.size() - 1 && forecaster.itinerary().visits().get(leg).passes());
  }

  private static Speed fastest(TireAtStop at) {
    TireSpec spec = at.fitted().spec();
    String symbol = spec == null ? null : spec.speedSymbol();
    return symbol == null
        ? TRAILER_TOP
        : SpeedSymbol.top(symbol).orElseThrow(() -> new IllegalStateException(symbol));
  }

  private static void mateLow(
      int visit, TireAtStop at, List<TireAtStop> mate, List<Reason> reasons) {
    WheelSlot slot = at.fitted().position().slot();
    if (slot.mate() == slot || visit >= mate.size()) {
      return;
    }
    TireAtStop other = mate.get(visit);
    boolean flat = other.fitted().tire().damage().contains(Tire.Damage.FLAT);
    if (flat || lowest(other) < MATE_LOW * settled(at)) {
      reasons.add(
          hold(
              Phrase.of(
                  "its dual mate is flat or more than {0} under it, so this tire carries both"
                      + " loads: do not roll until the mate is aired or replaced; have both"
                      + " inspected",
                  new Ratio(1 - MATE_LOW)),
              1));
    }
  }

  /** Settled pressure before anything is set, the last reading counted; NaN if not known. */
  private static double settled(TireAtStop at) {
    Moment check = at.check();
    return check == null ? Double.NaN : check.settled();
  }

  /** The lowest that was read here or is expected; NaN if not known. */
  private static double lowest(TireAtStop at) {
    double lowest = settled(at);
    for (ReadingCheck check : at.readings()) {
      lowest = Math.min(lowest, check.coldEquivalent());
    }
    return lowest;
  }

  /**
   * The 80 % rule, on the pressure the tire has as cool as the air: a tire that rolled so low, or
   * of which that is not known, may be damaged inside. One that stood and is low by the weather
   * alone is only set.
   */
  private static void ranLow(TireAtStop at, ReadingCheck check, List<Reason> reasons) {
    double recommended = at.fitted().labelPascals();
    if (Double.isNaN(recommended)) {
      recommended = at.limits().aim();
    }
    boolean cold = check.reading().state() == ReadingState.COLD;
    double pressure = check.coldEquivalent() - (cold ? 0 : NINETY * check.coldSigma());
    if (Double.isNaN(recommended) || pressure > RAN_LOW * recommended) {
      return;
    }
    boolean explained = !check.first() && check.deviations() > -UNEXPLAINED;
    if (!check.rolledSinceSound()) {
      reasons.add(
          explained
              ? new Reason(
                  Mark.RECHECK,
                  Phrase.of(
                      "{0} is 80 % or less of {1}, but it stood and colder air explains it: cold,"
                          + " not leaking; add air to the aim, watch it at the next stop",
                      Shown.pressure(check.coldEquivalent()), Shown.pressure(recommended)),
                  0)
              : hold(
                  Phrase.of(
                      "{0} is 80 % or less of {1}; it stood, and the weather does not explain it: it"
                          + " leaks; find and mend the leak before it rolls, or fit the spare",
                      Shown.pressure(check.coldEquivalent()), Shown.pressure(recommended)),
                  OF_THE_TIRE));
      return;
    }
    Phrase read = Phrase.of("read {0}", check.reading().pressure().value());
    Phrase both =
        Phrase.of("{0}, as cool as the air {1}", read, Shown.pressure(check.coldEquivalent()));
    reasons.add(
        hold(
            Phrase.of(
                "{0}: 80 % or less of {1}, and it may have rolled so: do not just add air and go; fit"
                    + " the spare, deflate it before the wheel comes off, have it inspected inside by"
                    + " a qualified technician, the tire beside it too (29 CFR 1910.177(f)(2))",
                cold ? read : both, Shown.pressure(recommended)),
            OF_THE_TIRE));
  }

  private static Reason hold(Phrase text, int rank) {
    return new Reason(Mark.HOLD, text, rank);
  }
}
