package dawngauge.report;

import dawngauge.ambient.MeasuredAir;
import dawngauge.ledger.AccountLines;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.ReviewLines;
import dawngauge.ledger.WeatherSummary;
import dawngauge.quantity.UnitSystem;
import dawngauge.review.PressureAccount;
import dawngauge.review.TireReview;
import dawngauge.review.TripReview;
import dawngauge.trip.Trip;
import java.util.List;
import java.util.Locale;

/** A review as plain text of at most 100 columns. */
public final class ReviewText {

  private static final int NAME = 8;
  private static final int ROUNDS = 8;
  private static final int OFF = 22;
  private static final int PART = 40;

  private final PlainText out = new PlainText();

  private ReviewText() {}

  /**
   * The text.
   *
   * @param measured the air that stations measured at the stops
   */
  public static String of(
      Trip trip, TripReview review, List<MeasuredAir> measured, UnitSystem units) {
    ReviewText text = new ReviewText();
    text.write(trip, review, measured, units);
    return text.out.toString();
  }

  private void write(Trip trip, TripReview review, List<MeasuredAir> measured, UnitSystem units) {
    ReviewLines lines = ReviewLines.of(trip, review, measured, units);
    out.wrapped("", trip.name() + ": why the tires read as they did");
    out.line("");
    out.wrapped("", lines.headline());
    for (String finding : lines.findings()) {
      out.line("");
      out.wrapped("  ", finding);
    }
    if (!lines.next().isEmpty()) {
      out.line("");
      out.line("BEFORE THE NEXT HAUL");
      for (String todo : lines.next()) {
        out.wrapped("  · ", todo);
      }
    }
    out.line("");
    out.line(
        PlainText.left("tire", NAME)
            + PlainText.left("rounds", ROUNDS)
            + PlainText.left("off, last cold", OFF)
            + "found");
    for (ReviewLines.TireLine line : lines.tires()) {
      out.wrapped(
          PlainText.left(line.name(), NAME)
              + PlainText.left(String.valueOf(line.rounds()), ROUNDS)
              + PlainText.left(line.off(), OFF),
          line.found());
    }
    if (!measured.isEmpty()) {
      out.line("");
      out.line("AIR THAT WAS MEASURED");
      WeatherSummary.of(measured, units).lines().forEach(line -> out.wrapped("  ", line));
    }
    for (TireReview tire : review.tires()) {
      PressureAccount account = tire.account();
      if (account != null && !tire.sound()) {
        account(trip.rig().shortForm(tire.position()), AccountLines.of(account, units));
      }
    }
    out.line("");
    for (String caution : Ledger.CAUTIONS) {
      out.wrapped("", caution);
    }
  }

  private void account(String name, AccountLines lines) {
    out.line("");
    out.wrapped("", "ACCOUNT OF " + name + ", in " + lines.unit());
    row(lines.from(), String.valueOf(lines.parts().isEmpty() ? "" : number(lines.start())));
    for (AccountLines.Part part : lines.parts()) {
      row("  " + part.words(), part.text());
    }
    row(lines.to(), number(lines.end()));
    for (String note : lines.notes()) {
      out.wrapped("  ", note);
    }
  }

  private void row(String words, String figure) {
    out.line(PlainText.left("  " + words, PART + 8) + PlainText.right(figure, 8));
  }

  private static String number(double figure) {
    return String.format(Locale.ROOT, "%.2f", figure).replaceAll("0$", "");
  }
}
