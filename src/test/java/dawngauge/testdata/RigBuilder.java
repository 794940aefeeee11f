package dawngauge.testdata;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.Unit;
import dawngauge.tire.TireClass;
import dawngauge.tire.TireSpec;
import dawngauge.trip.Axle;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Gauge;
import dawngauge.trip.HeatRecord;
import dawngauge.trip.LabelFitment;
import dawngauge.trip.Remarks;
import dawngauge.trip.Rig;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.Spare;
import dawngauge.trip.Tire;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelSlot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A trailer whose axles are all alike. Its tires are called T1, T2 and so on in walking order; its
 * gauges "hand" (open to the air, ±2 % of 100 psi, 1 psi steps), "coarse" (the same in 5 psi steps)
 * and "sealed" (as "hand", but sea level subtracted).
 */
public final class RigBuilder {

  private int axles = 1;
  private boolean dual;
  private Vehicle.Kind kind = Vehicle.Kind.TRAILER;
  private TireBuilder tire = TireBuilder.special();
  private @Nullable Entered<Mass> gvwr;
  private @Nullable Entered<Mass> gawr = Entered.of(QuantityKind.MASS, "6000 lb");
  private List<LabelFitment> label = List.of();
  private @Nullable Entered<GaugePressure> wheel =
      Entered.of(QuantityKind.GAUGE_PRESSURE, "110 psi");
  private @Nullable Entered<GaugePressure> valve =
      Entered.of(QuantityKind.GAUGE_PRESSURE, "100 psi");
  private @Nullable Entered<GaugePressure> target;
  private @Nullable Entered<Ratio> leftShare;
  private @Nullable String axleWeight = "5600 lb";
  private Scale scale = Scale.AXLE;
  private @Nullable String ownStep;
  private boolean spare;
  private double heatFactor = 1;
  private @Nullable HeatRecord heatRecord;
  private @Nullable Entered<GaugePressure> lossPerDay =
      Entered.of(QuantityKind.GAUGE_PRESSURE, "0 psi");

  private RigBuilder() {}

  /** What the rig stood on when it was weighed. */
  public enum Scale {
    /** Each axle alone. */
    AXLE,
    /** All axles together. */
    GROUP,
    /** Each side of each axle. */
    WHEEL
  }

  /**
   * One axle of single wheels, GAWR 6,000 lb, weighed alone at 5,600 lb, special trailer tires of
   * 3,500 lb at 80 psi with the same 80 psi on the label, wheels to 110 psi, valves to 100 psi,
   * tires that lose no air.
   */
  public static RigBuilder trailer() {
    return new RigBuilder().label("ST235/80R16", TireClass.SPECIAL_TRAILER, "E", "80 psi");
  }

  /** More axles. */
  public RigBuilder axles(int count) {
    axles = count;
    return this;
  }

  /** Pairs of wheels on each side. */
  public RigBuilder dual() {
    dual = true;
    return this;
  }

  /** Another sort of vehicle. */
  public RigBuilder kind(Vehicle.Kind sort) {
    kind = sort;
    return this;
  }

  /** Other tires on all wheels. */
  public RigBuilder tires(TireBuilder builder) {
    tire = builder;
    return this;
  }

  /** Another rating of each axle, or none. */
  public RigBuilder gawr(@Nullable String mass) {
    gawr = mass == null ? null : Entered.of(QuantityKind.MASS, mass);
    return this;
  }

  /** The rating of the whole vehicle; without it none is typed. */
  public RigBuilder gvwr(String mass) {
    gvwr = Entered.of(QuantityKind.MASS, mass);
    return this;
  }

  /** One line on the certification label. */
  public RigBuilder label(
      String size, @Nullable TireClass tireClass, @Nullable String range, String coldPressure) {
    label =
        List.of(
            new LabelFitment(
                size,
                tireClass,
                range,
                Entered.of(QuantityKind.GAUGE_PRESSURE, coldPressure),
                Remarks.NONE));
    return this;
  }

  /** No tires on the label. */
  public RigBuilder noLabel() {
    label = List.of();
    return this;
  }

  /** Other limits of wheels and valves, or none typed. */
  public RigBuilder rims(@Nullable String wheelMost, @Nullable String valveMost) {
    wheel = wheelMost == null ? null : Entered.of(QuantityKind.GAUGE_PRESSURE, wheelMost);
    valve = valveMost == null ? null : Entered.of(QuantityKind.GAUGE_PRESSURE, valveMost);
    return this;
  }

  /** A load-based target of the user's choice. */
  public RigBuilder target(String pressure) {
    target = Entered.of(QuantityKind.GAUGE_PRESSURE, pressure);
    return this;
  }

  /** Part of each axle's load on its left side. */
  public RigBuilder leftShare(String part) {
    leftShare = Entered.of(QuantityKind.RATIO, part);
    return this;
  }

  /** Weight of each axle on a scale, weighed alone, or null where none was weighed. */
  public RigBuilder weighed(@Nullable String eachAxle) {
    axleWeight = eachAxle;
    return this;
  }

  /** What was under the axles when each weighed what it weighs. */
  public RigBuilder scale(Scale platform) {
    scale = platform;
    return this;
  }

  /** One more gauge, "own", open to the air and of grade 2 %, with its step. */
  public RigBuilder ownGauge(String step) {
    ownStep = step;
    return this;
  }

  /** A spare "S" of the same kind, on a wheel like the others. */
  public RigBuilder spare() {
    spare = true;
    return this;
  }

  /** What earlier trips told of how warm every tire runs, the spare aside. */
  public RigBuilder heatRecord(@Nullable HeatRecord record) {
    heatRecord = record;
    return this;
  }

  /** How much more than modelled every tire warms up, the spare aside. */
  public RigBuilder heatFactor(double factor) {
    heatFactor = factor;
    return this;
  }

  /** Air lost by every tire a day at 68 °F, or null for a sound tire's permeation. */
  public RigBuilder losing(@Nullable String pressureADay) {
    lossPerDay =
        pressureADay == null ? null : Entered.of(QuantityKind.GAUGE_PRESSURE, pressureADay);
    return this;
  }

  /** The rig. */
  public Rig rig() {
    TireSpec spec = tire.spec();
    List<Tire> tires = new ArrayList<>();
    List<Axle> built = new ArrayList<>();
    for (int axle = 0; axle < axles; axle++) {
      Map<WheelSlot, String> fitted = new HashMap<>();
      for (WheelSlot slot : WheelSlot.of(dual)) {
        String id = "T" + (tires.size() + 1);
        fitted.put(slot, id);
        tires.add(
            new Tire(
                id,
                spec.name(),
                null,
                null,
                heatFactor,
                lossPerDay,
                Set.of(),
                heatRecord,
                Remarks.NONE));
      }
      built.add(
          new Axle(dual, gawr, label, wheel, null, valve, leftShare, target, fitted, Remarks.NONE));
    }
    if (spare) {
      tires.add(new Tire("S", spec.name(), null, null, 1, lossPerDay, Set.of(), Remarks.NONE));
    }
    List<Gauge> gauges = new ArrayList<>();
    gauges.add(gauge("hand", Gauge.Kind.OPEN, "1 psi"));
    gauges.add(gauge("coarse", Gauge.Kind.OPEN, "5 psi"));
    gauges.add(gauge("sealed", Gauge.Kind.SEA_LEVEL_SUBTRACTED, "1 psi"));
    if (ownStep != null) {
      gauges.add(gauge("own", Gauge.Kind.OPEN, ownStep));
    }
    return new Rig(
        "test trailer",
        List.of(new Vehicle("trailer", "t", kind, gvwr, built, Remarks.NONE)),
        List.of(spec),
        tires,
        spare ? List.of(new Spare("S", List.of(), wheel, null, Remarks.NONE)) : List.of(),
        gauges,
        null,
        null,
        tickets(),
        Remarks.NONE);
  }

  private List<ScaleTicket> tickets() {
    if (axleWeight == null) {
      return List.of();
    }
    Mass weight = Entered.of(QuantityKind.MASS, axleWeight).value();
    List<ScaleTicket.Platform> platforms = new ArrayList<>();
    List<ScaleTicket.WheelWeight> sides = new ArrayList<>();
    List<AxleRef> all = new ArrayList<>();
    for (int number = 1; number <= axles; number++) {
      AxleRef ref = new AxleRef("trailer", number);
      all.add(ref);
      if (scale == Scale.AXLE) {
        platforms.add(
            new ScaleTicket.Platform(List.of(ref), Entered.of(QuantityKind.MASS, axleWeight)));
      } else if (scale == Scale.WHEEL) {
        Entered<Mass> half = pounds(weight, 0.5);
        sides.add(new ScaleTicket.WheelWeight(ref, true, half));
        sides.add(new ScaleTicket.WheelWeight(ref, false, half));
      }
    }
    if (scale == Scale.GROUP) {
      platforms.add(new ScaleTicket.Platform(all, pounds(weight, axles)));
    }
    return List.of(new ScaleTicket(null, true, null, platforms, sides, Remarks.NONE));
  }

  private static Entered<Mass> pounds(Mass mass, double times) {
    return Entered.of(QuantityKind.MASS, mass.in(Unit.POUND) * times + " lb");
  }

  private static Gauge gauge(String name, Gauge.Kind sort, String step) {
    return new Gauge(
        name,
        sort,
        Entered.of(QuantityKind.GAUGE_PRESSURE, "100 psi"),
        Entered.of(QuantityKind.RATIO, "2 %"),
        Entered.of(QuantityKind.GAUGE_PRESSURE, step),
        Remarks.NONE);
  }
}
