package dawngauge.exchange;

import dawngauge.quantity.Unit;
import dawngauge.testdata.BenchTrip;
import dawngauge.trip.Itinerary;
import dawngauge.trip.TableHead;
import dawngauge.trip.TableLayout;
import dawngauge.trip.TableReadings;
import dawngauge.trip.Trip;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import java.util.Map;

/**
 * Takes a recorder's table of a million rows, beside a plain parse of the same file; both five
 * times in turn, the best of each told. To be run with little memory (-Xmx64m).
 */
public final class MillionRows {

  private MillionRows() {}

  /** Prints both times and their ratio. */
  public static void main(String[] args) throws IOException {
    Trip trip = BenchTrip.of(40, 1);
    Itinerary itinerary = Itinerary.of(trip).get();
    Path file = Files.createTempFile("recorder", ".csv");
    long start = itinerary.visits().get(0).leave().getEpochSecond() - 1800;
    int tires = trip.rig().tires().size();
    try (BufferedWriter out = Files.newBufferedWriter(file)) {
      out.write("time,sensor,kPa\n");
      for (int i = 0; i < 1_000_000; i++) {
        out.write(
            Instant.ofEpochSecond(start + i / 3)
                + ","
                + trip.rig().tires().get(i % tires).id()
                + ","
                + String.format(Locale.ROOT, "%.1f", 600 + i % 50 * 0.3)
                + "\n");
      }
    }
    TableHead head = ReadingsCsv.head(file).get();
    TableLayout layout =
        new TableLayout(
            Map.of(
                TableLayout.Column.TIME, 0,
                TableLayout.Column.TIRE, 1,
                TableLayout.Column.PRESSURE, 2),
            Map.of(),
            itinerary.visits().get(0).zone(),
            Unit.KILOPASCAL,
            Unit.CELSIUS,
            "g",
            true);
    double plain = Double.MAX_VALUE;
    double taken = Double.MAX_VALUE;
    int readings = 0;
    long leftOut = 0;
    for (int round = 0; round < 5; round++) {
      long from = System.nanoTime();
      long fields = 0;
      try (CsvReader<CsvRecord> csv = CsvReader.builder().ofCsvRecord(file)) {
        for (CsvRecord row : csv) {
          fields += row.getFieldCount();
        }
      }
      plain = Math.min(plain, (System.nanoTime() - from) / 1e6 + (fields < 0 ? 1 : 0));
      from = System.nanoTime();
      TableReadings got =
          ReadingsCsv.read(file, head, layout, trip, itinerary, (rows, part) -> true).get();
      taken = Math.min(taken, (System.nanoTime() - from) / 1e6);
      readings = got.events().size();
      leftOut = got.leftOutRows();
    }
    Files.delete(file);
    System.out.printf(
        Locale.ROOT,
        "a million rows: plain parse %.0f ms, taken %.0f ms, ratio %.2f; %d readings, %d left out%n",
        plain,
        taken,
        taken / plain,
        readings,
        leftOut);
  }
}
