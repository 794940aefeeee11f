package dawngauge.ledger;

import dawngauge.explain.Phrase;
import dawngauge.page.Block;
import dawngauge.page.Page;
import dawngauge.problem.Outcome;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Speed;
import dawngauge.quantity.UnitSystem;
import dawngauge.rules.FittedTire;
import dawngauge.tire.Construction;
import dawngauge.tire.DateCode;
import dawngauge.tire.TireClass;
import dawngauge.tire.TireSpec;
import dawngauge.trip.Axle;
import dawngauge.trip.LabelFitment;
import dawngauge.trip.Leg;
import dawngauge.trip.Trip;
import dawngauge.trip.Vehicle;
import dawngauge.weights.TireNeed;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What the tires of a rig are and have to carry, for the talk with a tire dealer. */
public final class DealerPage {

  private static final String NONE = "not typed";

  private static final List<String> TO_ASK =
      List.of(
          "Which cold pressure does the maker's table ask for this load, and is there a load to spare?",
          "Are wheel and valve made for that pressure and load?",
          "All tires of an axle alike; duals of one size and of one height.");

  private final Trip trip;
  private final UnitSystem units;

  private DealerPage(Trip trip, UnitSystem units) {
    this.trip = trip;
    this.units = units;
  }

  /** The page: a table for each kind of tire on each axle. */
  public static Page of(Trip trip, List<TireNeed> needs, UnitSystem units) {
    List<Block> blocks = new ArrayList<>(blocks(trip, needs, units));
    blocks.addAll(Ledger.cautions());
    return new Page(trip.rig().name() + ": tires, for the tire dealer", blocks);
  }

  /** The same without the cautions, for a window that has them elsewhere. */
  public static List<Block> blocks(Trip trip, List<TireNeed> needs, UnitSystem units) {
    List<Block> blocks = new ArrayList<>();
    if (needs.isEmpty()) {
      blocks.add(new Block.Note(Block.Weight.MAIN, "No tire is named on any axle."));
      return blocks;
    }
    DealerPage page = new DealerPage(trip, units);
    needs.forEach(need -> page.add(need, blocks));
    blocks.add(new Block.Heading("To ask", 1));
    blocks.add(new Block.Bullets(TO_ASK));
    return blocks;
  }

  /** What a tire for one place has to be, without what stands there. */
  static Block needed(Trip trip, TireNeed need, UnitSystem units) {
    DealerPage page = new DealerPage(trip, units);
    FittedTire first = need.tires().get(0);
    List<List<String>> rows = new ArrayList<>();
    page.carried(need, first, rows);
    page.sidewall(first, rows);
    return Block.Table.ofWords("A tire for " + need.axle().words(), List.of("", ""), rows);
  }

  /** The same in one line. */
  static String inShort(Trip trip, TireNeed need, UnitSystem units) {
    DealerPage page = new DealerPage(trip, units);
    FittedTire tire = need.tires().get(0);
    TireSpec spec = tire.spec();
    double share = tire.gawrShare();
    return "To ask for: "
        + (spec == null
            ? "a tire as its mate's sidewall says"
            : text(spec.size())
                + ", load range "
                + text(spec.loadRange())
                + ", load index "
                + index(spec, tire.axle())
                + ", speed symbol "
                + text(spec.speedSymbol()))
        + (Double.isNaN(share) ? "" : ", rated for " + page.mass(share) + " or more")
        + "; cold "
        + (Double.isNaN(need.aim()) ? "not known" : page.pressure(new GaugePressure(need.aim())))
        + ".";
  }

  private void add(TireNeed need, List<Block> blocks) {
    FittedTire first = need.tires().get(0);
    String names =
        need.tires().stream()
            .map(tire -> trip.rig().shortForm(tire.position()))
            .collect(Collectors.joining(" "));
    blocks.add(
        new Block.Heading(
            Wording.begun(need.axle().words()) + (first.axle().dual() ? ", dual" : ""), 1));
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("Tires", names));
    carried(need, first, rows);
    sidewall(first, rows);
    rims(first, rows);
    for (FittedTire tire : need.tires()) {
      rows.add(List.of("Made, " + trip.rig().shortForm(tire.position()), made(tire)));
    }
    blocks.add(
        Block.Table.ofWords(
            "Tires of " + need.axle().words() + " for the dealer", List.of("", ""), rows));
  }

  private void carried(TireNeed need, FittedTire tire, List<List<String>> rows) {
    rows.add(List.of("Load a tire carries", load(need)));
    rows.add(List.of("Rated load needed", rated(tire)));
    rows.add(List.of("Asked for, cold", asked(need, tire)));
    fastest().ifPresent(speed -> rows.add(List.of("Fastest on this trip", units.format(speed))));
  }

  private String load(TireNeed need) {
    return switch (need.source()) {
      case MEASURED ->
          mass(need.load())
              + ", measured: "
              + need.basis().words()
              + (need.heaviest() > need.load() * 1.001
                  ? "; up to " + mass(need.heaviest()) + " where axles or sides share unevenly"
                  : "");
      case EXPECTED ->
          mass(need.load())
              + ", give or take "
              + mass(need.sigma())
              + ": expected by the worksheet, not weighed";
      case UNKNOWN -> "not known: weigh the loaded rig";
    };
  }

  /** Its share of the axle's rating, as 49 CFR 571.110 and 571.120 ask. */
  private String rated(FittedTire tire) {
    double share = tire.gawrShare();
    Entered<Mass> gawr = tire.axle().gawr();
    if (gawr == null) {
      return "not known: no axle rating (GAWR) is typed";
    }
    String least =
        "at least "
            + mass(share)
            + ": "
            + units.format(gawr.value())
            + " GAWR on "
            + 2 * tire.axle().tiresPerSide()
            + " tires";
    return tire.vehicle().kind() == Vehicle.Kind.CAR
        ? least
        : least + " (a passenger-car tire counts at its rated load divided by 1.10)";
  }

  private String asked(TireNeed need, FittedTire tire) {
    LabelFitment label = tire.label();
    String aim =
        Double.isNaN(need.aim())
            ? "not known"
            : pressure(new GaugePressure(need.aim())) + ", " + need.aimFrom().words();
    return label == null
        ? aim
        : aim
            + "; label "
            + label.size()
            + (label.loadRange() == null ? "" : " load range " + label.loadRange())
            + " "
            + pressure(label.coldPressure().value());
  }

  private void sidewall(FittedTire tire, List<List<String>> rows) {
    TireSpec spec = tire.spec();
    if (spec == null) {
      rows.add(List.of("Tire", "not described: read its sidewall"));
      return;
    }
    TireClass tireClass = spec.classOrFromSize();
    Construction construction = spec.constructionOrFromSize();
    rows.add(List.of("Size", text(spec.size())));
    rows.add(
        List.of(
            "Class",
            (tireClass == null ? NONE : tireClass.word())
                + (construction == null
                    ? ""
                    : ", " + construction.name().toLowerCase(Locale.ROOT))));
    rows.add(List.of("Load range", text(spec.loadRange())));
    rows.add(List.of("Load index", index(spec, tire.axle())));
    rows.add(List.of("Speed symbol", text(spec.speedSymbol())));
    Entered<Mass> load = tire.axle().dual() ? spec.ratedLoadDual() : spec.ratedLoadSingle();
    Entered<GaugePressure> at = spec.ratedPressure();
    rows.add(
        List.of(
            "Sidewall",
            (load == null ? "rated load " + NONE : units.format(load.value()))
                + (tire.axle().dual() ? " dual" : "")
                + (at == null ? "" : " at " + pressure(at.value()))
                + (spec.sidewallLimit() == null
                    ? ""
                    : ", most " + pressure(spec.sidewallLimit()) + " cold")));
  }

  private static String index(TireSpec spec, Axle axle) {
    Integer single = spec.loadIndexSingle();
    Integer dual = spec.loadIndexDual();
    if (single == null && dual == null) {
      return NONE;
    }
    return (single == null ? "single " + NONE : single + " single")
        + (dual == null ? (axle.dual() ? ", dual " + NONE : "") : ", " + dual + " dual");
  }

  private void rims(FittedTire tire, List<List<String>> rows) {
    Axle axle = tire.axle();
    rows.add(
        List.of(
            "Wheel's most",
            figure(axle.wheelMaxPressure()) + ", " + figureOf(axle.wheelMaxLoad())));
    rows.add(List.of("Valve's most", figure(axle.valveMaxPressure())));
  }

  private String figure(@Nullable Entered<GaugePressure> typed) {
    return typed == null ? "pressure " + NONE : pressure(typed.value());
  }

  private String figureOf(@Nullable Entered<Mass> typed) {
    return typed == null ? "load " + NONE : units.format(typed.value());
  }

  private String made(FittedTire tire) {
    String typed = tire.tire().dateCode();
    if (typed == null) {
      return "date code (last digits of the DOT number) " + NONE;
    }
    Outcome<DateCode> read = DateCode.parse(typed);
    if (!read.hasValue()) {
      return "date code \"" + typed + "\" cannot be read";
    }
    DateCode code = read.get();
    Optional<LocalDate> on = trip.route().lastDate();
    if (!code.decadeKnown()) {
      return code.code()
          + ": before 2000"
          + on.map(date -> ", over " + (int) code.leastYearsOn(date) + " years old").orElse("");
    }
    return code.code()
        + ": week from "
        + code.weekStart()
        + on.filter(date -> !code.weekStart().isAfter(date))
            .map(
                date ->
                    String.format(Locale.ROOT, ", %.1f years old on %s", code.yearsOn(date), date))
            .orElse("");
  }

  private Optional<Speed> fastest() {
    return trip.route().legs().stream()
        .map(Leg::topSpeed)
        .flatMap(typed -> Optional.ofNullable(typed).map(Entered::value).stream())
        .max(Speed::compareTo);
  }

  private static String text(@Nullable String typed) {
    return typed == null || typed.isEmpty() ? NONE : typed;
  }

  private String pressure(GaugePressure pressure) {
    return Phrase.of("{0}", Wording.figure(pressure)).in(units);
  }

  private String mass(double kilograms) {
    return WorksheetPage.mass(kilograms, units);
  }
}
