package dawngauge.exchange;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Itinerary;
import dawngauge.trip.TableHead;
import dawngauge.trip.TableLayout;
import dawngauge.trip.TableLayout.Column;
import dawngauge.trip.TableReadings;
import dawngauge.trip.Trip;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Readings from tables (RFC 4180, also with semicolons, tabs or bars): our own header, or any table
 * whose columns are named once. Rows that are not sound are left out and told with their line; the
 * rest is taken. A table of any length is read row by row.
 */
public final class ReadingsCsv {

  private static final char[] SEPARATORS = {',', ';', '\t', '|'};

  /** So much of a file tells how it is written, in bytes. */
  private static final int HEAD = 1 << 16;

  private static final int SAMPLE = 4;

  /** After so many rows it is told how far the reading is. */
  private static final int TELL = 1 << 14;

  /** Shorter rows are longer in memory than in the file, in bytes; for the progress alone. */
  private static final double ROW_BYTES = 40;

  private ReadingsCsv() {}

  /** How a file begins: its separator is the one that gives most columns alike in all rows. */
  public static Outcome<TableHead> head(Path file) {
    String text;
    try (var in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(HEAD);
      text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPLACE)
              .decode(ByteBuffer.wrap(bytes))
              .toString();
    } catch (IOException unreadable) {
      return Outcome.failed(Problem.of(ProblemCode.NO_READINGS_TABLE, "", "it cannot be opened"));
    }
    String whole = text.startsWith("\uFEFF") ? text.substring(1) : text;
    int end = whole.lastIndexOf('\n');
    String lines = whole.length() < HEAD / 2 || end < 0 ? whole : whole.substring(0, end);
    TableHead best = null;
    for (char separator : SEPARATORS) {
      TableHead head = head(lines, separator);
      if (head != null && (best == null || head.columns().size() > best.columns().size())) {
        best = head;
      }
    }
    return best == null || best.columns().size() < 2
        ? Outcome.failed(
            Problem.of(
                ProblemCode.NO_READINGS_TABLE,
                "",
                "it has no row of column names with commas, semicolons, tabs or bars between"))
        : Outcome.of(best);
  }

  /** How a text begins with one separator; null where it is no table by it. */
  private static @Nullable TableHead head(String text, char separator) {
    List<List<String>> rows = new ArrayList<>();
    try (CsvReader<CsvRecord> csv =
        CsvReader.builder()
            .fieldSeparator(separator)
            .skipEmptyLines(true)
            .ofCsvRecord(new StringReader(text))) {
      for (CsvRecord row : csv) {
        rows.add(row.getFields());
        if (rows.size() > SAMPLE) {
          break;
        }
      }
    } catch (IOException | CsvParseException | UncheckedIOException notSo) {
      if (rows.isEmpty()) {
        return null;
      }
    }
    return rows.isEmpty()
        ? null
        : new TableHead(separator, rows.get(0), rows.subList(1, rows.size()));
  }

  /**
   * Reads a table.
   *
   * @param head how it begins
   * @param layout what stands in which column
   * @param trip whose tires and gauges are meant
   * @param itinerary its times
   * @param progress is told how far it is
   */
  public static Outcome<TableReadings> read(
      Path file,
      TableHead head,
      TableLayout layout,
      Trip trip,
      Itinerary itinerary,
      TableReadings.Progress progress) {
    boolean mapped =
        layout.columns().containsKey(Column.TIME)
            && (!layout.tires().isEmpty()
                || (layout.columns().containsKey(Column.TIRE)
                    && layout.columns().containsKey(Column.PRESSURE)));
    if (!mapped) {
      return Outcome.failed(
          Problem.of(
              ProblemCode.NO_READINGS_TABLE,
              "",
              "it is not said which columns are time, tire and pressure"));
    }
    CsvRows rows = new CsvRows(layout, trip, itinerary);
    boolean whole = true;
    try (Reader in = lenient(file);
        CsvReader<CsvRecord> csv =
            CsvReader.builder()
                .fieldSeparator(head.separator())
                .skipEmptyLines(true)
                .ofCsvRecord(in)) {
      double size = Math.max(1, Files.size(file));
      boolean header = true;
      for (CsvRecord row : csv) {
        if (header) {
          header = false;
          continue;
        }
        rows.take(row);
        if (rows.count() % TELL == 0
            && !progress.goesOn(rows.count(), Math.min(1, rows.count() * ROW_BYTES / size))) {
          whole = false;
          break;
        }
      }
    } catch (CsvParseException | UncheckedIOException broken) {
      rows.broken(String.valueOf(broken.getMessage()));
      whole = false;
    } catch (IOException unreadable) {
      return Outcome.failed(Problem.of(ProblemCode.NO_READINGS_TABLE, "", "it cannot be read"));
    }
    return Outcome.of(rows.result(whole));
  }

  /** Bytes that are no UTF-8 are read as a mark of that, so that the other rows can be taken. */
  private static Reader lenient(Path file) throws IOException {
    return new InputStreamReader(
        Files.newInputStream(file),
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPLACE)
            .onUnmappableCharacter(CodingErrorAction.REPLACE));
  }
}
