package dawngauge.page;

import java.util.Arrays;
import java.util.List;

/** A part of a page. */
public sealed interface Block
    permits Block.Heading, Block.Card, Block.Table, Block.Note, Block.Bullets, Block.Why, Plot {

  /** Hands itself to what draws it. */
  void draw(PageRenderer renderer);

  /**
   * A heading.
   *
   * @param text its words
   * @param level 1 of a part of the page, 2 of a part of that
   */
  record Heading(String text, int level) implements Block {

    @Override
    public void draw(PageRenderer renderer) {
      renderer.heading(this);
    }
  }

  /**
   * What to do about one thing, at a glance. Empty lists are not shown.
   *
   * @param title what it is
   * @param todo what to do, strongest first
   * @param watch what else has to be known there
   * @param why what it rests on: folded in the window, at the end on paper
   */
  record Card(String title, List<String> todo, List<String> watch, List<String> why)
      implements Block {

    /** Copies the lists. */
    public Card {
      todo = List.copyOf(todo);
      watch = List.copyOf(watch);
      why = List.copyOf(why);
    }

    @Override
    public void draw(PageRenderer renderer) {
      renderer.card(this);
    }
  }

  /** On which side of its column a text stands. */
  enum Side {
    /** Words. */
    LEFT,
    /** Figures. */
    RIGHT
  }

  /**
   * A column.
   *
   * @param head what it holds; all are empty in a table without heads
   * @param side where its cells stand
   */
  record Column(String head, Side side) {}

  /**
   * A table.
   *
   * @param spoken what it shows, in one line, for who does not see it
   * @param columns from left to right
   * @param rows as many cells each as there are columns
   * @param alone whether it is read alone: its heads stand over it even where they stand above
   */
  record Table(String spoken, List<Column> columns, List<List<String>> rows, boolean alone)
      implements Block {

    /** Copies the lists. */
    public Table {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
      for (List<String> row : rows) {
        if (row.size() != columns.size()) {
          throw new IllegalArgumentException(
              "a row of " + row.size() + " cells in a table of " + columns.size() + " columns");
        }
      }
    }

    /** A table that is read with those before it. */
    public Table(String spoken, List<Column> columns, List<List<String>> rows) {
      this(spoken, columns, rows, false);
    }

    /** Words in all columns. */
    public static Table ofWords(String spoken, List<String> heads, List<List<String>> rows) {
      return new Table(
          spoken, heads.stream().map(head -> new Column(head, Side.LEFT)).toList(), rows);
    }

    /** The first column of words, the others of figures. */
    public static Table ofFigures(String spoken, List<String> heads, List<List<String>> rows) {
      Column[] columns = new Column[heads.size()];
      Arrays.setAll(columns, i -> new Column(heads.get(i), i == 0 ? Side.LEFT : Side.RIGHT));
      return new Table(spoken, List.of(columns), rows);
    }

    /** Whether its columns have heads. */
    public boolean headed() {
      return columns.stream().anyMatch(column -> !column.head().isEmpty());
    }

    @Override
    public void draw(PageRenderer renderer) {
      renderer.table(this);
    }
  }

  /** How a note is meant. */
  enum Weight {
    /** The answer that the page gives. */
    MAIN,
    /** As the rest. */
    PLAIN,
    /** What must be heeded. */
    CAUTION,
    /** How to read the rest. */
    LESSER
  }

  /**
   * A paragraph.
   *
   * @param weight how it is meant
   * @param text its words
   */
  record Note(Weight weight, String text) implements Block {

    @Override
    public void draw(PageRenderer renderer) {
      renderer.note(this);
    }
  }

  /**
   * Lines of one kind.
   *
   * @param lines each a thing of its own
   */
  record Bullets(List<String> lines) implements Block {

    /** Copies the list. */
    public Bullets {
      lines = List.copyOf(lines);
    }

    @Override
    public void draw(PageRenderer renderer) {
      renderer.bullets(this);
    }
  }

  /**
   * What stands behind the rest: folded in the window, in text where it is asked for, on paper.
   *
   * @param title what is unfolded
   * @param blocks in order
   */
  record Why(String title, List<Block> blocks) implements Block {

    /** Copies the list. */
    public Why {
      blocks = List.copyOf(blocks);
    }

    @Override
    public void draw(PageRenderer renderer) {
      renderer.why(this);
    }
  }
}
