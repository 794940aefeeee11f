package dawngauge.report;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.ledger.BreakdownPage;
import dawngauge.ledger.Card;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.PlanLines;
import dawngauge.ledger.ReachPage;
import dawngauge.ledger.StopLine;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
import dawngauge.testdata.PdfTree;
import dawngauge.trip.Route;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sheet as another library reads it: its words and figures by its tree, fonts, margins. */
class CrewSheetTest {

  private static final Path FOLDER = Path.of("target", "pictures");
  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());

  /** 12 mm in points, less what a letter may reach over. */
  private static final float MARGIN = 33;

  private static final int LEAST_LINES = 5;

  /** Names as they are in their countries, longer than those of the demo. */
  private static final List<String> NAMES =
      List.of(
          "Hellschen-Heringsand-Unterschaar, Gemeinde der Schafzüchter",
          "Çayırlıoğlu Küçükçekmece Şanlıurfa İğneada",
          "Szczebrzeszyn-Świętokrzyski, Żółć i Gęślą Jaźń",
          "Αλεξανδρούπολη Θεσσαλονίκης, Ύδρα",
          "呼和浩特市赛罕区",
          "مدينة الملك عبد العزيز",
          "Зима Ærø 🐎",
          "\u05d0\u05d1\u05d2");

  /** A sheet with what it was made from. */
  private static final class Made {
    private final Ledger ledger;
    private final byte[] bytes;

    private Made(Ledger ledger, byte[] bytes) {
      this.ledger = ledger;
      this.bytes = bytes;
    }

    static Made of(Trip trip, UnitSystem units, CrewSheet.Options options) {
      Plan planned = PLANNER.plan(trip);
      Advice advice = planned.advice();
      Ledger ledger = Ledger.of(trip, advice, planned.problems(), planned.fitness(), units, null);
      PlanLines plan =
          PLANNER
              .plan(trip)
              .adjustment()
              .value()
              .map(adjustment -> PlanLines.of(trip, adjustment, units))
              .orElse(null);
      CrewSheet.More more =
          new CrewSheet.More(
              ReachPage.starts(trip, advice, planned::reach, units),
              BreakdownPage.forAll(trip, planned.breakdowns(), planned.tireNeeds(), units));
      return new Made(ledger, CrewSheet.of(ledger, advice, plan, more, options));
    }

    PDDocument open() {
      try {
        return Loader.loadPDF(bytes);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /**
   * A stop on the day pages.
   *
   * @param page on which it stands
   * @param head of its column
   * @param tires name of a tire to head of its row and cell
   * @param rest what stands beside and under the tables of its page
   */
  private record Column(int page, String head, Map<String, List<String>> tires, String rest) {}

  private static final CrewSheet.Options LETTER =
      new CrewSheet.Options(CrewSheet.Paper.LETTER, false);

  private static Trip demo(String name) {
    return PLANNER.store().open(Path.of("demo-data", name + ".dawngauge")).get();
  }

  /** Letters and figures alone: where lines break does not count. */
  private static String plain(String text) {
    return text.replaceAll("\\s+", "");
  }

  /** The columns of a stop: one, or one for each page of vehicles. */
  private static List<Column> columns(PdfTree tree, int number) {
    List<Column> columns = new ArrayList<>();
    for (PdfTree table : tree.all("Table")) {
      List<PdfTree> heads = table.kids().get(0).kids();
      boolean days = heads.get(0).words().equals("tire");
      for (int i = 1; days && i < heads.size(); i++) {
        if (!heads.get(i).words().startsWith(number + ". ")) {
          continue;
        }
        Map<String, List<String>> tires = new TreeMap<>();
        for (PdfTree row : table.kids().subList(1, table.kids().size())) {
          String head = row.kids().get(0).words();
          tires.put(
              head.substring(0, (head + " ").indexOf(' ')),
              List.of(head, row.kids().get(i).words()));
        }
        int page = heads.get(i).page();
        StringBuilder rest = new StringBuilder();
        tree.all("P").stream().filter(p -> p.page() == page).forEach(p -> rest.append(p.words()));
        table.kids().get(table.kids().size() - 1).kids().forEach(k -> rest.append(k.words()));
        columns.add(new Column(page, heads.get(i).words(), tires, plain(rest.toString())));
      }
    }
    return columns;
  }

  @ParameterizedTest
  @CsvSource({
    "spring-fleece-haul,US,LETTER,false",
    "spring-fleece-haul,SI,A4,true",
    "autumn-stock-haul,SI,A4,false",
    "autumn-stock-haul,US,LETTER,true"
  })
  void everyStopStandsOnItWithTheLedgersFigures(
      String name, UnitSystem units, CrewSheet.Paper paper, boolean large) throws IOException {
    Made made = Made.of(demo(name), units, new CrewSheet.Options(paper, large));
    try (PDDocument document = made.open()) {
      PdfTree tree = PdfTree.of(document);
      for (StopLine stop : made.ledger.stops()) {
        List<Column> columns = columns(tree, stop.number());
        assertThat(columns).isNotEmpty();
        for (Column column : columns) {
          assertThat(plain(column.head))
              .contains(plain(stop.number() + ". " + stop.place()), stop.arrive(), stop.leave())
              .contains(plain(stop.air() + " · " + stop.elevation() + stop.hose()));
          assertThat(column.rest).contains(plain(stop.leg()));
          for (String said : saidOnTheDay(stop)) {
            assertThat(column.rest).contains(plain(said));
          }
        }
        for (StopLine.TireRow row : stop.rows()) {
          for (String tire : SheetTires.names(row.tires())) {
            assertThat(columns.stream().filter(column -> column.tires.containsKey(tire)))
                .singleElement()
                .satisfies(
                    column ->
                        figures(row, stop.number(), column.tires.getOrDefault(tire, List.of())));
          }
        }
      }
      String text = plain(tree.words());
      List<String> whole = new ArrayList<>(Ledger.CAUTIONS);
      whole.addAll(made.ledger.go());
      whole.addAll(made.ledger.putRight());
      whole.addAll(made.ledger.problems());
      whole.addAll(made.ledger.basis());
      for (StopLine stop : made.ledger.stops()) {
        stop.tasks()
            .forEach(
                task -> whole.add(task.mark().word() + ", " + task.tires() + ": " + task.text()));
        whole.addAll(stop.routine());
      }
      whole.forEach(line -> assertThat(text).contains(plain(line)));
      pictures(document, name + (large ? "-large" : ""));
    }
  }

  private static List<String> saidOnTheDay(StopLine stop) {
    List<String> said = new ArrayList<>(stop.card().todo().stream().map(Card.Line::text).toList());
    said.addAll(stop.card().watch());
    said.addAll(stop.loads());
    said.addAll(stop.cautions());
    said.add(stop.slightChance() ? "" : stop.chance());
    said.add(Ledger.AT_THE_VALVE);
    return said;
  }

  /** The figures of a tire in the head of its row and in its cell. */
  private static void figures(StopLine.TireRow row, int stop, List<String> texts) {
    String head = texts.get(0) + ";";
    List<List<String>> limits =
        List.of(
            List.of("lowest safe", row.floor()),
            List.of("set cold to", row.aim()),
            List.of("never over", row.ceiling()));
    for (List<String> limit : limits) {
      String list = head.replaceAll(".*" + limit.get(0) + " ([^;]*);.*", "$1");
      String now = "";
      for (String part : list.split(", from ", -1)) {
        int colon = part.indexOf(": ");
        boolean holds = colon < 0 || Integer.parseInt(part.substring(0, colon)) <= stop;
        now = holds ? part.substring(colon < 0 ? 0 : colon + 2) : now;
      }
      assertThat(now).as(head + " at " + stop).isEqualTo(limit.get(1));
    }
    String cell = texts.get(1);
    assertThat(cell).startsWith(row.read() ? row.arriveReads() + " read" : row.arriveRange());
    if (row.mark() == Mark.ADJUST) {
      assertThat(cell).containsPattern("(on arrival|cold) [0-9.]+");
      assertThat(cell).contains(row.setOnArrival(), row.setCold());
    } else if (row.mark() != Mark.CLEAR) {
      assertThat(cell).contains(row.mark().word());
    }
    if (!row.set()) {
      assertThat(cell).contains(row.checkRange());
      assertThat(cell).contains(row.arriveSettled().replace("–", ""));
    }
  }

  /** A front page, its back and a page a day; no day of the demos has over nine stops. */
  @ParameterizedTest
  @CsvSource({
    "spring-fleece-haul,US,LETTER,7",
    "spring-fleece-haul,SI,A4,7",
    "autumn-stock-haul,US,LETTER,6",
    "autumn-stock-haul,SI,A4,6"
  })
  void aDayIsAPage(String name, UnitSystem units, CrewSheet.Paper paper, int pages)
      throws IOException {
    Made made = Made.of(demo(name), units, new CrewSheet.Options(paper, false));
    List<String> days =
        made.ledger.stops().stream().map(StopLine::newDay).filter(day -> !day.isEmpty()).toList();
    assertThat(days).hasSize(pages - 3);
    try (PDDocument document = made.open()) {
      assertThat(document.getNumberOfPages()).isEqualTo(pages);
      List<String> headings = PdfTree.of(document).all("H1").stream().map(PdfTree::words).toList();
      assertThat(headings.subList(0, 2))
          .containsExactly("Where to do what", "Why, and what it rests on");
      assertThat(headings.subList(2, pages - 1)).isEqualTo(days);
      assertThat(headings.get(pages - 1)).isEqualTo("If a tire is flat");
    }
  }

  @ParameterizedTest
  @CsvSource({"false", "true"})
  void noPageIsAlmostEmptyAndNoStopIsTorn(boolean large) throws IOException {
    for (String name : List.of("spring-fleece-haul", "autumn-stock-haul")) {
      Made made =
          Made.of(demo(name), UnitSystem.SI, new CrewSheet.Options(CrewSheet.Paper.A4, large));
      try (PDDocument document = made.open()) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        for (int page = 1; page <= document.getNumberOfPages(); page++) {
          stripper.setStartPage(page);
          stripper.setEndPage(page);
          String text = stripper.getText(document);
          assertThat(text).contains("page " + page + " of");
          assertThat(text.lines().filter(line -> !line.isBlank()).count())
              .as(text)
              .isGreaterThanOrEqualTo(LEAST_LINES);
        }
        PdfTree tree = PdfTree.of(document);
        for (String scope : List.of("Row", "Column")) {
          assertThat(tree.all("TH")).anyMatch(head -> head.scope().equals(scope));
        }
        assertThat(tree.all("TH")).noneMatch(head -> head.scope().isEmpty());
        for (StopLine stop : made.ledger.stops()) {
          // In larger type the 14 tires of the autumn take a page for two vehicles and one for one.
          assertThat(columns(tree, stop.number()))
              .hasSize(large && name.startsWith("autumn") ? 2 : 1);
        }
      }
    }
  }

  /** A front page of what is to be done: every figure that is set, nothing else in its table. */
  @Test
  void theFrontTellsWhereToDoWhat() throws IOException {
    Made made = Made.of(demo("spring-fleece-haul"), UnitSystem.US, LETTER);
    try (PDDocument document = made.open()) {
      List<PdfTree> rows = PdfTree.of(document).all("Table").get(0).kids();
      List<String> busy = rows.stream().map(PdfTree::words).toList();
      assertThat(busy.get(0))
          .startsWith("12:29 5. Dalhart TX hose up to 110 psi")
          .contains("Add: p2li 71 → 73 on arrival", "Add: t2r 84 → 89 on arrival")
          .contains("Add: t2r to 89 psi on arrival (83 at 13:14, 80 cold)")
          .contains("pickup axle 2 left inner (p2li)");
      assertThat(busy.get(1))
          .startsWith("06:20 10. Graham TX next day, before leaving · no hose")
          .contains("Let out, only cold: t1l t1r t2l to 80 cold");
      assertThat(busy.get(2)).contains("11. Weatherford TX", "Do not take 20 rams");
      assertThat(busy).hasSize(3);
    }
  }

  /** Programs that read aloud need headings, tables of equal rows and text in reading order. */
  @Test
  void itIsToldWhatEachTextIs() throws IOException {
    Made made = Made.of(demo("spring-fleece-haul"), UnitSystem.US, LETTER);
    try (PDDocument document = made.open()) {
      assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
      assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
      PdfTree tree = PdfTree.of(document);
      assertThat(tree.kids()).singleElement().extracting(PdfTree::type).isEqualTo("Document");
      List<Integer> pages = tree.all().map(PdfTree::page).filter(page -> page > 0).toList();
      assertThat(pages).isSorted().contains(1, 2, 3, 4, 5, 6);
      assertThat(tree.all("H2").stream().map(PdfTree::words))
          .contains("Every stop, every tire", "Cautions", "Why", "Missing or assumed");
      for (PdfTree table : tree.all("Table")) {
        List<PdfTree> first = table.kids().get(0).kids();
        if (first.get(0).words().equals("tire") && table.all("TD").size() > 0) {
          assertThat(table.kids())
              .allSatisfy(row -> assertThat(row.kids()).hasSameSizeAs(first))
              .hasSize(
                  made.ledger.rig().stream()
                          .mapToInt(a -> SheetTires.names(a.positions()).size())
                          .sum()
                      + 2);
        }
      }
    }
  }

  /** Pages to be looked at. */
  private static void pictures(PDDocument document, String name) throws IOException {
    Files.createDirectories(FOLDER);
    PDFRenderer renderer = new PDFRenderer(document);
    for (int page = 0; page < Math.min(4, document.getNumberOfPages()); page++) {
      BufferedImage image = renderer.renderImageWithDPI(page, 60);
      assertThat(inked(image)).isGreaterThan(1000);
      ImageIO.write(image, "png", FOLDER.resolve("sheet-" + name + "-" + page + ".png").toFile());
    }
  }

  /** Pixels that are not white; fails on any color. */
  private static int inked(BufferedImage image) {
    int inked = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        int rgb = image.getRGB(x, y);
        int red = rgb >> 16 & 0xff;
        int green = rgb >> 8 & 0xff;
        int blue = rgb & 0xff;
        assertThat(Math.max(Math.abs(red - green), Math.abs(green - blue)))
            .as("black, gray and white only")
            .isLessThan(12);
        inked += red < 200 ? 1 : 0;
      }
    }
    return inked;
  }

  private static Trip named(List<String> names) {
    Trip trip = demo("spring-fleece-haul");
    List<Stop> stops = new ArrayList<>();
    for (Stop stop : trip.route().stops()) {
      stops.add(stops.size() < names.size() ? stop.withPlace(names.get(stops.size())) : stop);
    }
    return trip.withRoute(new Route(stops, trip.route().legs()));
  }

  @ParameterizedTest
  @CsvSource({"LETTER,false,612,792", "LETTER,true,612,792", "A4,false,595,842", "A4,true,595,842"})
  void pagesHaveTheirSizeAndNothingStandsOutsideTheMargins(
      CrewSheet.Paper paper, boolean large, float width, float height) throws IOException {
    List<String> longest =
        List.of(
            "Llanfairpwllgwyngyllgogerychwyrndrobwllllantysiliogogogoch ".repeat(3),
            "x".repeat(400));
    for (List<String> names : List.of(longest, NAMES)) {
      Made made = Made.of(named(names), UnitSystem.SI, new CrewSheet.Options(paper, large));
      try (PDDocument document = made.open()) {
        PdfTree tree = PdfTree.of(document);
        names.stream()
            .filter(name -> name.codePoints().allMatch(point -> point < 0x400))
            .forEach(name -> assertThat(plain(tree.words())).contains(plain(name)));
        for (int page = 1; page <= document.getNumberOfPages(); page++) {
          assertThat(outside(document, page, width, height)).isEmpty();
        }
      }
    }
  }

  private static List<String> outside(PDDocument document, int number, float wide, float high)
      throws IOException {
    PDRectangle box = document.getPage(number - 1).getMediaBox();
    boolean sideways = box.getWidth() > box.getHeight();
    float width = sideways ? high : wide;
    float height = sideways ? wide : high;
    assertThat(box.getWidth()).isCloseTo(width, org.assertj.core.api.Assertions.within(1f));
    assertThat(box.getHeight()).isCloseTo(height, org.assertj.core.api.Assertions.within(1f));
    List<String> outside = new ArrayList<>();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition text) {
            float right = text.getXDirAdj() + text.getWidthDirAdj();
            boolean blank = text.getUnicode().isBlank();
            if (!blank
                && (text.getXDirAdj() < MARGIN
                    || right > width - MARGIN
                    || text.getYDirAdj() < MARGIN
                    || text.getYDirAdj() > height - MARGIN)) {
              outside.add(text.getUnicode() + " at " + text.getXDirAdj() + " " + text.getYDirAdj());
            }
          }
        };
    stripper.setStartPage(number);
    stripper.setEndPage(number);
    stripper.getText(document);
    return outside;
  }

  @Test
  void namesOfAllCountriesAreWrittenOrSaidNotToBe() throws IOException {
    Made made = Made.of(named(NAMES), UnitSystem.SI, LETTER);
    try (PDDocument document = made.open()) {
      List<String> strangers = new ArrayList<>();
      Map<String, Float> places = new TreeMap<>();
      PDFTextStripper stripper =
          new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition text) {
              if (!text.getFont().isEmbedded() && !text.getUnicode().isBlank()) {
                strangers.add(text.getFont().getName() + ": " + text.getUnicode());
              }
              places.putIfAbsent(text.getUnicode(), text.getXDirAdj());
            }
          };
      // The day pages come after front and back.
      stripper.setStartPage(3);
      stripper.getText(document);
      assertThat(strangers).isEmpty();
      assertThat(places.get("\u05d0")).isGreaterThan(places.get("\u05d1"));
      assertThat(places.get("\u05d1")).isGreaterThan(places.get("\u05d2"));
      PdfTree tree = PdfTree.of(document);
      String text = plain(tree.words());
      for (String name : NAMES.subList(0, 4)) {
        assertThat(text).contains(plain(name));
      }
      assertThat(text).contains("ЗимаÆrø").doesNotContain("🐎", "\uFFFD", "呼");
      assertThat(columns(tree, 5).get(0).head).contains("5. stop 5");
      assertThat(tree.words()).contains("In their place stands: stop 5.");
      assertThat(document.getDocumentInformation().getTitle())
          .isEqualTo("Spring fleece haul: tires");
      assertThat(document.getDocumentInformation().getAuthor()).isNull();
    }
  }

  @Test
  void aTripWithoutTimesOrTiresHasASheetThatSaysSo() throws IOException {
    Trip starter = PLANNER.store().starterTrip().get();
    Trip untimed =
        starter.withRoute(
            new Route(
                starter.route().stops().stream().map(stop -> stop.withTimes(null, null)).toList(),
                starter.route().legs()));
    Made made = Made.of(untimed, UnitSystem.US, LETTER);
    try (PDDocument document = made.open()) {
      assertThat(PdfTree.of(document).words()).contains("time not known");
      for (PDPage page : document.getPages()) {
        assertThat(page.getMediaBox().getWidth()).isEqualTo(612);
      }
    }
  }
}
