package dawngauge.ledger;

import dawngauge.advice.FigureNow;
import dawngauge.advice.SetFigure;
import dawngauge.advice.StayFigures;
import dawngauge.explain.Phrase;
import dawngauge.forecast.TireSnapshot;
import dawngauge.page.Block;
import dawngauge.page.Page;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.UnitSystem;
import dawngauge.rules.Quantile;
import dawngauge.rules.RanLow;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a tire is to be set to here and now, and what a reading means, as a page of two cards. */
public final class FigurePage {

  /**
   * What is asked.
   *
   * @param reading what the gauge shows; null where it was not read
   * @param state how the tire is then
   * @param minute of the stay at which it is set, by the clock of the place; null where any
   */
  public record Asked(
      @Nullable GaugePressure reading, ReadingState state, @Nullable LocalTime minute) {}

  private final Trip trip;
  private final FigureNow figures;
  private final Asked asked;
  private final UnitSystem units;
  private final List<String> todo = new ArrayList<>();
  private final List<String> watch = new ArrayList<>();
  private final List<String> why = new ArrayList<>();

  private FigurePage(Trip trip, FigureNow figures, Asked asked, UnitSystem units) {
    this.trip = trip;
    this.figures = figures;
    this.asked = asked;
    this.units = units;
  }

  /**
   * The page.
   *
   * @param stop index of the stop
   * @param position the tire
   * @param figures what is known of it there
   */
  public static Page of(
      Trip trip,
      int stop,
      WheelPosition position,
      FigureNow figures,
      Asked asked,
      UnitSystem units) {
    List<Block> blocks = new ArrayList<>(cards(trip, figures, asked, units));
    blocks.addAll(Ledger.cautions());
    String name = trip.rig().shortForm(position);
    List<String> words = TireNames.of(trip.rig()).untold(List.of(name), new HashSet<>());
    String place = trip.route().stops().get(stop).place();
    return new Page(place + ": " + String.join("", words), blocks);
  }

  /** The cards with what to heed beside them. */
  public static List<Block> beside(Trip trip, FigureNow figures, Asked asked, UnitSystem units) {
    List<Block> blocks = new ArrayList<>(cards(trip, figures, asked, units));
    blocks.addAll(Ledger.atTheHose());
    return blocks;
  }

  private static List<Block> cards(Trip trip, FigureNow figures, Asked asked, UnitSystem units) {
    List<Block> cards = new ArrayList<>();
    GaugePressure reading = asked.reading();
    if (reading != null) {
      FigurePage read = new FigurePage(trip, figures, asked, units);
      read.mean(reading);
      cards.add(read.card("The reading")); // first: it may be one that forbids to set anything
    }
    FigurePage set = new FigurePage(trip, figures, asked, units);
    set.toSet();
    cards.add(set.card("Set here"));
    return cards;
  }

  private Block card(String title) {
    return new Block.Card(title, todo, watch, why);
  }

  private void add(List<String> lines, String pattern, Object... parts) {
    lines.add(Phrase.of(pattern, parts).in(units));
  }

  private void toSet() {
    if (figures.ranLow()) {
      add(
          todo,
          "It was found run low: no figure counts unless a qualified technician has inspected it"
              + " inside since.");
    }
    if (figures.cold() == null) {
      add(watch, "What it should have here is not known, so there is no figure to set.");
    }
    SetFigure warm = figures.warm();
    if (warm != null) {
      add(
          todo,
          "As warm as it arrives: {0}{1}",
          Wording.figure(warm.figure()),
          warm.spread().pascals() > 0
              ? Phrase.of(
                  " (± {0} by how warm it is)",
                  Wording.shown(warm.spread().pascals() * Quantile.NINETY_WITHIN))
              : Phrase.of(""));
      later();
    }
    minute();
    SetFigure cold = figures.cold();
    if (cold != null) {
      add(todo, "Cold: {0}", Wording.figure(cold.figure()));
      follows(cold, "Set cold", figures.nextAfterCold());
    }
    if (warm != null) {
      follows(warm, "Set as warm as it arrives", figures.nextAfterWarm());
    }
    limit();
    CompressorWords.figure(trip.rig(), figures, asked).ifPresent(told -> watch.add(told.in(units)));
    if (warm != null) {
      add(
          watch,
          "Warm: only add, never let air out; wait ten minutes after adding, read again, and check"
              + " it at the next cold morning.");
    }
    if (!figures.air()) {
      add(watch, "No hose here.");
    }
  }

  private void limit() {
    double ceiling = figures.at().limits().ceiling();
    if (figures.cold() == null && figures.warm() == null) {
      return;
    }
    if (Double.isNaN(ceiling)) {
      add(watch, "Its limit is not known: read sidewall and wheel first.");
    } else {
      add(watch, "Never over, cold: {0}", Wording.figure(new GaugePressure(ceiling)));
    }
  }

  /** What a figure comes to; where it is all that may be set, what has to be added further on. */
  private void follows(SetFigure set, String how, double next) {
    if (figures.nextStart() < 0 || Double.isNaN(next)) {
      add(why, "{0} it has {1} cold here.", how, Wording.shown(set.settled().pascals()));
      return;
    }
    Phrase there =
        Phrase.of(
            "at the start from {0}, {1}, it will read about {2}",
            trip.route().stops().get(figures.nextStart()).place(),
            new Temperature(figures.nextAir()),
            Wording.shown(next));
    add(why, "{0} it has {1} cold here; {2}.", how, Wording.shown(set.settled().pascals()), there);
    double aim = figures.at().limits().aim();
    if ((set.cutByCeiling() || set.cutByHose()) && next < aim) {
      add(
          watch,
          "{0} is the most it may be set to here; {1}: add {2} before leaving, cold. Carry a"
              + " compressor, or stop where there is air.",
          Wording.shown(set.settled().pascals()),
          there,
          Wording.shown(aim - next));
    }
  }

  /** The figure when the crew has stood there for a while. */
  private void later() {
    TireSnapshot arrival = figures.at().arrival();
    if (arrival != null) {
      Instant then = Instant.ofEpochSecond(Math.round(arrival.seconds())).plus(SetNow.LATER);
      SetNow.at(figures, then, units).ifPresent(todo::add);
    }
  }

  /** What it is to be set to at the minute asked for, by the reading where there is one. */
  private void minute() {
    LocalTime time = asked.minute();
    GaugePressure read = asked.reading();
    if (time == null) {
      return;
    }
    if (read != null && figures.ranLow(read, asked.state()) == RanLow.LIKELY) {
      todo.add("No figure at " + time + ": it is not to be pumped up before it is inspected.");
      return;
    }
    StayFigures stay = figures.stay();
    Optional<String> told = Optional.empty();
    if (stay != null) {
      Instant at = stay.next(time);
      told = read == null ? SetNow.at(figures, at, units) : SetNow.add(figures, read, 0, at, units);
    }
    told.ifPresentOrElse(
        todo::add,
        () -> watch.add("No figure at " + time + ": not within the stay, or not known how warm."));
  }

  private void mean(GaugePressure reading) {
    ReadingState state = figures.stateOf(asked.state());
    ranLow(figures.ranLow(reading, state));
    if (state != asked.state()) {
      add(watch, "It counts as warm: by the times noted it rolled less than three hours ago.");
    }
    FigureNow.Meaning meaning = figures.meaning(reading, state).orElse(null);
    if (state == ReadingState.JUST_FILLED) {
      add(
          watch,
          "Air just filled in is warm from the compressor: wait ten minutes and read again.");
    } else if (meaning == null) {
      add(
          watch,
          state == ReadingState.COLD
              ? "What it should read here is not known."
              : "How warm the tire is here is not known: cold it has no more than that.");
    } else {
      mean(meaning, reading, state);
    }
  }

  private void mean(FigureNow.Meaning meaning, GaugePressure reading, ReadingState state) {
    if (state == ReadingState.COLD_IN_SUN) {
      add(
          watch,
          "{0} in the sun is {1} to {2} cold: the sun warms a tire by up to 15 °C ({3}) over the"
              + " air. Let no air out; read it again in shade or before sunrise.",
          Wording.figure(reading),
          Wording.shown(meaning.low()),
          Wording.shown(meaning.high()),
          "27 °F");
    } else if (meaning.warmth()) {
      add(
          watch,
          "{0} warm is far more than expected, and air does not come by itself: it is warmer than"
              + " modelled, or air was added. Cold it may have no more than {1}: let no air out;"
              + " look at brake, bearing and load, and gauge it cold.",
          Wording.figure(reading),
          Wording.shown(meaning.likely()));
    } else {
      add(
          watch,
          "{0} {1} is {2} cold ({3} to {4} in 9 of 10 cases)",
          Wording.figure(reading),
          state.word(),
          Wording.shown(meaning.likely()),
          Wording.shown(meaning.low()),
          Wording.shown(meaning.high()));
    }
    if (!Double.isNaN(meaning.expected())) {
      add(watch, "Expected to read: {0}", Wording.shown(meaning.expected()));
    }
    if (!Double.isNaN(meaning.published())) {
      add(
          why,
          "By 49 CFR 393.75 Table 1 it counts as {0} cold: an enforcement figure, shown beside ours"
              + " and never mixed in.",
          Wording.shown(meaning.published()));
    } else if (state == ReadingState.WARM) {
      add(
          why,
          "49 CFR 393.75 Table 1 has no figure here: its only row is for 41 to 55 mph on average"
              + " over the hour before.");
    }
  }

  private void ranLow(RanLow ranLow) {
    if (ranLow == RanLow.MAYBE) {
      add(
          todo,
          "It may be 80 % or less of its recommended pressure: gauge it again, with another gauge,"
              + " before it rolls.");
    } else if (ranLow == RanLow.LIKELY) {
      add(
          todo,
          "80 % or less of its recommended pressure. If it rolled so, it may be damaged inside: do"
              + " not add air and go; have it inspected by a qualified technician. If it has surely"
              + " not rolled and only the cold explains it, set it before it rolls.");
    }
  }
}
