package dawngauge.ambient;

import dawngauge.explain.Phrase;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.trip.Provenance;
import java.util.List;

/** A series as it would be under another weather. */
record OtherAir(AirSeries series, WhatIf whatIf) implements AirSeries {

  @Override
  public double kelvinsAt(double epochSeconds) {
    return whatIf.kelvins(series, epochSeconds);
  }

  /** At an edge of the band the air is taken as it is there, without a band of its own. */
  @Override
  public double sigmaAt(double epochSeconds) {
    return whatIf.edge() == 0 ? series.sigmaAt(epochSeconds) : 0;
  }

  @Override
  public double coldSideAt(double epochSeconds) {
    return whatIf.edge() == 0 ? series.coldSideAt(epochSeconds) : 0;
  }

  @Override
  public List<Double> kinks() {
    return series.kinks();
  }

  @Override
  public Provenance provenance() {
    return series.provenance();
  }

  @Override
  public Phrase given() {
    if (whatIf.edge() != 0) {
      return Phrase.of(
          "{0}; what if it came to the {1} edge of its range",
          series.given(), whatIf.edge() < 0 ? "cold" : "warm");
    }
    return Phrase.of(
        "{0}; what if it were {1} {2}",
        series.given(),
        new TemperatureDifference(Math.abs(whatIf.shiftKelvins())),
        whatIf.shiftKelvins() < 0 ? "colder" : "warmer");
  }
}
