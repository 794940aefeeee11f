package dawngauge.ambient;

import dawngauge.geo.GreatCircle;
import dawngauge.physics.StandardAtmosphere;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Temperature;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Provenance;
import dawngauge.trip.Remarks;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Fills a trip with expected air: what a weather service forecasts, and typical days where its
 * forecast does not reach. What is typed stays; where the service gives no answer, what it said
 * before stays.
 */
public final class WeatherFill {

  /** Places nearer than this, in meter, share one question: the size of a forecast's cell. */
  private static final double SAME_CELL = 2500;

  /** Unless their heights differ by more than this, in meter. */
  private static final double SAME_HEIGHT = 100;

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mmxxx'['VV']'", Locale.ROOT);

  /** Told how far it is; says whether to go on. */
  public interface Progress {

    /**
     * Before each question.
     *
     * @param done places answered so far
     * @param all places in all
     * @param place the next one
     * @return false to stop; what was answered is kept
     */
    boolean next(int done, int all, String place);
  }

  /**
   * What one place got.
   *
   * @param place its name
   * @param atStop whether it is a stop, not a point on a leg
   * @param from the provenance of what it has now, or null where it has nothing
   * @param typicalToo whether typical days go on behind a forecast
   */
  public record Filled(
      String place, boolean atStop, @Nullable Provenance from, boolean typicalToo) {}

  /**
   * A filled trip.
   *
   * @param trip the trip with its new air
   * @param places what each place got, in the order of the way
   * @param problems what could not be asked or answered, and values that were set aside
   * @param asked how many questions went to the service
   * @param answered how many of them had an answer of use
   */
  public record Result(
      Trip trip, List<Filled> places, List<Problem> problems, int asked, int answered) {

    /** Copies the lists. */
    public Result {
      places = List.copyOf(places);
      problems = List.copyOf(problems);
    }

    /** Whether services were asked and none could give anything, through no fault of the trip. */
    public boolean isOutage() {
      return asked > 0
          && answered == 0
          && problems.stream().map(Problem::code).anyMatch(OutageLines.OF_SERVICES::contains);
    }

    /** Whether the time for one refresh was over before every place was asked. */
    public boolean isCutShort() {
      return problems.stream().anyMatch(p -> p.code() == ProblemCode.FEED_TIME_OVER);
    }
  }

  private record Answered(WeatherPoint point, Outcome<WeatherAnswer> answer) {}

  private final Trip trip;
  private final Itinerary itinerary;
  private final List<Problem> problems = new ArrayList<>();
  private final List<AmbientEntry> fresh = new ArrayList<>();
  private final List<Filled> filled = new ArrayList<>();
  private final Set<String> renewed = new HashSet<>();
  private int asked;
  private int answered;

  private WeatherFill(Trip trip, Itinerary itinerary) {
    this.trip = trip;
    this.itinerary = itinerary;
  }

  /**
   * Fills a trip.
   *
   * @param trip the trip
   * @param itinerary its times
   * @param service asks for the forecast at one place
   * @param progress told before each question
   */
  public static Result fill(
      Trip trip,
      Itinerary itinerary,
      Function<WeatherQuery, Outcome<WeatherAnswer>> service,
      Progress progress) {
    WeatherFill fill = new WeatherFill(trip, itinerary);
    for (Answered answered : fill.ask(service, progress)) {
      fill.take(answered);
    }
    return new Result(fill.filledTrip(), fill.filled, fill.problems, fill.asked, fill.answered);
  }

  /** Fills a trip with typical days alone; what a service forecast before stays. */
  public static Result typical(Trip trip, Itinerary itinerary) {
    WeatherFill fill = new WeatherFill(trip, itinerary);
    List<WeatherPoint> points = WeatherPoint.of(trip, itinerary, fill.problems);
    points.stream().filter(WeatherPoint::isAtStop).forEach(point -> fill.take(point, null, true));
    return new Result(fill.filledTrip(), fill.filled, fill.problems, 0, 0);
  }

  /** Fills typical days in where a stop has no air at all; all else stays as it is. */
  public static Trip gaps(Trip trip, Itinerary itinerary) {
    Set<String> known = new HashSet<>();
    trip.ambient().stream().filter(AmbientEntry::isAtStop).forEach(e -> known.add(e.stop()));
    List<AmbientEntry> all = new ArrayList<>(trip.ambient());
    typical(trip, itinerary).trip().ambient().stream()
        .filter(entry -> !known.contains(entry.stop()))
        .forEach(all::add);
    return trip.withAmbient(all);
  }

  private List<Answered> ask(
      Function<WeatherQuery, Outcome<WeatherAnswer>> service, Progress progress) {
    List<WeatherPoint> points = WeatherPoint.of(trip, itinerary, problems);
    List<List<WeatherPoint>> cells = cells(points);
    List<Answered> answers = new ArrayList<>();
    OutageLines lines = new OutageLines();
    int done = 0;
    for (List<WeatherPoint> cell : cells) {
      if (!progress.next(done, points.size(), cell.get(0).name())) {
        problems.add(Problem.of(ProblemCode.WEATHER_STOPPED, "", "" + done, "" + points.size()));
        break;
      }
      Outcome<WeatherAnswer> answer = service.apply(question(cell));
      asked++;
      answered += answer.hasValue() ? 1 : 0;
      lines.add(cell.get(0).name(), answer.problems());
      cell.forEach(point -> answers.add(new Answered(point, answer)));
      done += cell.size();
    }
    problems.addAll(lines.problems());
    answers.sort((a, b) -> points.indexOf(a.point) - points.indexOf(b.point));
    return answers;
  }

  private static List<List<WeatherPoint>> cells(List<WeatherPoint> points) {
    List<List<WeatherPoint>> cells = new ArrayList<>();
    for (WeatherPoint point : points) {
      List<WeatherPoint> cell =
          cells.stream().filter(c -> isSame(c.get(0), point)).findFirst().orElse(null);
      if (cell == null) {
        cell = new ArrayList<>();
        cells.add(cell);
      }
      cell.add(point);
    }
    return cells;
  }

  private static boolean isSame(WeatherPoint a, WeatherPoint b) {
    boolean high = Math.abs(a.elevationMeters() - b.elevationMeters()) > SAME_HEIGHT;
    return !high && GreatCircle.between(a.coordinate(), b.coordinate()).meters() < SAME_CELL;
  }

  /** One question for all places of a cell, over all their times. */
  private static WeatherQuery question(List<WeatherPoint> cell) {
    Instant from = cell.get(0).from();
    Instant to = cell.get(0).to();
    for (WeatherPoint point : cell) {
      from = point.from().isBefore(from) ? point.from() : from;
      to = point.to().isAfter(to) ? point.to() : to;
    }
    return new WeatherQuery(cell.get(0).coordinate(), cell.get(0).elevationMeters(), from, to);
  }

  private void take(Answered answered) {
    AmbientEntry hours = answered.answer.value().map(a -> entry(answered.point, a)).orElse(null);
    take(answered.point, hours, !answered.answer.hasValue());
  }

  /** Takes the hours that a place got, with typical days where they do not reach. */
  private void take(WeatherPoint point, @Nullable AmbientEntry hours, boolean unanswered) {
    boolean reaches = hours != null && reaches(hours, point);
    List<AmbientEntry> typical = List.of();
    if (point.isAtStop() && !reaches) {
      Outcome<List<AmbientEntry>> days = TypicalTemperatures.of(need(point));
      typical = days.value().orElse(List.of());
      problems.addAll(days.problems());
    }
    boolean keeps = unanswered && earlier(point) != null;
    if (keeps || (hours == null && typical.isEmpty())) {
      filled.add(new Filled(point.name(), point.isAtStop(), earlier(point), false));
      return;
    }
    renewed.add(key(point.stopId(), point.along()));
    if (hours != null) {
      fresh.add(hours);
    }
    fresh.addAll(typical);
    Provenance from = hours == null ? typical.get(0).provenance() : hours.provenance();
    filled.add(
        new Filled(point.name(), point.isAtStop(), from, hours != null && !typical.isEmpty()));
  }

  /** The hours of an answer that a place wants, at its height; null where there are none. */
  private static @Nullable AmbientEntry entry(WeatherPoint point, WeatherAnswer answer) {
    double ground = point.elevationMeters();
    boolean both = !Double.isNaN(ground) && !Double.isNaN(answer.elevationMeters());
    double higher = both ? ground - answer.elevationMeters() : 0;
    List<AmbientEntry.Hourly.At> hours = new ArrayList<>();
    List<WeatherAnswer.At> all = answer.temperatures();
    for (int i = 0; i < all.size(); i++) {
      boolean before = i + 1 < all.size() && all.get(i + 1).time().isBefore(point.from());
      boolean after = i > 0 && all.get(i - 1).time().isAfter(point.to());
      if (!before && !after) {
        double kelvins = all.get(i).kelvins() - StandardAtmosphere.LAPSE_RATE * higher;
        hours.add(
            new AmbientEntry.Hourly.At(
                time(all.get(i).time(), point.zone()),
                WrittenFigures.of(new Temperature(kelvins))));
      }
    }
    boolean late = all.get(all.size() - 1).time().isBefore(point.from());
    double height = Double.isNaN(answer.elevationMeters()) ? ground : answer.elevationMeters();
    if (hours.isEmpty() || late || (!point.isAtStop() && Double.isNaN(height))) {
      return null;
    }
    Entered<Elevation> given =
        Double.isNaN(height) ? null : WrittenFigures.of(new Elevation(height));
    Entered<Distance> along =
        point.isAtStop() ? null : WrittenFigures.exactly(new Distance(point.along()));
    return new AmbientEntry(
        point.stopId(),
        along,
        new AmbientEntry.Hourly(hours),
        new Provenance(Provenance.Kind.FEED, answer.service(), answer.issued(), given),
        null,
        Remarks.NONE);
  }

  private static TypedTime time(Instant instant, ZoneId zone) {
    var time = instant.atZone(zone);
    return new TypedTime(time, TIME.format(time));
  }

  /** Whether the hours cover the stay; what lies around it may be missing. */
  private static boolean reaches(AmbientEntry entry, WeatherPoint point) {
    if (!(entry.figure() instanceof AmbientEntry.Hourly hourly)) {
      return false;
    }
    Instant last = hourly.hours().get(hourly.hours().size() - 1).time().instant();
    return !last.isBefore(point.to().minus(WeatherPoint.AROUND_STAY));
  }

  private AmbientNeeds.Need need(WeatherPoint point) {
    Itinerary.Visit visit =
        itinerary.visits().stream()
            .filter(v -> v.stop().id().equals(point.stopId()))
            .findFirst()
            .orElseThrow();
    return new AmbientNeeds.Need(
        visit.index(),
        Double.NaN,
        null,
        point.name(),
        point.stopId(),
        visit.meters(),
        point.coordinate(),
        point.elevationMeters(),
        point.zone(),
        visit.arrive(),
        visit.leave(),
        true);
  }

  private @Nullable Provenance earlier(WeatherPoint point) {
    return trip.ambient().stream()
        .filter(entry -> key(entry).equals(key(point.stopId(), point.along())))
        .filter(entry -> entry.provenance().kind() == Provenance.Kind.FEED)
        .map(AmbientEntry::provenance)
        .findFirst()
        .orElse(null);
  }

  private static String key(AmbientEntry entry) {
    Entered<Distance> along = entry.along();
    return key(entry.stop(), along == null ? Double.NaN : along.value().meters());
  }

  private static String key(String stop, double along) {
    return stop + "\n" + along;
  }

  /**
   * The trip with new air in the place of what was renewed; that goes to what was expected before.
   */
  private Trip filledTrip() {
    if (renewed.isEmpty()) {
      return trip;
    }
    List<AmbientEntry> now = new ArrayList<>();
    List<AmbientEntry> before = new ArrayList<>();
    Set<String> legs = new HashSet<>();
    fresh.stream().filter(e -> !e.isAtStop()).forEach(e -> legs.add(e.stop()));
    for (AmbientEntry entry : trip.ambient()) {
      boolean typed = entry.provenance().byHand();
      boolean gone =
          renewed.contains(key(entry)) || (!entry.isAtStop() && legs.contains(entry.stop()));
      if (typed || !gone) {
        now.add(entry);
      } else {
        before.add(entry);
      }
    }
    now.addAll(fresh);
    return trip.withAmbient(now).withEarlierAmbient(before);
  }
}
