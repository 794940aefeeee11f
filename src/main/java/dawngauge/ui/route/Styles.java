package dawngauge.ui.route;

import javafx.css.PseudoClass;

/** Style states of the route's parts. */
final class Styles {

  /** The chosen stop. */
  static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

  /** A stop that is taken with the chosen one, to be changed together. */
  static final PseudoClass TAKEN = PseudoClass.getPseudoClass("taken");

  /** There is little room. */
  static final PseudoClass TIGHT = PseudoClass.getPseudoClass("tight");

  private Styles() {}
}
