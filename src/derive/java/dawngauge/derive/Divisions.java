package dawngauge.derive;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The states, provinces and other first divisions in which the places lie, sorted.
 *
 * @param keys country and GeoNames code, such as "US.KS"
 * @param names by key
 */
record Divisions(List<String> keys, Map<String, String> names) {

  /** Postal codes of the provinces and territories (Canada Post) by GeoNames code. */
  private static final Map<String, String> CANADA =
      Map.ofEntries(
          Map.entry("01", "AB"),
          Map.entry("02", "BC"),
          Map.entry("03", "MB"),
          Map.entry("04", "NB"),
          Map.entry("05", "NL"),
          Map.entry("07", "NS"),
          Map.entry("08", "ON"),
          Map.entry("09", "PE"),
          Map.entry("10", "QC"),
          Map.entry("11", "SK"),
          Map.entry("12", "YT"),
          Map.entry("13", "NT"),
          Map.entry("14", "NU"));

  /** The divisions of the places, named by the file. */
  static Divisions of(List<SourceRow> rows, Path file) throws IOException {
    Map<String, String> names = new HashMap<>();
    for (JsonNode entry : new JsonMapper().readTree(file.toFile())) {
      names.put(entry.path("code").asText(), entry.path("name").asText());
    }
    return new Divisions(
        rows.stream().map(SourceRow::division).distinct().sorted().toList(), names);
  }

  int indexOf(SourceRow row) {
    return keys.indexOf(row.division());
  }

  /** Country, postal code if it has one, name if it is known. */
  List<String> lines() {
    return keys.stream().map(this::line).toList();
  }

  private String line(String key) {
    String country = key.substring(0, 2);
    String code = key.substring(3);
    String postal =
        switch (country) {
          case "US" -> code;
          case "CA" -> CANADA.getOrDefault(code, "");
          default -> "";
        };
    return country + "\t" + postal + "\t" + names.getOrDefault(key, "");
  }
}
