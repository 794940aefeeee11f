package dawngauge.testdata;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;
import org.jspecify.annotations.Nullable;

/**
 * An element of a tagged PDF as a program that reads it aloud meets it.
 *
 * @param type such as "TR"
 * @param scope of a heading of a table: "Column" or "Row"; else empty
 * @param page number of the page of its text, 1 first; 0 where it has none of its own
 * @param text its own text, a blank between lines
 * @param kids in reading order
 */
public record PdfTree(String type, String scope, int page, String text, List<PdfTree> kids) {

  private static final float SAME_LINE = 1;

  /** The root of a document. */
  public static PdfTree of(PDDocument document) {
    Map<PDPage, Integer> numbers = new HashMap<>();
    Map<Integer, Map<Integer, String>> texts = new HashMap<>();
    int number = 0;
    try {
      for (PDPage page : document.getPages()) {
        numbers.put(page, ++number);
        PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
        extractor.processPage(page);
        Map<Integer, String> here = new HashMap<>();
        for (PDMarkedContent content : extractor.getMarkedContents()) {
          if (content.getMCID() >= 0) {
            here.put(content.getMCID(), text(content));
          }
        }
        texts.put(number, here);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return node("root", document.getDocumentCatalog().getStructureTreeRoot(), null, numbers, texts);
  }

  private static PdfTree node(
      String type,
      PDStructureNode node,
      @Nullable PDPage page,
      Map<PDPage, Integer> numbers,
      Map<Integer, Map<Integer, String>> texts) {
    List<String> text = new ArrayList<>();
    List<PdfTree> kids = new ArrayList<>();
    int number = 0;
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        kids.add(node(element.getStructureType(), element, element.getPage(), numbers, texts));
        continue;
      }
      PDPage where =
          kid instanceof PDMarkedContentReference other && other.getPage() != null
              ? other.getPage()
              : page;
      int id = kid instanceof PDMarkedContentReference other ? other.getMCID() : (Integer) kid;
      number = numbers.getOrDefault(where, 0);
      text.add(texts.getOrDefault(number, Map.of()).getOrDefault(id, ""));
    }
    return new PdfTree(type, scope(node), number, String.join(" ", text), kids);
  }

  private static String scope(PDStructureNode node) {
    if (node instanceof PDStructureElement element) {
      for (int i = 0; i < element.getAttributes().size(); i++) {
        if (element.getAttributes().getObject(i) instanceof PDTableAttributeObject table
            && table.getScope() != null) {
          return table.getScope();
        }
      }
    }
    return "";
  }

  private static String text(PDMarkedContent content) {
    StringBuilder text = new StringBuilder();
    float line = Float.NaN;
    for (Object part : content.getContents()) {
      if (part instanceof TextPosition position) {
        boolean next = Math.abs(position.getYDirAdj() - line) > SAME_LINE;
        text.append(next ? " " : "").append(position.getUnicode());
        line = position.getYDirAdj();
      }
    }
    return text.toString();
  }

  /** It and all within it, in reading order. */
  public Stream<PdfTree> all() {
    return Stream.concat(Stream.of(this), kids.stream().flatMap(PdfTree::all));
  }

  /** All within it of a type. */
  public List<PdfTree> all(String wanted) {
    return all().filter(node -> node.type.equals(wanted)).toList();
  }

  /** All text in it, a blank between elements. */
  public String words() {
    return String.join(" ", all().map(PdfTree::text).toList()).replaceAll("\\s+", " ").strip();
  }
}
