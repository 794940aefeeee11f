package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.cli.Cli;
import dawngauge.cli.Console;
import dawngauge.trip.Trip;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.text.Text;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/**
 * Makes the pictures of the documents from the demo haul, and holds those in {@code docs} to what
 * they show: {@code docs/pictures.txt} has a sum of the words and figures of each, and one of its
 * file. The pixels themselves are not compared, since they differ with the fonts of a machine.
 */
class DocsPicturesTest extends WindowTest {

  private static final Path DOCS = Path.of("docs");
  private static final Path MADE = Path.of("target", "pictures", "docs");
  private static final String RECORD = "pictures.txt";
  private static final String ANEW = "mvn test -Dtest=DocsPicturesTest -Dpictures=anew";

  /** The sheet's page of the first day, as large as it stands in the guide. */
  private static final int SHEET_PAGE = 3;

  private static final int SHEET_DPI = 90;

  /** A picture with all that can be read on it. */
  private record Made(BufferedImage picture, String told) {}

  @Test
  void eachPictureShowsWhatThereIsNow() throws IOException {
    Map<String, Made> made = new TreeMap<>();
    made.put("planner-route", window(PicturesTest.Page.ROUTE, PicturesTest.Look.LIGHT_US_LARGE));
    made.put("plan", window(PicturesTest.Page.PLAN, PicturesTest.Look.DARK_US_LARGE));
    made.put("first-haul", window(PicturesTest.Page.FIRST_FULL, PicturesTest.Look.LIGHT_US_LARGE));
    made.put("crew-sheet", sheet());
    Files.createDirectories(MADE);
    for (Map.Entry<String, Made> each : made.entrySet()) {
      write(MADE, each.getKey(), each.getValue());
      Files.writeString(MADE.resolve(each.getKey() + ".txt"), each.getValue().told());
    }
    if ("anew".equals(System.getProperty("pictures"))) {
      for (Map.Entry<String, Made> each : made.entrySet()) {
        write(DOCS, each.getKey(), each.getValue());
      }
      Files.writeString(DOCS.resolve(RECORD), String.join("\n", record(made)) + "\n");
    }
    assertThat(Files.readAllLines(DOCS.resolve(RECORD)))
        .as(
            "docs/pictures.txt: what a picture shows has changed, or its file has; see what there"
                + " is now in target/pictures/docs, and make all anew by "
                + ANEW)
        .isEqualTo(record(made));
    for (Map.Entry<String, Made> each : made.entrySet()) {
      BufferedImage shown = ImageIO.read(DOCS.resolve(each.getKey() + ".png").toFile());
      assertThat(List.of(shown.getWidth(), shown.getHeight()))
          .as("size of %s; make it anew by %s", each.getKey(), ANEW)
          .containsExactly(
              each.getValue().picture().getWidth(), each.getValue().picture().getHeight());
    }
  }

  @Test
  void noPictureIsLeftOut() throws IOException {
    try (Stream<Path> files = Files.list(DOCS)) {
      List<String> pictures =
          files
              .map(file -> String.valueOf(file.getFileName()))
              .filter(name -> name.endsWith(".png"))
              .sorted()
              .toList();
      assertThat(Files.readAllLines(DOCS.resolve(RECORD)))
          .extracting(line -> line.substring(0, line.indexOf(' ')))
          .isEqualTo(pictures);
    }
  }

  /** A line a picture: its name, the sum of what it tells, the sum of its file in the documents. */
  private static List<String> record(Map<String, Made> made) throws IOException {
    List<String> lines = new ArrayList<>();
    for (Map.Entry<String, Made> each : made.entrySet()) {
      String name = each.getKey() + ".png";
      byte[] told = each.getValue().told().getBytes(StandardCharsets.UTF_8);
      lines.add(
          name + " tells " + sum(told) + " file " + sum(Files.readAllBytes(DOCS.resolve(name))));
    }
    return lines;
  }

  private static void write(Path folder, String name, Made made) throws IOException {
    ImageIO.write(made.picture(), "png", folder.resolve(name + ".png").toFile());
  }

  private Made window(PicturesTest.Page page, PicturesTest.Look look) {
    Trip trip = page.trip();
    OpenWindow open = open(trip);
    PicturesTest.show(open, page, look);
    Made made = new Made(PicturesTest.picture(open), told(open, trip));
    open.close();
    return made;
  }

  /** The words of all that is seen, in its order, and the columns of the grid, which is drawn. */
  private static String told(OpenWindow open, Trip trip) {
    List<String> told = new ArrayList<>();
    for (Node node : open.nodes(Node.class, seen -> true)) {
      if (node instanceof TextInputControl field) {
        told.add("[" + field.getText() + "|" + field.getPromptText() + "]");
      } else if (node instanceof Labeled labeled && labeled.getText() != null) {
        told.add(labeled.getText());
      } else if (node instanceof Text text && !(text.getParent() instanceof Labeled)) {
        told.add(text.getText());
      }
    }
    if (open.stops() > 0) {
      Stream.concat(
              Stream.of("time", "stop", "air", "hose", "margin"),
              trip.rig().positions().stream().map(trip.rig()::shortForm))
          .forEach(head -> told.add(head + ": " + open.column(head)));
    }
    return String.join("\n", told) + "\n";
  }

  private Made sheet() throws IOException {
    Path file = folder.resolve("sheet.pdf");
    StringWriter said = new StringWriter();
    Console console =
        new Console(
            InputStream.nullInputStream(),
            new PrintWriter(said, true),
            new PrintWriter(said, true));
    int code = Cli.run(planner(), console, "sheet", DEMO.toString(), "--out", file.toString());
    assertThat(code).as(said.toString()).isZero();
    try (PDDocument sheet = Loader.loadPDF(file.toFile())) {
      PDFTextStripper reader = new PDFTextStripper();
      reader.setStartPage(SHEET_PAGE);
      reader.setEndPage(SHEET_PAGE);
      return new Made(
          new PDFRenderer(sheet).renderImageWithDPI(SHEET_PAGE - 1, SHEET_DPI),
          reader.getText(sheet));
    }
  }

  private static String sum(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
