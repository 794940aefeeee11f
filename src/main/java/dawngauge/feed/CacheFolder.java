package dawngauge.feed;

import dawngauge.disk.AsideFile;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Iterator;
import okhttp3.Cache;
import okhttp3.HttpUrl;
import org.jspecify.annotations.Nullable;

/**
 * The folder in which answers are kept. One program at a time has it; where it cannot be had,
 * nothing is kept.
 */
final class CacheFolder implements AutoCloseable {
  private final @Nullable FileChannel lock;
  private final @Nullable Cache cache;

  CacheFolder(Path folder, long mostBytes) {
    lock = locked(folder);
    cache = lock == null ? null : new Cache(folder.resolve("answers").toFile(), mostBytes);
  }

  /** Kept answers, or null. */
  @Nullable Cache cache() {
    return cache;
  }

  /** Keeps the answer from one address no longer. */
  void forget(HttpUrl url) {
    if (cache == null) {
      return;
    }
    try {
      Iterator<String> kept = cache.urls();
      while (kept.hasNext()) {
        if (kept.next().equals(url.toString())) {
          kept.remove();
        }
      }
    } catch (IOException unreadable) {
      // then it is not used either
    }
  }

  @Override
  public void close() {
    try {
      if (cache != null) {
        cache.close();
      }
      if (lock != null) {
        lock.close();
      }
    } catch (IOException unwritable) {
      // what was to be kept is lost, and will be asked again
    }
  }

  /** The file beside the answers that says who has them; null if another program does. */
  private static @Nullable FileChannel locked(Path folder) {
    try {
      AsideFile.makePrivate(folder);
      FileChannel file =
          FileChannel.open(
              folder.resolve("in-use"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      FileLock held = tryLock(file);
      if (held == null) {
        file.close();
        return null;
      }
      return file;
    } catch (IOException unusable) {
      return null;
    }
  }

  private static @Nullable FileLock tryLock(FileChannel file) throws IOException {
    try {
      return file.tryLock();
    } catch (OverlappingFileLockException ours) {
      return null;
    }
  }
}
