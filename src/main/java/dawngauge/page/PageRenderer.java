package dawngauge.page;

/** Draws the blocks of a page as they come. */
public interface PageRenderer {

  /** A heading. */
  void heading(Block.Heading heading);

  /** A card. */
  void card(Block.Card card);

  /** A table. */
  void table(Block.Table table);

  /** A note. */
  void note(Block.Note note);

  /** A list of lines. */
  void bullets(Block.Bullets bullets);

  /** What stands behind the rest, where it is shown or can be unfolded. */
  void why(Block.Why why);

  /** A plot. */
  void plot(Plot plot);
}
