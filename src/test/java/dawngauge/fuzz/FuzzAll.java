package dawngauge.fuzz;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Searches every reader for input that it fails on, led by what of the code is reached; each in a
 * process of its own. What was reached stays in {@code target/fuzz/READER/corpus}, so that the next
 * run goes on from there; input that fails is put beside it.
 */
public final class FuzzAll {

  /** What the search looks into. */
  private static final String LED_BY =
      "--instrumentation_includes=dawngauge.**:io.jenetics.jpx.**:de.siegmar.fastcsv.**";

  private static final Path SEEDS =
      Path.of("src", "test", "resources", "dawngauge", "fuzz").toAbsolutePath();

  private static final PrintStream OUT = System.out;

  private FuzzAll() {}

  /** The arguments are the minutes for all, and perhaps the readers by name. */
  public static void main(String[] args) throws IOException, InterruptedException {
    List<Reader> readers = new ArrayList<>();
    for (int i = 1; i < args.length; i++) {
      readers.add(Reader.valueOf(args[i].toUpperCase(Locale.ROOT)));
    }
    if (readers.isEmpty()) {
      readers.addAll(List.of(Reader.values()));
    }
    Duration each = Duration.ofMinutes(Long.parseLong(args[0])).dividedBy(readers.size());
    boolean failed = false;
    for (Reader reader : readers) {
      failed |= search(reader, each);
    }
    if (failed) {
      System.exit(1);
    }
  }

  private static boolean search(Reader reader, Duration length)
      throws IOException, InterruptedException {
    String name = reader.name().toLowerCase(Locale.ROOT);
    Path folder = Path.of("target", "fuzz", name).toAbsolutePath();
    Path corpus = Files.createDirectories(folder.resolve("corpus"));
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home", ""), "bin", "java").toString(),
                "-Xmx1g",
                "-cp",
                System.getProperty("java.class.path", ""),
                "com.code_intelligence.jazzer.Jazzer",
                "--target_class=" + FuzzTarget.class.getName(),
                "--target_args=" + reader.name(),
                LED_BY,
                "--keep_going=20",
                "--reproducer_path=" + folder,
                "-artifact_prefix=" + folder + "/",
                "-max_total_time=" + length.toSeconds(),
                "-max_len=20000",
                "-timeout=20",
                "-rss_limit_mb=3000",
                "-print_final_stats=1",
                corpus.toString()));
    if (Files.isDirectory(SEEDS.resolve(name))) {
      command.add(SEEDS.resolve(name).toString());
    }
    Path log = folder.resolve("log.txt");
    new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(log.toFile())
        .start()
        .waitFor();
    List<String> crashes = named(folder, "crash-", "timeout-", "oom-");
    OUT.println(
        name + ": " + runs(log) + ", " + named(corpus, "").size() + " kept, failing " + crashes);
    return !crashes.isEmpty();
  }

  private static String runs(Path log) throws IOException {
    try (Stream<String> lines = Files.lines(log, java.nio.charset.StandardCharsets.ISO_8859_1)) {
      return lines
          .filter(line -> line.startsWith("stat::number_of_executed_units"))
          .findFirst()
          .map(line -> line.replaceAll("\\D+", "") + " inputs")
          .orElse("did not run to its end, see " + log);
    }
  }

  private static List<String> named(Path folder, String... beginnings) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> "" + file.getFileName())
          .filter(name -> Stream.of(beginnings).anyMatch(name::startsWith))
          .sorted()
          .toList();
    }
  }
}
