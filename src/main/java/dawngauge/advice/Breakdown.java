package dawngauge.advice;

import dawngauge.quantity.Speed;
import dawngauge.rules.FittedTire;
import dawngauge.rules.LimitFinder;
import dawngauge.rules.Limits;
import dawngauge.rules.Loads;
import dawngauge.rules.SpareFit;
import dawngauge.tire.Capacity;
import dawngauge.tire.SpeedSymbol;
import dawngauge.tire.TireClass;
import dawngauge.tire.TireSpec;
import dawngauge.tire.TrailerSpeedRule;
import dawngauge.trip.AxleRef;
import dawngauge.trip.LogEdits;
import dawngauge.trip.Rig;
import dawngauge.trip.Route;
import dawngauge.trip.Spare;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A tire is flat at a stop, or on the leg that leaves it: which tires its load comes on, and which
 * spare may take its place. It asks for no forecast. The tires are those that stand there after all
 * that the log tells of. Loads in kilogram, pressures in pascal; NaN where not known.
 *
 * @param stop index of the stop; loads are those with which the rig leaves it
 * @param flat the tire
 * @param carriers the tires that its load comes on: its dual mate, or on axles of single wheels
 *     that stand close the next on its side; empty where there is none
 * @param spares every spare that is not on a wheel, those that may serve first
 */
public record Breakdown(int stop, FittedTire flat, List<Carrier> carriers, List<Choice> spares) {

  /** Copies the lists. */
  public Breakdown {
    carriers = List.copyOf(carriers);
    spares = List.copyOf(spares);
  }

  /**
   * A tire that carries for the flat one.
   *
   * @param tire it
   * @param load what it then carries at most, by what the weighing leaves open
   * @param most what it carries at the highest pressure it may take, by the cautious curve
   */
  public record Carrier(FittedTire tire, double load, double most) {

    /** Whether load and capacity are known. */
    public boolean known() {
      return !Double.isNaN(load) && !Double.isNaN(most);
    }

    /** Whether it can be shown to carry both; not where something is not known. */
    public boolean carries() {
      return load <= most;
    }
  }

  /**
   * A spare in the place of the flat tire.
   *
   * @param fit the spare there
   * @param faults what speaks against it; empty where it may serve
   * @param unknown what nobody typed, without which it is not judged
   * @param cold what it is set to as cool as the air, within what tire and wheel may take
   * @param fastest what its tire is made for, or null where not known
   * @param load what it carries there at most on the rest of the trip as far as it reaches
   * @param reaches index of the last stop up to which it carries its load
   */
  public record Choice(
      SpareFit fit,
      List<SpareFit.Fault> faults,
      List<String> unknown,
      double cold,
      @Nullable Speed fastest,
      double load,
      int reaches) {

    /** Copies the lists. */
    public Choice {
      faults = List.copyOf(faults);
      unknown = List.copyOf(unknown);
    }

    /** Whether nothing that is known speaks against it. */
    public boolean serves() {
      return faults.isEmpty();
    }
  }

  /**
   * A breakdown; empty where no tire stands there.
   *
   * @param stop index of the stop; 0 without stops
   * @param date of the trip, or null where not known
   * @param reserve part by which a tire is to carry more than its load, for a chosen target
   */
  public static Optional<Breakdown> of(
      Trip given, int stop, WheelPosition position, @Nullable LocalDate date, double reserve) {
    Trip trip = given.route().stops().isEmpty() ? given.withRoute(Route.standing()) : given;
    Map<WheelPosition, Tire> fitted = LogEdits.fittedAt(trip, Instant.MAX);
    return Optional.ofNullable(fitted.get(position))
        .map(
            tire -> {
              FittedTire flat = new FittedTire(trip.rig(), position, tire);
              return new Breakdown(
                  stop,
                  flat,
                  carriers(trip, stop, flat, fitted),
                  spares(trip, stop, flat, date, new LimitFinder(reserve)));
            });
  }

  /**
   * One breakdown for each axle: of the tire and at the stop at which the most load may be on it.
   *
   * @param date of the trip, or null where not known
   * @param reserve part by which a tire is to carry more than its load, for a chosen target
   */
  public static List<Breakdown> ofEachAxle(Trip given, @Nullable LocalDate date, double reserve) {
    Trip trip = given.route().stops().isEmpty() ? given.withRoute(Route.standing()) : given;
    Loads loads = new Loads(trip, null, 0);
    int stops = Math.max(1, trip.route().stops().size() - 1);
    Map<AxleRef, Breakdown> worst = new LinkedHashMap<>();
    Map<AxleRef, Double> most = new HashMap<>();
    for (WheelPosition position : trip.rig().positions()) {
      for (int stop = 0; stop < stops; stop++) {
        double load = loads.even(stop, position).heaviest();
        double before = most.getOrDefault(position.axle(), Double.NEGATIVE_INFINITY);
        if (load > before || !worst.containsKey(position.axle())) {
          most.put(position.axle(), Double.isNaN(load) ? Double.NEGATIVE_INFINITY : load);
          of(trip, stop, position, date, reserve)
              .ifPresent(found -> worst.put(position.axle(), found));
        }
      }
    }
    return List.copyOf(worst.values());
  }

  private static List<Carrier> carriers(
      Trip trip, int stop, FittedTire flat, Map<WheelPosition, Tire> fitted) {
    Rig rig = trip.rig();
    Loads loads = new Loads(withFlat(trip, flat.tire()), null, 0);
    List<Carrier> carriers = new ArrayList<>();
    for (WheelPosition other : rig.positions()) {
      Tire tire = fitted.get(other);
      if (tire != null && loads.leftTo(other).contains(flat.position())) {
        FittedTire beside = new FittedTire(rig, other, tire);
        carriers.add(new Carrier(beside, loads.tire(stop, other).heaviest(), most(beside)));
      }
    }
    return carriers;
  }

  private static Trip withFlat(Trip trip, Tire flat) {
    Rig rig = trip.rig();
    List<Tire> tires = new ArrayList<>();
    for (Tire tire : rig.tires()) {
      tires.add(tire.id().equals(flat.id()) ? tire.withDamage(Set.of(Tire.Damage.FLAT)) : tire);
    }
    return trip.withRig(rig.withTires(tires));
  }

  private static double most(FittedTire tire) {
    Capacity capacity = tire.capacity();
    double ceiling = tire.ceilingPascals();
    return capacity == null
        ? Double.NaN
        : Double.isNaN(ceiling) ? capacity.mostKilograms() : capacity.kilogramsAt(ceiling);
  }

  private static List<Choice> spares(
      Trip trip, int stop, FittedTire flat, @Nullable LocalDate date, LimitFinder finder) {
    Loads loads = new Loads(trip, null, 0);
    double reference = finder.find(flat, loads.even(stop, flat.position()), 0).reference();
    List<String> loose = LogEdits.looseAt(trip, Instant.MAX).stream().map(Tire::id).toList();
    List<Choice> choices = new ArrayList<>();
    for (Spare spare : trip.rig().spares()) {
      if (loose.contains(spare.tire())) {
        SpareFit.of(trip.rig(), spare, flat.position())
            .map(fit -> choice(trip, stop, fit, date, reference, loads, finder))
            .ifPresent(choices::add);
      }
    }
    choices.sort(
        Comparator.comparing((Choice choice) -> !choice.serves())
            .thenComparing(choice -> -choice.reaches()));
    return choices;
  }

  private static Choice choice(
      Trip trip,
      int stop,
      SpareFit fit,
      @Nullable LocalDate date,
      double reference,
      Loads loads,
      LimitFinder finder) {
    WheelPosition position = fit.place().position();
    double load = loads.even(stop, position).heaviest();
    Limits limits = finder.find(fit.place(), loads.even(stop, position), 0);
    double ceiling = fit.ceilingPascals();
    int last = trip.route().stops().size() - 1;
    double most = load;
    int reaches = stop;
    while (reaches < last
        && fit.carries(Math.max(most, loads.even(reaches, position).heaviest()))) {
      most = Math.max(most, loads.even(reaches, position).heaviest());
      reaches++;
    }
    return new Choice(
        fit,
        fit.faults(trip.rig(), load, reference, date),
        unknown(fit, load, date),
        Double.isNaN(ceiling) ? limits.aim() : Math.min(limits.aim(), ceiling),
        fastest(fit.place().spec()),
        most,
        reaches);
  }

  private static List<String> unknown(SpareFit fit, double load, @Nullable LocalDate date) {
    List<String> unknown = new ArrayList<>();
    TireSpec spec = fit.place().spec();
    if (spec == null || spec.size() == null) {
      unknown.add("its size");
    }
    if (fit.place().tire().dateCode() == null || date == null) {
      unknown.add("its age");
    }
    if (Double.isNaN(fit.mostKilograms())) {
      unknown.add("what it may carry");
    }
    if (fit.spare().wheelMaxLoad() == null || fit.spare().wheelMaxPressure() == null) {
      unknown.add("what its wheel may take");
    }
    if (Double.isNaN(load)) {
      unknown.add("the load there");
    }
    return unknown;
  }

  /** By the speed symbol, else the most that the rule for trailer tires leaves free. */
  private static @Nullable Speed fastest(@Nullable TireSpec spec) {
    if (spec == null) {
      return null;
    } else if (spec.speedSymbol() != null) {
      return SpeedSymbol.top(spec.speedSymbol()).orElse(null);
    }
    return spec.classOrFromSize() == TireClass.SPECIAL_TRAILER ? TrailerSpeedRule.FREE : null;
  }
}
