package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.advice.Reach;
import dawngauge.forecast.TireSnapshot;
import dawngauge.page.Block;
import dawngauge.page.Block.Column;
import dawngauge.page.Block.Side;
import dawngauge.page.Page;
import dawngauge.quantity.Distance;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/**
 * How far the air in the tires reaches from a stop, and with what they must leave it, as a page.
 */
public final class ReachPage {

  private static final String NOTHING = "–";

  private final Trip trip;
  private final List<Itinerary.Visit> visits;
  private final Reach reach;
  private final UnitSystem units;

  private ReachPage(Trip trip, Advice advice, Reach reach, UnitSystem units) {
    this.trip = trip;
    this.visits = advice.stops().stream().map(stop -> stop.stop().visit()).toList();
    this.reach = reach;
    this.units = units;
  }

  /** The page. */
  public static Page of(Trip trip, Advice advice, Reach reach, UnitSystem units) {
    ReachPage page = new ReachPage(trip, advice, reach, units);
    List<Block> blocks = new ArrayList<>(page.blocks());
    blocks.addAll(Ledger.cautions());
    return new Page(page.place(reach.visit()) + ": how far the air reaches", blocks);
  }

  /** The same without its title, with what to heed beside it. */
  public static List<Block> beside(Trip trip, Advice advice, Reach reach, UnitSystem units) {
    List<Block> blocks = new ArrayList<>(new ReachPage(trip, advice, reach, units).blocks());
    blocks.addAll(Ledger.atTheHose());
    return blocks;
  }

  /**
   * A line for each place without a hose from which the rig starts a day: whether the air reaches
   * the next hose, or the end.
   *
   * @param reaches what the air reaches from a stop, counted from 0; empty where nothing is known
   */
  public static List<String> starts(
      Trip trip, @Nullable Advice advice, IntFunction<Optional<Reach>> reaches, UnitSystem units) {
    List<String> lines = new ArrayList<>();
    if (advice == null) {
      return lines;
    }
    for (int stop = 0; stop < advice.stops().size() - 1; stop++) {
      Stop here = advice.stops().get(stop).stop().visit().stop();
      boolean starts = stop == 0 || here.kind() == Stop.Kind.OVERNIGHT;
      if (starts && !here.air().available()) {
        reaches
            .apply(stop)
            .map(reach -> new ReachPage(trip, advice, reach, units).line())
            .ifPresent(lines::add);
      }
    }
    return lines;
  }

  private String line() {
    int to = reach.nextHose().orElse(reach.end());
    return (reach.visit() + 1)
        + ". "
        + place(reach.visit())
        + " to "
        + (to + 1)
        + ". "
        + place(to)
        + (reach.nextHose().isPresent() ? ", the next hose: " : ", the end, no hose: ")
        + answer(to).words();
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Note(Block.Weight.PLAIN, nextHose()));
    blocks.add(asTheyAre());
    blocks.add(new Block.Note(Block.Weight.PLAIN, basis()));
    blocks.add(leaveWith());
    blocks.add(
        new Block.Note(
            Block.Weight.LESSER,
            "What is asked to be set before here is taken as done; here and later nothing is. Least:"
                + " the lowest whole figure with which the tire rolls there with the chance that is"
                + " asked of it, dual mates alike, and no tire counts as run low. It is no figure to aim"
                + " at: set what the stop's card or “figure” tells wherever there is air."));
    return blocks;
  }

  private String place(int stop) {
    return visits.get(stop).stop().place();
  }

  private String when(int stop) {
    Itinerary.Visit there = visits.get(stop);
    return Wording.shortDay(there.arrive(), there.zone())
        + " "
        + Wording.clock(there.arrive(), there.zone());
  }

  private String nextHose() {
    if (reach.nextHose().isEmpty()) {
      return "No hose is known on the way ahead: carry a compressor, or add a stop that has one.";
    }
    int hose = reach.nextHose().getAsInt();
    Distance way = new Distance(visits.get(hose).meters() - visits.get(reach.visit()).meters());
    return "Next hose: "
        + place(hose)
        + (way.meters() > 0 ? ", " + units.format(way) + " on" : "")
        + ", "
        + when(hose)
        + ".";
  }

  /** At which minute and how warm the tires are gauged. */
  private String basis() {
    TireSnapshot check =
        reach.tires().stream()
            .map(tire -> tire.at().check())
            .filter(moment -> moment != null)
            .findFirst()
            .orElse(null);
    Itinerary.Visit here = visits.get(reach.visit());
    if (check == null) {
      return "What the tires read here is not known.";
    }
    boolean cold = reach.tires().get(0).at().cold();
    Instant then = Instant.ofEpochSecond(Math.round(check.seconds()));
    return "In "
        + unit()
        + ", as the gauge shows them at "
        + Wording.clock(then, here.zone())
        + (cold ? ", cold:" : ", as warm as they are then:");
  }

  /**
   * Each stop that may be reached, up to the first that may not; then the next hose and the end.
   */
  private Block asTheyAre() {
    List<List<String>> rows = new ArrayList<>();
    boolean refused = false;
    for (int stop = reach.visit() + 1; stop <= reach.end(); stop++) {
      boolean named = stop == reach.end() || stop == reach.nextHose().orElse(-1);
      if (!refused || named) {
        Answer answer = answer(stop);
        refused |= !answer.yes();
        rows.add(List.of(place(stop), when(stop), answer.words()));
      }
    }
    return new Block.Table(
        "How far the air that is in them reaches",
        List.of(
            new Column("as they are, to", Side.LEFT),
            new Column("arrives", Side.LEFT),
            new Column("", Side.LEFT)),
        rows,
        true);
  }

  /** Whether all tires may roll to a stop, and with how much to spare. */
  private record Answer(boolean yes, String words) {}

  private Answer answer(int stop) {
    List<String> refused = new ArrayList<>();
    List<String> unknown = new ArrayList<>();
    String tightest = "";
    double spare = Double.POSITIVE_INFINITY;
    for (Reach.OfTire tire : reach.tires()) {
      String name = name(tire);
      if (tire.hold() != null) {
        String why = tire.hold().in(units);
        refused.add(name + (why.isEmpty() ? " is on hold" : ": " + why));
      } else if (tire.reached() < Math.min(stop, tire.knownTo())) {
        refused.add(name + lacks(tire, Math.min(stop, tire.knownTo())));
      } else if (!tire.known(stop)) {
        unknown.add(name);
      } else if (tire.spare(stop) < spare) {
        spare = tire.spare(stop);
        tightest = name;
      }
    }
    String known = unknown.isEmpty() ? "" : "; not known of " + String.join(" ", unknown);
    if (!refused.isEmpty()) {
      return new Answer(false, "no: " + String.join(", ", refused) + known);
    } else if (tightest.isEmpty()) {
      return new Answer(false, "not known");
    }
    String most = Wording.spare(spare, units) + " " + unit() + " to spare (" + tightest + ")";
    return unknown.isEmpty()
        ? new Answer(true, "yes, " + most)
        : new Answer(false, "not known of " + String.join(" ", unknown) + "; else " + most);
  }

  private String lacks(Reach.OfTire tire, int stop) {
    double spare = tire.spare(stop);
    if (Double.isNaN(spare)) {
      return ", and no air helps";
    }
    return spare < 0
        ? " " + Wording.floor(-spare, units) + " " + unit() + " short"
        : " is on hold at " + place(tire.reached());
  }

  private Block leaveWith() {
    boolean hose = reach.nextHose().isPresent();
    boolean both = hose && reach.nextHose().getAsInt() < reach.end();
    boolean compressor = trip.rig().compressorFlow() != null && trip.rig().compressorTop() != null;
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("tire", Side.LEFT));
    columns.add(new Column("reads", Side.RIGHT));
    if (hose) {
      columns.add(new Column("least to " + place(reach.nextHose().getAsInt()), Side.RIGHT));
    }
    if (both || !hose) {
      columns.add(new Column("least to the end", Side.RIGHT));
    }
    if (compressor) {
      columns.add(new Column("by your compressor", Side.LEFT));
    }
    List<List<String>> rows = new ArrayList<>();
    for (Reach.OfTire tire : reach.tires()) {
      List<String> row = new ArrayList<>();
      row.add(name(tire));
      row.add(tire.at().check() == null ? NOTHING : Wording.pressure(tire.reads(), units));
      int next = reach.nextHose().orElse(reach.end());
      if (hose) {
        row.add(least(tire, next, tire.toHose()));
      }
      if (both || !hose) {
        row.add(least(tire, reach.end(), tire.toEnd()));
      }
      if (compressor) {
        GaugePressure figure = hose ? tire.toHose() : tire.toEnd();
        row.add(figure == null ? "" : CompressorWords.reach(trip.rig(), tire, figure));
      }
      rows.add(row);
    }
    return new Block.Table("With what each tire must leave", columns, rows, false);
  }

  private String least(Reach.OfTire tire, int stop, @Nullable GaugePressure figure) {
    if (tire.hold() != null) {
      return "on hold";
    } else if (!tire.known(stop)) {
      return "not known";
    } else if (figure != null) {
      return Wording.figureNumber(figure.pascals(), units);
    }
    double needed = tire.needed().get(stop - reach.visit() - 1);
    if (Double.isInfinite(needed)) {
      return NOTHING;
    } else if (tire.reached() >= stop) {
      return "as it is"; // the next whole step would be over its limit
    }
    return Double.isNaN(needed) ? "no air helps" : "over its limit";
  }

  private String name(Reach.OfTire tire) {
    return trip.rig().shortForm(tire.at().fitted().position());
  }

  private String unit() {
    return units.unitOf(QuantityKind.GAUGE_PRESSURE).symbol();
  }
}
