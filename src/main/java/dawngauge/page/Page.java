package dawngauge.page;

import java.util.List;

/**
 * What is shown of one matter, in order. Texts are in the units shown and as they are read.
 *
 * @param title what it is of and what it tells
 * @param blocks in order
 */
public record Page(String title, List<Block> blocks) {

  /** Copies the list. */
  public Page {
    blocks = List.copyOf(blocks);
  }

  /** Hands each block to what draws it, in order. */
  public void draw(PageRenderer renderer) {
    blocks.forEach(block -> block.draw(renderer));
  }
}
