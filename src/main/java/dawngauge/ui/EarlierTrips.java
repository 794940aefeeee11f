package dawngauge.ui;

import dawngauge.ledger.FoundLines;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.planner.UserFolder;
import dawngauge.problem.Outcome;
import dawngauge.trip.Trip;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import dawngauge.ui.rig.RigView;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The rig of this trip beside that of its last one, found among the files opened of late. */
final class EarlierTrips {

  private static final String ABOUT = "earlier trip";

  private final TripDocument document;
  private final UserFolder userFolder;
  private final FileAsker asker;
  private final NoticeBar notices;
  private final RigView rig;
  private final Runnable showRig;

  EarlierTrips(
      TripDocument document,
      UserFolder userFolder,
      FileAsker asker,
      NoticeBar notices,
      RigView rig,
      Runnable showRig) {
    this.document = document;
    this.userFolder = userFolder;
    this.asker = asker;
    this.notices = notices;
    this.rig = rig;
    this.showRig = showRig;
  }

  /** The next trip of this rig; asks whether to keep how warm its tires ran. */
  Trip next() {
    Plan plan = document.planner().plan(document.trip());
    String told = FoundLines.toKeep(plan.trip(), plan.heatFits());
    return plan.nextTrip(!told.isEmpty() && asker.keepHeat(told));
  }

  /** Compares with the last trip of a rig of the same name; asks for a file where none is found. */
  void compare() {
    Planner planner = document.planner();
    String name = document.trip().rig().name();
    List<Path> recent = new ArrayList<>();
    userFolder.state().recent().forEach(path -> recent.add(Path.of(path)));
    document.fileProperty().get().map(Path::toAbsolutePath).ifPresent(recent::remove);
    Tasks.work(
        job -> {
          for (Path file : recent) {
            Outcome<Trip> trip = planner.store().open(file);
            if (trip.hasValue() && trip.get().rig().name().equals(name)) {
              return Optional.of(planner.plan(trip.get()).computed());
            }
          }
          return Optional.<Plan>empty();
        },
        found -> found.ifPresentOrElse(this::show, this::another),
        wrong -> notices.tell(ABOUT, "The earlier trip cannot be read: " + wrong));
  }

  /** Asks for the trip to compare with. */
  void another() {
    asker
        .fileToOpen()
        .ifPresent(
            file ->
                Tasks.work(
                    job ->
                        document
                            .planner()
                            .store()
                            .open(file)
                            .map(trip -> document.planner().plan(trip).computed()),
                    read -> {
                      if (read.hasValue()) {
                        show(read.get());
                      } else {
                        notices.tell(
                            ABOUT,
                            Texts.shortened(file.toString())
                                + ": "
                                + read.problems().get(0).text());
                      }
                    },
                    wrong ->
                        notices.tell(
                            ABOUT,
                            Texts.shortened(file.toString()) + " cannot be read: " + wrong)));
  }

  private void show(Plan earlier) {
    notices.clear(ABOUT);
    showRig.run();
    rig.compareWith(earlier, this::another);
  }
}
