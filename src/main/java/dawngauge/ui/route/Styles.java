package dawngauge.ui.route;

import javafx.css.PseudoClass;

/** Style states of the route's parts. */
final class Styles {

  /** The chosen stop. */
  static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

  private Styles() {}
}
