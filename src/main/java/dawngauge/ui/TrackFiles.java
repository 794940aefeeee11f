package dawngauge.ui;

import dawngauge.geo.TrackLine;
import dawngauge.problem.Outcome;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import dawngauge.ui.route.RouteView;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Routes from other programs' files, and the route for other programs. */
final class TrackFiles {

  private static final String TRACK = "track";
  private static final String ENDING = ".gpx";

  private final TripDocument document;
  private final RouteView route;
  private final FileAsker asker;
  private final NoticeBar notices;
  private final Runnable showRoute;

  TrackFiles(
      TripDocument document,
      RouteView route,
      FileAsker asker,
      NoticeBar notices,
      Runnable showRoute) {
    this.document = document;
    this.route = route;
    this.asker = asker;
    this.notices = notices;
    this.showRoute = showRoute;
  }

  /** Whether a file is for us, by its ending. */
  static boolean takes(Path file) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(ENDING);
  }

  /** Asks for a file and offers its lines. */
  void take() {
    asker.fileToRead("GPX file", ENDING).ifPresent(this::take);
  }

  /** Offers the lines of a file. */
  void take(Path file) {
    Tasks.work(
        job -> document.planner().store().tracks(file),
        read -> offer(file, read),
        wrong -> tell(file, "cannot be read: " + wrong));
  }

  private void offer(Path file, Outcome<List<TrackLine>> read) {
    if (read.hasValue()) {
      notices.clear(TRACK);
      showRoute.run();
      route.below().offerTracks(read.get(), read.problems());
    } else {
      tell(file, read.problems().get(0).text());
    }
  }

  private void tell(Path file, String text) {
    notices.tell(TRACK, Texts.shortened(file.toString()) + ": " + text);
  }

  /** Writes the route for other programs. */
  void write() {
    String name = document.trip().name().replaceAll("[\\\\/:*?\"<>|\\p{Cc}]", " ").strip();
    asker
        .fileToWrite("route as GPX", name + ENDING)
        .ifPresent(
            file ->
                document
                    .planner()
                    .store()
                    .write(
                        document.planner().store().gpx(document.trip()),
                        file,
                        document.fileProperty().get().orElse(null),
                        true)
                    .ifPresentOrElse(
                        problem -> tell(file, problem.text()),
                        () -> tell(file, "the route is written.")));
  }
}
