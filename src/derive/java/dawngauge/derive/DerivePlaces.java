package dawngauge.derive;

import dawngauge.geo.GreatCircle;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Writes the gazetteer, {@code places.tsv.gz} with its lists {@code states.tsv} and {@code
 * zones.txt}, from the unpacked packages named in {@link NpmPackage}. The same packages give the
 * same bytes.
 */
public final class DerivePlaces {

  /** Places of one name and state nearer than this are one place, entered twice. */
  private static final double SAME_PLACE_METERS = 15_000;

  private static final String HEADER =
      "# name\tother spelling\tlatitude 1e-4 deg\tlongitude 1e-4 deg\trow in states.tsv\tpopulation"
          + "\televation m\trow in zones.txt";

  private DerivePlaces() {}

  /**
   * Derives.
   *
   * @param arguments the folder that holds the unpacked packages, each under its name, and the
   *     folder to write to
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 2) {
      throw new IllegalArgumentException("arguments: FOLDER-OF-PACKAGES TARGET-FOLDER");
    }
    Path from = Path.of(arguments[0]);
    Path to = Path.of(arguments[1]);
    NpmPackage cities = NpmPackage.CITIES_500;
    NpmPackage names = NpmPackage.DIVISION_NAMES;
    cities.checkVersion(from);
    names.checkVersion(from);

    List<SourceRow> rows = ZoneCorrections.applied(withoutDoubles(wanted(cities.file(from))));
    Divisions divisions = Divisions.of(rows, names.file(from));
    List<String> zones = rows.stream().map(SourceRow::zone).distinct().sorted().toList();

    Bytes.writeText(to.resolve("states.tsv"), "# country\tpostal code\tname", divisions.lines());
    Bytes.writeText(to.resolve("zones.txt"), "# time zones", zones);
    Bytes.writePacked(to.resolve("places.tsv.gz"), HEADER, lines(rows, divisions, zones));
    Files.writeString(to.resolve("SOURCES.md"), sources(rows));
    System.out.println(rows.size() + " places");
  }

  private static List<SourceRow> wanted(Path file) throws IOException {
    try (BufferedReader reader = Files.newBufferedReader(file)) {
      return reader.lines().map(SourceRow::of).filter(SourceRow::isWanted).toList();
    }
  }

  /** Keeps the most populous of each place, and sorts. */
  private static List<SourceRow> withoutDoubles(List<SourceRow> rows) {
    Comparator<SourceRow> order =
        Comparator.comparing(SourceRow::label)
            .thenComparing(Comparator.comparingInt(SourceRow::population).reversed())
            .thenComparing(SourceRow::latitude)
            .thenComparing(SourceRow::longitude);
    Map<String, List<SourceRow>> kept = new HashMap<>();
    List<SourceRow> all = new ArrayList<>();
    for (SourceRow row : rows.stream().sorted(order).toList()) {
      List<SourceRow> namesakes = kept.computeIfAbsent(row.label(), label -> new ArrayList<>());
      if (namesakes.stream().noneMatch(other -> isSamePlace(row, other))) {
        namesakes.add(row);
        all.add(row);
      }
    }
    return all;
  }

  private static boolean isSamePlace(SourceRow a, SourceRow b) {
    return GreatCircle.between(a.coordinate(), b.coordinate()).meters() < SAME_PLACE_METERS;
  }

  private static List<String> lines(List<SourceRow> rows, Divisions divisions, List<String> zones) {
    return rows.stream()
        .map(
            row ->
                String.join(
                    "\t",
                    row.name(),
                    row.asciiName(),
                    String.valueOf(row.latitude()),
                    String.valueOf(row.longitude()),
                    String.valueOf(divisions.indexOf(row)),
                    String.valueOf(row.population()),
                    String.valueOf(row.elevation()),
                    String.valueOf(zones.indexOf(row.zone()))))
        .toList();
  }

  private static String sources(List<SourceRow> rows) {
    SortedSet<String> days = new TreeSet<>(rows.stream().map(SourceRow::modified).toList());
    StringBuilder text = new StringBuilder();
    text.append("# Sources of the gazetteer\n\n");
    text.append("`places.tsv.gz`, `states.tsv` and `zones.txt` are derived from GeoNames ");
    text.append("(geonames.org), licensed under CC BY 4.0, by way of the npm packages\n\n");
    NpmPackage.PLACES.stream().forEach(source -> text.append(source.line()));
    text.append("\nLatest change of a place in them: ").append(days.last()).append(".\n");
    text.append(
        "Changed: selected, rounded, joined, some zones and elevations corrected; see docs/data.md.\n");
    return text.toString();
  }
}
