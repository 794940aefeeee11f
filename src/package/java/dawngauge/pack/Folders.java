package dawngauge.pack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Whole folders. */
final class Folders {

  private Folders() {}

  /** All files under a folder, sorted. */
  static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).sorted().toList();
    }
  }

  /** Copies all files under a folder, with their times and permissions. */
  static void copy(Path from, Path to) throws IOException {
    for (Path file : files(from)) {
      Path copy = to.resolve(from.relativize(file));
      Files.createDirectories(copy.getParent());
      Files.copy(
          file, copy, StandardCopyOption.COPY_ATTRIBUTES, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Removes a folder, if it is there. */
  static void remove(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(one);
        }
      }
    }
  }

  /** How much all its files hold, in MB of a million bytes. */
  static String megabytes(Path place) throws IOException {
    long bytes = 0;
    for (Path file : files(place)) {
      bytes += Files.size(file);
    }
    return Math.round(bytes / 1e6) + " MB";
  }
}
