package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

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
