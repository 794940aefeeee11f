package dawngauge.ledger;

import dawngauge.ambient.MeasuredAir;
import dawngauge.quantity.UnitSystem;
import dawngauge.review.LossFit;
import dawngauge.review.TireReview;
import dawngauge.review.TripReview;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A review in sentences.
 *
 * @param headline what was found, in one sentence
 * @param found each thing that was found, worst first
 * @param forAll what to do before the next haul with every tire
 * @param tires a line a tire
 */
public record ReviewLines(
    String headline, List<ReviewFinding> found, List<String> forAll, List<TireLine> tires) {

  static final String UNCLEAR = "unclear";

  /** Where nothing can be told of any tire. */
  static final String TWO_MORNINGS =
      "Not enough cold readings: gauge every tire on two mornings with one gauge, before the sun.";

  static final String SOUND = "sound";

  /** What is asked of readings that tell anything. */
  static final String LEAST = "two with one gauge, a morning apart, are the least.";

  /**
   * One tire.
   *
   * @param name short form of its position
   * @param position its position in words
   * @param tire its id
   * @param rounds cold readings it was judged by
   * @param off how far its last cold reading lies from that of a sound tire, and the range that a
   *     sound one keeps
   * @param found what was found, in a word or two
   */
  public record TireLine(
      String name, String position, String tire, int rounds, String off, String found) {}

  /** Copies the lists. */
  public ReviewLines {
    found = List.copyOf(found);
    forAll = List.copyOf(forAll);
    tires = List.copyOf(tires);
  }

  /** The review in the units shown, where nothing is known of what was measured. */
  public static ReviewLines of(Trip trip, TripReview review, UnitSystem units) {
    return of(trip, review, List.of(), units);
  }

  /**
   * The review in the units shown.
   *
   * @param measured the air that stations measured at the stops
   */
  public static ReviewLines of(
      Trip trip, TripReview review, List<MeasuredAir> measured, UnitSystem units) {
    ReviewWords words = new ReviewWords(trip, units);
    List<ReviewFinding> found = new ArrayList<>(TireFindings.of(review.tires(), words));
    found.addAll(ReadingFindings.of(review, words));
    found.addAll(SharedFindings.of(review, measured, words));
    String headline = headline(review, found);
    List<String> few = names(review, words, tire -> tire.fit().kind() == LossFit.Kind.TOO_FEW);
    boolean more = !few.isEmpty() || found.stream().anyMatch(each -> !each.todo().isEmpty());
    rest(names(review, words, TireReview::sound), few, found);
    List<String> forAll =
        more
            ? List.of("Gauge every tire cold the next mornings, with one gauge, before the sun.")
            : List.of();
    List<TireLine> lines = review.tires().stream().map(tire -> line(tire, words)).toList();
    return new ReviewLines(headline, found, forAll, lines);
  }

  /** What was found with what it rests on, each a paragraph. */
  public List<String> findings() {
    return found.stream().map(ReviewFinding::text).toList();
  }

  /** What to do before the next haul. */
  public List<String> next() {
    return Stream.concat(found.stream().map(ReviewFinding::todo), forAll.stream())
        .filter(todo -> !todo.isEmpty())
        .toList();
  }

  private static List<String> names(
      TripReview review, ReviewWords words, Predicate<TireReview> wanted) {
    return review.tires().stream().filter(wanted).map(words::name).toList();
  }

  private static void rest(List<String> sound, List<String> few, List<ReviewFinding> found) {
    if (!sound.isEmpty()) {
      String text =
          "Sound by their readings, nothing lost beyond what every tire loses: "
              + String.join(", ", sound)
              + ".";
      found.add(new ReviewFinding("", text, "", ""));
    }
    if (!few.isEmpty()) {
      String text =
          "Not enough cold readings to tell anything of " + String.join(", ", few) + ": " + LEAST;
      found.add(new ReviewFinding("", text, "", ""));
    }
  }

  private static String headline(TripReview review, List<ReviewFinding> found) {
    if (review.tires().isEmpty()) {
      return "No tire was read on this trip, so there is nothing to review.";
    }
    if (found.isEmpty()) {
      boolean few = review.tires().stream().allMatch(t -> t.fit().kind() == LossFit.Kind.TOO_FEW);
      return few ? TWO_MORNINGS : "Nothing is wrong with the tires by their readings.";
    }
    return String.join("; ", found.stream().map(ReviewFinding::head).toList()) + ".";
  }

  private static TireLine line(TireReview tire, ReviewWords words) {
    int count = tire.residuals().size();
    double spread = count == 0 || Double.isNaN(tire.fit().sigma()) ? 0 : tire.lostSigma();
    String off =
        count < 2
            ? "–"
            : (tire.residuals().get(count - 1) < 0 ? "-" : "+")
                + words.shown(Math.abs(tire.residuals().get(count - 1)))
                + " "
                + words.within(spread);
    List<String> found = new ArrayList<>();
    if (tire.ranLow() != null) {
      found.add("ran low");
    }
    if (!tire.rolledUnder().isEmpty()) {
      found.add("rolled with too little");
    }
    switch (tire.fit().kind()) {
      case TOO_FEW -> found.add(UNCLEAR);
      case LOST -> found.add("lost air");
      case STEADY -> found.add("steady leak");
      case ONCE -> found.add("lost air at once");
      case SOUND -> {
        if (tire.letOutWarm().isEmpty()) {
          found.add(SOUND);
        }
      }
    }
    if (!tire.letOutWarm().isEmpty()) {
      found.add("let out while warm");
    }
    return new TireLine(
        words.name(tire),
        tire.position().words(),
        tire.tire(),
        count,
        off,
        String.join(", ", found));
  }
}
