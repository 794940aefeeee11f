package dawngauge.quantity;

import dawngauge.problem.Outcome;

/**
 * A figure as somebody typed it: the value to compute with and the text to keep, so that what was
 * typed survives opening and saving unchanged.
 *
 * @param <Q> the type of the quantity
 * @param value the value
 * @param text the text as typed, such as "80 psi"
 */
public record Entered<Q extends Quantity>(Q value, String text) {

  /** A figure from a text that is known to be right, as in code and tests. */
  public static <Q extends Quantity> Entered<Q> of(QuantityKind<Q> kind, String text) {
    Outcome<Entered<Q>> outcome = kind.parse(text);
    return outcome
        .value()
        .orElseThrow(() -> new IllegalArgumentException(outcome.problems().get(0).message()));
  }
}
