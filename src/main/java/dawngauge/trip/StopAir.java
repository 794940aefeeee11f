package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Temperature;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The air given for one stop, by kind. Where a stop has several kinds, temperatures by the hour win
 * over one for the stay, and that over the day's low and high.
 *
 * @param stop id of the stop
 * @param entries what is given for it, in the order of the trip
 */
public record StopAir(String stop, List<AmbientEntry> entries) {

  /** Kinds of figures. */
  public enum Kind {
    /** One temperature for the stay. */
    STEADY("steady"),
    /** Low and high of each day. */
    LOW_HIGH("low and high"),
    /** Temperatures at given times. */
    HOURLY("by the hour");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** As people say it. */
    public String words() {
      return words;
    }

    /** The kind of a figure. */
    public static Kind of(AmbientEntry.Figure figure) {
      if (figure instanceof AmbientEntry.Hourly) {
        return HOURLY;
      }
      return figure instanceof AmbientEntry.Steady ? STEADY : LOW_HIGH;
    }
  }

  /** Copies the list. */
  public StopAir {
    entries = List.copyOf(entries);
  }

  /** What a trip gives for a stop. */
  public static StopAir of(Trip trip, String stop) {
    return new StopAir(
        stop,
        trip.ambient().stream()
            .filter(entry -> entry.isAtStop() && entry.stop().equals(stop))
            .toList());
  }

  /** The kind that counts; null where nothing is given. */
  public @Nullable Kind counts() {
    if (!of(Kind.HOURLY).isEmpty()) {
      return Kind.HOURLY;
    } else if (!of(Kind.STEADY).isEmpty()) {
      return Kind.STEADY;
    }
    return entries.isEmpty() ? null : Kind.LOW_HIGH;
  }

  /** Whether a person gave what counts. */
  public boolean byHand() {
    Kind counts = counts();
    return counts != null && of(counts).stream().anyMatch(entry -> entry.provenance().byHand());
  }

  /** Whether what counts was measured. */
  public boolean measured() {
    Kind counts = counts();
    return counts != null
        && of(counts).stream()
            .allMatch(entry -> entry.provenance().kind() == Provenance.Kind.MEASURED);
  }

  /** Whether typical days go on where a forecast by the hour ends. */
  public boolean continues() {
    AmbientEntry hours = hourly();
    List<AmbientEntry> days = of(Kind.LOW_HIGH);
    return hours != null
        && hours.provenance().kind() == Provenance.Kind.FEED
        && !days.isEmpty()
        && days.get(0).provenance().kind() == Provenance.Kind.TYPICAL;
  }

  /** The entries of a kind. */
  public List<AmbientEntry> of(Kind kind) {
    return entries.stream().filter(entry -> Kind.of(entry.figure()) == kind).toList();
  }

  /** The entry that speaks for the whole stay, or null; of several the last. */
  public @Nullable AmbientEntry steady() {
    List<AmbientEntry> all = of(Kind.STEADY);
    return all.isEmpty() ? null : all.get(all.size() - 1);
  }

  /** The temperature for the whole stay, or null. */
  public @Nullable Entered<Temperature> temperature() {
    AmbientEntry entry = steady();
    return entry != null && entry.figure() instanceof AmbientEntry.Steady figure
        ? figure.temperature()
        : null;
  }

  /** The entry by the hour, or null; of several the first. */
  public @Nullable AmbientEntry hourly() {
    List<AmbientEntry> all = of(Kind.HOURLY);
    return all.isEmpty() ? null : all.get(0);
  }

  /** The temperatures by the hour, in time order. */
  public List<AmbientEntry.Hourly.At> hours() {
    AmbientEntry entry = hourly();
    return entry != null && entry.figure() instanceof AmbientEntry.Hourly hourly
        ? hourly.hours()
        : List.of();
  }

  /** The entry of a day, or null; of several the last. */
  public @Nullable AmbientEntry day(LocalDate date) {
    AmbientEntry found = null;
    for (AmbientEntry entry : entries) {
      if (entry.figure() instanceof AmbientEntry.LowHigh day && day.date().equals(date)) {
        found = entry;
      }
    }
    return found;
  }

  /** The low of a day, or null. */
  public @Nullable Entered<Temperature> low(LocalDate date) {
    AmbientEntry entry = day(date);
    return entry != null && entry.figure() instanceof AmbientEntry.LowHigh day ? day.low() : null;
  }

  /** The high of a day, or null. */
  public @Nullable Entered<Temperature> high(LocalDate date) {
    AmbientEntry entry = day(date);
    return entry != null && entry.figure() instanceof AmbientEntry.LowHigh day ? day.high() : null;
  }

  /** Whether one figure stands for low and high of a day, as while only one is typed. */
  public boolean isOneForBoth(LocalDate date) {
    Entered<Temperature> one = low(date);
    return one != null && one.equals(high(date));
  }

  /**
   * The low that stays where another high is typed.
   *
   * @param alone whether that high has stood for both so far; then it goes on to
   */
  public @Nullable Entered<Temperature> lowBeside(LocalDate date, boolean alone) {
    return alone && isOneForBoth(date) ? null : low(date);
  }

  /** The same for the high. */
  public @Nullable Entered<Temperature> highBeside(LocalDate date, boolean alone) {
    return alone && isOneForBoth(date) ? null : high(date);
  }

  /** The days of which low and high are given, in order. */
  public List<LocalDate> dates() {
    return entries.stream()
        .map(AmbientEntry::figure)
        .filter(AmbientEntry.LowHigh.class::isInstance)
        .map(figure -> ((AmbientEntry.LowHigh) figure).date())
        .distinct()
        .sorted()
        .toList();
  }
}
