package dawngauge.pack;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** A Java of no more than the program needs. */
final class OwnRuntime {

  /**
   * What jdeps cannot see, since it is looked up by name: elliptic curves, without which most
   * servers refuse TLS; decimal commas and names of months of the user's language; encodings of
   * files from other systems, and of file names.
   */
  private static final Set<String> LOOKED_UP =
      Set.of("jdk.crypto.ec", "jdk.localedata", "jdk.charsets");

  private OwnRuntime() {}

  /** The modules that the jars use, directly or by their libraries, and what is looked up. */
  static Set<String> modules(Jars jars) throws IOException, InterruptedException {
    String path =
        jars.all().stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
    String printed =
        Tool.ofJdk(
            "jdeps",
            List.of(
                "--print-module-deps",
                "--ignore-missing-deps",
                "--recursive",
                "--multi-release",
                "17",
                "--class-path",
                path,
                jars.own().toString()));
    List<String> lines = printed.strip().lines().toList();
    Set<String> modules = new TreeSet<>(List.of(lines.get(lines.size() - 1).split(",", -1)));
    modules.addAll(LOOKED_UP);
    return modules;
  }

  /** Writes it, with an archive of Java's own classes, on which the program's rests. */
  static void link(Set<String> modules, Path to) throws IOException, InterruptedException {
    Tool.ofJdk(
        "jlink",
        List.of(
            "--add-modules",
            String.join(",", modules),
            "--strip-debug",
            "--no-header-files",
            "--no-man-pages",
            "--output",
            to.toString()));
    Tool.run(List.of(to.resolve("bin").resolve("java").toString(), "-Xshare:dump"), Map.of());
  }
}
