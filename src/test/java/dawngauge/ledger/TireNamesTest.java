package dawngauge.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.page.Block;
import dawngauge.page.Page;
import dawngauge.testdata.RigBuilder;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A short form has its words beside it where a page first has it, and not again. */
class TireNamesTest {

  private static final TireNames NAMES = TireNames.of(RigBuilder.trailer().axles(2).rig());

  private static Block note(String text) {
    return new Block.Note(Block.Weight.PLAIN, text);
  }

  private static List<Block> spelled(Block... blocks) {
    return NAMES.spelled(new Page("about t1l", List.of(blocks))).blocks();
  }

  @Test
  void onceAPageAndNotInItsTitle() {
    assertThat(spelled(note("Check t2r now."), note("t2r again, t1l too")))
        .containsExactly(
            note("Check trailer axle 2 right (t2r) now."),
            note("t2r again, trailer axle 1 left (t1l) too"));
  }

  @Test
  void aListOfThemAndTheBeginningOfASentence() {
    assertThat(spelled(note("t1l t1r: let out"), note("t1l t1r: gauge")))
        .containsExactly(
            note("Trailer axle 1 left (t1l), trailer axle 1 right (t1r): let out"),
            note("t1l t1r: gauge"));
  }

  @Test
  void theKeyTellsTheirParts() {
    assertThat(NAMES.key()).isEqualTo("t1 trailer axle 1, t2 trailer axle 2, l left, r right");
  }

  @Test
  void partsOfOtherWordsAreLeftAlone() {
    assertThat(spelled(note("xt1l, t1lx and t1li"))).containsExactly(note("xt1l, t1lx and t1li"));
  }

  @Test
  void whatIsFoldedTellsForItselfAlone() {
    Block card = new Block.Card("t1l leaks", List.of(), List.of(), List.of("t1r: why"));
    assertThat(spelled(card, note("t1r")))
        .containsExactly(
            new Block.Card(
                "Trailer axle 1 left (t1l) leaks",
                List.of(),
                List.of(),
                List.of("Trailer axle 1 right (t1r): why")),
            note("Trailer axle 1 right (t1r)"));
  }

  @Test
  void aTableWithTheirWordsTellsThemAndIsLeftAsItIs() {
    Block table =
        Block.Table.ofWords(
            "",
            List.of("tire", "position"),
            List.of(List.of("t1l", "trailer axle 1 left"), List.of("t1r", "–")));
    assertThat(spelled(table, note("t1l"), note("t1r")))
        .containsExactly(table, note("t1l"), note("Trailer axle 1 right (t1r)"));
  }

  @Test
  void withoutARigNothingIsTouched() {
    Page page = new Page("", List.of(note("t1l")));
    assertThat(TireNames.NONE.spelled(page)).isEqualTo(page);
  }
}
