package dawngauge.report;

import dawngauge.ledger.ForecastPage;
import dawngauge.ledger.Ledger;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.Route;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import dawngauge.tripfile.TripFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Trips of many sorts, planned. */
final class Plans {
  static final Path DEMO = Path.of("demo-data", "spring-fleece-haul.dawngauge");
  private static final Path SAMPLES = Path.of("src", "test", "resources", "dawngauge", "tripfile");

  private static final Map<String, Trip> ALL = make();

  private Plans() {}

  static Trip demo() {
    return trip(text(DEMO));
  }

  /** A haul without a temperature at one stop. */
  static Trip gap() {
    return trip(text(Path.of("demo-data", "gap-haul.dawngauge")));
  }

  /** A trip whose last stop has no known time. */
  static Trip full() {
    return trip(text(SAMPLES.resolve("full.dawngauge")));
  }

  static Trip trip(String text) {
    return TripFile.parse(text).get();
  }

  static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** The demo haul with other words for "Walsenburg CO" and for the goats. */
  static Trip named(String place) {
    return trip(text(DEMO).replace("Walsenburg CO", place).replace("9 dairy goats", place));
  }

  /** Trips that are whole, and trips that lack something. */
  static Map<String, Trip> all() {
    return ALL;
  }

  private static Map<String, Trip> make() {
    Trip demo = demo();
    Map<String, Trip> trips = new LinkedHashMap<>();
    trips.put("demo", demo);
    trips.put("full", full());
    trips.put(
        "two stops",
        demo.withRoute(
            new Route(demo.route().stops().subList(0, 2), demo.route().legs().subList(0, 1))));
    trips.put("no readings", demo.withLog(List.of()));
    trips.put("no air", demo.withAmbient(List.of()));
    trips.put(
        "no weights",
        trip(text(DEMO).replace("\"tickets\"", "\"x-tickets\"").replace("\"gawr\"", "\"x-gawr\"")));
    trips.put(
        "no departure", trip(text(DEMO).replace("\"leave\": \"2027-04-06", "\"x-leave\": \"")));
    trips.put("high pressures", trip(text(DEMO).replace("\"80 psi\"", "\"150 psi\"")));
    trips.put("200 letters", named("x".repeat(200)));
    trips.put("200 letters in words", named("long name ".repeat(20).strip()));
    trips.put("emoji", named("\uD83D\uDC69\u200D\uD83C\uDF3E\uD83D\uDC11".repeat(40)));
    trips.put("combining accents", named("a\u0301\u0323".repeat(66)));
    trips.put("heap of accents", named("a" + "\u0301".repeat(199)));
    trips.put(
        "right to left",
        named("\u05D7\u05D5\u05D5\u05D4 \u0645\u0632\u0631\u0639\u0629 ".repeat(14).strip()));
    return Collections.unmodifiableMap(trips);
  }

  static Plan plan(Trip trip) {
    return new Planner(SettingsFile.defaults(), List.of()).plan(trip);
  }

  /** With reasons and sources. */
  static String print(Trip trip, UnitSystem units, @Nullable WheelPosition only) {
    return print(trip, units, only, true);
  }

  static String print(Trip trip, UnitSystem units, @Nullable WheelPosition only, boolean why) {
    Plan planned = plan(trip);
    return PageText.of(
        ForecastPage.of(
            Ledger.of(trip, planned.advice(), planned.problems(), List.of(), units, only)),
        why);
  }
}
