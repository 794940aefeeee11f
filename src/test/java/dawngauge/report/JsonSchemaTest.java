package dawngauge.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import dawngauge.advice.AdjustmentPlan;
import dawngauge.advice.Mark;
import dawngauge.advice.Reminder;
import dawngauge.fitness.Severity;
import dawngauge.review.LossFit;
import dawngauge.review.RecordingError;
import dawngauge.rules.Loads;
import dawngauge.tire.Capacity;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Stop;
import dawngauge.weights.RatedLoad;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The JSON documents and their schemas say the same. */
class JsonSchemaTest {
  private static final List<String> COMMANDS =
      List.of(
          "forecast", "plan", "fitness", "weights", "reminders", "review", "reach", "breakdown");

  /** So many elements of a list are enough to try what breaks one. */
  private static final int FEW = 2;

  @Test
  void everyDocumentFits() {
    Set<String> checked = new TreeSet<>();
    JsonDocuments.all()
        .forEach(
            (trip, documents) ->
                documents.forEach(
                    (command, document) -> {
                      assertThat(JsonSchemas.schema(command).validate(document))
                          .as("%s of %s", command, trip)
                          .isEmpty();
                      checked.add(command);
                    }));
    assertThat(checked).containsExactlyInAnyOrderElementsOf(COMMANDS);
  }

  @Test
  void everyFieldOfTheSchemasOccurs() {
    Set<String> declared = new TreeSet<>(JsonSchemas.declared(JsonSchemas.file("common")));
    COMMANDS.forEach(command -> declared.addAll(JsonSchemas.declared(JsonSchemas.file(command))));
    assertThat(declared).hasSizeGreaterThan(150);
    Set<String> used = new TreeSet<>();
    for (Map<String, JsonNode> documents : JsonDocuments.all().values()) {
      documents.forEach(
          (command, document) ->
              used.addAll(JsonSchemas.used(JsonSchemas.file(command), document)));
    }
    assertThat(declared).containsAll(used);
    declared.removeAll(used);
    assertThat(declared).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "forecast",
        "plan",
        "fitness",
        "weights",
        "reminders",
        "review",
        "reach",
        "breakdown"
      })
  void aDocumentThatBreaksThePromiseDoesNotFit(String command) {
    Schema schema = JsonSchemas.schema(command);
    JsonNode document = JsonDocuments.of("ran low", command);
    int fields = forEachField(document, (object, name) -> object.remove(name), schema, "without");
    assertThat(fields).isGreaterThan(15);
    forEachField(
        document, (object, name) -> object.set("unheardOf", object.get(name)), schema, "beside");
    forEachField(
        document,
        (object, name) -> object.set(name + "2", object.remove(name)),
        schema,
        "with another name for");
  }

  /** Does something to each field of a document in turn; none of it may fit. */
  private static int forEachField(
      JsonNode document, BiConsumer<ObjectNode, String> change, Schema schema, String how) {
    JsonNode whole = few(document.deepCopy());
    assertThat(schema.validate(whole)).isEmpty();
    int count = fields(whole).size();
    for (int i = 0; i < count; i++) {
      JsonNode root = whole.deepCopy();
      Field field = fields(root).get(i);
      change.accept(field.object, field.name);
      assertThat(schema.validate(root)).as("%s %s", how, field.name).isNotEmpty();
    }
    return count;
  }

  private record Field(ObjectNode object, String name) {}

  private static List<Field> fields(JsonNode node) {
    List<Field> fields = new ArrayList<>();
    if (node instanceof ObjectNode object) {
      object.fieldNames().forEachRemaining(name -> fields.add(new Field(object, name)));
    }
    node.forEach(child -> fields.addAll(fields(child)));
    return fields;
  }

  private static JsonNode few(JsonNode node) {
    if (node instanceof ArrayNode array) {
      while (array.size() > FEW) {
        array.remove(FEW);
      }
    }
    node.forEach(JsonSchemaTest::few);
    return node;
  }

  @Test
  void theWordsAreThoseOfTheProgram() {
    assertWords("common", "/$defs/mark", Mark.values(), Mark::word);
    assertWords("common", "/$defs/stopKind", Stop.Kind.values(), Stop.Kind::word);
    assertWords("common", "/$defs/readingState", ReadingState.values(), ReadingState::word);
    assertWords(
        "common", "/$defs/fitness/items/properties/severity", Severity.values(), Severity::word);
    String tire = "/$defs/tire/properties/";
    assertWords("forecast", tire + "loadBasis", Loads.Basis.values(), Loads.Basis::word);
    assertWords("forecast", tire + "capacityBasis", Capacity.Basis.values(), Capacity.Basis::word);
    assertWords(
        "plan",
        "/properties/clashes/items/properties/limit",
        AdjustmentPlan.Limit.values(),
        JsonPage::word);
    assertWords(
        "reminders",
        "/$defs/reminder/properties/occasions/items",
        Reminder.Why.values(),
        JsonPage::word);
    String load = "/properties/expectedLoads/items/properties/";
    assertWords("weights", load + "bearer", RatedLoad.Kind.values(), RatedLoad.Kind::word);
    assertWords("weights", load + "verdict", RatedLoad.Verdict.values(), RatedLoad.Verdict::word);
    assertWords("review", tire + "kind", LossFit.Kind.values(), JsonPage::word);
    assertWords(
        "review", "/$defs/slip/properties/kind", RecordingError.Kind.values(), JsonPage::word);
  }

  /** The words of a choice, null left out. */
  private static <E> void assertWords(
      String schema, String place, E[] constants, Function<? super E, String> word) {
    List<String> words = new ArrayList<>();
    JsonSchemas.tree(JsonSchemas.file(schema))
        .at(place + "/enum")
        .forEach(each -> words.add(each.isNull() ? "" : each.asText()));
    words.remove("");
    assertThat(words)
        .as("%s%s", schema, place)
        .isEqualTo(Arrays.stream(constants).map(word).toList());
  }
}
