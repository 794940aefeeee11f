package dawngauge;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the documents name exists, and the folder holds what belongs there. */
class DocsTest {
  private static final Path PROJECT = Path.of("").toAbsolutePath();

  private static final Set<String> TOP_LEVEL =
      Set.of(
          "README.md", "DEVELOPERS.md", "pom.xml", "src", "demo-data", "docs", "config", "target");

  /** Names in back-ticks that are of the JDK or of a library. */
  private static final Set<String> FOREIGN = Set.of("Application", "Clock");

  /** A class, perhaps nested, perhaps followed by a member: `Loads.AxleLoad`, `Trip.withLog(…)`. */
  private static final Pattern CLASS_NAME =
      Pattern.compile(
          "`((?:[A-Z]\\w*\\.)*[A-Z]\\w*[a-z]\\w*)(?:[.#][a-z]\\w*)?(?:\\([^`]*\\))?(?:<[^`]*>)?`");

  private static final Pattern FULL_NAME =
      Pattern.compile("\\bdawngauge(?:\\.[a-z]\\w*)*\\.[A-Z]\\w*(?:\\.[A-Z]\\w*)*");

  /** A place on somebody's machine. Built so that this file does not match. */
  private static final Pattern MACHINE_PATH =
      Pattern.compile("(?<![\\w.-])/(?:home|tmp|work|root)/");

  @Test
  void classesInTheDocumentsExist() {
    List<Path> documents = documents();
    assertThat(documents).isNotEmpty();
    Known known = Known.onTheClassPath();
    for (Path document : documents) {
      assertThat(known.missing(text(document))).as(document.toString()).isEmpty();
    }
  }

  @Test
  void aClassThatDoesNotExistIsFound() {
    Known known = Known.onTheClassPath();
    assertThat(
            known.missing(
                "`Trip`, `Loads.AxleLoad`, `Itinerary.of(trip)`, `Outcome<T>`, `DocsTest`, `Clock`,"
                    + " dawngauge.trip.Trip, dawngauge.Main, `GAWR`, `psi`, `Trip file`"))
        .isEmpty();
    assertThat(
            known.missing(
                "`TripPlanner`, `Loads.NoSuchLoad`, `NoSuch.of(trip)`, dawngauge.trip.Trips,"
                    + " `dawngauge.geo.Trip`"))
        .containsExactly(
            "Loads.NoSuchLoad",
            "NoSuch",
            "TripPlanner",
            "dawngauge.geo.Trip",
            "dawngauge.trip.Trips");
  }

  @Test
  void theFolderHoldsWhatBelongsThere() throws IOException {
    try (Stream<Path> entries = Files.list(PROJECT)) {
      Set<String> names =
          entries
              .map(entry -> entry.getFileName().toString())
              .filter(name -> !name.startsWith("."))
              .collect(Collectors.toSet());
      assertThat(names).contains("pom.xml", "src", "docs", "config");
      assertThat(TOP_LEVEL).containsAll(names);
    }
  }

  @Test
  void noFileNamesAPlaceOnSomebodysMachine() throws IOException {
    List<String> found = new ArrayList<>();
    int read = 0;
    for (String folder : TOP_LEVEL) {
      if (!folder.equals("target") && Files.exists(PROJECT.resolve(folder))) {
        for (Path file : filesUnder(PROJECT.resolve(folder))) {
          read++;
          Matcher matcher = MACHINE_PATH.matcher(text(file));
          if (matcher.find()) {
            found.add(PROJECT.relativize(file) + " at character " + matcher.start());
          }
        }
      }
    }
    assertThat(found).isEmpty();
    assertThat(read).isGreaterThan(100);
  }

  @Test
  void aPlaceOnSomebodysMachineIsFound() {
    for (String folder : List.of("home", "tmp", "work", "root")) {
      String path = "/" + folder + "/";
      assertThat(MACHINE_PATH.matcher("see " + path + "notes").find()).isTrue();
      assertThat(MACHINE_PATH.matcher("\"" + path + "x\"").find()).isTrue();
      assertThat(MACHINE_PATH.matcher("file://" + path + "x").find()).isTrue();
      assertThat(MACHINE_PATH.matcher("https://example.org" + path).find()).isFalse();
    }
  }

  private static List<Path> documents() {
    List<Path> all = new ArrayList<>();
    for (String name : List.of("README.md", "DEVELOPERS.md")) {
      if (Files.exists(PROJECT.resolve(name))) {
        all.add(PROJECT.resolve(name));
      }
    }
    filesUnder(PROJECT.resolve("docs")).stream()
        .filter(file -> file.toString().endsWith(".md"))
        .forEach(all::add);
    return all;
  }

  private static List<Path> filesUnder(Path place) {
    try (Stream<Path> files = Files.walk(place)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private static String text(Path file) {
    try {
      return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /**
   * The classes there are, tests included.
   *
   * @param full with package, nested ones behind a point
   * @param simple without package
   */
  private record Known(Set<String> full, Set<String> simple) {

    static Known onTheClassPath() {
      Set<String> full = new HashSet<>();
      Set<String> simple = new HashSet<>(FOREIGN);
      for (JavaClass found : new ClassFileImporter().importPackages("dawngauge")) {
        String name = found.getName().replace('$', '.');
        full.add(name);
        String below = name.substring(found.getPackageName().length() + 1);
        simple.add(below);
        simple.add(below.substring(below.lastIndexOf('.') + 1));
      }
      return new Known(full, simple);
    }

    /** Whether a class is compiled only to derive data or to measure speed. */
    private static boolean isBeside(String name) {
      return Stream.of("derive", "bench")
          .map(part -> Path.of("src", part, "java").resolve(name.replace('.', '/') + ".java"))
          .anyMatch(Files::exists);
    }

    /** Names of classes in a text that no class has. */
    Set<String> missing(String text) {
      Set<String> missing = new TreeSet<>();
      CLASS_NAME
          .matcher(text)
          .results()
          .map(match -> match.group(1))
          .filter(name -> !simple.contains(name))
          .forEach(missing::add);
      FULL_NAME
          .matcher(text)
          .results()
          .map(MatchResult::group)
          .filter(name -> !full.contains(name))
          .filter(name -> !isBeside(name))
          .forEach(missing::add);
      return missing;
    }
  }
}
