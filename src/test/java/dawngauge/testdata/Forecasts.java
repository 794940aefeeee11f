package dawngauge.testdata;

import dawngauge.ambient.Ambient;
import dawngauge.ambient.AmbientNeeds;
import dawngauge.ambient.AmbientSource;
import dawngauge.ambient.TypedAmbient;
import dawngauge.forecast.Forecast;
import dawngauge.forecast.ForecastOptions;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.Track;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The way from a trip to its forecast, with the default options and nothing set on the way. */
public final class Forecasts {

  /** 90 % one-sided, reserve 10 %. */
  public static final ForecastOptions OPTIONS = new ForecastOptions(0.9, 0.1);

  private static final double PASCALS_PER_PSI = 6894.757293168361; // NIST SP 811, 2008

  private Forecasts() {}

  /** The forecaster of a trip; typed air first, then further sources. */
  public static Forecaster forecaster(Trip trip, AmbientSource... further) {
    Itinerary itinerary = Itinerary.of(trip).get();
    List<AmbientSource> sources = new ArrayList<>(List.of(new TypedAmbient(trip)));
    sources.addAll(List.of(further));
    Ambient ambient = Ambient.of(AmbientNeeds.of(trip, itinerary), sources).get();
    return new Forecaster(trip, itinerary, ambient, OPTIONS);
  }

  /** Every tire at every stop. */
  public static Forecast of(Trip trip, AmbientSource... further) {
    Forecaster forecaster = forecaster(trip, further);
    Map<WheelPosition, Track> tracks = new LinkedHashMap<>();
    for (WheelPosition position : trip.rig().positions()) {
      forecaster.track(position).ifPresent(track -> tracks.put(position, track));
    }
    return forecaster.forecast(tracks);
  }

  /** The first tire of the rig, stop by stop. */
  public static List<TireAtStop> first(Trip trip, AmbientSource... further) {
    return forecaster(trip, further).track(trip.rig().positions().get(0)).orElseThrow().stops();
  }

  /** A gauge pressure in psi. */
  public static double psi(double pascals) {
    return pascals / PASCALS_PER_PSI;
  }

  /** What must be known here; the test fails where it is not. */
  public static <T> T known(@Nullable T value) {
    if (value == null) {
      throw new AssertionError("not known");
    }
    return value;
  }
}
