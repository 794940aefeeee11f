package dawngauge.tripfile;

import dawngauge.disk.AsideFile;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Trip;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Keeps a copy of what is not saved yet in the user's own folder, for its owner's eyes only, so
 * that it survives a crash. Each running program has its own copy under a name that no other ever
 * gets; copies of programs that still run are left alone. A copy that cannot be read is never
 * deleted, and what is told of one that cannot be read hides no other.
 */
public final class Recovery {

  private static final String PREFIX = "unsaved-";

  private final Path folder;
  private final String program;
  private final Predicate<String> runs;
  private final Path own;

  /**
   * A copy's place.
   *
   * @param folder the user's own folder; made when something is kept
   * @param program this run of the program, told from every other run of it
   * @param runs whether a run of the program goes on
   */
  public Recovery(Path folder, String program, Predicate<String> runs) {
    this.folder = folder;
    this.program = program;
    this.runs = runs;
    this.own = folder.resolve(PREFIX + UUID.randomUUID() + TripFile.ENDING);
  }

  /**
   * What was typed and not taken.
   *
   * @param of id of the stop, or the part of the rig, it belongs to; empty where it is of neither
   * @param field name of its field
   * @param text what was typed
   */
  public record Draft(String of, String field, String text) {}

  /**
   * A copy that an earlier run left behind.
   *
   * @param copy its file
   * @param of the trip file it belongs to; empty where it was never saved
   * @param when it was kept
   * @param drafts what was typed and not taken then
   */
  public record Found(Path copy, Optional<Path> of, Instant when, List<Draft> drafts) {

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
   * @param drafts what is typed and not taken
   * @param now the time
   * @return what went wrong, if anything
   */
  public Optional<Problem> keep(Trip trip, Optional<Path> of, List<Draft> drafts, Instant now) {
    Properties about = new Properties();
    of.ifPresent(file -> about.setProperty("of", file.toAbsolutePath().toString()));
    about.setProperty("when", now.toString());
    about.setProperty("program", program);
    for (int i = 0; i < drafts.size(); i++) {
      about.setProperty("draft." + i + ".stop", drafts.get(i).of());
      about.setProperty("draft." + i + ".field", drafts.get(i).field());
      about.setProperty("draft." + i + ".text", drafts.get(i).text());
    }
    StringWriter text = new StringWriter();
    try {
      AsideFile.makePrivate(folder);
      about.store(text, null);
      // What is told of it comes first, so that nobody takes it for one left behind.
      SafeFile.writePrivate(text.toString(), beside(own));
      SafeFile.writePrivate(TripFile.text(trip), own);
      return Optional.empty();
    } catch (IOException unwritable) {
      return Optional.of(
          Problem.of(ProblemCode.CANNOT_WRITE, "", folder.toString(), SafeFile.reason(unwritable)));
    }
  }

  /** Drops this program's copy, as after saving. */
  public void drop() {
    delete(own);
  }

  /** Copies of programs that run no more, newest first. */
  public List<Found> found() {
    List<Found> all = new ArrayList<>();
    AsideFile.sweep(folder, "." + PREFIX);
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(this::isOfAnother).toList()) {
        Properties about = about(file);
        if (!runs.test(about.getProperty("program", ""))) {
          all.add(found(file, about));
        }
      }
    } catch (IOException | UncheckedIOException unreadable) {
      // what was found until here is offered
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

  private static Path beside(Path copy) {
    return copy.resolveSibling(copy.getFileName() + ".about");
  }

  private boolean isOfAnother(Path file) {
    String name = String.valueOf(file.getFileName());
    return name.startsWith(PREFIX) && name.endsWith(TripFile.ENDING) && !file.equals(own);
  }

  /** What is told of a copy; nothing where that cannot be read. */
  private static Properties about(Path copy) {
    Properties about = new Properties();
    try (Reader reader = Files.newBufferedReader(beside(copy), StandardCharsets.UTF_8)) {
      about.load(reader);
    } catch (IOException | IllegalArgumentException unknown) {
      about.clear();
    }
    return about;
  }

  private static Found found(Path copy, Properties about) {
    List<Draft> drafts = new ArrayList<>();
    for (int i = 0; about.containsKey("draft." + i + ".text"); i++) {
      drafts.add(
          new Draft(
              about.getProperty("draft." + i + ".stop", ""),
              about.getProperty("draft." + i + ".field", ""),
              about.getProperty("draft." + i + ".text")));
    }
    return new Found(copy, of(about.getProperty("of", "")), when(copy, about), drafts);
  }

  private static Optional<Path> of(String name) {
    try {
      return name.isEmpty() ? Optional.empty() : Optional.of(Path.of(name));
    } catch (InvalidPathException broken) {
      return Optional.empty();
    }
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
