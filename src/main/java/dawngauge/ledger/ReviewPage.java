package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.ambient.MeasuredAir;
import dawngauge.page.Block;
import dawngauge.page.Page;
import dawngauge.quantity.UnitSystem;
import dawngauge.review.PressureAccount;
import dawngauge.review.TireReview;
import dawngauge.review.TripReview;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** A review as a page: a card each thing that was found, a line a tire, then why. */
public final class ReviewPage {

  /** Where there is no review. */
  public static final String NOTHING = "There is nothing to review: no time on the way is known.";

  private ReviewPage() {}

  /** The page where there is none. */
  public static Page nothing(Trip trip) {
    return new Page(title(trip), List.of(new Block.Note(Block.Weight.MAIN, NOTHING)));
  }

  /**
   * What was found, with a line a tire, without why.
   *
   * @param measured the air that stations measured at the stops
   */
  public static Page found(
      Trip trip, TripReview review, List<MeasuredAir> measured, UnitSystem units) {
    ReviewLines lines = ReviewLines.of(trip, review, measured, units);
    List<Block> blocks = found(lines, measured, units);
    if (!lines.next().isEmpty()) {
      blocks.addAll(Ledger.cautions());
    }
    return page(trip, blocks);
  }

  /**
   * The whole page.
   *
   * @param measured the air that stations measured at the stops
   * @param sound the trip as it would have gone with sound tires; null where it is not known
   */
  public static Page of(
      Trip trip,
      TripReview review,
      List<MeasuredAir> measured,
      @Nullable Advice sound,
      UnitSystem units) {
    List<Block> blocks = found(ReviewLines.of(trip, review, measured, units), measured, units);
    for (TireReview tire : review.tires()) {
      if (!tire.sound() && tire.all().size() > 1) {
        List<Block> why = new ArrayList<>(course(sound, tire, units));
        PressureAccount account = tire.account();
        if (account != null) {
          why.addAll(account(AccountLines.of(account, units)));
        }
        blocks.add(
            new Block.Why("Why: readings and account of " + name(trip, tire), List.copyOf(why)));
      }
    }
    blocks.addAll(Ledger.cautions());
    return page(trip, blocks);
  }

  private static Page page(Trip trip, List<Block> blocks) {
    return TireNames.of(trip.rig()).spelled(new Page(title(trip), blocks));
  }

  private static String title(Trip trip) {
    return trip.name() + ": why the tires read as they did";
  }

  private static String name(Trip trip, TireReview tire) {
    return trip.rig().shortForm(tire.position());
  }

  private static List<Block> found(
      ReviewLines lines, List<MeasuredAir> measured, UnitSystem units) {
    List<Block> blocks = new ArrayList<>();
    for (ReviewFinding each : lines.found()) {
      if (!each.head().isEmpty()) {
        blocks.add(
            new Block.Card(
                Wording.begun(each.head()),
                some(each.todo()),
                some(each.watch()),
                List.of(each.why())));
      }
    }
    if (blocks.isEmpty()) {
      blocks.add(new Block.Note(Block.Weight.MAIN, lines.headline()));
    }
    boolean tooFew = lines.headline().equals(ReviewLines.TWO_MORNINGS);
    if (!lines.forAll().isEmpty() && !tooFew) {
      blocks.add(new Block.Card("Before the next haul", lines.forAll(), List.of(), List.of()));
    }
    List<List<String>> rows = new ArrayList<>();
    for (ReviewLines.TireLine tire : lines.tires()) {
      rows.add(
          List.of(
              tire.name(),
              tire.position(),
              tire.tire(),
              String.valueOf(tire.rounds()),
              tire.off(),
              tire.found()));
    }
    if (!rows.isEmpty()) {
      blocks.add(
          Block.Table.ofWords(
              "A line a tire",
              List.of("tire", "position", "id", "cold readings", "off, last cold", "found"),
              rows));
    }
    if (!tooFew
        && lines.tires().stream().anyMatch(tire -> tire.found().contains(ReviewLines.UNCLEAR))) {
      blocks.add(
          new Block.Note(Block.Weight.LESSER, "Unclear: too few readings; " + ReviewLines.LEAST));
    }
    if (!measured.isEmpty()) {
      blocks.add(new Block.Heading("Temperatures that were measured", 1));
      blocks.add(new Block.Bullets(WeatherSummary.of(measured, units).lines()));
    }
    return blocks;
  }

  private static List<String> some(String text) {
    return text.isEmpty() ? List.of() : List.of(text);
  }

  /**
   * What a tire read beside what a sound one would have read; empty where that is not known.
   *
   * @param sound the trip as it would have gone with sound tires; null where it is not known
   */
  public static List<Block> course(@Nullable Advice sound, TireReview tire, UnitSystem units) {
    if (sound == null) {
      return List.of();
    }
    ReadingsTrace trace = ReadingsTrace.of(sound, tire, units);
    List<List<String>> rows = new ArrayList<>();
    for (ReadingsTrace.Dot dot : trace.dots()) {
      rows.add(
          List.of(
              dot.words(),
              trace.shown(dot.read()),
              trace.shown(dot.expected()),
              trace.shown(dot.low()) + " to " + trace.shown(dot.high()),
              trace.off(dot)));
    }
    return List.of(
        trace.plot(),
        Block.Table.ofFigures(
            "Readings beside those of a sound tire",
            List.of("read", trace.unit(), "if sound", "9 of 10 within", "off"),
            rows),
        new Block.Note(Block.Weight.LESSER, "What all tires share is still in what is off here."));
  }

  /** Where the pressure of a tire went between two readings. */
  public static List<Block> account(AccountLines lines) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of(lines.from(), number(lines.start())));
    lines.parts().forEach(part -> rows.add(List.of(part.words(), part.text())));
    rows.add(List.of(lines.to(), number(lines.end())));
    return List.of(
        Block.Table.ofFigures(
            "What made the difference between two readings",
            List.of("where its pressure went", lines.unit()),
            rows),
        new Block.Bullets(lines.notes()));
  }

  private static String number(double figure) {
    return String.format(Locale.ROOT, "%.2f", figure).replaceAll("0$", "");
  }
}
