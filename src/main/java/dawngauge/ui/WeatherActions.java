package dawngauge.ui;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.ambient.MeasuredAir;
import dawngauge.ambient.WeatherFill;
import dawngauge.ambient.WeatherService;
import dawngauge.ledger.WeatherSummary;
import dawngauge.planner.Plan;
import dawngauge.planner.TileAccess;
import dawngauge.planner.TileSource;
import dawngauge.planner.WeatherAccess;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.trip.Trip;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import org.jspecify.annotations.Nullable;

/**
 * Fills the trip with expected temperatures, beside everything else; one step that undo takes back.
 */
final class WeatherActions {

  /** What the button and the menu call it. */
  static final String GET = "Get temperatures";

  private static final String AIR = "air";

  private final TripDocument document;
  private final WeatherAccess weather;
  private final FileAsker asker;
  private final NoticeBar notices;
  private final ReadOnlyBooleanWrapper asking = new ReadOnlyBooleanWrapper(false);
  private Tasks.Job job = Tasks.none();

  WeatherActions(TripDocument document, WeatherAccess weather, FileAsker asker, NoticeBar notices) {
    this.document = document;
    this.weather = weather;
    this.asker = asker;
    this.notices = notices;
  }

  /** Whether services are being asked. */
  ReadOnlyBooleanProperty askingProperty() {
    return asking.getReadOnlyProperty();
  }

  /** Whether the user has agreed to anything. */
  boolean agreedToAny() {
    return agreed() || weather.map().agreed();
  }

  /** Whether the user has agreed to asking the weather services. */
  boolean agreed() {
    return weather.contact().isPresent();
  }

  /** Asks the services, after asking the user once. */
  void fill() {
    if (!asking.get() && (agreed() || askAgain())) {
      Outcome<WeatherService> service = weather.service();
      if (service.hasValue()) {
        ask(service.get());
      } else {
        notices.tell(AIR, messages(service.problems()));
      }
    }
  }

  private void ask(WeatherService service) {
    asking.set(true);
    Trip trip = document.trip();
    job =
        Tasks.work(
            going ->
                document
                    .planner()
                    .temperatures()
                    .ask(
                        trip,
                        service,
                        (done, all, place) -> {
                          Platform.runLater(() -> progress(going, done, all, place));
                          return !going.isGivenUp();
                        }),
            result -> {
              asking.set(false);
              take(trip, result);
            },
            wrong -> {
              asking.set(false);
              notices.tell(AIR, "The weather services could not be asked: " + wrong);
            });
  }

  /** Asks what was measured at the stops that the rig has left, after asking the user once. */
  void measured(Consumer<List<MeasuredAir>> taker) {
    if (asking.get() || (!agreed() && !askAgain())) {
      return;
    }
    Outcome<WeatherService> service = weather.service();
    if (!service.hasValue()) {
      notices.tell(AIR, messages(service.problems()));
      return;
    }
    asking.set(true);
    Trip trip = document.trip();
    job =
        Tasks.work(
            going ->
                document
                    .planner()
                    .temperatures()
                    .measured(
                        trip,
                        service.get(),
                        weather.now(),
                        (done, all, place) -> {
                          Platform.runLater(() -> progress(going, done, all, place));
                          return !going.isGivenUp();
                        }),
            result -> {
              asking.set(false);
              WeatherSummary summary = WeatherSummary.of(result, document.units());
              List<String> lines = new ArrayList<>();
              lines.add(
                  "What was measured stands in the review; services keep it for about a week.");
              lines.addAll(summary.problems());
              notices.tell(AIR, String.join("\n", lines));
              taker.accept(result);
            },
            wrong -> {
              asking.set(false);
              notices.tell(AIR, "The weather services could not be asked: " + wrong);
            });
  }

  private void progress(Tasks.Job going, int done, int all, String place) {
    if (!going.isGivenUp() && asking.get()) {
      notices.tell(
          AIR,
          "Asking for temperatures: "
              + Texts.shortened(place)
              + ", "
              + done
              + " of "
              + all
              + " places known.",
          notices.acting(AIR, "Stop", this::stop));
    }
  }

  private void stop() {
    job.giveUp();
    asking.set(false);
    notices.tell(AIR, "Stopped; the temperatures stay as they were.");
  }

  private void take(Trip asked, WeatherFill.Result result) {
    if (!document.trip().equals(asked)) {
      notices.tell(
          AIR,
          "The trip was edited while the services were asked; ask once more, most of it is known now.",
          notices.acting(AIR, "Ask once more", this::fill));
      return;
    }
    Plan before = document.planned();
    document.edit(result.trip());
    WeatherSummary summary =
        WeatherSummary.of(
            result,
            document.planner().temperatures().changes(result.trip()),
            otherMarks(before.advice(), document.planned().advice()),
            document.units());
    List<String> lines = new ArrayList<>(summary.lines());
    lines.addAll(summary.problems());
    String text = String.join("\n", lines);
    if (result.isCutShort()) {
      notices.tellEdit(document, AIR, text, notices.acting(AIR, "Go on", this::fill));
    } else {
      notices.tellEdit(document, AIR, text);
    }
  }

  /** How many stops have another mark. */
  private static int otherMarks(@Nullable Advice before, @Nullable Advice now) {
    List<Mark> was = marks(before);
    List<Mark> is = marks(now);
    int other = 0;
    for (int i = 0; i < Math.min(was.size(), is.size()); i++) {
      other += Objects.equals(was.get(i), is.get(i)) ? 0 : 1;
    }
    return other;
  }

  private static List<Mark> marks(@Nullable Advice advice) {
    return advice == null ? List.of() : advice.stops().stream().map(stop -> stop.mark()).toList();
  }

  /** Fills in typical temperatures; nobody is asked. */
  void typical() {
    take(document.trip(), document.planner().temperatures().typical(document.trip()));
  }

  /** Tells what is sent where and asks for consent; whether it is given. */
  boolean askAgain() {
    return askFor(
            "Temperatures from weather services",
            weather.told(),
            weather.contact().orElse(""),
            weather::agree)
        || agreed();
  }

  private boolean askFor(
      String what, List<String> told, String before, Function<String, Optional<Problem>> agreeing) {
    String offered = before;
    String wrong = "";
    while (true) {
      Optional<String> contact = asker.agree(what, told, offered, wrong);
      if (contact.isEmpty()) {
        return false;
      }
      Optional<Problem> problem = agreeing.apply(contact.get());
      if (problem.isEmpty()) {
        return true;
      }
      offered = contact.get();
      wrong = problem.get().text();
    }
  }

  /** An online map, after asking the user once. */
  Optional<TileSource> onlineMap() {
    TileAccess map = weather.map();
    if (!map.agreed() && !askFor("Online map", map.told(), map.offered(), map::agree)) {
      return Optional.empty();
    }
    Outcome<TileSource> tiles = map.tiles();
    if (!tiles.hasValue()) {
      notices.tell("map", messages(tiles.problems()));
    }
    return tiles.value();
  }

  /** Withdraws consent. */
  void withdraw() {
    weather.withdraw();
    weather.map().withdraw();
    notices.tell(
        AIR, "No weather service and no map server is asked any more until you agree again.");
  }

  private static String messages(List<Problem> problems) {
    return String.join("\n", problems.stream().map(Problem::text).toList());
  }
}
