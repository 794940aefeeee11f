package dawngauge.ui.route;

import dawngauge.field.RouteFields;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.GroupAir;
import dawngauge.trip.GroupEdits;
import dawngauge.trip.LeaveDay;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.StopAir;
import dawngauge.trip.StopClock;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Collection;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What is typed into the cells of the grid, each read as the fields of a stop read it: a stay or
 * when the rig leaves, a name, a temperature or the day's low and high, whether there is air.
 *
 * @param trip the trip whose cells they are
 * @param units units of a bare number
 */
record TypedCells(Trip trip, UnitSystem units) {

  /** The columns that are typed, as they stand. */
  static final List<GridColumns.Kind> COLUMNS =
      List.of(
          GridColumns.Kind.TIME,
          GridColumns.Kind.PLACE,
          GridColumns.Kind.AIR,
          GridColumns.Kind.HOSE);

  private static final Pattern OVERNIGHT = Pattern.compile("overnight +(\\d?\\d:\\d\\d)");
  private static final Pattern CLOCK = Pattern.compile("\\d?\\d:\\d\\d");
  private static final Pattern LOW_HIGH = Pattern.compile("([^/\\s][^/]*)/\\s*([^/\\s][^/]*)");
  private static final Pattern LAST_BREAKS = Pattern.compile("\\R+$");
  private static final Pattern NUMBER = Pattern.compile("[-−+]?[\\d.]+");

  /** What is typed in a cell; empty where nothing is. */
  String text(int row, GridColumns.Kind column) {
    Stop stop = trip.route().stops().get(row);
    return switch (column) {
      case TIME -> time(stop);
      case PLACE -> stop.place();
      case AIR -> air(row, stop);
      case HOSE -> RouteFields.STOP_AIR.text(stop);
      default -> "";
    };
  }

  private static String time(Stop stop) {
    TypedTime leave = stop.leave();
    if (leave != null) {
      return Forms.text(leave);
    }
    Duration stay = stop.stay();
    return stay == null ? "" : Forms.text(stay);
  }

  /** One temperature, or low and high where all days have the same; else nothing. */
  private String air(int row, Stop stop) {
    StopAir air = StopAir.of(trip, stop.id());
    if (air.counts() == StopAir.Kind.STEADY) {
      return EditorGrid.text(air.temperature());
    } else if (air.counts() != StopAir.Kind.LOW_HIGH) {
      return "";
    }
    Set<String> days =
        new StopClock(trip, row)
            .days().stream()
                .map(day -> EditorGrid.text(air.low(day)) + "/" + EditorGrid.text(air.high(day)))
                .collect(Collectors.toSet());
    String only = days.size() == 1 ? days.iterator().next() : "";
    return only.equals("/") ? "" : only;
  }

  /**
   * The trip with a text typed into a column at some stops.
   *
   * @return the trip, or why the text is not taken
   */
  Outcome<Trip> written(Collection<Integer> rows, GridColumns.Kind column, String text) {
    return switch (column) {
      case TIME -> times(rows, text);
      case PLACE ->
          Forms.name(text)
              .map(place -> GroupEdits.withStops(trip, rows, stop -> stop.withPlace(place)));
      case AIR -> airs(rows, text);
      case HOSE ->
          RouteFields.STOP_AIR
              .codec()
              .typed()
              .apply(units, text)
              .map(hose -> GroupEdits.withStops(trip, rows, stop -> stop.withAir(hose)));
      default -> Outcome.failed(Problem.of(ProblemCode.FORECAST_NOT_TYPED, ""));
    };
  }

  private Outcome<Trip> airs(Collection<Integer> rows, String text) {
    if (text.isEmpty()) {
      Trip cleared = trip;
      for (int row : rows) {
        cleared = RouteEdits.withAir(cleared, cleared.route().stops().get(row).id(), List.of());
      }
      return Outcome.of(cleared);
    }
    Matcher pair = LOW_HIGH.matcher(text);
    if (pair.matches()) {
      String high = pair.group(2).strip();
      return temperature(inUnitOf(high, pair.group(1).strip()))
          .then(
              low ->
                  temperature(high).then(most -> GroupAir.withDays(trip, rows, low, most, false)));
    }
    return temperature(text).map(steady -> GroupAir.withSteady(trip, rows, steady));
  }

  /** In "20/50 °F" the unit is that of both. */
  private static String inUnitOf(String high, String low) {
    Matcher number = NUMBER.matcher(high);
    boolean bare = NUMBER.matcher(low).matches();
    return bare && number.lookingAt() ? low + high.substring(number.end()) : low;
  }

  private Outcome<Entered<Temperature>> temperature(String text) {
    return Forms.figure(QuantityKind.TEMPERATURE, units).apply(text).map(Optional::orElseThrow);
  }

  private Outcome<Trip> times(Collection<Integer> rows, String text) {
    Outcome<Trip> edited = Outcome.of(trip);
    for (int row : new TreeSet<>(rows)) {
      edited = edited.then(trip -> new TypedCells(trip, units).timed(row, text));
    }
    return edited;
  }

  /** A clock time is when the rig leaves, the first such after it came; else it is a stay. */
  private Outcome<Trip> timed(int row, String text) {
    Stop stop = trip.route().stops().get(row);
    Matcher overnight = OVERNIGHT.matcher(text);
    boolean night = overnight.matches();
    if (text.isEmpty()) {
      Stop cleared = stop.withTimes(stop.arrive(), null);
      return Outcome.of(
          RouteEdits.withStop(trip, row, row == 0 ? cleared : cleared.withStay(null)));
    }
    String leaving = night ? overnight.group(1) : text;
    if (row == 0 || night || CLOCK.matcher(text).matches() || dated(text)) {
      return leave(row, leaving, night)
          .map(
              time ->
                  RouteEdits.withStop(
                      trip,
                      row,
                      (night ? stop.withKind(Stop.Kind.OVERNIGHT) : stop)
                          .withTimes(stop.arrive(), time)));
    }
    return Forms.span(text)
        .map(
            stay ->
                RouteEdits.withStop(
                    trip, row, stop.withTimes(stop.arrive(), null).withStay(stay.orElse(null))));
  }

  private static boolean dated(String text) {
    return text.length() > 10 && text.charAt(4) == '-';
  }

  private Outcome<TypedTime> leave(int row, String text, boolean night) {
    StopClock clock = new StopClock(trip, row);
    ZonedDateTime from = row == 0 ? clock.leaves() : clock.arrives();
    LocalDate day = from == null ? null : LeaveDay.first(from, night);
    Outcome<TypedTime> typed = time(clock, day, text);
    TypedTime time = typed.valueOrNull();
    boolean early =
        row > 0 && time != null && from != null && time.instant().isBefore(from.toInstant());
    return early && day != null && CLOCK.matcher(text).matches()
        ? time(clock, day.plusDays(1), text)
        : typed;
  }

  private static Outcome<TypedTime> time(StopClock clock, @Nullable LocalDate day, String text) {
    return Forms.time(clock.zone(), day).apply(text).map(Optional::orElseThrow);
  }

  /**
   * The trip with a table pasted from a cell downwards and to the right: cells parted by tabs, rows
   * by line breaks, as spreadsheets copy them. One cell goes to all stops that are taken.
   *
   * @param rows the taken stops
   * @return the trip, or the first cell that is not taken: then none is
   */
  Outcome<Trip> pasted(NavigableSet<Integer> rows, GridColumns.Kind column, String table) {
    List<List<String>> cells =
        LAST_BREAKS
            .matcher(table)
            .replaceFirst("")
            .lines()
            .map(line -> List.of(line.split("\t", -1)))
            .toList();
    int from = COLUMNS.indexOf(column);
    if (from < 0 || cells.isEmpty()) {
      return Outcome.failed(Problem.of(ProblemCode.FORECAST_NOT_TYPED, ""));
    }
    int wide = cells.stream().mapToInt(List::size).max().orElse(0);
    if (cells.size() == 1 && wide == 1) {
      return written(rows, column, FigureField.withPoint(cells.get(0).get(0).strip()));
    }
    int room = trip.route().stops().size() - rows.first();
    if (cells.size() > room || from + wide > COLUMNS.size()) {
      return Outcome.failed(
          Problem.of(
              ProblemCode.PASTED_BEYOND,
              "",
              String.valueOf(cells.size()),
              String.valueOf(wide),
              String.valueOf(room),
              String.valueOf(COLUMNS.size() - from)));
    }
    Outcome<Trip> edited = Outcome.of(trip);
    for (int i = 0; i < cells.size() && edited.hasValue(); i++) {
      int row = rows.first() + i;
      for (int j = 0; j < cells.get(i).size() && edited.hasValue(); j++) {
        GridColumns.Kind kind = COLUMNS.get(from + j);
        String cell = FigureField.withPoint(cells.get(i).get(j).strip());
        edited = new TypedCells(edited.get(), units).written(List.of(row), kind, cell);
      }
      if (!edited.hasValue()) {
        String place = trip.route().stops().get(row).place();
        return Outcome.failed(edited.problems().get(0).at(place));
      }
    }
    return edited;
  }

  /** What is typed in a column at some stops, a line each, as it can be pasted. */
  String copied(Collection<Integer> rows, GridColumns.Kind column) {
    return rows.stream().map(row -> text(row, column)).collect(Collectors.joining("\n"));
  }
}
