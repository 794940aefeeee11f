package dawngauge.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Writes a file beside its place, forces it to the disk and moves it there in one step, so that the
 * file is at every moment either the old one or the new one.
 */
public final class AsideFile {

  /** Who may read what is written. */
  public enum Readers {
    /** Those of the file that is replaced; of a new one those that the system allows. */
    AS_BEFORE,
    /** Its owner alone. */
    OWNER
  }

  /** What a write that was killed left beside is swept once it is older than this; ours. */
  private static final Duration STALE = Duration.ofMinutes(10);

  private static final Pattern ASIDE =
      Pattern.compile("\\..+\\.[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");

  private static final Set<OpenOption> NEW =
      Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);

  private static final Set<PosixFilePermission> OWNER_ONLY =
      PosixFilePermissions.fromString("rw-------");

  private AsideFile() {}

  /**
   * Writes a file in the place of the one that may stand there.
   *
   * @param target the file itself, no link to it
   */
  public static void write(ByteBuffer bytes, Path target, Readers readers) throws IOException {
    Path aside = target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID());
    Path folder = target.toAbsolutePath().getParent();
    boolean posix = isPosix(folder);
    boolean replaces = Files.exists(target);
    try {
      // Never readable by more than the file is, not even while it is written.
      FileAttribute<?>[] narrow =
          replaces || readers == Readers.OWNER ? ownerOnly(folder) : new FileAttribute<?>[0];
      try (FileChannel channel = FileChannel.open(aside, NEW, narrow)) {
        while (bytes.hasRemaining()) {
          channel.write(bytes);
        }
        channel.force(true);
      }
      if (posix && replaces && readers == Readers.AS_BEFORE) {
        Files.setPosixFilePermissions(aside, Files.getPosixFilePermissions(target));
      }
      Files.move(aside, target, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(aside);
    }
    if (folder != null) {
      force(folder);
      sweep(folder, "." + target.getFileName() + ".");
    }
  }

  /** Makes a folder that only its owner can look into, where the system knows of owners. */
  public static void makePrivate(Path folder) throws IOException {
    Files.createDirectories(folder);
    if (isPosix(folder)) {
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
    }
  }

  /** Deletes what killed writes left in a folder, where its name begins like this. */
  public static void sweep(Path folder, String beginning) {
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      // By the folder's last change, which the system dates, as it dates the files.
      Instant stale = Files.getLastModifiedTime(folder).toInstant().minus(STALE);
      for (Path file : files) {
        String name = String.valueOf(file.getFileName());
        if (name.startsWith(beginning)
            && ASIDE.matcher(name).matches()
            && Files.getLastModifiedTime(file).toInstant().isBefore(stale)) {
          Files.deleteIfExists(file);
        }
      }
    } catch (IOException | DirectoryIteratorException kept) {
      // it costs room only, and is swept another time
    }
  }

  /** Without this a move may be forgotten when the power fails. */
  private static void force(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException notHere) {
      // some systems open no folders; there the move is as safe as they make it
    }
  }

  /**
   * How a file is made that only its owner may read; nothing where the system knows of no owner.
   */
  static FileAttribute<?>[] ownerOnly(@Nullable Path folder) {
    return isPosix(folder)
        ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNER_ONLY)}
        : new FileAttribute<?>[0];
  }

  private static boolean isPosix(@Nullable Path folder) {
    return folder != null
        && Files.getFileAttributeView(folder, PosixFileAttributeView.class) != null;
  }
}
