package dawngauge.review;

import dawngauge.forecast.ReadingCheck;
import dawngauge.trip.Gauge;
import dawngauge.trip.Trip;
import java.util.List;
import java.util.Optional;

/**
 * A gauge that seems to measure against something else than the file says: a sealed one that was
 * noted as open to the air reads less the higher it is used, in every tire alike, and the other way
 * round.
 *
 * @param gauge its name
 * @param sealed whether it seems to be sealed; else it seems to be open
 * @param around pressure of the air at the first round, in pascal
 * @param most the most that it makes of a reading since the first round, in pascal
 * @param rounds rounds it rests on
 */
public record GaugeReferenceMismatch(
    String gauge, boolean sealed, double around, double most, int rounds) {

  private static final int LEAST_ROUNDS = 3;

  /** Beyond so many deviations the readings follow the height. */
  private static final double FOLLOWS = 3;

  /** And within so many they follow it as much as such a gauge would. */
  private static final double AS_MUCH = 2.5;

  /**
   * A round of cold readings.
   *
   * @param check one of them
   * @param pascals how much less than expected the tires read in the middle, since the first round
   */
  record Round(ReadingCheck check, double pascals) {}

  /** By at least three rounds at heights that differ enough; empty where nothing is told. */
  static Optional<GaugeReferenceMismatch> of(Trip trip, List<Round> rounds) {
    if (rounds.size() < LEAST_ROUNDS) {
      return Optional.empty();
    }
    ReadingCheck first = rounds.get(0).check();
    String name = first.reading().gauge();
    boolean open =
        trip.rig().gauge(name).map(Gauge::kind).orElse(Gauge.Kind.OPEN) == Gauge.Kind.OPEN;
    double middle = 0;
    double middleLess = 0;
    for (Round round : rounds) {
      middle += round.pascals() / rounds.size();
      middleLess += (first.airPressure() - round.check().airPressure()) / rounds.size();
    }
    double squares = 0;
    double products = 0;
    double sigma = 0;
    double most = 0;
    for (Round round : rounds) {
      ReadingCheck check = round.check();
      double less = first.airPressure() - check.airPressure();
      double absolute = check.reading().pressure().value().pascals() + check.airPressure();
      double air = check.airSigma() / check.airKelvins() * absolute;
      sigma = Math.max(sigma, Math.hypot(air, check.repeatSigma()));
      squares += (less - middleLess) * (less - middleLess);
      products += (less - middleLess) * (round.pascals() - middle);
      most = Math.abs(less) > Math.abs(most) ? less : most;
    }
    double expected = open ? 1 : -1;
    double slope = products / squares;
    double spread = sigma / Math.sqrt(squares);
    boolean follows = slope * expected > FOLLOWS * spread;
    boolean asMuch = Math.abs(slope - expected) < AS_MUCH * spread;
    return squares > 0 && follows && asMuch
        ? Optional.of(
            new GaugeReferenceMismatch(
                name, open, first.airPressure(), Math.abs(most), rounds.size()))
        : Optional.empty();
  }

  /** How much less than expected it shows by that alone, in pascal. */
  double shownLess(ReadingCheck check) {
    double less = around - check.airPressure();
    return sealed ? less : -less;
  }
}
