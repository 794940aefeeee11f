package dawngauge.ledger;

import dawngauge.advice.FigureNow;
import dawngauge.advice.SetFigure;
import dawngauge.advice.StayFigures;
import dawngauge.explain.Phrase;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.UnitSystem;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** What a tire is to be set to at one minute of a stay, and from it on, in one line. */
public final class SetNow {

  /** So much later the second figure is given. */
  public static final Duration LATER = Duration.ofMinutes(45);

  private final StayFigures stay;
  private final Instant minute;
  private final double sealed;

  private SetNow(StayFigures stay, Instant minute, double sealed) {
    this.stay = stay;
    this.minute = minute;
    this.sealed = sealed;
  }

  /** The figure at a minute; empty where none is known then. */
  public static Optional<String> at(FigureNow figures, Instant minute, UnitSystem units) {
    StayFigures stay = figures.stay();
    if (stay == null) {
      return Optional.empty();
    }
    SetNow now = new SetNow(stay, minute, 0);
    return stay.at(minute)
        .map(
            set ->
                Phrase.of("At {0}: {1}{2}", now.clock(minute), now.until(set), now.afterwards(set))
                    .in(units));
  }

  /**
   * What to add to a tire that was just read; empty where there is nothing to add by, or nothing is
   * known then.
   *
   * @param read what the gauge showed
   * @param sealed how much more than an open gauge it shows, in pascal
   * @param minute at which it is set
   */
  public static Optional<String> add(
      FigureNow figures, GaugePressure read, double sealed, Instant minute, UnitSystem units) {
    StayFigures stay = figures.stay();
    if (stay == null || !figures.air()) {
      return Optional.empty();
    }
    SetNow now = new SetNow(stay, minute, sealed);
    return stay.at(minute).map(set -> now.adding(set, read, figures.errors().step()).in(units));
  }

  private Phrase adding(SetFigure set, GaugePressure read, double step) {
    double more = shown(set).pascals() - read.pascals();
    if (more <= step / 2) {
      return set.warm()
          ? Phrase.of("Nothing to add; let no air out of it warm.")
          : Phrase.of("Nothing to add.");
    }
    return Phrase.of(
        "Add {0}: to {1}{2}{3}",
        Wording.shown(more),
        until(set),
        afterwards(set),
        set.warm() ? ". Let no air out of it warm." : ", cold.");
  }

  /** "87 psi until 12:41". */
  private Phrase until(SetFigure set) {
    Instant until = stay.until(minute);
    return set.warm() && !clock(until).equals(clock(minute)) && until.isAfter(minute)
        ? Phrase.of("{0} until {1}", Wording.figure(shown(set)), clock(until))
        : Phrase.of("{0}", Wording.figure(shown(set)));
  }

  /** ", 83 psi at 13:25, 80 psi cold"; nothing of a cold tire. */
  private Phrase afterwards(SetFigure set) {
    if (!set.warm()) {
      return Phrase.of("");
    }
    Instant then = minute.plus(LATER);
    Phrase later =
        stay.at(then)
            .filter(SetFigure::warm)
            .map(next -> Phrase.of(", {0} at {1}", Wording.figure(shown(next)), clock(then)))
            .orElse(Phrase.of(""));
    return Phrase.of("{0}, {1} cold", later, Wording.figure(shown(stay.cold())));
  }

  private String clock(Instant time) {
    return Wording.clock(time, stay.zone());
  }

  private GaugePressure shown(SetFigure set) {
    return new GaugePressure(set.figure().pascals() + sealed);
  }
}
