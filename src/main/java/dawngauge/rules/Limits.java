package dawngauge.rules;

/**
 * The three figures between which a tire's cold pressure belongs on one leg. Gauge pressures in
 * pascal; NaN where unknown.
 *
 * @param load what the tire carries and how that is known
 * @param floor lowest pressure whose capacity covers the load: never roll below it
 * @param aim what is set when cold: the label's pressure, or what load and reserve need if that is
 *     more, never above the ceiling
 * @param ceiling lowest of the tire's, wheel's and valve's maximum cold pressure
 * @param aimFrom where the aim comes from
 * @param estimated whether the floor rests on an estimated curve
 * @param overloaded whether the load is more than the tire carries at the ceiling
 * @param speed what the leg's top speed asks for
 */
public record Limits(
    Loads.TireLoad load,
    double floor,
    double aim,
    double ceiling,
    AimFrom aimFrom,
    boolean estimated,
    boolean overloaded,
    SpeedVerdict speed) {

  /** Where an aim comes from. */
  public enum AimFrom {
    /** The certification label. */
    LABEL("the certification label's cold pressure"),
    /** The load with its reserve, which needs more than the label. */
    LOAD("what its load with the reserve needs"),
    /** A load-based target that the user chose. */
    TARGET("the load-based target you chose"),
    /** The ceiling, which is below what would be wanted. */
    CEILING("the ceiling, below what label or load would want"),
    /** The axle's rating share from the fitted tire, since the label is not of these tires. */
    GAWR_SHARE("what the fitted tire needs for its share of the GAWR"),
    /** The rated pressure, for want of a label. */
    RATED("the tire's rated pressure, for want of a label"),
    /** Nothing known. */
    UNKNOWN("not known");

    private final String words;

    AimFrom(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  /** What a leg's top speed asks for. */
  public enum SpeedVerdict {
    /** Nothing. */
    FINE,
    /** Special trailer tire: 10 psi more were added to floor and aim. */
    RAISED,
    /** Special trailer tire: 10 psi more would pass the ceiling, so 65 mph or less. */
    KEEP_TO_65,
    /** Above what the tire is made for. */
    TOO_FAST
  }
}
