package dawngauge.pack;

import dawngauge.ledger.Credits;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.List;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** Lays out whose work is in the package: credits, parts list, and the text of every license. */
final class Licences {

  private static final Pattern CARRIED =
      Pattern.compile("(?i)(?!.*/versions/)(.*/)?[^/]*(licen[sc]e|notice|[lm]gpl|mpl-)[^/]*");

  private final Path texts;

  private Licences(Path texts) {
    this.texts = texts;
  }

  /**
   * Lays them out.
   *
   * @param jars the program's
   * @param runtime its Java, which carries its own texts
   * @param partsList the list of parts that the build wrote (CycloneDX)
   * @param to the new folder
   * @throws IllegalStateException where the text of a license is nowhere
   */
  static void layOut(Jars jars, Path runtime, Path partsList, Path to) throws IOException {
    Path texts = Files.createDirectories(to.resolve("texts"));
    Path docs = Path.of("docs");
    Files.copy(docs.resolve("LICENSE.txt"), to.resolve("LICENSE.txt"));
    Files.copy(docs.resolve("credits.md"), to.resolve("credits.md"));
    Files.copy(partsList, to.resolve("parts.cdx.json"));
    Folders.copy(Path.of("src", "package", "licences"), texts);
    Files.copy(docs.resolve("LICENSE.txt"), texts.resolve("Apache-2.0.txt"));
    Files.copy(
        runtime.resolve("legal/java.base/LICENSE"),
        texts.resolve("GPL-2.0-with-classpath-exception.txt"));
    Files.copy(
        Path.of("src/main/resources/dawngauge/report/fonts/LICENSE.txt"),
        texts.resolve("fonts-of-the-sheet.txt"));
    Licences licences = new Licences(texts);
    for (Credits.Library library : Credits.libraries()) {
      licences.add(library, jars, to);
    }
  }

  private void add(Credits.Library library, Jars jars, Path to) throws IOException {
    int carried = 0;
    for (String name : library.jars()) {
      for (Path jar : jars.of(name)) {
        carried += carried(jar, to.resolve(name));
      }
    }
    boolean known =
        List.of(library.license().split(" OR ", -1)).stream()
            .anyMatch(license -> Files.exists(texts.resolve(license + ".txt")));
    if (carried == 0 && !known) {
      throw new IllegalStateException(
          library.name()
              + " carries no license, and src/package/licences has none for "
              + library.license());
    }
  }

  private static int carried(Path jar, Path to) throws IOException {
    int count = 0;
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      Enumeration<? extends ZipEntry> entries = zip.entries();
      while (entries.hasMoreElements()) {
        ZipEntry entry = entries.nextElement();
        if (isText(entry)) {
          Files.createDirectories(to);
          try (InputStream in = zip.getInputStream(entry)) {
            Files.copy(in, to.resolve(entry.getName().replaceFirst(".*/", "")));
          }
          count++;
        }
      }
    }
    return count;
  }

  private static boolean isText(ZipEntry entry) {
    return !entry.isDirectory()
        && !entry.getName().endsWith(".class")
        && CARRIED.matcher(entry.getName()).matches();
  }
}
