package dawngauge.planner;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.QuantityKind;
import dawngauge.tire.TireSpec;
import dawngauge.trip.Axle;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Gauge;
import dawngauge.trip.LabelFitment;
import dawngauge.trip.Remarks;
import dawngauge.trip.Rig;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.Tire;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelSlot;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The trailer of a first haul. */
final class FirstRig {

  private static final String KIND = "trailer tire";
  private static final String TRAILER = "trailer";

  private FirstRig() {}

  /**
   * The rig.
   *
   * @param haul what was entered
   * @param assumed weight of the loaded trailer's axles that is assumed, or null where it was
   *     entered or cannot be assumed
   */
  static Rig of(FirstHaul haul, @Nullable Entered<Mass> assumed) {
    List<Axle> axles = new ArrayList<>();
    List<Tire> tires = new ArrayList<>();
    for (int axle = 1; axle <= haul.axles(); axle++) {
      Map<WheelSlot, String> fitted = new EnumMap<>(WheelSlot.class);
      for (WheelSlot slot : WheelSlot.of(haul.dual())) {
        String id = "T" + axle + slot.letters().toUpperCase(Locale.ROOT);
        fitted.put(slot, id);
        tires.add(new Tire(id, KIND, null, null, 1, null, Set.of(), Remarks.NONE));
      }
      axles.add(
          new Axle(
              haul.dual(), null, label(haul), null, null, null, null, null, fitted, Remarks.NONE));
    }
    return new Rig(
        "Trailer",
        List.of(new Vehicle(TRAILER, "t", Vehicle.Kind.TRAILER, null, axles, Remarks.NONE)),
        List.of(kind(haul)),
        tires,
        List.of(),
        List.of(gauge(haul)),
        null,
        null,
        ticket(haul, assumed),
        Remarks.NONE);
  }

  private static TireSpec kind(FirstHaul haul) {
    Entered<Mass> load = haul.maxLoad();
    return new TireSpec(
        KIND,
        haul.size(),
        null,
        null,
        null,
        null,
        null,
        null,
        haul.dual() ? null : load,
        haul.dual() ? load : null,
        haul.atPressure(),
        null,
        null);
  }

  /** The label's pressure; where it was not entered the sidewall's, the highest that is allowed. */
  private static List<LabelFitment> label(FirstHaul haul) {
    Entered<GaugePressure> pressure = haul.label() == null ? haul.atPressure() : haul.label();
    if (pressure == null) {
      return List.of();
    }
    String size = haul.size() == null ? "as fitted" : haul.size();
    Remarks remarks =
        haul.label() == null
            ? FirstHaul.note("assumed: the sidewall's pressure; read it on the certification label")
            : Remarks.NONE;
    return List.of(new LabelFitment(size, null, null, pressure, remarks));
  }

  private static List<ScaleTicket> ticket(FirstHaul haul, @Nullable Entered<Mass> assumed) {
    Entered<Mass> weight = haul.weight() == null ? assumed : haul.weight();
    if (weight == null) {
      return List.of();
    }
    List<AxleRef> all =
        IntStream.rangeClosed(1, haul.axles()).mapToObj(n -> new AxleRef(TRAILER, n)).toList();
    FirstHaul.Weighed weighed = haul.weight() == null ? FirstHaul.Weighed.TOGETHER : haul.weighed();
    List<ScaleTicket.Platform> platforms =
        switch (weighed) {
          case TOGETHER -> List.of(new ScaleTicket.Platform(all, weight));
          case AXLE ->
              all.stream().map(one -> new ScaleTicket.Platform(List.of(one), weight)).toList();
          case WHEEL -> List.of();
        };
    List<ScaleTicket.WheelWeight> wheels =
        weighed == FirstHaul.Weighed.WHEEL
            ? all.stream()
                .flatMap(
                    one ->
                        Stream.of(true, false)
                            .map(left -> new ScaleTicket.WheelWeight(one, left, weight)))
                .toList()
            : List.of();
    return List.of(
        new ScaleTicket(
            null,
            true,
            haul.weight() == null ? "assumed, not weighed" : "as loaded",
            platforms,
            wheels,
            haul.weight() == null
                ? FirstHaul.note("assumed: as much as all tires are rated for; weigh the trailer")
                : weighed == FirstHaul.Weighed.TOGETHER
                    ? Remarks.NONE
                    : FirstHaul.note("assumed: all as heavy as the heaviest; type the others")));
  }

  /** A gauge that reads as finely as the reading was typed: whole psi, else tenths of a bar. */
  private static Gauge gauge(FirstHaul haul) {
    Entered<GaugePressure> reading = haul.reading();
    boolean bar = reading != null && !reading.text().contains("psi");
    return new Gauge(
        "gauge",
        Gauge.Kind.OPEN,
        null,
        null,
        Entered.of(QuantityKind.GAUGE_PRESSURE, bar ? "0.1 bar" : "1 psi"),
        FirstHaul.note("assumed: open to the air, of no known grade"));
  }

  static <Q extends Quantity> Entered<Q> entered(QuantityKind<Q> kind, double number, String unit) {
    return Entered.of(kind, Math.round(number) + " " + unit);
  }
}
