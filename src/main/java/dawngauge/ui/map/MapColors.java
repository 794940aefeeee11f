package dawngauge.ui.map;

import java.awt.Color;

/**
 * Colors of the map. Route and marks stand out by their darkness, not by their hue.
 *
 * @param sea sea and lakes
 * @param land ground
 * @param shore coasts, lakes' edges and rivers
 * @param border between states; countries thicker
 * @param name names of places
 * @param route legs and marks
 * @param adjust marks of tires to be set
 * @param hold marks of tires not to roll
 * @param chosen the chosen stop
 */
record MapColors(
    Color sea,
    Color land,
    Color shore,
    Color border,
    Color name,
    Color route,
    Color adjust,
    Color hold,
    Color chosen) {

  static final MapColors LIGHT =
      new MapColors(
          new Color(0xdfe8ec),
          new Color(0xfbfbf8),
          new Color(0x86a3b3),
          new Color(0xb9beb6),
          new Color(0x56605b),
          new Color(0x1d2421),
          new Color(0xa83e04),
          new Color(0x7a0c2e),
          new Color(0x00568a));

  static final MapColors DARK =
      new MapColors(
          new Color(0x0f1a21),
          new Color(0x1b2024),
          new Color(0x4a6678),
          new Color(0x4a5257),
          new Color(0xa9b3ae),
          new Color(0xe8ece9),
          new Color(0xf0a35e),
          new Color(0xff9bb4),
          new Color(0x7cc4f0));
}
