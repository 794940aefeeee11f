package dawngauge.weights;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.AxleRef;
import dawngauge.trip.DeckLoad;
import dawngauge.trip.LoadChange;
import dawngauge.trip.Remarks;
import dawngauge.trip.Rig;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.Trip;
import dawngauge.trip.Worksheet;
import dawngauge.tripfile.TripFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

/** Worksheets for tests. */
final class Sheets {

  private Sheets() {}

  /** A pickup with a two-axle gooseneck and three loads. */
  static Trip threeLoads() {
    try (InputStream in = Sheets.class.getResourceAsStream("three-loads.dawngauge")) {
      String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      return TripFile.parse(text).get();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  static Worksheet of(Trip trip) {
    return Objects.requireNonNull(trip.rig().worksheet());
  }

  /** The same trip with another worksheet. */
  static Trip with(Trip trip, UnaryOperator<Worksheet> change) {
    return trip.withRig(trip.rig().withWorksheet(change.apply(of(trip))));
  }

  static ExpectedLoads loads(Trip trip) {
    return new ExpectedLoads(trip.rig(), of(trip));
  }

  static ExpectedLoads loads(Rig rig, Worksheet sheet) {
    return new ExpectedLoads(rig, sheet);
  }

  static AxleRef axle(String vehicle, int number) {
    return new AxleRef(vehicle, number);
  }

  static Entered<Mass> mass(String text) {
    return Entered.of(QuantityKind.MASS, text);
  }

  static Entered<Distance> length(String text) {
    return Entered.of(QuantityKind.DISTANCE, text);
  }

  static DeckLoad load(String weight, String vehicle, String place) {
    return new DeckLoad(
        "load",
        null,
        mass(weight),
        LoadChange.Source.GUESSED,
        vehicle,
        length(place),
        Remarks.NONE);
  }

  static ScaleTicket ticket(boolean hitched, ScaleTicket.Platform... platforms) {
    return new ScaleTicket(null, hitched, null, List.of(platforms), List.of(), Remarks.NONE);
  }

  static ScaleTicket.Platform platform(String weight, AxleRef... axles) {
    return new ScaleTicket.Platform(List.of(axles), mass(weight));
  }
}
