package dawngauge.tripfile;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Trip;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.function.LongPredicate;
import java.util.stream.Stream;

/**
 * Keeps a copy of what is not saved yet in the user's own folder, so that it survives a crash. Each
 * running program has its own copy; copies of programs that still run are left alone. A copy that
 * cannot be read is never deleted.
 */
public final class Recovery {

  private static final String PREFIX = "unsaved-";

  private final Path folder;
  private final long process;
  private final LongPredicate runs;

  /**
   * A copy's place.
   *
   * @param folder the user's own folder; made when something is kept
   * @param process number of this program's process
   * @param runs whether a process with a number is running
   */
  public Recovery(Path folder, long process, LongPredicate runs) {
    this.folder = folder;
    this.process = process;
    this.runs = runs;
  }

  /**
   * A copy that an earlier run left behind.
   *
   * @param copy its file
   * @param of the trip file it belongs to; empty where it was never saved
   * @param when it was kept
   * @param drafts what was typed but not valid then, each as "field: text"
   */
  public record Found(Path copy, Optional<Path> of, Instant when, List<String> drafts) {

    /** Copies the list. */
    public Found {
      drafts = List.copyOf(drafts);
    }
  }

  /**
   * Keeps a copy, in the place of the one before.
   *
   * @param trip what is not saved
   * @param of the trip file it belongs to, if any
   * @param drafts what is typed but not valid, each as "field: text"
   * @param now the time
   * @return what went wrong, if anything
   */
  public Optional<Problem> keep(Trip trip, Optional<Path> of, List<String> drafts, Instant now) {
    Properties about = new Properties();
    of.ifPresent(file -> about.setProperty("of", file.toAbsolutePath().toString()));
    about.setProperty("when", now.toString());
    for (int i = 0; i < drafts.size(); i++) {
      about.setProperty("draft." + i, drafts.get(i));
    }
    StringWriter text = new StringWriter();
    try {
      Files.createDirectories(folder);
      about.store(text, null);
    } catch (IOException unwritable) {
      return Optional.of(
          Problem.of(ProblemCode.CANNOT_WRITE, "", folder.toString(), SafeFile.reason(unwritable)));
    }
    Optional<Problem> problem = SafeFile.save(TripFile.text(trip), own(), true);
    return problem.isPresent() ? problem : SafeFile.save(text.toString(), beside(own()), true);
  }

  /** Drops this program's copy, as after saving. */
  public void drop() {
    delete(own());
  }

  /** Copies of programs that run no more, newest first. */
  public List<Found> found() {
    List<Found> all = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      files.filter(this::isLeftBehind).map(Recovery::about).forEach(all::add);
    } catch (IOException none) {
      return List.of();
    }
    all.sort(Comparator.comparing(Found::when).reversed());
    return all;
  }

  /** Reads a copy; it stays where it is. */
  public Outcome<Trip> open(Found found) {
    return TripFile.read(found.copy());
  }

  /** Deletes a copy that is no longer wanted. */
  public void forget(Found found) {
    delete(found.copy());
  }

  private Path own() {
    return folder.resolve(PREFIX + process + TripFile.ENDING);
  }

  private static Path beside(Path copy) {
    return copy.resolveSibling(copy.getFileName() + ".about");
  }

  private boolean isLeftBehind(Path file) {
    String name = String.valueOf(file.getFileName());
    if (!name.startsWith(PREFIX) || !name.endsWith(TripFile.ENDING)) {
      return false;
    }
    String number = name.substring(PREFIX.length(), name.length() - TripFile.ENDING.length());
    return number.matches("\\d{1,18}")
        && Long.parseLong(number) != process
        && !runs.test(Long.parseLong(number));
  }

  private static Found about(Path copy) {
    Properties about = new Properties();
    try (Reader reader = Files.newBufferedReader(beside(copy), StandardCharsets.UTF_8)) {
      about.load(reader);
    } catch (IOException | IllegalArgumentException unknown) {
      about.clear();
    }
    List<String> drafts = new ArrayList<>();
    for (int i = 0; about.containsKey("draft." + i); i++) {
      drafts.add(about.getProperty("draft." + i));
    }
    String of = about.getProperty("of", "");
    return new Found(
        copy,
        of.isEmpty() ? Optional.empty() : Optional.of(Path.of(of)),
        when(copy, about),
        drafts);
  }

  private static Instant when(Path copy, Properties about) {
    try {
      return Instant.parse(about.getProperty("when", ""));
    } catch (DateTimeException unknown) {
      try {
        return Files.getLastModifiedTime(copy).toInstant();
      } catch (IOException gone) {
        return Instant.EPOCH;
      }
    }
  }

  private static void delete(Path copy) {
    try {
      Files.deleteIfExists(copy);
      Files.deleteIfExists(beside(copy));
    } catch (IOException kept) {
      // it is offered again on the next start, which loses nothing
    }
  }
}
