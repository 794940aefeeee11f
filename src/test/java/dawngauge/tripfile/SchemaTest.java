package dawngauge.tripfile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The schema and the reader know the same fields, and ask for the same ones. */
class SchemaTest {
  private static final JsonNode SCHEMA_TREE =
      JsonText.tree(Samples.text("trip-2.schema.json")).get();
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(SCHEMA_TREE);

  @ParameterizedTest
  @ValueSource(strings = {"full", "small", "no-departure", "one-stop", "time-in-spring-gap"})
  void soundFilesFit(String name) {
    assertThat(SCHEMA.validate(tree(name))).isEmpty();
  }

  @Test
  void whatIsWrittenFits() {
    String text = TripFile.text(TripFile.parse(Samples.full()).get());
    assertThat(SCHEMA.validate(JsonText.tree(text).get())).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "unknown-field",
        "note-on-row",
        "number-without-unit",
        "pressure-in-pounds",
        "unknown-choice",
        "newer-version",
        "two-figures",
        "no-figure",
        "time-without-zone",
        "split-missing",
        "slot-that-does-not-exist",
        "many-faults"
      })
  void faultyFilesDoNotFit(String name) {
    assertThat(SCHEMA.validate(tree(name))).isNotEmpty();
  }

  @Test
  void schemaAndReaderMissTheSameFields() {
    Set<ProblemCode> missing =
        Set.of(
            ProblemCode.MISSING_FIELD,
            ProblemCode.NOT_ONE_FIGURE,
            ProblemCode.NOT_A_TRIP_FILE,
            ProblemCode.NO_SUCH_VERSION);
    int checked =
        forEachField(
            (object, name) -> {
              JsonNode removed = object.remove(name);
              JsonNode whole = root;
              boolean unsplit = object.has("what") && !object.has("axles") && !object.has("hitch");
              assertThat(
                      codes(whole).stream()
                          .anyMatch(
                              code ->
                                  missing.contains(code)
                                      || (unsplit && code == ProblemCode.SPLIT_NOT_WHOLE)))
                  .as("without %s of %s", name, removed)
                  .isEqualTo(!SCHEMA.validate(whole).isEmpty());
            });
    assertThat(checked).isGreaterThan(200);
  }

  @Test
  void whatTheSchemaRefusesTheReaderRefuses() {
    for (JsonNode wrong : List.of(new TextNode("?"), new TextNode("17 x"))) {
      forEachField(
          (object, name) -> {
            object.set(name, wrong);
            if (!SCHEMA.validate(root).isEmpty()) {
              assertThat(TripFile.parse(root.toString()).hasValue())
                  .as("%s as %s", name, wrong)
                  .isFalse();
            }
          });
    }
  }

  @Test
  void anUnknownFieldIsRefusedByBothEverywhere() {
    int checked =
        forEachField(
            (object, name) -> {
              object.set("unheard-of", object.get(name));
              boolean map = name.matches("(left|right|trailer).*");
              assertThat(SCHEMA.validate(root)).as("beside %s", name).isNotEmpty();
              assertThat(TripFile.parse(root.toString()).hasValue())
                  .as("beside %s", name)
                  .isFalse();
              assertThat(codes(root).contains(ProblemCode.UNKNOWN_FIELD) || map).isTrue();
            });
    assertThat(checked).isGreaterThan(200);
  }

  @Test
  void theFullFileUsesEveryField() {
    Set<String> used = new TreeSet<>();
    forEachField((object, name) -> used.add(name));
    Set<String> declared = new TreeSet<>(fieldNames());
    declared.removeAll(used);
    assertThat(declared).isEmpty();
  }

  @Test
  void unitsAreThoseThatAreRead() {
    assertUnits("pressure", QuantityKind.GAUGE_PRESSURE);
    assertUnits("temperature", QuantityKind.TEMPERATURE);
    assertUnits("temperatureDifference", QuantityKind.TEMPERATURE_DIFFERENCE);
    assertUnits("elevation", QuantityKind.ELEVATION);
    assertUnits("distance", QuantityKind.DISTANCE);
    assertUnits("speed", QuantityKind.SPEED);
    assertUnits("weight", QuantityKind.MASS);
    assertUnits("treadDepth", QuantityKind.TREAD_DEPTH);
    assertUnits("airFlow", QuantityKind.AIR_FLOW);
    assertUnits("percentage", QuantityKind.RATIO);
  }

  private static void assertUnits(String definition, QuantityKind<?> kind) {
    String pattern = SCHEMA_TREE.at("/$defs/" + definition + "/pattern").textValue();
    for (Unit unit : Unit.values()) {
      for (String spelling : unit.spellings()) {
        assertThat(Pattern.matches(pattern, "5 " + spelling))
            .as("%s in %s", definition, spelling)
            .isEqualTo(kind.parse("5 " + spelling).hasValue());
      }
    }
  }

  /** Every name of a field that the schema declares. */
  static List<String> fieldNames() {
    return SCHEMA_TREE.findValues("properties").stream()
        .filter(
            properties -> properties.properties().stream().allMatch(p -> !p.getValue().isBoolean()))
        .flatMap(properties -> properties.propertyStream().map(p -> p.getKey()))
        .distinct()
        .collect(Collectors.toList());
  }

  private JsonNode root = SCHEMA_TREE;

  /** Does something to each field of the full file in turn, each time in a fresh copy. */
  private int forEachField(BiConsumer<ObjectNode, String> change) {
    int count = fields(tree("full")).size();
    for (int i = 0; i < count; i++) {
      root = tree("full");
      Field field = fields(root).get(i);
      change.accept(field.object, field.name);
    }
    return count;
  }

  private record Field(ObjectNode object, String name) {}

  private static List<Field> fields(JsonNode node) {
    List<Field> fields = new ArrayList<>();
    gather(node, fields);
    return fields;
  }

  private static void gather(JsonNode node, List<Field> fields) {
    if (node instanceof ObjectNode object) {
      object
          .properties()
          .forEach(
              field -> {
                if (!field.getKey().startsWith("x-")) {
                  fields.add(new Field(object, field.getKey()));
                  gather(field.getValue(), fields);
                }
              });
    } else {
      node.forEach(element -> gather(element, fields));
    }
  }

  private static List<ProblemCode> codes(JsonNode tree) {
    return TripFile.parse(tree.toString()).problems().stream().map(Problem::code).toList();
  }

  private static JsonNode tree(String name) {
    return JsonText.tree(Samples.text(name + ".dawngauge")).get();
  }
}
