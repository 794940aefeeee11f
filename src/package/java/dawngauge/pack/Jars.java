package dawngauge.pack;

import dawngauge.ledger.Credits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The jars of the program, as the build laid them out.
 *
 * @param folder where they lie
 * @param all the jars, sorted
 */
record Jars(Path folder, List<Path> all) {

  static final String OWN = "dawngauge";

  private static final Pattern JAR =
      Pattern.compile("([a-z][a-z0-9-]*?)-\\d[\\w.]*(-[\\w-]+)?\\.jar");

  Jars {
    all = List.copyOf(all);
  }

  /**
   * Those of a folder.
   *
   * @throws IllegalStateException if a library is not credited, or is that of another system
   */
  static Jars of(Path folder) throws IOException {
    List<Path> found;
    try (Stream<Path> files = Files.list(folder)) {
      found = files.filter(file -> file.toString().endsWith(".jar")).sorted().toList();
    }
    Jars jars = new Jars(folder, found);
    jars.check(system());
    return jars;
  }

  /** Fails where they are not those that are credited, or not those of one system. */
  void check(String system) {
    Set<String> there = all.stream().map(Jars::name).collect(Collectors.toCollection(TreeSet::new));
    Set<String> credited = new TreeSet<>(Set.of(OWN));
    Credits.libraries().forEach(library -> credited.addAll(library.jars()));
    if (!there.equals(credited)) {
      throw new IllegalStateException(
          "jars of the program: " + there + "; credited in docs/credits.md: " + credited);
    }
    List<String> twice =
        all.stream().map(jar -> name(jar) + " " + classifier(jar)).collect(Collectors.toList());
    new TreeSet<>(twice).forEach(twice::remove);
    if (!twice.isEmpty()) {
      throw new IllegalStateException(twice + " twice in " + folder + "; build with mvn clean");
    }
    for (Path jar : all) {
      String classifier = classifier(jar);
      if (!classifier.isEmpty() && !classifier.equals(system)) {
        throw new IllegalStateException(
            jar.getFileName() + " is of another system than " + system + "; build on that one");
      }
    }
    if (all.stream().noneMatch(jar -> classifier(jar).equals(system))) {
      throw new IllegalStateException("no window library of " + system + " in " + folder);
    }
  }

  /** The program's own. */
  Path own() {
    return of(OWN).get(0);
  }

  /** Those of a name; the window library's are two, of which one holds nothing. */
  List<Path> of(String name) {
    return all.stream().filter(jar -> name(jar).equals(name)).toList();
  }

  private static String name(Path jar) {
    return match(jar).group(1);
  }

  private static String classifier(Path jar) {
    String classifier = match(jar).group(2);
    return classifier == null ? "" : classifier.substring(1);
  }

  private static Matcher match(Path jar) {
    Matcher matcher = JAR.matcher(jar.getFileName().toString());
    if (!matcher.matches()) {
      throw new IllegalStateException(jar + " has no name and version");
    }
    return matcher;
  }

  /** This system, as the window library's jars name it. */
  private static String system() {
    String name = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    String kind = name.contains("win") ? "win" : name.contains("mac") ? "mac" : "linux";
    return System.getProperty("os.arch", "").equals("aarch64") ? kind + "-aarch64" : kind;
  }
}
