package dawngauge.ledger;

import dawngauge.advice.Breakdown;
import dawngauge.advice.Reminders;
import dawngauge.geo.Coordinate;
import dawngauge.page.Block;
import dawngauge.page.Page;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.rules.FittedTire;
import dawngauge.rules.SpareFit;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.weights.TireNeed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** A tire is flat: what to do first, what carries for it, which spare, and what to ask for. */
public final class BreakdownPage {

  /** Common practice, no source. */
  private static final List<String> FIRST =
      List.of(
          "Out of the traffic onto firm level ground, no farther; brake set, wheels chocked, lights"
              + " and triangles out, people behind the barrier.",
          "Animals: shade, air, water. Let none out at the roadside unless staying in is worse.",
          "A hot or smoking wheel: nobody near it before it has cooled.",
          "Jack only where trailer and pickup are made for it, never under a loaded rig that stands"
              + " on soft ground.");

  /** What the law says of it. */
  private static final String NO_ROLLING =
      "Nobody drives on a flat tire (49 CFR 393.75(a)(3)), whatever its mate carries.";

  private static final String NO_AIR =
      "Put no air into a tire that rolled flat: a technician looks at it inside first.";

  /** What nobody does to a flat tire. */
  public static final List<String> CAUTIONS = List.of(NO_ROLLING, NO_AIR);

  private final Trip trip;
  private final Breakdown breakdown;
  private final UnitSystem units;

  private BreakdownPage(Trip trip, Breakdown breakdown, UnitSystem units) {
    this.trip = trip;
    this.breakdown = breakdown;
    this.units = units;
  }

  /**
   * The page.
   *
   * @param needs what the tires of the rig have to carry
   */
  public static Page of(Trip trip, Breakdown breakdown, List<TireNeed> needs, UnitSystem units) {
    BreakdownPage page = new BreakdownPage(trip, breakdown, units);
    List<Block> blocks = new ArrayList<>(page.blocks(needs));
    blocks.addAll(Ledger.cautions());
    String where = page.stop().map(stop -> " at " + stop.place()).orElse("");
    return new Page(page.name(breakdown.flat()) + " flat" + where, blocks);
  }

  /** The same without its title, with what to heed beside it. */
  public static List<Block> beside(
      Trip trip, Breakdown breakdown, List<TireNeed> needs, UnitSystem units) {
    List<Block> blocks = new ArrayList<>(new BreakdownPage(trip, breakdown, units).blocks(needs));
    blocks.addAll(Ledger.atTheHose());
    return blocks;
  }

  /**
   * A page for the cab, by axle, each with the most load that may be on it.
   *
   * @param breakdowns a flat tire on each axle
   * @param needs what the tires of the rig have to carry
   */
  public static Page forAll(
      Trip trip, List<Breakdown> breakdowns, List<TireNeed> needs, UnitSystem units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Card("First", FIRST, CAUTIONS, List.of()));
    for (Breakdown each : breakdowns) {
      BreakdownPage page = new BreakdownPage(trip, each, units);
      List<String> watch = new ArrayList<>(page.spares());
      page.need(needs).map(need -> DealerPage.inShort(trip, need, units)).ifPresent(watch::add);
      blocks.add(
          new Block.Card(
              Wording.begun(each.flat().position().axle().words()),
              page.carriers(),
              watch,
              List.of()));
    }
    blocks.add(
        new Block.Card(
            "Then",
            List.of(
                "Nuts again after "
                    + units.format(Reminders.SOON)
                    + ". Note the wheel that was changed: the forecast goes on with the spare."),
            List.of(),
            List.of()));
    return new Page("If a tire is flat", blocks);
  }

  private List<Block> blocks(List<TireNeed> needs) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Card("First", FIRST, List.of(), List.of()));
    blocks.add(new Block.Card("What carries for it", carriers(), List.of(NO_ROLLING), List.of()));
    blocks.add(new Block.Card("Spare", spares(), List.of(), List.of()));
    blocks.add(new Block.Card("Then", then(), List.of(), List.of()));
    blocks.addAll(asked(needs));
    return blocks;
  }

  private Optional<Stop> stop() {
    return trip.route().stops().stream().skip(breakdown.stop()).findFirst();
  }

  private String name(FittedTire tire) {
    return trip.rig().shortForm(tire.position());
  }

  private String mass(double kilograms) {
    return WorksheetPage.mass(kilograms, units);
  }

  private List<String> carriers() {
    List<String> lines = new ArrayList<>();
    for (Breakdown.Carrier carrier : breakdown.carriers()) {
      String name = name(carrier.tire());
      if (!carrier.known()) {
        lines.add(
            name
                + " carries for it; whether it can is not known, as its load or its rating is not:"
                + " do not move the rig on it.");
        continue;
      }
      String figures =
          "up to " + mass(carrier.load()) + ", it carries " + mass(carrier.most()) + limit(carrier);
      lines.add(
          carrier.carries()
              ? name
                  + " can be shown to carry both: "
                  + figures
                  + ". Gauge it, with less air it carries less. That is for standing, and for"
                  + " walking pace out of danger."
              : name
                  + " cannot be shown to carry both: "
                  + figures
                  + ". Do not move the rig on it; take it for overloaded and have it inspected if it"
                  + " was rolled on.");
    }
    if (lines.isEmpty()) {
      lines.add("No other tire stands for it: do not move the rig.");
    }
    return lines;
  }

  /** At which pressure it carries the most. */
  private String limit(Breakdown.Carrier carrier) {
    double ceiling = carrier.tire().ceilingPascals();
    return Double.isNaN(ceiling)
        ? " at most"
        : " at its limit, "
            + Wording.figureNumber(ceiling, units)
            + " "
            + units.unitOf(QuantityKind.GAUGE_PRESSURE).symbol()
            + " cold";
  }

  private List<String> spares() {
    List<String> lines = new ArrayList<>();
    for (Breakdown.Choice choice : breakdown.spares()) {
      lines.add(choice.serves() ? serves(choice) : against(choice));
    }
    if (lines.isEmpty()) {
      lines.add("No spare is in the file that is not on a wheel: ask a road service.");
    }
    return lines;
  }

  private static String tire(Breakdown.Choice choice) {
    return choice.fit().spare().tire();
  }

  private static String against(Breakdown.Choice choice) {
    return "Not "
        + tire(choice)
        + ": "
        + choice.faults().stream().map(SpareFit.Fault::words).collect(Collectors.joining("; "))
        + ".";
  }

  private String serves(Breakdown.Choice choice) {
    StringBuilder line = new StringBuilder();
    line.append(tire(choice))
        .append(choice.unknown().isEmpty() ? " fits" : " may fit")
        .append(" by its figures. ");
    if (Double.isNaN(choice.cold())) {
      line.append("What it is set to is not known: ask its maker's table.");
    } else {
      line.append("Set it, cold as it is, to ")
          .append(Wording.figureNumber(choice.cold(), units))
          .append(' ')
          .append(units.unitOf(QuantityKind.GAUGE_PRESSURE).symbol());
      double ceiling = choice.fit().ceilingPascals();
      line.append(
          Double.isNaN(ceiling)
              ? "; its limit is not known."
              : ", never over " + Wording.figureNumber(ceiling, units) + ".");
    }
    line.append(
        choice.fastest() == null
            ? " How fast, its sidewall tells."
            : " No faster than " + units.format(choice.fastest()) + ".");
    if (!Double.isNaN(choice.load())) {
      line.append(reach(choice));
    }
    if (!choice.unknown().isEmpty()) {
      line.append(" Not known: ").append(Wording.list(choice.unknown())).append('.');
    }
    return line.toString();
  }

  private String reach(Breakdown.Choice choice) {
    List<Stop> stops = trip.route().stops();
    if (stops.size() < 2) {
      return "";
    }
    int last = stops.size() - 1;
    return " It carries up to "
        + mass(choice.load())
        + (choice.reaches() == last
            ? " to the end."
            : " as far as "
                + stops.get(choice.reaches()).place()
                + ", not the load from there on.");
  }

  private List<String> then() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Note “Wheel changed” under Readings: the forecast goes on with the spare, and a reminder to"
            + " look at its nuts comes after "
            + units.format(Reminders.SOON)
            + ".");
    if (breakdown.flat().axle().dual() || !breakdown.carriers().isEmpty()) {
      lines.add(
          "Gauge and look at "
              + breakdown.carriers().stream()
                  .map(carrier -> name(carrier.tire()))
                  .collect(Collectors.joining(" "))
              + ": what carried for a flat tire may be hurt.");
    }
    lines.add(NO_AIR);
    return lines;
  }

  private static String place(Coordinate at) {
    return String.format(Locale.ROOT, "%.4f, %.4f", at.latitude(), at.longitude());
  }

  private List<Block> asked(List<TireNeed> needs) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading("To tell a road service", 1));
    stop()
        .ifPresent(
            stop ->
                blocks.add(
                    new Block.Note(
                        Block.Weight.PLAIN,
                        "At "
                            + stop.place()
                            + (stop.coordinate() == null ? "" : ", " + place(stop.coordinate()))
                            + ", or on the way from there: then say where.")));
    need(needs).ifPresent(need -> blocks.add(DealerPage.needed(trip, need, units)));
    return blocks;
  }

  /** What a tire there has to carry; empty where none is fitted in the file. */
  private Optional<TireNeed> need(List<TireNeed> needs) {
    return needs.stream()
        .filter(
            need ->
                need.tires().stream()
                    .anyMatch(tire -> tire.position().equals(breakdown.flat().position())))
        .findFirst();
  }
}
