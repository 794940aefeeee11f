package dawngauge.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import dawngauge.ledger.ReminderLine;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** One thing has one name and one figure in all JSON documents. */
class JsonContractTest {

  @Test
  void remindersHoldTheForecastsFigures() {
    int compared = 0;
    for (Map<String, JsonNode> documents : JsonDocuments.all().values()) {
      JsonNode reminders = documents.get("reminders");
      if (reminders == null) {
        continue;
      }
      Map<String, JsonNode> forecast = tires(Objects.requireNonNull(documents.get("forecast")));
      for (JsonNode reminder : reminders.get("reminders")) {
        for (JsonNode tire : reminder.get("tires")) {
          JsonNode same = Objects.requireNonNull(forecast.get(key(reminder, tire)));
          compared += assertSame(tire, same, Set.of("expected", "expectedSigma"));
        }
      }
    }
    assertThat(compared).isGreaterThan(1000);
  }

  @Test
  void aPlanThatIsFollowedHoldsTheForecastsFigures() {
    Map<String, JsonNode> forecast = tires(JsonDocuments.of("followed", "forecast"));
    int compared = 0;
    for (Map.Entry<String, JsonNode> tire :
        tires(JsonDocuments.of("followed", "plan")).entrySet()) {
      JsonNode same = Objects.requireNonNull(forecast.get(tire.getKey()));
      compared +=
          assertSame(
              tire.getValue(),
              same,
              Set.of("expected", "nextStart", "atNextStart", "compressorSeconds"));
    }
    assertThat(compared).isGreaterThan(20);
  }

  @Test
  void aPlanThatIsFollowedExpectsWhatTheRemindersExpect() {
    Map<String, JsonNode> plan = tires(JsonDocuments.of("followed", "plan"));
    int compared = 0;
    for (JsonNode reminder : JsonDocuments.of("followed", "reminders").get("reminders")) {
      for (JsonNode tire : reminder.get("tires")) {
        JsonNode same = plan.get(key(reminder, tire));
        if (same != null) {
          assertThat(tire.at("/expected/psi").asDouble())
              .isCloseTo(same.at("/expected/psi").asDouble(), within(0.1)); // see docs/plan.md
          compared++;
        }
      }
    }
    assertThat(compared).isPositive();
  }

  @Test
  void aPlanNamesTheStopsAndTiresOfTheForecast() {
    int compared = 0;
    for (Map<String, JsonNode> documents : JsonDocuments.all().values()) {
      JsonNode plan = documents.get("plan");
      if (plan == null) {
        continue;
      }
      JsonNode stops = Objects.requireNonNull(documents.get("forecast")).get("stops");
      Map<String, JsonNode> forecast = tires(Objects.requireNonNull(documents.get("forecast")));
      for (JsonNode stop : plan.get("stops")) {
        JsonNode same = stops.get(stop.get("number").asInt() - 1);
        compared += assertSame(stop, same, Set.of("planned", "tires"));
        for (JsonNode tire : stop.get("tires")) {
          JsonNode there = Objects.requireNonNull(forecast.get(key(stop, tire)));
          for (String name : new String[] {"position", "tireId", "aim", "ceiling"}) {
            assertThat(tire.get(name)).isEqualTo(there.get(name));
          }
        }
      }
    }
    assertThat(compared).isGreaterThan(100);
  }

  /** Compares every field of one tire with the same one of another, but for those of its own. */
  static int assertSame(JsonNode tire, JsonNode same, Set<String> own) {
    int compared = 0;
    for (Map.Entry<String, JsonNode> field : tire.properties()) {
      if (!own.contains(field.getKey())) {
        assertThat(field.getValue())
            .as("%s of %s", field.getKey(), tire)
            .isEqualTo(same.get(field.getKey()));
        compared++;
      }
    }
    return compared;
  }

  static Map<String, JsonNode> tires(JsonNode document) {
    Map<String, JsonNode> tires = new HashMap<>();
    for (JsonNode stop : document.get("stops")) {
      stop.get("tires").forEach(tire -> tires.put(key(stop, tire), tire));
    }
    return tires;
  }

  static String key(JsonNode stop, JsonNode tire) {
    return stop.get("number").asInt() + tire.get("tire").asText();
  }

  @Test
  void aTireThatIsOnHoldIsMarkedSoWhereItIsToBeSet() {
    boolean held = false;
    for (JsonNode reminder : JsonDocuments.of("ran low", "reminders").get("reminders")) {
      for (JsonNode tire : reminder.get("tires")) {
        held |= tire.get("mark").asText().equals("hold") && !tire.get("reasons").isEmpty();
      }
    }
    assertThat(held).isTrue();
  }

  /** Before a start the text has what is expected at the check, else what it reads on arrival. */
  @Test
  void remindersExpectWhatTheirTextSays() {
    Pattern line = Pattern.compile("((?:[pt]\\d[a-z]+ ?)+): (\\d+) \\(.*");
    JsonNode reminders = JsonDocuments.of("demo", "reminders").get("reminders");
    List<ReminderLine> texts = JsonDocuments.lines(Plans.demo());
    assertThat(reminders).hasSameSizeAs(texts);
    Set<String> when = new HashSet<>();
    for (int i = 0; i < texts.size(); i++) {
      JsonNode reminder = reminders.get(i);
      assertThat(reminder.get("key").asText()).isEqualTo(texts.get(i).key());
      boolean before = reminder.get("when").asText().equals("before start");
      assertThat(reminder.get("alarmsMinutesBefore")).hasToString(before ? "[15,0]" : "[0]");
      Map<String, Double> psi = new HashMap<>();
      for (JsonNode tire : reminder.get("tires")) {
        String figure = before ? "expected" : "arriveReads";
        psi.put(tire.get("tire").asText(), tire.get(figure).get("psi").asDouble());
      }
      for (Matcher found : texts.get(i).text().lines().map(line::matcher).toList()) {
        if (found.matches()) {
          double lowest = Double.POSITIVE_INFINITY;
          for (String tire : found.group(1).split(" ", -1)) {
            lowest = Math.min(lowest, psi.getOrDefault(tire, Double.NaN));
          }
          assertThat(Math.round(lowest)).isEqualTo(Long.parseLong(found.group(2)));
          when.add(reminder.get("when").asText());
        }
      }
    }
    assertThat(when).containsExactlyInAnyOrder("before start", "on arrival");
  }

  @Test
  void thePartsOfAnAccountAddUp() {
    int accounts = 0;
    for (Map<String, JsonNode> documents : JsonDocuments.all().values()) {
      JsonNode review = documents.get("review");
      if (review == null) {
        continue;
      }
      for (JsonNode tire : review.get("tires")) {
        JsonNode account = tire.get("account");
        if (account.isNull()) {
          continue;
        }
        double sum = 0;
        for (String part : new String[] {"air", "height", "warmUp", "rest"}) {
          sum += account.get(part).get("psi").asDouble();
        }
        for (JsonNode setting : account.get("settings")) {
          sum += setting.get("difference").get("psi").asDouble();
        }
        assertThat(sum).isCloseTo(account.get("difference").get("psi").asDouble(), within(0.004));
        accounts++;
      }
    }
    assertThat(accounts).isGreaterThan(20);
  }

  @Test
  void aTireRolledUnderBetweenTimesOfTheForecast() {
    Set<String> leaves = new HashSet<>();
    Set<String> arrives = new HashSet<>();
    for (JsonNode stop : JsonDocuments.of("ran low", "forecast").get("stops")) {
      leaves.add(stop.get("leave").asText());
      arrives.add(stop.get("arrive").asText());
    }
    int checked = 0;
    for (JsonNode tire : JsonDocuments.of("ran low", "review").get("tires")) {
      for (JsonNode under : tire.get("rolledUnder")) {
        assertThat(leaves).contains(under.get("from").asText());
        assertThat(arrives).contains(under.get("to").asText());
        checked++;
      }
    }
    assertThat(checked).isPositive();
  }
}
