package dawngauge.ambient;

import dawngauge.explain.Phrase;
import dawngauge.geo.Coordinate;
import dawngauge.geo.Daylight;
import dawngauge.physics.DiurnalCurve;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Temperature;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Provenance;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A day's low and high spread over the day by the published curve, with real sunrise and sunset. A
 * day without figures of its own takes those of the nearest day that has them.
 */
final class LowHighAir implements AirSeries {

  /** From midnight to so long after sunrise the error of the minimum holds, in seconds. */
  private static final double MINIMUM_HOLDS_AFTER_SUNRISE = 2 * 3600.0;

  private static final double DAY = 86_400;

  /**
   * The curve turns sharply at the low (by 4 K an hour on a desert morning). So long before and
   * after the stay, in seconds, that is told; farther off the place hardly counts.
   */
  private static final double KINKS_AROUND = 12 * 3600.0;

  /**
   * What holds for a day.
   *
   * @param sigma spread that was typed for it, or of what was measured, in kelvin
   * @param measured whether it is what came
   * @param from day on which it was given
   * @param lead whole days from then to the day for which it holds
   */
  private record Given(
      Temperature low,
      Temperature high,
      @Nullable Double sigma,
      boolean measured,
      LocalDate from,
      long lead) {

    /** The same where it stands in for another day: no surer than if it had been given for it. */
    Given on(LocalDate date) {
      long later = ChronoUnit.DAYS.between(from, date);
      return new Given(low, high, sigma, measured, from, Math.max(lead, later));
    }
  }

  /** Epoch seconds at which the days begin, one after the other without a gap. */
  private final double[] midnights;

  /** Days before the one on which the stay begins. */
  private static final int BEFORE = 2;

  /** The days of the stay. */
  private final List<LocalDate> dates;

  private final DiurnalCurve.Day[] days;
  private final Given[] given;
  private final List<Double> breakpoints;
  private final Provenance provenance;
  private final LeadError error;
  private final Phrase inWords;

  private LowHighAir(
      AmbientNeeds.Need need,
      Map<LocalDate, DiurnalCurve.Day> days,
      Map<LocalDate, Given> given,
      Provenance provenance) {
    this.days = days.values().toArray(new DiurnalCurve.Day[0]);
    this.given = given.values().toArray(new Given[0]);
    this.provenance = provenance;
    this.error = LeadError.of(need);
    LocalDate begins = need.from().atZone(need.zone()).toLocalDate();
    LocalDate ends = need.to().atZone(need.zone()).toLocalDate();
    this.dates = begins.datesUntil(ends.plusDays(1)).toList();
    this.midnights =
        days.keySet().stream()
            .mapToDouble(date -> date.atStartOfDay(need.zone()).toEpochSecond())
            .toArray();
    double from = need.from().getEpochSecond() - KINKS_AROUND;
    double to = need.to().getEpochSecond() + KINKS_AROUND;
    breakpoints =
        days.values().stream()
            .map(DiurnalCurve.Day::timeOfLow)
            .filter(low -> low >= from && low <= to)
            .toList();
    inWords = inWords();
  }

  /**
   * Spreads the entries of one stop.
   *
   * @param need the stop and its span of time
   * @param entries its low/high entries
   * @param asOf when figures without a date of issue are taken to have been typed
   */
  static Outcome<AirSeries> of(AmbientNeeds.Need need, List<AmbientEntry> entries, Instant asOf) {
    Coordinate place = need.coordinate();
    if (place == null) {
      return Outcome.failed(Problem.of(ProblemCode.NO_PLACE_FOR_CURVE, need.place()));
    }
    TreeMap<LocalDate, Given> typed = new TreeMap<>();
    Provenance provenance = Provenance.TYPED;
    for (AmbientEntry entry : entries) {
      if (entry.figure() instanceof AmbientEntry.LowHigh figure) {
        provenance = entry.provenance();
        typed.put(
            figure.date(),
            new Given(
                    figure.low().value(),
                    figure.high().value(),
                    Sureness.known(entry),
                    Sureness.isMeasured(entry),
                    given(entry, need, asOf),
                    0)
                .on(figure.date()));
      }
    }
    if (typed.isEmpty()) {
      return Outcome.failed(Problem.of(ProblemCode.NO_AMBIENT, need.place()));
    }
    Map<LocalDate, DiurnalCurve.Day> days = new TreeMap<>();
    Map<LocalDate, Given> given = new TreeMap<>();
    LocalDate last = need.to().atZone(need.zone()).toLocalDate().plusDays(2);
    for (LocalDate date = need.from().atZone(need.zone()).toLocalDate().minusDays(BEFORE);
        !date.isAfter(last);
        date = date.plusDays(1)) {
      Given figures = nearest(typed, date);
      Optional<Daylight.Sun> sun = Daylight.on(date, need.zone(), place);
      if (sun.isEmpty() || isTooShort(sun.get())) {
        return Outcome.failed(Problem.of(ProblemCode.NO_SUNRISE, need.place(), date.toString()));
      }
      days.put(
          date,
          new DiurnalCurve.Day(
              sun.get().sunrise().getEpochSecond(),
              sun.get().sunset().getEpochSecond(),
              figures.low.kelvins(),
              figures.high.kelvins()));
      given.put(date, figures.on(date));
    }
    return Outcome.of(new LowHighAir(need, days, given, provenance));
  }

  private static boolean isTooShort(Daylight.Sun sun) {
    return Duration.between(sun.sunrise(), sun.sunset()).toSeconds()
        < DiurnalCurve.SHORTEST_DAY_SECONDS;
  }

  /** The day on which figures were given; a typed figure is taken as of departure. */
  private static LocalDate given(AmbientEntry entry, AmbientNeeds.Need need, Instant asOf) {
    Instant issued = entry.provenance().issued();
    return (issued == null ? asOf : issued).atZone(need.zone()).toLocalDate();
  }

  private static Given nearest(NavigableMap<LocalDate, Given> typed, LocalDate date) {
    var before = typed.floorEntry(date);
    var after = typed.ceilingEntry(date);
    if (before == null || after == null) {
      return (before == null ? typed.firstEntry() : before).getValue();
    }
    long back = ChronoUnit.DAYS.between(before.getKey(), date);
    long ahead = ChronoUnit.DAYS.between(date, after.getKey());
    return (back <= ahead ? before : after).getValue();
  }

  /**
   * The same hour of the nearest day whose sun is known: times far from the stay are only asked for
   * where the air is bridged over days.
   */
  private double near(double epochSeconds) {
    double first = midnights[1];
    double last = midnights[midnights.length - 1];
    if (epochSeconds < first) {
      return epochSeconds + DAY * Math.ceil((first - epochSeconds) / DAY);
    }
    return epochSeconds < last
        ? epochSeconds
        : epochSeconds - DAY * (Math.floor((epochSeconds - last) / DAY) + 1);
  }

  /** Index of the day in which a time lies. */
  private int dayAt(double epochSeconds) {
    int found = Arrays.binarySearch(midnights, epochSeconds);
    return found >= 0 ? found : -found - 2;
  }

  @Override
  public Air at(double epochSeconds) {
    double time = near(epochSeconds);
    int day = dayAt(time);
    boolean minimum = aboutTheMinimum(time, day);
    return new Air(
        DiurnalCurve.temperatureAt(time, days[day - 1], days[day], days[day + 1]),
        sigma(given[day], minimum),
        minimum && !given[day].measured ? ForecastError.MINIMUM_COLD_SIDE : 0,
        false);
  }

  @Override
  public double kelvinsAt(double epochSeconds) {
    return at(epochSeconds).kelvins();
  }

  @Override
  public double sigmaAt(double epochSeconds) {
    return at(epochSeconds).sigma();
  }

  @Override
  public double coldSideAt(double epochSeconds) {
    return at(epochSeconds).coldSide();
  }

  private double sigma(Given figures, boolean minimum) {
    return figures.sigma == null ? error.of(figures.lead, minimum) : figures.sigma;
  }

  private boolean aboutTheMinimum(double time, int day) {
    return time <= days[day].sunriseSeconds() + MINIMUM_HOLDS_AFTER_SUNRISE;
  }

  @Override
  public List<Double> breakpoints() {
    return breakpoints;
  }

  @Override
  public Provenance provenance() {
    return provenance;
  }

  @Override
  public Phrase given() {
    return inWords;
  }

  private Phrase inWords() {
    String source = provenance.source() == null ? "" : " " + provenance.source();
    Phrase all = Phrase.of("{0}{1}: {2}", provenance.kind().word(), source, dayGiven(dates.get(0)));
    for (LocalDate date : dates.subList(1, dates.size())) {
      all = Phrase.of("{0}; {1}", all, dayGiven(date));
    }
    return all;
  }

  private Phrase dayGiven(LocalDate date) {
    Given figures = given[BEFORE + (int) ChronoUnit.DAYS.between(dates.get(0), date)];
    return Phrase.of("low {0}, high {1} on {2}", figures.low, figures.high, date.toString());
  }
}
