package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import io.soabase.recordbuilder.core.RecordBuilder;
import org.jspecify.annotations.Nullable;

/**
 * How the trailer is carried.
 *
 * @param kind ball behind the bumper or gooseneck over the rear axle
 * @param load vertical load the trailer puts on the tow vehicle as loaded at the start
 * @param weighed whether that load was weighed; else it is typical or guessed
 * @param lever part of the hitch load that the tow vehicle's rear axle takes; above 1 where the
 *     front axle is lifted
 * @param remarks note and extras
 */
@RecordBuilder
public record Hitch(
    Kind kind, @Nullable Entered<Mass> load, boolean weighed, double lever, Remarks remarks)
    implements HitchBuilder.With {

  /** Kinds of hitch. */
  public enum Kind {
    /** Ball behind the bumper; typically 10 to 15 % of the trailer's weight (common practice). */
    BUMPER("bumper", "10 to 15 %"),
    /** Gooseneck; typically 20 to 25 % of the trailer's weight (common practice). */
    GOOSENECK("gooseneck", "20 to 25 %");

    private final String word;
    private final String usual;

    Kind(String word, String usual) {
      this.word = word;
      this.usual = usual;
    }

    /** Usual part of the trailer's weight on it, in words. */
    public String usual() {
      return usual;
    }

    /** Its name in files. */
    public String word() {
      return word;
    }
  }
}
