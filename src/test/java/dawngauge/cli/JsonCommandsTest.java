package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands that answer programs too. */
class JsonCommandsTest {

  private static final String LOGGED = "demo-data/spring-fleece-haul-logged.dawngauge";

  private static JsonNode json(String... arguments) throws JsonProcessingException {
    Run run = Run.of(arguments);
    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    return new ObjectMapper().readTree(run.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "fitness", "weights", "reminders", "review"})
  void textIsWhatComesUnlessJsonIsAskedFor(String command) throws JsonProcessingException {
    Run text = Run.of(command, LOGGED);
    assertThat(Run.of(command, LOGGED, "--format", "text")).isEqualTo(text);
    JsonNode us = json(command, LOGGED, "--format", "JSON");
    assertThat(us.get("format").asText()).isEqualTo("dawngauge " + command);
    assertThat(us.get("name").asText()).isEqualTo("Spring fleece haul, logged");
    assertThat(us.toString()).contains("have it inspected by a qualified technician");
    assertThat(Run.of(command, LOGGED, "--format", "csv").code()).isEqualTo(ExitCode.USAGE);
  }

  @Test
  void sentencesAreInTheUnitsAskedForAndFiguresInBoth() throws JsonProcessingException {
    JsonNode us = json("review", LOGGED, "--format", "json");
    JsonNode si = json("review", LOGGED, "--format", "json", "--units", "si");
    assertThat(us.get("headline").asText()).contains("about 2.5 psi a day");
    assertThat(si.get("headline").asText()).contains("bar a day").doesNotContain("psi");
    assertThat(si.get("tires")).isEqualTo(us.get("tires"));
    JsonNode leaks =
        us.get("tires")
            .valueStream()
            .filter(tire -> tire.get("kind").asText().equals("steady"))
            .findFirst()
            .orElseThrow();
    assertThat(leaks.get("tire").asText()).isEqualTo("t2r");
    assertThat(leaks.at("/lostPerDay/psi").asDouble()).isBetween(2.45, 2.55);
  }

  @Test
  void fitnessAnswersByItsExitCodeInBothForms() throws IOException {
    String sound = "src/test/resources/dawngauge/fitness/sound-rig.dawngauge";
    for (String file : List.of(Run.DEMO, sound, Run.sample("small"))) {
      Run text = Run.of("fitness", file, "--check");
      Run json = Run.of("fitness", file, "--check", "--format", "json");
      assertThat(json.code()).isEqualTo(text.code());
      assertThat(json.err()).isEqualTo(text.err());
      JsonNode unknown = new ObjectMapper().readTree(json.out()).get("notKnown");
      unknown.forEach(each -> assertThat(each.asText()).isNotEmpty());
      if (text.code() == ExitCode.CONTENT) {
        assertThat(unknown).isNotEmpty();
      }
    }
  }

  @Test
  void noCalendarAndNoPdfIsWrittenAsJson(@TempDir Path folder) {
    Path calendar = folder.resolve("haul.ics");
    Run run = Run.of("reminders", Run.DEMO, "--calendar", calendar.toString(), "--format", "json");
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).contains("--calendar").contains("--format json");
    Path pdf = folder.resolve("review.pdf");
    run = Run.of("review", LOGGED, "--pdf", "--out", pdf.toString(), "--format", "json");
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).contains("--pdf").contains("--format json");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void aDocumentGoesToAFileWhereOneIsNamed(@TempDir Path folder) throws IOException {
    for (String command : List.of("plan", "review")) {
      Path out = folder.resolve(command + ".json");
      Run run = Run.of(command, LOGGED, "--format", "json", "--out", out.toString());
      assertThat(run.code()).isZero();
      assertThat(run.out()).isEmpty();
      assertThat(Files.readString(out))
          .isEqualTo(Run.of(command, LOGGED, "--format", "json").out());
    }
  }

  @Test
  void whereNoTimeIsKnownThereIsNoDocument() {
    for (String command : List.of("plan", "reminders", "review")) {
      Run run = Run.of(command, Run.sample("no-departure"), "--format", "json");
      assertThat(run.code()).as(command).isEqualTo(ExitCode.CONTENT);
      assertThat(run.out()).isEmpty();
      assertThat(run.err()).isNotEmpty();
    }
  }
}
