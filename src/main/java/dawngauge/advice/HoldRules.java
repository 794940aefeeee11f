package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.BareReading;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.Speed;
import dawngauge.quantity.TreadDepth;
import dawngauge.quantity.Unit;
import dawngauge.rules.DualMates;
import dawngauge.rules.Limits;
import dawngauge.rules.Loads;
import dawngauge.rules.RanLow;
import dawngauge.rules.SpareFit;
import dawngauge.tire.Capacity;
import dawngauge.tire.SpeedSymbol;
import dawngauge.tire.TireSpec;
import dawngauge.tire.TrailerSpeedRule;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Tire;
import dawngauge.trip.WheelSlot;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What makes a tire not roll whatever air there is. */
final class HoldRules {

  /** Rank of a hold by the state of the tire itself. */
  private static final int OF_THE_TIRE = 0;

  /** A reading so many deviations off is not explained by the weather. */
  private static final double UNEXPLAINED = 2;

  private static final Tire.Damage[] NO_DAMAGE = {};

  private static final Phrase MATE_FIRST =
      Phrase.of("do not roll until its dual mate is aired or replaced");

  /** What is to be heeded of a tire that was found run low before. */
  static final Phrase FOUND_LOW =
      Phrase.of("found run low: not run on unless inspected inside since");

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
      tooFast(visit, track, reasons);
    }
    mateLow(visit, at, mate, reasons);
    for (ReadingCheck check : at.readings()) {
      ranLow(at, check, reasons);
    }
    for (BareReading bare : at.bare()) {
      bare(at, bare, reasons);
    }
    ranLowBefore(visit, track, reasons);
    return reasons;
  }

  /** Whether a reason is that the tire itself is not to be run, so that air alone is no way out. */
  static boolean ofTheTire(Reason reason) {
    return reason.mark() == Mark.HOLD && reason.rank() == OF_THE_TIRE;
  }

  /** Whether a reason holds a tire so that more air in it is no way out. */
  static boolean whateverItsAir(Reason reason) {
    return ofTheTire(reason)
        || (reason.mark() == Mark.HOLD && (reason.ofTheRig() || reason.todo().equals(MATE_FIRST)));
  }

  /** Only what a load can do; of a tire beside its mate, the load that it carries now. */
  static List<Reason> overloadOnly(TireAtStop at) {
    List<Reason> reasons = new ArrayList<>();
    overload(at, reasons);
    return reasons;
  }

  private void unfit(TireAtStop at, List<Reason> reasons) {
    Set<Tire.Damage> damages = at.fitted().tire().damage();
    for (Tire.Damage damage : damages.isEmpty() ? NO_DAMAGE : Tire.Damage.values()) {
      if (damages.contains(damage) && !damage.isRepair()) {
        reasons.add(
            ofTheRig(
                Phrase.of("do not run it: {0}", damage.word()),
                Phrase.of(
                    "{0}: not to be run (49 CFR 393.75(a)){1}",
                    damage.word(), Spares.fit(forecaster, at) ? "; fit the spare" : ""),
                OF_THE_TIRE));
      }
    }
    Entered<TreadDepth> tread = at.fitted().tire().tread();
    if (tread == null) {
      return;
    }
    TreadDepth least = TreadDepth.of(at.fitted().steers() ? 4 : 2, Unit.THIRTY_SECOND_INCH);
    if (tread.value().meters() < least.meters() - 1e-9) {
      reasons.add(
          ofTheRig(
              Phrase.of("do not run it: tread {0}", tread.value()),
              Phrase.of(
                  "tread {0}, the least allowed here is {1} (49 CFR 393.75(b), (c)){2}",
                  tread.value(), least, Spares.fit(forecaster, at) ? ": fit the spare" : ""),
              OF_THE_TIRE));
    }
  }

  private static void overload(TireAtStop at, List<Reason> reasons) {
    Limits limits = at.limits();
    Loads.AxleLoad axle = limits.load().axle();
    String words = at.fitted().position().axle().words();
    Entered<Mass> gawr = at.fitted().axle().gawr();
    if (gawr != null && axle.kilograms() > gawr.value().kilograms() + SpareFit.ROUNDING) {
      reasons.add(
          ofTheRig(
              Phrase.of("over its GAWR: lighten {0}", words),
              Phrase.of(
                  "{0} carries {1}, over its GAWR of {2}: lighten it",
                  words, new Mass(axle.kilograms()), gawr.value()),
              1));
    }
    Entered<Mass> wheel = at.fitted().axle().wheelMaxLoad();
    double load = limits.load().kilograms();
    if (wheel != null && load > wheel.value().kilograms() + SpareFit.ROUNDING) {
      reasons.add(
          ofItsLoad(
              at,
              Phrase.of("over the rating of its wheel: {0}", lighten(at, words)),
              Phrase.of(
                  "its wheel carries {0}, over its rating of {1}: {2}",
                  new Mass(load), wheel.value(), lighten(at, words))));
    }
    Capacity capacity = at.fitted().capacity();
    if (limits.overloaded() && capacity != null) {
      reasons.add(
          ofItsLoad(
              at,
              Phrase.of("air is no cure: {0}", lighten(at, words)),
              Phrase.of(
                  "it carries {0}, more than the {1} it may at any allowed pressure: air is no cure,"
                      + " {2}",
                  new Mass(load), new Mass(limits.mostKilograms(capacity)), lighten(at, words))));
    }
  }

  /** What releases a tire that carries too much. */
  private static String lighten(TireAtStop at, String axle) {
    if (carriesForItsMate(at)) {
      return "see to its dual mate, which carries less than its part, or lighten " + axle;
    }
    return at.limits().load().axle().basis() == Loads.Basis.NOT_WEIGHED
        ? "lighten " + axle + ", or weigh each wheel"
        : "lighten " + axle;
  }

  /** Whether it carries more than an even part, since its dual mate has less air. */
  private static boolean carriesForItsMate(TireAtStop at) {
    Loads.TireLoad load = at.limits().load();
    double even = load.axle().kilograms() * load.side() / at.fitted().axle().tiresPerSide();
    return at.fitted().axle().dual() && load.kilograms() > even + SpareFit.ROUNDING;
  }

  /** The check of the rig knows even loads, not what the air in the tires makes of them. */
  private static Reason ofItsLoad(TireAtStop at, Phrase todo, Phrase text) {
    return carriesForItsMate(at) ? hold(todo, text, 1) : ofTheRig(todo, text, 1);
  }

  /** Judges every leg until the rig stands again. */
  private void tooFast(int visit, List<TireAtStop> track, List<Reason> reasons) {
    int leg = visit;
    do {
      TireAtStop at = track.get(leg);
      if (at.limits().speed() == Limits.SpeedVerdict.TOO_FAST) {
        var drive = forecaster.itinerary().drives().get(leg);
        reasons.add(
            ofTheRig(
                Phrase.of("keep below {0}", fastest(at)),
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
        ? TrailerSpeedRule.MOST
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
    if (flat || DualMates.carriesAlone(settled(at), lowest(other))) {
      reasons.add(
          hold(
              MATE_FIRST,
              Phrase.of(
                  "its dual mate is flat or more than {0} under it, so this tire carries both"
                      + " loads: do not roll until the mate is aired or replaced; have both"
                      + " inspected",
                  new Ratio(1 - DualMates.PART)),
              1));
    }
  }

  /** Settled pressure before anything is set, the last reading counted; NaN if not known. */
  private static double settled(TireAtStop at) {
    TireSnapshot check = at.check();
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
   * A tire that rolled at 80 % or less of its reference, or of which that is not known, may be
   * damaged inside. One that stood and is low by the weather alone is only set.
   */
  private void ranLow(TireAtStop at, ReadingCheck check, List<Reason> reasons) {
    double reference = at.limits().reference();
    boolean explained = !check.first() && check.deviations() > -UNEXPLAINED;
    boolean cold = check.reading().state() == ReadingState.COLD;
    Phrase read = Phrase.of("read {0}", check.reading().pressure().value());
    said(
        at,
        check.ranLow(reference),
        cold
            ? read
            : Phrase.of(
                "{0}, as cool as the air {1}", read, PressureText.pressure(check.coldEquivalent())),
        check.rolledSinceSound(),
        explained,
        reasons);
  }

  /** The same of a reading in unknown air, and whether its load is too much for it. */
  private void bare(TireAtStop at, BareReading bare, List<Reason> reasons) {
    Phrase read =
        bare.cold()
            ? Phrase.of("read {0}", bare.reading().pressure().value())
            : Phrase.of(
                "read {0} {1}, so no more than that cold",
                bare.reading().pressure().value(), bare.reading().state().word());
    Limits limits = at.limits();
    said(at, bare.ranLow(limits.reference()), read, bare.rolledSinceSound(), false, reasons);
    double chance = limits.tooLittle(bare.pascals(), bare.errors());
    if (chance > 1 - forecaster.options().confidence()) {
      reasons.add(
          hold(
              Phrase.of("do not roll until aired or lighter"),
              Phrase.of(
                  "{0}: {1} chance that its load needs more: do not roll until aired or lighter",
                  read, AirWords.chance(chance)),
              1));
    }
  }

  /** A tire that ran low stays so until it was inspected, whatever air it has had since. */
  private void ranLowBefore(int visit, List<TireAtStop> track, List<Reason> reasons) {
    int found = foundLowBefore(visit, track);
    if (found >= 0) {
      reasons.add(
          new Reason(
              Mark.RECHECK,
              FOUND_LOW,
              Phrase.of(
                  "it was found run low at {0}: not to be run on unless a qualified technician has"
                      + " inspected it inside since",
                  forecaster.itinerary().visits().get(found).stop().place()),
              0));
    }
  }

  /** Index of the stop before a stop where its tire was found run low; −1 where it was not. */
  static int foundLowBefore(int visit, List<TireAtStop> track) {
    String tire = track.get(visit).fitted().tire().id();
    for (int before = 0; before < visit; before++) {
      if (foundLow(track.get(before), tire)) {
        return before;
      }
    }
    return -1;
  }

  /** Whether the tire of a stop was found run low there or before: only a look inside clears it. */
  static boolean foundLowByNow(int visit, List<TireAtStop> track) {
    TireAtStop at = track.get(visit);
    return foundLow(at, at.fitted().tire().id()) || foundLowBefore(visit, track) >= 0;
  }

  private static boolean foundLow(TireAtStop at, String tire) {
    if (at.readings().isEmpty() && at.bare().isEmpty()) {
      return false;
    }
    double reference = at.limits().reference();
    for (ReadingCheck check : at.readings()) {
      if (check.rolledSinceSound()
          && check.reading().tire().equals(tire)
          && check.ranLow(reference) == RanLow.LIKELY) {
        return true;
      }
    }
    for (BareReading bare : at.bare()) {
      if (bare.rolledSinceSound()
          && bare.reading().tire().equals(tire)
          && bare.ranLow(reference) == RanLow.LIKELY) {
        return true;
      }
    }
    return false;
  }

  private void said(
      TireAtStop at,
      RanLow ranLow,
      Phrase read,
      boolean rolled,
      boolean explained,
      List<Reason> reasons) {
    if (ranLow == RanLow.NO) { // also where the reference is not known
      return;
    }
    Phrase line = Phrase.of("80 % or less of {0}", PressureText.pressure(at.limits().reference()));
    if (ranLow == RanLow.MAYBE) {
      reasons.add(
          new Reason(
              Mark.RECHECK,
              Phrase.of("gauge it again, with another gauge, before it rolls"),
              Phrase.of(
                  "{0}: may be {1}: gauge it again, with another gauge, before it rolls",
                  read, line),
              0));
    } else if (rolled) {
      reasons.add(
          hold(
              Phrase.of("ran low: do not add air, have it inspected inside"),
              Phrase.of(
                  "{0}: {1}, and it may have rolled so: do not just add air and go; {2}deflate it"
                      + " before the wheel comes off, have it inspected inside by a qualified"
                      + " technician, the tire beside it too (29 CFR 1910.177(f)(2))",
                  read, line, Spares.fit(forecaster, at) ? "fit the spare, " : ""),
              OF_THE_TIRE));
    } else if (explained) {
      reasons.add(
          new Reason(
              Mark.RECHECK,
              Phrase.of("low by the cold: set it before it rolls"),
              Phrase.of(
                  "{0}: {1}, but it stood and colder air explains it: set it before it rolls, watch"
                      + " it at the next stop",
                  read, line),
              0));
    } else {
      reasons.add(
          hold(
              Phrase.of("it leaks: mend the leak before it rolls"),
              Phrase.of(
                  "{0}: {1}; it stood, and the weather does not explain it: it leaks; find and mend"
                      + " the leak before it rolls{2}",
                  read, line, Spares.fit(forecaster, at) ? ", or fit the spare" : ""),
              OF_THE_TIRE));
    }
  }

  private static Reason ofTheRig(Phrase todo, Phrase text, int rank) {
    return new Reason(Mark.HOLD, todo, text, rank, true);
  }

  private static Reason hold(Phrase todo, Phrase text, int rank) {
    return new Reason(Mark.HOLD, todo, text, rank);
  }
}
