package dawngauge.ledger;

import dawngauge.advice.FigureNow;
import dawngauge.advice.SetFigure;
import dawngauge.explain.Phrase;
import dawngauge.forecast.Moment;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.UnitSystem;
import dawngauge.rules.Quantile;
import dawngauge.rules.RanLow;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a tire is to be set to here and now, and what a reading means, line by line. */
public final class FigureLines {

  private final Trip trip;
  private final FigureNow figures;
  private final UnitSystem units;
  private final List<String> lines = new ArrayList<>();

  private FigureLines(Trip trip, FigureNow figures, UnitSystem units) {
    this.trip = trip;
    this.figures = figures;
    this.units = units;
  }

  /** The figures to set. */
  public static List<String> toSet(Trip trip, FigureNow figures, UnitSystem units) {
    FigureLines out = new FigureLines(trip, figures, units);
    if (figures.cold() == null) {
      out.line(Phrase.of("What it should have here is not known, so there is no figure to set."));
    }
    if (figures.ranLow()) {
      out.line(
          Phrase.of(
              "It was found run low: no figure counts unless a qualified technician has inspected"
                  + " it inside since."));
    }
    out.figure(figures.cold(), false);
    out.figure(figures.warm(), true);
    out.later();
    if (figures.warm() != null) {
      out.line(
          Phrase.of(
              "Warm: only add, never let air out; wait ten minutes after adding, read again, and"
                  + " check it at the next cold morning."));
    }
    if (!figures.air()) {
      out.line(Phrase.of("There is no air to be had here."));
    }
    return List.copyOf(out.lines);
  }

  private void figure(@Nullable SetFigure set, boolean warm) {
    if (set == null) {
      return;
    }
    double ceiling = figures.at().limits().ceiling();
    line(
        Phrase.of(
            "{0}: {1}{2}; settles at {3}, limit {4}",
            warm ? "As warm as it arrives" : "Cold",
            Wording.figure(set.figure()),
            warm && set.spread().pascals() > 0
                ? Phrase.of(
                    " (± {0} by how warm it is)",
                    Wording.shown(set.spread().pascals() * Quantile.NINETY_WITHIN))
                : Phrase.of(""),
            Wording.shown(set.settled().pascals()),
            Double.isNaN(ceiling)
                ? Phrase.of("not known: read sidewall and wheel first")
                : Wording.shown(ceiling)));
    double next = warm ? figures.nextAfterWarm() : figures.nextAfterCold();
    if (figures.nextStart() < 0 || Double.isNaN(next)) {
      return;
    }
    Phrase where =
        Phrase.of(
            "at the start from {0}, {1}, it will read about {2}",
            trip.route().stops().get(figures.nextStart()).place(),
            new Temperature(figures.nextAir()),
            Wording.shown(next));
    double aim = figures.at().limits().aim();
    boolean cut = set.cutByCeiling() || set.cutByHose();
    line(
        cut && next < aim
            ? Phrase.of(
                "  {0} is the most it may be set to here; {1}: add {2} before leaving, cold. Carry a"
                    + " compressor, or stop where there is air",
                Wording.shown(set.settled().pascals()), where, Wording.shown(aim - next))
            : Phrase.of("  {0}", where));
  }

  /** The figure when the crew has stood there for a while. */
  private void later() {
    Moment arrival = figures.at().arrival();
    if (figures.warm() != null && arrival != null) {
      Instant then = Instant.ofEpochSecond(Math.round(arrival.seconds())).plus(SetNow.LATER);
      SetNow.at(figures, then, units).ifPresent(lines::add);
    }
  }

  /** What a reading means as a cold one. */
  public static List<String> meaning(
      Trip trip, FigureNow figures, GaugePressure reading, ReadingState state, UnitSystem units) {
    FigureLines out = new FigureLines(trip, figures, units);
    out.mean(reading, state);
    return List.copyOf(out.lines);
  }

  private void mean(GaugePressure reading, ReadingState word) {
    ReadingState state = figures.stateOf(word);
    if (state != word) {
      line(Phrase.of("It counts as warm: by the times noted it rolled less than three hours ago."));
    }
    FigureNow.Meaning meaning = figures.meaning(reading, state).orElse(null);
    if (state == ReadingState.JUST_FILLED) {
      line(
          Phrase.of(
              "Air just filled in is warm from the compressor: wait ten minutes and read again."));
    } else if (meaning == null) {
      line(
          Phrase.of(
              state == ReadingState.COLD
                  ? "What it should read here is not known."
                  : "How warm the tire is here is not known: cold it has no more than that."));
    } else {
      mean(meaning, reading, state);
    }
    ranLow(figures.ranLow(reading, state));
  }

  private void mean(FigureNow.Meaning meaning, GaugePressure reading, ReadingState state) {
    line(
        state == ReadingState.COLD_IN_SUN
            ? Phrase.of(
                "{0} in the sun is {1} to {2} cold: the sun warms a tire by up to 15 °C ({3}) over the"
                    + " air. Let no air out; read it again in shade or before sunrise.",
                Wording.figure(reading),
                Wording.shown(meaning.low()),
                Wording.shown(meaning.high()),
                "27 °F")
            : Phrase.of(
                "{0} {1} is {2} cold ({3} to {4} in 9 of 10 cases)",
                Wording.figure(reading),
                state.word(),
                Wording.shown(meaning.likely()),
                Wording.shown(meaning.low()),
                Wording.shown(meaning.high())));
    if (!Double.isNaN(meaning.published())) {
      line(
          Phrase.of(
              "By 49 CFR 393.75 Table 1 it counts as {0} cold: an enforcement figure, shown beside"
                  + " ours and never mixed in",
              Wording.shown(meaning.published())));
    } else if (state == ReadingState.WARM) {
      line(
          Phrase.of(
              "49 CFR 393.75 Table 1 has no figure here: its only row is for 41 to 55 mph on average"
                  + " over the hour before"));
    }
    if (!Double.isNaN(meaning.expected())) {
      line(Phrase.of("Expected to read: {0}", Wording.shown(meaning.expected())));
    }
  }

  private void ranLow(RanLow ranLow) {
    if (ranLow == RanLow.MAYBE) {
      line(
          Phrase.of(
              "It may be 80 % or less of its recommended pressure: gauge it again, with another"
                  + " gauge, before it rolls."));
    } else if (ranLow == RanLow.LIKELY) {
      line(
          Phrase.of(
              "80 % or less of its recommended pressure. If it rolled so, it may be damaged"
                  + " inside: do not add air and go; have it inspected by a qualified technician. If it"
                  + " has surely not rolled and only the cold explains it, set it before it rolls."));
    }
  }

  private void line(Phrase phrase) {
    lines.add(phrase.in(units));
  }
}
