package dawngauge.ledger;

import dawngauge.page.Block;
import dawngauge.page.Page;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.rules.Loads;
import dawngauge.trip.Hitch;
import dawngauge.trip.LoadChange;
import dawngauge.trip.Trip;
import dawngauge.weights.ExpectedLoads;
import dawngauge.weights.ExpectedWeights;
import dawngauge.weights.NextWeighing;
import dawngauge.weights.RatedLoad;
import dawngauge.weights.RatedLoad.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The weight worksheet as a page: each expected load beside its rating. */
public final class WorksheetPage {

  private static final String NONE = "–";

  /** What must be heeded of a load that was not weighed. */
  public static final List<String> CAUTIONS =
      List.of(
          "Expected, never firm: weigh the loaded rig on a certified scale before you rely on it.",
          "The ratings on the certification label hold, whatever is expected here.");

  private WorksheetPage() {}

  /** The page, for paper. */
  public static Page of(Trip trip, ExpectedWeights weights, UnitSystem units) {
    List<Block> blocks = new ArrayList<>(blocks(trip, weights, units));
    blocks.addAll(Ledger.cautions());
    return new Page(trip.name() + ": expected weights", blocks);
  }

  /** The same without what is said of pressures, for a window that says it elsewhere. */
  public static List<Block> blocks(Trip trip, ExpectedWeights weights, UnitSystem units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Note(Block.Weight.MAIN, summary(weights)));
    CAUTIONS.forEach(text -> blocks.add(new Block.Note(Block.Weight.CAUTION, text)));
    if (!weights.missing().isEmpty()) {
      blocks.add(new Block.Heading("Missing", 2));
      blocks.add(new Block.Bullets(weights.missing().stream().map(Wording::begun).toList()));
    }
    if (weights.loads().stream().anyMatch(load -> load.expected().isPresent())) {
      blocks.add(table(weights.loads(), units));
      blocks.add(
          new Block.Note(
              Block.Weight.LESSER,
              "Give or take is one standard deviation: one load in three is further off. \""
                  + Verdict.IN_DOUBT.word()
                  + "\": the rating is less than "
                  + RatedLoad.SETTLED
                  + " of them above. A tire may carry what its maker or label shows for the pressure"
                  + " it is set to."));
    }
    hitch(trip, weights, blocks);
    weights.next().ifPresent(next -> blocks.add(card(next, units)));
    blocks.add(how(trip, units));
    return blocks;
  }

  /** How many loads are over, may be over, are within: the worst first. */
  public static String summary(ExpectedWeights weights) {
    List<String> counts = new ArrayList<>();
    for (Verdict verdict :
        List.of(
            Verdict.OVER, Verdict.IN_DOUBT, Verdict.WITHIN, Verdict.NO_RATING, Verdict.NOT_KNOWN)) {
      long count = weights.loads().stream().filter(load -> load.verdict() == verdict).count();
      if (count > 0) {
        counts.add(count + " " + verdict.word());
      }
    }
    return "Expected, not weighed: " + String.join(" · ", counts);
  }

  private static Block table(List<RatedLoad> loads, UnitSystem units) {
    boolean weighed = loads.stream().anyMatch(load -> !Double.isNaN(load.weighed()));
    List<String> heads =
        new ArrayList<>(
            List.of("Load of", "Expected", "Give or take", "Rating", "Rated by", "Expected to be"));
    if (weighed) {
      heads.add("Weighed");
    }
    List<List<String>> rows = new ArrayList<>();
    for (RatedLoad load : loads) {
      List<String> row = new ArrayList<>();
      row.add(load.what());
      row.add(load.expected().map(it -> mass(it.kilograms(), units)).orElse(NONE));
      row.add(load.expected().map(it -> mass(it.sigma(), units)).orElse(NONE));
      row.add(mass(load.rating(), units));
      row.add(load.ratedBy().in(units));
      row.add(load.verdict().word());
      if (weighed) {
        row.add(mass(load.weighed(), units));
      }
      rows.add(row);
    }
    List<Block.Column> columns = new ArrayList<>();
    for (String head : heads) {
      boolean figure = List.of("Expected", "Give or take", "Rating", "Weighed").contains(head);
      columns.add(new Block.Column(head, figure ? Block.Side.RIGHT : Block.Side.LEFT));
    }
    return new Block.Table("Expected loads beside their ratings", columns, rows);
  }

  private static void hitch(Trip trip, ExpectedWeights weights, List<Block> blocks) {
    Hitch hitch = trip.rig().hitch();
    weights
        .hitchPart()
        .ifPresent(
            part ->
                blocks.add(
                    new Block.Note(
                        Block.Weight.PLAIN,
                        "Expected on the hitch: "
                            + UnitSystem.US.format(new Ratio(part))
                            + " of the trailer"
                            + (hitch == null
                                ? ""
                                : "; common practice for a "
                                    + hitch.kind().word()
                                    + " hitch is "
                                    + hitch.kind().usual())
                            + ".")));
  }

  private static Block card(NextWeighing next, UnitSystem units) {
    String scale = "Weigh " + next.weigh() + ", loaded as it goes and hitched";
    String narrows =
        "Its give or take is "
            + mass(next.sigmaNow(), units)
            + " now and would be "
            + mass(next.sigmaThen(), units)
            + ".";
    return next.settles().doubted()
        ? new Block.Card(
            "What one more weighing would settle",
            List.of(scale + "."),
            List.of("In most doubt: " + next.settles().what() + ". " + narrows),
            List.of(RULE))
        : new Block.Card(
            "What one more weighing would settle",
            List.of("Weigh the loaded rig all the same: nothing here is firm."),
            List.of(
                "No load is in doubt by these figures. Nearest to its rating: "
                    + next.settles().what()
                    + ". "
                    + narrows
                    + " ("
                    + scale
                    + ".)"),
            List.of(RULE));
  }

  private static final String RULE =
      "In most doubt is the load whose rating is the fewest give or takes away. Of all single tickets"
          + " the one is named that leaves it the smallest give or take. What a ticket of the loaded"
          + " rig tells already is in no doubt.";

  private static Block how(Trip trip, UnitSystem units) {
    Hitch hitch = trip.rig().hitch();
    double lever = hitch == null ? 1 : hitch.lever();
    List<String> lines = new ArrayList<>();
    lines.add(
        "By levers: of a load on the trailer its axles take the part that its place is of the way from"
            + " the hitch to the axles' middle, the hitch the rest; the axles share alike.");
    lines.add(
        String.format(
            Locale.ROOT,
            "The tow vehicle's rear axle takes %.2f of the hitch load, the lever typed with the hitch"
                + " (1 if none is); a load on the tow vehicle goes to both axles by its place.",
            lever));
    lines.add(
        "Weights may be off by "
            + percent(Loads.relativeSigma(LoadChange.Source.WEIGHED))
            + " where weighed, "
            + percent(Loads.relativeSigma(LoadChange.Source.TYPICAL))
            + " where typical, "
            + percent(Loads.relativeSigma(LoadChange.Source.GUESSED))
            + " where guessed, all head of a line alike; empty tickets by "
            + percent(Loads.SCALE_SIGMA)
            + "; a load's middle by "
            + length(units)
            + "; axles that share alike by "
            + percent(Loads.GROUP_SIGMA)
            + "; the sides of an axle by "
            + percent(Loads.SIDE_SIGMA)
            + ". All inferred.");
    lines.add("Loads taken on or set down on the way are not in it.");
    return new Block.Why("How it is worked out", List.of(new Block.Bullets(lines)));
  }

  private static String percent(double part) {
    long tenths = Math.round(part * 1000);
    return (tenths % 10 == 0 ? "" + tenths / 10 : tenths / 10 + "." + tenths % 10) + " %";
  }

  private static String length(UnitSystem units) {
    Distance away = new Distance(ExpectedLoads.PLACE_SIGMA);
    return units == UnitSystem.US
        ? Math.round(away.in(Unit.FOOT)) + " ft"
        : away.in(Unit.METER) + " m";
  }

  static String mass(double kilograms, UnitSystem units) {
    return Double.isNaN(kilograms) ? NONE : units.format(new Mass(kilograms));
  }
}
