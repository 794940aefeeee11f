package dawngauge.ui;

import dawngauge.advice.Advice;
import dawngauge.advice.StopReadTables;
import dawngauge.ledger.BreakdownPage;
import dawngauge.ledger.Ledger;
import dawngauge.planner.Plan;
import dawngauge.planner.ReadTrials;
import dawngauge.planner.SentBack;
import dawngauge.planner.WeatherAccess;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.PhonePage;
import dawngauge.trip.Taken;
import dawngauge.trip.Trip;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import dawngauge.ui.readings.ReadingsView;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.input.Clipboard;

/** The page for the phone: written for a day of the trip, and taken in again. */
final class PhoneFiles {

  private static final String ABOUT = "phone";
  private static final String PAGE = "page for the phone";
  private static final String ENDING = ".json";
  private static final String PASTED = "What was pasted";

  private final TripDocument document;
  private final WeatherAccess clock;
  private final FileAsker asker;
  private final NoticeBar notices;
  private final ReadingsView view;
  private final Runnable showReadings;
  private Tasks.Job making = Tasks.none();

  PhoneFiles(
      TripDocument document,
      WeatherAccess clock,
      FileAsker asker,
      NoticeBar notices,
      ReadingsView view,
      Runnable showReadings) {
    this.document = document;
    this.clock = clock;
    this.asker = asker;
    this.notices = notices;
    this.view = view;
    this.showReadings = showReadings;
  }

  /** Whether a file is for us, by its ending. */
  static boolean takes(Path file) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(ENDING);
  }

  /** Writes the page for the day on which the crew is. */
  void write() {
    Trip trip = document.planner().store().shown(document.trip());
    Plan plan = document.planner().plan(trip);
    UnitSystem units = document.units();
    asker
        .fileToWrite(PAGE, Texts.fileName(trip.name() + ".html"))
        .ifPresent(file -> write(file, trip, plan, units));
  }

  private void write(Path file, Trip trip, Plan plan, UnitSystem units) {
    making.giveUp();
    notices.tell(
        ABOUT,
        "The page for the phone is being made: what each reading would mean is tried, which takes"
            + " some seconds.",
        notices.acting(ABOUT, "Stop", () -> stop(making)));
    Path own = document.fileProperty().get().orElse(null);
    making =
        Tasks.work(
            job -> {
              Advice advice = plan.advice();
              if (advice == null) {
                return Optional.of(
                    "no time on the way is known, so there is nothing to take along");
              }
              List<StopReadTables> tables =
                  ReadTrials.ahead(plan, 1, clock.now(), () -> !job.isGivenUp());
              if (job.isGivenUp()) {
                return Optional.of("stopped");
              }
              String page =
                  PhonePage.of(
                      new PhonePage.Parts(
                          trip,
                          advice,
                          Ledger.of(trip, advice, plan.problems(), plan.fitness(), units, null),
                          tables,
                          BreakdownPage.forAll(trip, plan.breakdowns(), plan.tireNeeds(), units),
                          document.planner().store().fingerprint(trip),
                          clock.now(),
                          units));
              return document.planner().store().write(page, file, own, true).map(Problem::text);
            },
            wrong ->
                notices.tell(
                    ABOUT,
                    wrong
                        .map(why -> "The page for the phone is not written: " + why + ".")
                        .orElse(
                            "The page for the phone is in "
                                + Texts.shortened(file.toString())
                                + ". Send it to the phone and open it in a browser there.")),
            wrong -> notices.tell(ABOUT, "The page for the phone could not be made: " + wrong));
  }

  private void stop(Tasks.Job job) {
    job.giveUp();
    notices.tell(ABOUT, "Stopped; no page for the phone is written.");
  }

  /** Asks for the file that the phone sent back. */
  void take() {
    asker.fileToRead("What the phone sent back", ENDING).ifPresent(this::take);
  }

  /** Takes in a file. */
  void take(Path file) {
    String name = Texts.shortened(WindowFiles.nameOf(file));
    Tasks.work(
        job -> document.planner().store().sentBack(file),
        taken -> taken(name, taken),
        wrong -> notices.tell(ABOUT, name + " could not be read: " + wrong));
  }

  /** Takes in what was copied. */
  void paste() {
    String text = Clipboard.getSystemClipboard().getString();
    taken(PASTED, document.planner().store().sentBack(text == null ? "" : text));
  }

  private void taken(String name, Outcome<Taken> taken) {
    if (!taken.hasValue()) {
      notices.tell(ABOUT, name + ": " + taken.problems().get(0).text() + ".");
      return;
    }
    SentBack back = document.planner().store().with(document.trip(), taken.get());
    showReadings.run();
    if (back.added() > 0) {
      document.edit(back.trip());
    }
    String undo = back.added() > 0 ? "; undo takes them out again." : ".";
    notices.tellEdit(document, ABOUT, name + ": " + back.told() + undo);
    view.leftOut(name, back.problems().stream().map(Problem::text).toList());
  }
}
