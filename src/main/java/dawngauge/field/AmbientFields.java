package dawngauge.field;

import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.AmbientEntry.Hourly;
import dawngauge.trip.AmbientEntry.LowHigh;
import dawngauge.trip.AmbientEntry.Steady;
import dawngauge.trip.Provenance;
import dawngauge.trip.Remarks;
import dawngauge.trip.TypedTime;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/**
 * What expected air has. One entry has a temperature, or hours, or a day with low and high: a value
 * of one of them takes the place of the others.
 */
public final class AmbientFields {

  private static final Codec<Entered<Temperature>> TEMPERATURE = RouteFields.TEMPERATURE;
  private static final String FORECAST = "weather forecast";

  private static final List<Fault> NO_HOURS =
      List.of(
          Fault.of("", ProblemCode.MISSING_FIELD, "hours", "at least one time and temperature"));

  /** Time of an hour. */
  public static final Field<Hourly.At, TypedTime> HOUR_TIME =
      Field.required(
          "time",
          "Time",
          FORECAST,
          TimeCodecs.TIME,
          Hourly.At::time,
          (hour, time) -> new Hourly.At(time, hour.temperature()));

  /** Air at an hour. */
  public static final Field<Hourly.At, Entered<Temperature>> HOUR_TEMPERATURE =
      Field.required(
          "temperature",
          "Air",
          FORECAST,
          TEMPERATURE,
          Hourly.At::temperature,
          (hour, temperature) -> new Hourly.At(hour.time(), temperature));

  /** Air at one time. */
  public static final Part<Hourly.At> HOUR =
      Part.bare(
          "hour",
          "hour",
          new Hourly.At(TimeCodecs.TIME.standIn(), TEMPERATURE.standIn()),
          List.<Member<Hourly.At>>of(HOUR_TIME, HOUR_TEMPERATURE));

  /** Kind of origin. */
  public static final Field<Provenance, Provenance.Kind> SOURCE_KIND =
      Field.required(
          "kind",
          "Kind",
          "where it came from",
          Codec.choice(Provenance.Kind.class, Provenance.Kind::word),
          Provenance::kind,
          Provenance::withKind);

  /** Who gave it. */
  public static final Field<Provenance, String> SOURCE_FROM =
      Field.optional(
          "from", "From", "in words", Codec.TEXT, Provenance::source, Provenance::withSource);

  /** When it was given. */
  public static final Field<Provenance, Instant> SOURCE_ISSUED =
      Field.optional(
          "issued",
          "Issued",
          FORECAST,
          TimeCodecs.INSTANT,
          Provenance::issued,
          Provenance::withIssued);

  /** For which height it was given. */
  public static final Field<Provenance, Entered<Elevation>> SOURCE_ELEVATION =
      Field.optional(
          "elevation",
          "For the height",
          FORECAST,
          RouteFields.HEIGHT,
          Provenance::elevation,
          Provenance::withElevation);

  /** Where a temperature came from. */
  public static final Part<Provenance> SOURCE =
      Part.bare(
          "source",
          "source",
          Provenance.TYPED,
          List.<Member<Provenance>>of(SOURCE_KIND, SOURCE_FROM, SOURCE_ISSUED, SOURCE_ELEVATION));

  /** At which stop. */
  public static final Field<AmbientEntry, String> STOP =
      Field.required(
          "stop", "Stop", "its id", Codec.NAME, AmbientEntry::stop, AmbientEntry::withStop);

  /** How far from the stop, on the leg that leaves it. */
  public static final Field<AmbientEntry, Entered<Distance>> ALONG =
      Field.optional(
          "along",
          "Along the leg",
          "way from the stop; none at the stop itself",
          Codec.positive(QuantityKind.DISTANCE),
          AmbientEntry::along,
          AmbientEntry::withAlong);

  /** One temperature for the whole stay. */
  public static final Field<AmbientEntry, Entered<Temperature>> STEADY =
      Field.optional(
          "temperature",
          "Air",
          FORECAST,
          TEMPERATURE,
          entry -> entry.figure() instanceof Steady steady ? steady.temperature() : null,
          (entry, value) -> value == null ? entry : entry.withFigure(new Steady(value)));

  /** Temperatures by time. */
  public static final Parts<AmbientEntry, Hourly.At> HOURS =
      new Parts<>(
          "hours",
          "Hours",
          HOUR,
          entry -> entry.figure() instanceof Hourly hourly ? hourly.hours() : List.of(),
          (entry, hours) -> hours.isEmpty() ? entry : entry.withFigure(new Hourly(hours)),
          hours -> hours.isEmpty() ? NO_HOURS : List.of());

  /** Day of low and high. */
  public static final Field<AmbientEntry, LocalDate> DATE =
      Field.optional(
          "date",
          "Day",
          FORECAST,
          TripCodecs.DATE,
          entry -> entry.figure() instanceof LowHigh day ? day.date() : null,
          (entry, value) ->
              value == null
                  ? entry
                  : entry.withFigure(new LowHigh(value, day(entry).low(), day(entry).high())));

  /** Lowest of the day. */
  public static final Field<AmbientEntry, Entered<Temperature>> LOW =
      Field.optional(
          "low",
          "Low",
          FORECAST,
          TEMPERATURE,
          entry -> entry.figure() instanceof LowHigh day ? day.low() : null,
          (entry, value) ->
              value == null
                  ? entry
                  : entry.withFigure(new LowHigh(day(entry).date(), value, day(entry).high())));

  /** Highest of the day. */
  public static final Field<AmbientEntry, Entered<Temperature>> HIGH =
      Field.optional(
          "high",
          "High",
          FORECAST,
          TEMPERATURE,
          entry -> entry.figure() instanceof LowHigh day ? day.high() : null,
          (entry, value) ->
              value == null
                  ? entry
                  : entry.withFigure(new LowHigh(day(entry).date(), day(entry).low(), value)));

  /** Where it came from; typed is not written. */
  public static final OnePart<AmbientEntry, Provenance> FROM =
      new OnePart<>(
          "source",
          "Source",
          SOURCE,
          entry -> entry.provenance().equals(Provenance.TYPED) ? null : entry.provenance(),
          (entry, source) -> entry.withProvenance(source == null ? Provenance.TYPED : source));

  /** How sure it is. */
  public static final Field<AmbientEntry, Entered<TemperatureDifference>> UNCERTAINTY =
      Field.optional(
          "uncertainty",
          "Uncertainty",
          "one standard deviation, where known",
          Codec.positive(QuantityKind.TEMPERATURE_DIFFERENCE),
          AmbientEntry::uncertainty,
          AmbientEntry::withUncertainty);

  /** Expected air. */
  public static final Part<AmbientEntry> ENTRY =
      Part.of(
              "ambient entry",
              "ambientEntry",
              new AmbientEntry(
                  "",
                  null,
                  new Steady(TEMPERATURE.standIn()),
                  Provenance.TYPED,
                  null,
                  Remarks.NONE),
              AmbientEntry::remarks,
              AmbientEntry::withRemarks,
              List.<Member<AmbientEntry>>of(
                  STOP, ALONG, STEADY, HOURS, DATE, LOW, HIGH, FROM, UNCERTAINTY))
          .checked((entry, sound) -> faults(entry.figure()));

  private AmbientFields() {}

  /** The day of an entry, or one of which nothing is known. */
  private static LowHigh day(AmbientEntry entry) {
    return entry.figure() instanceof LowHigh day
        ? day
        : new LowHigh(TripCodecs.DATE.standIn(), TEMPERATURE.standIn(), TEMPERATURE.standIn());
  }

  private static List<Fault> faults(AmbientEntry.Figure figure) {
    if (!(figure instanceof LowHigh day)) {
      return List.of();
    }
    boolean bothRead = !day.low().text().isEmpty() && !day.high().text().isEmpty();
    return bothRead && day.low().value().compareTo(day.high().value()) > 0
        ? List.of(
            Fault.of(LOW.key(), ProblemCode.LOW_ABOVE_HIGH, day.low().text(), day.high().text()))
        : List.of();
  }
}
