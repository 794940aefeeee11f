package dawngauge.ui.route;

import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;

/**
 * Sizes of the grid in pixels. All of them follow the size of the type, which is 13 unless the
 * style says otherwise.
 *
 * @param family of the type
 * @param scale how many times as large as usual
 */
record GridSizes(String family, double scale) {

  private static final double TYPE = 13;

  /** The sizes for a type. */
  static GridSizes of(Font font) {
    return new GridSizes(font.getFamily(), font.getSize() / TYPE);
  }

  double row() {
    return whole(24);
  }

  /** Height of the fixed heading. */
  double head() {
    return whole(34);
  }

  double day() {
    return whole(22);
  }

  /** Height of a leg. */
  double leg() {
    return whole(2);
  }

  double time() {
    return whole(46);
  }

  double place() {
    return whole(150);
  }

  double leastPlace() {
    return whole(116);
  }

  double air() {
    return whole(56);
  }

  double hose() {
    return whole(26);
  }

  /** Width of a tire's figure: two digits, or where units ask for it three with a point. */
  double tire(boolean decimals) {
    return whole(decimals ? 40 : 34);
  }

  /** Between two axles. */
  double axleGap() {
    return whole(6);
  }

  double margin() {
    return whole(44);
  }

  double mark() {
    return whole(22);
  }

  /** The trace has this width at least, where it is shown at all. */
  double leastTrace() {
    return whole(100);
  }

  double trace() {
    return whole(170);
  }

  double mostTrace() {
    return whole(360);
  }

  /** A length that is given for the usual type. */
  double whole(double pixels) {
    return Math.rint(pixels * scale);
  }

  Font type() {
    return Font.font(family, TYPE * scale);
  }

  Font bold() {
    return Font.font(family, FontWeight.BOLD, TYPE * scale);
  }

  Font figure() {
    return Font.font(family, (TYPE - 1) * scale);
  }

  Font boldFigure() {
    return Font.font(family, FontWeight.BOLD, (TYPE - 1) * scale);
  }

  /** The same type, smaller. */
  Font smaller(Font font, double part) {
    FontWeight weight = font.getStyle().contains("Bold") ? FontWeight.BOLD : FontWeight.NORMAL;
    return Font.font(family, weight, Math.floor(font.getSize() * part * 2) / 2);
  }

  /** What another forecast would change, below a figure. */
  Font change() {
    return Font.font(family, (TYPE - 4) * scale);
  }

  Font small() {
    return Font.font(family, (TYPE - 2) * scale);
  }
}
