package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.ledger.ReachPage;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** How far the air reaches, as the command tells it; the demo haul. */
class ReachCommandTest {

  private static final String HAUL = "demo-data/autumn-stock-haul.dawngauge";

  private static String told(Run run) {
    assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
    return run.out().replaceAll(" +", " ");
  }

  @Test
  void theNextHoseTheWayToItAndWhatEachTireMustLeaveWith() {
    assertThat(told(Run.of("reach", Run.DEMO, "--stop", "1")))
        .contains("Alamosa CO: how far the air reaches")
        .contains("Next hose: Dalhart TX, 265 mi on, Tue 6 Apr 12:29.")
        .contains("Walsenburg CO Tue 6 Apr 07:13 yes, 6 psi to spare (p1l)")
        .contains("In psi, as the gauge shows them at 05:45, cold:")
        .contains("tire reads least to Dalhart TX least to the end")
        .contains("t2r 72 65 68")
        .contains("It is no figure to aim at")
        .contains("Inflating: clip-on chuck");
  }

  @Test
  void beyondAPlaceWithoutTemperatureNothingIsSaid() {
    assertThat(told(Run.of("reach", "demo-data/gap-haul.dawngauge", "--stop", "1")))
        .contains("Walsenburg CO Tue 6 Apr 07:13 yes, 6 psi to spare (p1l)")
        .contains("Raton NM Tue 6 Apr 08:45 not known")
        .contains("Dalhart TX Tue 6 Apr 12:29 not known")
        .contains("t2r 72 not known not known");
  }

  /** The sheet's back says the same of each place from which a day starts without a hose. */
  @Test
  void theSheetSaysTheSame() {
    Planner planner = new Planner(SettingsFile.defaults(), List.of());
    Trip trip = planner.store().open(Path.of(Run.DEMO)).get();
    Plan plan = planner.plan(trip);
    List<String> lines = ReachPage.starts(trip, plan.advice(), plan::reach, UnitSystem.US);
    assertThat(lines).hasSizeGreaterThan(1).first().asString().startsWith("1. Alamosa CO to 5.");
    for (String line : lines) {
      String stop = line.substring(0, line.indexOf('.'));
      String hose = line.replaceAll(".* to \\d+\\. ([^,]*),.*", "$1");
      String words = line.substring(line.indexOf(": ") + 2);
      assertThat(told(Run.of("reach", Run.DEMO, "--stop", stop)))
          .containsPattern(
              Pattern.quote(hose) + " \\w+ \\d+ \\w+ \\d\\d:\\d\\d " + Pattern.quote(words));
    }
  }

  @Test
  void inBarToo() {
    assertThat(told(Run.of("reach", Run.DEMO, "--stop", "1", "--units", "si")))
        .contains("426 km on")
        .contains("In bar, as the gauge shows them")
        .contains("bar to spare (p1l)");
  }

  @Test
  void whatCannotBeAskedIsSaid() {
    Run last = Run.of("reach", Run.DEMO, "--stop", "13");
    assertThat(last.code()).isEqualTo(ExitCode.CONTENT);
    assertThat(last.err()).contains("Childress TX").contains("last stop");
    assertThat(Run.of("reach", Run.DEMO, "--stop", "Denver").code()).isEqualTo(ExitCode.USAGE);
    assertThat(Run.of("reach", Run.DEMO).code()).isEqualTo(ExitCode.USAGE);
    assertThat(Run.of("reach", "no-such-file", "--stop", "1").code()).isEqualTo(66);
  }

  private static String withCompressor(String reading) {
    String gauges = "    \"gauges\": [";
    String sheet =
        "\"compressorTop\": \"120 psi\", \"compressorFlow\": \"10 L/min\","
            + " \"compressorFlowAt\": \"90 psi\",\n";
    String text =
        Run.text(Run.DEMO)
            .replace(gauges, sheet + gauges)
            .replace("\"72 psi\"", reading)
            .replaceAll("\"air\": \"[^\"]*\"", "\"air\": \"none\"");
    assertThat(text).contains(reading);
    return told(Run.ofText(text, "reach", "-", "--stop", "1"));
  }

  /**
   * t2r read at 66 psi, 7,543 ft up, 11.11 psi of air: its size holds 64.80 liter, so 2 psi more to
   * the 68 that it needs to the end take 64.80·2/11.11 = 11.7 liter, at 10 L/min 1.2 minutes, in
   * whole ones 2.
   */
  @Test
  void theOwnCompressorsMinutesStandBeside() {
    assertThat(withCompressor("\"66 psi\""))
        .contains("No hose is known on the way ahead")
        .contains("by your compressor")
        .containsPattern("no: t2r [12] psi short")
        .contains("t2r 66 68 2 min");
  }

  /** The forecast says not to add air to it: neither a figure nor minutes. */
  @Test
  void aTireThatRanLowHasNoFigureToPumpItUpTo() {
    assertThat(withCompressor("\"50 psi\"").replaceAll("\\s+", " "))
        .contains("no: t2r: ran low: do not add air, have it inspected inside")
        .contains("t2r 50 on hold What")
        .doesNotContain("short");
  }

  @Test
  void theOtherDemoAnswersAtEveryStop() {
    int stops = 0;
    while (Run.of("reach", HAUL, "--stop", "" + (stops + 1)).code() == ExitCode.DONE) {
      stops++;
    }
    assertThat(stops).isGreaterThan(5);
  }
}
