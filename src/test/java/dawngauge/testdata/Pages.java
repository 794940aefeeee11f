package dawngauge.testdata;

import dawngauge.advice.Advice;
import dawngauge.ledger.DealerPage;
import dawngauge.ledger.FigurePage;
import dawngauge.ledger.FitnessPage;
import dawngauge.ledger.ForecastPage;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.PlanLines;
import dawngauge.ledger.PlanPage;
import dawngauge.ledger.ReminderLine;
import dawngauge.ledger.ReminderPage;
import dawngauge.ledger.ReviewPage;
import dawngauge.ledger.WorksheetPage;
import dawngauge.page.Block;
import dawngauge.page.Page;
import dawngauge.page.PageRenderer;
import dawngauge.page.Plot;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Pages to draw, and what stands on them. */
public final class Pages {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());

  private Pages() {}

  /** An invented page with a block of each kind, and those of the demo hauls. */
  public static List<Page> all() {
    List<Page> pages = new ArrayList<>(List.of(everyBlock()));
    for (String name :
        List.of(
            "spring-fleece-haul", "spring-fleece-haul-logged", "autumn-stock-haul", "gap-haul")) {
      Trip trip = PLANNER.store().open(Path.of("demo-data", name + ".dawngauge")).get();
      pages.addAll(of(trip));
    }
    pages.addAll(weights(threeLoads()));
    return pages;
  }

  /** A pickup with a gooseneck, its weight worksheet filled in. */
  public static Trip threeLoads() {
    return PLANNER
        .store()
        .open(Path.of("src", "test", "resources", "dawngauge", "weights", "three-loads.dawngauge"))
        .get();
  }

  /** Expected weights, and the dealer's card. */
  private static List<Page> weights(Trip trip) {
    return List.of(
        WorksheetPage.of(trip, PLANNER.plan(trip).expectedWeights(), UnitSystem.US), dealer(trip));
  }

  /** A heading with a table for each axle. */
  public static Page dealer(Trip trip) {
    return DealerPage.of(trip, PLANNER.plan(trip).tireNeeds(), UnitSystem.US);
  }

  private static List<Page> of(Trip trip) {
    WheelPosition tire = trip.rig().positions().get(3);
    FigurePage.Asked asked =
        new FigurePage.Asked(GaugePressure.of(50, Unit.PSI), ReadingState.WARM, LocalTime.NOON);
    Plan planned = PLANNER.plan(trip);
    Advice advice = Objects.requireNonNull(planned.advice());
    Ledger ledger =
        Ledger.of(trip, advice, planned.problems(), planned.fitness(), UnitSystem.US, null);
    return Stream.of(
            PLANNER
                .plan(trip)
                .figureNow(1, tire)
                .map(known -> FigurePage.of(trip, 1, tire, known, asked, UnitSystem.US))
                .stream(),
            Stream.of(
                PlanPage.of(
                    trip,
                    PlanLines.of(trip, PLANNER.plan(trip).adjustment().get(), UnitSystem.US))),
            Stream.of(ForecastPage.of(ledger)),
            Stream.of(
                ReminderPage.of(
                    trip, ReminderLine.all(advice, PLANNER.plan(trip).reminders(), ledger))),
            Stream.of(FitnessPage.of(trip, PLANNER.plan(trip).fitness(), UnitSystem.US)),
            PLANNER
                .plan(trip)
                .review()
                .map(
                    review ->
                        ReviewPage.of(
                            trip,
                            review,
                            List.of(),
                            PLANNER.plan(trip).asSound().orElse(null),
                            UnitSystem.US))
                .stream(),
            weights(trip).stream())
        .flatMap(pages -> pages)
        .toList();
  }

  /** A page with a block of each kind, a long cell among them. */
  public static Page everyBlock() {
    Instant noon = Instant.parse("2027-04-06T12:00:00Z");
    List<Plot.Point> points =
        List.of(
            new Plot.Point(noon, 70, 74, 72, 76),
            new Plot.Point(noon.plusSeconds(3600), 71, Double.NaN, Double.NaN, Double.NaN),
            new Plot.Point(noon.plusSeconds(7200), 72, 75, 73, 77));
    Plot plot =
        new Plot(
            "plot in words",
            points,
            List.of(new Plot.Level(noon, noon.plusSeconds(7200), 65)),
            List.of(new Plot.Tick(noon, 80)),
            List.of(new Plot.Dot(noon, 73, true)),
            List.of(new Plot.Span(noon, noon.plusSeconds(600))),
            List.of(new Plot.Named(noon.minusSeconds(60), "6 Apr")),
            List.of(new Plot.Named(noon, "1")));
    String clause = "so long a cell that no column takes it in one line and it has to be broken ";
    return new Page(
        "Invented page",
        List.of(
            new Block.Note(Block.Weight.MAIN, "main note"),
            new Block.Card(
                "card title",
                List.of("first thing to do", "second thing"),
                List.of("thing to watch"),
                List.of("reason of the card")),
            new Block.Heading("part of the page", 1),
            new Block.Heading("part of the part", 2),
            Block.Table.ofFigures(
                "table in words",
                List.of("head of words", "head of figures"),
                List.of(List.of("first row", "12.5"), List.of(clause.repeat(3), "–"))),
            Block.Table.ofWords("table without heads", List.of(""), List.of(List.of("bare cell"))),
            new Block.Bullets(List.of("first bullet", "second bullet")),
            new Block.Note(Block.Weight.PLAIN, "plain note"),
            new Block.Note(Block.Weight.LESSER, "lesser note"),
            new Block.Why(
                "folded title",
                List.of(plot, new Block.Note(Block.Weight.PLAIN, "note behind the rest"))),
            new Block.Note(Block.Weight.CAUTION, "caution of the page")));
  }

  /** Every text of a page but those of plots, folded ones with them. */
  public static List<String> said(Page page) {
    Said said = new Said();
    page.draw(said);
    return said.texts;
  }

  private static final class Said implements PageRenderer {
    private final List<String> texts = new ArrayList<>();

    @Override
    public void heading(Block.Heading heading) {
      texts.add(heading.text());
    }

    @Override
    public void card(Block.Card card) {
      texts.add(card.title());
      texts.addAll(card.todo());
      texts.addAll(card.watch());
      texts.addAll(card.why());
    }

    @Override
    public void table(Block.Table table) {
      table.columns().forEach(column -> texts.add(column.head()));
      table.rows().forEach(texts::addAll);
    }

    @Override
    public void note(Block.Note note) {
      texts.add(note.text());
    }

    @Override
    public void bullets(Block.Bullets bullets) {
      texts.addAll(bullets.lines());
    }

    @Override
    public void why(Block.Why why) {
      texts.add(why.title());
      why.blocks().forEach(block -> block.draw(this));
    }

    @Override
    public void plot(Plot plot) {}
  }
}
