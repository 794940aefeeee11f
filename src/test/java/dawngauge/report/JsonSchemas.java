package dawngauge.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/** The schemas of the JSON documents, as they lie in the program. */
final class JsonSchemas {
  private static final String FOLDER = "dawngauge/report/";
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

  private JsonSchemas() {}

  static String file(String name) {
    return name + "-1.schema.json";
  }

  /** The schema, whose parts in other files are found beside it. */
  static Schema schema(String name) {
    return REGISTRY.getSchema(SchemaLocation.of("classpath:" + FOLDER + file(name)));
  }

  static JsonNode tree(String file) {
    try (InputStream in = JsonSchemas.class.getClassLoader().getResourceAsStream(FOLDER + file)) {
      return new ObjectMapper().readTree(Objects.requireNonNull(in, file));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** Every field that a file declares: file, place and name. */
  static Set<String> declared(String file) {
    Set<String> names = new TreeSet<>();
    declared(file, tree(file), "", names);
    return names;
  }

  private static void declared(String file, JsonNode node, String path, Set<String> names) {
    node.properties()
        .forEach(
            field -> {
              String below = path + "/" + field.getKey();
              if (field.getKey().equals("properties")) {
                field
                    .getValue()
                    .fieldNames()
                    .forEachRemaining(n -> names.add(file + below + "/" + n));
              }
              declared(file, field.getValue(), below, names);
            });
  }

  /** The declared fields that a document gives something for. */
  static Set<String> used(String file, JsonNode document) {
    Set<String> names = new TreeSet<>();
    used(file, tree(file), "", document, names);
    return names;
  }

  private static void used(
      String file, JsonNode schema, String path, JsonNode value, Set<String> names) {
    if (schema.has("$ref")) {
      String[] target = schema.get("$ref").textValue().split("#", -1);
      String there = target[0].isEmpty() ? file : target[0];
      used(there, tree(there).at(target[1]), target[1], value, names);
    }
    for (int i = 0; i < schema.path("anyOf").size(); i++) {
      used(file, schema.get("anyOf").get(i), path + "/anyOf/" + i, value, names);
    }
    schema.path("properties").properties().stream()
        .filter(field -> value.hasNonNull(field.getKey()))
        .forEach(
            field -> {
              String below = path + "/properties/" + field.getKey();
              names.add(file + below);
              used(file, field.getValue(), below, value.get(field.getKey()), names);
            });
    if (schema.has("items")) {
      value.forEach(each -> used(file, schema.get("items"), path + "/items", each, names));
    }
  }
}
