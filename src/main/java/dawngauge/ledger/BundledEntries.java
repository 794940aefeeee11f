package dawngauge.ledger;

import dawngauge.geo.BundledLines;
import java.util.List;

/** What bundled documents list by name: lines {@code - **name**: text}. */
final class BundledEntries {

  private static final String START = "- **";
  private static final String END = "**: ";
  private static final String HEADING = "## ";

  private BundledEntries() {}

  /** All of them in a document. */
  static List<Glossary.Entry> of(String document) {
    return entries(BundledLines.of(document));
  }

  /** Those under a heading of the second level. */
  static List<Glossary.Entry> under(String document, String heading) {
    List<String> from =
        BundledLines.of(document).stream()
            .dropWhile(line -> !line.equals(HEADING + heading))
            .skip(1)
            .toList();
    return entries(from.stream().takeWhile(line -> !line.startsWith(HEADING)).toList());
  }

  private static List<Glossary.Entry> entries(List<String> lines) {
    return lines.stream()
        .filter(line -> line.startsWith(START))
        .map(BundledEntries::entry)
        .toList();
  }

  private static Glossary.Entry entry(String line) {
    int end = line.indexOf(END, START.length());
    return new Glossary.Entry(
        line.substring(START.length(), end), line.substring(end + END.length()));
  }
}
