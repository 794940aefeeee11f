package dawngauge.tripfile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dawngauge.field.Codec;
import dawngauge.field.Field;
import dawngauge.field.LogFields;
import dawngauge.field.Member;
import dawngauge.field.Part;
import dawngauge.field.RouteFields;
import dawngauge.field.TripFields;
import dawngauge.problem.Outcome;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Rig;
import dawngauge.trip.Trip;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The catalogue, the schema, the reader and the documents know the same fields. */
class FieldCatalogueTest {

  private static final JsonNode SCHEMA = JsonText.tree(Samples.text("trip-2.schema.json")).get();

  static Stream<Arguments> parts() {
    return TripFields.all().stream().map(part -> Arguments.of(part.name(), part));
  }

  static Stream<Arguments> fields() {
    return TripFields.all().stream()
        .flatMap(part -> part.fields().stream().map(f -> Arguments.of(part.name(), f.key(), f)));
  }

  @Test
  void allPartsAreWalked() {
    assertThat(TripFields.all()).hasSize(29).extracting(Part::name).doesNotHaveDuplicates();
    assertThat(fields()).hasSizeGreaterThan(60);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("parts")
  void theSchemaKnowsTheSame(String name, Part<?> part) {
    JsonNode definition = SCHEMA.at("/$defs/" + part.schema());
    Set<String> declared = new TreeSet<>();
    definition.path("properties").fieldNames().forEachRemaining(declared::add);
    assertThat(declared.remove("note")).isEqualTo(part.remarks() != null);
    boolean event = LogFields.TYPES.stream().anyMatch(type -> type.part().equals(part));
    if (event) {
      assertThat(declared.remove("type")).isTrue();
    }
    // The leg stands inside its stop in the file only.
    assertThat(declared.remove("leg")).isEqualTo(part.equals(RouteFields.STOP));
    assertThat(keys(part)).isEqualTo(declared);
    Set<String> required = new TreeSet<>();
    definition.path("required").forEach(key -> required.add(key.textValue()));
    part.fields().stream()
        .filter(Field::required)
        .forEach(field -> assertThat(required).contains(field.key()));
    part.fields().stream()
        .filter(field -> !field.required())
        .forEach(field -> assertThat(required).doesNotContain(field.key()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("parts")
  void theDocumentHasALineForEach(String name, Part<?> part) throws IOException {
    String heading = part.name().substring(0, 1).toUpperCase(Locale.ROOT);
    String all = Files.readString(Path.of("docs", "trip-file.md"));
    Set<String> described =
        Stream.of(
                "\n**" + heading + part.name().substring(1) + "**",
                "\n## " + heading + part.name().substring(1) + "\n")
            .filter(all::contains)
            .map(title -> all.substring(all.indexOf(title) + title.length()))
            .map(text -> text.split("\n\\*\\*|\n## ", 2)[0])
            .flatMap(String::lines)
            .filter(line -> line.startsWith("| `"))
            .map(line -> line.substring(0, line.indexOf('|', 1)))
            .flatMap(cell -> Pattern.compile("`([a-zA-Z]+)`").matcher(cell).results())
            .map((MatchResult match) -> match.group(1))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(described).containsAll(keys(part));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("fields")
  void aRefusalNamesTheValueAndTheWayOut(String part, String key, Field<?, ?> field) {
    assertThat(field.label()).isNotBlank();
    assertThat(field.stands()).isNotBlank();
    Codec<?> codec = field.codec();
    if (codec.equals(Codec.TEXT)) {
      return; // any text is taken
    }
    String wrong = codec.equals(Codec.NAME) ? " ?" : "?";
    for (Outcome<?> refused :
        List.of(codec.parse().apply(wrong), codec.typed().apply(UnitSystem.SI, wrong))) {
      assertThat(refused.hasValue()).isFalse();
      String message = refused.problems().get(0).message();
      assertThat(message).contains(wrong).hasSizeGreaterThan(20);
      assertThat(refused.problems().get(0).code()).isNotEqualTo(ProblemCode.MISSING_FIELD);
    }
  }

  /** The example of each is read, and so is what stands in, where that is a value. */
  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("fields")
  void whatIsWrittenIsRead(String part, String key, Field<?, ?> field) {
    written(field);
  }

  private static <R, V> void written(Field<R, V> field) {
    V standIn = field.codec().standIn();
    String text = field.codec().text().apply(standIn);
    Outcome<V> read = field.codec().parse().apply(text);
    // What stands in for a name or figure that could not be read is none itself.
    if (!text.isEmpty() && read.hasValue()) {
      assertThat(read.get()).isEqualTo(standIn);
    }
    JsonNode example = JsonText.tree("{\"a\": " + field.codec().example() + "}").get().get("a");
    ValueReader reader = new ValueReader(new FileProblems());
    V value = reader.of(example, "", field.codec());
    assertThat(reader.problems().list()).isEmpty();
    assertThat(new FieldWriter().value("a", field.codec(), value).node().get("a"))
        .hasToString(example.toString());
  }

  @Test
  void theFullRigIsWrittenAsItWas() {
    Rig rig = TripFile.parse(Samples.full()).get().rig();
    Trip again = TripFile.parse(TripFile.text(TripFile.parse(Samples.full()).get())).get();
    assertThat(again.rig()).isEqualTo(rig);
  }

  private static Set<String> keys(Part<?> part) {
    return part.members().stream().map(Member::key).collect(Collectors.toCollection(TreeSet::new));
  }
}
