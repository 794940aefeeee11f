package dawngauge.ui.route;

import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Speed;
import dawngauge.trip.Leg;
import dawngauge.trip.LegEdits;
import dawngauge.trip.Trip;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The leg that leaves a stop: its length, speeds and driving time, and the points along it. */
final class LegFields extends EditorGrid {

  private final EditedStop stop;
  private final PointRows points;

  LegFields(EditedStop stop) {
    this.stop = stop;
    this.points = new PointRows(stop);
    heading(() -> "Leg to " + stop.next().place());
    field(
        () -> LegEdits.isGuessed(stop.leg()) ? "Distance, guessed" : "Distance",
        new FigureField<Trip>(
                "Distance",
                stop.legBy(
                    text -> Forms.figure(QuantityKind.DISTANCE, stop.units()).apply(text),
                    value -> LegEdits.withDistance(stop.leg(), value.orElse(null))),
                stop.document()::edit)
            .confirming(),
        () -> text(stop.leg().distance()));
    note(
        () ->
            LegEdits.isGuessed(stop.leg())
                ? "From the straight line between the places, as roads usually are longer than that;"
                    + " type the real one."
                : "");
    speed("Average speed", Leg::averageSpeed, Leg::withAverageSpeed);
    speed("Top speed", Leg::topSpeed, Leg::withTopSpeed);
    field(
        () -> "Driving time",
        new FigureField<>(
            "Driving time",
            Forms::span,
            value -> stop.editLeg(leg -> leg.withDuration(value.orElse(null)))),
        () -> {
          var duration = stop.leg().duration();
          return duration == null ? "" : Forms.text(duration);
        });
    note(
        () ->
            stop.leg().duration() == null
                ? ""
                : "The typed time counts, not distance and average speed.");
    heading(() -> "Passes and points along this leg");
    wideFindings(
        () ->
            LegEdits.isTopUnknown(stop.stop(), stop.leg(), stop.next())
                ? List.of(Problem.of(ProblemCode.TOP_OF_LEG_UNKNOWN, ""))
                : List.of());
    PassOffers passes = new PassOffers(stop);
    wide(passes);
    onRefresh(passes::refresh);
    wide(points);
    onRefresh(points::refresh);
  }

  private interface SpeedChange {
    Leg of(Leg leg, @Nullable Entered<Speed> speed);
  }

  private void speed(
      String name, Function<Leg, @Nullable Entered<Speed>> typed, SpeedChange change) {
    field(
        () -> name,
        new FigureField<>(
            name,
            text -> Forms.positive(QuantityKind.SPEED, stop.units()).apply(text),
            value -> stop.editLeg(leg -> change.of(leg, value.orElse(null)))),
        () -> text(typed.apply(stop.leg())));
  }
}
