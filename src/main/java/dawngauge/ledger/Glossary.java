package dawngauge.ledger;

import java.util.List;
import java.util.Locale;

/** The words that are used, as {@code docs/glossary.md} explains them. */
public final class Glossary {

  /**
   * A word.
   *
   * @param word the word, or several that belong together
   * @param meaning what it means
   */
  public record Entry(String word, String meaning) {}

  private static final List<Entry> ALL =
      List.copyOf(BundledEntries.of("/dawngauge/help/glossary.md"));

  private Glossary() {}

  /** All words. */
  public static List<Entry> all() {
    return ALL;
  }

  /** The words in which a text occurs, or in whose meaning it does. */
  public static List<Entry> with(String text) {
    String wanted = text.strip().toLowerCase(Locale.ROOT);
    return ALL.stream()
        .filter(
            entry ->
                (entry.word() + " " + entry.meaning()).toLowerCase(Locale.ROOT).contains(wanted))
        .toList();
  }
}
