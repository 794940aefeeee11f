package dawngauge.contract;

import dawngauge.testdata.PdfTree;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The crew sheet, as another library reads the tree of its headings, tables and cells. */
final class SheetVoice implements Voice {

  /** Tires whose figures agree to half a psi share them. */
  private static final double SHARED = 0.5;

  /** "t1l t1r trailer axle 1 · kind · label · 4900 lb, weighed as a group". */
  private static final Pattern RIG =
      Pattern.compile("^((?:t\\d[a-z]+ +)+)trailer axle .* · ([^·]+)$");

  /** "5, 6 · re-check, t2r: loses ...". */
  private static final Pattern WHY = Pattern.compile("^(\\d+(?:, \\d+)*) · (.*)$");

  private static final Pattern COLUMN = Pattern.compile("^(\\d+)\\. .*");

  /** "64–70 hold, on arrival 70 67, 65 cold", "62–67 not known → 62–66 61 cold", "32 read". */
  private static final Pattern CELL =
      Pattern.compile(
          "^\\S+(?: read)?(?: (hold|adjust|re-check|not known))?,?(?: (on arrival|leaving|cold)"
              + " ([0-9.]+))?(?: only cold| see below)?(?: → \\S+)?(?: (?:[0-9.]+, )?([0-9.]+) cold)?$");

  /** "46, from 5: 47, from 7: 49". */
  private static final Pattern FROM = Pattern.compile("(?:from (\\d+): )?([0-9.–]+)(?:, |$)");

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
      return said(haul, PdfTree.of(document));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private static Map<Place, Saying> said(Grid.Haul haul, PdfTree tree) {
    Map<String, LoadBasis> bases = new LinkedHashMap<>();
    Map<Integer, List<Words.Task>> reasons = new LinkedHashMap<>();
    for (PdfTree line : tree.all("P")) {
      Matcher rig = RIG.matcher(line.words());
      if (rig.matches()) {
        Words.parts(rig.group(1), " +")
            .forEach(tire -> bases.put(tire, LoadBasis.of(rig.group(2))));
      }
      Matcher why = WHY.matcher(line.words());
      if (why.matches()) {
        for (String stop : Words.parts(why.group(1), ", ")) {
          reasons
              .computeIfAbsent(Integer.parseInt(stop) - 1, key -> new ArrayList<>())
              .addAll(Words.tasks(why.group(2)));
        }
      }
    }
    Map<Place, Saying> said = new LinkedHashMap<>();
    for (PdfTree table : tree.all("Table")) {
      List<PdfTree> heads = table.kids().get(0).kids();
      for (PdfTree row : table.kids()) {
        String name = row.kids().get(0).words();
        for (int i = 1; i < row.kids().size() && i < heads.size(); i++) {
          Matcher column = COLUMN.matcher(heads.get(i).words());
          if (name.startsWith("t") && name.contains("lowest safe") && column.matches()) {
            int stop = Integer.parseInt(column.group(1)) - 1;
            String tire = name.substring(0, name.indexOf(' '));
            Saying one = cell(haul, limits(haul, name, stop), row.kids().get(i).words());
            one =
                one.with(Field.RAN_LOW, Words.ranLow(reasons.getOrDefault(stop, List.of()), tire));
            LoadBasis basis = bases.get(tire);
            said.put(
                new Place(tire, stop), basis == null ? one : one.with(Field.LOAD_BASIS, basis));
          }
        }
      }
    }
    return said;
  }

  /** What the head of a row says of a stop. */
  private static Saying limits(Grid.Haul haul, String head, int stop) {
    double half = Words.half(haul) + SHARED;
    // The floor is rounded up.
    Saying saying =
        figure(
            haul,
            Saying.NOTHING,
            Field.FLOOR,
            now(head, "lowest safe ", stop),
            half + Words.half(haul));
    saying = figure(haul, saying, Field.AIM, now(head, "set cold to ", stop), half);
    return figure(haul, saying, Field.CEILING, now(head, "never over ", stop), half);
  }

  private static String now(String head, String word, int stop) {
    String list = Words.parts(head.substring(head.indexOf(word) + word.length()), ";").get(0);
    Matcher from = FROM.matcher(list);
    String now = "";
    while (from.find()) {
      boolean holds = from.group(1) == null || Integer.parseInt(from.group(1)) <= stop + 1;
      now = holds ? from.group(2) : now;
    }
    return now;
  }

  private static Saying cell(Grid.Haul haul, Saying saying, String text) {
    Matcher cell = CELL.matcher(text);
    if (!cell.matches()) {
      throw new IllegalStateException("no cell of the sheet: " + text);
    }
    double half = Words.half(haul) + SHARED;
    String when = cell.group(2);
    Saying more =
        saying.with(Field.HOLD, "hold".equals(cell.group(1))).with(Field.SETS, when != null);
    if (when == null) {
      return more;
    }
    if (when.equals("on arrival")) {
      more = figure(haul, more, Field.SET_ON_ARRIVAL, cell.group(3), half);
    }
    String cold = when.equals("cold") ? cell.group(3) : cell.group(4);
    return cold == null ? more : figure(haul, more, Field.SET_COLD, cold, half);
  }

  private static Saying figure(
      Grid.Haul haul, Saying saying, Field field, String cell, double within) {
    return Words.figure(haul, cell, within)
        .map(figure -> saying.with(field, figure))
        .orElse(saying);
  }
}
