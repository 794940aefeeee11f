package dawngauge.weights;

import dawngauge.explain.Phrase;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Ratio;
import dawngauge.rules.FittedTire;
import dawngauge.rules.LimitFinder;
import dawngauge.rules.Loads;
import dawngauge.rules.Weighing;
import dawngauge.tire.Capacity;
import dawngauge.trip.Axle;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Rig;
import dawngauge.trip.Route;
import dawngauge.trip.Trip;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.Worksheet;
import dawngauge.weights.NextWeighing.Candidate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The weight worksheet worked out: each load that has a rating beside it, what is missing, and what
 * one more weighing would settle. Expected, never firm: nothing is judged by it.
 */
public final class ExpectedWeights {

  private static final Doubt SIDES = new Doubt("sides of ");

  private final Rig rig;
  private final Worksheet sheet;
  private final double reserve;
  private final Loads weighed;
  private final ExpectedLoads loads;
  private final List<RatedLoad> all = new ArrayList<>();
  private final List<Candidate> candidates = new ArrayList<>();

  private ExpectedWeights(Trip trip, double reserve) {
    this.rig = trip.rig();
    this.sheet = Objects.requireNonNullElse(rig.worksheet(), Worksheet.BLANK);
    this.reserve = reserve;
    this.weighed =
        new Loads(
            trip.route().stops().isEmpty() ? trip.withRoute(Route.standing()) : trip, null, 0);
    this.loads = new ExpectedLoads(rig, sheet);
    fill();
  }

  /**
   * The worksheet of a trip.
   *
   * @param reserve part by which a tire is to carry more than its load, for a chosen target
   */
  public static ExpectedWeights of(Trip trip, double reserve) {
    return new ExpectedWeights(trip, reserve);
  }

  /** The loads: vehicle by vehicle its axles, their tires and itself, then hitch and both. */
  public List<RatedLoad> loads() {
    return List.copyOf(all);
  }

  /** The expected load of each tire of an axle, of its heavier side; empty where not known. */
  public Optional<SummedLoad> tire(AxleRef ref) {
    return rig.axle(ref).flatMap(axle -> loads.axle(ref).map(whole -> tire(ref, axle, whole)));
  }

  /** Part of the trailer's weight that is on the hitch; empty where it is not known. */
  public Optional<Double> hitchPart() {
    return rig.vehicles().stream()
        .filter(vehicle -> vehicle.kind() == Vehicle.Kind.TRAILER)
        .findFirst()
        .flatMap(loads::weight)
        .filter(weight -> weight.kilograms() > 0)
        .flatMap(weight -> loads.hitch().map(load -> load.kilograms() / weight.kilograms()));
  }

  /** What is missing, each with the way out. */
  public List<String> missing() {
    return loads.missing();
  }

  /** What one more weighing would settle; empty where nothing is known that could be in doubt. */
  public Optional<NextWeighing> next() {
    return NextWeighing.of(all, candidates);
  }

  private void fill() {
    for (Vehicle vehicle : rig.vehicles()) {
      List<AxleRef> axles = AxleGroup.from(vehicle, 1).axles();
      for (AxleRef axle : axles) {
        axle(axle, vehicle.axles().get(axle.number() - 1));
      }
      all.add(
          new RatedLoad(
              RatedLoad.Kind.VEHICLE,
              vehicle.name(),
              loads.weight(vehicle),
              kilograms(vehicle.gvwr()),
              Phrase.of("GVWR"),
              weighed(axles, vehicle)));
      List<Optional<SummedLoad>> parts = axles.stream().map(loads::axle).toList();
      if (axles.size() > 1) {
        candidate("all axles of the " + vehicle.name() + " together", EmptyWeights.sum(parts));
      }
    }
    if (rig.vehicles().size() > 1) {
      all.add(
          new RatedLoad(
              RatedLoad.Kind.HITCH,
              "hitch",
              loads.hitch(),
              kilograms(sheet.hitchRating()),
              Phrase.of("hitch rating"),
              weighedHitch()));
      all.add(
          new RatedLoad(
              RatedLoad.Kind.COMBINED,
              "tow vehicle and trailer",
              loads.combined(),
              kilograms(sheet.combinedRating()),
              Phrase.of("combined rating"),
              weighed(
                  rig.vehicles().stream()
                      .flatMap(each -> AxleGroup.from(each, 1).axles().stream())
                      .toList(),
                  null)));
      candidate("the hitch load, on a tongue or kingpin scale", loads.hitch());
    }
  }

  /**
   * What tickets say of axles together; of a trailer with its hitch load. NaN where they do not.
   *
   * @param vehicle whose axles they are, or null for those of all vehicles
   */
  private double weighed(List<AxleRef> axles, @Nullable Vehicle vehicle) {
    double sum = 0;
    boolean hitched = false;
    for (AxleRef axle : axles) {
      Loads.AxleLoad load = weighed.axle(0, axle);
      sum += load.basis().weighed() ? load.kilograms() : Double.NaN;
      hitched |=
          Weighing.latestFirst(rig.tickets(), axle).stream()
              .findFirst()
              .map(Weighing::hitched)
              .orElse(false);
    }
    boolean onHitch = vehicle != null && vehicle.kind() == Vehicle.Kind.TRAILER && hitched;
    return onHitch ? sum + weighedHitch() : sum;
  }

  private double weighedHitch() {
    return rig.hitch() != null && rig.hitch().weighed()
        ? kilograms(rig.hitch().load())
        : Double.NaN;
  }

  private void axle(AxleRef ref, Axle axle) {
    Optional<SummedLoad> load = loads.axle(ref);
    Loads.AxleLoad ticket = weighed.axle(0, ref);
    all.add(
        new RatedLoad(
            RatedLoad.Kind.AXLE,
            ref.words(),
            load,
            kilograms(axle.gawr()),
            Phrase.of("GAWR"),
            ticket.basis().weighed() ? ticket.kilograms() : Double.NaN));
    candidate(ref.words() + " alone", load);
    Optional<SummedLoad> tire = tire(ref);
    lowest(ref)
        .ifPresent(
            carries -> {
              all.add(
                  new RatedLoad(
                      RatedLoad.Kind.TIRE,
                      "each tire of " + ref.words(),
                      tire,
                      carries.kilograms,
                      carries.by,
                      carries.weighed));
              if (axle.leftShare() == null) {
                candidate("each side of " + ref.words() + ", on wheel scales", tire);
              }
            });
  }

  private void candidate(String what, Optional<SummedLoad> load) {
    load.ifPresent(shown -> candidates.add(new Candidate(what, shown)));
  }

  /** An even part of the axle, or of its heavier side where that is typed. */
  private static SummedLoad tire(AxleRef ref, Axle axle, SummedLoad whole) {
    Entered<Ratio> left = axle.leftShare();
    if (left != null) {
      double share = left.value().value();
      return whole.times(Math.max(share, 1 - share) / axle.tiresPerSide());
    }
    SummedLoad part = whole.times(0.5 / axle.tiresPerSide());
    return part.doubted(
        new Doubt(SIDES.about() + ref.words()), Loads.SIDE_SIGMA * part.kilograms());
  }

  private record Carries(double kilograms, Phrase by, double weighed) {}

  /** The tire of an axle that carries least, as it is set; empty where none is fitted. */
  private Optional<Carries> lowest(AxleRef ref) {
    Carries lowest = null;
    for (WheelPosition position : rig.positions()) {
      FittedTire tire =
          position.axle().equals(ref)
              ? rig.fittedAt(position).map(fit -> new FittedTire(rig, position, fit)).orElse(null)
              : null;
      if (tire != null) {
        Carries carries = carries(tire);
        lowest = lowest == null || !(carries.kilograms >= lowest.kilograms) ? carries : lowest;
      }
    }
    return Optional.ofNullable(lowest);
  }

  private Carries carries(FittedTire tire) {
    Loads.TireLoad load = weighed.even(0, tire.position());
    double aim = new LimitFinder(reserve).find(tire, load, 0).aim();
    Capacity capacity = tire.capacity();
    double most = capacity == null ? Double.NaN : capacity.kilogramsAt(aim);
    double wheel = kilograms(tire.axle().wheelMaxLoad());
    double ticket = load.axle().basis().weighed() ? load.kilograms() : Double.NaN;
    return wheel < most
        ? new Carries(wheel, Phrase.of("the wheel's limit"), ticket)
        : new Carries(most, setTo(aim), ticket);
  }

  private static Phrase setTo(double aim) {
    return Double.isNaN(aim)
        ? Phrase.of("as it is set")
        : Phrase.of("set to {0} cold", new Phrase.Stated(new GaugePressure(aim), 0, 2));
  }

  private static double kilograms(@Nullable Entered<Mass> typed) {
    return typed == null ? Double.NaN : typed.value().kilograms();
  }
}
