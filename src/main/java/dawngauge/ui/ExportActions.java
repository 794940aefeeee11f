package dawngauge.ui;

import dawngauge.advice.Advice;
import dawngauge.ambient.MeasuredAir;
import dawngauge.ledger.BreakdownPage;
import dawngauge.ledger.DealerPage;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.PlanLines;
import dawngauge.ledger.ReachPage;
import dawngauge.ledger.ReminderLine;
import dawngauge.ledger.ReviewPage;
import dawngauge.ledger.WorksheetPage;
import dawngauge.page.Page;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.planner.WeatherAccess;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.CrewSheet;
import dawngauge.report.PagePdf;
import dawngauge.report.ReminderCalendar;
import dawngauge.review.TripReview;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import dawngauge.ui.route.LedgerPrint;
import dawngauge.ui.route.RouteView;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.print.PageLayout;
import javafx.print.PrinterJob;
import org.jspecify.annotations.Nullable;

/**
 * What goes along on the road: the crew's sheet, the calendar of reminders, and notices while the
 * program runs when it is time to look at the tires.
 */
final class ExportActions {

  private static final String PAPER = "paper";
  private static final String REMINDER = "reminder ";

  private final TripDocument document;
  private final WeatherAccess clock;
  private final FileAsker asker;
  private final NoticeBar notices;
  private final Timeline ticking;

  /** Made when they are asked for, not with every edit. */
  private @Nullable List<ReminderLine> reminders;

  /** Up to here reminders were called out. */
  private Instant called;

  private boolean ended;

  ExportActions(TripDocument document, WeatherAccess clock, FileAsker asker, NoticeBar notices) {
    this.document = document;
    this.clock = clock;
    this.asker = asker;
    this.notices = notices;
    this.called = clock.now();
    ticking =
        new Timeline(new KeyFrame(javafx.util.Duration.seconds(20), event -> look(clock.now())));
    ticking.setCycleCount(Animation.INDEFINITE);
    document.tripProperty().addListener(change -> reminders = null);
    document.unitsProperty().addListener(change -> reminders = null);
  }

  /** Begins to watch the time; what should be under way now is called out first. */
  void watch() {
    Plan planned = document.planned();
    UnitSystem units = document.units();
    Tasks.compute(
        () -> lines(planned, units),
        lines -> {
          Instant now = clock.now();
          lines.stream()
              .filter(line -> !line.start().isAfter(now) && line.end().isAfter(now))
              .forEach(this::call);
          called = now;
          if (!ended) {
            ticking.play();
          }
        },
        wrong -> notices.tell(PAPER, Texts.fault("Looking for reminders", wrong)));
  }

  /** Prints ledger and trace as they are shown, on a printer that the user chooses. */
  void print(RouteView route) {
    PrinterJob job = PrinterJob.createPrinterJob();
    if (job == null) {
      notices.tell(
          PAPER,
          "No printer is set up on this computer. The crew sheet can be saved as PDF: Paper, Crew"
              + " sheet.");
      return;
    }
    if (!job.showPrintDialog(route.getScene().getWindow())) {
      return;
    }
    PageLayout layout = job.getJobSettings().getPageLayout();
    LedgerPrint pages = route.printed(layout.getPrintableWidth(), layout.getPrintableHeight());
    boolean done = true;
    for (int i = 0; done && i < pages.pages(); i++) {
      done = job.printPage(layout, pages.page(i));
    }
    done = done && job.endJob();
    notices.tell(
        PAPER,
        done
            ? "Sent to the printer: " + pages.pages() + (pages.pages() == 1 ? " page." : " pages.")
            : "The printer did not take it; see its own messages. The crew sheet can be saved as PDF.");
  }

  /** Watches no more. */
  void end() {
    ended = true;
    ticking.stop();
  }

  private List<ReminderLine> reminders() {
    List<ReminderLine> known = reminders;
    if (known == null) {
      known = lines(document.planned(), document.units());
      reminders = known;
    }
    return known;
  }

  private static List<ReminderLine> lines(Plan planned, UnitSystem units) {
    Advice advice = planned.advice();
    return advice == null
        ? List.of()
        : ReminderLine.all(advice, planned.reminders(), ledger(planned, units));
  }

  private static Ledger ledger(Plan planned, UnitSystem units) {
    return Ledger.of(
        planned.trip(), planned.advice(), planned.problems(), planned.fitness(), units, null);
  }

  /** Calls out what has become due. */
  void look(Instant now) {
    for (ReminderLine reminder : reminders()) {
      for (Duration before : reminder.alarms()) {
        Instant due = reminder.start().minus(before);
        if (due.isAfter(called) && !due.isAfter(now) && reminder.end().isAfter(now)) {
          call(reminder);
        }
      }
    }
    called = now.isAfter(called) ? now : called;
  }

  private void call(ReminderLine reminder) {
    String text = reminder.text();
    int end = text.indexOf("\n\n");
    notices.tell(
        REMINDER + reminder.key(),
        reminder.summary() + "\n" + (end < 0 ? text : text.substring(0, end)));
  }

  /** Writes the crew's sheet. */
  void sheet(CrewSheet.Options options) {
    Trip trip = document.planner().store().shown(document.trip());
    Plan planned =
        trip.equals(document.trip()) ? document.planned() : document.planner().plan(trip);
    UnitSystem units = document.units();
    write(
        "crew sheet",
        trip.name() + ".pdf",
        file -> {
          PlanLines plan =
              trip.plan().followed()
                  ? document
                      .planner()
                      .plan(trip)
                      .adjustment()
                      .value()
                      .map(adjustment -> PlanLines.of(trip, adjustment, units))
                      .orElse(null)
                  : null;
          CrewSheet.More more =
              new CrewSheet.More(
                  ReachPage.starts(trip, planned.advice(), planned::reach, units),
                  BreakdownPage.forAll(trip, planned.breakdowns(), planned.tireNeeds(), units));
          byte[] sheet =
              CrewSheet.of(ledger(planned, units), planned.advice(), plan, more, options);
          return document.planner().store().write(sheet, file, own(), true);
        });
  }

  /**
   * Writes the review.
   *
   * @param measured the air that stations measured at the stops
   */
  void review(CrewSheet.Paper paper, List<MeasuredAir> measured) {
    Trip trip = document.trip();
    UnitSystem units = document.units();
    Planner planner = document.planner();
    Plan plan = planner.plan(trip);
    TripReview review = plan.review().orElse(null);
    if (review == null) {
      notices.tell("review", ReviewPage.NOTHING);
      return;
    }
    write(
        "review",
        trip.name() + " review.pdf",
        file -> {
          byte[] sheet =
              PagePdf.of(
                  ReviewPage.of(trip, review, measured, plan.asSound().orElse(null), units),
                  "Review",
                  trip.name(),
                  trip.route().stops().stream().map(Stop::place).toList(),
                  paper);
          return planner.store().write(sheet, file, own(), true);
        });
  }

  /** Writes what the tires are and have to carry, for the tire dealer. */
  void dealerCard(CrewSheet.Paper paper) {
    Trip trip = document.trip();
    Planner planner = document.planner();
    page(
        "dealer's card",
        trip,
        DealerPage.of(trip, planner.plan(trip).tireNeeds(), document.units()),
        paper);
  }

  /** Writes the weight worksheet worked out. */
  void weights(CrewSheet.Paper paper) {
    Trip trip = document.trip();
    Planner planner = document.planner();
    page(
        "expected weights",
        trip,
        WorksheetPage.of(trip, planner.plan(trip).expectedWeights(), document.units()),
        paper);
  }

  private void page(String what, Trip trip, Page page, CrewSheet.Paper paper) {
    String head = what.substring(0, 1).toUpperCase(Locale.ROOT) + what.substring(1);
    write(
        what,
        trip.name() + " " + what + ".pdf",
        file ->
            document
                .planner()
                .store()
                .write(PagePdf.of(page, head, trip.name(), List.of(), paper), file, own(), true));
  }

  /** Writes the calendar of reminders, or brings one up to date. */
  void calendar() {
    List<ReminderLine> now = reminders();
    String name = document.trip().name();
    write(
        "calendar of reminders",
        name + ".ics",
        file -> {
          Outcome<ReminderCalendar.Earlier> earlier =
              document
                  .planner()
                  .store()
                  .existing(file)
                  .map(there -> there.then(text -> ReminderCalendar.read(text, now)))
                  .orElse(Outcome.of(ReminderCalendar.Earlier.NONE));
          if (!earlier.hasValue()) {
            return Optional.of(earlier.problems().get(0));
          }
          String text = ReminderCalendar.of(name, name, now, earlier.get(), clock.now());
          return document.planner().store().write(text, file, own(), true);
        });
  }

  /** The trip's own file, which is never written over. */
  private @Nullable Path own() {
    return document.fileProperty().get().orElse(null);
  }

  private void write(String what, String name, Function<Path, Optional<Problem>> writing) {
    asker
        .fileToWrite(what, Texts.fileName(name))
        .ifPresent(
            file ->
                Tasks.work(
                    job -> writing.apply(file),
                    problem ->
                        notices.tell(
                            PAPER,
                            problem
                                .map(found -> "The " + what + " is not written: " + found.text())
                                .orElse(
                                    "The "
                                        + what
                                        + " is in "
                                        + Texts.shortened(file.toString())
                                        + ".")),
                    wrong -> notices.tell(PAPER, "The " + what + " could not be made: " + wrong)));
  }
}
