package dawngauge.forecast;

import dawngauge.advice.Adviser;
import dawngauge.advice.Thresholds;
import dawngauge.ambient.Ambient;
import dawngauge.ambient.AmbientNeeds;
import dawngauge.ambient.TypedAmbient;
import dawngauge.physics.ReferenceIntegrator;
import dawngauge.physics.WarmUp;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.rules.FittedTire;
import dawngauge.rules.Loads;
import dawngauge.settings.SettingsFile;
import dawngauge.testdata.BenchTrip;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Speed of the core on a haul of five days, 40 stops and 18 tires, and how it grows. Compare
 * figures of one run only.
 */
public class ForecastBench {

  /** The haul and what is needed for the parts that are timed by themselves. */
  @State(Scope.Benchmark)
  public static class Haul {
    @Param({"40"})
    int stops;

    @Param({"1"})
    int rigs;

    Trip trip;
    Itinerary itinerary;
    Ambient ambient;
    TripContext scene;
    List<FittedTire> tires = new ArrayList<>();
    List<ReferenceIntegrator.Piece> pieces = new ArrayList<>();
    List<Double> start = new ArrayList<>();
    Planner planner;
    double[][] exponents;

    @Setup
    public void prepare() {
      trip = BenchTrip.of(stops, rigs);
      itinerary = Itinerary.of(trip).get();
      ambient = Ambient.of(AmbientNeeds.of(trip, itinerary), List.of(new TypedAmbient(trip))).get();
      scene =
          new TripContext(
              trip, itinerary, ambient, new ForecastOptions(0.9, 0.1), new Loads(trip, null, 1));
      planner = new Planner(SettingsFile.defaults(), List.of());
      for (WheelPosition position : trip.rig().positions()) {
        FittedTire tire = scene.fittedAt(position);
        if (tire != null) {
          tires.add(tire);
        }
      }
      Timeline line = scene.timeline;
      exponents = new double[tires.size()][line.count() - 1];
      for (int node = 0; node < line.count() - 1; node++) {
        boolean rolling = line.drive[node] >= 0;
        double seconds = line.seconds[node + 1] - line.seconds[node];
        List<Double> rises = new ArrayList<>();
        List<Double> taus = new ArrayList<>();
        for (int i = 0; i < tires.size(); i++) {
          double tau =
              rolling
                  ? WarmUp.rollingTimeConstant(tires.get(i).ratedSingleKilograms())
                  : WarmUp.parkedTimeConstant(tires.get(i).ratedSingleKilograms());
          rises.add(rolling ? 25.0 : 0.0);
          taus.add(tau);
          exponents[i][node] = -seconds / tau;
        }
        pieces.add(
            new ReferenceIntegrator.Piece(
                seconds,
                line.air[node],
                seconds > 0 ? (line.air[node + 1] - line.air[node]) / seconds : 0,
                rises,
                taus));
      }
      start.addAll(Collections.nCopies(tires.size(), line.air[0]));
      System.out.println(
          "# " + stops + " stops, " + tires.size() + " tires, " + pieces.size() + " pieces");
    }
  }

  /** The bare exponentials of all tires and pieces. */
  @Benchmark
  public double a1BareExponentials(Haul haul) {
    double sum = 0;
    for (double[] tire : haul.exponents) {
      for (double exponent : tire) {
        sum += Math.exp(exponent);
      }
    }
    return sum;
  }

  /** Temperature of all tires along the trip, decays computed anew for each kind of tire. */
  @Benchmark
  public double a2TemperatureOfAllTires(Haul haul) {
    return Kernel.temperatures(haul.scene, haul.tires);
  }

  /** The same by the integrator, all tires as one system. */
  @Benchmark
  public List<double[]> a3TemperatureByIntegrator(Haul haul) {
    return ReferenceIntegrator.temperatures(haul.start, haul.pieces);
  }

  /** Forecast of all tires with bands, without advice. */
  @Benchmark
  public int b1Forecast(Haul haul) {
    Forecaster forecaster =
        new Forecaster(haul.trip, haul.itinerary, haul.ambient, new ForecastOptions(0.9, 0.1));
    int known = 0;
    for (WheelPosition position : haul.trip.rig().positions()) {
      for (TireAtStop at : forecaster.track(position).orElseThrow().stops()) {
        known += at.leaving() == null ? 0 : 1;
      }
    }
    return known;
  }

  /** Forecast with marks and bands, from itinerary and air at hand. */
  @Benchmark
  public Object b2ForecastWithMarks(Haul haul) {
    Forecaster forecaster =
        new Forecaster(haul.trip, haul.itinerary, haul.ambient, new ForecastOptions(0.9, 0.1));
    return new Adviser(forecaster, new Thresholds(34474, 0.08, 34474, 0.1, 300)).advise();
  }

  /** Everything from the trip: times, air, forecast, marks. */
  @Benchmark
  public Plan b3Plan(Haul haul) {
    return haul.planner.plan(haul.trip).computed();
  }

  /** Runs the temperature of all tires with package access. */
  static final class Kernel {
    private Kernel() {}

    static double temperatures(TripContext scene, List<FittedTire> tires) {
      Timeline line = scene.timeline;
      java.util.Map<Double, double[]> decays = new java.util.HashMap<>();
      double sum = 0;
      for (FittedTire tire : tires) {
        double rolling = WarmUp.rollingTimeConstant(tire.ratedSingleKilograms());
        double parked = WarmUp.parkedTimeConstant(tire.ratedSingleKilograms());
        double[] keep =
            decays.computeIfAbsent(
                rolling,
                key -> {
                  double[] all = new double[line.count() - 1];
                  for (int node = 0; node < all.length; node++) {
                    double tau = line.drive[node] >= 0 ? rolling : parked;
                    all[node] = Math.exp(-(line.seconds[node + 1] - line.seconds[node]) / tau);
                  }
                  return all;
                });
        double kelvins = line.air[0];
        for (int node = 0; node < keep.length; node++) {
          double seconds = line.seconds[node + 1] - line.seconds[node];
          boolean moving = line.drive[node] >= 0;
          kelvins =
              WarmUp.temperatureAfterWithDecay(
                  kelvins,
                  line.air[node],
                  seconds > 0 ? (line.air[node + 1] - line.air[node]) / seconds : 0,
                  moving ? 25 : 0,
                  moving ? rolling : parked,
                  seconds,
                  keep[node]);
        }
        sum += kelvins;
      }
      return sum;
    }
  }
}
