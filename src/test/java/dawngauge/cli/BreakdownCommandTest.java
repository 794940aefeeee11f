package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What to do about a flat tire, as the command tells it. */
class BreakdownCommandTest {

  private static final String HAUL = "demo-data/autumn-stock-haul.dawngauge";

  private static String told(Run run) {
    assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
    return run.out().replaceAll("\\s+", " ");
  }

  @Test
  void whatCarriesWhichSpareAndWhatToAskFor() {
    assertThat(told(Run.of("breakdown", HAUL, "--stop", "Kamloops", "--tire", "t1l")))
        .contains("t1l flat at Kamloops BC")
        .contains(
            "t2l cannot be shown to carry both: up to 1998 kg, it carries 1150 kg at its limit, 4.5 bar cold.")
        .contains("Nobody drives on a flat tire (49 CFR 393.75(a)(3))")
        .contains("R1 fits by its figures. Set it, cold as it is, to 4.5 bar, never over 4.5.")
        .contains("No faster than 120 km/h. It carries up to 1000 kg to the end.")
        .contains("At Kamloops BC, 50.6740, -120.3270")
        .contains("Size ST225/75R15")
        .contains("stand clear of the path of tread and sidewall");
  }

  /** The same breakdowns as in the tests beside this one, figure by figure. */
  @Test
  void aProgramIsToldTheSame() throws JsonProcessingException {
    JsonNode serving = json("--stop", "Kamloops", "--tire", "t1l", HAUL);
    assertThat(serving.at("/place").asText()).isEqualTo("Kamloops BC");
    assertThat(serving.at("/tire").asText()).isEqualTo("t1l");
    JsonNode carrier = serving.at("/carriers/0");
    assertThat(carrier.at("/tire").asText()).isEqualTo("t2l");
    assertThat(carrier.at("/carries").asBoolean(true)).isFalse();
    assertThat(carrier.at("/load/kg").asDouble()).isCloseTo(1998, within(0.5));
    assertThat(carrier.at("/most/kg").asDouble()).isCloseTo(1150, within(0.5));
    assertThat(carrier.at("/ceiling/kPa").asDouble()).isCloseTo(450, within(1.0));
    JsonNode spare = serving.at("/spares/0");
    assertThat(spare.at("/tireId").asText()).isEqualTo("R1");
    assertThat(spare.at("/serves").asBoolean()).isTrue();
    assertThat(spare.at("/setCold/kPa").asDouble()).isCloseTo(450, within(1.0));
    assertThat(spare.at("/ceiling/kPa").asDouble()).isCloseTo(450, within(1.0));
    assertThat(spare.at("/fastest/kmPerHour").asDouble()).isEqualTo(120);
    assertThat(spare.at("/load/kg").asDouble()).isCloseTo(1000, within(0.5));
    assertThat(serving.at("/cautions").toString())
        .contains("49 CFR 393.75(a)(3)", "stand clear of the path of tread and sidewall");

    JsonNode barred = json("--stop", "5", "--tire", "t2r", Run.DEMO).at("/spares/0");
    assertThat(barred.at("/serves").asBoolean(true)).isFalse();
    assertThat(barred.at("/against").size()).isGreaterThan(1);
    assertThat(barred.at("/setCold").isNull()).as("nobody is to set it").isTrue();
    assertThat(barred.at("/reaches").isNull()).isTrue();
  }

  private static JsonNode json(String... rest) throws JsonProcessingException {
    List<String> words = new ArrayList<>(List.of("breakdown", "--format", "json"));
    words.addAll(List.of(rest));
    Run run = Run.of(words.toArray(String[]::new));
    assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
    return new ObjectMapper().readTree(run.out());
  }

  @Test
  void whatSpeaksAgainstASpare() {
    assertThat(told(Run.of("breakdown", Run.DEMO, "--stop", "5", "--tire", "t2r")))
        .contains("Not S1: by its date code it is ten years old or more, or of an unknown decade;")
        .contains("tire and wheel may not take the pressure that is asked for there.");
  }

  @Test
  void aWrongTireIsNamed() {
    Run run = Run.of("breakdown", Run.DEMO, "--stop", "5", "--tire", "t9r");
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).contains("t9r");
  }
}
