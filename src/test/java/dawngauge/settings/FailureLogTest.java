package dawngauge.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What went wrong is kept for a report, and nothing of the trip with it. */
class FailureLogTest {

  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2027-04-06T12:00:00.123Z"), ZoneOffset.UTC);

  private final Path folder;

  FailureLogTest(@TempDir Path folder) {
    this.folder = folder.resolve("own");
  }

  private FailureLog log() {
    return new FailureLog(folder, CLOCK);
  }

  private static Throwable at(Throwable failure, String place, int line) {
    failure.setStackTrace(
        new StackTraceElement[] {
          new StackTraceElement("dawngauge.planner." + place, "plan", place + ".java", line)
        });
    return failure;
  }

  @Test
  void itTellsKindsOfErrorAndPlacesInTheCode() {
    Throwable cause = at(new ArithmeticException("/ by zero"), "Inner", 7);
    log().keep(at(new IllegalStateException(cause), "Outer", 12));
    assertThat(log().text().lines().skip(1))
        .containsExactly(
            "java.lang.IllegalStateException",
            "  dawngauge.planner.Outer.plan:12",
            "because of java.lang.ArithmeticException",
            "  dawngauge.planner.Inner.plan:7",
            "");
    assertThat(log().text()).startsWith("2027-04-06T12:00:00Z Dawngauge ");
  }

  /** Words of errors quote what was typed; a file error names its path. */
  @Test
  void nothingOfTheTripIsInIt() {
    for (String told : List.of("Quanah TX", "crew@example.org", "crew/spring.dawngauge")) {
      log().keep(new IllegalStateException(told, new NoSuchFileException(told)));
      log().keep(new NumberFormatException("For input string: \"" + told + "\""));
    }
    assertThat(log().text())
        .contains("NumberFormatException", "NoSuchFileException")
        .doesNotContain("Quanah", "crew", "spring", "example");
  }

  @Test
  void theSameFailureIsKeptOnceARunAndAnewInTheNext() {
    FailureLog one = log();
    for (int i = 0; i < 5; i++) {
      one.keep(at(new IllegalStateException("try " + i), "Outer", 12));
    }
    assertThat(kept()).isEqualTo(1);
    log().keep(at(new IllegalStateException("another run"), "Outer", 12));
    assertThat(kept()).isEqualTo(2);
  }

  private long kept() {
    return log().text().lines().filter(line -> line.startsWith("2027-")).count();
  }

  @Test
  void itStaysSmallAndKeepsTheNewest() throws IOException {
    for (int run = 0; run < 60; run++) {
      FailureLog log = log();
      for (int line = 0; line < 50; line++) {
        log.keep(at(new IllegalStateException(), "Outer", run * 100 + line));
      }
    }
    try (var files = Files.list(folder)) {
      assertThat(files.toList())
          .hasSize(2)
          .allSatisfy(file -> assertThat(Files.size(file)).isLessThan(65 * 1024));
    }
    assertThat(log().text()).contains("Outer.plan:5949\n").doesNotContain("Outer.plan:0\n");
  }

  /** A cause that leads back to itself, and one without end. */
  @Test
  void itEndsWhereCausesDoNot() {
    IllegalStateException first = new IllegalStateException("a");
    first.initCause(new IllegalStateException("b", first));
    log().keep(first);
    assertThat(log().text().lines().filter(line -> line.startsWith("because of"))).hasSize(3);
  }

  @Test
  void aFolderThatCannotBeWrittenCostsTheLogOnly() throws IOException {
    Files.writeString(folder, "a file in its place");
    log().keep(new IllegalStateException());
    assertThat(log().text()).isEmpty();
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void onlyTheOwnerMayReadIt() throws IOException {
    log().keep(new IllegalStateException());
    Path file = folder.resolve("failures.log");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-------");
  }
}
