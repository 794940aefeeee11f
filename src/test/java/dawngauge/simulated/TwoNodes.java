package dawngauge.simulated;

import java.util.function.DoubleUnaryOperator;

/**
 * Heat balance of a tire in two nodes, its body (tread and carcass) and what is inside (the air and
 * half the wheel): body · dB/dt = heat(B) − outer·(B − around) − inner·(B − I); inside · dI/dt =
 * extra + inner·(B − I) − wheel·(I − around). By Runge and Kutta's fourth order.
 */
final class TwoNodes {

  /**
   * Ways of the heat.
   *
   * @param outer from the body to the air around, W/K
   * @param inner from the body to the inside, W/K
   * @param wheel from the inside through the wheel to the air around, W/K
   */
  record Ways(double outer, double inner, double wheel) {

    /** Body's rise above the air that carries off some watt steadily. */
    double rise(double watt) {
      return watt / (outer + inner * wheel / (inner + wheel));
    }

    /** The part of it that the inside has. */
    double insidePart() {
      return inner / (inner + wheel);
    }
  }

  private final double bodyCapacity;
  private final double insideCapacity;
  private double body;
  private double inside;

  /** With the heat capacities in J/K, all of one temperature. */
  TwoNodes(double bodyCapacity, double insideCapacity, double kelvins) {
    this.bodyCapacity = bodyCapacity;
    this.insideCapacity = insideCapacity;
    this.body = kelvins;
    this.inside = kelvins;
  }

  /** Temperature of tread and carcass. */
  double body() {
    return body;
  }

  /** Temperature of the air inside. */
  double inside() {
    return inside;
  }

  /**
   * One step.
   *
   * @param heat watt made in the body by its temperature
   * @param extra watt brought to the wheel from elsewhere
   */
  void step(Ways ways, DoubleUnaryOperator heat, double extra, double around, double seconds) {
    double b1 = bodySlope(ways, heat, around, body, inside);
    double i1 = insideSlope(ways, extra, around, body, inside);
    double half = seconds / 2;
    double b2 = bodySlope(ways, heat, around, body + half * b1, inside + half * i1);
    double i2 = insideSlope(ways, extra, around, body + half * b1, inside + half * i1);
    double b3 = bodySlope(ways, heat, around, body + half * b2, inside + half * i2);
    double i3 = insideSlope(ways, extra, around, body + half * b2, inside + half * i2);
    double b4 = bodySlope(ways, heat, around, body + seconds * b3, inside + seconds * i3);
    double i4 = insideSlope(ways, extra, around, body + seconds * b3, inside + seconds * i3);
    body += seconds / 6 * (b1 + 2 * b2 + 2 * b3 + b4);
    inside += seconds / 6 * (i1 + 2 * i2 + 2 * i3 + i4);
  }

  private double bodySlope(Ways ways, DoubleUnaryOperator heat, double around, double b, double i) {
    return (heat.applyAsDouble(b) - ways.outer * (b - around) - ways.inner * (b - i))
        / bodyCapacity;
  }

  private double insideSlope(Ways ways, double extra, double around, double b, double i) {
    return (extra + ways.inner * (b - i) - ways.wheel * (i - around)) / insideCapacity;
  }
}
