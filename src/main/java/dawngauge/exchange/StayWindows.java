package dawngauge.exchange;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Median;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEdits;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Remarks;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What a recorder showed after each arrival and before each departure: the median of its rows then,
 * one reading a tire. A warm reading is of the ten minutes after arriving, a cold one of the twenty
 * before leaving where the rig stood three hours. So a log of any length becomes a few readings.
 */
final class StayWindows {

  private static final long AFTER_ARRIVAL = 600;
  private static final long BEFORE_LEAVING = 1200;
  private static final long COLD = ReadingState.COLD_AFTER.toSeconds();

  /** Rows of a tire that one median rests on at the most; ours. */
  private static final int MOST_ROWS = 2000;

  private record Window(Itinerary.Visit visit, long from, long to, ReadingState state) {}

  /** The rows of one tire in one window. */
  private static final class Rows {
    private final double[] pascals = new double[MOST_ROWS];
    private int count;
    private long seconds;

    void add(long time, double pressure) {
      if (count < MOST_ROWS) {
        pascals[count++] = pressure;
        seconds += time;
      }
    }

    double median() {
      return Median.of(Arrays.copyOf(pascals, count));
    }
  }

  private final List<Window> windows = new ArrayList<>();
  private final List<Map<String, Rows>> rows = new ArrayList<>();
  private int last = -1;
  private long from = Long.MAX_VALUE;
  private long to = Long.MIN_VALUE;

  StayWindows(Itinerary itinerary) {
    for (Itinerary.Visit visit : itinerary.visits()) {
      long arrive = visit.arrive().getEpochSecond();
      long leave = visit.leave().getEpochSecond();
      boolean first = visit.index() == 0;
      if (!first) {
        add(
            visit,
            arrive,
            Math.min(arrive + AFTER_ARRIVAL, Math.max(leave, arrive + 60)),
            ReadingState.WARM);
      }
      if (first || leave - arrive >= COLD) {
        add(visit, leave - BEFORE_LEAVING, leave, ReadingState.COLD);
      }
    }
  }

  private void add(Itinerary.Visit visit, long from, long to, ReadingState state) {
    windows.add(new Window(visit, from, to, state));
    rows.add(new LinkedHashMap<>());
  }

  /** Takes a row; whether it lies in a window. */
  boolean take(long seconds, String tire, double pascals) {
    if (seconds < from || seconds >= to) {
      look(seconds);
    }
    if (last < 0) {
      return false;
    }
    rows.get(last).computeIfAbsent(tire, id -> new Rows()).add(seconds, pascals);
    return true;
  }

  /** Finds the window of a time, or how long there is none. */
  private void look(long seconds) {
    last = -1;
    from = Long.MIN_VALUE;
    to = Long.MAX_VALUE;
    for (int i = 0; i < windows.size(); i++) {
      Window window = windows.get(i);
      if (window.to < seconds) {
        from = Math.max(from, window.to + 1);
      } else if (window.from > seconds) {
        to = Math.min(to, window.from);
      } else if (last < 0) {
        last = i;
        from = Math.max(from, window.from);
        to = Math.min(to, window.to + 1);
      }
    }
  }

  /** The readings. */
  List<LogEvent> readings(Unit unit, String gauge) {
    List<LogEvent> readings = new ArrayList<>();
    for (int i = 0; i < windows.size(); i++) {
      Window window = windows.get(i);
      rows.get(i)
          .forEach(
              (tire, taken) -> {
                double number = new GaugePressure(taken.median()).in(unit);
                String text =
                    String.format(Locale.ROOT, unit == Unit.KILOPASCAL ? "%.1f" : "%.2f", number);
                Instant time = Instant.ofEpochSecond(taken.seconds / taken.count);
                readings.add(
                    new LogEvent.Reading(
                        LogEdits.at(time, window.visit.zone()),
                        tire,
                        Entered.of(QuantityKind.GAUGE_PRESSURE, text + " " + unit.symbol()),
                        gauge,
                        window.state,
                        null,
                        null,
                        Remarks.NONE.withNote("median of " + taken.count + " rows of a recorder")));
              });
    }
    return readings;
  }
}
