package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.testdata.FakeWeatherAccess;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands for the road: plan, figure, reminders, sheet. */
class RoadCommandsTest {

  private static Run run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console =
        new Console(InputStream.nullInputStream(), new PrintWriter(out), new PrintWriter(err));
    int code =
        Cli.run(
            Run.planner(),
            console,
            new FakeWeatherAccess(),
            (planner, trip, file) -> false,
            arguments);
    console.out().flush();
    console.err().flush();
    return new Run(code, out.toString(), err.toString());
  }

  /** Where lines break does not count. */
  private static String words(Run run) {
    return run.out().replaceAll("\\s+", " ");
  }

  @Test
  void thePlanSaysWhereToWhatAndWhyInBothUnits() {
    Run us = run("plan", Run.DEMO, "--why");
    assertThat(us.code()).isEqualTo(ExitCode.DONE);
    assertThat(words(us))
        .contains("2 stops with gauge and hose: Dalhart TX and Graham TX.")
        .contains("With one stop fewer, whichever is left out, trailer axle 1 left would be over")
        .contains(
            "Let out, only cold: trailer axle 1 left (t1l), trailer axle 1 right (t1r), trailer axle"
                + " 2 left (t2l) to 80 psi")
        .contains("Never over, cold: t1l t1r t2l 80 psi")
        .contains("t2r: 79 psi expected before")
        .contains("set each cold morning")
        .contains("Never let air out of a warm tire")
        .contains("have it inspected by a qualified technician");
    Run si = run("plan", Run.DEMO, "--units", "si");
    assertThat(words(si)).contains("to 5.52 bar").doesNotContain(" psi");
    assertThat(us.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 100);
  }

  @Test
  void theGroundIsToldInBothUnits() {
    Run us = run("ground", Run.DEMO);
    assertThat(us.code()).isEqualTo(ExitCode.DONE);
    assertThat(words(us))
        .contains("Alamosa CO to Walsenburg CO lowest about 6172 ft, highest about 10108 ft")
        .contains("1 point given on the leg")
        .contains("A road goes round what a line goes over")
        .doesNotContain("over it?", "give or take");
    assertThat(words(run("ground", Run.DEMO, "--units", "si"))).contains("about 1881 m");
    assertThat(us.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 100);
  }

  @Test
  void thePlanIsWrittenToAFileThatIsNotReplacedUnasked(@TempDir Path folder) throws IOException {
    Path out = folder.resolve("plan.txt");
    assertThat(run("plan", Run.DEMO, "--out", out.toString()).code()).isEqualTo(ExitCode.DONE);
    assertThat(Files.readString(out)).contains("where to set the tires");
    assertThat(run("plan", Run.DEMO, "--out", out.toString()).code())
        .isEqualTo(ExitCode.CANNOT_WRITE);
    assertThat(run("plan", Run.DEMO, "--out", Run.DEMO, "--force").code())
        .as("never the trip itself")
        .isEqualTo(ExitCode.CANNOT_WRITE);
  }

  /** Dalhart is reached at 12:29; the figure falls from 89 psi on arrival to 83 at 13:14. */
  @Test
  void aFigureBelongsToItsMinute() {
    String[] asked = {"figure", Run.DEMO, "--stop", "dalhart", "--tire", "t2r", "--at", "12:50"};
    assertThat(words(run(asked))).contains("At 12:50: 85 psi until 12:56, 80 psi cold");
    assertThat(words(run(with(asked, "--reading", "79 psi"))))
        .contains("Add 6 psi: to 85 psi until 12:56, 80 psi cold. Let no air out of it warm.");
    assertThat(words(run(with(asked, "--reading", "86 psi"))))
        .contains("Nothing to add; let no air out of it warm.");
    assertThat(words(run(with(asked, "--reading", "67 psi"))))
        .contains("No figure at 12:50: it is not to be pumped up before it is inspected.");
    // The forecast says "83 at 13:14", where it leaves at 13:13:36.
    assertThat(words(run("figure", Run.DEMO, "--stop", "5", "--tire", "t2r", "--at", "13:14")))
        .contains("At 13:14: 83 psi, 80 psi cold")
        .doesNotContain("No figure");
    assertThat(words(run("figure", Run.DEMO, "--stop", "5", "--tire", "t2r", "--at", "18:50")))
        .contains("No figure at 18:50: not within the stay");
    assertThat(run("figure", Run.DEMO, "--stop", "5", "--tire", "t2r", "--at", "25:00").code())
        .isEqualTo(ExitCode.USAGE);
  }

  private static String[] with(String[] asked, String... more) {
    List<String> all = new ArrayList<>(List.of(asked));
    all.addAll(List.of(more));
    return all.toArray(new String[0]);
  }

  @Test
  void aFigureAndWhatAReadingMeans() {
    String[] asked = {"figure", Run.DEMO, "--stop", "dalhart", "--tire", "t2r", "--why"};
    Run run = run(with(asked, "--reading", "72 psi"));
    assertThat(run.code()).isEqualTo(ExitCode.DONE);
    // About 64.4 psi cold, ± 2.2 psi (1 σ), and 80 % of 80 psi is 64 psi: less likely than not.
    assertThat(words(run))
        .startsWith("Dalhart TX: trailer axle 2 right (t2r) ")
        .contains("Cold: 80 psi Never over, cold: 80 psi")
        .contains("Set cold it has 80 psi cold here; at the start from Floydada TX")
        .contains("By 49 CFR 393.75 Table 1 it counts as 67 psi cold")
        .contains("gauge it again, with another gauge, before it rolls");
    run = run("figure", Run.DEMO, "--stop", "dalhart", "--tire", "t2r", "--reading", "67 psi");
    assertThat(words(run)).containsSubsequence("do not add air and go", "Set here");
    // Nothing is forecast at Raton, yet what is read there is judged: 64 psi is 80 % of 80 psi.
    run = run("figure", Run.GAP, "--stop", "raton", "--tire", "t2r", "--reading", "64 psi");
    assertThat(run.code()).isEqualTo(ExitCode.DONE);
    assertThat(words(run)).contains("do not add air and go");
    assertThat(run("figure", Run.GAP, "--stop", "raton", "--tire", "t2r").code())
        .isEqualTo(ExitCode.CONTENT);
    Run wrong = run("figure", Run.DEMO, "--stop", "dalhart", "--tire", "t2r", "--reading", "80");
    assertThat(wrong.code()).isEqualTo(ExitCode.USAGE);
    assertThat(wrong.err()).contains("80");
  }

  @Test
  void remindersAreToldAndExportedAgainWithoutDoubling(@TempDir Path folder) throws IOException {
    Run run = run("reminders", Run.DEMO);
    assertThat(words(run))
        .contains("WEDNESDAY 7 APRIL 2027 07:00 CDT · Gauge, cold: Floydada TX")
        .contains("All tires, cold, 07:00 to 07:55 CDT, before sun or driving warms them");
    Path calendar = folder.resolve("haul.ics");
    for (int export = 0; export < 2; export++) {
      assertThat(run("reminders", Run.DEMO, "--calendar", calendar.toString()).code())
          .isEqualTo(ExitCode.DONE);
      List<String> lines = Files.readAllLines(calendar);
      assertThat(lines).filteredOn(line -> line.equals("BEGIN:VEVENT")).hasSize(11);
      assertThat(lines).contains("SEQUENCE:" + export);
    }
    String before = Files.readString(calendar);
    Run another =
        run(
            "reminders",
            "demo-data/autumn-stock-haul.dawngauge",
            "--calendar",
            calendar.toString());
    assertThat(another.code()).isEqualTo(ExitCode.CONTENT);
    assertThat(another.err()).contains("holds 11 reminders of another trip");
    assertThat(Files.readString(calendar)).isEqualTo(before);
    // Another haul of the same name is another haul.
    String name = Run.planner().store().open(Path.of(Run.DEMO)).get().name();
    String autumn = Files.readString(Path.of("demo-data/autumn-stock-haul.dawngauge"));
    Path same = folder.resolve("same-name.dawngauge");
    Files.writeString(
        same, autumn.replaceFirst("\"name\": \"[^\"]*\"", "\"name\": \"" + name + "\""));
    Run named = run("reminders", same.toString(), "--calendar", calendar.toString());
    assertThat(named.code()).isEqualTo(ExitCode.CONTENT);
    assertThat(named.err()).contains("--replace");
    assertThat(Files.readString(calendar)).isEqualTo(before);
    Run replacing =
        run("reminders", same.toString(), "--calendar", calendar.toString(), "--replace");
    assertThat(replacing.code()).isEqualTo(ExitCode.DONE);
    assertThat(Files.readAllLines(calendar))
        .filteredOn(line -> line.equals("STATUS:CANCELLED"))
        .hasSize(11);
    Path other = folder.resolve("other.txt");
    Files.writeString(other, "mine");
    Run refused = run("reminders", Run.DEMO, "--calendar", other.toString());
    assertThat(refused.code()).isEqualTo(ExitCode.CONTENT);
    assertThat(refused.err()).contains("is not replaced");
    assertThat(Files.readString(other)).isEqualTo("mine");
  }

  @Test
  void theSheetIsAPdfFileAndNeverGoesToStandardOutput(@TempDir Path folder) throws IOException {
    Path out = folder.resolve("sheet.pdf");
    assertThat(run("sheet", Run.DEMO, "--out", out.toString(), "--paper", "a4", "--large").code())
        .isEqualTo(ExitCode.DONE);
    assertThat(new String(Files.readAllBytes(out), StandardCharsets.ISO_8859_1))
        .startsWith("%PDF-1.5");
    assertThat(run("sheet", Run.DEMO, "--out", "-").code()).isEqualTo(ExitCode.USAGE);
    assertThat(run("sheet", Run.DEMO).err()).contains("--out");
    assertThat(run("sheet", Run.DEMO, "--out", out.toString()).code())
        .isEqualTo(ExitCode.CANNOT_WRITE);
  }

  @Test
  void whereNoTimeIsKnownTheySayWhatIsMissing(@TempDir Path folder) {
    Path starter = folder.resolve("starter.dawngauge");
    assertThat(run("new", starter.toString()).code()).isEqualTo(ExitCode.DONE);
    for (String command : List.of("plan", "reminders")) {
      Run run = run(command, starter.toString());
      assertThat(run.code()).isEqualTo(ExitCode.CONTENT);
      assertThat(run.out()).isEmpty();
      assertThat(run.err()).contains("no time on the way is known", "departure");
    }
  }

  @Test
  void aTripFileThatDoesNotExistIsToldByItsExitCode() {
    for (String command : List.of("plan", "reminders")) {
      Run run = run(command, "no-such-file.dawngauge");
      assertThat(run.code()).isEqualTo(ExitCode.NO_FILE);
    }
  }
}
