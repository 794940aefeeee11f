package dawngauge.exchange;

import dawngauge.problem.Outcome;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.Unit;
import dawngauge.trip.Gauge;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEdits;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Remarks;
import dawngauge.trip.TableLayout;
import dawngauge.trip.TableLayout.Column;
import dawngauge.trip.TableReadings;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import dawngauge.trip.WheelPosition;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Takes the rows of a table of readings one by one. */
final class CsvRows {

  /** Rows left out that are told one by one; ours. */
  private static final int MOST_TOLD = 200;

  /**
   * Readings of a table that is no recorder's, at the most: a trip file must stay readable; ours.
   */
  private static final int MOST_EVENTS = 5000;

  /** Before the trip and after it a reading may be so many seconds off. */
  private static final long AROUND = 12 * 3600;

  /** No tire of a road vehicle is set so high (published tables end at 130 psi); from memory. */
  private static final double MOST_PASCALS = GaugePressure.of(200, Unit.PSI).pascals();

  private static final Pattern BARE = Pattern.compile("[+-]?[0-9]+(?:[.,][0-9]+)?");

  private final TableLayout layout;
  private final Trip trip;
  private final Itinerary itinerary;
  private final RowTime clock;
  private final Map<String, String> tires = new HashMap<>();
  private final NavigableMap<Integer, String> byColumn;
  private final StayWindows windows;
  private final List<LogEvent> events = new ArrayList<>();
  private final List<TableReadings.LeftOut> leftOut = new ArrayList<>();
  private final Set<String> known = new HashSet<>();
  private final Map<String, Double> highest = new HashMap<>();
  private final int timeColumn;
  private final int tireColumn;
  private final int pressureColumn;
  private final double pascalsEach;
  private final double most;
  private final long first;
  private final long last;
  private long leftOutRows;
  private long between;
  private long count;

  CsvRows(TableLayout layout, Trip trip, Itinerary itinerary) {
    this.layout = layout;
    this.trip = trip;
    this.itinerary = itinerary;
    this.clock = new RowTime(layout.zone());
    this.byColumn = new TreeMap<>(layout.tires());
    this.windows = new StayWindows(itinerary);
    this.timeColumn = layout.columns().getOrDefault(Column.TIME, -1);
    this.tireColumn = layout.columns().getOrDefault(Column.TIRE, -1);
    this.pressureColumn = layout.columns().getOrDefault(Column.PRESSURE, -1);
    this.pascalsEach = GaugePressure.of(1, layout.pressure()).pascals();
    List<Itinerary.Visit> visits = itinerary.visits();
    this.first = visits.get(0).leave().getEpochSecond() - AROUND;
    this.last = visits.get(visits.size() - 1).leave().getEpochSecond() + AROUND;
    for (Tire tire : trip.rig().tires()) {
      tires.put(fold(tire.id()), tire.id());
    }
    for (LogEvent event : trip.log()) {
      if (event instanceof LogEvent.Reading reading) {
        known.add(key(reading));
      }
    }
    for (Gauge gauge : trip.rig().gauges()) {
      Entered<GaugePressure> span = gauge.span();
      highest.put(
          gauge.name(),
          span == null ? MOST_PASCALS : Math.min(MOST_PASCALS, span.value().pascals()));
    }
    this.most = highest.getOrDefault(layout.gauge(), MOST_PASCALS);
  }

  private static String key(LogEvent.Reading reading) {
    return reading.tire()
        + "/"
        + reading.time().instant().getEpochSecond() / 60
        + "/"
        + Math.round(reading.pressure().value().pascals());
  }

  private static String fold(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }

  long count() {
    return count;
  }

  private void leave(long line, String why) {
    leftOutRows++;
    if (leftOut.size() < MOST_TOLD) {
      leftOut.add(new TableReadings.LeftOut(line, why));
    }
  }

  /** The table is no table from here on. */
  void broken(String why) {
    leave(count + 2, "the table is broken from here on: " + shortened(why));
  }

  TableReadings result(boolean whole) {
    if (layout.recorder()) {
      for (LogEvent event : windows.readings(layout.pressure(), layout.gauge())) {
        if (event instanceof LogEvent.Reading reading && known.add(key(reading))) {
          events.add(event);
        }
      }
    }
    return new TableReadings(events, count, between, leftOut, leftOutRows, whole);
  }

  void take(CsvRecord row) {
    count++;
    long line = row.getStartingLineNumber();
    if (row.getFieldCount() <= timeColumn) {
      leave(line, "it has " + row.getFieldCount() + " fields only");
      return;
    }
    String when = row.getField(timeColumn);
    long seconds = clock.seconds(when);
    if (seconds == RowTime.NONE) {
      leave(line, "“" + shortened(when) + "” is no time such as 2027-04-06 05:45");
    } else if (seconds == RowTime.SKIPPED) {
      leave(line, "the clocks of " + layout.zone() + " skip " + shortened(when));
    } else if (seconds < first || seconds > last) {
      leave(line, shortened(when) + " is not within this trip");
    } else if (layout.tires().isEmpty()) {
      one(row, line, seconds);
    } else {
      wide(row, line, seconds);
    }
  }

  private @Nullable String field(CsvRecord row, Column column) {
    return field(row, layout.columns().getOrDefault(column, -1));
  }

  private static @Nullable String field(CsvRecord row, int index) {
    if (index < 0 || index >= row.getFieldCount()) {
      return null;
    }
    String text = row.getField(index).strip();
    return text.isEmpty() ? null : text;
  }

  /** One row, one tire. */
  private void one(CsvRecord row, long line, long seconds) {
    String named = field(row, tireColumn);
    String tire = named == null ? null : tire(named, seconds);
    if (tire == null) {
      leave(line, "there is no tire “" + shortened(named == null ? "" : named) + "”");
      return;
    }
    String pressure = field(row, pressureColumn);
    if (pressure == null) {
      leave(line, "it has no pressure");
      return;
    }
    take(row, line, seconds, tire, pressure);
  }

  /** One row, a column for each tire. */
  private void wide(CsvRecord row, long line, long seconds) {
    for (Map.Entry<Integer, String> column : byColumn.entrySet()) {
      if (column.getKey() < row.getFieldCount()) {
        String pressure = row.getField(column.getKey()).strip();
        if (!pressure.isEmpty()) {
          take(row, line, seconds, column.getValue(), pressure);
        }
      }
    }
  }

  private void take(CsvRecord row, long line, long seconds, String tire, String pressure) {
    double plain = layout.recorder() ? plain(pressure) : Double.NaN;
    if (!Double.isNaN(plain)) {
      double pascals = plain * pascalsEach;
      boolean within = pascals > 0 && pascals <= most;
      if (within || sound(line, pressure, pascals, layout.gauge())) {
        between += windows.take(seconds, tire, pascals) ? 0 : 1;
      }
      return;
    }
    Entered<GaugePressure> figure =
        entered(QuantityKind.GAUGE_PRESSURE, pressure, layout.pressure());
    if (figure == null) {
      leave(
          line,
          "“" + shortened(pressure) + "” is no pressure that a gauge shows; check figure and unit");
      return;
    }
    String named = field(row, Column.GAUGE);
    String gauge = named == null ? layout.gauge() : named;
    if (!highest.containsKey(gauge)) {
      leave(line, "there is no gauge “" + shortened(gauge) + "”");
    } else if (sound(line, figure.text(), figure.value().pascals(), gauge)) {
      if (layout.recorder()) {
        between += windows.take(seconds, tire, figure.value().pascals()) ? 0 : 1;
      } else {
        add(row, line, seconds, tire, figure, gauge);
      }
    }
  }

  private boolean sound(long line, String text, double pascals, String gauge) {
    if (!(pascals > 0)) {
      leave(
          line,
          shortened(text)
              + ": no reading, or a flat tire; if it was flat, note it by hand at its stop");
      return false;
    }
    if (pascals > highest.getOrDefault(gauge, MOST_PASCALS)) {
      leave(line, shortened(text) + " is beyond the scale of " + gauge + "; check the unit");
      return false;
    }
    return true;
  }

  private void add(
      CsvRecord row,
      long line,
      long seconds,
      String tire,
      Entered<GaugePressure> figure,
      String gauge) {
    String stateText = field(row, Column.STATE);
    ReadingState state = stateText == null ? ReadingState.COLD : state(stateText);
    if (stateText != null && state == null) {
      leave(line, "“" + shortened(stateText) + "” is none of cold, cold in sun, warm, just filled");
      return;
    }
    String airText = field(row, Column.AIR);
    Entered<Temperature> air =
        airText == null ? null : entered(QuantityKind.TEMPERATURE, airText, layout.temperature());
    if (airText != null && air == null) {
      leave(line, "“" + shortened(airText) + "” is no temperature");
      return;
    }
    String setText = field(row, Column.SET_TO);
    Entered<GaugePressure> set =
        setText == null ? null : entered(QuantityKind.GAUGE_PRESSURE, setText, layout.pressure());
    if (setText != null && (set == null || !sound(line, setText, set.value().pascals(), gauge))) {
      if (set == null) {
        leave(line, "“" + shortened(setText) + "” is no pressure to set");
      }
      return;
    }
    if (events.size() >= MOST_EVENTS) {
      leave(line, "more than " + MOST_EVENTS + " readings: take it as a recorder's table");
      return;
    }
    Instant time = Instant.ofEpochSecond(seconds);
    TypedTime typed = LogEdits.at(time, zoneAt(time));
    LogEvent.Reading reading =
        new LogEvent.Reading(
            typed,
            tire,
            figure,
            gauge,
            state == null ? ReadingState.COLD : state,
            air,
            null,
            new Remarks(field(row, Column.NOTE), Map.of()));
    if (!known.add(key(reading))) {
      leave(line, "the same reading stands there already");
      return;
    }
    events.add(reading);
    if (set != null) {
      events.add(new LogEvent.Adjustment(typed, tire, figure, set, gauge, Remarks.NONE));
    }
  }

  /** The zone of the stop where the rig was then, or was going. */
  private ZoneId zoneAt(Instant time) {
    ZoneId zone = itinerary.visits().get(0).zone();
    for (Itinerary.Visit visit : itinerary.visits()) {
      if (!visit.arrive().isAfter(time)) {
        zone = visit.zone();
      }
    }
    return zone;
  }

  private static @Nullable ReadingState state(String text) {
    for (ReadingState state : ReadingState.values()) {
      if (state.word().equals(fold(text))) {
        return state;
      }
    }
    return null;
  }

  /** A tire by its id, or by the position where it stood then; null where there is none. */
  private @Nullable String tire(String named, long seconds) {
    String id = tires.get(named);
    if (id == null) {
      id = tires.get(fold(named));
    }
    if (id != null) {
      return id;
    }
    Instant time = Instant.ofEpochSecond(seconds);
    for (Map.Entry<WheelPosition, Tire> fitted : LogEdits.fittedAt(trip, time).entrySet()) {
      WheelPosition position = fitted.getKey();
      if (fold(position.words()).equals(fold(named))
          || trip.rig().shortForm(position).equals(fold(named))) {
        return fitted.getValue().id();
      }
    }
    return null;
  }

  private static <Q extends Quantity> @Nullable Entered<Q> entered(
      QuantityKind<Q> kind, String text, Unit unit) {
    boolean bare = BARE.matcher(text).matches();
    String point = text.replaceAll("(?<=\\d),(?=\\d)", ".");
    Outcome<Entered<Q>> outcome = kind.parse(bare ? point + " " + unit.symbol() : point);
    return Optional.ofNullable(outcome.valueOrNull()).orElse(null);
  }

  /** A bare number with a point or a comma, digit by digit; NaN where it is none. */
  private static double plain(String text) {
    long whole = 0;
    double part = 1;
    boolean fraction = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      int digit = c - '0';
      if (digit >= 0 && digit <= 9 && whole < Long.MAX_VALUE / 100) {
        whole = whole * 10 + digit;
        part = fraction ? part * 10 : part;
      } else if ((c == '.' || c == ',') && !fraction && i > 0) {
        fraction = true;
      } else {
        return Double.NaN;
      }
    }
    return text.isEmpty() ? Double.NaN : whole / part;
  }

  static String shortened(String text) {
    return text.length() <= 40 ? text : text.substring(0, 39) + "…";
  }
}
