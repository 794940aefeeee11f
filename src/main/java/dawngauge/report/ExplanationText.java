package dawngauge.report;

import dawngauge.advice.Reason;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.explain.Step;
import dawngauge.forecast.Explanation;
import dawngauge.forecast.Moment;
import dawngauge.forecast.TireAtStop;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.Wording;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.List;
import java.util.Optional;

/** The steps behind the figures of one tire at one stop, as plain text. */
public final class ExplanationText {

  private static final int FIGURE = 11;

  private final PlainText out = new PlainText();
  private final UnitSystem units;

  private ExplanationText(UnitSystem units) {
    this.units = units;
  }

  /**
   * The steps.
   *
   * @param trip the trip
   * @param stop the stop
   * @param position the tire's place
   * @param arriving on arrival, else on leaving
   * @param units the units to show
   */
  public static String of(
      Trip trip, StopAdvice stop, WheelPosition position, boolean arriving, UnitSystem units) {
    ExplanationText text = new ExplanationText(units);
    var visit = stop.stop().visit();
    String clock = Wording.clock(arriving ? visit.arrive() : visit.leave(), visit.zone());
    text.out.wrapped(
        "",
        visit.stop().place()
            + ", "
            + (arriving ? "arriving " : "leaving ")
            + clock
            + ": "
            + position.words()
            + " ("
            + trip.rig().shortForm(position)
            + ")");
    Optional<TireAdvice> advice =
        stop.tires().stream()
            .filter(t -> t.tire().fitted().position().equals(position))
            .findFirst();
    if (advice.isEmpty()) {
      text.out.line("No tire is fitted there in the file.");
      return text.out.toString();
    }
    text.tire(advice.get(), arriving, visit.index() == 0);
    return text.out.toString();
  }

  private void tire(TireAdvice advice, boolean arriving, boolean start) {
    TireAtStop at = advice.tire();
    Moment moment = arriving ? at.arrival() : at.leaving();
    if (moment == null) {
      out.line(
          "Nothing is known of it here: no reading so far, or no air temperature or elevation.");
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
    out.line("");
    out.line("Mark: " + advice.mark().word());
    for (Reason reason : advice.reasons()) {
      out.wrapped(
          "  " + PlainText.left(reason.mark().word(), FIGURE) + "  ", reason.text().in(units));
    }
    out.line("");
    out.line("Cautions");
    for (String caution : Ledger.CAUTIONS) {
      out.wrapped("  - ", caution);
    }
  }

  private void published(TireAtStop at) {
    out.line("");
    out.line("Beside our model, on arrival: 49 CFR 393.75(i)(2), Table 1");
    if (at.published() == null) {
      out.wrapped(
          "  ",
          "no published factor: its only row is for 41 to 55 mph on average over the hour"
              + " before");
      return;
    }
    Moment arrival = at.arrival();
    out.line("  subtract " + units.format(at.published().pressure()) + " from a warm reading");
    if (arrival != null && !Double.isNaN(arrival.reading())) {
      out.wrapped(
          "  ",
          units.format(new GaugePressure(arrival.reading()))
              + " warm would count as "
              + units.format(
                  new GaugePressure(arrival.reading() - at.published().pressure().pascals()))
              + " cold; our model says "
              + units.format(new GaugePressure(arrival.settled())));
    }
  }

  private void section(String heading, List<Step> steps) {
    if (steps.isEmpty()) {
      return;
    }
    out.line("");
    out.line(heading);
    for (Step step : steps) {
      out.wrapped(
          "  " + PlainText.right(figure(step.result()), FIGURE) + "  ",
          step.what().in(units) + " [" + step.authority().text() + "]");
    }
  }

  /** Margins with a decimal, so that the ledger's whole percents, rounded down, agree with them. */
  private String figure(Quantity quantity) {
    return quantity instanceof Ratio ? units.number(quantity, 1) + " %" : units.format(quantity);
  }
}
