package dawngauge.pack;

import static java.nio.charset.StandardCharsets.UTF_8;

import dawngauge.ledger.ProgramVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Makes the folder with a runtime of its own, and of it the package of this system: a Debian
 * package on Linux. On Windows and macOS jpackage's own launcher stands in for the starter.
 */
public final class MakePackages {

  private static final String NAME = "dawngauge";
  static final Path PICTURE = Path.of("src", "package", NAME + ".svg");
  private static final String DESCRIPTION = "Forecasts tire pressure along a trailer haul";
  static final String MIME_TYPE = "application/x-dawngauge";

  /** What the window library needs of a Debian, which jpackage cannot see within its jars. */
  private static final String WINDOW_NEEDS = "libgtk-3-0, libgl1, libxtst6, libxxf86vm1";

  /** Jpackage's own launcher, of which nothing is left where the starter stands in its place. */
  private static final List<String> OF_LAUNCHER =
      List.of("lib/libapplauncher.so", "lib/app/" + NAME + ".cfg");

  private static final String LICENCES = "licences";
  private static final String DEMOS = "demo-data";
  private static final List<String> EXTRA = List.of(LICENCES, DEMOS);

  private final Path program;
  private final Path work;
  private final Path out;
  private final String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);

  private MakePackages(Path target) {
    program = target.resolve(NAME);
    work = target.resolve("package-work");
    out = target.resolve("packages");
  }

  /** Makes them in a build's target folder, after the program folder and the list of parts. */
  public static void main(String[] target) throws IOException, InterruptedException {
    new MakePackages(Path.of(target[0])).make(Path.of(target[1]));
  }

  private void make(Path partsList) throws IOException, InterruptedException {
    if (!Files.exists(partsList)) {
      throw new IllegalStateException(
          "no list of parts at "
              + partsList
              + ": its plugin makes none under mvn -o; leave that out");
    }
    Folders.remove(work);
    Folders.remove(out);
    Files.createDirectories(work);
    Jars jars = Jars.of(program.resolve("lib"));
    Path runtime = work.resolve("runtime");
    OwnRuntime.link(OwnRuntime.modules(jars), runtime);
    Path icon = icon();
    Tool.ofJdk("jpackage", imageOptions(jars, runtime, icon));
    Path image = out.resolve(isMac() ? NAME + ".app" : NAME);
    Path home = isMac() ? image.resolve("Contents") : image;
    Licences.layOut(jars, runtime, partsList, Files.createDirectories(home.resolve(LICENCES)));
    Folders.copy(program.resolve(DEMOS), home.resolve(DEMOS));
    if (isLinux()) {
      startByStarter(image);
    }
    List<String> line = new ArrayList<>(List.of(Tool.jdk("jpackage")));
    line.addAll(packageOptions(image, icon));
    Tool.run(line, DebianPackage.NOT_SMALL);
    if (isLinux()) {
      DebianPackage.complete(out, image, EXTRA, work.resolve("deb"));
    }
    Folders.remove(work);
    tell();
  }

  private Path icon() throws IOException {
    if (isLinux()) {
      return write(NAME + ".png", Picture.png(PICTURE, 128));
    }
    byte[] png = Picture.png(PICTURE, 256);
    return isWindows()
        ? write(NAME + ".ico", Picture.ico(png))
        : write(NAME + ".icns", Picture.icns(png));
  }

  private List<String> imageOptions(Jars jars, Path runtime, Path icon) throws IOException {
    List<String> options = new ArrayList<>(common());
    options.addAll(
        List.of(
            "--type", "app-image",
            "--input", jars.folder().toString(),
            "--main-jar", jars.own().getFileName().toString(),
            "--main-class", "dawngauge.Main",
            "--runtime-image", runtime.toString(),
            "--icon", icon.toString()));
    for (String option : Files.readAllLines(jars.folder().resolve("jvm-options"))) {
      if (!option.startsWith("#")) {
        options.addAll(List.of("--java-options", option));
      }
    }
    if (isWindows()) {
      options.add("--win-console");
    }
    return options;
  }

  private List<String> packageOptions(Path image, Path icon) throws IOException {
    Path type =
        write(
            "file-type.properties",
            "extension=dawngauge\nmime-type=%s\ndescription=Dawngauge trip\nicon=%s\n"
                .formatted(MIME_TYPE, icon.toString().replace("\\", "/"))
                .getBytes(UTF_8));
    List<String> options = new ArrayList<>(common());
    options.addAll(
        List.of(
            "--app-image", image.toString(),
            "--file-associations", type.toString(),
            "--license-file", Path.of("docs", "LICENSE.txt").toString()));
    if (isLinux()) {
      options.addAll(
          List.of(
              "--type",
              "deb",
              "--icon",
              icon.toString(),
              "--resource-dir",
              Path.of("src", "package", "linux").toString(),
              "--linux-menu-group",
              "Utility;",
              "--linux-app-category",
              "utils",
              "--linux-package-deps",
              WINDOW_NEEDS,
              "--linux-shortcut"));
    }
    if (isWindows()) {
      options.addAll(List.of("--win-menu", "--win-dir-chooser"));
    }
    return options;
  }

  /** MacOS refuses a version that begins with 0; About has the true one. */
  private List<String> common() {
    String version = ProgramVersion.NUMBER;
    return List.of(
        "--name",
        NAME,
        "--app-version",
        isMac() ? version.replaceFirst("^0\\.", "1.") : version,
        "--description",
        DESCRIPTION,
        "--vendor",
        "Dawngauge",
        "--copyright",
        "the contributors of Dawngauge",
        "--dest",
        out.toString());
  }

  /** The starter knows the locale, lays classes down and reads them back. */
  private void startByStarter(Path image) throws IOException {
    Path bin = Path.of("bin", NAME);
    Files.copy(
        program.resolve(bin),
        image.resolve(bin),
        StandardCopyOption.REPLACE_EXISTING,
        StandardCopyOption.COPY_ATTRIBUTES);
    for (String file : OF_LAUNCHER) {
      Files.delete(image.resolve(file));
    }
  }

  private Path write(String name, byte[] bytes) throws IOException {
    return Files.write(work.resolve(name), bytes);
  }

  private void tell() throws IOException {
    try (var made = Files.list(out)) {
      for (Path one : made.sorted().toList()) {
        System.out.println(one + ": " + Folders.megabytes(one));
      }
    }
  }

  private boolean isWindows() {
    return system.contains("win");
  }

  private boolean isMac() {
    return system.contains("mac");
  }

  private boolean isLinux() {
    return !isWindows() && !isMac();
  }
}
