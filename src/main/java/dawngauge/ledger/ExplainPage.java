package dawngauge.ledger;

import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.explain.Step;
import dawngauge.forecast.Explanation;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.page.Block;
import dawngauge.page.Block.Weight;
import dawngauge.page.Page;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How the figures of one tire at one stop came about, step by step with their sources. */
public final class ExplainPage {

  private final List<Block> blocks = new ArrayList<>();
  private final UnitSystem units;

  private ExplainPage(UnitSystem units) {
    this.units = units;
  }

  /**
   * The page.
   *
   * @param trip the trip
   * @param stop the stop
   * @param position the tire's place
   * @param arriving on arrival, else on leaving
   * @param units the units to show
   */
  public static Page of(
      Trip trip, StopAdvice stop, WheelPosition position, boolean arriving, UnitSystem units) {
    var visit = stop.stop().visit();
    String title =
        visit.stop().place()
            + (arriving ? ", arriving " : ", leaving ")
            + Wording.clock(arriving ? visit.arrive() : visit.leave(), visit.zone())
            + ": "
            + position.words()
            + " ("
            + trip.rig().shortForm(position)
            + ")";
    ExplainPage page = new ExplainPage(units);
    Optional<TireAdvice> advice =
        stop.tires().stream()
            .filter(t -> t.tire().fitted().position().equals(position))
            .findFirst();
    advice.ifPresentOrElse(
        tire -> page.tire(tire, arriving, visit.index() == 0),
        () -> page.note("No tire is fitted there in the file."));
    return new Page(title, page.blocks);
  }

  /**
   * Steps as a table of figures and words. Margins have a decimal, so that the whole percents shown
   * elsewhere, rounded down, agree with them.
   *
   * @param spoken what they lead to
   */
  public static Block.Table steps(String spoken, List<Step> steps, UnitSystem units) {
    List<List<String>> rows = new ArrayList<>();
    for (Step step : steps) {
      String figure =
          step.result() instanceof Ratio
              ? units.format(step.result(), 1)
              : units.format(step.result());
      rows.add(List.of(figure, step.what().in(units) + " [" + step.authority().text() + "]"));
    }
    return new Block.Table(
        spoken,
        List.of(new Block.Column("", Block.Side.RIGHT), new Block.Column("", Block.Side.LEFT)),
        rows);
  }

  private void tire(TireAdvice advice, boolean arriving, boolean start) {
    TireAtStop at = advice.tire();
    TireSnapshot moment = arriving ? at.arrival() : at.leaving();
    if (moment == null) {
      note("Nothing is known of it here: no reading so far, or no air temperature or elevation.");
    } else {
      section("What the gauge reads", Explanation.ofReading(moment));
    }
    section("Lowest safe, set cold to and never over, for the leg ahead", Explanation.ofLimits(at));
    if (moment != null) {
      section("Load margin", Explanation.ofMargin(at, moment));
    }
    if (at.low() != null && !arriving) {
      section(
          "Load margin at the lowest point of the leg ahead",
          Explanation.ofMargin(at, at.low().moment()));
    }
    if (at.arrival() != null && !start) {
      published(at);
    }
    List<String> reasons =
        advice.reasons().stream()
            .map(reason -> reason.mark().word() + ": " + reason.text().in(units))
            .toList();
    blocks.add(new Block.Card("Mark: " + advice.mark().word(), List.of(), reasons, List.of()));
    blocks.addAll(Ledger.cautions());
  }

  private void published(TireAtStop at) {
    blocks.add(new Block.Heading("Beside our model, on arrival: 49 CFR 393.75(i)(2), Table 1", 2));
    if (at.published() == null) {
      note(
          "No published factor: its only row is for 41 to 55 mph on average over the hour before.");
      return;
    }
    double factor = at.published().pressure().pascals();
    note("Subtract " + units.format(at.published().pressure()) + " from a warm reading.");
    TireSnapshot arrival = at.arrival();
    if (arrival != null && !Double.isNaN(arrival.reading())) {
      note(
          units.format(new GaugePressure(arrival.reading()))
              + " warm would count as "
              + units.format(new GaugePressure(arrival.reading() - factor))
              + " cold; our model says "
              + units.format(new GaugePressure(arrival.settled()))
              + ".");
    }
  }

  private void section(String heading, List<Step> steps) {
    if (!steps.isEmpty()) {
      blocks.add(new Block.Heading(heading, 2));
      blocks.add(steps(heading, steps, units));
    }
  }

  private void note(String text) {
    blocks.add(new Block.Note(Weight.PLAIN, text));
  }
}
