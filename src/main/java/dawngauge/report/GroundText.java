package dawngauge.report;

import dawngauge.geo.LegGround;
import dawngauge.problem.Problem;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.LegEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.util.List;
import java.util.Optional;

/** What is known of the ground along a trip, as plain text of at most 100 columns. */
public final class GroundText {

  private GroundText() {}

  /**
   * The text.
   *
   * @param trip the trip
   * @param legs the ground of each leg, where that is known
   * @param doubts what is doubted of the heights of its stops
   * @param units the units to show
   */
  public static String of(
      Trip trip, List<Optional<LegGround>> legs, List<Problem> doubts, UnitSystem units) {
    PlainText out = new PlainText();
    boolean tracked =
        legs.stream()
            .anyMatch(leg -> leg.filter(g -> g.under() == LegGround.Under.TRACK).isPresent());
    out.wrapped("", trip.name() + ": the ground along the way");
    out.wrapped(
        "",
        "Estimates under the straight line between the stops. A road goes round what a line goes"
            + " over; heights on the leg are those that you give."
            + (tracked ? " A leg that was taken from a track is held against the track." : ""));
    for (int i = 0; i < legs.size(); i++) {
      Stop from = trip.route().stops().get(i);
      Stop to = trip.route().stops().get(i + 1);
      out.line("");
      out.wrapped("", from.place() + " to " + to.place());
      LegGround ground = legs.get(i).orElse(null);
      if (ground == null) {
        out.wrapped("  ", "not known: both stops need coordinates");
        continue;
      }
      String about = ground.estimated() ? "about " : "";
      out.wrapped(
          "  ",
          "lowest "
              + about
              + units.format(ground.lowest().elevation())
              + ", highest "
              + about
              + units.format(ground.highest().elevation())
              + (ground.under() == LegGround.Under.LINE
                  ? ""
                  : ground.estimated() ? " under its track" : " by its track")
              + " · "
              + given(trip, i));
      ground.passes().forEach(pass -> out.wrapped("  ", pass.question(units)));
    }
    if (!doubts.isEmpty()) {
      out.line("");
      doubts.forEach(doubt -> out.wrapped("", doubt.message()));
    }
    return out.toString();
  }

  private static String given(Trip trip, int leg) {
    int points = trip.route().legs().get(leg).profile().size();
    if (points > 0) {
      return points + (points == 1 ? " point" : " points") + " given on the leg";
    }
    boolean asked =
        LegEdits.isTopUnknown(
            trip.route().stops().get(leg),
            trip.route().legs().get(leg),
            trip.route().stops().get(leg + 1));
    return asked ? "no point given: is there a pass?" : "no point given";
  }
}
