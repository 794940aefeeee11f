package dawngauge.physics;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * Judge of the closed forms: solves the differential equations themselves, step by step, with
 * Dormand and Prince's method of order 8 (Hipparchus), tolerance 1e-9.
 */
public final class ReferenceIntegrator {

  private static final double TOLERANCE = 1e-9;

  private ReferenceIntegrator() {}

  /**
   * A stretch of time in which the air changes linearly and every tire keeps its R and τ.
   *
   * @param seconds its length
   * @param airStartKelvins of the air around at its start
   * @param airSlopeKelvinsPerSecond positive while the air warms
   * @param rises R of each tire, kelvin
   * @param tausSeconds τ of each tire
   */
  public record Piece(
      double seconds,
      double airStartKelvins,
      double airSlopeKelvinsPerSecond,
      List<Double> rises,
      List<Double> tausSeconds) {

    /** Copies the lists; refuses lists of different length. */
    public Piece {
      rises = List.copyOf(rises);
      tausSeconds = List.copyOf(tausSeconds);
      if (rises.size() != tausSeconds.size()) {
        throw new IllegalArgumentException("one rise and one time constant for each tire");
      }
    }
  }

  /** The right-hand side of y' = f(t, y). */
  @FunctionalInterface
  public interface Law {
    /** The rates of change of the state at a time. */
    double[] rates(double seconds, double[] state);
  }

  /**
   * τ dT/dt = θ(t) + R − T for all tires over all pieces.
   *
   * @param startKelvins temperature in each tire at the start of the first piece
   * @return for each piece the temperature in each tire at its end
   */
  public static List<double[]> temperatures(List<Double> startKelvins, List<Piece> pieces) {
    List<double[]> ends = new ArrayList<>();
    double[] state = startKelvins.stream().mapToDouble(Double::doubleValue).toArray();
    for (Piece piece : pieces) {
      state = integrate(state, piece.seconds, (t, kelvins) -> warming(piece, t, kelvins));
      ends.add(state.clone());
    }
    return ends;
  }

  private static double[] warming(Piece piece, double seconds, double[] kelvins) {
    double air = piece.airStartKelvins + piece.airSlopeKelvinsPerSecond * seconds;
    double[] rates = new double[kelvins.length];
    for (int i = 0; i < rates.length; i++) {
      rates[i] = (air + piece.rises.get(i) - kelvins[i]) / piece.tausSeconds.get(i);
    }
    return rates;
  }

  /** The state after some time; time counts from zero. */
  public static double[] integrate(double[] start, double seconds, Law law) {
    if (seconds == 0) {
      return start.clone();
    }
    OrdinaryDifferentialEquation equation =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return start.length;
          }

          @Override
          public double[] computeDerivatives(double t, double[] y) {
            return law.rates(t, y);
          }
        };
    double shortest = Math.min(1e-3, seconds / 10);
    return new DormandPrince853Integrator(shortest, seconds, TOLERANCE, TOLERANCE)
        .integrate(equation, new ODEState(0, start), seconds)
        .getPrimaryState();
  }
}
