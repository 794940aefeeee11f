package dawngauge.ui.readings;

import dawngauge.advice.Advice;
import dawngauge.advice.FigureNow;
import dawngauge.advice.Mark;
import dawngauge.advice.Reason;
import dawngauge.advice.TireAdvice;
import dawngauge.forecast.ReadingCheck;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.LiveLines;
import dawngauge.ledger.SetNow;
import dawngauge.planner.Plan;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.LogEdits;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingRound;
import dawngauge.trip.Tire;
import dawngauge.trip.WheelPosition;
import dawngauge.ui.common.TaskLine;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** What one reading of a round means beside what was expected, and what is to be done now. */
final class ReadingVerdictPane extends VBox {

  /** Readings so near to each other are of one round; ours. */
  private static final Duration ONE_ROUND = Duration.ofHours(1);

  private final TripDocument document;

  ReadingVerdictPane(TripDocument document) {
    super(4);
    this.document = document;
    getStyleClass().add("round-said");
    setMinWidth(220);
  }

  /** The check of one reading among others: a tire may be read more than once at a stop. */
  static Optional<ReadingCheck> of(List<ReadingCheck> checks, LogEvent.Reading reading) {
    return checks.stream().filter(check -> check.reading().equals(reading)).findFirst();
  }

  /** That the program fails to say what it means: no earlier word stays, as if it were of it. */
  void tell(RuntimeException wrong) {
    getChildren().setAll(plain(Texts.fault("Judging the reading", wrong), "field-error"));
  }

  /**
   * What a reading means and what is to be done.
   *
   * @param setNow what it is to be set to at this minute, or null
   */
  void tell(
      RoundRow row,
      int visit,
      Optional<ReadingRound> round,
      Plan planned,
      LogEvent.@Nullable Reading reading,
      List<ReadingCheck> checks,
      @Nullable String setNow) {
    getChildren().setAll(plain(row.words, "chosen-stop"));
    UnitSystem units = document.units();
    ReadingCheck check = reading == null ? null : of(checks, reading).orElse(null);
    if (check != null) {
      String off = LiveLines.off(check, units);
      String told = LiveLines.told(check, units);
      row.show(LiveLines.expected(check, units), off, LiveLines.unexpected(check));
      getChildren()
          .add(
              plain(
                  told.isEmpty()
                      ? "The first reading of this tire: from here on its pressure is forecast."
                      : told,
                  "figure-line"));
      String mates = LiveLines.mates(check, mates(row, round, check, checks), units);
      if (!mates.isEmpty()) {
        getChildren().add(plain(mates, "figure-line"));
      }
    }
    Advice advice = planned.advice();
    if (advice == null || visit >= advice.stops().size()) {
      return;
    }
    boolean acts = false;
    for (TireAdvice tire : advice.stops().get(visit).tires()) {
      if (!tire.tire().fitted().tire().id().equals(row.tire)) {
        continue;
      }
      row.show(tire.mark());
      if (setNow != null && tire.set() != null && tire.set().adds()) {
        getChildren().add(plain(setNow, "set-now")); // only where the advice asks for air too
      }
      for (Reason reason : tire.reasons()) {
        VBox said = new VBox(plain(reason.text().in(units), "figure-line"));
        String todo = reason.todo().in(units);
        if (!todo.isEmpty()) {
          said.getChildren().add(0, plain(todo, "todo"));
        }
        getChildren().add(new TaskLine(reason.mark(), said));
        acts = acts || reason.mark() == Mark.ADJUST || reason.mark() == Mark.HOLD;
      }
    }
    if (acts) {
      getChildren().add(plain(Ledger.CAUTIONS.get(1), "lesser"));
      getChildren().add(plain(Ledger.CAUTIONS.get(2), "lesser"));
      getChildren().add(plain(Ledger.CAUTIONS.get(3), "lesser"));
    }
  }

  /**
   * What a tire is to be set to at a minute by a reading; null where that tells nothing, or tells
   * that it ran low, so that it is not just pumped up.
   */
  static @Nullable String setNow(
      Plan plan,
      int visit,
      LogEvent.Reading reading,
      List<ReadingCheck> checks,
      Instant minute,
      UnitSystem units) {
    ReadingCheck check = of(checks, reading).orElse(null);
    FigureNow figures =
        LogEdits.positionOf(plan.trip(), reading.tire(), reading.time().instant())
            .flatMap(position -> plan.figureNow(visit, position))
            .orElse(null);
    if (check == null || figures == null || figures.ranLow()) {
      return null;
    }
    GaugePressure read = reading.pressure().value();
    double sealed = read.pascals() - check.shown();
    return SetNow.add(figures, read, sealed, minute, units).orElse(null);
  }

  /** The readings of the rest of the axle in the same round. */
  private Map<String, ReadingCheck> mates(
      RoundRow row, Optional<ReadingRound> asked, ReadingCheck own, List<ReadingCheck> checks) {
    Map<String, ReadingCheck> mates = new LinkedHashMap<>();
    ReadingRound round = asked.orElse(null);
    if (round == null) {
      return mates;
    }
    Map<WheelPosition, Tire> fitted = LogEdits.fittedAt(document.trip(), round.start().instant());
    WheelPosition place =
        LogEdits.positionOf(document.trip(), row.tire, round.start().instant()).orElse(null);
    fitted.forEach(
        (position, tire) -> {
          if (place != null && position.axle().equals(place.axle()) && !position.equals(place)) {
            checks.stream()
                .filter(check -> check.reading().tire().equals(tire.id()))
                .filter(check -> sameRound(check.reading(), own.reading()))
                .forEach(check -> mates.put(document.trip().rig().shortForm(position), check));
          }
        });
    return mates;
  }

  private static boolean sameRound(LogEvent.Reading one, LogEvent.Reading other) {
    Duration apart = Duration.between(one.time().instant(), other.time().instant()).abs();
    return one.state() == other.state()
        && one.gauge().equals(other.gauge())
        && apart.compareTo(ONE_ROUND) <= 0;
  }

  private static Label plain(String text, String styleClass) {
    Label label = new Label(text);
    label.getStyleClass().add(styleClass);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    label.setMaxWidth(Double.MAX_VALUE);
    return label;
  }
}
