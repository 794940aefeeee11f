package dawngauge.ambient;

import dawngauge.explain.Phrase;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.trip.Provenance;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A series as it would be under another weather. Up to the last reading it is as it was given: what
 * has been read was read in that air.
 *
 * @param series as given
 * @param whatIf the other weather
 * @param after epoch seconds from which on it is another
 */
record OtherAir(AirSeries series, WhatIf whatIf, double after) implements AirSeries {

  /** The step to the other weather takes so long, in seconds. */
  private static final double STEP = 1;

  @Override
  public double kelvinsAt(double epochSeconds) {
    return epochSeconds <= after
        ? series.kelvinsAt(epochSeconds)
        : whatIf.kelvins(series, epochSeconds);
  }

  /** At an edge of the band the air is taken as it is there, without a band of its own. */
  @Override
  public double sigmaAt(double epochSeconds) {
    boolean given = whatIf.edge() == 0 || epochSeconds <= after;
    return given ? series.sigmaAt(epochSeconds) : 0;
  }

  @Override
  public double coldSideAt(double epochSeconds) {
    boolean given = whatIf.edge() == 0 || epochSeconds <= after;
    return given ? series.coldSideAt(epochSeconds) : 0;
  }

  @Override
  public List<Double> breakpoints() {
    List<Double> breakpoints = new ArrayList<>(series.breakpoints());
    if (Double.isFinite(after)) {
      breakpoints.add(after);
      breakpoints.add(after + STEP);
    }
    Collections.sort(breakpoints);
    return breakpoints;
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
