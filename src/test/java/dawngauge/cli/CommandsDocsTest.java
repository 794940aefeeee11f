package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** docs/commands.md and the program say the same. */
class CommandsDocsTest {
  private static final Path DOCS = Path.of("docs", "commands.md");
  private static final String LOGGED = "demo-data/spring-fleece-haul-logged.dawngauge";

  @Test
  void everyCommandHasARowAndEveryRowACommand() throws IOException {
    List<String> rows = rows("command").stream().map(row -> quoted(row.get(0)).get(0)).toList();
    assertThat(rows)
        .containsExactlyInAnyOrderElementsOf(
            specs().stream().map(CommandsDocsTest::typed).toList());
  }

  @Test
  void everyOptionIsInItsRowAndEveryOptionThereExists() throws IOException {
    for (CommandSpec spec : specs()) {
      List<String> row =
          rows("command").stream()
              .filter(cells -> quoted(cells.get(0)).get(0).equals(typed(spec)))
              .findFirst()
              .orElseThrow();
      Set<String> documented = new TreeSet<>(quoted(row.get(2)));
      Set<String> known = new TreeSet<>();
      spec.options()
          .forEach(
              option -> {
                String label = option.arity().max() == 0 ? "" : " " + option.paramLabel();
                for (String name : option.names()) {
                  known.add(name + label);
                }
              });
      assertThat(documented).as(spec.qualifiedName()).isEqualTo(known);
      spec.options().stream()
          .filter(CommandLine.Model.ArgSpec::required)
          .forEach(
              option -> assertThat(row.get(2)).contains(option.longestName()).contains("(needed)"));
    }
  }

  @Test
  void theExitCodesAreThoseOfTheProgram() throws IOException, IllegalAccessException {
    Set<Integer> known = new TreeSet<>();
    for (Field field : ExitCode.class.getFields()) {
      known.add(field.getInt(null));
    }
    Set<Integer> documented =
        rows("code").stream()
            .map(row -> Integer.valueOf(row.get(0)))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(documented).isEqualTo(known);
  }

  @Test
  void theCsvColumnsAreDescribedInOrder() throws IOException {
    String header =
        Run.of("forecast", Run.DEMO, "--format", "csv").out().lines().findFirst().orElseThrow();
    List<String> documented =
        rows("column").stream().flatMap(row -> quoted(row.get(0)).stream()).toList();
    assertThat(documented).containsExactly(header.split(","));
  }

  /** By the schemas, which say the same as the documents; fields are told where they come first. */
  @Test
  void theJsonFieldsAreDescribed() throws IOException {
    String intro = Files.readString(DOCS).split("## JSON", -1)[1].split("\\| `forecast`", -1)[0];
    Set<String> told = new TreeSet<>(quoted(intro));
    Set<String> known = new TreeSet<>(List.of("forecast", "plan", "reminders", "review"));
    List<String> rows = new ArrayList<>();
    for (String document :
        List.of(
            "forecast",
            "plan",
            "reach",
            "breakdown",
            "fitness",
            "weights",
            "reminders",
            "review")) {
      Set<String> described = new TreeSet<>();
      for (List<String> row : rows("`" + document + "` | meaning")) {
        rows.addAll(quoted(row.get(0)));
        row.forEach(cell -> described.addAll(quoted(cell)));
      }
      told.addAll(described);
      Set<String> fields = fields(document + "-1.schema.json");
      assertThat(told).as(document).containsAll(fields);
      described.removeAll(fields);
      assertThat(Set.of("--tire", "--measured", "setAt")).as(document).containsAll(described);
      known.addAll(fields);
    }
    assertThat(known).hasSizeGreaterThan(120);
    assertThat(known).containsAll(quotedNames(intro));
    Set<String> once = new TreeSet<>();
    rows.removeIf(once::add);
    assertThat(rows).as("told twice").containsExactlyInAnyOrder("stops", "tires");
  }

  private static List<String> quotedNames(String text) {
    return quoted(text).stream()
        .filter(word -> word.matches("[a-zA-Z]+") && !word.equals("null"))
        .toList();
  }

  @Test
  void theSchemasAreWhereItIsSaid() throws IOException {
    Matcher said =
        Pattern.compile("`(src/main/resources/)(dawngauge/report/)`\\*document\\*`(-1[^`]+)`")
            .matcher(Files.readString(DOCS));
    assertThat(said.find()).isTrue();
    for (String document :
        List.of("forecast", "plan", "fitness", "weights", "reminders", "review")) {
      String inside = said.group(2) + document + said.group(3);
      assertThat(Path.of(said.group(1) + inside)).exists();
      assertThat(Run.class.getClassLoader().getResource(inside)).isNotNull();
      Run run = Run.of(document, LOGGED, "--format", "json");
      JsonNode schema = new ObjectMapper().readTree(Path.of(said.group(1) + inside).toFile());
      assertThat(new ObjectMapper().readTree(run.out()).get("format"))
          .isEqualTo(schema.at("/properties/format/const"));
    }
  }

  /** Names of the fields that a schema declares, itself or in what it has in common with others. */
  private static Set<String> fields(String schema) throws IOException {
    Path folder = Path.of("src", "main", "resources", "dawngauge", "report");
    JsonNode tree = new ObjectMapper().readTree(folder.resolve(schema).toFile());
    Set<String> fields = new TreeSet<>();
    gather(tree, fields);
    for (JsonNode ref : tree.findValues("$ref")) {
      String[] target = ref.asText().split("#", -1);
      if (!target[0].isEmpty()) {
        JsonNode other = new ObjectMapper().readTree(folder.resolve(target[0]).toFile());
        gather(other.at(target[1]), fields);
      }
    }
    return fields;
  }

  private static void gather(JsonNode schema, Set<String> fields) {
    schema.path("properties").fieldNames().forEachRemaining(fields::add);
    schema.forEach(child -> gather(child, fields));
  }

  private static List<CommandSpec> specs() {
    CommandLine root =
        Cli.commands(
            Run.planner(),
            new Console(
                InputStream.nullInputStream(),
                new PrintWriter(new StringWriter()),
                new PrintWriter(new StringWriter())),
            new NoWeather(),
            (planner, trip, file) -> false);
    List<CommandSpec> specs = new ArrayList<>(List.of(root.getCommandSpec()));
    root.getSubcommands().values().forEach(line -> specs.add(line.getCommandSpec()));
    return specs;
  }

  /** A command with its arguments, as it is typed. */
  private static String typed(CommandSpec spec) {
    String arguments =
        spec.positionalParameters().stream()
            .map(
                parameter ->
                    parameter.required()
                        ? " " + parameter.paramLabel()
                        : " [" + parameter.paramLabel() + "]")
            .collect(Collectors.joining());
    return spec.qualifiedName() + arguments;
  }

  /** Cells of the table whose first heading is given. */
  private static List<List<String>> rows(String heading) throws IOException {
    List<String> lines = Files.readAllLines(DOCS);
    int start = 0;
    while (!lines.get(start).startsWith("| " + heading + " |")) {
      start++;
    }
    List<List<String>> rows = new ArrayList<>();
    for (String line : lines.subList(start + 2, lines.size())) {
      if (!line.startsWith("|")) {
        break;
      }
      String[] cells = line.replace("\\|", "\0").split("\\|", -1);
      rows.add(
          List.of(cells).subList(1, cells.length - 1).stream()
              .map(cell -> cell.replace("\0", "|").strip())
              .toList());
    }
    assertThat(rows).isNotEmpty();
    return rows;
  }

  private static List<String> quoted(String text) {
    return Pattern.compile("`([^`]+)`")
        .matcher(text)
        .results()
        .map(match -> match.group(1))
        .toList();
  }
}
