package dawngauge.testdata;

import dawngauge.geo.Coordinate;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.trip.Air;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.LoadChange;
import dawngauge.trip.Provenance;
import dawngauge.trip.Remarks;
import dawngauge.trip.Stop;
import dawngauge.trip.TypedTime;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A stop with the air expected there. Without further words: at sea level, passed, no air. */
public final class StopBuilder {

  private final String id;
  private @Nullable Coordinate coordinate;
  private @Nullable Entered<Elevation> elevation = Entered.of(QuantityKind.ELEVATION, "0 ft");
  private @Nullable ZoneId zone;
  private @Nullable Duration stay;
  private @Nullable TypedTime arrive;
  private @Nullable TypedTime leave;
  private Air air = Air.NONE;
  private Provenance provenance = Provenance.TYPED;
  private @Nullable Entered<TemperatureDifference> uncertainty;
  private final List<AmbientEntry.Figure> figures = new ArrayList<>();
  private final List<AmbientEntry.Hourly.At> hours = new ArrayList<>();
  private final List<LoadChange> loadChanges = new ArrayList<>();

  private StopBuilder(String id) {
    this.id = id;
  }

  /** A stop with an id, which is its place too. */
  public static StopBuilder stop(String id) {
    return new StopBuilder(id);
  }

  /** Where it is, in degrees, and whose clock counts there. */
  public StopBuilder at(double latitude, double longitude, String zoneId) {
    coordinate = new Coordinate(latitude, longitude);
    zone = ZoneId.of(zoneId);
    return this;
  }

  /** Height of the ground, or null where it is not known. */
  public StopBuilder elevation(@Nullable String text) {
    elevation = text == null ? null : Entered.of(QuantityKind.ELEVATION, text);
    return this;
  }

  /** How long the rig stands. */
  public StopBuilder stays(Duration time) {
    stay = time;
    return this;
  }

  /** When it comes, such as "2027-04-06T06:00Z". */
  public StopBuilder arrives(String time) {
    arrive = time(time);
    return this;
  }

  /** When it goes. */
  public StopBuilder leaves(String time) {
    leave = time(time);
    return this;
  }

  /** A hose is there. */
  public StopBuilder hose() {
    air = Air.YES;
    return this;
  }

  /** A hose that reaches no further. */
  public StopBuilder hose(String upTo) {
    air = new Air(true, Entered.of(QuantityKind.GAUGE_PRESSURE, upTo));
    return this;
  }

  /** One temperature for the whole stay. */
  public StopBuilder steady(String temperature) {
    figures.add(new AmbientEntry.Steady(Entered.of(QuantityKind.TEMPERATURE, temperature)));
    return this;
  }

  /** A temperature at a time; several make a line from one to the next. */
  public StopBuilder hour(String time, String temperature) {
    hours.add(
        new AmbientEntry.Hourly.At(time(time), Entered.of(QuantityKind.TEMPERATURE, temperature)));
    return this;
  }

  /** A day's low and high. */
  public StopBuilder lowHigh(String date, String low, String high) {
    figures.add(
        new AmbientEntry.LowHigh(
            LocalDate.parse(date),
            Entered.of(QuantityKind.TEMPERATURE, low),
            Entered.of(QuantityKind.TEMPERATURE, high)));
    return this;
  }

  /** Typed spread of all its temperatures, one standard deviation, such as "1 °C". */
  public StopBuilder give(String difference) {
    uncertainty = Entered.of(QuantityKind.TEMPERATURE_DIFFERENCE, difference);
    return this;
  }

  /** Where its temperatures came from. */
  public StopBuilder from(Provenance origin) {
    provenance = origin;
    return this;
  }

  /** Its temperatures were measured there. */
  public StopBuilder measured() {
    return from(new Provenance(Provenance.Kind.MEASURED, null, null));
  }

  /** A load taken on or set down here. */
  public StopBuilder load(LoadChange change) {
    loadChanges.add(change);
    return this;
  }

  Stop built() {
    return new Stop(
        id,
        id,
        Stop.Kind.REST,
        coordinate,
        elevation,
        zone,
        stay,
        arrive,
        leave,
        air,
        loadChanges,
        Remarks.NONE);
  }

  List<AmbientEntry> ambient() {
    List<AmbientEntry.Figure> all = new ArrayList<>(figures);
    if (!hours.isEmpty()) {
      all.add(new AmbientEntry.Hourly(hours));
    }
    return all.stream()
        .map(figure -> new AmbientEntry(id, figure, provenance, uncertainty, Remarks.NONE))
        .toList();
  }

  static TypedTime time(String text) {
    return new TypedTime(ZonedDateTime.parse(text), text);
  }
}
