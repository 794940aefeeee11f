package dawngauge.ui;

import dawngauge.planner.UserFolder;
import dawngauge.problem.Outcome;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.LogEdits;
import dawngauge.trip.TableHead;
import dawngauge.trip.TableLayout;
import dawngauge.trip.TableReadings;
import dawngauge.trip.Trip;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import dawngauge.ui.readings.ReadingsView;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.application.Platform;

/** Readings from tables: our own header at once, any other after it was said what is what. */
final class TableFiles {

  private static final String ABOUT = "table";
  private static final String ENDING = ".csv";

  private final TripDocument document;
  private final UserFolder userFolder;
  private final FileAsker asker;
  private final NoticeBar notices;
  private final ReadingsView view;
  private final Runnable showReadings;
  private Tasks.Job reading = Tasks.none();

  TableFiles(
      TripDocument document,
      UserFolder userFolder,
      FileAsker asker,
      NoticeBar notices,
      ReadingsView view,
      Runnable showReadings) {
    this.document = document;
    this.userFolder = userFolder;
    this.asker = asker;
    this.notices = notices;
    this.view = view;
    this.showReadings = showReadings;
  }

  /** Whether a file is for us, by its ending. */
  static boolean takes(Path file) {
    String name = file.toString().toLowerCase(Locale.ROOT);
    return name.endsWith(ENDING) || name.endsWith(".tsv");
  }

  /** Asks for a table. */
  void take() {
    asker.fileToRead("Table of readings", ENDING).ifPresent(this::take);
  }

  /** Looks how a table begins. */
  void take(Path file) {
    Tasks.work(
        job -> document.planner().store().table(file),
        head -> begin(file, head),
        wrong -> tell(file, "cannot be read: " + wrong));
  }

  private void begin(Path file, Outcome<TableHead> found) {
    if (!found.hasValue()) {
      tell(file, found.problems().get(0).text());
      return;
    }
    if (document.trip().rig().gauges().isEmpty()) {
      tell(file, "name a gauge on the rig's page first: each reading says which gauge read it.");
      return;
    }
    TableHead head = found.get();
    showReadings.run();
    Optional<Map<TableLayout.Column, Integer>> own = TableLayout.own(head.columns());
    if (own.isPresent()) {
      read(file, head, ownLayout(own.get()));
    } else {
      view.askLayout(
          head,
          userFolder.tableLayout(head.signature()),
          (layout, text) -> {
            userFolder.keepTableLayout(head.signature(), text);
            read(file, head, layout);
          });
    }
  }

  private TableLayout ownLayout(Map<TableLayout.Column, Integer> columns) {
    Trip trip = document.trip();
    boolean us = document.units() == UnitSystem.US;
    ZoneId zone =
        trip.route().stops().stream()
            .findFirst()
            .flatMap(stop -> Optional.ofNullable(stop.zone()))
            .orElse(ZoneOffset.UTC);
    return new TableLayout(
        columns,
        Map.of(),
        zone,
        us ? Unit.PSI : Unit.BAR,
        us ? Unit.FAHRENHEIT : Unit.CELSIUS,
        trip.rig().gauges().get(0).name(),
        false);
  }

  private void read(Path file, TableHead head, TableLayout layout) {
    reading.giveUp();
    Trip trip = document.trip();
    notices.tell(
        ABOUT,
        name(file) + " is being read…",
        notices.acting(ABOUT, "Cancel", () -> cancel(reading, file)));
    reading =
        Tasks.work(
            job ->
                document
                    .planner()
                    .store()
                    .readings(
                        file,
                        head,
                        layout,
                        trip,
                        (rows, part) -> {
                          Platform.runLater(() -> progress(job, file, rows, part));
                          return !job.isGivenUp();
                        }),
            taken -> taken(file, taken),
            wrong -> tell(file, "cannot be read: " + wrong));
  }

  private void progress(Tasks.Job job, Path file, long rows, double part) {
    if (!job.isGivenUp()) {
      notices.tell(
          ABOUT,
          String.format(
              Locale.ROOT,
              "%s is being read: %d rows, about %.0f %%",
              name(file),
              rows,
              part * 100),
          notices.acting(ABOUT, "Cancel", () -> cancel(job, file)));
    }
  }

  private void cancel(Tasks.Job job, Path file) {
    job.giveUp();
    tell(file, "cancelled; nothing was taken.");
  }

  private void taken(Path file, Outcome<TableReadings> outcome) {
    reading = Tasks.none();
    if (!outcome.hasValue()) {
      tell(file, outcome.problems().get(0).text());
      return;
    }
    TableReadings taken = outcome.get();
    if (!taken.events().isEmpty()) {
      document.edit(LogEdits.withAll(document.trip(), taken.events()));
    }
    List<String> told = new ArrayList<>();
    told.add(
        taken.events().size()
            + (taken.events().size() == 1 ? " entry" : " entries")
            + " of "
            + taken.rows()
            + " rows taken into the log"
            + (taken.between() > 0
                ? "; " + taken.between() + " rows lie between arrivals and departures"
                : "")
            + (taken.events().isEmpty() ? "." : "; undo takes them out again."));
    if (taken.leftOutRows() > 0) {
      told.add(taken.leftOutRows() + " left out:");
    }
    notices.tellEdit(document, ABOUT, name(file) + ": " + String.join(" ", told));
    List<String> lines = new ArrayList<>();
    taken.leftOut().forEach(out -> lines.add("line " + out.line() + ": " + out.why()));
    if (taken.leftOutRows() > taken.leftOut().size()) {
      lines.add("and " + (taken.leftOutRows() - taken.leftOut().size()) + " more");
    }
    view.leftOut(name(file), lines);
  }

  private void tell(Path file, String text) {
    notices.tell(ABOUT, name(file) + ": " + text);
  }

  private static String name(Path file) {
    return Texts.shortened(WindowFiles.nameOf(file));
  }
}
