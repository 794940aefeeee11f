package dawngauge.derive;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.zip.GZIPInputStream;

/**
 * Packs typical air, {@code normals.gz} and {@code spread.gz}, from the tables {@code
 * typical-air.tsv.gz} and {@code typical-spread.tsv.gz} of {@code docs/data.md}. The same tables
 * give the same bytes.
 */
public final class DeriveTypicalAir {

  private DeriveTypicalAir() {}

  /**
   * Packs.
   *
   * @param arguments the folder that holds the tables, and the folder to write to
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 2) {
      throw new IllegalArgumentException("arguments: FOLDER-OF-TABLES TARGET-FOLDER");
    }
    Path from = Path.of(arguments[0]);
    Path to = Path.of(arguments[1]);
    List<NormalRow> normals = WinterRanges.applied(rows(from.resolve("typical-air.tsv.gz")));
    PackedNumbers packed = places(normals);
    packed.addAll(column(normals, NormalRow::elevation));
    months(packed, normals);
    packed.write(to.resolve("normals.gz"));
    List<NormalRow> spreads = rows(from.resolve("typical-spread.tsv.gz"));
    PackedNumbers spread = places(spreads);
    months(spread, spreads);
    spread.write(to.resolve("spread.gz"));
    System.out.println(normals.size() + " normals, " + spreads.size() + " spreads");
  }

  /** The rows of a table, from south to north. */
  private static List<NormalRow> rows(Path file) throws IOException {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                new GZIPInputStream(Files.newInputStream(file)), StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(line -> !line.startsWith("#"))
          .map(NormalRow::of)
          .sorted(
              Comparator.comparingInt(NormalRow::latitude).thenComparingInt(NormalRow::longitude))
          .toList();
    }
  }

  private static PackedNumbers places(List<NormalRow> rows) {
    PackedNumbers packed = new PackedNumbers();
    packed.add(rows.size());
    packed.addSteps(column(rows, NormalRow::latitude));
    packed.addSteps(column(rows, NormalRow::longitude));
    return packed;
  }

  /** January's low, the steps from month to month, then the same of the range. */
  private static void months(PackedNumbers packed, List<NormalRow> rows) {
    packed.addAll(column(rows, row -> row.low().get(0)));
    for (int month = 1; month < 12; month++) {
      int here = month;
      packed.addAll(column(rows, row -> row.low().get(here) - row.low().get(here - 1)));
    }
    packed.addAll(column(rows, row -> row.range(0)));
    for (int month = 1; month < 12; month++) {
      int here = month;
      packed.addAll(column(rows, row -> row.range(here) - row.range(here - 1)));
    }
  }

  private static int[] column(List<NormalRow> rows, ToIntFunction<NormalRow> figure) {
    return rows.stream().mapToInt(figure).toArray();
  }
}
