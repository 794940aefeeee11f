package dawngauge.weights;

import dawngauge.rules.FittedTire;
import dawngauge.rules.LimitFinder;
import dawngauge.rules.Limits;
import dawngauge.rules.Loads;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Rig;
import dawngauge.trip.Route;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the tires of one kind on an axle have to carry and are set to. Loads in kilogram, pressures
 * in pascal; NaN where not known.
 *
 * @param axle the axle
 * @param tires its tires of that kind, in walking order
 * @param source how the load is known
 * @param load what the most loaded of them carries where it is heaviest on the trip
 * @param sigma one standard deviation of an expected load; NaN of a measured one
 * @param heaviest the heaviest that the weighing leaves open; NaN of an expected one
 * @param basis how the axle was weighed
 * @param aim what they are set to cold
 * @param aimFrom where that comes from
 */
public record TireNeed(
    AxleRef axle,
    List<FittedTire> tires,
    Source source,
    double load,
    double sigma,
    double heaviest,
    Loads.Basis basis,
    double aim,
    Limits.AimFrom aimFrom) {

  /** How a load is known. */
  public enum Source {
    /** By a scale ticket of the loaded rig. */
    MEASURED,
    /** By the worksheet. */
    EXPECTED,
    /** Neither: only the axle's rating tells what may come. */
    UNKNOWN
  }

  /** Copies the list. */
  public TireNeed {
    tires = List.copyOf(tires);
  }

  /**
   * All of a rig, in walking order.
   *
   * @param reserve part by which a tire is to carry more than its load, for a chosen target
   */
  public static List<TireNeed> all(Trip given, double reserve) {
    Trip trip = given.route().stops().isEmpty() ? given.withRoute(Route.standing()) : given;
    Rig rig = trip.rig();
    Loads loads = new Loads(trip, null, 0);
    ExpectedWeights expected = ExpectedWeights.of(trip, reserve);
    record Kind(AxleRef axle, String type) {}
    Map<Kind, List<FittedTire>> kinds = new LinkedHashMap<>();
    for (WheelPosition position : rig.positions()) {
      rig.fittedAt(position)
          .ifPresent(
              tire ->
                  kinds
                      .computeIfAbsent(
                          new Kind(position.axle(), tire.type()), key -> new ArrayList<>())
                      .add(new FittedTire(rig, position, tire)));
    }
    int stops = Math.max(1, trip.route().stops().size() - 1);
    List<TireNeed> needs = new ArrayList<>();
    kinds.forEach(
        (kind, tires) -> needs.add(of(kind.axle, tires, loads, stops, expected, reserve)));
    return needs;
  }

  private static TireNeed of(
      AxleRef axle,
      List<FittedTire> tires,
      Loads loads,
      int stops,
      ExpectedWeights expected,
      double reserve) {
    FittedTire first = tires.get(0);
    Loads.TireLoad most = loads.even(0, first.position());
    for (FittedTire tire : tires) {
      for (int stop = 0; stop < stops; stop++) {
        Loads.TireLoad load = loads.even(stop, tire.position());
        most = load.kilograms() > most.kilograms() ? load : most;
      }
    }
    Limits limits = new LimitFinder(reserve).find(first, most, 0);
    boolean weighed = most.axle().basis().weighed();
    Optional<SummedLoad> sheet = weighed ? Optional.empty() : expected.tire(axle);
    return new TireNeed(
        axle,
        tires,
        weighed ? Source.MEASURED : sheet.isPresent() ? Source.EXPECTED : Source.UNKNOWN,
        weighed ? most.kilograms() : sheet.map(SummedLoad::kilograms).orElse(Double.NaN),
        sheet.map(SummedLoad::sigma).orElse(Double.NaN),
        weighed ? most.heaviest() : Double.NaN,
        most.axle().basis(),
        limits.aim(),
        limits.aimFrom());
  }
}
