package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Limits;
import dawngauge.forecast.Moment;
import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireAtStop;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.Speed;
import dawngauge.quantity.TreadDepth;
import dawngauge.quantity.Unit;
import dawngauge.trip.Loads;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Tire;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelSlot;
import java.util.ArrayList;
import java.util.List;

/** What makes a tire not roll whatever air there is. */
final class HoldRules {

  /** 29 CFR 1910.177(f)(2): run at 80 % or less of the recommended pressure. */
  private static final double RAN_LOW = 0.8;

  /** A dual mate so much under the other leaves it the load of both; common practice, no source. */
  private static final double MATE_LOW = 0.8;

  /** One-sided 90 %. */
  private static final double NINETY = 1.2816;

  /** A reading so many deviations off is not explained by the weather. */
  private static final double UNEXPLAINED = 2;

  private final Forecaster forecaster;

  HoldRules(Forecaster forecaster) {
    this.forecaster = forecaster;
  }

  List<Reason> at(int visit, TireAtStop at, List<TireAtStop> mate) {
    List<Reason> reasons = new ArrayList<>();
    boolean last = visit == forecaster.itinerary().visits().size() - 1;
    unfit(at, reasons);
    if (!last) {
      overload(at, reasons);
      tooFast(visit, at, reasons);
    }
    mateLow(visit, at, mate, reasons);
    for (ReadingCheck check : at.readings()) {
      ranLow(at, check, reasons);
    }
    return reasons;
  }

  /** Only what a load can do. */
  static List<Reason> overloadOnly(TireAtStop at) {
    List<Reason> reasons = new ArrayList<>();
    overload(at, reasons);
    return reasons;
  }

  private static void unfit(TireAtStop at, List<Reason> reasons) {
    for (Tire.Damage damage : at.fitted().tire().damage()) {
      reasons.add(hold(Phrase.of("{0}: not to be run (49 CFR 393.75(a))", damage.word()), 0));
    }
    Entered<TreadDepth> tread = at.fitted().tire().tread();
    boolean steer =
        at.fitted().vehicle().kind() == Vehicle.Kind.TRUCK
            && at.fitted().position().axle().number() == 1;
    TreadDepth least = TreadDepth.of(steer ? 4 : 2, Unit.THIRTY_SECOND_INCH);
    if (tread != null && tread.value().meters() < least.meters() - 1e-9) {
      reasons.add(
          hold(
              Phrase.of(
                  "tread {0}, the least allowed here is {1} (49 CFR 393.75(b), (c))",
                  tread.value(), least),
              0));
    }
  }

  private static void overload(TireAtStop at, List<Reason> reasons) {
    Limits limits = at.limits();
    Loads.AxleLoad axle = limits.load().axle();
    Entered<Mass> gawr = at.fitted().axle().gawr();
    if (gawr != null && axle.likelyKilograms() > gawr.value().kilograms() + 0.5) {
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
    if (wheel != null && load > wheel.value().kilograms() + 0.5) {
      reasons.add(
          hold(
              Phrase.of(
                  "its wheel carries {0}, over its rating of {1}: lighten {2}",
                  new Mass(load), wheel.value(), at.fitted().position().axle().words()),
              1));
    }
    if (limits.overloaded() && at.fitted().capacity() != null) {
      double ceiling = limits.ceiling();
      double most =
          Double.isNaN(ceiling)
              ? at.fitted().capacity().mostKilograms()
              : at.fitted().capacity().kilogramsAt(ceiling);
      reasons.add(
          hold(
              Phrase.of(
                  "carries {0}, more than the {1} it may at any allowed pressure: lighten {2}",
                  new Mass(load),
                  new Mass(Double.isNaN(most) ? 0 : most),
                  at.fitted().position().axle().words()),
              1));
    }
  }

  private void tooFast(int visit, TireAtStop at, List<Reason> reasons) {
    if (at.limits().speed() == Limits.SpeedVerdict.TOO_FAST) {
      var drive = forecaster.itinerary().drives().get(visit);
      reasons.add(
          hold(
              Phrase.of(
                  "hold for this speed: {0} top speed ({1}) is above what the tire is made for:"
                      + " drive slower",
                  new Speed(drive.topMetersPerSecond()), drive.topAssumed() ? "assumed" : "typed"),
              2));
    }
  }

  private static void mateLow(
      int visit, TireAtStop at, List<TireAtStop> mate, List<Reason> reasons) {
    WheelSlot slot = at.fitted().position().slot();
    if (slot.mate() == slot || visit >= mate.size()) {
      return;
    }
    TireAtStop other = mate.get(visit);
    Moment theirs = other.arrival();
    Moment mine = at.arrival();
    boolean flat = other.fitted().tire().damage().contains(Tire.Damage.FLAT);
    if (flat || (theirs != null && mine != null && theirs.settled() < MATE_LOW * mine.settled())) {
      reasons.add(
          hold(
              Phrase.of(
                  "its dual mate is flat or more than {0} under it: this tire carries both loads;"
                      + " have both inspected",
                  new Ratio(1 - MATE_LOW)),
              1));
    }
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
    boolean warm = check.reading().state() == ReadingState.WARM;
    double pressure = check.coldEquivalent() - (warm ? NINETY * check.coldSigma() : 0);
    if (Double.isNaN(recommended) || pressure > RAN_LOW * recommended) {
      return;
    }
    boolean explained = !check.first() && check.deviations() > -UNEXPLAINED;
    if (!check.rolledSinceSound()) {
      reasons.add(
          new Reason(
              Mark.RECHECK,
              explained
                  ? Phrase.of(
                      "{0} is 80 % or less of {1}, but it stood and colder air explains it: cold,"
                          + " not leaking; add air to the aim, watch it at the next stop",
                      Shown.pressure(check.coldEquivalent()), Shown.pressure(recommended))
                  : Phrase.of(
                      "{0} is 80 % or less of {1}, and the weather does not explain it: it leaks;"
                          + " find the leak before it rolls",
                      Shown.pressure(check.coldEquivalent()), Shown.pressure(recommended)),
              0));
      return;
    }
    reasons.add(
        hold(
            Phrase.of(
                "read {0}, as cool as the air {1}: 80 % or less of {2} and it may have rolled so:"
                    + " do not just add air and go; deflate before the wheel comes off, have it"
                    + " inspected inside by a qualified technician, its neighbour too (29 CFR"
                    + " 1910.177(f)(2))",
                check.reading().pressure().value(),
                Shown.pressure(check.coldEquivalent()),
                Shown.pressure(recommended)),
            0));
  }

  private static Reason hold(Phrase text, int rank) {
    return new Reason(Mark.HOLD, text, rank);
  }
}
