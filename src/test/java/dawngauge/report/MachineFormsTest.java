package dawngauge.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dawngauge.advice.Advice;
import dawngauge.planner.Plan;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** CSV and JSON hold the forecast's figures in both unit systems. */
class MachineFormsTest {
  /** Pascal in a psi and kilogram in a pound, NIST Special Publication 811 (2008), appendix B.8. */
  private static final double KPA_OF_PSI = 6.894757;

  private static final double KG_OF_LB = 0.45359237;

  @Test
  void everyRowOfTheCsvHasEveryColumn() {
    for (Map.Entry<String, Trip> each : Plans.all().entrySet()) {
      Advice advice = Plans.plan(each.getValue()).advice();
      List<List<String>> rows = rows(CsvTable.of(each.getValue(), advice, null));
      int tires =
          advice == null ? 0 : advice.stops().stream().mapToInt(s -> s.tires().size()).sum();
      assertThat(rows).as(each.getKey()).hasSize(1 + tires);
      assertThat(rows).allMatch(row -> row.size() == rows.get(0).size());
    }
  }

  @Test
  void aPlaceWithCommaAndQuoteSurvives() {
    String place = "Fort \"Q\", south gate";
    Trip trip = Plans.named(place.replace("\"", "\\\""));
    List<List<String>> rows = rows(CsvTable.of(trip, Plans.plan(trip).advice(), null));
    assertThat(rows.stream().filter(row -> row.get(0).equals("2")))
        .hasSize(10)
        .allMatch(row -> row.get(1).equals(place));
  }

  /** The convention is OWASP's, "CSV Injection": an apostrophe before = + - @ tab and return. */
  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1+1", "-1+cmd", "@SUM(A1)", "\uFF1D1+1"})
  void whatASpreadsheetWouldRunIsTextAndRawIsAsItWas(String place) {
    Trip trip = Plans.named(place);
    Advice advice = Plans.plan(trip).advice();
    List<List<String>> safe = rows(CsvTable.of(trip, advice, null));
    List<List<String>> raw = rows(CsvTable.raw(trip, advice, null));
    assertThat(safe.get(11).get(1)).isEqualTo("'" + place);
    assertThat(raw.get(11).get(1)).isEqualTo(place);
    assertThat(CsvTable.tabbed(trip, advice)).contains("\t'" + place + "\t");
    // Figures below zero stay figures.
    assertThat(SheetCells.safe("-12.5")).isEqualTo("-12.5");
    for (int row = 1; row < safe.size(); row++) {
      assertThat(safe.get(row).subList(20, 30)).isEqualTo(raw.get(row).subList(20, 30));
    }
  }

  @Test
  void charactersThatCannotBeSeenAreShown() {
    assertThat(SheetCells.safe("a\u001Bb\u007Fc")).isEqualTo("a\u241Bb\u2421c");
    assertThat(SheetCells.safe("a\u202Eb")).isEqualTo("a\\u202Eb");
    assertThat(SheetCells.safe("\t=1")).isEqualTo("'\u2409=1");
    assertThat(SheetCells.safe("Łódź 東京")).isEqualTo("Łódź 東京");
  }

  @Test
  void bothUnitsAreOneFigure() {
    List<List<String>> rows =
        rows(CsvTable.of(Plans.demo(), Plans.plan(Plans.demo()).advice(), null));
    List<String> head = rows.get(0);
    int compared = 0;
    for (List<String> row : rows.subList(1, rows.size())) {
      for (int i = 0; i + 1 < row.size(); i++) {
        double factor =
            head.get(i).endsWith("_kPa") ? KPA_OF_PSI : head.get(i).endsWith("_kg") ? KG_OF_LB : 0;
        if (factor != 0 && !row.get(i).isEmpty()) {
          assertThat(Double.parseDouble(row.get(i)))
              .isCloseTo(Double.parseDouble(row.get(i + 1)) * factor, Offset.offset(0.005));
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(1000);
  }

  @Test
  void theJsonHoldsTheSameFiguresAsTheCsv() throws JsonProcessingException {
    Trip trip = Plans.demo();
    Plan planned = Plans.plan(trip);
    JsonNode json = json(trip, planned);
    List<List<String>> rows = rows(CsvTable.of(trip, planned.advice(), null));
    int row = 1;
    for (JsonNode stop : json.get("stops")) {
      for (JsonNode tire : stop.get("tires")) {
        for (int i = 0; i < rows.get(0).size(); i++) {
          String[] name = rows.get(0).get(i).split("_", -1);
          JsonNode holder = tire.has(name[0]) ? tire : stop;
          JsonNode value =
              name[0].equals("stop")
                  ? stop.get("number")
                  : Objects.requireNonNull(holder.get(name[0]));
          String text =
              value.isNull() ? "" : name.length == 2 ? value.get(name[1]).asText() : value.asText();
          String cell = rows.get(row).get(i);
          if (name.length == 2 && !cell.isEmpty()) {
            assertThat(Double.parseDouble(text)).isEqualTo(Double.parseDouble(cell));
          } else {
            assertThat(text).as("%s", rows.get(0).get(i)).isEqualTo(cell);
          }
        }
        row++;
      }
    }
    assertThat(row).isEqualTo(rows.size());
  }

  @Test
  void theJsonNamesEveryStopAndEveryProblem() throws JsonProcessingException {
    for (Map.Entry<String, Trip> each : Plans.all().entrySet()) {
      Plan planned = Plans.plan(each.getValue());
      JsonNode json = json(each.getValue(), planned);
      assertThat(json.get("stops").size() + json.get("stopsWithoutTime").size())
          .as(each.getKey())
          .isEqualTo(each.getValue().route().stops().size());
      assertThat(json.get("problems").size()).isEqualTo(planned.problems().size());
      assertThat(json.get("cautions").size()).isPositive();
    }
    assertThat(
            json(Plans.full(), Plans.plan(Plans.full())).at("/stopsWithoutTime/0/place").asText())
        .isEqualTo("Lamar CO");
  }

  private static JsonNode json(Trip trip, Plan planned) throws JsonProcessingException {
    return new ObjectMapper()
        .readTree(
            JsonResult.of(
                trip,
                planned.advice(),
                planned.problems(),
                planned.fitness(),
                UnitSystem.US,
                null));
  }

  /** Reads RFC 4180. */
  private static List<List<String>> rows(String text) {
    List<List<String>> rows = new ArrayList<>();
    List<String> row = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (quoted && c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
        cell.append('"');
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && (c == ',' || c == '\r')) {
        row.add(cell.toString());
        cell.setLength(0);
        if (c == '\r') {
          rows.add(row);
          row = new ArrayList<>();
          i++;
        }
      } else {
        cell.append(c);
      }
    }
    assertThat(quoted || cell.length() > 0 || !row.isEmpty()).isFalse();
    return rows;
  }
}
