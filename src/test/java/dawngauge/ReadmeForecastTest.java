package dawngauge;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.ledger.ForecastPage;
import dawngauge.ledger.Ledger;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.PageText;
import dawngauge.settings.SettingsFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the README shows of a forecast is what the program prints. */
class ReadmeForecastTest {

  @Test
  void theCardInTheReadmeIsOfToday() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    String section =
        readme.substring(
            readme.indexOf("## What it prints"), readme.indexOf("## How far to trust it"));
    List<String> shown =
        section.lines().filter(line -> line.startsWith("    ")).map(String::strip).toList();
    Planner planner = new Planner(SettingsFile.defaults(), List.of());
    Path demo = Path.of("demo-data", "spring-fleece-haul.dawngauge");
    Plan planned = planner.plan(planner.store().open(demo).get());
    String printed =
        PageText.of(
            ForecastPage.of(
                Ledger.of(
                    planned.trip(),
                    planned.advice(),
                    planned.problems(),
                    planned.fitness(),
                    UnitSystem.US,
                    null)),
            false);
    assertThat(shown).hasSizeGreaterThan(2).allSatisfy(line -> assertThat(printed).contains(line));
  }
}
