package dawngauge.quantity;

/** A physical quantity: one number in its SI unit, and the kind that says what it measures. */
public sealed interface Quantity
    permits Pressure,
        GaugePressure,
        Temperature,
        TemperatureDifference,
        Elevation,
        Distance,
        Speed,
        Mass,
        TreadDepth,
        AirFlow,
        Ratio {

  /** The number in the kind's SI unit. */
  double si();

  /** What is measured. */
  QuantityKind<? extends Quantity> kind();

  /** The number in another unit of the same kind. */
  default double in(Unit unit) {
    return unit.fromSi(si(), kind());
  }
}
