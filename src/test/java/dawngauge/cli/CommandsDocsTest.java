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
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** docs/commands.md and the program say the same. */
class CommandsDocsTest {
  private static final Path DOCS = Path.of("docs", "commands.md");

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

  @Test
  void theJsonFieldsAreDescribed() throws IOException {
    Set<String> known = new TreeSet<>();
    for (String file : List.of(Run.DEMO, Run.sample("full"))) {
      gather(
          new ObjectMapper().readTree(Run.of("forecast", file, "--format", "json").out()), known);
    }
    assertThat(known).hasSizeGreaterThan(40);
    String json = Files.readString(DOCS).split("## JSON", -1)[1];
    Set<String> described = new TreeSet<>(quoted(json));
    assertThat(described).containsAll(known);
    described.removeAll(known);
    assertThat(described)
        .containsExactlyInAnyOrder(
            "--format json", "--units", "--tire", "null", "\"dawngauge forecast\"", "gap", "note");
  }

  private static void gather(JsonNode node, Set<String> names) {
    node.fieldNames().forEachRemaining(names::add);
    node.forEach(child -> gather(child, names));
  }

  private static List<CommandSpec> specs() {
    CommandLine root =
        CommandLineFace.commands(
            Run.planner(),
            new Console(
                InputStream.nullInputStream(),
                new PrintWriter(new StringWriter()),
                new PrintWriter(new StringWriter())),
            new ClosedDesk(),
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
