package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How long the crew's own compressor takes, as the commands tell it; tires of the demo haul. */
class CompressorMinutesTest {

  private static final String JSON = "--format=json";
  private static final String MINUTES = "by your compressor";

  private static String told(String flow, String at, String... arguments) {
    String gauges = "    \"gauges\": [";
    String demo = Run.text(Run.DEMO);
    assertThat(demo).contains(gauges);
    String sheet =
        String.format(
            "\"compressorTop\": \"120 psi\", \"compressorFlow\": \"%s\", \"compressorFlowAt\":"
                + " \"%s\",%n",
            flow, at);
    Run run = Run.ofText(demo.replace(gauges, sheet + gauges), arguments);
    assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
    return run.out().replaceAll("\\s+", " ");
  }

  private static String figure(String flow, String at, String stop, String... more) {
    List<String> arguments =
        new ArrayList<>(List.of("figure", "-", "--stop", stop, "--tire", "t2r"));
    arguments.addAll(List.of(more));
    return told(flow, at, arguments.toArray(String[]::new));
  }

  /**
   * By hand at Dalhart TX, 3,983 ft, 12.70 psi of air: ST235/80R16 holds 64.80 liter; from 74 to 88
   * psi 64.80·14/12.70 = 71.4 liter, at 10 L/min 7.1 minutes, in whole ones 8.
   */
  @Test
  void fromAReadingToItsFigure() {
    assertThat(figure("10 L/min", "90 psi", "dalhart", "--reading", "74 psi"))
        .contains("As warm as it arrives: 88 psi")
        .contains("About 8 min by your compressor, from 74 psi.");
    assertThat(figure("1 L/min", "6.3 bar", "dalhart", "--reading", "74 psi", "--units", "si"))
        .contains("About 1 h 12 by your compressor, from 5.10 bar.");
  }

  /**
   * At Alamosa CO, 7,543 ft, 11.11 psi: from the 71.9 psi expected to 80 psi 64.80·8.1/11.11 = 47.3
   * liter, 4.7 minutes.
   */
  @Test
  void withoutAReadingFromWhatIsExpected() {
    assertThat(figure("10 L/min", "90 psi", "1"))
        .contains("About 5 min by your compressor, from 72 psi.");
  }

  /** The same and LT245/75R17, 68.37 liter, from 58.9 to 65 psi: 37.3 liter more, 8.5 minutes. */
  @Test
  void aStopOfThePlanTellsAllItsTires() {
    assertThat(told("10 L/min", "90 psi", "plan", "-"))
        .contains("to 65 psi, cold Add: trailer axle 2 right (t2r) to 80 psi, cold")
        .containsOnlyOnce("About 9 min by your compressor for 2 tires");
    assertThat(told("10 L/min", "70 psi", "plan", "-"))
        .as("one of them goes beyond the pressure of its flow")
        .doesNotContain(MINUTES);
  }

  /** The same two, tire by tire: 47.3 and 37.3 liter at 10 L/min; null beyond what is known. */
  @Test
  void aProgramIsToldTheSecondsOfEach() throws JsonProcessingException {
    JsonNode known = new ObjectMapper().readTree(told("10 L/min", "90 psi", "plan", "-", JSON));
    assertThat(known.findValuesAsText("compressorSeconds"))
        .filteredOn(seconds -> !seconds.equals("null"))
        .containsExactlyInAnyOrder("224", "284");
    JsonNode beyond = new ObjectMapper().readTree(told("10 L/min", "70 psi", "plan", "-", JSON));
    assertThat(beyond.findValuesAsText("compressorSeconds")).contains("null");
  }

  /** Ran low, in the sun, just filled, up to its figure already, beyond the flow that is known. */
  @ParameterizedTest
  @CsvSource({
    "90 psi, 60 psi, warm",
    "90 psi, 74 psi, sun",
    "90 psi, 74 psi, filled",
    "90 psi, 88 psi, warm",
    "85 psi, 74 psi, warm"
  })
  void whereNothingIsToBeAddedOrKnownThereAreNoMinutes(String at, String reading, String state) {
    assertThat(figure("10 L/min", at, "dalhart", "--reading", reading, "--state", state))
        .contains("The reading")
        .doesNotContain(MINUTES);
  }
}
