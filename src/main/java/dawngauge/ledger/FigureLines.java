package dawngauge.ledger;

import dawngauge.advice.FigureNow;
import dawngauge.advice.SetFigure;
import dawngauge.explain.Phrase;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
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
    out.figure(figures.cold(), false);
    out.figure(figures.warm(), true);
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
                    " (± {0} by how warm it is)", Wording.shown(set.spread().pascals() * 1.6449))
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

  /** What a reading means as a cold one. */
  public static List<String> meaning(
      Trip trip, FigureNow figures, GaugePressure reading, ReadingState state, UnitSystem units) {
    FigureLines out = new FigureLines(trip, figures, units);
    out.mean(reading, state);
    return List.copyOf(out.lines);
  }

  private void mean(GaugePressure reading, ReadingState state) {
    if (state == ReadingState.JUST_FILLED) {
      line(
          Phrase.of(
              "Air just filled in is warm from the compressor: wait ten minutes and read again."));
      return;
    }
    FigureNow.Meaning meaning = figures.meaning(reading, state).orElse(null);
    if (meaning == null) {
      line(Phrase.of("How warm the tire is here is not known, so it means nothing yet."));
      return;
    }
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
    if (meaning.low80()) {
      line(
          Phrase.of(
              "At or below 80 % of its recommended pressure. If it rolled so, it may be damaged"
                  + " inside: do not add air and go; have it inspected by a qualified technician. If it"
                  + " has surely not rolled and only the cold explains it, set it before it rolls."));
    }
  }

  private void line(Phrase phrase) {
    lines.add(phrase.in(units));
  }
}
