package dawngauge.tire;

import java.util.OptionalDouble;

/**
 * How much air a tire holds by its size: an ellipse as wide as its section and as high as its
 * sidewall, turned about the axle.
 *
 * <p>Inferred, not checked against measured tires: the rubber's thickness is left out, which is too
 * much; so are the well of the rim and the square shoulders, which is too little. Never over the
 * ring between two cylinders, 4/π of it.
 */
public final class TireVolume {

  private static final double MILLIMETERS = 1000;

  private TireVolume() {}

  /**
   * The volume in cubic meter, V = (π/4)·W·H·π·(d + H) with section width W, height H and rim
   * diameter d; empty where the size gives neither aspect nor overall diameter.
   */
  public static OptionalDouble cubicMeters(TireSize size) {
    OptionalDouble overall = size.overallDiameterMillimeters();
    double rim = size.rimInches() * TireSize.MILLIMETERS_PER_INCH;
    double height = (overall.orElse(rim) - rim) / 2;
    if (!(height > 0)) {
      return OptionalDouble.empty();
    }
    double section = Math.PI / 4 * size.sectionWidthMillimeters() * height;
    return OptionalDouble.of(section * Math.PI * (rim + height) / Math.pow(MILLIMETERS, 3));
  }
}
