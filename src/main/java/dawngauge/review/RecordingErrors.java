package dawngauge.review;

import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireSetting;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.trip.WheelPosition;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Finds cold readings that were noted wrongly, and takes them out of the row of each tire. */
final class RecordingErrors {

  /** Beyond so many deviations no reading of a sound tire lies; ours. */
  private static final double FAR = 5;

  /** Within so many it is what another tire, or another unit, should read; ours. */
  private static final double NEAR = 2.5;

  /** In another unit it may be off by this part too: crews round to whole tenths of a bar. */
  private static final double UNIT_PART = 0.03;

  private static final double[] FACTORS = factors();

  private RecordingErrors() {}

  private static double[] factors() {
    double bar = GaugePressure.of(1, Unit.BAR).in(Unit.PSI);
    double kilopascal = GaugePressure.of(1, Unit.PSI).in(Unit.KILOPASCAL);
    return new double[] {bar, 1 / bar, kilopascal, 1 / kilopascal, 100, 0.01};
  }

  /** The cold readings of a tire, by the stop of each. */
  static final class Row {
    final WheelPosition position;
    final Map<Integer, ReadingCheck> cold;

    /** Part of its air lost up to each. */
    final Map<Integer, Double> lostAt;

    private final List<TireSetting> made;
    private final Map<ReadingCheck, Integer> visitOf = new HashMap<>();

    /** Lost up to its last good reading. */
    private double good = Double.NaN;

    private @Nullable Instant slipped;
    private double slip;

    Row(
        WheelPosition position,
        Map<Integer, ReadingCheck> cold,
        Map<Integer, Double> lostAt,
        List<TireSetting> made) {
      this.position = position;
      this.cold = cold;
      this.lostAt = lostAt;
      this.made = made;
      cold.forEach((visit, check) -> visitOf.put(check, visit));
    }

    private double lost(int visit) {
      return lostAt.getOrDefault(visit, 0.0);
    }

    /** Air was set after a slip: what the slip made is not undone by the next reading. */
    private void settle(int visit, ReadingCheck check) {
      Instant since = slipped;
      if (since == null) {
        return;
      }
      Instant now = check.reading().time().instant();
      boolean set =
          made.stream()
              .map(setting -> setting.adjustment().time().instant())
              .anyMatch(time -> time.isAfter(since) && time.isBefore(now));
      if (set) {
        double off = slip;
        lostAt.entrySet().stream()
            .filter(entry -> entry.getKey() >= visit)
            .forEach(entry -> entry.setValue(entry.getValue() - off));
      }
      slipped = null;
    }

    /** Whether the next reading is again what it should be by those before a round. */
    private boolean isBackAfter(int visit, double sigma) {
      for (Map.Entry<Integer, ReadingCheck> entry : new TreeMap<>(cold).entrySet()) {
        if (entry.getKey() > visit) {
          ReadingCheck check = entry.getValue();
          double absolute = check.reading().pressure().value().pascals() + check.airPressure();
          return Math.abs(lost(entry.getKey()) - good) * absolute < NEAR * sigma;
        }
      }
      return false;
    }

    private void drop(int visit, ReadingCheck check) {
      slip = lost(visit) - good;
      slipped = check.reading().time().instant();
    }
  }

  /** What a tire should have read at a round, and what it did. */
  private record Read(Row row, ReadingCheck check, double shown, double expected, double sigma) {

    boolean isFar() {
      return Math.abs(shown - expected) > FAR * sigma;
    }

    boolean isOf(Read other) {
      return Math.abs(shown - other.expected) < NEAR * Math.hypot(sigma, other.sigma);
    }

    boolean isOtherUnit() {
      for (double factor : FACTORS) {
        double room = Math.max(NEAR * sigma, UNIT_PART * expected);
        if (Math.abs(shown * factor - expected) < room) {
          return true;
        }
      }
      return false;
    }
  }

  /** Takes the slips out of all rows, round by round. */
  static List<RecordingError> takeOut(List<Row> rows) {
    TreeSet<Integer> visits = new TreeSet<>();
    rows.forEach(row -> visits.addAll(row.cold.keySet()));
    List<RecordingError> slips = new ArrayList<>();
    for (int visit : visits) {
      Map<Row, Read> reads = new HashMap<>();
      List<Row> inOrder = new ArrayList<>();
      for (Row row : rows) {
        ReadingCheck check = row.cold.get(visit);
        if (check != null) {
          row.settle(visit, check);
          reads.put(row, read(row, visit, check));
          inOrder.add(row);
        }
      }
      Map<Row, RecordingError> found = found(visit, inOrder, reads);
      for (Row row : inOrder) {
        ReadingCheck check = row.cold.get(visit);
        RecordingError slip = found.get(row);
        if (slip == null || check == null) {
          row.good = row.lost(visit);
        } else {
          row.drop(visit, check);
          row.cold.remove(visit);
          slips.add(slip);
        }
      }
    }
    rows.forEach(row -> turnRound(row, slips));
    for (Row row : rows) {
      row.lostAt.keySet().retainAll(new TreeMap<>(row.cold).keySet());
    }
    return slips;
  }

  /** Where every later reading seems a slip against the first, the first one is it. */
  private static void turnRound(Row row, List<RecordingError> slips) {
    List<RecordingError> later =
        slips.stream().filter(slip -> slip.position().equals(row.position)).toList();
    if (row.cold.size() != 1 || later.size() < 2) {
      return;
    }
    Map.Entry<Integer, ReadingCheck> first = row.cold.entrySet().iterator().next();
    ReadingCheck check = first.getValue();
    slips.removeAll(later);
    row.cold.clear();
    double second = Double.NaN;
    for (RecordingError slip : later) {
      int visit = row.visitOf.getOrDefault(slip.check(), -1);
      row.cold.put(visit, slip.check());
      second = Double.isNaN(second) ? row.lost(visit) : second;
    }
    double absolute = check.reading().pressure().value().pascals() + check.airPressure();
    double expected = absolute * Math.exp(row.lost(first.getKey()) - second) - check.airPressure();
    RecordingError like = later.get(0);
    slips.add(new RecordingError(row.position, check, like.kind(), expected, like.other()));
    double start = second;
    row.lostAt.entrySet().forEach(entry -> entry.setValue(entry.getValue() - start));
  }

  private static Read read(Row row, int visit, ReadingCheck check) {
    double shown = check.reading().pressure().value().pascals();
    double since = Double.isNaN(row.good) ? 0 : row.lost(visit) - row.good;
    double expected = (shown + check.airPressure()) * Math.exp(since) - check.airPressure();
    double air = check.airSigma() * (expected + check.airPressure()) / check.airKelvins();
    return new Read(
        row, check, shown, expected, Math.sqrt(2) * Math.hypot(check.repeatSigma(), air));
  }

  private static Map<Row, RecordingError> found(int visit, List<Row> rows, Map<Row, Read> reads) {
    Map<Row, RecordingError> found = new HashMap<>();
    for (Row row : rows) {
      Read read = reads.get(row);
      if (read == null || !read.isFar() || found.containsKey(row)) {
        continue;
      }
      if (read.isOtherUnit()) {
        found.put(row, slip(read, RecordingError.Kind.UNIT, null));
        continue;
      }
      for (Row beside : rows) {
        Read other = reads.get(beside);
        if (other != null
            && beside != row
            && !found.containsKey(beside)
            && other.isFar()
            && read.isOf(other)
            && other.isOf(read)) {
          found.put(row, slip(read, RecordingError.Kind.TIRE, beside.position));
          found.put(beside, slip(other, RecordingError.Kind.TIRE, row.position));
          break;
        }
      }
      if (!found.containsKey(row) && row.isBackAfter(visit, read.sigma)) {
        found.put(row, slip(read, RecordingError.Kind.ALONE, null));
      }
    }
    return found;
  }

  private static RecordingError slip(
      Read read, RecordingError.Kind kind, @Nullable WheelPosition other) {
    return new RecordingError(read.row.position, read.check, kind, read.expected, other);
  }
}
