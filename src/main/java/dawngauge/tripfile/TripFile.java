package dawngauge.tripfile;

import dawngauge.field.Codec;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Trip;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The trip file: UTF-8 JSON with the ending {@code .dawngauge}, as {@code docs/trip-file.md} tells.
 * An outcome has no value where any problem is an error; gaps and notes may come with a value.
 */
public final class TripFile {
  /** What a trip file's name ends in. */
  public static final String ENDING = ".dawngauge";

  /** The media type. */
  public static final String MEDIA_TYPE = "application/x-dawngauge+json";

  private static final int MOST_MEBIBYTES = 16;
  private static final int MOST_BYTES = MOST_MEBIBYTES << 20;

  private TripFile() {}

  /** Reads a file; it is never changed. */
  public static Outcome<Trip> read(Path file) {
    try {
      if (Files.isRegularFile(file) && Files.size(file) > MOST_BYTES) {
        return Codec.failed(ProblemCode.FILE_TOO_LARGE, "" + MOST_MEBIBYTES);
      }
      try (InputStream in = Files.newInputStream(file)) {
        return decoded(in);
      }
    } catch (NoSuchFileException missing) {
      return Codec.failed(ProblemCode.NO_SUCH_FILE, file.toString());
    } catch (IOException failure) {
      return Codec.failed(ProblemCode.CANNOT_READ, file.toString(), SafeFile.reason(failure));
    }
  }

  /** Reads a stream to its end; it is left open. */
  public static Outcome<Trip> readFrom(InputStream in) {
    try {
      return decoded(in);
    } catch (IOException failure) {
      return Codec.failed(ProblemCode.CANNOT_READ, "the input", SafeFile.reason(failure));
    }
  }

  /** Reads a text. */
  public static Outcome<Trip> parse(String json) {
    if (json.length() > MOST_BYTES) {
      return Codec.failed(ProblemCode.FILE_TOO_LARGE, "" + MOST_MEBIBYTES);
    }
    var tree = JsonText.tree(json);
    return tree.hasValue() ? TripJson.read(tree.get()) : Outcome.failed(tree.problems());
  }

  /** The text of a trip: the same trip gives the same text. */
  public static String text(Trip trip) {
    return JsonText.text(TripJson.write(trip));
  }

  /**
   * Writes a trip beside its place and moves it there in one step, so that a failure leaves what
   * stood there. Links are followed and permissions kept. A trip of a newer version is never
   * written over: this program cannot know what it would lose.
   *
   * @return what went wrong, if anything
   */
  public static Optional<Problem> write(Trip trip, Path file) {
    return newerThere(file).or(() -> SafeFile.save(text(trip), file, true));
  }

  /** Tells of a trip of a newer version that stands in a file. */
  private static Optional<Problem> newerThere(Path file) {
    return SafeFile.read(file, MOST_BYTES)
        .flatMap(Outcome::value)
        .flatMap(text -> JsonText.tree(withoutMark(text)).value())
        .flatMap(TripJson::newerVersion)
        .map(
            version ->
                Problem.of(
                    ProblemCode.NEWER_THERE, "", file.toString(), version, "" + TripJson.VERSION));
  }

  private static Outcome<Trip> decoded(InputStream in) throws IOException {
    byte[] bytes = in.readNBytes(MOST_BYTES + 1);
    if (bytes.length > MOST_BYTES) {
      return Codec.failed(ProblemCode.FILE_TOO_LARGE, "" + MOST_MEBIBYTES);
    }
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException notUtf8) {
      return Codec.failed(ProblemCode.NOT_UTF8);
    }
    return parse(withoutMark(text));
  }

  /** A text without the mark of its byte order. */
  private static String withoutMark(String text) {
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  /** Text of a starter file without figures, whose notes say where each figure is read. */
  public static String starter() {
    InputStream stream = TripFile.class.getResourceAsStream("starter.dawngauge");
    if (stream == null) {
      throw new IllegalStateException("the program lacks its starter file");
    }
    try (stream) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
