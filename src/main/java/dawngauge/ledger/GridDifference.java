package dawngauge.ledger;

import java.math.BigDecimal;

/** What another forecast of the same trip makes of a figure, as it stands below it in its cell. */
final class GridDifference {

  private GridDifference() {}

  /**
   * How much more or less it is, "+2" or "−3"; "→83" where it is to be set to another figure then.
   * Empty where nothing changes, either figure is not known, or nothing is to be set any more.
   */
  static String between(StopGrid.Cell now, StopGrid.Cell then) {
    if (!isFigure(now) || !isFigure(then) || now.text().equals(then.text())) {
      return "";
    } else if (then.framed()) {
      return "→" + then.text();
    } else if (now.framed()) {
      return "";
    }
    BigDecimal more = new BigDecimal(then.text()).subtract(new BigDecimal(now.text()));
    return (more.signum() < 0 ? "−" : "+") + more.abs().toPlainString();
  }

  private static boolean isFigure(StopGrid.Cell cell) {
    return !cell.text().isEmpty() && !cell.text().equals(StopGrid.NOT_KNOWN);
  }
}
