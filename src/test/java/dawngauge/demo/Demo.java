package dawngauge.demo;

import static java.util.Objects.requireNonNull;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.advice.OfferAdvice;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.forecast.ReadingCheck;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.LoadChange;
import dawngauge.trip.Trip;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A demo haul as the program opens and plans it with the settings it comes with.
 *
 * @param text the file
 * @param opened what reading it gave
 * @param planned what planning it gave
 */
record Demo(String text, Outcome<Trip> opened, Plan planned) {

  private static final Path FOLDER = Path.of("demo-data");

  /** The demo file with a name. */
  static Demo file(String name) {
    try {
      return of(Files.readString(FOLDER.resolve(name)));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private static Demo of(String text) {
    Planner planner = new Planner(SettingsFile.defaults(), List.of());
    Outcome<Trip> opened =
        planner.store().open(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    return new Demo(text, opened, planner.plan(opened.get()));
  }

  /** The same haul with one text, which stands in it once, replaced by another. */
  Demo with(String once, String other) {
    int first = text.indexOf(once);
    if (first < 0 || text.indexOf(once, first + 1) >= 0) {
      throw new IllegalArgumentException("not once in the file: " + once);
    }
    return of(text.replace(once, other));
  }

  Trip trip() {
    return opened.get();
  }

  Advice advice() {
    return requireNonNull(planned.advice());
  }

  List<StopAdvice> stops() {
    return advice().stops();
  }

  StopAdvice stop(String id) {
    return stops().stream()
        .filter(stop -> stop.stop().visit().stop().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** A tire at a stop, by the short form of its position. */
  TireAdvice tire(String stop, String position) {
    return stop(stop).tires().stream()
        .filter(t -> trip().rig().shortForm(t.tire().fitted().position()).equals(position))
        .findFirst()
        .orElseThrow();
  }

  /** Every tire at every stop. */
  Stream<TireAdvice> tires() {
    return stops().stream().flatMap(stop -> stop.tires().stream());
  }

  Stream<ReadingCheck> readings() {
    return tires().flatMap(tire -> tire.tire().readings().stream());
  }

  List<OfferAdvice> offers() {
    return stops().stream().flatMap(stop -> stop.offers().stream()).toList();
  }

  /** Loads that are taken on or set down, those only offered left out. */
  List<LoadChange> loadChanges() {
    return trip().route().stops().stream()
        .flatMap(stop -> stop.loadChanges().stream())
        .filter(change -> !change.offered())
        .toList();
  }

  Set<Mark> tireMarks() {
    return tires().map(TireAdvice::mark).collect(Collectors.toSet());
  }

  List<Problem> problems() {
    return planned.problems();
  }
}
