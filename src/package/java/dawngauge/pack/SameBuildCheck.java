package dawngauge.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The same sources give the same program folder, byte by byte, wherever and when they are built.
 */
class SameBuildCheck {

  @Test
  void anotherBuildGivesTheSameBytes(@TempDir Path elsewhere) throws Exception {
    for (String part : List.of("src", "config", "docs", "demo-data", ".mvn")) {
      Folders.copy(Path.of(part), elsewhere.resolve(part));
    }
    Files.copy(Path.of("pom.xml"), elsewhere.resolve("pom.xml"));
    Tool.run(
        List.of(
            "mvn",
            "-q",
            "-o",
            "-DskipTests",
            "-f",
            elsewhere.resolve("pom.xml").toString(),
            "package"),
        Map.of("TZ", "Pacific/Auckland", "LC_ALL", "C"));
    Map<Path, Long> first = checksums(Path.of("target", "dawngauge"));
    assertThat(first).containsKey(Path.of("bin", "dawngauge")).hasSizeGreaterThan(30);
    assertThat(checksums(elsewhere.resolve("target/dawngauge")))
        .containsExactlyInAnyOrderEntriesOf(first);
  }

  /** Of all files but the classes that a start laid down. */
  private static Map<Path, Long> checksums(Path folder) throws Exception {
    Map<Path, Long> sums = new TreeMap<>();
    for (Path file : Folders.files(folder)) {
      Path name = folder.relativize(file);
      if (!name.startsWith("cache")) {
        CRC32 sum = new CRC32();
        sum.update(Files.readAllBytes(file));
        sums.put(name, sum.getValue());
      }
    }
    return sums;
  }
}
