package dawngauge.trip;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.TemperatureDifference;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Typed changes to the air of a stop, each giving a new trip. A figure that is typed takes the
 * place of what was given in another way; one that is typed over a weather service's is typed.
 */
public final class AirEdits {

  private AirEdits() {}

  /** One temperature for the whole stay; null for none. */
  public static Trip withSteady(Trip trip, String stop, @Nullable Entered<Temperature> typed) {
    StopAir air = StopAir.of(trip, stop);
    if (typed == null) {
      return RouteEdits.withAir(trip, stop, without(air, StopAir.Kind.STEADY));
    }
    AmbientEntry.Figure figure = new AmbientEntry.Steady(typed);
    return RouteEdits.withAir(trip, stop, List.of(typed(air, figure, air.steady())));
  }

  /**
   * A day's low and high; while only one of them is known it stands for both, and with neither the
   * day has none. Other days stay.
   *
   * @return the trip, or that the low is above the high
   */
  public static Outcome<Trip> withDay(
      Trip trip,
      String stop,
      LocalDate date,
      @Nullable Entered<Temperature> low,
      @Nullable Entered<Temperature> high) {
    StopAir air = StopAir.of(trip, stop);
    Entered<Temperature> least = low == null ? high : low;
    Entered<Temperature> most = high == null ? low : high;
    if (least == null || most == null) {
      return Outcome.of(RouteEdits.withAir(trip, stop, withoutDay(air.entries(), date)));
    } else if (least.value().compareTo(most.value()) > 0) {
      return Outcome.failed(Problem.of(ProblemCode.LOW_ABOVE_HIGH, "", least.text(), most.text()));
    }
    List<AmbientEntry> days = withoutDay(air.of(StopAir.Kind.LOW_HIGH), date);
    days.add(typed(air, new AmbientEntry.LowHigh(date, least, most), air.day(date)));
    return Outcome.of(RouteEdits.withAir(trip, stop, days));
  }

  private static List<AmbientEntry> withoutDay(List<AmbientEntry> entries, LocalDate date) {
    List<AmbientEntry> others = new ArrayList<>(entries);
    others.removeIf(
        entry -> entry.figure() instanceof AmbientEntry.LowHigh day && day.date().equals(date));
    return others;
  }

  /** A temperature at a time, in the place of another one or as a further one. */
  public static Outcome<Trip> withHour(
      Trip trip, String stop, AmbientEntry.Hourly.@Nullable At old, AmbientEntry.Hourly.At typed) {
    List<AmbientEntry.Hourly.At> hours = new ArrayList<>(StopAir.of(trip, stop).hours());
    hours.remove(old);
    if (hours.stream().anyMatch(hour -> hour.time().instant().equals(typed.time().instant()))) {
      return Outcome.failed(
          Problem.of(
              ProblemCode.HOUR_TAKEN,
              "",
              typed.time().time().toLocalDateTime().toString().replace('T', ' ')));
    }
    hours.add(typed);
    return Outcome.of(withHours(trip, stop, hours));
  }

  /** The stop without the temperature at a time. */
  public static Trip withoutHour(Trip trip, String stop, AmbientEntry.Hourly.At gone) {
    List<AmbientEntry.Hourly.At> hours = new ArrayList<>(StopAir.of(trip, stop).hours());
    hours.remove(gone);
    return withHours(trip, stop, hours);
  }

  private static Trip withHours(Trip trip, String stop, List<AmbientEntry.Hourly.At> hours) {
    StopAir air = StopAir.of(trip, stop);
    if (hours.isEmpty()) {
      return RouteEdits.withAir(trip, stop, without(air, StopAir.Kind.HOURLY));
    }
    hours.sort(Comparator.comparing(hour -> hour.time().instant()));
    AmbientEntry.Figure figure = new AmbientEntry.Hourly(hours);
    return RouteEdits.withAir(trip, stop, List.of(typed(air, figure, air.hourly())));
  }

  /** A spread for all figures of the kind that counts; null for the one that is assumed. */
  public static Trip withUncertainty(
      Trip trip, String stop, @Nullable Entered<TemperatureDifference> typed) {
    StopAir air = StopAir.of(trip, stop);
    StopAir.Kind counts = air.counts();
    List<AmbientEntry> entries =
        air.entries().stream()
            .map(
                entry ->
                    StopAir.Kind.of(entry.figure()) == counts
                        ? entry.withUncertainty(typed)
                        : entry)
            .toList();
    return RouteEdits.withAir(trip, stop, entries);
  }

  /** Tells of what a person gave and counts whether it was measured there, else only expected. */
  public static Trip withMeasured(Trip trip, String stop, boolean measured) {
    StopAir air = StopAir.of(trip, stop);
    StopAir.Kind counts = air.counts();
    Provenance.Kind kind = measured ? Provenance.Kind.MEASURED : Provenance.Kind.TYPED;
    List<AmbientEntry> entries =
        air.entries().stream()
            .map(
                entry ->
                    StopAir.Kind.of(entry.figure()) == counts && entry.provenance().byHand()
                        ? entry.withProvenance(entry.provenance().withKind(kind))
                        : entry)
            .toList();
    return RouteEdits.withAir(trip, stop, entries);
  }

  private static List<AmbientEntry> without(StopAir air, StopAir.Kind kind) {
    List<AmbientEntry> rest = new ArrayList<>(air.entries());
    rest.removeAll(air.of(kind));
    return rest;
  }

  /** An entry with the remarks of what it replaces, and its spread if a person gave that. */
  private static AmbientEntry typed(
      StopAir air, AmbientEntry.Figure figure, @Nullable AmbientEntry before) {
    AmbientEntry entry = new AmbientEntry(air.stop(), figure, Provenance.TYPED, null, Remarks.NONE);
    if (before == null) {
      return entry;
    }
    boolean own = before.provenance().byHand();
    boolean measured = before.provenance().kind() == Provenance.Kind.MEASURED;
    return new AmbientEntry(
        air.stop(),
        figure,
        measured ? before.provenance() : Provenance.TYPED,
        own ? before.uncertainty() : null,
        before.remarks());
  }
}
