package dawngauge.contract;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** The crew sheet, as another library reads it. */
final class SheetVoice implements Voice {

  private final Path folder;

  SheetVoice(Path folder) {
    this.folder = folder;
  }

  @Override
  public String name() {
    return "sheet";
  }

  @Override
  public Map<Place, Saying> of(Grid.Haul haul) {
    Path file = folder.resolve(UUID.randomUUID() + ".pdf");
    Page.inUnits(haul, "sheet", "--out", file.toString());
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(false);
      return Timetable.of(haul, joined(stripper.getText(document)), "What the figures rest on");
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** Names of tires that did not fit into one line of a row stand in lines of their own before. */
  private static String joined(String text) {
    StringBuilder lines = new StringBuilder();
    String names = "";
    for (String line : text.lines().toList()) {
      if (Timetable.onlyNames(line)) {
        names = names + line.strip() + " ";
      } else {
        lines.append(line.startsWith("read set") ? "" : names).append(line).append('\n');
        names = "";
      }
    }
    return lines.toString();
  }
}
