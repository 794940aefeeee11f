package dawngauge.ui;

import dawngauge.planner.UserFolder;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.ui.common.DraftKeeper;
import dawngauge.ui.common.FigureFields;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import dawngauge.ui.route.RouteView;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.animation.PauseTransition;
import javafx.scene.Parent;
import javafx.util.Duration;

/**
 * What becomes of the trip's file: opened, saved, changed by others, kept aside against a crash.
 */
final class WindowFiles {

  private static final String FILE = "file";
  private static final String VERSION = "version";
  private static final String CHANGED = "changed on disk";
  private static final String ASIDE = "copy";
  private static final String READING = "reading";

  /** So long after an edit a copy is kept aside. */
  private static final Duration REST = Duration.seconds(2);

  /** A file that takes longer to read is told to be under way. */
  private static final Duration SLOW = Duration.millis(400);

  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", Locale.ENGLISH);

  private final TripDocument document;
  private final UserFolder userFolder;
  private final FileAsker asker;
  private final NoticeBar notices;
  private final RouteView route;
  private final List<DraftKeeper> others;
  private final Supplier<Parent> page;
  private final PauseTransition autosave = new PauseTransition(REST);
  private Tasks.Job reading = Tasks.none();

  WindowFiles(
      TripDocument document,
      UserFolder userFolder,
      FileAsker asker,
      NoticeBar notices,
      RouteView route,
      List<DraftKeeper> others,
      Supplier<Parent> page) {
    this.document = document;
    this.userFolder = userFolder;
    this.asker = asker;
    this.notices = notices;
    this.route = route;
    this.others = others;
    this.page = page;
    autosave.setOnFinished(event -> keepAside());
    document.tripProperty().addListener(change -> autosave.playFromStart());
    document.dirtyProperty().addListener(change -> autosave.playFromStart());
  }

  /** Something was typed, which an edit need not follow. */
  void typed() {
    autosave.playFromStart();
  }

  /** Keeps a copy of what is not saved; drops it where all is saved and nothing half typed. */
  private void keepAside() {
    List<UserFolder.Draft> drafts = drafts();
    if (!document.dirtyProperty().get()
        && drafts.stream().allMatch(draft -> draft.of().isEmpty())) {
      Tasks.compute(
          () -> {
            userFolder.drop();
            return true;
          },
          dropped -> {},
          wrong -> notices.tell(ASIDE, Texts.fault("Dropping the copy against a crash", wrong)));
      return;
    }
    Trip trip = document.trip();
    Optional<Path> file = document.fileProperty().get();
    Tasks.compute(
        () -> userFolder.keep(trip, file, drafts),
        problem ->
            problem.ifPresent(
                found ->
                    notices.tell(
                        ASIDE,
                        "No copy against a crash could be kept: "
                            + found.message()
                            + ". Save often.")),
        wrong ->
            notices.tell(
                ASIDE, Texts.fault("Keeping a copy against a crash", wrong) + " Save often."));
  }

  private List<DraftKeeper> keepers() {
    return Stream.concat(Stream.of(route.fields()), others.stream()).toList();
  }

  /** What is typed and not taken: at stops and parts, and elsewhere on the page shown. */
  private List<UserFolder.Draft> drafts() {
    List<UserFolder.Draft> found = new ArrayList<>();
    for (DraftKeeper keeper : keepers()) {
      keeper
          .drafts()
          .forEach(
              (of, fields) ->
                  fields.forEach(
                      (field, text) -> found.add(new UserFolder.Draft(of, field, text))));
    }
    for (FigureFields.Draft draft : FigureFields.draftsElsewhere(page.get())) {
      found.add(new UserFolder.Draft("", draft.name(), draft.text()));
    }
    return found;
  }

  private static List<String> told(List<UserFolder.Draft> drafts) {
    return drafts.stream()
        .map(draft -> draft.field() + ": " + Texts.shortened(draft.text()))
        .toList();
  }

  /** Offers what an earlier run left behind. */
  void offerUnsaved() {
    Tasks.compute(
        userFolder::unsaved,
        all -> all.forEach(this::offer),
        wrong -> notices.tell(ASIDE, Texts.fault("Looking for unsaved copies", wrong)));
  }

  private void offer(UserFolder.Unsaved unsaved) {
    String about = "unsaved " + unsaved.copy();
    String when = WHEN.format(unsaved.when().atZone(userFolder.clock().getZone()));
    String drafts =
        unsaved.drafts().isEmpty()
            ? ""
            : "; typed but not taken then: " + String.join(", ", told(unsaved.drafts()));
    String of = unsaved.of().map(file -> " of " + nameOf(file)).orElse("");
    notices.tell(
        about,
        "Edits" + of + " from " + when + " were not saved when the program ended" + drafts + ".",
        notices.acting(about, "Open them", () -> recover(unsaved)),
        notices.acting(about, "Drop them", () -> userFolder.forget(unsaved)));
  }

  private void recover(UserFolder.Unsaved unsaved) {
    if (!mayLeave()) {
      offer(unsaved);
      return;
    }
    Outcome<Trip> outcome = userFolder.open(unsaved);
    if (outcome.hasValue()) {
      document.recover(outcome.get(), unsaved.of());
      Map<String, Map<String, String>> typed = new LinkedHashMap<>();
      for (UserFolder.Draft draft : unsaved.drafts()) {
        typed
            .computeIfAbsent(draft.of(), of -> new LinkedHashMap<>())
            .put(draft.field(), draft.text());
      }
      keepers().forEach(keeper -> keeper.restore(typed));
      List<Stop> stops = document.trip().route().stops();
      stops.stream()
          .filter(stop -> typed.containsKey(stop.id()))
          .findFirst()
          .ifPresent(stop -> route.choose(stops.indexOf(stop)));
      // The old copy goes only once there is a new one.
      if (userFolder.keep(document.trip(), unsaved.of(), unsaved.drafts()).isEmpty()) {
        userFolder.forget(unsaved);
      }
    } else {
      notices.tell(
          FILE,
          "The copy cannot be read and stays where it is, "
              + unsaved.copy()
              + ": "
              + messages(outcome.problems()));
    }
  }

  /** Asks for a file and opens it. */
  void open() {
    asker.fileToOpen().filter(file -> mayLeave()).ifPresent(this::open);
  }

  /** Opens one of the files opened last. */
  void openRecent(String name) {
    Path file;
    try {
      file = Path.of(name);
    } catch (InvalidPathException odd) {
      userFolder.remember(state -> state.withoutRecent(name));
      return;
    }
    if (document.planner().store().fingerprint(file).isEmpty()) {
      userFolder.remember(state -> state.withoutRecent(name));
      notices.tell(FILE, name + " is no longer there; it is taken off the list.");
    } else if (mayLeave()) {
      open(file);
    }
  }

  /** Opens a file in the place of the trip; where it cannot be read, says why. */
  void open(Path file) {
    reading.giveUp();
    Trip before = document.trip();
    PauseTransition slow = new PauseTransition(SLOW);
    slow.setOnFinished(
        event ->
            notices.tell(
                READING,
                "Reading " + nameOf(file) + "…",
                notices.acting(READING, "Stop", () -> reading.giveUp())));
    slow.play();
    reading =
        Tasks.work(
            job -> document.read(file),
            opened -> {
              read(slow);
              // What was edited while it was read is asked about like anything not saved.
              if (document.trip().equals(before) || mayLeave()) {
                tell(document.open(opened), file);
                tellVersion(opened.trip().problems());
              }
            },
            wrong -> {
              read(slow);
              notices.tell(FILE, nameOf(file) + " could not be read: " + wrong);
            });
  }

  private void read(PauseTransition slow) {
    slow.stop();
    notices.clear(READING);
  }

  /** Saves under its name, or asks for one. */
  boolean save() {
    Optional<Path> file = document.fileProperty().get();
    if (file.isEmpty()) {
      return saveAs();
    }
    boolean mine = !document.changedOnDisk() || asker.replaceChanged(nameOf(file.get()));
    return mine && saveTo(file.get());
  }

  /** Asks for a name and saves. */
  boolean saveAs() {
    String name = document.trip().name().replaceAll("[^\\p{L}\\p{N} -]+", "").strip();
    String offered = (name.isEmpty() ? "trip" : name.replace(' ', '-').toLowerCase(Locale.ROOT));
    return asker
        .fileToSave(Texts.shortened(offered).replace("…", "") + ".dawngauge")
        .map(this::saveTo)
        .orElse(false);
  }

  /** Saves; says what keeps it from being saved, or from being opened again. */
  boolean saveTo(Path file) {
    List<String> drafts = told(drafts());
    if (!drafts.isEmpty() && !asker.saveWithout(drafts)) {
      return false;
    }
    List<Problem> problems = document.save(file);
    tell(problems, file);
    if (problems.isEmpty()) {
      notices.clear(CHANGED);
      notices.clear(VERSION);
      userFolder.drop();
    }
    return problems.isEmpty();
  }

  /** Says so where a file that was read will be of a newer version once it is saved. */
  void tellVersion(List<Problem> problems) {
    notices.clear(VERSION);
    String of = document.fileProperty().get().map(file -> nameOf(file) + ": ").orElse("");
    problems.stream()
        .filter(problem -> problem.code() == ProblemCode.OLDER_VERSION)
        .forEach(problem -> notices.tell(VERSION, of + problem.text()));
  }

  private void tell(List<Problem> problems, Path file) {
    if (problems.isEmpty()) {
      notices.clear(FILE);
      userFolder.remember(state -> state.withRecent(file.toAbsolutePath().toString()));
    } else {
      notices.tell(FILE, nameOf(file) + ": " + messages(problems));
    }
  }

  private static String messages(List<Problem> problems) {
    return String.join("\n", problems.stream().map(Problem::message).toList());
  }

  /** Says so where another program changed the file. */
  void lookAtDisk() {
    Optional<Path> file = document.fileProperty().get();
    if (file.isPresent() && document.changedOnDisk()) {
      notices.tell(
          CHANGED,
          nameOf(file.get()) + " was changed by another program since it was read here.",
          notices.acting(CHANGED, "Read it anew", () -> open(file.get())),
          notices.acting(CHANGED, "Keep mine", document::keepMine));
    }
  }

  /** Asks before unsaved edits are lost. */
  boolean mayLeave() {
    if (!document.dirtyProperty().get()) {
      return true;
    }
    return switch (asker.unsaved(document.trip().name())) {
      case SAVE -> save();
      case DROP -> true;
      case STAY -> false;
    };
  }

  /** The program ends in good order: no copy is left behind. */
  void end() {
    autosave.stop();
    userFolder.drop();
  }

  static String nameOf(Path path) {
    Path last = path.getFileName();
    return last == null ? path.toString() : last.toString();
  }
}
