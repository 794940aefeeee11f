package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Expected weights and the dealer's card as commands. */
class WeightsCommandTest {

  private static final String SHEET = "src/test/resources/dawngauge/weights/three-loads.dawngauge";

  @Test
  void weightsAreToldAsTextAndJson() throws JsonProcessingException {
    Run text = Run.of("weights", SHEET);
    assertThat(text.code()).isZero();
    assertThat(text.out()).contains("Expected, never firm").doesNotContain("How it is worked out");
    assertThat(Run.of("weights", SHEET, "--why").out()).contains("How it is worked out");
    Run json = Run.of("weights", SHEET, "--format", "json");
    JsonNode root = new ObjectMapper().readTree(json.out());
    JsonNode hitch = root.get("expectedLoads").get(10);
    assertThat(hitch.get("bearer").asText()).isEqualTo("hitch");
    assertThat(hitch.at("/expectedLoad/lb").asDouble()).isBetween(2319.9, 2320.1);
    assertThat(hitch.get("verdict").asText()).isEqualTo("within");
    assertThat(root.at("/nextWeighing/narrows").asText()).isEqualTo("trailer axle 1");
    assertThat(root.get("cautions").get(0).asText()).startsWith("Expected, never firm");
  }

  @Test
  void aTripWithoutAWorksheetIsToldWhatIsMissing() {
    Run run = Run.of("weights", Run.DEMO);
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("not known").contains("weigh the rig empty and hitched");
  }

  @Test
  void theDealersCardIsOfOneAxleWhereOneIsNamed() {
    Run all = Run.of("dealer", SHEET);
    assertThat(all.out()).contains("PICKUP AXLE 1").contains("TRAILER AXLE 2");
    Run one = Run.of("dealer", SHEET, "--tire", "t1l");
    assertThat(one.code()).isZero();
    assertThat(one.out()).contains("TRAILER AXLE 1").doesNotContain("TRAILER AXLE 2", "PICKUP");
    Run none = Run.of("dealer", SHEET, "--tire", "t9l");
    assertThat(none.code()).isEqualTo(ExitCode.USAGE);
    assertThat(none.err()).contains("t9l").contains("t1l");
  }

  @Test
  void theDealersCardIsWrittenAsPdf(@TempDir Path folder) throws IOException {
    Path pdf = folder.resolve("card.pdf");
    assertThat(Run.of("dealer", SHEET, "--pdf").code()).isEqualTo(ExitCode.USAGE);
    assertThat(Run.of("dealer", SHEET, "--pdf", "--out", pdf.toString()).code()).isZero();
    assertThat(new String(Files.readAllBytes(pdf), StandardCharsets.ISO_8859_1)).startsWith("%PDF");
    assertThat(Run.of("dealer", SHEET, "--pdf", "--out", pdf.toString()).code())
        .isEqualTo(ExitCode.CANNOT_WRITE);
  }
}
