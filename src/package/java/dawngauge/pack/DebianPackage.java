package dawngauge.pack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What jpackage leaves out of a Debian package, the command on the path and extra folders, and what
 * it does by scripts that fail on a Debian without a desktop: menu entry, file type and picture are
 * files of the package here, which Debian's own triggers see.
 */
final class DebianPackage {

  /** Packed twice, only the second packing need be small; an older dpkg does not know this. */
  static final Map<String, String> NOT_SMALL = Map.of("DPKG_DEB_COMPRESSOR_TYPE", "none");

  private DebianPackage() {}

  /**
   * Adds them.
   *
   * @param packages where the only Debian package lies
   * @param image the folder that it was made of
   * @param extra folders in it that are to be in the package too
   * @param work an empty place
   */
  static void complete(Path packages, Path image, List<String> extra, Path work)
      throws IOException, InterruptedException {
    Path file;
    try (Stream<Path> files = Files.list(packages)) {
      file = files.filter(one -> one.toString().endsWith(".deb")).findFirst().orElseThrow();
    }
    Tool.run(List.of("dpkg-deb", "--raw-extract", file.toString(), work.toString()), Map.of());
    String name = image.getFileName().toString();
    Path home = work.resolve("opt").resolve(name);
    for (String folder : extra) {
      Folders.copy(image.resolve(folder), home.resolve(folder));
    }
    Path command = under(work, "usr/bin/" + name);
    Files.createSymbolicLink(command, Path.of("/opt", name, "bin", name));
    String documents = "usr/share/doc/" + name + "/copyright";
    Files.move(home.resolve("share/doc/copyright"), under(work, documents));
    Folders.remove(home.resolve("share"));
    Path lib = home.resolve("lib");
    String laid = name + "-" + name;
    Files.move(
        lib.resolve(laid + ".desktop"), under(work, "usr/share/applications/" + name + ".desktop"));
    Files.move(
        lib.resolve(laid + "-MimeInfo.xml"),
        under(work, "usr/share/mime/packages/" + name + ".xml"));
    String type = MakePackages.MIME_TYPE.replace('/', '-');
    Files.delete(lib.resolve(type + ".png"));
    for (String picture : List.of("apps/" + name, "mimetypes/" + type)) {
      Files.copy(
          MakePackages.PICTURE,
          under(work, "usr/share/icons/hicolor/scalable/" + picture + ".svg"));
    }
    for (String script : List.of("preinst", "postinst", "postrm")) {
      Files.delete(work.resolve("DEBIAN").resolve(script));
    }
    Path control = work.resolve("DEBIAN/control");
    Files.writeString(control, Files.readString(control).replace("xdg-utils, ", ""));
    Files.delete(file);
    Tool.run(
        List.of("dpkg-deb", "--root-owner-group", "--build", work.toString(), file.toString()),
        Map.of());
  }

  private static Path under(Path work, String name) throws IOException {
    Path file = work.resolve(name);
    Files.createDirectories(file.getParent());
    return file;
  }
}
