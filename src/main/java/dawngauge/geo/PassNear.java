package dawngauge.geo;

import dawngauge.quantity.Distance;
import dawngauge.quantity.UnitSystem;

/**
 * A pass by which the straight line between two places, or a track, runs; whether the road goes
 * over it is for the driver to say.
 *
 * @param pass the pass
 * @param off how far off that it lies
 * @param part where on the way that is, 0 at its start, 1 at its end
 * @param under which of the two it is held against
 */
public record PassNear(Place pass, Distance off, double part, LegGround.Under under) {

  /** The question: "La Veta Pass, 9413 ft, 4 mi off the line: over it?". */
  public String question(UnitSystem units) {
    return pass.name()
        + ", "
        + (pass.kind() == Place.Kind.PASS_ABOUT ? "about " : "")
        + units.format(pass.elevation())
        + ", "
        + units.format(off)
        + " off the "
        + under.word()
        + ": over it?";
  }
}
