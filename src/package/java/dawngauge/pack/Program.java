package dawngauge.pack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A program that is started as a user starts it, who has a home of his own and no Java.
 *
 * @param line what starts it
 * @param home the user's home
 */
record Program(List<String> line, Path home) {

  static final String DEMO = "demo-data/spring-fleece-haul.dawngauge";

  Program {
    line = List.copyOf(line);
  }

  /** Runs a command of it, and fails if that fails. */
  String run(String... arguments) throws IOException, InterruptedException {
    return run(Map.of(), arguments);
  }

  /** Runs it with something more in its environment. */
  String run(Map<String, String> more, String... arguments)
      throws IOException, InterruptedException {
    Map<String, String> environment = environment();
    environment.putAll(more);
    return Tool.run(typed(arguments), environment);
  }

  /** Starts it and leaves it running. */
  Process start(String... arguments) throws IOException {
    ProcessBuilder builder = new ProcessBuilder(typed(arguments));
    builder.environment().putAll(environment());
    builder
        .redirectErrorStream(true)
        .redirectOutput(Files.createTempFile(home, "window", ".log").toFile());
    return builder.start();
  }

  private List<String> typed(String... arguments) {
    List<String> typed = new ArrayList<>(line);
    typed.addAll(List.of(arguments));
    return typed;
  }

  private Map<String, String> environment() {
    return new HashMap<>(
        Map.of(
            "HOME", home.toString(),
            "XDG_DATA_HOME", home.resolve("data").toString(),
            "XDG_CACHE_HOME", home.resolve("cache").toString(),
            "JAVA_HOME", home.resolve("no-java").toString()));
  }
}
