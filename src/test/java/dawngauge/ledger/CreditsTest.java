package dawngauge.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The credits name what is in the program, and nothing else. */
class CreditsTest {

  private static final Pattern DEPENDENCY = Pattern.compile("(?s)<dependency>(.*?)</dependency>");
  private static final Pattern ARTIFACT = Pattern.compile("<artifactId>(.*?)</artifactId>");

  /** The license of Dawngauge must be the one that its page and its build file name. */
  @Test
  void theLicenseIsTheSameEverywhere() throws IOException {
    assertThat(pom()).contains("<name>Apache-2.0</name>");
    assertThat(Files.readString(Path.of("docs", "LICENSE.txt")))
        .contains("Apache License\n", "Version 2.0, January 2004");
    assertThat(Files.readString(Path.of("docs", "credits.md")))
        .contains("Dawngauge is under the [Apache License 2.0](LICENSE.txt)");
  }

  @Test
  void everyLibraryOfTheBuildIsCredited() throws IOException {
    String own = pom().split("<dependencies>", -1)[2].split("</dependencies>", -1)[0];
    Set<String> used =
        DEPENDENCY
            .matcher(own)
            .results()
            .map(match -> match.group(1))
            .filter(text -> !text.contains("<scope>"))
            .map(CreditsTest::artifact)
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(used).contains("picocli", "javafx-controls").hasSizeGreaterThan(12);
    assertThat(credited()).containsAll(used);
  }

  /** Those that come along with others too: the packages' build compares all jars. */
  @Test
  void everyCreditedJarIsUsed() {
    List<String> jars =
        Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator, -1))
            .map(entry -> Path.of(entry).getFileName().toString())
            .toList();
    assertThat(credited())
        .doesNotHaveDuplicates()
        .allSatisfy(
            name ->
                assertThat(jars)
                    .anyMatch(jar -> jar.matches(Pattern.quote(name) + "-\\d[\\w.-]*\\.jar")));
  }

  @Test
  void dataAreNamedWithTheirLicense() {
    assertThat(Credits.data())
        .extracting(Glossary.Entry::word)
        .startsWith("Places", "Map", "Ground", "Climate normals");
    assertThat(Credits.data().get(0).meaning()).contains("GeoNames", "CC BY 4.0", "changed");
  }

  @Test
  void theVersionIsThatOfTheBuildAndOfTheNewestChanges() throws IOException {
    assertThat(ProgramVersion.NUMBER).matches("\\d+\\.\\d+\\.\\d+");
    assertThat(pom()).contains("<version>" + ProgramVersion.NUMBER + "</version>\n  <name>");
    assertThat(Files.readString(Path.of("docs", "changelog.md")).split("\n## ", -1)[1])
        .startsWith(ProgramVersion.NUMBER + " · ");
  }

  private static String pom() throws IOException {
    return Files.readString(Path.of("pom.xml"));
  }

  private static List<String> credited() {
    return Credits.libraries().stream().flatMap(library -> library.jars().stream()).toList();
  }

  private static String artifact(String dependency) {
    return ARTIFACT.matcher(dependency).results().findFirst().orElseThrow().group(1);
  }
}
