package dawngauge.pack;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Runs a program that a build or its check needs. */
final class Tool {

  private Tool() {}

  /** Runs a tool of the JDK that builds, as {@link #run} does. */
  static String ofJdk(String name, List<String> arguments)
      throws IOException, InterruptedException {
    List<String> line = new ArrayList<>();
    line.add(jdk(name));
    line.addAll(arguments);
    return run(line, Map.of());
  }

  /** Where a tool of the JDK that builds lies. */
  static String jdk(String name) {
    return Path.of(System.getProperty("java.home", ""), "bin", name).toString();
  }

  /**
   * Runs a program to its end.
   *
   * @param line the program and its arguments
   * @param environment what it is told beside what this process was told
   * @return what it printed, errors among it
   * @throws IllegalStateException if it fails, with what it said
   */
  static String run(List<String> line, Map<String, String> environment)
      throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(line).redirectErrorStream(true);
    builder.environment().putAll(environment);
    Process process = builder.start();
    process.getOutputStream().close();
    String said = new String(process.getInputStream().readAllBytes(), UTF_8);
    if (process.waitFor() != 0) {
      throw new IllegalStateException(String.join(" ", line) + " failed:\n" + said);
    }
    return said;
  }
}
