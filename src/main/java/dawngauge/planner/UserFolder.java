package dawngauge.planner;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.settings.FailureLog;
import dawngauge.settings.TableLayoutsFile;
import dawngauge.settings.UserState;
import dawngauge.settings.UserStateFile;
import dawngauge.trip.Rig;
import dawngauge.trip.Trip;
import dawngauge.tripfile.KeptRigs;
import dawngauge.tripfile.Recovery;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** What is kept in the user's own folder: the window's state, unsaved copies, rigs by name. */
public final class UserFolder {

  private final UserStateFile stateFile;
  private final Recovery recovery;
  private final KeptRigs rigs;
  private final TableLayoutsFile layouts;
  private final FailureLog failures;
  private final Clock clock;
  private UserState state;

  /** Whether the file holds what is remembered here; a folder that cannot be written has none. */
  private boolean written;

  /**
   * A folder.
   *
   * @param folder the user's own folder
   * @param clock the time, in the zone in which it is shown
   * @param program this run of the program, told from every other run of it
   * @param runs whether a run of the program goes on
   * @param failures what went wrong
   */
  public UserFolder(
      Path folder, Clock clock, String program, Predicate<String> runs, FailureLog failures) {
    this.clock = clock;
    this.stateFile = new UserStateFile(folder);
    this.recovery = new Recovery(folder.resolve("unsaved"), program, runs);
    this.rigs = new KeptRigs(folder.resolve("rigs"));
    this.layouts = new TableLayoutsFile(folder);
    this.failures = failures;
    this.state = stateFile.load();
    this.written = true;
  }

  /**
   * An unsaved copy that an earlier run left behind.
   *
   * @param of the trip file it belongs to; empty where it was never saved
   * @param when it was kept
   * @param drafts what was typed and not taken then
   * @param copy its file
   */
  public record Unsaved(Optional<Path> of, Instant when, List<Draft> drafts, Path copy) {}

  /**
   * What was typed and not taken.
   *
   * @param of id of the stop, or the part of the rig, it belongs to; empty where it is of neither
   * @param field name of its field
   * @param text what was typed
   */
  public record Draft(String of, String field, String text) {}

  /**
   * A rig kept under a name.
   *
   * @param name its name
   * @param kept the day it was kept
   * @param rig the rig
   */
  public record KeptRig(String name, LocalDate kept, Rig rig) {}

  /** The time. */
  public Clock clock() {
    return clock;
  }

  /** What went wrong by a fault of the program. */
  public FailureLog failures() {
    return failures;
  }

  /** What is remembered. */
  public UserState state() {
    return state;
  }

  /**
   * What is remembered, with what other windows changed since; a consent that was withdrawn in one
   * is withdrawn in all.
   */
  public UserState latest() {
    state = written ? stateFile.load() : state;
    return state;
  }

  /** Remembers something else; what other windows changed stays. */
  public void remember(UnaryOperator<UserState> change) {
    UserState known = latest();
    UserState next = change.apply(known);
    if (!next.equals(known)) {
      Optional<UserState> kept = stateFile.change(change);
      written = kept.isPresent();
      state = kept.orElse(next);
    }
  }

  /** Keeps a copy of what is not saved. */
  public Optional<Problem> keep(Trip trip, Optional<Path> of, List<Draft> drafts) {
    return recovery.keep(trip, of, kept(drafts), clock.instant());
  }

  /** Drops the copy, as after saving. */
  public void drop() {
    recovery.drop();
  }

  /** Copies that earlier runs left behind, newest first. */
  public List<Unsaved> unsaved() {
    return recovery.found().stream()
        .map(found -> new Unsaved(found.of(), found.when(), typed(found), found.copy()))
        .toList();
  }

  private static List<Draft> typed(Recovery.Found found) {
    return found.drafts().stream()
        .map(draft -> new Draft(draft.of(), draft.field(), draft.text()))
        .toList();
  }

  private static List<Recovery.Draft> kept(List<Draft> drafts) {
    return drafts.stream()
        .map(draft -> new Recovery.Draft(draft.of(), draft.field(), draft.text()))
        .toList();
  }

  /** Reads a copy; it stays until it is forgotten. */
  public Outcome<Trip> open(Unsaved unsaved) {
    return recovery.open(found(unsaved));
  }

  /** Deletes a copy. */
  public void forget(Unsaved unsaved) {
    recovery.forget(found(unsaved));
  }

  private static Recovery.Found found(Unsaved unsaved) {
    return new Recovery.Found(unsaved.copy(), unsaved.of(), unsaved.when(), kept(unsaved.drafts()));
  }

  /** Keeps a rig under a name, in the place of one of the same name. */
  public Optional<Problem> keepRig(String name, Rig rig) {
    return rigs.keep(name, rig, LocalDate.now(clock));
  }

  /** All kept rigs; those that cannot be read are told among the problems. */
  public Outcome<List<KeptRig>> rigs() {
    return rigs.all()
        .map(
            all ->
                all.stream()
                    .map(kept -> new KeptRig(kept.name(), kept.kept(), kept.rig()))
                    .toList());
  }

  /** What was said of a table with such columns before. */
  public Optional<String> tableLayout(String columns) {
    return layouts.layout(columns);
  }

  /** Remembers what was said of a table with such columns. */
  public void keepTableLayout(String columns, String layout) {
    layouts.keep(columns, layout);
  }

  /** Deletes a kept rig. */
  public void removeRig(String name) {
    rigs.remove(name);
  }
}
