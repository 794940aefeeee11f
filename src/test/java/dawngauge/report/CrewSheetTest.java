package dawngauge.report;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.advice.Advice;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.PlanPage;
import dawngauge.ledger.StopLine;
import dawngauge.planner.PlannedTrip;
import dawngauge.planner.Planner;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
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
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sheet as another library reads it: its words and figures, fonts, margins, ink. */
class CrewSheetTest {

  private static final Path FOLDER = Path.of("target", "pictures");
  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());

  /** A sheet with what it was made from. */
  private static final class Made {
    private final Ledger ledger;
    private final byte[] bytes;

    private Made(Ledger ledger, byte[] bytes) {
      this.ledger = ledger;
      this.bytes = bytes;
    }

    static Made of(Trip trip, UnitSystem units, CrewSheet.Options options) {
      PlannedTrip planned = PLANNER.plan(trip);
      Advice advice = planned.advice();
      Ledger ledger = Ledger.of(trip, advice, planned.problems(), planned.fitness(), units, null);
      PlanPage plan =
          PLANNER
              .adjustment(trip)
              .value()
              .map(adjustment -> PlanPage.of(trip, adjustment, units))
              .orElse(null);
      return new Made(ledger, CrewSheet.of(ledger, advice, plan, options));
    }

    PDDocument open() {
      try {
        return Loader.loadPDF(bytes);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private static Trip demo(String name) {
    return PLANNER.open(Path.of("demo-data", name + ".dawngauge")).get();
  }

  /** Letters and figures alone: where lines break does not count. */
  private static String plain(String text) {
    return text.replaceAll("[\\s\\u25A1]+", "");
  }

  private static String text(PDDocument document) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setSortByPosition(false);
    return plain(stripper.getText(document));
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
      String text = text(document);
      for (String line : made.ledger.go()) {
        assertThat(text).contains(plain(line));
      }
      for (String line : made.ledger.putRight()) {
        assertThat(text).contains(plain(line));
      }
      for (StopLine stop : made.ledger.stops()) {
        assertThat(text).contains(plain(stop.number() + ". " + stop.place()));
        assertThat(text).contains(plain(stop.air() + " · " + stop.elevation()));
        for (StopLine.TireRow row : stop.rows()) {
          assertThat(text)
              .contains(
                  plain(
                      row.tires()
                          + row.arriveReads()
                          + (row.read() ? "read" : row.arriveRange())
                          + row.arriveSettled()
                          + row.checkReads()
                          + (row.set() ? "SET" : row.checkRange())
                          + row.lowest()
                          + row.floor()
                          + row.aim()
                          + row.ceiling()
                          + row.margin()
                          + (row.byEstimate() ? "e" : "")
                          + row.mark().word()));
        }
        for (StopLine.Task task : stop.tasks()) {
          assertThat(text).contains(plain(task.mark().word() + task.tires() + ":" + task.text()));
        }
        assertThat(text).contains(plain(stop.leg()));
        stop.cautions().forEach(caution -> assertThat(text).contains(plain(caution)));
      }
      Ledger.CAUTIONS.forEach(caution -> assertThat(text).contains(plain(caution)));
      made.ledger.problems().forEach(problem -> assertThat(text).contains(plain(problem)));
      made.ledger.basis().forEach(basis -> assertThat(text).contains(plain(basis)));
      pictures(document, name + (large ? "-large" : ""));
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

  @ParameterizedTest
  @CsvSource({"LETTER,false,612,792", "LETTER,true,792,612", "A4,false,595,842", "A4,true,842,595"})
  void pagesHaveTheirSizeAndNothingStandsOutsideTheMargins(
      CrewSheet.Paper paper, boolean large, float width, float height) throws IOException {
    Made made = Made.of(longNames(), UnitSystem.US, new CrewSheet.Options(paper, large));
    try (PDDocument document = made.open()) {
      for (PDPage page : document.getPages()) {
        PDRectangle box = page.getMediaBox();
        float wide = page.getRotation() % 180 == 0 ? box.getWidth() : box.getHeight();
        float high = page.getRotation() % 180 == 0 ? box.getHeight() : box.getWidth();
        assertThat(wide).isCloseTo(width, org.assertj.core.api.Assertions.within(1f));
        assertThat(high).isCloseTo(height, org.assertj.core.api.Assertions.within(1f));
      }
      List<String> outside = new ArrayList<>();
      PDFTextStripper stripper =
          new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition text) {
              float right = text.getXDirAdj() + text.getWidthDirAdj();
              if (text.getXDirAdj() < 20
                  || right > width - 20
                  || text.getYDirAdj() < 20
                  || text.getYDirAdj() > height - 8) {
                outside.add(text.getUnicode() + " at " + text.getXDirAdj());
              }
            }
          };
      stripper.getText(document);
      assertThat(outside).isEmpty();
    }
  }

  /** Names that a person could type, with signs that no font has. */
  private static Trip longNames() {
    Trip trip = demo("spring-fleece-haul");
    List<Stop> stops = new ArrayList<>();
    String longest = "Llanfairpwllgwyngyllgogerychwyrndrobwllllantysiliogogogoch ".repeat(3);
    for (Stop stop : trip.route().stops()) {
      String name =
          switch (stops.size()) {
            case 0 -> longest;
            case 1 -> "x".repeat(400);
            case 2 -> "Зима Ærø Ωμέγα 🐎 \u05d0\u05d1\u05d2 \u0007";
            default -> stop.place();
          };
      stops.add(stop.withPlace(name));
    }
    return trip.withRoute(new Route(stops, trip.route().legs()));
  }

  @Test
  void allFontsThatWriteAreEmbeddedAndNoCharacterBreaksIt() throws IOException {
    Made made =
        Made.of(longNames(), UnitSystem.SI, new CrewSheet.Options(CrewSheet.Paper.A4, false));
    try (PDDocument document = made.open()) {
      List<String> strangers = new ArrayList<>();
      PDFTextStripper stripper =
          new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition text) {
              if (!text.getFont().isEmbedded() && !text.getUnicode().isBlank()) {
                strangers.add(text.getFont().getName() + ": " + text.getUnicode());
              }
              super.processTextPosition(text);
            }
          };
      String text = stripper.getText(document);
      assertThat(strangers).isEmpty();
      assertThat(text).contains("Зима Ærø Ωμέγα");
      assertThat(document.getDocumentInformation().getTitle())
          .isEqualTo("Spring fleece haul: tires");
      assertThat(document.getDocumentInformation().getAuthor()).isNull();
      assertThat(document.getDocumentCatalog().getCOSObject().containsKey(COSName.PAGES)).isTrue();
    }
  }

  @Test
  void eachDayBeginsAPageOfItsOwn() throws IOException {
    Made made =
        Made.of(
            demo("autumn-stock-haul"),
            UnitSystem.SI,
            new CrewSheet.Options(CrewSheet.Paper.A4, false));
    try (PDDocument document = made.open()) {
      List<String> days =
          made.ledger.stops().stream().map(StopLine::newDay).filter(day -> !day.isEmpty()).toList();
      List<String> begun = new ArrayList<>();
      PDFTextStripper stripper = new PDFTextStripper();
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        String text = stripper.getText(document);
        assertThat(text).contains("page " + page + " of", "Never let air out of a warm tire");
        for (String day : days) {
          if (text.contains(day) && !text.contains(day + ", continued")) {
            begun.add(day);
          }
        }
      }
      assertThat(begun).isEqualTo(days);
    }
  }

  @Test
  void aTripWithoutTimesOrTiresHasASheetThatSaysSo() throws IOException {
    Trip starter = PLANNER.starterTrip().get();
    Trip untimed =
        starter.withRoute(
            new Route(
                starter.route().stops().stream().map(stop -> stop.withTimes(null, null)).toList(),
                starter.route().legs()));
    Made made =
        Made.of(untimed, UnitSystem.US, new CrewSheet.Options(CrewSheet.Paper.LETTER, false));
    try (PDDocument document = made.open()) {
      assertThat(text(document)).contains("timenotknown");
    }
  }
}
