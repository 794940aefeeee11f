package dawngauge.planner;

import dawngauge.geo.Place;
import dawngauge.geo.Spot;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.DawnReadings;
import dawngauge.trip.Provenance;
import dawngauge.trip.Remarks;
import dawngauge.trip.Rig;
import dawngauge.trip.Route;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.StopEdits;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A first haul from at most a dozen entries: two places, a departure, the day's low and high, the
 * trailer's axles and tires, its certification label, its weight, and one cold reading. What is not
 * entered is assumed on the safe side, said so, and noted in the trip; what cannot be assumed
 * safely stays missing.
 *
 * @param from where the haul begins, or null so far
 * @param to where it ends
 * @param departure local time at the start; null for the offered one
 * @param low lowest air temperature of the day
 * @param high highest
 * @param axles axles of the trailer, 1 to 4
 * @param dual whether its wheels stand in pairs
 * @param size tire size from the sidewall
 * @param maxLoad load on the sidewall: of a single tire, or of each of a pair
 * @param atPressure cold pressure beside that load on the sidewall
 * @param label cold pressure on the certification label
 * @param weight weight of the trailer, loaded, from a scale ticket
 * @param weighed what of it stood on the scale
 * @param reading what the gauge showed this morning, cold, at the lowest tire
 */
public record FirstHaul(
    @Nullable Place from,
    @Nullable Place to,
    @Nullable LocalDateTime departure,
    @Nullable Entered<Temperature> low,
    @Nullable Entered<Temperature> high,
    int axles,
    boolean dual,
    @Nullable String size,
    @Nullable Entered<Mass> maxLoad,
    @Nullable Entered<GaugePressure> atPressure,
    @Nullable Entered<GaugePressure> label,
    @Nullable Entered<Mass> weight,
    Weighed weighed,
    @Nullable Entered<GaugePressure> reading) {

  /** Most axles that a trailer has here. */
  public static final int MOST_AXLES = 4;

  private static final DateTimeFormatter TEXT =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mmxxx'['VV']'", Locale.ROOT);

  /** Nothing entered: two axles with single wheels are taken until it is. */
  public static final FirstHaul EMPTY =
      new FirstHaul(
          null,
          null,
          null,
          null,
          null,
          2,
          false,
          null,
          null,
          null,
          null,
          null,
          Weighed.TOGETHER,
          null);

  /** What stood on the scale. */
  public enum Weighed {
    /** All axles of the trailer. */
    TOGETHER("all axles together"),
    /** Each axle; the heaviest is typed and taken for every one. */
    AXLE("heaviest axle"),
    /** Each wheel, a pair as one; the heaviest is typed and taken for every one. */
    WHEEL("heaviest wheel or pair");

    private final String word;

    Weighed(String word) {
      this.word = word;
    }

    /** As it is chosen. */
    public String word() {
      return word;
    }
  }

  /** Refuses a trailer without axles. */
  public FirstHaul {
    if (axles < 1 || axles > MOST_AXLES) {
      throw new IllegalArgumentException(axles + " axles, not 1 to " + MOST_AXLES);
    }
  }

  /** The departure offered: six in the morning of the next day. */
  public static LocalDateTime offered(LocalDate today) {
    return today.plusDays(1).atTime(6, 0);
  }

  /** What is still missing for any forecast, and what it would give; empty once there is one. */
  public List<String> missing() {
    List<String> missing = new ArrayList<>();
    if (from == null) {
      missing.add("Start town: gives distance, elevation, temperature.");
    }
    if (to == null) {
      missing.add("End town: gives distance, elevation, temperature.");
    }
    if (reading == null) {
      missing.add("This morning's cold reading: everything is forecast from it.");
    }
    return missing;
  }

  /** What could still be entered, and what it would give. */
  public List<String> better() {
    List<String> better = new ArrayList<>();
    if (maxLoad == null || atPressure == null) {
      better.add(
          "Load and pressure on the sidewall: without them no load margin is known, and no limit.");
    }
    return better;
  }

  /** What is assumed, each on the safe side, as sentences. */
  public List<String> assumed(UnitSystem units) {
    List<String> assumed = new ArrayList<>();
    if (low == null && high == null) {
      assumed.add(
          "Temperature: typical for the dates, no forecast, with a wide range; type the day's low and high.");
    } else if (low == null || high == null) {
      assumed.add("Temperature: one figure stands for low and high.");
    }
    if (label == null && atPressure != null) {
      assumed.add(
          "Cold pressure: the sidewall's, "
              + units.format(atPressure.value())
              + ", the highest that is allowed; the certification label's counts, type it.");
    }
    Entered<Mass> rating = fullRating();
    if (weight == null && rating != null) {
      assumed.add(
          "Weight: as much as all its tires are rated for, "
              + units.format(rating.value())
              + ", so no margin is left; type the scale ticket's weight.");
    }
    if (weight != null && weighed != Weighed.TOGETHER) {
      assumed.add(
          "Weight: every "
              + (weighed == Weighed.AXLE ? "axle" : "wheel")
              + " as heavy as the heaviest; type the others under Rig, Scale tickets.");
    }
    if (size == null) {
      assumed.add("Tire size: not known, so the most cautious rule between load and pressure.");
    }
    assumed.add(
        "Readings: all tires read as the lowest. Distance: straight line plus 20 %, 55 mph.");
    assumed.add("The tow vehicle is not in it yet: add it under Rig.");
    return assumed;
  }

  private int tires() {
    return axles * (dual ? 4 : 2);
  }

  /** The load that all tires are rated for together. */
  private @Nullable Entered<Mass> fullRating() {
    Entered<Mass> one = maxLoad;
    return one == null
        ? null
        : FirstRig.entered(QuantityKind.MASS, one.value().kilograms() * tires(), "kg");
  }

  /**
   * The haul as a trip; empty until both places are known.
   *
   * @param today for the departure that is offered
   */
  public Optional<Trip> trip(LocalDate today) {
    Place start = from;
    Place end = to;
    if (start == null || end == null) {
      return Optional.empty();
    }
    LocalDateTime leave = departure == null ? offered(today) : departure;
    Rig rig = FirstRig.of(this, weight == null ? fullRating() : null);
    Stop first =
        stop("start", Stop.Kind.START, start).withTimes(null, time(leave.atZone(start.zone())));
    Trip trip =
        new Trip(
            start.name() + " to " + end.name(),
            rig,
            new Route(List.of(first), List.of()),
            List.of(),
            List.of(),
            Remarks.NONE);
    trip = RouteEdits.insert(trip, 1, stop("end", Stop.Kind.END, end));
    trip = trip.withAmbient(air(leave.toLocalDate()));
    if (reading != null) {
      for (var tire : rig.tires()) {
        trip = DawnReadings.with(trip, tire.id(), reading);
      }
    }
    return Optional.of(trip);
  }

  private static Stop stop(String id, Stop.Kind kind, Place place) {
    Stop bare = Stop.named(id, place.label(), kind);
    return StopEdits.at(bare, Spot.of(place));
  }

  private static TypedTime time(ZonedDateTime time) {
    ZoneId zone = time.getZone();
    return new TypedTime(
        time, zone instanceof ZoneOffset ? time.toOffsetDateTime().toString() : TEXT.format(time));
  }

  /**
   * The typed day, at both ends and for as long as the way may take; nothing where none is typed.
   */
  private List<AmbientEntry> air(LocalDate date) {
    Entered<Temperature> least = low == null ? high : low;
    Entered<Temperature> most = high == null ? low : high;
    if (least == null || most == null) {
      return List.of();
    }
    boolean ordered = least.value().compareTo(most.value()) <= 0;
    AmbientEntry.Figure day =
        new AmbientEntry.LowHigh(date, ordered ? least : most, ordered ? most : least);
    return List.of(
        new AmbientEntry("start", day, Provenance.TYPED, null, note("the day's low and high")),
        new AmbientEntry("end", day, Provenance.TYPED, null, note("taken as at the start")));
  }

  static Remarks note(String text) {
    return new Remarks(text, Map.of());
  }
}
