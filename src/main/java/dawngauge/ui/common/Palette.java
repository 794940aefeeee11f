package dawngauge.ui.common;

import javafx.scene.paint.Color;

/**
 * Colours of what is drawn by hand, one set for each theme. The accent pair follows Okabe and Ito
 * (2008), told apart by colour-blind readers; nothing is said by colour alone.
 *
 * @param paper ground
 * @param night shade of the nights
 * @param ink text and main lines
 * @param lesser axes and lesser text
 * @param grid faint lines
 * @param settled settled pressure
 * @param warm readings
 * @param band range of readings
 * @param limit floor and ceiling
 * @param raised ground of rows that are taken, as in the style sheet
 * @param chosen ground of the chosen row
 * @param accent what is to be set
 * @param hold what must not roll
 * @param info frame of what has the keyboard
 */
public record Palette(
    Color paper,
    Color night,
    Color ink,
    Color lesser,
    Color grid,
    Color settled,
    Color warm,
    Color band,
    Color limit,
    Color raised,
    Color chosen,
    Color accent,
    Color hold,
    Color info) {

  /** On light ground. */
  public static final Palette LIGHT =
      new Palette(
          Color.web("#fbfbf8"),
          Color.web("#e9ebe6"),
          Color.web("#1d2421"),
          Color.web("#56605b"),
          Color.web("#d8dbd5"),
          Color.web("#1d2421"),
          Color.web("#b5480a"),
          Color.web("#d55e00", 0.18),
          Color.web("#0072b2"),
          Color.web("#f2f3ee"),
          Color.web("#e3ebe6"),
          Color.web("#a83e04"),
          Color.web("#7a0c2e"),
          Color.web("#00568a"));

  /** On dark ground. */
  public static final Palette DARK =
      new Palette(
          Color.web("#161a1d"),
          Color.web("#22282c"),
          Color.web("#e8ece9"),
          Color.web("#a9b3ae"),
          Color.web("#333a3e"),
          Color.web("#e8ece9"),
          Color.web("#f0a35e"),
          Color.web("#e69f00", 0.22),
          Color.web("#56b4e9"),
          Color.web("#1f2529"),
          Color.web("#27333a"),
          Color.web("#f0a35e"),
          Color.web("#ff9bb4"),
          Color.web("#7cc4f0"));
}
