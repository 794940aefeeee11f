package dawngauge.weights;

import dawngauge.explain.Phrase;
import java.util.Optional;

/**
 * An expected load beside what it may be. Kilogram.
 *
 * @param kind what bears it
 * @param what its name, such as "trailer axle 2"
 * @param expected the expected load; empty where it is not known
 * @param rating what it may be; NaN where that is not known
 * @param ratedBy where the rating stands
 * @param weighed what a ticket of the loaded rig says; NaN where none does
 */
public record RatedLoad(
    Kind kind,
    String what,
    Optional<SummedLoad> expected,
    double rating,
    Phrase ratedBy,
    double weighed) {

  /** An expected load this many standard deviations from its rating is in no doubt any more. */
  public static final int SETTLED = 2;

  /** What bears a load. */
  public enum Kind {
    /** An axle. */
    AXLE("axle"),
    /** The tires of an axle, each. */
    TIRE("tire"),
    /** The hitch. */
    HITCH("hitch"),
    /** A vehicle. */
    VEHICLE("vehicle"),
    /** Tow vehicle and trailer. */
    COMBINED("combined");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** Its name in machine output. */
    public String word() {
      return word;
    }
  }

  /** What is expected of it. */
  public enum Verdict {
    /** The load is not known. */
    NOT_KNOWN("not known"),
    /** The rating is not known. */
    NO_RATING("no rating"),
    /** More than its rating is expected. */
    OVER("over"),
    /** Its rating is not twice the give or take away. */
    IN_DOUBT("may be over"),
    /** Less than its rating is expected. */
    WITHIN("within");

    private final String word;

    Verdict(String word) {
      this.word = word;
    }

    /** In words, and in machine output. */
    public String word() {
      return word;
    }
  }

  /** What is expected. */
  public Verdict verdict() {
    if (expected.isEmpty()) {
      return Verdict.NOT_KNOWN;
    } else if (Double.isNaN(rating)) {
      return Verdict.NO_RATING;
    }
    double load = expected.get().kilograms();
    if (load > rating) {
      return Verdict.OVER;
    }
    return load + SETTLED * expected.get().sigma() > rating ? Verdict.IN_DOUBT : Verdict.WITHIN;
  }

  /**
   * How many standard deviations the expected load is from its rating; infinite where either is not
   * known, or where a ticket tells the load.
   */
  double away() {
    boolean open = expected.isPresent() && !Double.isNaN(rating) && Double.isNaN(weighed);
    double sigma = open ? expected.get().sigma() : 0;
    return sigma > 0
        ? Math.abs(rating - expected.get().kilograms()) / sigma
        : Double.POSITIVE_INFINITY;
  }

  /** Whether one weighing more could change what is expected. */
  public boolean doubted() {
    return away() < SETTLED;
  }
}
