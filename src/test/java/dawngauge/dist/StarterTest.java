package dawngauge.dist;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The starter, before a program that says what it was given and ends by its status. */
@DisabledOnOs(
    value = OS.WINDOWS,
    disabledReason = "the starter is a shell script; Windows has that of its package")
class StarterTest {

  private static final String MAIN =
      "package dawngauge; public class Main { public static void main(String[] a) {"
          + " System.out.println(String.join(\"|\", a)); System.exit(a.length == 0 ? 0 : 3); } }";

  @TempDir private Path folder;

  private Path program;
  private Path cache;

  @BeforeEach
  void layOut() throws IOException {
    program = folder.resolve("a program");
    cache = folder.resolve("cache");
    Path lib = Files.createDirectories(program.resolve("lib"));
    Path bin = Files.createDirectories(program.resolve("bin"));
    Path starter = Files.copy(Path.of("src", "dist", "bin", "dawngauge"), bin.resolve("dawngauge"));
    Files.copy(Path.of("src", "dist", "jvm-options"), lib.resolve("jvm-options"));
    Files.setPosixFilePermissions(starter, PosixFilePermissions.fromString("rwxr-xr-x"));
    Path source = Files.createDirectories(folder.resolve("dawngauge")).resolve("Main.java");
    Files.writeString(source, MAIN);
    int compiled =
        ToolProvider.getSystemJavaCompiler()
            .run(null, null, null, "-d", folder.resolve("classes").toString(), source.toString());
    assertThat(compiled).isZero();
    try (OutputStream out = Files.newOutputStream(lib.resolve("program.jar"));
        JarOutputStream jar = new JarOutputStream(out)) {
      jar.putNextEntry(new JarEntry("dawngauge/Main.class"));
      jar.write(Files.readAllBytes(folder.resolve("classes/dawngauge/Main.class")));
      jar.closeEntry();
    }
  }

  private record Run(int status, String text) {}

  private Run run(Path home, String... arguments) throws IOException, InterruptedException {
    List<String> line = new ArrayList<>(List.of(home.resolve("bin/dawngauge").toString()));
    line.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(line).redirectErrorStream(true);
    builder.directory(folder.toFile());
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    builder.environment().put("XDG_CACHE_HOME", cache.toString());
    Process process = builder.start();
    String text = new String(process.getInputStream().readAllBytes(), UTF_8);
    assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
    return new Run(process.exitValue(), text);
  }

  private static List<String> archives(Path store) throws IOException {
    if (!Files.isDirectory(store)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(store)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  /** Text and status are the program's, whether its classes are laid down, read back or neither. */
  @Test
  void theFirstStartLaysDownWhatTheNextReadsBack() throws Exception {
    Run expected = new Run(3, "forecast|my haul.dawngauge\n");
    assertThat(run(program, "forecast", "my haul.dawngauge")).isEqualTo(expected);
    List<String> laidDown = archives(program.resolve("cache"));
    assertThat(laidDown).singleElement().asString().matches("command-\\d+\\.jsa");
    assertThat(run(program, "forecast", "my haul.dawngauge")).isEqualTo(expected);
    assertThat(run(program)).isEqualTo(new Run(0, "\n"));
    assertThat(archives(program.resolve("cache"))).hasSize(2).contains(laidDown.get(0));
    assertThat(archives(cache)).isEmpty();
  }

  /** As from a folder of commands, by a link; what it starts is the program that it leads to. */
  @Test
  void aLinkStartsTheProgram() throws Exception {
    Path commands = Files.createDirectories(folder.resolve("commands/bin"));
    Files.createSymbolicLink(commands.resolve("dawngauge"), program.resolve("bin/dawngauge"));
    assertThat(run(commands.getParent(), "forecast")).isEqualTo(new Run(3, "forecast\n"));
    assertThat(archives(program.resolve("cache"))).hasSize(1);
  }

  /** As packages lay it out: jars one deeper, beside a Java that goes before the machine's. */
  @Test
  void aJavaOfItsOwnGoesFirst() throws Exception {
    Path lib = program.resolve("lib");
    Path app = Files.createDirectories(lib.resolve("app"));
    for (String name : List.of("program.jar", "jvm-options")) {
      Files.move(lib.resolve(name), app.resolve(name));
    }
    assertThat(run(program, "forecast")).isEqualTo(new Run(3, "forecast\n"));
    Path own = Files.createDirectories(lib.resolve("runtime/bin")).resolve("java");
    Files.writeString(own, "#!/bin/sh\necho own\n");
    Files.setPosixFilePermissions(own, PosixFilePermissions.fromString("rwxr-xr-x"));
    assertThat(run(program, "forecast")).isEqualTo(new Run(0, "own\n"));
  }

  /** A folder that was moved starts as before, and replaces what belonged to the old place. */
  @Test
  void aMovedFolderStartsSilently() throws Exception {
    run(program, "forecast");
    List<String> before = archives(program.resolve("cache"));
    Path moved = Files.move(program, folder.resolve("elsewhere"));
    assertThat(run(moved, "forecast")).isEqualTo(new Run(3, "forecast\n"));
    assertThat(archives(moved.resolve("cache"))).hasSize(1).doesNotContainAnyElementsOf(before);
  }

  /** What Java refuses is passed over without a word. */
  @Test
  void aSpoiltArchiveIsPassedOver() throws Exception {
    run(program, "forecast");
    Path archive = program.resolve("cache").resolve(archives(program.resolve("cache")).get(0));
    Files.writeString(archive, "spoilt");
    assertThat(run(program, "forecast")).isEqualTo(new Run(3, "forecast\n"));
  }

  /** Another jar is another program: its classes are laid down anew. */
  @Test
  void anotherVersionLaysItsOwnDown() throws Exception {
    run(program, "forecast");
    List<String> before = archives(program.resolve("cache"));
    Files.copy(program.resolve("lib/program.jar"), program.resolve("lib/z.jar"));
    assertThat(run(program, "forecast")).isEqualTo(new Run(3, "forecast\n"));
    assertThat(archives(program.resolve("cache"))).hasSize(1).doesNotContainAnyElementsOf(before);
  }
}
