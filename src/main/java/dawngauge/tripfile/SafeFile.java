package dawngauge.tripfile;

import dawngauge.disk.AsideFile;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/** Writes a text so that its file is at every moment either the old one or the new one. */
public final class SafeFile {
  private static final int MOST_LINKS = 40;

  private SafeFile() {}

  /**
   * Writes a text to a file, beside its place first, so that a failure leaves what stood there.
   * Links are followed and permissions kept; only an ordinary file is ever replaced.
   *
   * @param replace whether a file that exists may be replaced
   * @return what went wrong, if anything
   */
  public static Optional<Problem> save(String text, Path file, boolean replace) {
    try {
      return save(StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(text)), file, replace);
    } catch (CharacterCodingException half) {
      return Optional.of(Problem.of(ProblemCode.CANNOT_WRITE, "", file.toString(), reason(half)));
    }
  }

  /** The same with bytes. */
  public static Optional<Problem> save(ByteBuffer bytes, Path file, boolean replace) {
    try {
      if (Files.exists(file) && !Files.isDirectory(file)) {
        if (!replace) {
          return Optional.of(Problem.of(ProblemCode.FILE_EXISTS, "", file.toString()));
        } else if (!Files.isRegularFile(file)) {
          throw new FileSystemException(file.toString(), null, "it is no ordinary file");
        }
      }
      write(bytes, file, AsideFile.Readers.AS_BEFORE);
      return Optional.empty();
    } catch (IOException failure) {
      return Optional.of(
          Problem.of(ProblemCode.CANNOT_WRITE, "", file.toString(), reason(failure)));
    }
  }

  /** Whether two names mean one file that exists. */
  public static boolean same(Path one, Path other) {
    try {
      return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
    } catch (IOException unreadable) {
      return false;
    }
  }

  /** A fingerprint (SHA-256) of what stands in a file; empty where it cannot be read. */
  public static Optional<String> fingerprint(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      MessageDigest digest = digest();
      byte[] part = new byte[1 << 16];
      for (int read = in.read(part); read >= 0; read = in.read(part)) {
        digest.update(part, 0, read);
      }
      return Optional.of(HexFormat.of().formatHex(digest.digest()));
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  /** The same of a text. */
  public static String fingerprint(String text) {
    return HexFormat.of().formatHex(digest().digest(text.getBytes(StandardCharsets.UTF_8)));
  }

  private static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java has SHA-256", missing);
    }
  }

  /** What stands in a file; empty where there is none. */
  public static Optional<Outcome<String>> read(Path file, long mostBytes) {
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes((int) mostBytes + 1);
      if (bytes.length > mostBytes) {
        throw new FileSystemException(file.toString(), null, "it is too long");
      }
      return Optional.of(Outcome.of(new String(bytes, StandardCharsets.UTF_8)));
    } catch (IOException failure) {
      return Optional.of(
          Outcome.failed(
              Problem.of(ProblemCode.CANNOT_READ, "", file.toString(), reason(failure))));
    }
  }

  /** The same in the user's own folder, for its owner's eyes only. */
  static void writePrivate(String text, Path file) throws IOException {
    write(
        StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(text)),
        file,
        AsideFile.Readers.OWNER);
  }

  private static void write(ByteBuffer bytes, Path file, AsideFile.Readers readers)
      throws IOException {
    Path target = followed(file.toAbsolutePath());
    if (Files.isDirectory(target)) {
      throw new FileSystemException(target.toString(), null, "it is a folder");
    }
    if (Files.exists(target) && !Files.isWritable(target)) {
      throw new AccessDeniedException(target.toString());
    }
    AsideFile.write(bytes, target, readers);
  }

  /** Why it failed, in words. */
  static String reason(IOException failure) {
    if (failure instanceof AccessDeniedException) {
      return "permission denied";
    } else if (failure instanceof NoSuchFileException || failure instanceof NotDirectoryException) {
      return "its folder does not exist";
    } else if (failure instanceof FileSystemLoopException) {
      return "its links lead in a circle";
    } else if (failure instanceof CharacterCodingException) {
      return "a text in it has half a character";
    } else if (failure instanceof FileSystemException system && system.getReason() != null) {
      return system.getReason();
    }
    String message = failure.getMessage();
    return message == null ? failure.getClass().getSimpleName() : message;
  }

  private static Path followed(Path file) throws IOException {
    Path at = file;
    for (int links = 0; Files.isSymbolicLink(at); links++) {
      if (links == MOST_LINKS) {
        throw new FileSystemLoopException(file.toString());
      }
      at = at.resolveSibling(Files.readSymbolicLink(at));
    }
    return at;
  }
}
