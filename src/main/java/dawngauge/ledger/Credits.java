package dawngauge.ledger;

import java.util.List;

/** Whose work is in the program, as {@code docs/credits.md} tells it. */
public final class Credits {

  private static final String PAGE = "/dawngauge/help/credits.md";

  private Credits() {}

  /**
   * A library.
   *
   * @param name its name
   * @param license its license, by SPDX identifier; two of which one may be chosen stand with OR
   * @param jars its jars, without version, system and ending
   */
  public record Library(String name, String license, List<String> jars) {
    public Library {
      jars = List.copyOf(jars);
    }

    private static Library of(Glossary.Entry entry) {
      String[] parts = entry.meaning().split("; ", 2);
      return new Library(entry.word(), parts[0], List.of(parts[1].split(", ", -1)));
    }
  }

  /** The libraries, most of the window first. */
  public static List<Library> libraries() {
    return BundledEntries.under(PAGE, "Libraries").stream().map(Library::of).toList();
  }

  /** The data: what, and of whom, under which license. */
  public static List<Glossary.Entry> data() {
    return BundledEntries.under(PAGE, "Data");
  }
}
